#include "app/page_texture.h"

#include <glad/gl.h>

namespace app {

std::uint64_t show_page_image(const SideImage& image, std::uint64_t former) {
    auto texture = static_cast<GLuint>(former);
    GLint bound_before = 0;
    glGetIntegerv(GL_TEXTURE_BINDING_2D, &bound_before);
    if (texture == 0) glGenTextures(1, &texture);
    glBindTexture(GL_TEXTURE_2D, texture);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 4);
    glTexImage2D(
        GL_TEXTURE_2D,
        0,
        GL_RGBA8,
        image.width,
        image.height,
        0,
        GL_RGBA,
        GL_UNSIGNED_BYTE,
        image.pixels.data()
    );
    glBindTexture(GL_TEXTURE_2D, static_cast<GLuint>(bound_before));
    return texture;
}

} // namespace app
