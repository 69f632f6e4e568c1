// Two hundred cards and whole binders as PDF, against Pango breaking the same texts once: what the
// layout and the drawing add.
#include "bench/measure.h"
#include "print/pdf.h"

#include <cairo-pdf.h>

namespace {

print::Card card_of(int number) {
    print::Card card;
    card.title = "Reed Lurker " + std::to_string(number);
    card.subtitle = "large beast, level " + std::to_string(number % 20);
    card.entries = {
        {"AC", "18   HP 60"},
        {"Saves", "Fortitude +8, Reflex +11, Will +5"},
        {"Perception", "+8, darkvision"},
        {"Speed", "land 25 ft, swim 35 ft"},
        {"hooked spear", "+11, 1d8+6 piercing, reach 10 feet, 2 a turn"},
        {"claw", "+11, 1d6+6 slashing, agile"},
        {"Resists", "cold 3"},
        {"Abilities", "Strength +3, Dexterity +4, Constitution +2, Intelligence -2"},
        {"Skills", "Acrobatics +8, Athletics +8, Stealth +11"},
        {"", "Drags what it hooks into deep water. Flees from open flame."}};
    return card;
}

double pages_of(const print::Blocks& blocks, const print::PrintSetup& setup) {
    const auto document = print::Document::lay_out({{"Bench", blocks}}, "Bench", setup);
    return static_cast<double>(document.value().pages().size());
}

} // namespace

int main() {
    constexpr int cards = 200;
    print::Blocks blocks;
    std::vector<std::string> texts;
    for (int i = 0; i < cards; ++i) {
        print::Card card = card_of(i);
        texts.push_back(card.title);
        texts.push_back(card.subtitle);
        for (const print::CardEntry& entry : card.entries) {
            texts.push_back(entry.label);
            texts.push_back(entry.text);
        }
        blocks.emplace_back(std::move(card));
    }
    const print::PrintSetup setup;
    const auto broken_once = [&] {
        const print::Texts measuring(false);
        double height = 0;
        for (const std::string& text : texts)
            height += print::height_of(measuring.lines(text, 160));
        return height;
    };
    measure::compare(
        "200 cards laid out",
        [&] { return pages_of(blocks, setup); },
        "texts broken once",
        broken_once
    );
    const auto document = print::Document::lay_out({{"Bench", blocks}}, "Bench", setup);
    measure::compare(
        "200 cards drawn as PDF",
        [&] { return static_cast<double>(document.value().pdf().value().size()); },
        "texts broken once",
        broken_once
    );
    measure::compare(
        "a page of hexes laid out",
        [&] {
            return pages_of({print::RuledPage{print::Ruling::hexagons, 5}}, setup);
        },
        "texts broken once",
        broken_once
    );
    measure::compare(
        "one page drawn for a preview",
        [&] {
            cairo_surface_t* surface = cairo_image_surface_create(CAIRO_FORMAT_RGB24, 600, 850);
            cairo_t* cairo = cairo_create(surface);
            document.value().draw_page(cairo, 0);
            cairo_destroy(cairo);
            cairo_surface_destroy(surface);
            return 1.0;
        },
        "texts broken once",
        broken_once
    );
    std::printf("(%g)\n", measure::kept > 0 ? 1.0 : 0.0);
    return 0;
}
