#include "game/builder_reading.h"

#include "game/creature_building.h"
#include "game/encounter_plan.h"
#include "game/odds_text.h"
#include "game/roster.h"
#include "game/sheet.h"

#include <algorithm>

namespace game {

using rules::Opponents;

namespace {

constexpr int damage_max = 999; // mean of a hit

double rating_of(const Statistics& statistics, rules::Family family) {
    return family == rules::Family::srd5 ? statistics.challenge
                                         : static_cast<double>(statistics.level);
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
        const double level = rating_of(combatant.statistics, family);
        const auto known =
            std::find_if(opponents.begin(), opponents.end(), [&](const Opponents& each) {
                return each.level == level;
            });
        if (known == opponents.end())
            opponents.push_back({level, 1, false, false});
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
    opponents.push_back({rating_of(statistics, rulebook.family), count, false, false});
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
    int count
) {
    BuilderReading reading;
    reading.numbers = rules::number_offers(rulebook, choice);
    reading.statistics = built_statistics(rulebook, choice);
    reading.party = party_reading(rulebook, present_party(campaign), reading.statistics);
    const std::vector<int> levels = present_levels(campaign.party);
    if (!levels.empty())
        reading.xp_each = rules::opponent_xp(
            rulebook,
            rules::party_level(levels),
            {rating_of(reading.statistics, rulebook.family), 1, false, false}
        );
    reading.threat_text = threat_text(campaign, rulebook, reading.statistics, count);
    return reading;
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
    if (key == "spell_dc") return {Limits::dc_min, Limits::dc_max};
    if (key == "attacks_per_turn") return {1, Limits::per_turn_max};
    if (begins("damage")) return {1, damage_max};
    return {Limits::modifier_min, Limits::modifier_max};
}

void nudge(rules::BuildChoice& choice, const rules::NumberOffer& offer, int direction) {
    const std::optional<rules::Band> band = rules::next_band(offer, direction);
    if (!band.has_value()) return;
    if (band == offer.usual)
        choice.numbers.erase(offer.key);
    else
        choice.numbers[offer.key] = {band, std::nullopt};
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
