// The one layout engine: blocks become pages of marks at fixed places. Lengths in points, from the
// upper left corner of the content box.
#pragma once

#include "print/blocks.h"
#include "print/texts.h"

#include <memory>
#include <variant>
#include <vector>

namespace print {

struct TextMark {
    TextLine line;
    double x = 0; // of the left edge of what is seen
    double y = 0; // upper edge
};

struct LineMark {
    double x1 = 0;
    double y1 = 0;
    double x2 = 0;
    double y2 = 0;
    double thickness = 0.5;
    double grey = 0; // 0 black .. 1 white
};

struct BoxMark {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    double radius = 0;      // of its corners
    double thickness = 0.7; // 0: no border
    double fill_grey = 1;   // 1: none
};

struct DotMark {
    double x = 0;
    double y = 0;
    double radius = 0.5;
    double grey = 0;
};

struct Point {
    double x = 0;
    double y = 0;
};

// Curves joined end to end.
struct CurveMark {
    double x = 0; // where the points count from
    double y = 0;
    std::vector<Point> points; // the start, then three a curve: two that bend it, and its end
    double thickness = 1.0;    // 0: no stroke
    double grey = 0;
    bool is_filled = false;
};

struct PictureMark {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    std::shared_ptr<const Pixels> pixels;
};

using Mark = std::variant<BoxMark, LineMark, DotMark, TextMark, CurveMark, PictureMark>;

struct LaidPage {
    std::vector<Mark> marks;
    PageUse use = PageUse::bound;
};

// Every block in its order, over as many pages as it takes; at least one page.
std::vector<LaidPage> lay_out(const Blocks& blocks, const PrintSetup& setup, const Texts& texts);

// Left for the content on a page, without the foot line.
double content_width(const PrintSetup& setup, PageUse use = PageUse::bound);
double content_height(const PrintSetup& setup, PageUse use = PageUse::bound);

// Of the strip at the foot that holds the name and number of the page.
double foot_height(const PrintSetup& setup);

} // namespace print
