// Paper to draw and write on.
#include "print/pages.h"

#include <array>

namespace print {

namespace {

struct RulingWord {
    const char* word;
    Ruling ruling;
    double step_mm; // squares and dots of 5 mm, lines of 8 mm: common practice, no source
};

constexpr std::array<RulingWord, 5> rulings{{
    {"squares", Ruling::squares, 5},
    {"hexes", Ruling::hexagons, 10},
    {"dots", Ruling::dots, 5},
    {"lines", Ruling::lines, 8},
    {"staves", Ruling::staves, 2},
}};

} // namespace

base::Result<Blocks> ruled_page(const PrintSource& /*source*/, const std::string& detail) {
    for (const RulingWord& each : rulings)
        if (each.word == detail || (detail.empty() && each.ruling == Ruling::squares))
            return Blocks{RuledPage{each.ruling, each.step_mm}};
    return base::Error{
        base::ErrorKind::not_found,
        "There is no paper with " + detail + ".",
        {},
        "Paper: squares, hexes, dots, lines, staves."};
}

} // namespace print
