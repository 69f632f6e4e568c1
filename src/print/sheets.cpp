#include "print/sheets.h"

namespace print {

namespace {

constexpr double mark_length = 4; // mm; shorter than any margin, so it meets no text

std::vector<CutMark> cut_marks(const PrintSetup& setup, double left, double top) {
    const SizeMm sheet = sheet_size(setup);
    const SizeMm& page = setup.paper->size;
    std::vector<CutMark> marks;
    const double foot = top + page.height;
    for (int edge = 0; edge <= 2; ++edge) {
        const double x = left + edge * page.width;
        if (x <= 0 || x >= sheet.width) continue;
        // Outside of the page where the sheet is larger, else just within its margin.
        const double above = top >= mark_length ? top - mark_length : top;
        const double below = foot + mark_length <= sheet.height ? foot : foot - mark_length;
        marks.push_back({x, above, x, above + mark_length});
        marks.push_back({x, below, x, below + mark_length});
    }
    if (top < mark_length || left < mark_length) return marks;
    for (const double y : {top, foot}) {
        const double right = left + 2 * page.width;
        marks.push_back({left - mark_length, y, left, y});
        marks.push_back({right, y, right + mark_length, y});
    }
    return marks;
}

} // namespace

SizeMm sheet_size(const PrintSetup& setup) {
    return setup.arrangement == Arrangement::one_up ? setup.paper->size : setup.paper->two_up;
}

std::vector<SheetSide> sheet_sides(const PrintSetup& setup, std::size_t pages) {
    std::vector<SheetSide> sides;
    if (setup.arrangement == Arrangement::one_up) {
        for (std::size_t page = 0; page < pages; ++page)
            sides.push_back({{{page, 0, 0}}, {}});
        return sides;
    }
    const SizeMm sheet = sheet_size(setup);
    const double left = (sheet.width - 2 * setup.paper->size.width) / 2;
    const double top = (sheet.height - setup.paper->size.height) / 2;
    const auto add_side = [&](std::size_t one, std::size_t other) {
        SheetSide side;
        const auto real = [pages](std::size_t page) {
            return page < pages ? std::optional<std::size_t>(page) : std::nullopt;
        };
        side.pages.push_back({real(one), left, top});
        side.pages.push_back({real(other), left + setup.paper->size.width, top});
        if (setup.arrangement == Arrangement::two_up) side.cut_marks = cut_marks(setup, left, top);
        sides.push_back(std::move(side));
    };
    if (setup.arrangement == Arrangement::booklet) {
        const std::size_t padded = (pages + 3) / 4 * 4;
        for (std::size_t sheet_number = 0; sheet_number < padded / 4; ++sheet_number) {
            const std::size_t first = 2 * sheet_number;
            const std::size_t last = padded - 1 - first;
            add_side(last, first);
            add_side(first + 1, last - 1);
        }
    } else if (setup.is_double_sided) {
        for (std::size_t first = 0; first < pages; first += 4) {
            add_side(first, first + 2);
            if (first + 1 < pages) add_side(first + 3, first + 1);
        }
    } else {
        for (std::size_t first = 0; first < pages; first += 2)
            add_side(first, first + 1);
    }
    return sides;
}

} // namespace print
