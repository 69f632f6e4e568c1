// The native window with its OpenGL 3.3 core context. Hidden, it serves as the ground for pictures.
#pragma once

#include "base/result.h"

#include <memory>
#include <string>

struct GLFWwindow;

namespace app {

class Window {
public:
    struct Wish {
        std::string title = "Tablewick";
        int width = 0; // 0: the usual size on this display
        int height = 0;
        bool is_visible = true;
    };

    // Errors (no_display) say in one line what is missing and what to do.
    static base::Result<std::unique_ptr<Window>> open(const Wish& wish);
    ~Window();
    Window(const Window&) = delete;
    Window& operator=(const Window&) = delete;

    GLFWwindow* handle() const { return handle_; }

    // Pixels of the display per pixel of a plain one.
    float display_scale() const;

private:
    explicit Window(GLFWwindow* handle) : handle_(handle) {}

    GLFWwindow* handle_;
};

} // namespace app
