#include "app/print_choices.h"

#include <nlohmann/json.hpp>

#include <array>

namespace app {

using nlohmann::json;
using print::Arrangement;
using widgets::PrintChoices;

namespace {

struct ArrangementWord {
    Arrangement arrangement;
    const char* word;
};

constexpr std::array<ArrangementWord, 3> arrangements{{
    {Arrangement::one_up, "one up"},
    {Arrangement::two_up, "two up"},
    {Arrangement::booklet, "booklet"},
}};

void read_flag(const json& value, const char* key, bool& target, ReadPrintChoices& read) {
    if (!value.contains(key)) return;
    if (value[key].is_boolean())
        target = value[key].get<bool>();
    else
        read.complaints.push_back("Printing: " + std::string(key) + " is true or false.");
}

// A word of a list, where it is known.
std::string word_in(const json& value, const char* key) {
    const auto found = value.find(key);
    return found != value.end() && found->is_string() ? found->get<std::string>() : std::string();
}

void read_sheets(const json& value, ReadPrintChoices& read) {
    print::PrintSetup& setup = read.choices.order.setup;
    if (value.contains("paper")) {
        if (const print::Paper* paper = print::find_paper(word_in(value, "paper")))
            setup.paper = paper;
        else
            read.complaints.emplace_back("Printing: the kept paper is not known here.");
    }
    if (value.contains("card")) {
        if (const print::CardSize* card = print::find_card_size(word_in(value, "card")))
            setup.card = card;
        else
            read.complaints.emplace_back("Printing: the kept size of cards is not known here.");
    }
    if (!value.contains("sheets")) return;
    for (const ArrangementWord& each : arrangements)
        if (word_in(value, "sheets") == each.word) {
            setup.arrangement = each.arrangement;
            return;
        }
    read.complaints.emplace_back(R"(Printing: sheets is "one up", "two up" or "booklet".)");
}

} // namespace

std::string to_json(const PrintChoices& choices) {
    const print::PrintSetup& setup = choices.order.setup;
    json pages = json::array();
    for (const print::WantedPage& page : choices.order.pages)
        pages.push_back(page.detail.empty() ? page.key : page.key + ":" + page.detail);
    json value{
        {"format", "tablewick printing"},
        {"version", 1},
        {"pages", std::move(pages)},
        {"paper", setup.paper->key},
        {"card", setup.card->key},
        {"rings", setup.has_rings},
        {"double_sided", setup.is_double_sided},
        {"large_type", setup.is_large_type},
        {"open_afterwards", choices.opens_afterwards}};
    for (const ArrangementWord& each : arrangements)
        if (each.arrangement == setup.arrangement) value["sheets"] = each.word;
    return value.dump(4, ' ', false, json::error_handler_t::replace) + "\n";
}

ReadPrintChoices print_choices_from_json(std::string_view text) {
    ReadPrintChoices read;
    const json value = json::parse(text, nullptr, false);
    if (!value.is_object()) {
        read.complaints.emplace_back(
            "What you chose for printing cannot be read, so it starts with nothing chosen."
        );
        return read;
    }
    read_sheets(value, read);
    print::PrintSetup& setup = read.choices.order.setup;
    read_flag(value, "rings", setup.has_rings, read);
    read_flag(value, "double_sided", setup.is_double_sided, read);
    read_flag(value, "large_type", setup.is_large_type, read);
    read_flag(value, "open_afterwards", read.choices.opens_afterwards, read);
    const auto pages = value.find("pages");
    if (pages == value.end() || !pages->is_array()) return read;
    for (const json& page : *pages) {
        if (!page.is_string()) continue;
        auto wanted = print::wanted_page(page.get<std::string>());
        if (wanted.ok())
            read.choices.order.pages.push_back(std::move(wanted).value());
        else
            read.complaints.push_back("Printing: " + wanted.error().message);
    }
    return read;
}

} // namespace app
