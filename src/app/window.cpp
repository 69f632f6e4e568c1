#include "app/window.h"

#include <glad/gl.h>
// After glad: GLFW must not bring an OpenGL header of its own.
#define GLFW_INCLUDE_NONE
#include <GLFW/glfw3.h>

#include <algorithm>

namespace app {

namespace {

std::string last_glfw_error; // what the library said last; it has no other way to tell

void keep_error(int /*code*/, const char* description) {
    last_glfw_error = description == nullptr ? "" : description;
}

base::Error no_display(std::string message, std::string remedy) {
    if (!last_glfw_error.empty()) message += " (" + last_glfw_error + ")";
    return {base::ErrorKind::no_display, message + ".", {}, std::move(remedy)};
}

} // namespace

base::Result<std::unique_ptr<Window>> Window::open(const Wish& wish) {
    glfwSetErrorCallback(keep_error);
    if (glfwInit() != GLFW_TRUE)
        return no_display(
            "There is no display to open a window on",
            "Start Tablewick from a desktop, or draw a picture under xvfb-run with --picture."
        );
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
    glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
    glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
    glfwWindowHint(GLFW_VISIBLE, wish.is_visible ? GLFW_TRUE : GLFW_FALSE);
    glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);
    GLFWwindow* handle =
        glfwCreateWindow(wish.width, wish.height, wish.title.c_str(), nullptr, nullptr);
    const char* remedy = "Update the graphics driver, or set LIBGL_ALWAYS_SOFTWARE=1 to draw "
                         "without it.";
    if (handle == nullptr) {
        glfwTerminate();
        return no_display("This display offers no OpenGL 3.3", remedy);
    }
    glfwMakeContextCurrent(handle);
    std::unique_ptr<Window> window(new Window(handle));
    if (gladLoadGL(glfwGetProcAddress) == 0)
        return no_display("The functions of OpenGL 3.3 cannot be found", remedy);
    glfwSwapInterval(1);
    return window;
}

Window::~Window() {
    glfwDestroyWindow(handle_);
    glfwTerminate();
}

float Window::display_scale() const {
    float across = 1.0F;
    float down = 1.0F;
    glfwGetWindowContentScale(handle_, &across, &down);
    return std::clamp(std::max(across, down), 0.5F, 4.0F);
}

} // namespace app
