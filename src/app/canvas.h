// An image in the graphics memory that frames are drawn into, to be written as a PNG file.
#pragma once

#include "base/result.h"

#include <string>

struct ImDrawData;

namespace app {

class Canvas {
public:
    Canvas(int width, int height); // needs a current OpenGL context
    ~Canvas();
    Canvas(const Canvas&) = delete;
    Canvas& operator=(const Canvas&) = delete;

    void draw(ImDrawData* data) const;
    base::Result<base::Nothing> write_png(const std::string& file) const;

private:
    int width_;
    int height_;
    unsigned frame_ = 0;
    unsigned texture_ = 0;
};

} // namespace app
