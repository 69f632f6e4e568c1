// Pictures of pages in the graphics memory.
#pragma once

#include "app/print_desk.h"

namespace app {

// For PrintDesk. Needs a current OpenGL context; a frame may be going on.
std::uint64_t show_page_image(const SideImage& image, std::uint64_t former);

} // namespace app
