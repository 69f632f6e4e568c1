# Warnings are errors in our own code, save in the release build: whoever only wants to start the program is not stopped by a
# warning that a newer compiler invents. Libraries are included as SYSTEM and built without these.
add_library(tablewick_warnings INTERFACE)
target_compile_options(
    tablewick_warnings
    INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wold-style-cast -Wnon-virtual-dtor
              -Woverloaded-virtual -Wformat=2
)
if(TABLEWICK_WARNINGS_ARE_ERRORS)
    target_compile_options(tablewick_warnings INTERFACE -Werror)
endif()
if(TABLEWICK_SANITIZE)
    add_compile_options(-fsanitize=${TABLEWICK_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    add_link_options(-fsanitize=${TABLEWICK_SANITIZE})
endif()
