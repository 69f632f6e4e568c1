#include "widgets/contrast.h"

#include <algorithm>
#include <cmath>

namespace widgets {

namespace {

// The inverse of the transfer function of sRGB, with the threshold that WCAG 2.2 prints.
double linear(std::uint8_t value) {
    const double share = static_cast<double>(value) / 255.0;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

std::uint8_t mixed(std::uint8_t above, std::uint8_t below, double opacity) {
    const double value =
        static_cast<double>(above) * opacity + static_cast<double>(below) * (1.0 - opacity);
    return static_cast<std::uint8_t>(std::lround(std::clamp(value, 0.0, 255.0)));
}

} // namespace

double relative_luminance(Rgb colour) {
    return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) +
           0.0722 * linear(colour.blue);
}

double contrast_ratio(Rgb one, Rgb two) {
    const double first = relative_luminance(one);
    const double second = relative_luminance(two);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

Rgb blended(Rgb above, Rgb below, double opacity) {
    return {
        mixed(above.red, below.red, opacity),
        mixed(above.green, below.green, opacity),
        mixed(above.blue, below.blue, opacity)};
}

} // namespace widgets
