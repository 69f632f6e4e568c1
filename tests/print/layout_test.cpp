// Whatever stands on a page: nothing is cut, nothing meets anything else.
#include "print/printing.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <map>
#include <random>
#include <set>

namespace {

// Names as people write them, and as they never should.
std::string some_text(std::mt19937& random) {
    static const std::vector<std::string> words{
        "Ysolde",
        "of",
        "the",
        "Reed",
        "שרה",
        "בתמר",
        "محمد",
        "العربية",
        "Ключница",
        "Ελένη",
        "鐘の音",
        "e\xCC\x81\xCC\x81\xCC\x81\xCC\x81",
        "\xF0\x9F\x94\x94",
        "\xFF\xFE",
        "\n",
        "\t",
        "\x01",
        "Q\xCC\x83\xCC\x88\xCC\x8C\xCC\xA3\xCC\xB0",
        "\u202Eturned",
        "-7",
        "1d8+4",
        std::string(160, 'W'),
        std::string(90, 'i') + "-" + std::string(90, 'l')};
    std::string text;
    const std::size_t count = random() % 12;
    for (std::size_t i = 0; i < count; ++i)
        text += (i > 0 ? " " : "") + words[random() % words.size()];
    if (random() % 40 == 0)
        for (int i = 0; i < 400; ++i)
            text += " and so on";
    return text;
}

print::Table some_table(std::mt19937& random) {
    print::Table table;
    const std::size_t columns = 1 + random() % 14;
    for (std::size_t i = 0; i < columns; ++i)
        table.columns.push_back({some_text(random).substr(0, 20), random() % 2 == 0});
    const std::size_t rows = random() % 30;
    for (std::size_t row = 0; row < rows; ++row) {
        table.rows.emplace_back();
        for (std::size_t i = 0; i < columns; ++i)
            table.rows.back().push_back(
                {some_text(random), some_text(random), random() % 2 == 0, random() % 9 == 0}
            );
    }
    table.has_grid = random() % 2 == 0;
    table.may_fold = random() % 2 == 0;
    table.fills_page = random() % 5 == 0;
    table.row_mm = random() % 3 == 0 ? 9 : 0;
    table.is_even = random() % 3 == 0 && columns < 8;
    return table;
}

print::Block some_block(std::mt19937& random) {
    switch (random() % 14) {
    case 0: return print::Title{some_text(random), some_text(random)};
    case 1: return print::Heading{some_text(random)};
    case 2: return print::Paragraph{some_text(random)};
    case 3: {
        print::TickList list{{}, random() % 2 == 0 ? 0.0 : 38.0};
        for (std::size_t i = 0; i < random() % 40; ++i)
            list.ticks.push_back({some_text(random), some_text(random), random() % 2 == 0});
        return list;
    }
    case 4:
        return print::Tally{some_text(random), some_text(random), static_cast<int>(random() % 40)};
    case 5: return print::RuledLines{static_cast<int>(random() % 5)};
    case 6: return print::Divider{};
    case 7: {
        print::Card card{some_text(random), some_text(random), {}};
        for (std::size_t i = 0; i < random() % 20; ++i)
            card.entries.push_back({some_text(random), some_text(random)});
        return card;
    }
    case 8: return print::RuledLines{1 + static_cast<int>(random() % 3), false, true};
    case 9: {
        auto pixels = std::make_shared<print::Pixels>();
        *pixels = {2, 3, std::vector<std::uint8_t>(18, 90)};
        return print::Picture{pixels, some_text(random)};
    }
    case 10: {
        print::DividerPage page{some_text(random), print::Ornament::knot, {}};
        if (random() % 2 == 0) {
            auto pixels = std::make_shared<print::Pixels>();
            *pixels = {3, 2, std::vector<std::uint8_t>(18, 90)};
            page.picture = pixels;
        }
        return page;
    }
    case 11: {
        print::Staff staff{some_text(random), some_text(random), some_text(random), {}};
        for (std::size_t i = 0, bars = random() % 9; i < bars; ++i)
            staff.bars.push_back(
                {static_cast<double>(i) / static_cast<double>(bars), some_text(random)}
            );
        return staff;
    }
    case 12:
        return print::Paragraph{
            some_text(random),
            random() % 2 == 0 ? print::TextStyle::large : print::TextStyle::small};
    default: return some_table(random);
    }
}

std::size_t pages_of(const print::Blocks& blocks, const print::PrintSetup& setup) {
    return print::Document::lay_out({{"Test", blocks}}, "Test", setup).value().page_count();
}

} // namespace

TEST_CASE("layout: no text is cut and none overlaps, whatever is written and on whatever paper") {
    // More by hand: TABLEWICK_PRINT_CASES=400.
    const char* wanted = std::getenv("TABLEWICK_PRINT_CASES");
    const int rounds = wanted == nullptr ? 80 : std::stoi(wanted);
    std::mt19937 random(20260131);
    for (int round = 0; round < rounds; ++round) {
        CAPTURE(round);
        const auto& paper = print::papers()[random() % print::papers().size()];
        print::PrintSetup setup = printing::setup(std::string(paper.key));
        setup.has_rings = random() % 2 == 0;
        setup.is_double_sided = random() % 2 == 0;
        setup.is_large_type = random() % 3 == 0;
        setup.card = &print::card_sizes()[random() % 3];
        print::Blocks blocks;
        for (std::size_t i = 0; i < 1 + random() % 6; ++i)
            blocks.push_back(some_block(random));
        const auto document = print::Document::lay_out({{some_text(random), blocks}}, "", setup);
        REQUIRE(document.ok());
        CHECK(document.value().page_count() < 4000);
        printing::check_no_text_is_cut(document.value());
    }
}

TEST_CASE("layout: nothing is lost when a table or a text goes over several pages") {
    print::Table table{{{"Name"}, {"What"}}, {}, 0, false, false};
    for (int i = 1; i <= 120; ++i)
        table.rows.push_back({{"row" + std::to_string(i)}, {"thing" + std::to_string(i)}});
    std::string words;
    for (int i = 1; i <= 2000; ++i)
        words += "word" + std::to_string(i) + " ";
    table.rows.push_back({{"long"}, {words}});
    const auto document = print::Document::lay_out(
        {{"Test", {table, print::Paragraph{words}}}}, "Test", printing::setup("a5")
    );
    const auto read = printing::read(document.value().pdf().value());
    std::multiset<std::string> found;
    std::size_t heads = 0;
    for (const printing::Side& side : read.sides) {
        for (const printing::Word& word : side.words)
            found.insert(word.text);
        heads += side.text.find("Name") != std::string::npos ? 1 : 0;
    }
    for (int i = 1; i <= 120; ++i) {
        CAPTURE(i);
        CHECK(found.count("row" + std::to_string(i)) == 1);
        CHECK(found.count("thing" + std::to_string(i)) == 1);
    }
    for (int i = 1; i <= 2000; ++i)
        if (found.count("word" + std::to_string(i)) != 2) FAIL("word " << i << " is lost or twice");
    CHECK(heads > 4); // the head of the table stands on each of its pages
}

TEST_CASE("layout: a heading never stands alone at the foot of a page") {
    for (int lines = 20; lines < 60; ++lines) {
        CAPTURE(lines);
        print::Blocks blocks;
        for (int i = 0; i < lines; ++i)
            blocks.emplace_back(print::Paragraph{"line"});
        blocks.emplace_back(print::Heading{"Headword"});
        blocks.emplace_back(print::Paragraph{"Follower"});
        const auto document =
            print::Document::lay_out({{"Test", blocks}}, "Test", printing::setup("a5"));
        for (const printing::Side& side : printing::read(document.value().pdf().value()).sides) {
            const bool has_heading = side.text.find("Headword") != std::string::npos;
            const bool has_follower = side.text.find("Follower") != std::string::npos;
            CHECK(has_heading == has_follower);
        }
    }
}

TEST_CASE("layout: lines to write on fill the page, and fall away where they are spare") {
    const auto setup = printing::setup("a5");
    CHECK(pages_of({print::RuledLines{}}, setup) == 1);
    print::Blocks full;
    while (pages_of(full, setup) == 1)
        full.emplace_back(print::Paragraph{"line"});
    full.pop_back();
    full.emplace_back(print::RuledLines{0, true});
    CHECK(pages_of(full, setup) == 1);
    full.pop_back();
    full.emplace_back(print::RuledLines{});
    CHECK(pages_of(full, setup) == 2);
}

TEST_CASE("layout: as many cards as a paper holds, of full size, rings or not") {
    // Cards are cut out, so they need no margin for rings. Sizes in mm less two margins of 6 and
    // the foot line of 6: 63 x 88 goes twice into 136 x 192 (A5) each way, on its long side twice
    // into 93 x 130 (A6), and so on.
    struct Expected {
        const char* paper;
        const char* card;
        std::size_t on_a_page;
        bool is_on_its_side;
    };

    for (const Expected& each :
         {Expected{"a5", "63x88", 4, false},
          {"a4", "63x88", 9, false},
          {"a6", "63x88", 2, true},
          {"letter", "63x88", 8, true},
          {"half-letter", "63x88", 4, false},
          {"personal", "63x88", 1, false},
          {"a5", "4x6in", 1, false},
          {"a4", "4x6in", 2, true},
          {"a4", "a6", 2, true}})
        for (const bool has_rings : {false, true}) {
            CAPTURE(each.paper);
            CAPTURE(each.card);
            print::PrintSetup setup = printing::setup(each.paper);
            setup.card = print::find_card_size(each.card);
            setup.has_rings = has_rings;
            print::Blocks cards(
                each.on_a_page, print::Block(print::Card{"Reed Lurker", "level 2", {{"AC", "18"}}})
            );
            CHECK(pages_of(cards, setup) == 1);
            cards.push_back(cards.front());
            CHECK(pages_of(cards, setup) == 2);
            const auto document = print::Document::lay_out({{"Cards", cards}}, "Test", setup);
            const print::SizeMm& size = setup.card->size;
            for (const print::LaidPage& page : document.value().pages())
                for (const print::Mark& mark : page.marks)
                    if (const auto* box = std::get_if<print::BoxMark>(&mark)) {
                        const double width = each.is_on_its_side ? size.height : size.width;
                        const double height = each.is_on_its_side ? size.width : size.height;
                        CHECK(box->width == doctest::Approx(width * print::points_per_mm));
                        CHECK(box->height == doctest::Approx(height * print::points_per_mm));
                    }
        }
}

TEST_CASE("layout: a list of short rows stands in as many columns as there is room for") {
    print::Table table{{{"Name"}, {"DC", true}}, {}, 0, false, false};
    table.may_fold = true;
    for (int i = 1; i <= 24; ++i)
        table.rows.push_back({{"level" + std::to_string(i)}, {std::to_string(100 + i)}});
    const auto places = [&](const char* paper) {
        std::map<std::string, printing::Word> found;
        const auto document =
            print::Document::lay_out({{"Test", {table}}}, "Test", printing::setup(paper));
        const auto read = printing::read(document.value().pdf().value());
        CHECK(read.sides.size() == 1);
        for (const printing::Word& word : read.sides[0].words) {
            const bool is_row = word.text.find("level") == 0 || word.text.size() == 3;
            CHECK((!is_row || found.count(word.text) == 0));
            found[word.text] = word;
        }
        for (int i = 1; i <= 24; ++i) {
            CHECK(found.count("level" + std::to_string(i)) == 1);
            CHECK(found.count(std::to_string(100 + i)) == 1);
        }
        return found;
    };
    auto wide = places("letter"); // three columns of eight, read downwards
    CHECK(wide["level1"].top == doctest::Approx(wide["level9"].top));
    CHECK(wide["level1"].top == doctest::Approx(wide["level17"].top));
    CHECK(wide["level2"].left == doctest::Approx(wide["level1"].left));
    CHECK(wide["101"].right < wide["level9"].left);
    // As much on a small page in large type as there is room for, and each beside its number.
    auto narrow = places("a6");
    for (int i = 1; i <= 24; ++i)
        CHECK(
            narrow["level" + std::to_string(i)].top ==
            doctest::Approx(narrow[std::to_string(100 + i)].top).epsilon(0.01)
        );
}

TEST_CASE("layout: a board to write on fills its page with rows") {
    print::Table board{{{"Name"}, {"HP"}}, {}, 10, true, false};
    board.fills_page = true;
    board.rows = {{{"Reed Lurker"}, {"30"}}};
    for (const char* paper : {"a6", "a5", "letter"}) {
        const auto setup = printing::setup(paper);
        const auto document = print::Document::lay_out({{"Test", {board}}}, "Test", setup);
        REQUIRE(document.value().page_count() == 1);
        double last = 0;
        for (const print::Mark& mark : document.value().pages()[0].marks)
            if (const auto* line = std::get_if<print::LineMark>(&mark))
                last = std::max(last, line->y2);
        CHECK(last > print::content_height(setup) - 10 * print::points_per_mm);
        CHECK(last <= print::content_height(setup) + 0.1);
    }
}

TEST_CASE("layout: a card with few words sets them larger, one with many smaller") {
    const auto height_of_text = [](const std::string& text) {
        const print::Blocks blocks{print::Card{"Fen Hound", "", {{"", text}}}};
        const auto document =
            print::Document::lay_out({{"Test", blocks}}, "Test", printing::setup("a5"));
        for (const print::Mark& mark : document.value().pages()[0].marks)
            if (const auto* line = std::get_if<print::TextMark>(&mark)) return line->line.height;
        return 0.0;
    };
    std::string many;
    for (int i = 0; i < 200; ++i)
        many += "water ";
    CHECK(height_of_text("bites") > height_of_text(many) * 1.5);
}

TEST_CASE("bug: a card never parts a number from what it is of") {
    std::string skills;
    for (int i = 0; i < 30; ++i)
        skills +=
            (i > 0 ? ", " : "") + std::string(static_cast<std::size_t>(3 + i % 7), 'm') + " +7";
    const print::Blocks blocks{print::Card{"Fen Hound", "", {{"Skills", skills}}}};
    const auto document =
        print::Document::lay_out({{"Test", blocks}}, "Test", printing::setup("a5"));
    std::map<int, double> first; // on each line, where its first word stands
    std::map<int, std::string> first_text;
    const auto read = printing::read(document.value().pdf().value());
    for (const printing::Word& word : read.sides[0].words) {
        const int line = static_cast<int>(word.foot);
        if (first.count(line) > 0 && first[line] <= word.left) continue;
        first[line] = word.left;
        first_text[line] = word.text;
    }
    CHECK(first.size() > 4);
    for (const auto& [line, text] : first_text)
        CHECK(text.substr(0, 1) != "+");
}

TEST_CASE("layout: an empty page is still a page") {
    CHECK(pages_of({}, printing::setup("a5")) == 1);
}
