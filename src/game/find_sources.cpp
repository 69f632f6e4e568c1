#include "game/find_sources.h"

#include "game/price_search.h"
#include "game/registering.h"
#include "game/session_keeping.h"
#include "rules/challenge_text.h"

#include <string_view>
#include <utility>

namespace game {

namespace {

// What is shown beside it, it is found by too.
FindEntry entry_of(FindKind kind, Id id, std::string text, const std::string& beside) {
    FindEntry entry;
    entry.text = std::move(text);
    entry.beside = beside;
    entry.also = beside;
    entry.target.kind = kind;
    entry.target.id = id;
    return entry;
}

// One entry for each line of a longer text, so that what is found is short enough to be read. It is
// found by its own words alone.
void add_lines(std::vector<FindEntry>& entries, const FindEntry& like, std::string_view text) {
    while (!text.empty()) {
        const std::size_t end = text.find('\n');
        const std::string_view line = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (line.empty()) continue;
        entries.push_back(like);
        entries.back().text = line;
        entries.back().also.clear();
    }
}

std::string joined(const std::vector<std::string>& parts) {
    std::string all;
    for (const std::string& part : parts)
        if (!part.empty()) all += (all.empty() ? "" : ", ") + part;
    return all;
}

void add_session(std::vector<FindEntry>& entries, const Session& session) {
    const std::string title = session_title(session);
    FindEntry entry = entry_of(FindKind::session, session.id, title, session.played_on);
    entry.recency = session.number;
    entries.push_back(entry);
    entry.beside = title;
    entry.also.clear();
    add_lines(entries, entry, session.summary);
    add_lines(entries, entry, session.must_know);
    for (const PlanItem& scene : session.scenes)
        add_lines(entries, entry, scene.text);
    for (const Goal& goal : session.goals)
        add_lines(entries, entry, goal.text);
    for (const PlanItem& item : session.loot)
        add_lines(entries, entry, item.text);
    entry.target.kind = FindKind::note;
    for (const NoteLine& line : session.lines) {
        entry.target.line = line.id;
        entry.text = line.text;
        entries.push_back(entry);
    }
}

} // namespace

std::vector<FindEntry> find_in_party(const Party& party) {
    std::vector<FindEntry> entries;
    for (const Character& character : party.characters) {
        const std::string detail = joined({character.calling, character.player});
        entries.push_back(entry_of(FindKind::character, character.id, character.name, detail));
        FindEntry note = entry_of(FindKind::character, character.id, {}, character.name);
        add_lines(entries, note, character.notes);
    }
    return entries;
}

std::vector<FindEntry> find_in_shelf(const CreatureShelf& shelf) {
    std::vector<FindEntry> entries;
    for (const Creature& creature : shelf.creatures) {
        entries.push_back(entry_of(FindKind::creature, creature.id, creature.name, {}));
        FindEntry note = entry_of(FindKind::creature, creature.id, {}, creature.name);
        add_lines(entries, note, creature.notes);
    }
    return entries;
}

std::vector<FindEntry> find_in_preparation(const Preparation& preparation) {
    std::vector<FindEntry> entries;
    for (const PreparedEncounter& encounter : preparation.encounters) {
        entries.push_back(entry_of(FindKind::prepared, encounter.id, encounter.name, {}));
        FindEntry note = entry_of(FindKind::prepared, encounter.id, {}, encounter.name);
        add_lines(entries, note, encounter.note);
    }
    return entries;
}

std::vector<FindEntry> find_in_register(const Register& registered) {
    std::vector<FindEntry> entries;
    for (const RegisterEntry& each : registered.entries) {
        const RegisterEntry* place = find_register_entry(registered, each.place);
        const std::string detail = joined(
            {kind_word(each.kind), each.summary, place == nullptr ? std::string() : place->name}
        );
        FindEntry entry = entry_of(FindKind::entry, each.id, each.name, detail);
        entry.recency = each.first_met_day;
        entries.push_back(entry);
        entry.beside = each.name;
        add_lines(entries, entry, each.notes);
    }
    return entries;
}

std::vector<FindEntry> find_in_names(const NameBook& names) {
    std::vector<FindEntry> entries;
    for (const UsedName& used : names.used) {
        if (used.entry != base::no_id) continue;
        FindEntry entry =
            entry_of(FindKind::name, used.id, used.name, joined({used.who, used.where}));
        entry.recency = used.day;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_places(const Places& places) {
    std::vector<FindEntry> entries;
    for (const Place& place : places.places) {
        entries.push_back(entry_of(FindKind::place, place.id, place.name, {}));
        FindEntry note = entry_of(FindKind::place, place.id, {}, place.name);
        add_lines(entries, note, place.note);
    }
    return entries;
}

std::vector<FindEntry> find_in_sessions(const Sessions& sessions) {
    std::vector<FindEntry> entries;
    for (const Session& session : sessions.sessions)
        add_session(entries, session);
    return entries;
}

std::vector<FindEntry>
find_in_prices(const rules::PriceBook& prices, const std::vector<Coin>& coins) {
    std::vector<FindEntry> entries;
    entries.reserve(prices.prices.size());
    for (const rules::Price& price : prices.prices) {
        const rules::PriceKind* kind = rules::find_price_kind(prices, price.kind);
        const std::string detail =
            joined({price_text(price, coins), kind == nullptr ? std::string() : kind->name});
        FindEntry entry = entry_of(FindKind::price, base::no_id, price.name, detail);
        entry.target.key = price.key;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_days(const DayBook& book) {
    std::vector<FindEntry> entries;
    for (const DayPage& page : book.pages) {
        FindEntry entry = entry_of(FindKind::day, base::no_id, {}, {});
        entry.target.key = std::to_string(page.day);
        entry.recency = page.day;
        add_lines(entries, entry, page.text);
    }
    for (const DayTimer& timer : book.timers) {
        FindEntry entry = entry_of(FindKind::day, base::no_id, timer.text, {});
        entry.target.key = std::to_string(timer.ends_day);
        entry.recency = timer.ends_day;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_treasury(const Treasury& treasury) {
    std::vector<FindEntry> entries;
    for (const TreasureItem& item : treasury.items) {
        FindEntry entry = entry_of(FindKind::treasure, item.id, item.name, {});
        entry.recency = item.day;
        entries.push_back(std::move(entry));
    }
    for (const LedgerLine& line : treasury.lines) {
        if (line.text.empty()) continue;
        FindEntry entry = entry_of(FindKind::ledger, line.id, line.text, {});
        entry.recency = line.day;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_library(const std::vector<LibraryCreature>& library) {
    std::vector<FindEntry> entries;
    for (const LibraryCreature& creature : library) {
        const std::string detail = joined(
            {creature.size + " " + creature.type,
             "CR " + rules::challenge_text(creature.statistics.challenge)}
        );
        FindEntry entry = entry_of(FindKind::open_creature, base::no_id, creature.name, detail);
        entry.target.key = creature.key;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_reference(const std::vector<ReferenceEntry>& pages) {
    std::vector<FindEntry> entries;
    for (const ReferenceEntry& page : pages) {
        FindEntry entry = entry_of(FindKind::rule, base::no_id, page.title, page.text);
        entry.target.key = page.key;
        for (const std::string& also : page.also)
            entry.also += " " + also;
        if (own_page_of(page.key) == base::no_id) {
            entries.push_back(std::move(entry));
            continue;
        }
        entry.beside = page.chapter;
        entry.also = page.chapter;
        entries.push_back(entry);
        entry.beside = page.title;
        add_lines(entries, entry, page.text);
    }
    return entries;
}

} // namespace game
