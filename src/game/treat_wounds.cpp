// Treating wounds (four-degree). Source: Player Core (ORC), skill Medicine, Treat Wounds.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/hurt.h"
#include "game/resting_parts.h"
#include "game/sheet.h"
#include "rules/distribution.h"

#include <algorithm>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using rules::Degree;
using rules::Rulebook;
using rules::TreatWoundsRank;
using rules::TreatWoundsRules;

constexpr const char* treated_name = "Wounds treated";

const TreatWoundsRank* find_rank(const Rulebook& rulebook, const std::string& key) {
    const auto& ranks = rulebook.recovery.treat_wounds.ranks;
    const auto found = std::find_if(ranks.begin(), ranks.end(), [&key](const auto& rank) {
        return rank.key == key;
    });
    return found == ranks.end() ? nullptr : &*found;
}

// The dice that this degree rolls; none for a failure.
rules::DiceExpression
dice_of(const Rulebook& rulebook, const TreatWoundsRank& rank, Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return rulebook.recovery.treat_wounds.critical_failure_damage;
    case Degree::failure: return {};
    case Degree::success: return rank.success;
    case Degree::critical_success: return rank.critical_success;
    }
    return {};
}

const char* degree_words(Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return "critical failure";
    case Degree::failure: return "failure";
    case Degree::success: return "success";
    case Degree::critical_success: return "critical success";
    }
    return "";
}

bool carries_treated(const Combatant& combatant) {
    return std::any_of(
        combatant.conditions.begin(),
        combatant.conditions.end(),
        [](const ActiveCondition& active) {
            return active.key.empty() && active.name == treated_name;
        }
    );
}

struct Patient {
    Id combatant = base::no_id;
    std::string name;
    int natural = 0;
    int rolled = 0;
    Degree degree = Degree::failure;
};

base::Result<Patient> roll_patient(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const WoundTreatment& treatment,
    const PatientRolls& rolls,
    rules::Dice& dice
) {
    constexpr int faces = 20;
    const Combatant* combatant = find_party_combatant(campaign.encounter, rolls.character);
    if (combatant == nullptr) return cannot("One of the patients is not in the party.");
    if (combatant->is_dead) return cannot(combatant->name + " is dead.");
    if (carries_treated(*combatant))
        return cannot(combatant->name + " was treated less than an hour ago.");
    const TreatWoundsRank& rank = *find_rank(rulebook, treatment.rank);
    Patient patient;
    patient.combatant = combatant->id;
    patient.name = combatant->name;
    patient.natural = rolls.natural ? *rolls.natural : dice.d20();
    if (patient.natural < 1 || patient.natural > faces)
        return Error{ErrorKind::out_of_range, "A d20 shows 1 to 20."};
    patient.degree = rules::four_degree_result(patient.natural, treatment.modifier, rank.dc);
    const rules::DiceExpression expression = dice_of(rulebook, rank, patient.degree);
    const RollRange range = treatment_range(rulebook, treatment.rank, patient.degree);
    // A failure asks for no dice: a number typed beside it is left out.
    if (rolls.hp && patient.degree != Degree::failure) {
        if (*rolls.hp < range.lowest || *rolls.hp > range.highest)
            return Error{
                ErrorKind::out_of_range,
                patient.name + ", " + degree_words(patient.degree) + ": " +
                    rules::to_text(expression) + " gives " + std::to_string(range.lowest) + " to " +
                    std::to_string(range.highest) + "."};
        patient.rolled = *rolls.hp;
    } else {
        patient.rolled = rules::roll(expression, dice);
    }
    return patient;
}

void mark_treated(Campaign& campaign, const Rulebook& rulebook, Id combatant, int minutes) {
    ActiveCondition treated;
    treated.name = treated_name;
    treated.note = "cannot be treated again yet";
    treated.duration.kind = DurationKind::timed;
    treated.duration.seconds_left = minutes * seconds_a_minute;
    add_condition(campaign.encounter, rulebook, combatant, treated);
}

// Ends the condition that treatment ends, if it is there.
void end_treated_condition(Campaign& campaign, const Rulebook& rulebook, Id id) {
    const Combatant* combatant = find_combatant(std::as_const(campaign.encounter), id);
    const ActiveCondition* ended =
        find_active(*combatant, rulebook.recovery.treat_wounds.ends_condition);
    if (ended != nullptr) end_condition(campaign.encounter, rulebook, id, ended->id);
}

std::string
apply_patient(Campaign& campaign, const Rulebook& rulebook, const Patient& patient, int factor) {
    const std::string head =
        std::to_string(patient.natural) + ", " + degree_words(patient.degree) + ": ";
    if (patient.degree == Degree::failure) return head + patient.name + " regains nothing";
    if (patient.degree == Degree::critical_failure) {
        Damage harm;
        harm.amount = patient.rolled;
        return head + hurt(campaign.encounter, rulebook, patient.combatant, harm);
    }
    const std::string healed =
        heal(campaign.encounter, rulebook, patient.combatant, patient.rolled * factor);
    end_treated_condition(campaign, rulebook, patient.combatant);
    return head + healed;
}

} // namespace

std::vector<Healer> healers(const Campaign& campaign, const Rulebook& rulebook) {
    std::vector<Healer> found;
    for (const Character& character : campaign.party.characters) {
        const Combatant* combatant = find_party_combatant(campaign.encounter, character.id);
        const bool is_healer = character.is_present && combatant != nullptr &&
                               character.statistics.skills.count("medicine") > 0;
        if (!is_healer) continue;
        found.push_back(
            {character.id, character.name, effective_check(rulebook, *combatant, "medicine").total}
        );
    }
    std::stable_sort(found.begin(), found.end(), [](const Healer& one, const Healer& two) {
        return one.modifier > two.modifier;
    });
    return found;
}

bool is_treated(const Campaign& campaign, Id character) {
    const Combatant* combatant = find_party_combatant(campaign.encounter, character);
    return combatant != nullptr && carries_treated(*combatant);
}

RollRange treatment_range(const Rulebook& rulebook, const std::string& rank, Degree degree) {
    const TreatWoundsRank* found = find_rank(rulebook, rank);
    if (found == nullptr || degree == Degree::failure) return {};
    const rules::Distribution totals = rules::distribution_of(dice_of(rulebook, *found, degree));
    return {totals.lowest, rules::highest(totals)};
}

base::Result<std::string> treat_wounds(
    Campaign& campaign, const Rulebook& rulebook, const WoundTreatment& treatment, rules::Dice& dice
) {
    const TreatWoundsRules& rules = rulebook.recovery.treat_wounds;
    if (rules.ranks.empty()) return cannot("This rulebook has no treating of wounds.");
    const std::string why_not = why_no_rest(campaign);
    if (!why_not.empty()) return cannot(why_not);
    if (treatment.patients.empty()) return cannot("Nobody is chosen.");
    const TreatWoundsRank* rank = find_rank(rulebook, treatment.rank);
    if (rank == nullptr)
        return Error{
            ErrorKind::not_found,
            "Nobody treats wounds with the proficiency \"" + treatment.rank + "\"."};
    std::vector<Patient> patients;
    for (const PatientRolls& rolls : treatment.patients) {
        auto patient = roll_patient(campaign, rulebook, treatment, rolls, dice);
        if (!patient.ok()) return patient.error();
        patients.push_back(std::move(patient).value());
    }
    const int minutes = treatment.takes_full_hour ? rules.full_minutes : rules.minutes;
    const int factor = treatment.takes_full_hour ? rules.full_factor : 1;
    std::vector<std::string> lines;
    for (const Patient& patient : patients) {
        // The hour counts from the start of the treatment. From memory.
        mark_treated(campaign, rulebook, patient.combatant, rules.immune_minutes);
        lines.push_back(apply_patient(campaign, rulebook, patient, factor));
        lines.push_back(let_time_pass(campaign, rulebook, minutes * seconds_a_minute));
    }
    return "Treat wounds, " + rank->name + " DC " + std::to_string(rank->dc) + " with " +
           signed_text(treatment.modifier) + ": " + joined_lines(lines);
}

} // namespace game
