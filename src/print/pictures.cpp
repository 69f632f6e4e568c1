#include "print/pictures.h"

#define STB_IMAGE_IMPLEMENTATION
#define STB_IMAGE_STATIC
#define STBI_NO_STDIO
#define STBI_NO_LINEAR
#define STBI_NO_HDR
#define STBI_ONLY_JPEG
#define STBI_ONLY_PNG
#include <stb/stb_image.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace print {

namespace {

std::size_t offset(int x, int y, int width) {
    return (static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
            static_cast<std::size_t>(x)) *
           3;
}

Pixels blank(int width, int height) {
    return {width, height, std::vector<std::uint8_t>(offset(0, height, width))};
}

// See-through pixels lie on white paper.
Pixels on_white(const stbi_uc* rgba, int width, int height) {
    constexpr unsigned full = 255;
    Pixels pixels = blank(width, height);
    for (std::size_t i = 0; i < pixels.rgb.size() / 3; ++i) {
        const unsigned alpha = rgba[4 * i + 3];
        for (std::size_t colour = 0; colour < 3; ++colour)
            pixels.rgb[3 * i + colour] = static_cast<std::uint8_t>(
                (rgba[4 * i + colour] * alpha + full * (full - alpha) + full / 2) / full
            );
    }
    return pixels;
}

// Upright, from how the camera was held.
Pixels upright(Pixels pixels, int orientation) {
    if (orientation == 1) return pixels;
    const bool is_on_side = orientation >= 5;
    const int width = pixels.width;
    const int height = pixels.height;
    Pixels turned = is_on_side ? blank(height, width) : blank(width, height);
    const bool from_right = orientation == 2 || orientation == 3 || orientation >= 7;
    const bool from_foot =
        orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
    for (int y = 0; y < turned.height; ++y)
        for (int x = 0; x < turned.width; ++x) {
            const int across = is_on_side ? y : x;
            const int down = is_on_side ? x : y;
            const std::uint8_t* from = pixels.at(
                from_right ? width - 1 - across : across, from_foot ? height - 1 - down : down
            );
            std::copy(from, from + 3, &turned.rgb[offset(x, y, turned.width)]);
        }
    return turned;
}

// Narrower, and with rows and columns exchanged: twice gives both directions.
Pixels narrowed_and_turned(const Pixels& pixels, int width) {
    Pixels result = blank(pixels.height, width);
    const double step = static_cast<double>(pixels.width) / width;
    for (int y = 0; y < pixels.height; ++y) // rows as they lie in memory
        for (int x = 0; x < width; ++x) {
            const double from = x * step;
            const double to = std::min<double>(from + step, pixels.width);
            const int last = std::min(static_cast<int>(std::ceil(to)), pixels.width) - 1;
            double sums[3] = {0, 0, 0};
            for (int each = static_cast<int>(from); each <= last; ++each) {
                const double covered =
                    std::min<double>(to, each + 1) - std::max<double>(from, each);
                const std::uint8_t* rgb = pixels.at(each, y);
                for (std::size_t colour = 0; colour < 3; ++colour)
                    sums[colour] += covered * rgb[colour];
            }
            std::uint8_t* target = &result.rgb[offset(y, x, result.width)];
            for (std::size_t colour = 0; colour < 3; ++colour)
                target[colour] = static_cast<std::uint8_t>(std::lround(sums[colour] / (to - from)));
        }
    return result;
}

// Reads numbers of the two byte orders of Exif; nothing beyond the end.
class Bytes {
public:
    explicit Bytes(std::string_view bytes) : bytes_(bytes) {}

    bool is_little_endian = false;

    std::optional<std::uint32_t> number(std::size_t at, std::size_t size) const {
        if (at > bytes_.size() || size > bytes_.size() - at) return std::nullopt;
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            const std::size_t from = is_little_endian ? at + size - 1 - i : at + i;
            value = (value << 8U) | static_cast<std::uint8_t>(bytes_[from]);
        }
        return value;
    }

private:
    std::string_view bytes_;
};

int orientation_of(std::string_view tiff) {
    Bytes bytes(tiff);
    bytes.is_little_endian = tiff.substr(0, 2) == "II";
    const std::size_t directory = bytes.number(4, 4).value_or(0);
    const std::size_t entries = bytes.number(directory, 2).value_or(0);
    for (std::size_t i = 0; i < entries; ++i) {
        constexpr std::size_t entry_size = 12;
        constexpr std::uint32_t orientation_tag = 0x0112;
        const std::size_t entry = directory + 2 + i * entry_size;
        if (bytes.number(entry, 2) != orientation_tag) continue;
        const std::uint32_t value = bytes.number(entry + 8, 2).value_or(1);
        return value >= 1 && value <= 8 ? static_cast<int>(value) : 1;
    }
    return 1;
}

base::Error refusal(
    base::ErrorKind kind, std::string message, const std::string& path, std::string remedy = {}
) {
    return {kind, std::move(message), {path, 0, 0, {}}, std::move(remedy)};
}

struct PixelsEnd {
    void operator()(stbi_uc* pixels) const { stbi_image_free(pixels); }
};

} // namespace

int exif_orientation(const std::string& jpeg) {
    using namespace std::string_view_literals;
    constexpr std::uint32_t exif_segment = 0xFFE1;
    constexpr std::uint32_t first_marker = 0xFFC0;
    constexpr std::uint32_t picture_itself = 0xFFDA;
    const Bytes bytes(jpeg);
    if (bytes.number(0, 2) != 0xFFD8) return 1;
    for (std::size_t at = 2;;) {
        const auto marker = bytes.number(at, 2);
        const auto length = bytes.number(at + 2, 2);
        if (!marker.has_value() || !length.has_value() || *marker < first_marker ||
            *marker == picture_itself || *length < 2)
            return 1;
        const std::string_view segment = std::string_view(jpeg).substr(at + 4, *length - 2);
        const std::string_view sign = "Exif\0\0"sv;
        if (*marker == exif_segment && segment.substr(0, sign.size()) == sign)
            return orientation_of(segment.substr(sign.size()));
        at += 2 + *length;
    }
}

base::Result<std::shared_ptr<const Pixels>>
read_picture(const ReadFile& read_file, const std::string& path) {
    if (!read_file)
        return refusal(base::ErrorKind::cannot_read, "No pictures can be read here.", path);
    const auto bytes = read_file(path);
    if (!bytes.ok()) {
        base::Error error = bytes.error();
        if (error.place.file.empty()) error.place.file = path;
        return error;
    }
    const base::Error no_picture = refusal(
        base::ErrorKind::wrong_format,
        "This is no picture that can be read.",
        path,
        "Take a PNG or JPEG file."
    );
    if (bytes.value().size() > static_cast<std::size_t>(std::numeric_limits<int>::max()))
        return no_picture;
    const auto* data = reinterpret_cast<const stbi_uc*>(bytes.value().data());
    const int size = static_cast<int>(bytes.value().size());
    int width = 0;
    int height = 0;
    int channels = 0;
    if (stbi_info_from_memory(data, size, &width, &height, &channels) == 0 || width < 1 ||
        height < 1)
        return no_picture;
    if (std::int64_t{width} * height > picture_pixels_max)
        return refusal(
            base::ErrorKind::too_large,
            "The picture has " + std::to_string(width) + " x " + std::to_string(height) +
                " pixels; at most " + std::to_string(picture_pixels_max / 1'000'000) +
                " million can be printed.",
            path,
            "Make it smaller."
        );
    constexpr int with_alpha = 4;
    const std::unique_ptr<stbi_uc, PixelsEnd> rgba(
        stbi_load_from_memory(data, size, &width, &height, &channels, with_alpha)
    );
    if (rgba == nullptr) return no_picture;
    return std::shared_ptr<const Pixels>(std::make_shared<Pixels>(
        upright(on_white(rgba.get(), width, height), exif_orientation(bytes.value()))
    ));
}

std::shared_ptr<const Pixels>
scaled_down(std::shared_ptr<const Pixels> pixels, int width_max, int height_max) {
    const double scale = std::min(
        static_cast<double>(width_max) / pixels->width,
        static_cast<double>(height_max) / pixels->height
    );
    if (scale >= 1) return pixels;
    const int width = std::max(1, static_cast<int>(std::lround(pixels->width * scale)));
    const int height = std::max(1, static_cast<int>(std::lround(pixels->height * scale)));
    return std::make_shared<Pixels>(narrowed_and_turned(narrowed_and_turned(*pixels, width), height)
    );
}

} // namespace print
