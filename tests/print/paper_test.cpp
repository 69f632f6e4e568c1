// Papers, margins, binder holes, and the order of pages on sheets.
#include "print/paper.h"
#include "print/sheets.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

namespace {

print::PrintSetup on(const char* paper) {
    print::PrintSetup setup;
    setup.paper = print::find_paper(paper);
    REQUIRE(setup.paper != nullptr);
    return setup;
}

// "4 1|2 3": pages from 1, a side a word, 0 for a blank.
std::string order(const print::PrintSetup& setup, std::size_t pages) {
    std::string text;
    for (const print::SheetSide& side : print::sheet_sides(setup, pages)) {
        if (!text.empty()) text += '|';
        for (std::size_t i = 0; i < side.pages.size(); ++i) {
            if (i > 0) text += ' ';
            const auto page = side.pages[i].page;
            text += page.has_value() ? std::to_string(*page + 1) : "0";
        }
    }
    return text;
}

} // namespace

TEST_CASE("paper: A sizes are those of ISO 216, Letter that of ANSI/ASME Y14.1") {
    // ISO 216:2007, table 1: A4 210 x 297, A5 148 x 210, A6 105 x 148 mm.
    CHECK(print::find_paper("a4")->size == print::SizeMm{210, 297});
    CHECK(print::find_paper("a5")->size == print::SizeMm{148, 210});
    CHECK(print::find_paper("a6")->size == print::SizeMm{105, 148});
    CHECK(print::find_paper("letter")->size.width == doctest::Approx(215.9));
    CHECK(print::find_paper("letter")->size.height == doctest::Approx(279.4));
    CHECK(print::find_paper("half-letter")->size.width == doctest::Approx(139.7));
    CHECK(print::find_paper("a7") == nullptr);
    for (const print::Paper& paper : print::papers()) {
        CAPTURE(paper.name);
        CHECK(paper.two_up.width >= 2 * paper.size.width);
        CHECK(paper.two_up.height >= paper.size.height);
    }
}

TEST_CASE("paper: six rings of A5 stand 19 mm apart in two groups, 70 mm between them") {
    // Common practice, no source.
    print::PrintSetup setup = on("a5");
    CHECK(print::holes(setup, 0).empty());
    setup.has_rings = true;
    const auto centres = print::holes(setup, 0);
    REQUIRE(centres.size() == 6);
    const double steps[] = {19, 19, 70, 19, 19};
    for (std::size_t i = 0; i + 1 < centres.size(); ++i)
        CHECK(centres[i + 1].y - centres[i].y == doctest::Approx(steps[i]));
    CHECK(centres.front().y + centres.back().y == doctest::Approx(210)); // centred
}

TEST_CASE("paper: two holes of A4 stand 80 mm apart, 12 mm from the edge (ISO 838)") {
    print::PrintSetup setup = on("a4");
    setup.has_rings = true;
    const auto centres = print::holes(setup, 0);
    REQUIRE(centres.size() == 2);
    CHECK(centres[1].y - centres[0].y == doctest::Approx(80));
    CHECK(centres[0].x == doctest::Approx(12));
}

TEST_CASE("paper: no hole meets the text, on either side of the leaf and on any paper") {
    for (const print::Paper& paper : print::papers()) {
        CAPTURE(paper.name);
        print::PrintSetup setup = on(std::string(paper.key).c_str());
        setup.has_rings = true;
        setup.is_double_sided = true;
        for (std::size_t page : {0U, 1U}) {
            const print::BoxMm box = print::content_box(setup, page);
            for (const print::HoleMm& hole : print::holes(setup, page)) {
                const double radius = hole.diameter / 2;
                CHECK((hole.x + radius < box.x || hole.x - radius > box.x + box.width));
                CHECK(hole.y - radius > 0);
                CHECK(hole.y + radius < paper.size.height);
            }
        }
        // The same hole goes through both sides of the leaf.
        CHECK(
            print::holes(setup, 0)[0].x ==
            doctest::Approx(paper.size.width - print::holes(setup, 1)[0].x)
        );
        CHECK(print::content_box(setup, 0).width == print::content_box(setup, 1).width);
    }
}

TEST_CASE("paper: pages printed on one side are all bound at the left") {
    print::PrintSetup setup = on("a5");
    setup.has_rings = true;
    CHECK(print::content_box(setup, 1).x == print::content_box(setup, 0).x);
}

TEST_CASE("sheets: a booklet reads from front to back once it is folded") {
    print::PrintSetup setup = on("a5");
    setup.arrangement = print::Arrangement::booklet;
    // Common practice, no source.
    CHECK(order(setup, 4) == "4 1|2 3");
    CHECK(order(setup, 8) == "8 1|2 7|6 3|4 5");
    CHECK(order(setup, 5) == "0 1|2 0|0 3|4 5");
    CHECK(order(setup, 1) == "0 1|0 0");
    CHECK(order(setup, 0).empty());
    for (std::size_t pages = 1; pages < 70; ++pages) { // each page once
        std::multiset<std::size_t> seen;
        for (const auto& side : print::sheet_sides(setup, pages))
            for (const auto& placed : side.pages)
                if (placed.page.has_value()) seen.insert(*placed.page);
        CHECK(seen.size() == pages);
        CHECK(std::set<std::size_t>(seen.begin(), seen.end()).size() == pages);
    }
}

TEST_CASE("sheets: two up, each page has the next one on its back") {
    print::PrintSetup setup = on("a5");
    setup.arrangement = print::Arrangement::two_up;
    CHECK(order(setup, 3) == "1 2|3 0");
    setup.is_double_sided = true;
    CHECK(order(setup, 4) == "1 3|4 2");
    CHECK(order(setup, 5) == "1 3|4 2|5 0");
    CHECK(order(setup, 6) == "1 3|4 2|5 0|0 6");
}

TEST_CASE("sheets: cut marks stand at the edges of the pages and meet no text") {
    for (const print::Paper& paper : print::papers()) {
        CAPTURE(paper.name);
        print::PrintSetup setup = on(std::string(paper.key).c_str());
        setup.arrangement = print::Arrangement::two_up;
        const auto sides = print::sheet_sides(setup, 2);
        REQUIRE(sides.size() == 1);
        CHECK(sides[0].cut_marks.size() >= 2);
        for (const print::CutMark& mark : sides[0].cut_marks) {
            for (std::size_t i = 0; i < 2; ++i) {
                const print::BoxMm box = print::content_box(setup, i);
                const double left = sides[0].pages[i].x_mm + box.x;
                const double top = sides[0].pages[i].y_mm + box.y;
                const bool is_beside = mark.x2_mm <= left || mark.x1_mm >= left + box.width ||
                                       mark.y2_mm <= top || mark.y1_mm >= top + box.height;
                CHECK(is_beside);
            }
            CHECK(mark.x1_mm >= 0);
            CHECK(mark.y2_mm <= paper.two_up.height);
        }
    }
}
