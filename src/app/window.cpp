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

struct Size {
    int width = 1280;
    int height = 800;
};

// As wished, or the usual size on this display; never larger than the display.
Size fitting_size(const Window::Wish& wish) {
    Size size{wish.width, wish.height};
    GLFWmonitor* monitor = glfwGetPrimaryMonitor();
    const bool is_usual = wish.width <= 0 || wish.height <= 0;
    if (is_usual) size = Size();
    if (monitor == nullptr) return size;
    float scale = 1.0F;
    glfwGetMonitorContentScale(monitor, &scale, nullptr);
    if (is_usual) {
        size.width = static_cast<int>(static_cast<float>(size.width) * scale);
        size.height = static_cast<int>(static_cast<float>(size.height) * scale);
    }
    Size most;
    glfwGetMonitorWorkarea(monitor, nullptr, nullptr, &most.width, &most.height);
    if (most.width > 0) size.width = std::min(size.width, most.width);
    if (most.height > 0) size.height = std::min(size.height, most.height);
    return size;
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
    const Size size = fitting_size(wish);
    GLFWwindow* handle =
        glfwCreateWindow(size.width, size.height, wish.title.c_str(), nullptr, nullptr);
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
