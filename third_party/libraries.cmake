# Finds or builds every library this project uses; third_party/README.md says why each is here.
find_package(Threads REQUIRED)
find_package(OpenGL REQUIRED)
find_package(Freetype REQUIRED)
find_package(glfw3 3.3 REQUIRED)
find_package(nlohmann_json 3.11 REQUIRED)

# utf8proc: case folding, composition and letters of Unicode; the distribution brings no CMake file for it.
find_path(UTF8PROC_INCLUDE_DIR utf8proc.h REQUIRED)
find_library(UTF8PROC_LIBRARY utf8proc REQUIRED)
add_library(utf8proc INTERFACE)
target_include_directories(utf8proc SYSTEM INTERFACE ${UTF8PROC_INCLUDE_DIR})
target_link_libraries(utf8proc INTERFACE ${UTF8PROC_LIBRARY})

# Pango and Cairo: printed pages. The distribution brings no CMake files for them.
find_package(PkgConfig REQUIRED)
pkg_check_modules(pango REQUIRED IMPORTED_TARGET pangocairo>=1.50 cairo-pdf>=1.16)

# glad: the OpenGL loader is generated from the registry that the distribution's generator carries.
find_program(GLAD_GENERATOR glad REQUIRED)
set(glad_folder ${PROJECT_BINARY_DIR}/third_party/glad)
add_custom_command(
    OUTPUT ${glad_folder}/src/gl.c ${glad_folder}/include/glad/gl.h
    COMMAND ${GLAD_GENERATOR} --quiet --reproducible --api gl:core=3.3 --out-path ${glad_folder} c
    COMMENT "Generating the OpenGL loader"
    VERBATIM
)
add_library(glad_gl STATIC ${glad_folder}/src/gl.c)
target_include_directories(glad_gl SYSTEM PUBLIC ${glad_folder}/include)
file(MAKE_DIRECTORY ${glad_folder}/include)
target_link_libraries(glad_gl PUBLIC ${CMAKE_DL_LIBS})

# stb: the headers that read and write pictures.
find_path(STB_INCLUDE_DIR stb/stb_image_write.h REQUIRED)
add_library(stb_headers INTERFACE)
target_include_directories(stb_headers SYSTEM INTERFACE ${STB_INCLUDE_DIR})

# Dear ImGui from source, so that program and tests share the build with its test hooks switched on.
set(IMGUI_SOURCE_DIR "" CACHE PATH "A Dear ImGui source tree; empty: the pinned one is fetched")
if(NOT IMGUI_SOURCE_DIR)
    execute_process(
        COMMAND ${PROJECT_SOURCE_DIR}/third_party/fetch_imgui.sh ${PROJECT_SOURCE_DIR}/.cache/imgui
        RESULT_VARIABLE imgui_fetched
    )
    if(NOT imgui_fetched EQUAL 0)
        message(FATAL_ERROR "Dear ImGui is missing; the message above says why.")
    endif()
    set(imgui_folder ${PROJECT_SOURCE_DIR}/.cache/imgui/source)
else()
    set(imgui_folder ${IMGUI_SOURCE_DIR})
endif()
if(NOT EXISTS ${imgui_folder}/imgui.h)
    message(FATAL_ERROR "No imgui.h in ${imgui_folder}.")
endif()
file(STRINGS ${imgui_folder}/imgui.h imgui_version REGEX "define IMGUI_VERSION_NUM")
string(REGEX MATCH "[0-9]+$" imgui_version "${imgui_version}")
if(imgui_version LESS 18700)
    message(FATAL_ERROR "Dear ImGui ${imgui_version} has no input event queue; 18700 or later is needed.")
endif()

add_library(
    imgui STATIC
    ${imgui_folder}/imgui.cpp ${imgui_folder}/imgui_draw.cpp ${imgui_folder}/imgui_tables.cpp
    ${imgui_folder}/imgui_widgets.cpp ${imgui_folder}/misc/cpp/imgui_stdlib.cpp
    ${imgui_folder}/misc/freetype/imgui_freetype.cpp
)
target_include_directories(
    imgui SYSTEM PUBLIC ${imgui_folder} ${imgui_folder}/misc/cpp ${imgui_folder}/misc/freetype
)
target_compile_definitions(
    imgui
    PUBLIC IMGUI_ENABLE_FREETYPE IMGUI_USE_WCHAR32 IMGUI_DISABLE_OBSOLETE_FUNCTIONS IMGUI_ENABLE_TEST_ENGINE
)
target_link_libraries(imgui PUBLIC Freetype::Freetype)

add_library(
    imgui_window STATIC
    ${imgui_folder}/backends/imgui_impl_glfw.cpp ${imgui_folder}/backends/imgui_impl_opengl3.cpp
)
target_include_directories(imgui_window SYSTEM PUBLIC ${imgui_folder}/backends)
target_link_libraries(imgui_window PUBLIC imgui glfw OpenGL::GL ${CMAKE_DL_LIBS})
