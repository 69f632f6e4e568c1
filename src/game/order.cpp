// The turn order as a list: sorting, entering, leaving, groups, and the GM's hand.
// Ties: four-degree opponents act before PCs (Player Core (ORC), Roll Initiative); srd5 leaves ties
// to the GM and takes the higher Dexterity first (common practice, no source).
#include "game/effects.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace game {

namespace {

using rules::Rulebook;

constexpr int no_initiative = -1000; // sorts last

// Smaller acts earlier.
struct Rank {
    int initiative = 0;
    int tie = 0;

    auto operator<=>(const Rank&) const = default;
};

Rank rank_of(const Rulebook& rulebook, const Combatant& combatant) {
    Rank rank;
    rank.initiative = -combatant.initiative.value_or(no_initiative);
    if (rulebook.turn.opponents_win_ties) rank.tie = combatant.side == Side::party ? 1 : 0;
    if (rulebook.turn.ties_by_dexterity) {
        const auto dexterity = combatant.statistics.abilities.find("dex");
        rank.tie = dexterity == combatant.statistics.abilities.end() ? 0 : -dexterity->second;
    }
    return rank;
}

Rank rank_of(const Rulebook& rulebook, const Encounter& encounter, Id id) {
    const Combatant* combatant = find_combatant(encounter, id);
    assert(combatant != nullptr && "the order holds only combatants of the encounter");
    return rank_of(rulebook, *combatant);
}

} // namespace

void notice(Encounter& encounter, Id combatant, const std::string& text) {
    encounter.notices.push_back({combatant, text});
}

std::size_t position_in_order(const Encounter& encounter, Id combatant) {
    const auto place = std::find(encounter.order.begin(), encounter.order.end(), combatant);
    return static_cast<std::size_t>(place - encounter.order.begin());
}

void drop_prompts(Encounter& encounter, Id combatant, Id condition) {
    std::erase_if(encounter.prompts, [=](const Prompt& prompt) {
        return prompt.combatant == combatant &&
               (condition == base::no_id || prompt.condition == condition);
    });
}

void sort_order(Encounter& encounter, const Rulebook& rulebook) {
    encounter.order.erase(
        std::remove_if(
            encounter.order.begin(),
            encounter.order.end(),
            [&](Id id) {
                const Combatant* combatant = find_combatant(encounter, id);
                return combatant == nullptr || combatant->standing != Standing::in_order;
            }
        ),
        encounter.order.end()
    );
    for (const Combatant& combatant : encounter.combatants) {
        const bool is_listed = position_in_order(encounter, combatant.id) < encounter.order.size();
        if (combatant.standing == Standing::in_order && !is_listed)
            encounter.order.push_back(combatant.id);
    }
    // Members of a group stand where its first member stands, and its best rank counts for all.
    std::map<Id, std::pair<Rank, std::size_t>> place_of_group;
    for (std::size_t place = 0; place < encounter.order.size(); ++place) {
        const Combatant& combatant = *find_combatant(encounter, encounter.order[place]);
        if (combatant.group == base::no_id) continue;
        const auto [known, is_new] =
            place_of_group.try_emplace(combatant.group, rank_of(rulebook, combatant), place);
        if (!is_new)
            known->second.first = std::min(known->second.first, rank_of(rulebook, combatant));
    }
    std::vector<std::pair<std::pair<Rank, std::size_t>, Id>> sorted;
    for (std::size_t place = 0; place < encounter.order.size(); ++place) {
        const Combatant& combatant = *find_combatant(encounter, encounter.order[place]);
        const auto key = combatant.group == base::no_id
                             ? std::pair(rank_of(rulebook, combatant), place)
                             : place_of_group.at(combatant.group);
        sorted.emplace_back(key, combatant.id);
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto& one, const auto& other) {
        return one.first < other.first;
    });
    std::transform(sorted.begin(), sorted.end(), encounter.order.begin(), [](const auto& each) {
        return each.second;
    });
}

void enter_order(Encounter& encounter, const Rulebook& rulebook, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    combatant->standing = Standing::in_order;
    combatant->delayed_after = base::no_id;
    std::erase(encounter.order, id);
    const Rank rank = rank_of(rulebook, *combatant);
    auto place = std::find_if(encounter.order.begin(), encounter.order.end(), [&](Id other) {
        return rank < rank_of(rulebook, encounter, other);
    });
    if (combatant->group != base::no_id) { // right behind the last of its group
        for (auto each = encounter.order.begin(); each != encounter.order.end(); ++each) {
            if (find_combatant(encounter, *each)->group == combatant->group) place = each + 1;
        }
    }
    const bool is_before_current = encounter.phase == Phase::running &&
                                   static_cast<std::size_t>(place - encounter.order.begin()) <=
                                       position_in_order(encounter, encounter.current);
    encounter.order.insert(place, id);
    // Whoever comes in above the current one acts from the next round on.
    if (is_before_current) find_combatant(encounter, id)->has_acted = true;
    if (encounter.phase == Phase::running && encounter.current == base::no_id)
        encounter.current = id;
}

void leave_order(Encounter& encounter, const Rulebook& rulebook, Id id, Standing standing) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    const std::size_t place = position_in_order(encounter, id);
    const bool is_listed = place < encounter.order.size();
    const Id before = !is_listed  ? combatant->delayed_after
                      : place > 0 ? encounter.order[place - 1]
                                  : base::no_id;
    if (standing != Standing::delaying) hand_over_timers(encounter, id);
    combatant->standing = standing;
    combatant->delayed_after = standing == Standing::delaying ? before : base::no_id;
    if (is_listed)
        encounter.order.erase(encounter.order.begin() + static_cast<std::ptrdiff_t>(place));
    // Whoever delayed behind the one that leaves now waits behind the one before it.
    for (Combatant& other : encounter.combatants) {
        if (other.id != id && other.standing == Standing::delaying && other.delayed_after == id)
            other.delayed_after = before;
    }
    if (encounter.phase == Phase::running && encounter.current == id)
        continue_at(encounter, rulebook, place, id);
}

void set_initiative(Encounter& encounter, const Rulebook& rulebook, Id id, int total) {
    const Combatant* named = find_combatant(encounter, id);
    if (named == nullptr) return;
    const Id group = named->group;
    std::vector<Id> moved;
    for (Combatant& combatant : encounter.combatants) {
        if (combatant.id != id && (group == base::no_id || combatant.group != group)) continue;
        combatant.initiative = total;
        moved.push_back(combatant.id);
    }
    if (encounter.phase != Phase::running) return;
    for (const Id each : moved) {
        if (each != encounter.current) std::erase(encounter.order, each);
    }
    for (const Id each : moved) {
        // The one whose turn it is keeps its place until the turn is over; the number is right from
        // the next sort on.
        const Combatant& combatant = *find_combatant(encounter, each);
        if (combatant.standing == Standing::in_order && each != encounter.current)
            enter_order(encounter, rulebook, each);
    }
}

void move_in_order(Encounter& encounter, Id id, Id other) {
    const Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->standing != Standing::in_order || id == other) return;
    std::erase(encounter.order, id);
    const auto place = std::find(encounter.order.begin(), encounter.order.end(), other);
    encounter.order.insert(place, id);
}

void make_group(Encounter& encounter, const Rulebook& rulebook, const std::vector<Id>& members) {
    std::optional<int> best;
    std::vector<Id> known;
    for (const Id member : members) {
        const Combatant* combatant = find_combatant(encounter, member);
        if (combatant == nullptr) continue;
        known.push_back(member);
        if (combatant->initiative && (!best || *combatant->initiative > *best))
            best = combatant->initiative;
    }
    if (known.size() < 2) return;
    const Id group = encounter.next_id++;
    for (const Id member : known) {
        Combatant& combatant = *find_combatant(encounter, member);
        combatant.group = group;
        combatant.initiative = best;
    }
    // Joined in the order they stand in, behind the first of them.
    std::vector<Id> standing;
    for (const Id id : encounter.order) {
        if (std::find(known.begin(), known.end(), id) != known.end()) standing.push_back(id);
    }
    if (standing.size() < 2) return;
    const Id first = standing.front();
    standing.erase(standing.begin());
    for (const Id id : standing)
        std::erase(encounter.order, id);
    const auto place = std::find(encounter.order.begin(), encounter.order.end(), first) + 1;
    encounter.order.insert(place, standing.begin(), standing.end());
    if (encounter.phase != Phase::running) sort_order(encounter, rulebook);
}

void leave_group(Encounter& encounter, Id id) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    const Id group = std::exchange(combatant->group, base::no_id);
    if (group == base::no_id) return;
    const auto left = std::count_if(
        encounter.combatants.begin(),
        encounter.combatants.end(),
        [group](const Combatant& each) { return each.group == group; }
    );
    if (left != 1) return;
    for (Combatant& each : encounter.combatants) {
        if (each.group == group) each.group = base::no_id; // one alone is no group
    }
}

} // namespace game
