#include "store/campaign_check.h"

#include "game/money.h"

#include <algorithm>
#include <unordered_set>

namespace store {

using base::ErrorKind;
using game::Id;

namespace {

using Pointer = std::string;

Pointer at(const Pointer& list, std::size_t index, std::string_view key) {
    return list + pointer_step(index) + "/" + std::string(key);
}

// The ids of one list. Pointers are only built when there is something to complain about: this
// runs after every edit.
class UsedIds {
public:
    explicit UsedIds(std::string_view what) : what_(what) {}

    bool has(Id id) const { return ids_.count(id) > 0; }

    // Complains about the second of two equal ones.
    void
    add(Id id, Problems& problems, const Pointer& list, std::size_t index, std::string_view key) {
        if (ids_.insert(id).second) return;
        problems.add(
            ErrorKind::duplicate,
            key.empty() ? list + pointer_step(index) : at(list, index, key),
            "The id " + std::to_string(id) + " stands on two " + std::string(what_) + "."
        );
    }

    template <class List>
    void add_all(const List& list, Problems& problems, const Pointer& pointer) {
        for (std::size_t i = 0; i < list.size(); ++i)
            add(list[i].id, problems, pointer, i, "id");
    }

private:
    std::string_view what_;
    std::unordered_set<Id> ids_;
};

void dangles(std::string_view what, Id id, const Pointer& pointer, Problems& problems) {
    problems.add(
        ErrorKind::dangling_reference,
        pointer,
        "There is no " + std::string(what) + " with the id " + std::to_string(id) + "."
    );
}

void check_combatants(
    const game::Encounter& encounter, const UsedIds& characters, Problems& problems
) {
    static const Pointer list = "/encounter/combatants";
    UsedIds played("combatants as their character");
    for (std::size_t i = 0; i < encounter.combatants.size(); ++i) {
        const game::Combatant& combatant = encounter.combatants[i];
        if (combatant.character != base::no_id) {
            if (!characters.has(combatant.character))
                dangles("character", combatant.character, at(list, i, "character"), problems);
            played.add(combatant.character, problems, list, i, "character");
        }
        if (combatant.conditions.size() < 2) continue;
        UsedIds conditions("conditions");
        conditions.add_all(combatant.conditions, problems, at(list, i, "conditions"));
    }
}

void check_turns(const game::Encounter& encounter, const UsedIds& combatants, Problems& problems) {
    static const Pointer order = "/encounter/order";
    static const Pointer prompts = "/encounter/prompts";
    UsedIds places("places of the turn order");
    for (std::size_t i = 0; i < encounter.order.size(); ++i) {
        if (!combatants.has(encounter.order[i]))
            dangles("combatant", encounter.order[i], order + pointer_step(i), problems);
        places.add(encounter.order[i], problems, order, i, "");
    }
    if (encounter.current != base::no_id && !combatants.has(encounter.current))
        dangles("combatant", encounter.current, "/encounter/current", problems);
    UsedIds due("checks that are due");
    due.add_all(encounter.prompts, problems, prompts);
    for (std::size_t i = 0; i < encounter.prompts.size(); ++i)
        if (const Id id = encounter.prompts[i].combatant; !combatants.has(id))
            dangles("combatant", id, at(prompts, i, "combatant"), problems);
}

template <class List>
Id highest_id(const List& list) {
    Id highest = base::no_id;
    for (const auto& entry : list)
        highest = std::max(highest, entry.id);
    return highest;
}

void raise(Id& next_id, Id used) {
    if (used < UINT32_MAX) next_id = std::max(next_id, used + 1);
}

void keep_ids_fresh(game::Campaign& campaign) {
    raise(campaign.party.next_id, highest_id(campaign.party.characters));
    for (const game::Character& character : campaign.party.characters)
        raise(campaign.party.next_id, highest_id(character.reminders));
    raise(campaign.shelf.next_id, highest_id(campaign.shelf.creatures));
    raise(campaign.preparation.next_id, highest_id(campaign.preparation.encounters));
    raise(campaign.table_rolls.next_id, highest_id(campaign.table_rolls.rolls));
    raise(campaign.registered.next_id, highest_id(campaign.registered.entries));
    raise(campaign.names.next_id, highest_id(campaign.names.used));
    raise(campaign.names.next_id, highest_id(campaign.names.lists));
    raise(campaign.day_book.next_id, highest_id(campaign.day_book.pages));
    raise(campaign.day_book.next_id, highest_id(campaign.day_book.timers));
    keep_calendar_ids_fresh(campaign.calendar);
    raise(campaign.places.next_id, highest_id(campaign.places.places));
    raise(campaign.sessions.next_id, highest_id(campaign.sessions.sessions));
    for (const game::Session& session : campaign.sessions.sessions) {
        for (const Id used :
             {highest_id(session.scenes),
              highest_id(session.goals),
              highest_id(session.loot),
              highest_id(session.lines)})
            raise(campaign.sessions.next_id, used);
    }
    raise(campaign.treasury.next_id, highest_id(campaign.treasury.lines));
    raise(campaign.treasury.next_id, highest_id(campaign.treasury.items));
    raise(campaign.table_rolls.next_id, highest_id(campaign.table_rolls.dice_rolls));
    raise(campaign.own_pages.next_id, highest_id(campaign.own_pages.pages));
    game::Encounter& encounter = campaign.encounter;
    raise(encounter.next_id, highest_id(encounter.combatants));
    raise(encounter.next_id, highest_id(encounter.prompts));
    for (const game::Combatant& combatant : encounter.combatants) {
        raise(encounter.next_id, highest_id(combatant.conditions));
        if (combatant.character == base::no_id)
            raise(encounter.next_id, highest_id(combatant.reminders));
        raise(encounter.next_id, combatant.group);
    }
}

// One page a day, by day: pages of the same day that a hand put there become one.
void sort_pages(game::DayBook& book) {
    std::stable_sort(
        book.pages.begin(),
        book.pages.end(),
        [](const game::DayPage& one, const game::DayPage& other) { return one.day < other.day; }
    );
    for (std::size_t i = 1; i < book.pages.size();) {
        game::DayPage& before = book.pages[i - 1];
        if (before.day != book.pages[i].day) {
            i += 1;
            continue;
        }
        before.text += "\n" + book.pages[i].text;
        book.pages.erase(book.pages.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

// A used name whose entry of the Register is gone stays used.
void forget_gone_entries(game::Campaign& campaign) {
    std::unordered_set<Id> entries;
    for (const game::RegisterEntry& entry : campaign.registered.entries)
        entries.insert(entry.id);
    for (game::UsedName& used : campaign.names.used)
        if (entries.count(used.entry) == 0) used.entry = base::no_id;
}

// What somebody carried who is gone is the party's.
void take_from_gone_carriers(game::Campaign& campaign) {
    for (game::TreasureItem& item : campaign.treasury.items)
        if (game::find_character(campaign.party, item.carrier) == nullptr)
            item.carrier = base::no_id;
}

// What was mended in the turn order, in one sentence; empty when all was well.
std::string mend_order(game::Encounter& encounter) {
    std::string mended;
    const auto stands = [&](Id id) {
        const game::Combatant* combatant = game::find_combatant(std::as_const(encounter), id);
        return combatant != nullptr && combatant->standing == game::Standing::in_order;
    };
    const auto is_placed = [&](Id id) {
        return std::find(encounter.order.begin(), encounter.order.end(), id) !=
               encounter.order.end();
    };
    if (std::erase_if(encounter.order, [&](Id id) { return !stands(id); }) > 0)
        mended = "Combatants that are not in_order were taken out of the turn order.";
    if (encounter.phase != game::Phase::running) return mended;
    for (const game::Combatant& combatant : encounter.combatants) {
        if (combatant.standing != game::Standing::in_order || is_placed(combatant.id)) continue;
        encounter.order.push_back(combatant.id);
        mended = "Combatants missing in the turn order were put at its end.";
    }
    if (!encounter.order.empty() && !is_placed(encounter.current)) {
        encounter.current = encounter.order.front();
        mended = "Nobody was on turn; the first in the turn order is now.";
    }
    return mended;
}

// The party and the weather of a place stand at places that are there.
void check_places(const game::Places& places, const UsedIds& known, Problems& problems) {
    static const Pointer list = "/places/places";
    if (places.current != base::no_id && !known.has(places.current))
        dangles("place", places.current, "/places/current", problems);
    for (std::size_t i = 0; i < places.places.size(); ++i) {
        const Id other = places.places[i].weather_of;
        if (other != base::no_id && !known.has(other))
            dangles("place", other, at(list, i, "weather_of"), problems);
    }
}

} // namespace

void check_calendar_ids(
    const game::Calendar& calendar, const std::string& pointer, Problems& problems
) {
    UsedIds parts("parts of the year");
    parts.add_all(calendar.parts, problems, pointer + "/parts");
    UsedIds moons("moons");
    moons.add_all(calendar.moons, problems, pointer + "/moons");
    UsedIds holidays("holidays");
    holidays.add_all(calendar.holidays, problems, pointer + "/holidays");
    UsedIds seasons("seasons");
    seasons.add_all(calendar.seasons, problems, pointer + "/seasons");
    UsedIds eras("eras");
    eras.add_all(calendar.eras, problems, pointer + "/eras");
    UsedIds rules("leap rules");
    rules.add_all(calendar.leap_rules, problems, pointer + "/leap_rules");
}

void keep_calendar_ids_fresh(game::Calendar& calendar) {
    raise(calendar.next_id, highest_id(calendar.parts));
    raise(calendar.next_id, highest_id(calendar.leap_rules));
    raise(calendar.next_id, highest_id(calendar.seasons));
    raise(calendar.next_id, highest_id(calendar.moons));
    raise(calendar.next_id, highest_id(calendar.holidays));
    raise(calendar.next_id, highest_id(calendar.eras));
}

void check_references(const game::Campaign& campaign, Problems& problems) {
    UsedIds characters("characters");
    characters.add_all(campaign.party.characters, problems, "/party/characters");
    UsedIds creatures("creatures");
    creatures.add_all(campaign.shelf.creatures, problems, "/shelf/creatures");
    UsedIds prepared("prepared encounters");
    prepared.add_all(campaign.preparation.encounters, problems, "/preparation/encounters");
    UsedIds combatants("combatants");
    combatants.add_all(campaign.encounter.combatants, problems, "/encounter/combatants");
    UsedIds rolls("rolls at the table");
    rolls.add_all(campaign.table_rolls.rolls, problems, "/table_rolls/rolls");
    UsedIds registered("entries of the Register");
    registered.add_all(campaign.registered.entries, problems, "/register/entries");
    UsedIds used_names("used names");
    used_names.add_all(campaign.names.used, problems, "/names/used");
    UsedIds name_lists("name lists");
    name_lists.add_all(campaign.names.lists, problems, "/names/lists");
    UsedIds day_pages("pages of the Day Book");
    day_pages.add_all(campaign.day_book.pages, problems, "/day_book/pages");
    UsedIds day_timers("timers of the Day Book");
    day_timers.add_all(campaign.day_book.timers, problems, "/day_book/timers");
    check_calendar_ids(campaign.calendar, "/calendar", problems);
    UsedIds places("places");
    places.add_all(campaign.places.places, problems, "/places/places");
    check_places(campaign.places, places, problems);
    UsedIds sessions("sessions");
    sessions.add_all(campaign.sessions.sessions, problems, "/sessions/sessions");
    UsedIds ledger("lines of the Treasure Ledger");
    ledger.add_all(campaign.treasury.lines, problems, "/treasury/lines");
    UsedIds items("items of the Treasure Ledger");
    items.add_all(campaign.treasury.items, problems, "/treasury/items");
    const auto& coins = campaign.treasury.coins; // none: those of the rulebook
    const std::string wrong_coins = coins.empty() ? std::string() : game::coins_problem(coins);
    if (!wrong_coins.empty()) problems.add(ErrorKind::bad_text, "/treasury/coins", wrong_coins);
    UsedIds dice_rolls("rolls of dice");
    dice_rolls.add_all(campaign.table_rolls.dice_rolls, problems, "/table_rolls/dice_rolls");
    UsedIds own_pages("own pages");
    own_pages.add_all(campaign.own_pages.pages, problems, "/own_pages/pages");
    check_combatants(campaign.encounter, characters, problems);
    check_turns(campaign.encounter, combatants, problems);
}

std::vector<base::Error> mend(game::Campaign& campaign) {
    keep_ids_fresh(campaign);
    forget_gone_entries(campaign);
    take_from_gone_carriers(campaign);
    sort_pages(campaign.day_book);
    const std::string mended = mend_order(campaign.encounter);
    if (mended.empty()) return {};
    base::Place place;
    place.pointer = "/encounter/order";
    return {{ErrorKind::dangling_reference, mended, place, "Look over the turn order."}};
}

} // namespace store
