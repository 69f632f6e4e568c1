// Blank pages to draw and write on.
#include "print/pieces.h"

#include <cmath>
#include <numbers>

namespace print {

namespace {

constexpr double pale = 0.65;
constexpr double thin = 0.4;
constexpr double rounding = 0.001;

std::vector<Mark> squares(double width, double height, double step) {
    std::vector<Mark> marks;
    const double right = std::floor(width / step + rounding) * step;
    const double foot = std::floor(height / step + rounding) * step;
    for (double x = 0; x <= right + rounding; x += step)
        marks.emplace_back(LineMark{x, 0, x, foot, thin, pale});
    for (double y = 0; y <= foot + rounding; y += step)
        marks.emplace_back(LineMark{0, y, right, y, thin, pale});
    return marks;
}

std::vector<Mark> dots(double width, double height, double step) {
    std::vector<Mark> marks;
    for (double y = step / 2; y <= height; y += step)
        for (double x = step / 2; x <= width; x += step)
            marks.emplace_back(DotMark{x, y, 0.6, 0.45});
    return marks;
}

std::vector<Mark> lines(double width, double height, double step) {
    std::vector<Mark> marks;
    for (double y = step; y <= height + rounding; y += step)
        marks.emplace_back(LineMark{0, y, width, y, thin, pale});
    return marks;
}

// Pointed at the top; `step` is the distance between two flat sides.
std::vector<Mark> hexagons(double width, double height, double step) {
    const double side = step / std::numbers::sqrt3;
    std::vector<Mark> marks;
    const int rows = static_cast<int>(std::floor((height - side / 2) / (1.5 * side)));
    for (int row = 0; row < rows; ++row) {
        const double shift = row % 2 == 0 ? 0 : step / 2;
        const double top = row * 1.5 * side;
        const int columns = static_cast<int>(std::floor((width - shift) / step + rounding));
        for (int column = 0; column < columns; ++column) {
            const double x = shift + column * step;
            const double xs[] = {x, x + step / 2, x + step, x + step, x + step / 2, x, x};
            const double ys[] = {0.5, 0, 0.5, 1.5, 2, 1.5, 0.5};
            for (int i = 0; i < 6; ++i)
                marks.emplace_back(LineMark{
                    xs[i], top + ys[i] * side, xs[i + 1], top + ys[i + 1] * side, thin, pale});
        }
    }
    return marks;
}

// Five close lines, then room for words: a week at a glance, a day a staff, or music.
std::vector<Mark> staves(double width, double height, double step) {
    constexpr int lines_of_a_staff = 5;
    std::vector<Mark> marks;
    const double staff = (lines_of_a_staff - 1) * step;
    for (double top = step; top + staff <= height; top += staff + 4 * step)
        for (int line = 0; line < lines_of_a_staff; ++line)
            marks.emplace_back(LineMark{0, top + line * step, width, top + line * step, thin, pale}
            );
    return marks;
}

} // namespace

void add_ruled_page(Pieces& pieces, const RuledPage& page, const Room& room) {
    Piece piece;
    const double step = page.step_mm * points_per_mm;
    piece.height = 4 * step;
    piece.fill = [page, step, width = room.width](double height) {
        switch (page.ruling) {
        case Ruling::squares: return squares(width, height, step);
        case Ruling::hexagons: return hexagons(width, height, step);
        case Ruling::dots: return dots(width, height, step);
        case Ruling::lines: return lines(width, height, step);
        case Ruling::staves: return staves(width, height, step);
        }
        return std::vector<Mark>();
    };
    pieces.push_back(std::move(piece));
}

} // namespace print
