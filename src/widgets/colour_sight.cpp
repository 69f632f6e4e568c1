#include "widgets/colour_sight.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace widgets {

namespace {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>;

constexpr double degree = std::numbers::pi / 180.0;

double to_linear(std::uint8_t part) {
    const double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

std::uint8_t from_linear(double light) {
    const double held = std::clamp(light, 0.0, 1.0);
    const double share =
        held <= 0.0031308 ? held * 12.92 : 1.055 * std::pow(held, 1.0 / 2.4) - 0.055;
    return static_cast<std::uint8_t>(std::lround(share * 255.0));
}

Triple linear_of(Rgb colour) {
    return {to_linear(colour.red), to_linear(colour.green), to_linear(colour.blue)};
}

Triple times(const Matrix& matrix, const Triple& triple) {
    Triple made{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column)
            made.at(row) += matrix.at(row).at(column) * triple.at(column);
    return made;
}

const Matrix& matrix_of(ColourSight sight) {
    static constexpr Matrix usual{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    static constexpr Matrix no_red{
        {{0.152286, 1.052583, -0.204868},
         {0.114503, 0.786281, 0.099216},
         {-0.003882, -0.048116, 1.051998}}};
    static constexpr Matrix no_green{
        {{0.367322, 0.860646, -0.227968},
         {0.280085, 0.672501, 0.047413},
         {-0.011820, 0.042940, 0.968881}}};
    static constexpr Matrix no_blue{
        {{1.255528, -0.076749, -0.178779},
         {-0.078411, 0.930809, 0.147602},
         {0.004733, 0.691367, 0.303900}}};
    switch (sight) {
    case ColourSight::usual: return usual;
    case ColourSight::no_red: return no_red;
    case ColourSight::no_green: return no_green;
    case ColourSight::no_blue: return no_blue;
    }
    return usual;
}

// 0..360; 0 for grey.
double hue_of(double a, double b) {
    if (a == 0.0 && b == 0.0) return 0.0;
    const double hue = std::atan2(b, a) / degree;
    return hue < 0.0 ? hue + 360.0 : hue;
}

// Of a chroma: how far the blues are bent.
double bend_of(double chroma) {
    const double power = std::pow(chroma, 7.0);
    return std::sqrt(power / (power + std::pow(25.0, 7.0)));
}

} // namespace

Lab lab_of(Rgb colour) {
    static constexpr Matrix to_xyz{
        {{0.4124564, 0.3575761, 0.1804375},
         {0.2126729, 0.7151522, 0.0721750},
         {0.0193339, 0.1191920, 0.9503041}}};
    const Triple xyz = times(to_xyz, linear_of(colour));
    const auto bent = [](double share) {
        return share > 216.0 / 24389.0 ? std::cbrt(share) : (24389.0 / 27.0 * share + 16.0) / 116.0;
    };
    const double x = bent(xyz[0] / 0.95047);
    const double y = bent(xyz[1]);
    const double z = bent(xyz[2] / 1.08883);
    return {116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)};
}

double colour_difference(Lab one, Lab other) {
    const double plain_chroma = (std::hypot(one.a, one.b) + std::hypot(other.a, other.b)) / 2.0;
    const double stretch = 1.0 + 0.5 * (1.0 - bend_of(plain_chroma));
    one.a *= stretch;
    other.a *= stretch;
    const double chroma_one = std::hypot(one.a, one.b);
    const double chroma_other = std::hypot(other.a, other.b);
    const double hue_one = hue_of(one.a, one.b);
    const double hue_other = hue_of(other.a, other.b);
    const bool is_grey = chroma_one * chroma_other == 0.0;

    double turn = is_grey ? 0.0 : hue_other - hue_one;
    if (turn > 180.0) turn -= 360.0;
    if (turn < -180.0) turn += 360.0;
    double hue = hue_one + hue_other;
    if (!is_grey) {
        const double sum = hue;
        hue = sum / 2.0;
        if (std::abs(hue_one - hue_other) > 180.0) hue += sum < 360.0 ? 180.0 : -180.0;
    }
    const double lightness = (one.lightness + other.lightness) / 2.0;
    const double chroma = (chroma_one + chroma_other) / 2.0;
    const double weight =
        1.0 - 0.17 * std::cos((hue - 30.0) * degree) + 0.24 * std::cos(2.0 * hue * degree) +
        0.32 * std::cos((3.0 * hue + 6.0) * degree) - 0.20 * std::cos((4.0 * hue - 63.0) * degree);
    const double off_middle = (lightness - 50.0) * (lightness - 50.0);
    const double by_lightness = (other.lightness - one.lightness) /
                                (1.0 + 0.015 * off_middle / std::sqrt(20.0 + off_middle));
    const double by_chroma = (chroma_other - chroma_one) / (1.0 + 0.045 * chroma);
    const double by_hue = 2.0 * std::sqrt(chroma_one * chroma_other) *
                          std::sin(turn / 2.0 * degree) / (1.0 + 0.015 * chroma * weight);
    const double blue = 30.0 * std::exp(-std::pow((hue - 275.0) / 25.0, 2.0));
    const double turned = -std::sin(2.0 * blue * degree) * 2.0 * bend_of(chroma);
    return std::sqrt(
        by_lightness * by_lightness + by_chroma * by_chroma + by_hue * by_hue +
        turned * by_chroma * by_hue
    );
}

Rgb seen_with(ColourSight sight, Rgb colour) {
    const Triple seen = times(matrix_of(sight), linear_of(colour));
    return {from_linear(seen[0]), from_linear(seen[1]), from_linear(seen[2])};
}

} // namespace widgets
