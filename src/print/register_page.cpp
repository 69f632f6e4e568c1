// Sheets of the Register: one kind, one entry, or all.
#include "base/unicode.h"
#include "print/pages.h"

#include <array>

namespace print {

namespace {

struct KindWords {
    game::Kind kind;
    const char* letter; // tells the kinds apart without colour, as on screen
    const char* word;
};

constexpr std::array<KindWords, 5> kinds{{
    {game::Kind::person, "p", "person"},
    {game::Kind::place, "l", "place"},
    {game::Kind::creature, "c", "creature"},
    {game::Kind::item, "i", "item"},
    {game::Kind::faction, "f", "faction"},
}};

const KindWords& words_of(game::Kind kind) {
    for (const KindWords& each : kinds)
        if (each.kind == kind) return each;
    return kinds.front();
}

std::string place_name(const game::Register& registered, game::Id place) {
    for (const game::RegisterEntry& entry : registered.entries)
        if (place != base::no_id && entry.id == place) return entry.name;
    return {};
}

bool is_wanted(const game::RegisterEntry& entry, const std::string& detail) {
    return detail.empty() || words_of(entry.kind).word == detail ||
           base::folded(entry.name) == base::folded(detail);
}

} // namespace

base::Result<Blocks> register_page(const PrintSource& source, const std::string& detail) {
    const game::Register& registered = source.campaign.registered;
    Blocks blocks{Title{"Register", "p person, l place, c creature, i item, f faction"}};
    const std::size_t before = blocks.size();
    for (const game::RegisterEntry& entry : registered.entries) {
        if (!is_wanted(entry, detail)) continue;
        blocks.emplace_back(Heading{
            "[" + std::string(words_of(entry.kind).letter) + "] " + entry.name});
        std::string about = entry.summary;
        const std::string place = place_name(registered, entry.place);
        if (!place.empty()) about += (about.empty() ? "At " : "\nAt ") + place;
        if (!entry.attitude.empty())
            about += (about.empty() ? "" : "\n") + ("Attitude: " + entry.attitude);
        if (!about.empty()) blocks.emplace_back(Paragraph{about});
        if (!entry.notes.empty()) blocks.emplace_back(Paragraph{entry.notes, TextStyle::small});
        blocks.emplace_back(RuledLines{1});
    }
    if (blocks.size() > before) {
        blocks.emplace_back(RuledLines{0, true});
        return blocks;
    }
    return base::Error{
        base::ErrorKind::not_found,
        detail.empty() ? "The Register is empty." : "The Register holds no " + detail + ".",
        {},
        {}};
}

} // namespace print
