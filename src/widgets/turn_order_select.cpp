#include "widgets/turn_order_select.h"

#include <algorithm>
#include <cstddef>

namespace widgets {

using base::Id;

std::vector<Id> rows_shown(const game::Encounter& encounter) {
    std::vector<Id> rows = encounter.order;
    for (const game::Standing standing : {game::Standing::delaying, game::Standing::defeated})
        for (const game::Combatant& combatant : encounter.combatants)
            if (combatant.standing == standing) rows.push_back(combatant.id);
    return rows;
}

bool is_picked(const Selection& selection, Id combatant) {
    const auto& ids = selection.combatants;
    return std::find(ids.begin(), ids.end(), combatant) != ids.end();
}

void forget_gone(Selection& selection, const game::Encounter& encounter) {
    auto& ids = selection.combatants;
    const auto is_gone = [&](Id id) {
        const game::Combatant* combatant = game::find_combatant(encounter, id);
        return combatant == nullptr || (encounter.phase != game::Phase::no_fight &&
                                        combatant->standing == game::Standing::absent);
    };
    ids.erase(std::remove_if(ids.begin(), ids.end(), is_gone), ids.end());
}

void pick(Selection& selection, const std::vector<Id>& rows, Id clicked, Pick how) {
    auto& ids = selection.combatants;
    switch (how) {
    case Pick::only: ids = {clicked}; return;
    case Pick::toggle: {
        const auto found = std::find(ids.begin(), ids.end(), clicked);
        if (found == ids.end())
            ids.push_back(clicked);
        else
            ids.erase(found);
        return;
    }
    case Pick::range: {
        const Id anchor = ids.empty() ? clicked : ids.front();
        const auto from = std::find(rows.begin(), rows.end(), anchor);
        const auto to = std::find(rows.begin(), rows.end(), clicked);
        if (from == rows.end() || to == rows.end()) {
            ids = {clicked};
            return;
        }
        if (from <= to)
            ids.assign(from, to + 1);
        else
            ids.assign(std::make_reverse_iterator(from + 1), std::make_reverse_iterator(to));
        return;
    }
    }
}

void step_pick(
    Selection& selection, const std::vector<Id>& rows, Id start, int step, bool extends
) {
    if (rows.empty()) return;
    auto& ids = selection.combatants;
    const Id main = ids.empty() ? start : ids.back();
    const auto found = std::find(rows.begin(), rows.end(), main);
    std::ptrdiff_t place = found == rows.end() ? 0 : found - rows.begin();
    if (!ids.empty() && found != rows.end()) place += step;
    place = std::clamp<std::ptrdiff_t>(place, 0, std::ssize(rows) - 1);
    const Id reached = rows[static_cast<std::size_t>(place)];
    pick(selection, rows, reached, extends ? Pick::range : Pick::only);
}

std::vector<Id> targets(const game::Encounter& encounter, const Selection& selection) {
    if (!selection.combatants.empty()) return selection.combatants;
    if (encounter.current != base::no_id) return {encounter.current};
    return {};
}

std::string names_text(const game::Encounter& encounter, const std::vector<Id>& combatants) {
    std::vector<std::string> names;
    for (const Id id : combatants)
        if (const game::Combatant* combatant = game::find_combatant(encounter, id))
            names.push_back(combatant->name);
    if (names.empty()) return "nobody";
    if (names.size() == 1) return names[0];
    if (names.size() == 2) return names[0] + " and " + names[1];
    return std::to_string(names.size()) + " combatants";
}

std::string group_text(const game::Encounter& encounter, Id group) {
    std::vector<Id> groups;
    for (const game::Combatant& combatant : encounter.combatants)
        if (combatant.group != base::no_id &&
            std::find(groups.begin(), groups.end(), combatant.group) == groups.end())
            groups.push_back(combatant.group);
    const auto found = std::find(groups.begin(), groups.end(), group);
    const std::ptrdiff_t place = found - groups.begin();
    constexpr std::ptrdiff_t letters = 26;
    if (place < letters) return std::string("group ") + static_cast<char>('A' + place);
    return "group " + std::to_string(place + 1);
}

} // namespace widgets
