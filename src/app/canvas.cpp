#include "app/canvas.h"

#include <glad/gl.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>
#define STB_IMAGE_WRITE_IMPLEMENTATION
#define STB_IMAGE_WRITE_STATIC
#include <stb/stb_image_write.h>

#include <cstddef>
#include <vector>

namespace app {

Canvas::Canvas(int width, int height) : width_(width), height_(height) {
    glGenTextures(1, &texture_);
    glBindTexture(GL_TEXTURE_2D, texture_);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, width, height, 0, GL_RGBA, GL_UNSIGNED_BYTE, nullptr);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
    glGenFramebuffers(1, &frame_);
    glBindFramebuffer(GL_FRAMEBUFFER, frame_);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, texture_, 0);
}

Canvas::~Canvas() {
    glDeleteFramebuffers(1, &frame_);
    glDeleteTextures(1, &texture_);
}

void Canvas::draw(ImDrawData* data) const {
    glBindFramebuffer(GL_FRAMEBUFFER, frame_);
    glViewport(0, 0, width_, height_);
    glClearColor(0.0F, 0.0F, 0.0F, 1.0F);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(data);
}

base::Result<base::Nothing> Canvas::write_png(const std::string& file) const {
    const auto row = static_cast<std::size_t>(width_) * 3;
    std::vector<unsigned char> pixels(row * static_cast<std::size_t>(height_));
    glBindFramebuffer(GL_FRAMEBUFFER, frame_);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadPixels(0, 0, width_, height_, GL_RGB, GL_UNSIGNED_BYTE, pixels.data());
    // OpenGL counts rows from below; a negative stride from the last row turns them round.
    const unsigned char* last_row = pixels.data() + row * static_cast<std::size_t>(height_ - 1);
    const int stride = -static_cast<int>(row);
    if (stbi_write_png(file.c_str(), width_, height_, 3, last_row, stride) == 0)
        return base::Error{
            base::ErrorKind::cannot_write,
            "The picture cannot be written.",
            {file, 0, 0, {}},
            "Name a file in a folder that exists and is yours."};
    return base::Nothing{};
}

} // namespace app
