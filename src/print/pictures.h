// The GM's own pictures for printed pages.
#pragma once

#include "base/result.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace print {

// Rows from the top, three bytes a pixel: red, green, blue. What was see-through is white, as the
// paper is.
struct Pixels {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgb;

    const std::uint8_t* at(int x, int y) const {
        return &rgb
            [(static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
              static_cast<std::size_t>(x)) *
             3];
    }
};

inline constexpr std::int64_t picture_pixels_max = 60'000'000;

// Bytes of a file. Errors: not_found, cannot_read.
using ReadFile = std::function<base::Result<std::string>(const std::string& path)>;

// A PNG or JPEG file, turned the way its camera was held (Exif orientation). Errors name the file:
// those of `read_file`, wrong_format, too_large.
base::Result<std::shared_ptr<const Pixels>>
read_picture(const ReadFile& read_file, const std::string& path);

// No side longer than asked for: each new pixel is the mean of what it covers. Never larger.
std::shared_ptr<const Pixels>
scaled_down(std::shared_ptr<const Pixels> pixels, int width_max, int height_max);

// How a camera was held: 1 upright .. 8; 1 where the file does not say. Source: Exif 2.3 (CIPA
// DC-008), tag 0x0112 Orientation, from memory.
int exif_orientation(const std::string& jpeg);

} // namespace print
