#include "app/going_there.h"

#include "app/actions.h"
#include "app/shell.h"
#include "game/find_sources.h"

#include <algorithm>

namespace app {

namespace {

using game::FindKind;

struct Way {
    FindKind kind;
    const char* panel; // that opens it (widgets::take_wanted)
    const char* word;
};

constexpr Way ways[] = {
    {FindKind::entry, "register", "register"},
    {FindKind::character, "party_roster", "party"},
    {FindKind::creature, "creature_shelf", "shelf"},
    {FindKind::open_creature, "open_creatures", "creature"},
    {FindKind::prepared, "encounter_preparation", "encounter"},
    {FindKind::session, "session_sheet", "session"},
    {FindKind::note, "session_sheet", "note"},
    {FindKind::place, "places", "place"},
    {FindKind::name, "name_picker", "name"},
    {FindKind::rule, "reference", "rule"},
    {FindKind::price, "price_book", "price"},
    {FindKind::day, "day_book", "day"},
    {FindKind::treasure, "treasure_ledger", "treasure"},
    {FindKind::ledger, "treasure_ledger", "money"},
};

const Way* find_way(FindKind kind) {
    const auto* found = std::find_if(std::begin(ways), std::end(ways), [kind](const Way& way) {
        return way.kind == kind;
    });
    return found == std::end(ways) ? nullptr : found;
}

} // namespace

void go_to(ShellState& state, const game::FindTarget& target) {
    if (target.kind == FindKind::action) {
        const Action* action = find_action(target.key);
        if (action != nullptr) carry_out_action(*action, state);
        return;
    }
    const Way* way = find_way(target.kind);
    if (way == nullptr) return;
    state.selection.wanted_panel = way->panel;
    if (target.kind == FindKind::entry)
        state.selection.wanted_entry = target.id;
    else
        state.selection.wanted = {way->panel, target.id, target.line, target.key};
}

const char* kind_of(const game::FindTarget& target) {
    if (target.kind == FindKind::action)
        return target.key.compare(0, 6, "panel/") == 0 ? "panel" : "do it";
    const Way* way = find_way(target.kind);
    return way == nullptr ? "" : way->word;
}

std::string reason_against(const game::FindTarget& target, ShellState& state) {
    const Action* action = target.kind == FindKind::action ? find_action(target.key) : nullptr;
    return action == nullptr ? std::string() : reason_against(*action, state);
}

} // namespace app
