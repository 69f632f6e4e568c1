# Warnings are errors in our own code; libraries are included as SYSTEM and built without these.
add_library(tablewick_warnings INTERFACE)
target_compile_options(
    tablewick_warnings
    INTERFACE -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wold-style-cast -Wnon-virtual-dtor
              -Woverloaded-virtual -Wformat=2 -Werror
)
if(TABLEWICK_SANITIZE)
    add_compile_options(-fsanitize=${TABLEWICK_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    add_link_options(-fsanitize=${TABLEWICK_SANITIZE})
endif()
