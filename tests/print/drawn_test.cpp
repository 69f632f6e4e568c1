// Measured on the finished PDF, in millimetres: frames of cards, binder holes, cut marks, grids.
#include "print/drawn_shapes.h"
#include "print/printing.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace {

constexpr double near = 0.1; // mm

std::string pdf_of(const print::Blocks& blocks, const print::PrintSetup& setup) {
    const auto document = print::Document::lay_out({{"", blocks}}, "Test", setup);
    REQUIRE(document.ok());
    return document.value().pdf().value();
}

std::string blank_pages(int pages, const print::PrintSetup& setup) {
    print::Blocks blocks;
    for (int i = 0; i < pages; ++i) {
        blocks.emplace_back(print::Heading{"Leaf"});
        blocks.emplace_back(print::PageBreak{});
    }
    return pdf_of(blocks, setup);
}

// What is wrong, or empty.
std::string compared(double found, double expected, const char* what) {
    if (std::abs(found - expected) <= near) return {};
    return std::string(what) + " is " + std::to_string(found) + ", not " +
           std::to_string(expected) + ". ";
}

std::vector<printing::Shape> circles_on(const std::string& pdf, int side) {
    std::vector<printing::Shape> circles;
    for (const printing::Shape& each : printing::shapes_on(pdf, side))
        if (each.is_bent && std::abs(each.width() - each.height()) < near) circles.push_back(each);
    std::sort(circles.begin(), circles.end(), [](const auto& one, const auto& other) {
        return one.top < other.top;
    });
    return circles;
}

} // namespace

TEST_CASE("drawn: cards measure 63 by 88 mm and stand edge to edge, as large as they are called") {
    struct Expected {
        const char* paper;
        const char* card;
        double width, height;
        int columns, rows;
        double left, top; // of the first card
    };

    // Sheet less margins of 6 mm and a foot line of 6 mm, the cards in the middle.
    for (const Expected& each :
         {Expected{"a5", "63x88", 63, 88, 2, 2, 11, 14},
          {"letter", "63x88", 88, 63, 2, 4, 19.95, 10.7},
          {"a6", "63x88", 88, 63, 1, 2, 8.5, 8},
          {"a4", "4x6in", 152.4, 101.6, 1, 2, 28.8, 43.9}}) {
        CAPTURE(each.paper);
        print::PrintSetup setup = printing::setup(each.paper);
        setup.card = print::find_card_size(each.card);
        setup.has_rings = true; // cards mind no rings
        const int cards = each.columns * each.rows;
        const print::Blocks blocks(
            static_cast<std::size_t>(cards), print::Card{"Reed Lurker", "", {{"AC", "18"}}}
        );
        std::vector<printing::Shape> frames;
        std::set<int> marked; // where cut marks stand across, in tenths of a millimetre
        for (const printing::Shape& shape : printing::shapes_on(pdf_of(blocks, setup), 1)) {
            if (shape.is_bent) frames.push_back(shape);
            if (!shape.is_bent && shape.width() < near && shape.height() > 1)
                marked.insert(static_cast<int>(std::lround(shape.left * 10)));
        }
        REQUIRE(frames.size() == static_cast<std::size_t>(cards));
        std::string wrong;
        for (int i = 0; i < cards; ++i) {
            const printing::Shape& frame = frames[static_cast<std::size_t>(i)];
            wrong += compared(frame.width(), each.width, "the width");
            wrong += compared(frame.height(), each.height, "the height");
            const int column = i % each.columns;
            const int row = i / each.columns;
            wrong += compared(frame.left, each.left + column * each.width, "left");
            wrong += compared(frame.top, each.top + row * each.height, "top");
        }
        CHECK(wrong == std::string());
        CHECK(marked.size() == static_cast<std::size_t>(each.columns + 1));
        CHECK(circles_on(pdf_of(blocks, setup), 1).empty());
    }
}

TEST_CASE("drawn: binder holes stand where the rings are, on the other edge of every back") {
    struct Expected {
        const char* paper;
        double width, from_edge, diameter;
        std::vector<double> heights; // of the centres, from the upper edge
    };

    // Common practice, no source: see paper.cpp; A4: ISO 838, 80 mm apart.
    const std::vector<Expected> all{
        {"a5", 148, 7, 5.5, {32, 51, 70, 140, 159, 178}},
        {"a4", 210, 12, 6, {108.5, 188.5}},
        {"a6", 105, 6, 5.5, {10.5, 29.5, 48.5, 99.5, 118.5, 137.5}},
        {"personal", 95, 6, 5.5, {22, 41, 60, 111, 130, 149}},
        {"letter", 215.9, 12.7, 7, {31.75, 139.7, 247.65}},
        {"half-letter", 139.7, 9.5, 7, {38.1, 107.95, 177.8}}};
    for (const Expected& each : all) {
        CAPTURE(each.paper);
        print::PrintSetup setup = printing::setup(each.paper);
        CHECK(circles_on(blank_pages(1, setup), 1).empty());
        setup.has_rings = true;
        setup.is_double_sided = true;
        const std::string pdf = blank_pages(2, setup);
        for (const int side : {1, 2}) {
            CAPTURE(side);
            const auto holes = circles_on(pdf, side);
            REQUIRE(holes.size() == each.heights.size());
            std::string wrong;
            for (std::size_t i = 0; i < holes.size(); ++i) {
                const double middle = (holes[i].left + holes[i].right) / 2;
                wrong += compared(
                    middle,
                    side == 1 ? each.from_edge : each.width - each.from_edge,
                    "from the edge"
                );
                wrong += compared((holes[i].top + holes[i].foot) / 2, each.heights[i], "height");
                wrong += compared(holes[i].width(), each.diameter, "diameter");
            }
            CHECK(wrong == std::string());
        }
    }
}

TEST_CASE("drawn: two up, the cut marks stand at the edges of both pages") {
    struct Expected {
        const char* paper;
        std::vector<double> across; // mm from the left edge of the sheet
        std::size_t marks;
    };

    for (const Expected& each :
         {Expected{"a5", {0.5, 148.5, 296.5}, 6},
          {"a4", {210}, 2},
          {"a6", {105}, 2},
          {"letter", {215.9}, 2},
          {"half-letter", {139.7}, 2},
          {"personal", {53.5, 148.5, 243.5}, 10}}) {
        CAPTURE(each.paper);
        print::PrintSetup setup = printing::setup(each.paper);
        setup.arrangement = print::Arrangement::two_up;
        std::vector<double> across;
        std::size_t marks = 0;
        for (const printing::Shape& shape : printing::shapes_on(blank_pages(2, setup), 1)) {
            marks += 1;
            if (shape.height() > 1) across.push_back(shape.left);
        }
        CHECK(marks == each.marks);
        REQUIRE(across.size() == 2 * each.across.size());
        std::string wrong;
        for (std::size_t i = 0; i < across.size(); ++i)
            wrong += compared(across[i], each.across[i / 2], "a mark");
        CHECK(wrong == std::string());
    }
}

TEST_CASE("drawn: squares measure 5 mm, lines stand 8 mm apart, a hexagon is 10 mm wide") {
    const auto lines = [](print::Ruling ruling, double step_mm) {
        std::set<int> down; // tenths of a millimetre
        std::set<int> across;
        for (const printing::Shape& shape : printing::shapes_on(
                 pdf_of({print::RuledPage{ruling, step_mm}}, printing::setup("a5")), 1
             )) {
            if (shape.height() < near) down.insert(static_cast<int>(std::lround(shape.top * 10)));
            if (shape.width() < near) across.insert(static_cast<int>(std::lround(shape.left * 10)));
        }
        return std::pair(down, across);
    };
    const auto steps = [](const std::set<int>& places) {
        std::set<int> found;
        for (auto each = places.begin(); std::next(each) != places.end(); ++each)
            found.insert(*std::next(each) - *each);
        return found;
    };
    const auto squares = lines(print::Ruling::squares, 5);
    CHECK(steps(squares.first) == std::set<int>{50});
    CHECK(steps(squares.second) == std::set<int>{50});
    CHECK(steps(lines(print::Ruling::lines, 8).first) == std::set<int>{80});
    // Rows are shifted by half: flat sides every 5 mm.
    CHECK(steps(lines(print::Ruling::hexagons, 10).second) == std::set<int>{50});
}

TEST_CASE("drawn: a large picture is kept at 300 dots an inch of its place") {
    auto pixels = std::make_shared<print::Pixels>();
    *pixels = {2400, 3000, std::vector<std::uint8_t>(std::size_t{2400} * 3000 * 3, 90)};
    const auto dots =
        printing::picture_dots(pdf_of({print::Picture{pixels}}, printing::setup("a5")));
    REQUIRE(dots.size() == 1);
    CHECK(dots[0] == doctest::Approx(300).epsilon(0.01));
}
