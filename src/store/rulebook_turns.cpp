#include "store/rulebook_conditions.h"
#include "store/rulebook_tables.h"

#include <set>

namespace store {

namespace {

using base::ErrorKind;

std::vector<int> read_penalties(const Spot& spot) {
    constexpr int worst = -100;
    std::vector<int> penalties;
    spot.each([&](const Spot& each) { penalties.push_back(each.number(worst, 0)); });
    return penalties;
}

void read_turn(const Spot& spot, rules::TurnRules& turn) {
    constexpr int most_actions = 9;
    constexpr int most_seconds = 3600;
    turn.actions = spot.at("actions").number(1, most_actions);
    turn.reactions = spot.at("reactions").number(0, most_actions);
    turn.round_seconds = spot.at("round_seconds").number(1, most_seconds);
    turn.has_delay = spot.at("has_delay").truth();
    turn.opponents_win_ties = spot.at("opponents_win_ties").truth();
    turn.ties_by_dexterity = spot.at("ties_by_dexterity").truth();
    turn.initiative_stat = spot.at("initiative_stat").key();
    turn.attack_penalty = read_penalties(spot.at("attack_penalty"));
    turn.agile_attack_penalty = read_penalties(spot.at("agile_attack_penalty"));
}

constexpr int figure_max = 100; // far beyond every figure of these tables

void read_dying(const Spot& spot, rules::DyingRules& dying) {
    const auto read = [&](const char* key, int& number, int least) {
        number = spot.at(key).number(least, figure_max);
    };
    read("gained", dying.gained, 1);
    read("gained_on_critical", dying.gained_on_critical, 1);
    read("death_at", dying.death_at, 1);
    read("damage_adds", dying.damage_adds, 0);
    read("critical_damage_adds", dying.critical_damage_adds, 0);
    read("recovery_dc_base", dying.recovery_dc_base, 0);
    read("recovery_critical_success", dying.recovery_critical_success, -figure_max);
    read("recovery_success", dying.recovery_success, -figure_max);
    read("recovery_failure", dying.recovery_failure, -figure_max);
    read("recovery_critical_failure", dying.recovery_critical_failure, -figure_max);
    read("wounded_gained", dying.wounded_gained, 0);
    read("massive_damage_factor", dying.massive_damage_factor, 1);
    read("persistent_flat_dc", dying.persistent_flat_dc, 1);
    read("persistent_helped_dc", dying.persistent_helped_dc, 1);
}

void read_death_saves(const Spot& spot, rules::SrdEdition edition, rules::DeathSaveRules& saves) {
    const auto read = [&](const char* key, int& number, int least) {
        number = by_edition(spot.at(key), edition).number(least, figure_max);
    };
    read("dc", saves.dc, 1);
    read("successes_to_stable", saves.successes_to_stable, 1);
    read("failures_to_death", saves.failures_to_death, 1);
    read("natural_1_failures", saves.natural_1_failures, 0);
    read("natural_20_hp", saves.natural_20_hp, 0);
    read("damage_failures", saves.damage_failures, 0);
    read("critical_failures", saves.critical_failures, 0);
    read("concentration_dc_min", saves.concentration_dc_min, 0);
    read("concentration_damage_divisor", saves.concentration_damage_divisor, 1);
    read("concentration_dc_max", saves.concentration_dc_max, 0);
    saves.opponents_die_at_zero = spot.at("opponents_die_at_zero").truth();
}

void read_damage(const Spot& spot, rules::DamageRules& damage) {
    damage.halves_and_doubles = spot.at("halves_and_doubles").truth();
    std::set<std::string> keys;
    spot.at("types").each([&](const Spot& each) {
        if (!keys.insert(each.key()).second)
            throw each.wrong("a type that stands once", ErrorKind::duplicate);
        damage.types.push_back(each.key());
    });
}

} // namespace

Spot by_edition(const Spot& spot, rules::SrdEdition edition) {
    return spot.value.is_object() ? spot.at(edition_key(edition)) : spot;
}

void read_turn_tables(const Spot& top, rules::Rulebook& rulebook) {
    read_turn(top.at("turn"), rulebook.turn);
    if (rulebook.family == rules::Family::four_degree)
        read_dying(top.at("dying"), rulebook.dying);
    else
        read_death_saves(top.at("death_saves"), rulebook.edition, rulebook.death_saves);
    read_damage(top.at("damage"), rulebook.damage);
}

} // namespace store
