// The turn order as a list: sorting, entering, leaving, groups, and the GM's hand.
// Ties: four-degree opponents act before PCs (Player Core (ORC), Roll Initiative); srd5 leaves ties
// to the GM and takes the higher Dexterity first (common practice, no source).
#include "game/effects.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <utility>

namespace game {

namespace {

using rules::Rulebook;

constexpr int no_initiative = -1000; // sorts last

// Smaller acts earlier.
struct Rank {
    int initiative = 0;
    int tie = 0;

    // NOLINTNEXTLINE(modernize-use-nullptr): the linter takes the compared 0 for a pointer
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

std::vector<Id> line_of(const Encounter& encounter) {
    std::vector<Id> line;
    const auto is_listed = [&line](Id id) {
        return std::find(line.begin(), line.end(), id) != line.end();
    };
    // Whoever waits stands behind the one it followed, and may itself be followed by others.
    const auto add_waiting = [&](Id behind) {
        for (bool is_found = true; is_found;) {
            is_found = false;
            for (const Combatant& each : encounter.combatants) {
                if (each.standing != Standing::delaying || each.delayed_after != behind ||
                    is_listed(each.id))
                    continue;
                line.push_back(each.id);
                behind = each.id;
                is_found = true;
                break;
            }
        }
    };
    add_waiting(base::no_id);
    for (const Id id : encounter.order) {
        line.push_back(id);
        add_waiting(id);
    }
    for (const Combatant& each : encounter.combatants) { // a place that nobody knows: at the end
        if (each.standing == Standing::delaying && !is_listed(each.id)) line.push_back(each.id);
    }
    return line;
}

void set_line(Encounter& encounter, const std::vector<Id>& line) {
    encounter.order.clear();
    Id before = base::no_id;
    for (const Id id : line) {
        Combatant* combatant = find_combatant(encounter, id);
        if (combatant == nullptr) continue;
        const bool is_waiting = combatant->standing == Standing::delaying;
        if (combatant->standing == Standing::in_order) encounter.order.push_back(id);
        combatant->delayed_after = is_waiting ? before : base::no_id;
        if (is_waiting || combatant->standing == Standing::in_order) before = id;
    }
}

void put_in_line(Encounter& encounter, Id combatant, Id before) {
    std::vector<Id> line = line_of(encounter);
    std::erase(line, combatant);
    line.insert(std::find(line.begin(), line.end(), before), combatant);
    set_line(encounter, line);
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

static void enter_line(Encounter& encounter, const Rulebook& rulebook, Id id, bool is_newcomer) {
    Combatant* combatant = find_combatant(encounter, id);
    std::vector<Id> line = line_of(encounter);
    std::erase(line, id);
    const Rank rank = rank_of(rulebook, *combatant);
    auto place = std::find_if(line.begin(), line.end(), [&](Id other) {
        return rank < rank_of(rulebook, encounter, other);
    });
    if (combatant->group != base::no_id) { // right behind the last of its group
        for (auto each = line.begin(); each != line.end(); ++each) {
            if (find_combatant(encounter, *each)->group == combatant->group) place = each + 1;
        }
    }
    const auto current = std::find(line.begin(), line.end(), encounter.current);
    const bool is_running = encounter.phase == Phase::running;
    // A newcomer above the one whose turn it is acts from the next round on; whoever only changes
    // its place keeps the turn it has left.
    if (is_running && is_newcomer && current != line.end() && place <= current)
        combatant->has_acted = true;
    combatant->standing = Standing::in_order;
    line.insert(place, id);
    set_line(encounter, line);
    if (is_running && encounter.current == base::no_id) next_turn(encounter, rulebook);
}

void enter_order(Encounter& encounter, const Rulebook& rulebook, Id id) {
    if (find_combatant(encounter, id) == nullptr) return;
    const std::vector<Id> line = line_of(encounter);
    enter_line(encounter, rulebook, id, std::find(line.begin(), line.end(), id) == line.end());
}

void leave_order(Encounter& encounter, const Rulebook& rulebook, Id id, Standing standing) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    std::vector<Id> line = line_of(encounter);
    // A turn that is held back or broken off is over for this round, even for one who comes back.
    if (encounter.current == id) combatant->has_acted = true;
    if (standing != Standing::delaying) {
        hand_over_timers(encounter, id);
        drop_prompts(encounter, id, base::no_id);
        std::erase(line, id);
        combatant->delayed_after = base::no_id;
    }
    combatant->standing = standing;
    set_line(encounter, line);
    if (encounter.phase == Phase::running && encounter.current == id)
        next_turn(encounter, rulebook);
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
    // The one whose turn it is keeps its place until the turn is over, and the number counts for
    // whoever comes in later. All others step out together first, so that a group enters as one.
    // Who is not in the order yet enters it by itself.
    std::vector<Id> line = line_of(encounter);
    std::erase_if(moved, [&](Id each) {
        return each == encounter.current ||
               find_combatant(encounter, each)->standing != Standing::in_order ||
               std::find(line.begin(), line.end(), each) == line.end();
    });
    std::erase_if(line, [&](Id each) {
        return std::find(moved.begin(), moved.end(), each) != moved.end();
    });
    set_line(encounter, line);
    for (const Id each : moved)
        enter_line(encounter, rulebook, each, false);
}

void move_in_order(Encounter& encounter, Id id, Id other) {
    const Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->standing != Standing::in_order || id == other) return;
    put_in_line(encounter, id, other);
}

void make_group(Encounter& encounter, const Rulebook& rulebook, const std::vector<Id>& members) {
    std::optional<int> best;
    std::vector<Id> known;
    for (const Id member : members) {
        const Combatant* combatant = find_combatant(encounter, member);
        if (combatant == nullptr || std::find(known.begin(), known.end(), member) != known.end())
            continue;
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
    if (encounter.phase != Phase::running) {
        sort_order(encounter, rulebook);
        return;
    }
    // Joined in the order they stand in, behind the first of them. Nobody loses a turn by that: who
    // has not acted yet comes next (see next_turn).
    std::vector<Id> line = line_of(encounter);
    std::vector<Id> standing;
    for (const Id id : line) {
        if (std::find(known.begin(), known.end(), id) != known.end()) standing.push_back(id);
    }
    if (standing.size() < 2) return;
    std::erase_if(line, [&](Id id) {
        return id != standing.front() &&
               std::find(standing.begin(), standing.end(), id) != standing.end();
    });
    const auto place = std::find(line.begin(), line.end(), standing.front()) + 1;
    line.insert(place, standing.begin() + 1, standing.end());
    set_line(encounter, line);
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
