#include "rules/creature_building.h"

#include "rules/challenge_bands.h"
#include "rules/creature_building_parts.h"

#include <algorithm>
#include <utility>

namespace rules {

const Archetype* archetype_of(const Rulebook& rulebook, const BuildChoice& choice) {
    const CreatureBuilding& building = rulebook.creature_building;
    const Archetype* found = find_archetype(building, choice.archetype);
    if (found != nullptr || building.archetypes.empty()) return found;
    return &building.archetypes.front();
}

std::string attack_key(std::string_view stem, std::size_t place) {
    std::string key(stem);
    if (place > 0) key += "_" + std::to_string(place + 1);
    return key;
}

NumberChoice choice_of(const NumberChoices& choices, const std::string& key) {
    const auto found = choices.find(key);
    return found == choices.end() ? NumberChoice{} : found->second;
}

NumberOffer settled_offer(
    const NumberChoices& choices,
    std::string key,
    std::string name,
    std::optional<Band> usual,
    std::vector<BandOffer> bands,
    int otherwise
) {
    const NumberChoice wanted = choice_of(choices, key);
    NumberOffer offer{std::move(key), std::move(name), usual, {}, false, otherwise, {}};
    offer.bands = std::move(bands);
    if (wanted.value) {
        offer.is_typed = true;
        offer.value = *wanted.value;
        return offer;
    }
    const std::optional<Band> band = wanted.band ? wanted.band : usual;
    if (!band || offer.bands.empty()) return offer;
    // A band that this table or level does not print: the nearest weaker one, else the weakest.
    const BandOffer* taken = &offer.bands.front();
    for (const BandOffer& each : offer.bands) {
        if (each.band <= *band) taken = &each;
    }
    offer.band = taken->band;
    offer.value = taken->value;
    return offer;
}

std::map<std::string, std::optional<Band>>
skills_of(const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice) {
    std::map<std::string, std::optional<Band>> skills;
    for (const StatName& skill : rulebook.skills) {
        const auto found = archetype.skills.find(skill.key);
        if (found != archetype.skills.end())
            skills[skill.key] = found->second;
        else if (choice.numbers.count("skill_" + skill.key) > 0)
            skills[skill.key] = std::nullopt;
    }
    return skills;
}

int value_of(const std::vector<NumberOffer>& offers, std::string_view key, int otherwise) {
    const NumberOffer* offer = find_offer(offers, key);
    return offer == nullptr ? otherwise : offer->value;
}

BuiltCreature built_common(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers
) {
    BuiltCreature built;
    built.name = choice.name.empty() ? archetype.name : choice.name;
    built.armor_class = value_of(offers, "armor_class", built.armor_class);
    built.hit_points = std::max(value_of(offers, "hit_points", 1), 1);
    built.perception = value_of(offers, "perception", 0);
    for (const StatName& ability : rulebook.abilities)
        built.abilities[ability.key] = value_of(offers, "ability_" + ability.key, 0);
    for (const StatName& save : rulebook.saves)
        built.saves[save.key] = value_of(offers, "save_" + save.key, 0);
    for (const auto& [skill, band] : skills_of(rulebook, archetype, choice))
        built.skills[skill] = value_of(offers, "skill_" + skill, 0);
    for (std::size_t place = 0; place < archetype.attacks.size(); ++place) {
        const ArchetypeAttack& source = archetype.attacks[place];
        BuiltAttack attack;
        attack.name = source.name;
        attack.bonus = value_of(offers, attack_key("attack", place), 0);
        attack.damage_type = source.damage_type;
        attack.is_ranged = source.is_ranged;
        attack.is_agile = source.is_agile;
        attack.traits = source.traits;
        built.attacks.push_back(std::move(attack));
    }
    if (const NumberOffer* dc = find_offer(offers, "spell_dc")) built.spell_dc = dc->value;
    built.speeds_ft = archetype.speeds_ft;
    built.immunities = archetype.immunities;
    built.note = archetype.note;
    return built;
}

std::vector<NumberOffer> number_offers(const Rulebook& rulebook, const BuildChoice& choice) {
    const Archetype* archetype = archetype_of(rulebook, choice);
    if (archetype == nullptr) return {};
    return rulebook.family == Family::four_degree ? four_degree_offers(rulebook, *archetype, choice)
                                                  : srd5_offers(rulebook, *archetype, choice);
}

BuiltCreature built_creature(const Rulebook& rulebook, const BuildChoice& choice) {
    const Archetype* archetype = archetype_of(rulebook, choice);
    if (archetype == nullptr) return {};
    const std::vector<NumberOffer> offers = number_offers(rulebook, choice);
    BuiltCreature built = built_common(rulebook, *archetype, choice, offers);
    if (rulebook.family == Family::four_degree)
        finish_four_degree(rulebook, *archetype, choice, offers, built);
    else
        finish_srd5(rulebook, *archetype, choice, offers, built);
    return built;
}

bool has_step(const Rulebook& rulebook, const BuildChoice& choice, BuildStep step) {
    const CreatureBuilding& building = rulebook.creature_building;
    if (step == BuildStep::none) return true;
    if (rulebook.family == Family::four_degree) {
        const CreatureStep& change = step == BuildStep::elite ? building.elite : building.weak;
        return std::any_of(
            change.hit_points.begin(),
            change.hit_points.end(),
            [&](const CreatureStep::HitPoints& row) {
                return row.from <= choice.level && choice.level <= row.to;
            }
        );
    }
    if (building.statistics.steps.empty()) return false;
    const std::size_t place = step_of(building.statistics, choice.challenge);
    return step == BuildStep::elite ? place + 1 < building.statistics.steps.size() : place > 0;
}

const NumberOffer* find_offer(const std::vector<NumberOffer>& offers, std::string_view key) {
    const auto found = std::find_if(offers.begin(), offers.end(), [key](const NumberOffer& offer) {
        return offer.key == key;
    });
    return found == offers.end() ? nullptr : &*found;
}

std::optional<Band> next_band(const NumberOffer& offer, int direction) {
    if (direction > 0) {
        for (const BandOffer& each : offer.bands) {
            const bool is_beyond = offer.band ? each.band > *offer.band : each.value > offer.value;
            if (is_beyond) return each.band;
        }
        return std::nullopt;
    }
    std::optional<Band> found;
    for (const BandOffer& each : offer.bands) {
        const bool is_below = offer.band ? each.band < *offer.band : each.value < offer.value;
        if (is_below) found = each.band;
    }
    return found;
}

} // namespace rules
