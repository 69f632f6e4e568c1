#include "game/party_reading.h"

#include "game/damage_taking.h"
#include "game/effects.h"
#include "rules/attack_odds.h"

#include <utility>

namespace game {

namespace {

using rules::Rulebook;

// Advantage against the target and the attacker's own disadvantage cancel (SRD 5.1, Advantage).
rules::RollMode together(rules::RollMode own, rules::RollMode against) {
    if (own == rules::RollMode::normal) return against;
    return against == rules::RollMode::normal || against == own ? own : rules::RollMode::normal;
}

struct Exchange {
    AttackReading reading;
    rules::Distribution damage; // of one round; certainly 0 without an attack
};

// One turn of one routine: each attack misses, hits or hits critically, and the target takes of it
// what its immunities and resistances leave.
rules::Distribution
damage_of(const Rulebook& rulebook, const Routine& routine, const Combatant& target, int ac) {
    rules::Distribution total;
    for (std::size_t place = 0; place < routine.attacks.size(); ++place) {
        const rules::Attack& attack = routine.attacks[place];
        const DamageTaking taking = damage_taking(rulebook, target, routine.damage_types[place]);
        const rules::DegreeOdds odds = rules::attack_odds(attack, ac);
        total = rules::sum_of(
            total,
            rules::mixture_of(
                {{rules::chance_of_failure(odds), rules::certain(0)},
                 {rules::chance_of(odds, rules::Degree::success),
                  taken_damage(taking, rules::hit_damage(attack))},
                 {rules::chance_of(odds, rules::Degree::critical_success),
                  taken_damage(taking, rules::critical_damage(attack))}}
            )
        );
    }
    return total;
}

Exchange
exchange(const Rulebook& rulebook, std::vector<Routine> routines, const Combatant& target) {
    const int ac = effective_ac(rulebook, target).total;
    const rules::RollMode against = attacks_against(rulebook, target).mode;
    Exchange best;
    for (Routine& routine : routines) {
        for (rules::Attack& attack : routine.attacks)
            attack.mode = together(attack.mode, against);
        rules::Distribution damage = damage_of(rulebook, routine, target, ac);
        const double expected = rules::mean(damage);
        if (!best.reading.routine.empty() && expected <= best.reading.damage_per_round) continue;
        const rules::Attack& first = routine.attacks.front();
        best.reading = {
            routine.text,
            rules::needed_roll(first.kind, first.modifier, ac),
            rules::chance_of_success(rules::attack_odds(first, ac)),
            expected};
        best.damage = std::move(damage);
    }
    return best;
}

SaveReading save_reading(
    const Rulebook& rulebook,
    const std::vector<const Combatant*>& party,
    const Combatant& opponent,
    const std::string& save
) {
    const rules::CheckKind kind = rulebook.family == rules::Family::four_degree
                                      ? rules::CheckKind::four_degree
                                      : rules::CheckKind::srd5_check;
    SaveReading reading;
    reading.save = save;
    reading.modifier = effective_check(rulebook, opponent, save).total;
    double sum = 0;
    for (const Combatant* member : party) {
        for (const auto& [key, written] : member->statistics.difficulty_classes) {
            const int dc = effective_dc(rulebook, *member, key).total;
            const double chance =
                rules::chance_of_success(rules::check_odds(kind, reading.modifier, dc));
            const int needed = rules::needed_roll(kind, reading.modifier, dc);
            reading.against.push_back({member->id, key, dc, needed, chance});
            sum += chance;
        }
    }
    if (!reading.against.empty())
        reading.chance = sum / static_cast<double>(reading.against.size());
    return reading;
}

} // namespace

std::vector<const Combatant*> present_party(const Campaign& campaign) {
    std::vector<const Combatant*> party;
    for (const Character& character : campaign.party.characters) {
        if (!character.is_present) continue;
        const Combatant* combatant = find_party_combatant(campaign.encounter, character.id);
        if (combatant != nullptr && !combatant->is_dead) party.push_back(combatant);
    }
    return party;
}

PartyReading party_reading(
    const Rulebook& rulebook, const std::vector<const Combatant*>& party, const Statistics& creature
) {
    Combatant opponent;
    opponent.statistics = creature;
    opponent.hp = creature.hit_points;
    const std::vector<Routine> its_routines = turn_routines(rulebook, opponent);
    PartyReading reading;
    rules::Distribution together_a_round;
    for (const Combatant* member : party) {
        MemberReading each;
        each.combatant = member->id;
        each.name = member->name;
        Exchange by_member = exchange(rulebook, turn_routines(rulebook, *member), opponent);
        each.on_creature = std::move(by_member.reading);
        each.by_creature = exchange(rulebook, its_routines, *member).reading;
        together_a_round = rules::sum_of(together_a_round, by_member.damage);
        reading.damage_on_creature += each.on_creature.damage_per_round;
        reading.damage_on_member += each.by_creature.damage_per_round;
        reading.members.push_back(std::move(each));
    }
    if (!party.empty()) reading.damage_on_member /= static_cast<double>(party.size());
    reading.rounds_to_drop =
        rules::drop_odds(together_a_round, creature.hit_points, 0).expected_rounds;
    for (const rules::StatName& save : rulebook.saves)
        reading.saves.push_back(save_reading(rulebook, party, opponent, save.key));
    return reading;
}

} // namespace game
