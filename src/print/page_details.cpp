// What each kind of page can be of, as the choices of the Print panel.
#include "game/name_drawing.h"
#include "game/register_keeping.h"
#include "game/session_keeping.h"
#include "print/order.h"
#include "print/pages.h"

#include <algorithm>
#include <array>

namespace print {

namespace {

using Offers = std::vector<DetailOffer>;

constexpr const char* blank_words = "blank, to write on";

// The newest first: they are printed, the old ones hardly ever.
void add_sessions(Offers& offers, const game::Sessions& sessions) {
    for (std::size_t left = sessions.sessions.size(); left > 0; --left) {
        const game::Session& session = sessions.sessions[left - 1];
        offers.push_back({std::to_string(session.number), game::session_title(session)});
    }
}

Offers names_offers(const PrintSource& source) {
    Offers offers;
    for (const game::NameSource& each :
         game::name_sources(source.name_lists, source.campaign.names.lists))
        offers.push_back({each.key, each.title});
    return offers;
}

Offers plan_offers(const PrintSource& source) {
    Offers offers{{"", "the current session"}};
    add_sessions(offers, source.campaign.sessions);
    return offers;
}

Offers notes_offers(const PrintSource& source) {
    Offers offers{{"", "the current session"}, {"blank", blank_words}};
    add_sessions(offers, source.campaign.sessions);
    return offers;
}

Offers initiative_offers(const PrintSource& /*source*/) {
    return {{"", "as the fight stands"}, {"blank", blank_words}};
}

Offers creature_offers(const PrintSource& /*source*/) {
    return {
        {"", "the shelf"},
        {"fight", "those in the fight"},
        {"register", "those of the Register"},
        {"open", "all open creatures"}};
}

Offers condition_offers(const PrintSource& /*source*/) {
    return {{"", "those in play"}, {"all", "all of the rulebook"}};
}

Offers month_offers(const PrintSource& /*source*/) {
    return {{"", "this month"}, {"blank", blank_words}};
}

Offers week_offers(const PrintSource& /*source*/) {
    return {{"", "this week"}, {"blank", blank_words}};
}

Offers staves_offers(const PrintSource& /*source*/) {
    return {
        {"", "this week"},
        {"month", "this month"},
        {"week blank", "a week, blank"},
        {"month blank", "a month, blank"}};
}

Offers register_offers(const PrintSource& /*source*/) {
    return {
        {"", "everything"},
        {"person", "people"},
        {"place", "places"},
        {"creature", "creatures"},
        {"item", "items"},
        {"faction", "factions"}};
}

Offers character_offers(const PrintSource& source) {
    Offers offers{{"", "everybody"}};
    for (const game::Character& character : source.campaign.party.characters)
        offers.push_back({character.name, character.name});
    return offers;
}

Offers price_offers(const PrintSource& source) {
    Offers offers{{"", "everything"}};
    for (const rules::PriceKind& kind : source.prices.kinds)
        offers.push_back({kind.key, kind.name});
    return offers;
}

Offers paper_offers(const PrintSource& /*source*/) {
    return {
        {"squares", "squares"},
        {"hexes", "hexes"},
        {"dots", "dots"},
        {"lines", "lines"},
        {"staves", "staves"}};
}

struct Details {
    std::string_view key;
    Offers (*offers)(const PrintSource&);
    std::string_view typed_hint{}; // what may be typed besides
};

constexpr std::array<Details, 14> all_details{{
    {"names", names_offers},
    {"session-plan", plan_offers},
    {"notes", notes_offers},
    {"recap", notes_offers},
    {"initiative", initiative_offers},
    {"creatures", creature_offers, "or the name of one"},
    {"conditions", condition_offers},
    {"month", month_offers, "or a date in it"},
    {"week", week_offers, "or a date in it"},
    {"staves", staves_offers, "or week, and a date"},
    {"register", register_offers, "or one name"},
    {"characters", character_offers},
    {"prices", price_offers},
    {"paper", paper_offers},
}};

const Details* find_details(std::string_view key) {
    const auto* found =
        std::find_if(all_details.begin(), all_details.end(), [key](const Details& details) {
            return details.key == key;
        });
    return found == all_details.end() ? nullptr : found;
}

} // namespace

std::vector<DetailOffer> detail_offers(std::string_view key, const PrintSource& source) {
    const Details* details = find_details(key);
    return details == nullptr ? Offers() : details->offers(source);
}

std::vector<DetailField> detail_fields(std::string_view key) {
    if (key == "divider") return {{"Title"}, {"Ornament", ornament_words()}, {"Picture"}};
    if (key == "handout") return {{"Picture"}, {"Words"}};
    return {};
}

std::vector<std::string> split_detail(const std::string& detail, std::size_t parts) {
    std::vector<std::string> split;
    std::string rest = detail;
    for (std::size_t bar = 0; split.size() + 1 < parts && bar != std::string::npos;) {
        bar = rest.find('|');
        split.push_back(rest.substr(0, bar));
        rest = bar == std::string::npos ? std::string() : rest.substr(bar + 1);
    }
    split.push_back(rest);
    split.resize(parts);
    return split;
}

std::string join_detail(const std::vector<std::string>& parts) {
    std::string detail;
    std::size_t count = parts.size();
    while (count > 0 && parts[count - 1].empty())
        count -= 1;
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0) detail += '|';
        detail += parts[i];
    }
    return detail;
}

std::string_view typed_detail_hint(std::string_view key) {
    const Details* details = find_details(key);
    return details == nullptr ? std::string_view() : details->typed_hint;
}

} // namespace print
