// What runs down by itself: timers counted on somebody's turn, at the top of the round, in seconds,
// by a rest.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

namespace {

using rules::ConditionRule;
using rules::Fading;
using rules::Rulebook;

// Ends what `has_run_out` says, one by one: ending one may change the list.
template <class HasRunOut>
std::vector<Notice>
end_those(Encounter& encounter, const Rulebook& rulebook, HasRunOut has_run_out) {
    std::vector<std::pair<Id, Id>> ending;
    std::vector<Notice> ended;
    for (Combatant& combatant : encounter.combatants) {
        for (ActiveCondition& active : combatant.conditions) {
            if (active.is_paused || !has_run_out(active)) continue;
            ending.emplace_back(combatant.id, active.id);
            ended.push_back({combatant.id, condition_text(rulebook, active) + " ends"});
        }
    }
    for (const auto& [combatant, condition] : ending)
        end_condition(encounter, rulebook, combatant, condition);
    return ended;
}

void add_notices(Encounter& encounter, std::vector<Notice> notices) {
    for (Notice& each : notices)
        encounter.notices.push_back(std::move(each));
}

bool has_run_down(Duration& duration, int seconds) {
    if (duration.kind == DurationKind::rounds) {
        duration.rounds_left -= 1;
        return duration.rounds_left <= 0;
    }
    if (duration.kind == DurationKind::timed) {
        duration.seconds_left -= seconds;
        return duration.seconds_left <= 0;
    }
    return duration.kind == DurationKind::until_turn;
}

// Turns until the given edge of that combatant's next turn; nobody: until the top of the next
// round.
long long turns_until(const Encounter& encounter, Id whose, TurnEdge edge) {
    const auto count = static_cast<long long>(std::max<std::size_t>(encounter.order.size(), 1));
    const auto here =
        static_cast<long long>(position_in_order(encounter, encounter.current)) % count;
    const std::size_t place = position_in_order(encounter, whose);
    if (whose == base::no_id || place == encounter.order.size()) return count - here;
    const long long distance = (static_cast<long long>(place) - here + count) % count;
    if (edge == TurnEdge::end) return distance + 1;
    return distance == 0 ? count : distance;
}

// Sort key: in-world time until it can end, in turns of the present round's length.
struct TimeToEnd {
    long long seconds = 0;
    long long turns = 0; // within equal seconds

    // NOLINTNEXTLINE(modernize-use-nullptr): the linter takes the compared 0 for a pointer
    auto operator<=>(const TimeToEnd&) const = default;
};

constexpr long long until_rest_seconds = 1'000'000; // longer than any counted timer a GM gives
constexpr long long open_ended_seconds = 1'000'000'000;

TimeToEnd in_rounds(
    const Encounter& encounter, const Rulebook& rulebook, long long rounds, Id whose, TurnEdge edge
) {
    const long long turns = turns_until(encounter, whose, edge);
    const auto count = static_cast<long long>(std::max<std::size_t>(encounter.order.size(), 1));
    const long long seconds = rulebook.turn.round_seconds;
    return {(rounds - 1) * seconds + turns * seconds / count, turns};
}

TimeToEnd time_to_end(
    const Encounter& encounter,
    const Rulebook& rulebook,
    const Combatant& combatant,
    const ActiveCondition& active
) {
    TimeToEnd soonest{open_ended_seconds, 0};
    const Duration& duration = active.duration;
    switch (duration.kind) {
    case DurationKind::until_turn:
        soonest = in_rounds(encounter, rulebook, 1, duration.whose_turn, duration.edge);
        break;
    case DurationKind::rounds:
        soonest = in_rounds(
            encounter, rulebook, duration.rounds_left, duration.whose_turn, duration.edge
        );
        break;
    case DurationKind::timed: soonest = {duration.seconds_left, 0}; break;
    case DurationKind::until_rest: soonest = {until_rest_seconds, 0}; break;
    case DurationKind::until_removed:
    case DurationKind::until_check: break;
    }
    if (active.check)
        soonest =
            std::min(soonest, in_rounds(encounter, rulebook, 1, combatant.id, active.check->at));
    const ConditionRule* rule = rules::find_condition(rulebook, active.key);
    if (rule == nullptr) return soonest;
    switch (rule->fading) {
    case Fading::stays: break;
    case Fading::drops_at_turn_end:
        soonest = std::min(
            soonest, in_rounds(encounter, rulebook, active.value, combatant.id, TurnEdge::end)
        );
        break;
    case Fading::recovery_check:
    case Fading::lost_with_actions:
        if (active.value > 0) {
            soonest =
                std::min(soonest, in_rounds(encounter, rulebook, 1, combatant.id, TurnEdge::start));
        }
        break;
    case Fading::persistent_damage:
        soonest = std::min(soonest, in_rounds(encounter, rulebook, 1, combatant.id, TurnEdge::end));
        break;
    }
    return soonest;
}

} // namespace

void run_turn_timers(Encounter& encounter, const Rulebook& rulebook, Id whose, TurnEdge edge) {
    add_notices(encounter, end_those(encounter, rulebook, [&](ActiveCondition& active) {
                    const bool is_counted_here =
                        active.duration.whose_turn == whose && active.duration.edge == edge;
                    return is_counted_here &&
                           has_run_down(active.duration, rulebook.turn.round_seconds);
                }));
}

void run_round_timers(Encounter& encounter, const Rulebook& rulebook) {
    add_notices(encounter, end_those(encounter, rulebook, [&](ActiveCondition& active) {
                    return active.duration.whose_turn == base::no_id &&
                           has_run_down(active.duration, rulebook.turn.round_seconds);
                }));
}

// A timer must not hang because the one whose turn it counts is gone (defeated, dead, sent away):
// it then counts where that turn stood, its start at the end of the turn before, its end at the
// start of the turn after. With nobody left in the order it counts at the top of the round. One
// that only delays keeps its timers: they count when its turn really starts or ends, which at the
// latest is at its old place a round later.
void hand_over_timers(Encounter& encounter, Id leaving) {
    const std::vector<Id> line = line_of(encounter);
    const auto here = std::find(line.begin(), line.end(), leaving);
    const auto place = static_cast<std::size_t>(here - line.begin());
    Id before = base::no_id;
    Id after = base::no_id;
    for (std::size_t step = 1; here != line.end() && step < line.size(); ++step) {
        const Id ahead = line[(place + step) % line.size()];
        const Id behind = line[(place + line.size() - step) % line.size()];
        const auto is_in_order = [&](Id id) {
            return find_combatant(encounter, id)->standing == Standing::in_order;
        };
        if (after == base::no_id && is_in_order(ahead)) after = ahead;
        if (before == base::no_id && is_in_order(behind)) before = behind;
    }
    for (Combatant& combatant : encounter.combatants) {
        for (ActiveCondition& active : combatant.conditions) {
            Duration& duration = active.duration;
            if (duration.whose_turn != leaving) continue;
            const bool counts_start = duration.edge == TurnEdge::start;
            duration.whose_turn = counts_start ? before : after;
            duration.edge = counts_start ? TurnEdge::end : TurnEdge::start;
        }
    }
}

void forget_gone(Encounter& encounter) {
    const auto is_gone = [&](Id id) { return find_combatant(encounter, id) == nullptr; };
    for (Combatant& combatant : encounter.combatants) {
        for (ActiveCondition& active : combatant.conditions) {
            if (is_gone(active.source)) active.source = base::no_id;
            if (is_gone(active.duration.whose_turn)) active.duration.whose_turn = base::no_id;
        }
    }
}

std::vector<Notice> pass_time(Encounter& encounter, const Rulebook& rulebook, int seconds) {
    return end_those(encounter, rulebook, [&](ActiveCondition& active) {
        return active.duration.kind == DurationKind::timed &&
               has_run_down(active.duration, seconds);
    });
}

void rest_conditions(Encounter& encounter, const Rulebook& rulebook, Id id) {
    const Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    const std::vector<ActiveCondition> before = combatant->conditions;
    for (const ActiveCondition& active : before) {
        const ConditionRule* rule = rules::find_condition(rulebook, active.key);
        if (active.duration.kind == DurationKind::until_rest ||
            (rule != nullptr && rule->night_rest_ends)) {
            end_condition(encounter, rulebook, id, active.id);
        } else if (rule != nullptr && rule->night_rest != 0) {
            set_condition_value(
                encounter, rulebook, id, active.id, active.value + rule->night_rest
            );
        }
    }
}

std::vector<RunningTimer>
running_timers(const Encounter& encounter, const Rulebook& rulebook, bool with_open_ended) {
    std::vector<std::pair<TimeToEnd, RunningTimer>> sorted;
    const auto add_of = [&](const Combatant& combatant) {
        for (const ActiveCondition& active : combatant.conditions) {
            const TimeToEnd time = time_to_end(encounter, rulebook, combatant, active);
            if (time.seconds >= open_ended_seconds && !with_open_ended) continue;
            sorted.push_back({time, {combatant.id, active.id, time.seconds}});
        }
    };
    for (const Id id : encounter.order) {
        const Combatant* combatant = find_combatant(encounter, id);
        if (combatant != nullptr) add_of(*combatant);
    }
    for (const Combatant& combatant : encounter.combatants) {
        // Nobody watches what runs on the dead and the defeated.
        if (combatant.standing == Standing::delaying || combatant.standing == Standing::absent)
            add_of(combatant);
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto& one, const auto& other) {
        return one.first < other.first;
    });
    std::vector<RunningTimer> timers;
    timers.reserve(sorted.size());
    for (const auto& [time, timer] : sorted)
        timers.push_back(timer);
    return timers;
}

} // namespace game
