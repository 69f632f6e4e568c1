// The file as a whole: sizes, typefaces, text, order, sameness, progress.
#include "print/printing.h"
#include "store/samples.h"

#include <doctest/doctest.h>

#include <set>

namespace {

print::Section lines_section(const std::string& name, int pages) {
    print::Section section{name, {}};
    for (int i = 1; i <= pages; ++i) {
        section.blocks.emplace_back(print::Title{"Leaf" + std::to_string(i)});
        section.blocks.emplace_back(print::PageBreak{});
    }
    return section;
}

std::string made(const print::Section& section, const print::PrintSetup& setup) {
    const auto document = print::Document::lay_out({section}, "Test", setup);
    REQUIRE(document.ok());
    return document.value().pdf().value();
}

} // namespace

TEST_CASE("pdf: every paper has its size within a tenth of a millimetre") {
    // ISO 216 and ANSI/ASME Y14.1 through print::papers, which paper_test.cpp holds against them.
    for (const print::Paper& paper : print::papers()) {
        CAPTURE(paper.name);
        print::PrintSetup setup = printing::setup(std::string(paper.key));
        const auto read = printing::read(made(lines_section("Leaves", 1), setup));
        REQUIRE(read.sides.size() == 1);
        CHECK(read.sides[0].width_mm == doctest::Approx(paper.size.width).epsilon(0.0001));
        CHECK(std::abs(read.sides[0].width_mm - paper.size.width) < 0.1);
        CHECK(std::abs(read.sides[0].height_mm - paper.size.height) < 0.1);
        setup.arrangement = print::Arrangement::two_up;
        const auto sheets = printing::read(made(lines_section("Leaves", 3), setup));
        REQUIRE(sheets.sides.size() == 2);
        CHECK(std::abs(sheets.sides[0].width_mm - paper.two_up.width) < 0.1);
        CHECK(std::abs(sheets.sides[0].height_mm - paper.two_up.height) < 0.1);
    }
}

TEST_CASE("pdf: a booklet carries the last page beside the first") {
    print::PrintSetup setup = printing::setup("a5");
    setup.arrangement = print::Arrangement::booklet;
    const auto read = printing::read(made(lines_section("Leaves", 4), setup));
    REQUIRE(read.sides.size() == 2);
    const auto left_of = [](const printing::Side& side, const std::string& text) {
        for (const printing::Word& word : side.words)
            if (word.text == text) return word.left;
        return -1.0;
    };
    const double middle = 148.5 * print::points_per_mm;
    CHECK(left_of(read.sides[0], "Leaf4") < middle);
    CHECK(left_of(read.sides[0], "Leaf4") > 0);
    CHECK(left_of(read.sides[0], "Leaf1") > middle);
    CHECK(left_of(read.sides[1], "Leaf2") < middle);
    CHECK(left_of(read.sides[1], "Leaf3") > middle);
}

TEST_CASE("pdf: typefaces are embedded and text can be selected, right to left too") {
    print::Section section{"Names", {}};
    section.blocks.emplace_back(print::Title{"Ysolde Marr"});
    section.blocks.emplace_back(print::Paragraph{"Ключ и соль"});
    section.blocks.emplace_back(print::Paragraph{"Ελένη"});
    section.blocks.emplace_back(print::Paragraph{"שלום"});
    const auto read = printing::read(made(section, printing::setup("a5")));
    REQUIRE(read.sides.size() == 1);
    CHECK(read.all_embedded);
    CHECK_FALSE(read.fonts.empty());
    CHECK(read.sides[0].text.find("Ysolde Marr") != std::string::npos);
    CHECK(read.sides[0].text.find("Ключ") != std::string::npos);
    CHECK(read.sides[0].text.find("Ελένη") != std::string::npos);
    CHECK(read.sides[0].text.find("שלום") != std::string::npos);
    // A text from right to left begins at the right edge.
    for (const printing::Word& word : read.sides[0].words)
        if (word.text == "שלום") CHECK(word.right > 130 * print::points_per_mm);
}

TEST_CASE("pdf: the same campaign gives the same bytes") {
    const game::Campaign campaign = samples::demo();
    const auto& rulebook = samples::rulebook(campaign.about.rules);
    const auto source = printing::source(campaign, rulebook);
    for (const char* page : {"session-plan", "party", "creatures"}) {
        CAPTURE(page);
        const auto setup = printing::setup("a5");
        CHECK(printing::pdf_of(source, page, setup) == printing::pdf_of(source, page, setup));
    }
}

TEST_CASE("pdf: pages are numbered through all that is printed together") {
    const auto document = print::Document::lay_out(
        {lines_section("One", 2), lines_section("Two", 1)}, "Test", printing::setup("a6")
    );
    const auto read = printing::read(document.value().pdf().value());
    REQUIRE(read.sides.size() == 3);
    CHECK(read.sides[2].text.find("3/3") != std::string::npos);
    CHECK(read.sides[2].text.find("Two") != std::string::npos);
    CHECK(read.sides[2].text.find("One") == std::string::npos);
}

TEST_CASE("pdf: inner margins change sides when both sides are printed") {
    print::PrintSetup setup = printing::setup("a5");
    setup.has_rings = true;
    setup.is_double_sided = true;
    const auto read = printing::read(made(lines_section("Leaves", 2), setup));
    REQUIRE(read.sides.size() == 2);
    CHECK(read.sides[0].words[0].left > read.sides[1].words[0].left + 10);
}

TEST_CASE("pdf: a long job tells how far it is and can be stopped") {
    const auto setup = printing::setup("a5");
    std::set<std::size_t> seen;
    const auto document = print::Document::lay_out(
        {lines_section("One", 3), lines_section("Two", 3)},
        "Test",
        setup,
        [&](std::size_t done, std::size_t all) {
            CHECK(all == 4);
            seen.insert(done);
            return true;
        }
    );
    CHECK(seen == std::set<std::size_t>{1, 2});
    seen.clear();
    const auto stopped = document.value().pdf([&](std::size_t done, std::size_t /*all*/) {
        seen.insert(done);
        return seen.size() < 2;
    });
    REQUIRE_FALSE(stopped.ok());
    CHECK(stopped.error().message == "Printing was stopped.");
    CHECK(seen.size() == 2);
    CHECK_FALSE(print::Document::lay_out({lines_section("One", 1)}, "", setup, [](auto, auto) {
                    return false;
                }).ok());
}
