// Weeks, months and staves of the calendar on paper.
#include "print/page_table.h"

#include <doctest/doctest.h>

using printing::has;
using printing::Table;

TEST_CASE("pages: a month has each of its days once, under its weekday") {
    Table table;
    const auto read = table.read("month", "a4");
    for (int day = 1; day <= 28; ++day) {
        const std::string number = std::to_string(day);
        const auto& words = read.sides[0].words;
        CHECK(std::any_of(words.begin(), words.end(), [&](const auto& word) {
            return word.text == number;
        }));
    }
    CHECK(has(read.sides[0].text, "Reedmonth 1204 AE"));
    CHECK(has(table.refusal("month:Nomonth"), "Nomonth"));
    table.campaign.calendar = {};
    CHECK(has(table.refusal("month"), "The campaign has no calendar yet."));
    CHECK(has(table.text("week"), "Day"));
}

TEST_CASE("pages: the staff calendar has five lines a day, under the letters of the weekdays") {
    Table table;
    const auto lines_of = [&](const std::string& page) {
        const std::size_t colon = page.find(':');
        const auto blocks =
            print::find_page_kind(page.substr(0, colon))
                ->make(printing::source(table.campaign, table.rulebook), page.substr(colon + 1));
        const auto document =
            print::Document::lay_out({{"", blocks.value()}}, "", printing::setup("a5"));
        CHECK(document.value().page_count() == 1);
        std::size_t lines = 0;
        for (const print::Mark& mark : document.value().pages().front().marks)
            if (const auto* line = std::get_if<print::LineMark>(&mark))
                lines += line->y1 == line->y2 && line->thickness < 0.5 ? 1 : 0;
        return lines;
    };
    CHECK(lines_of("staves:week") == 7 * 5);
    CHECK(lines_of("staves:blank") == 7 * 5);
    CHECK(lines_of("staves:month 1 Reedmonth 1204 AE") == 4 * 5); // of 28 days
    CHECK(lines_of("staves:month blank") == 5 * 5);
    // Firstday, Fourthday and Fifthday share letters; as few as tell them apart.
    const auto dated = table.text("staves:8 Reedmonth 1204 AE");
    for (const char* part : {"Fir", "Fo", "Fif", "14", "Causeway Day", "dawn"})
        CHECK(has(dated, part));
    CHECK_FALSE(has(table.text("staves:blank"), "Causeway Day"));
    CHECK(has(table.text("staves:month"), "Causeway"));
    CHECK(has(table.refusal("staves:week Nomonth"), "Nomonth"));
    table.campaign.calendar = {};
    CHECK(lines_of("staves:week") == 7 * 5);
    CHECK(lines_of("staves:month") == 5 * 5);
}

TEST_CASE("bug: a week to write on stays on its page, and its days share the lines") {
    Table table;
    for (const char* paper : {"a5", "a4", "letter", "half-letter"}) {
        CAPTURE(paper);
        CHECK(table.read("week:blank", paper).sides.size() == 1);
    }
    const auto blocks = print::find_page_kind("week")->make(
        printing::source(table.campaign, table.rulebook), "blank"
    );
    const auto document =
        print::Document::lay_out({{"", blocks.value()}}, "", printing::setup("letter"));
    double last = 0;
    for (const print::Mark& mark : document.value().pages().front().marks)
        if (const auto* line = std::get_if<print::LineMark>(&mark)) last = std::max(last, line->y1);
    CHECK(last == doctest::Approx(print::content_height(printing::setup("letter"))));
}
