#include "game/builder_reading.h"

#include "game/creature_building.h"
#include "game/encounter_plan.h"
#include "game/odds_text.h"
#include "game/opponent_rating.h"
#include "game/roster.h"
#include "game/sheet.h"

#include <algorithm>
#include <utility>

namespace game {

using rules::Opponents;

namespace {

constexpr int damage_max = 999; // mean of a hit

// What stands beside these numbers.
BuilderReading reading_of(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    std::vector<rules::NumberOffer> numbers,
    Statistics statistics,
    int count
) {
    BuilderReading reading;
    reading.numbers = std::move(numbers);
    reading.statistics = std::move(statistics);
    reading.party = party_reading(rulebook, present_party(campaign), reading.statistics);
    const std::vector<int> levels = present_levels(campaign.party);
    if (!levels.empty())
        reading.xp_each = rules::opponent_xp(
            rulebook,
            rules::party_level(levels),
            opponents_of(reading.statistics, rulebook.family, 1)
        );
    reading.threat_text = threat_text(campaign, rulebook, reading.statistics, count);
    return reading;
}

bool is_alike(const Opponents& one, const Opponents& other) {
    return one.level == other.level && one.is_hazard == other.is_hazard &&
           one.is_complex == other.is_complex;
}

} // namespace

std::vector<int> present_levels(const Party& party) {
    std::vector<int> levels;
    for (const Character& character : party.characters)
        if (character.is_present) levels.push_back(character.statistics.level);
    return levels;
}

std::vector<Opponents> opponents_of(const Encounter& encounter, rules::Family family) {
    std::vector<Opponents> opponents;
    if (encounter.phase == Phase::no_fight) return opponents;
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.side != Side::opponents) continue;
        const Opponents one = opponents_of(combatant.statistics, family, 1);
        const auto known =
            std::find_if(opponents.begin(), opponents.end(), [&one](const Opponents& each) {
                return is_alike(one, each);
            });
        if (known == opponents.end())
            opponents.push_back(one);
        else
            known->count += 1;
    }
    return opponents;
}

std::string threat_text(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const Statistics& statistics,
    int count
) {
    const std::vector<int> levels = present_levels(campaign.party);
    if (levels.empty()) return "Nobody plays tonight, so the threat is open.";
    std::vector<Opponents> opponents = opponents_of(campaign.encounter, rulebook.family);
    opponents.push_back(opponents_of(statistics, rulebook.family, count));
    const auto rating = rules::rate_encounter(rulebook, levels, opponents);
    if (!rating.ok()) return rating.error().message;
    const std::optional<int> each = rating.value().xp_each.back();
    if (!each.has_value()) return "The tables do not rate it for this party.";
    return std::to_string(*each) + " XP each. With " + std::to_string(count) +
           " more: " + threat_line(rulebook, rating.value());
}

BuilderReading builder_reading(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const rules::BuildChoice& choice,
    int count,
    const StatisticsChange& change
) {
    Statistics statistics = built_statistics(rulebook, choice);
    if (change) change(statistics);
    return reading_of(
        campaign, rulebook, rules::number_offers(rulebook, choice), std::move(statistics), count
    );
}

BuilderReading hazard_reading(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const rules::HazardChoice& choice,
    int count
) {
    return reading_of(
        campaign,
        rulebook,
        rules::hazard_offers(rulebook, choice),
        hazard_statistics(rulebook, choice),
        count
    );
}

rules::BuildChoice first_choice(const Campaign& campaign, const rules::Rulebook& rulebook) {
    rules::BuildChoice choice;
    const std::vector<int> levels = present_levels(campaign.party);
    if (!levels.empty()) choice.level = rules::party_level(levels);
    choice.challenge = std::max(1, choice.level / 2);
    if (!rulebook.creature_building.archetypes.empty())
        choose_archetype(choice, rulebook, rulebook.creature_building.archetypes.front().key);
    return choice;
}

void choose_archetype(
    rules::BuildChoice& choice, const rules::Rulebook& rulebook, const std::string& archetype
) {
    const rules::CreatureBuilding& building = rulebook.creature_building;
    const rules::Archetype* before = rules::find_archetype(building, choice.archetype);
    const rules::Archetype* after = rules::find_archetype(building, archetype);
    if (after == nullptr) return;
    if (choice.name.empty() || (before != nullptr && choice.name == before->name))
        choice.name = after->name;
    choice.archetype = archetype;
}

NumberRange number_range(const std::string& key) {
    const auto begins = [&](const char* start) { return key.rfind(start, 0) == 0; };
    if (key == "armor_class") return {Limits::armor_class_min, Limits::armor_class_max};
    if (key == "hit_points") return {Limits::hp_min, Limits::hp_max};
    if (key == "spell_dc" || key == "effect_dc" || key == "stealth_dc" || key == "disable_dc")
        return {Limits::dc_min, Limits::dc_max};
    if (key == "attacks_per_turn") return {1, Limits::per_turn_max};
    if (key == "hardness") return {0, damage_max};
    if (begins("damage")) return {1, damage_max};
    return {Limits::modifier_min, Limits::modifier_max};
}

void nudge(rules::NumberChoices& choices, const rules::NumberOffer& offer, int direction) {
    const std::optional<rules::Band> band = rules::next_band(offer, direction);
    if (!band.has_value()) return;
    if (band == offer.usual)
        choices.erase(offer.key);
    else
        choices[offer.key] = {band, std::nullopt};
}

std::string built_attack_text(const Attack& attack) {
    std::string text = attack.name + " " + signed_text(attack.bonus);
    if (!attack.damage.empty()) text += ", " + attack.damage;
    if (!attack.damage_type.empty()) text += " " + attack.damage_type;
    if (attack.per_turn > 1) text += ", " + std::to_string(attack.per_turn) + " a turn";
    return text;
}

std::string save_text(const SaveReading& save) {
    std::string text = signed_text(save.modifier);
    if (save.chance.has_value())
        text += ", " + percent_text(*save.chance) + " against the party's DCs";
    return text;
}

std::string attack_text(const AttackReading& attack) {
    if (attack.routine.empty()) return "no attack";
    return "hits on " + needed_text(attack.needed) + " (" + percent_text(attack.chance) + "), " +
           count_text(attack.damage_per_round) + " a round";
}

std::string rounds_text(const PartyReading& reading) {
    if (!reading.rounds_to_drop.has_value()) return "is never dropped by attacks";
    return "drops in " + count_text(*reading.rounds_to_drop) + " rounds";
}

} // namespace game
