// Which page comes where on which side of which sheet of paper, and where to cut. Pure geometry.
#pragma once

#include "print/paper.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace print {

struct PlacedPage {
    std::optional<std::size_t> page; // from 0; none: stays blank
    double x_mm = 0;                 // of its upper left corner on the sheet
    double y_mm = 0;
};

struct CutMark {
    double x1_mm = 0;
    double y1_mm = 0;
    double x2_mm = 0;
    double y2_mm = 0;
};

struct SheetSide {
    std::vector<PlacedPage> pages; // from the left
    std::vector<CutMark> cut_marks;
};

SizeMm sheet_size(const PrintSetup& setup);

// The sides in the order they are printed: front, back, front, ... where both sides are printed.
// Two up on both sides: what stands behind a page when the sheet is turned over its short edge is
// the next one. Booklet: padded with blanks to full sheets of four pages; printed on both sides,
// turned over the short edge, stacked and folded. Common practice, no source.
std::vector<SheetSide> sheet_sides(const PrintSetup& setup, std::size_t pages);

} // namespace print
