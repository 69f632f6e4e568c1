// Inner parts of creature_building.h, shared by the two rule families.
#pragma once

#include "rules/creature_building.h"

#include <cstddef>
#include <string>
#include <vector>

namespace rules {

// The archetype that counts; nullptr when the rulebook has none.
const Archetype* archetype_of(const Rulebook& rulebook, const BuildChoice& choice);

// "attack", "attack_2"
std::string attack_key(std::string_view stem, std::size_t place);

// What the choice says about a number; nothing if it does not name it.
NumberChoice choice_of(const NumberChoices& choices, const std::string& key);

// Settles what is in force: typed value, chosen band, the archetype's, or `otherwise`.
NumberOffer settled_offer(
    const NumberChoices& choices,
    std::string key,
    std::string name,
    std::optional<Band> usual,
    std::vector<BandOffer> bands,
    int otherwise
);

// The skills of the archetype and those that the choice names: key of the skill to band.
std::map<std::string, std::optional<Band>>
skills_of(const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice);

// What both families take over from offers and archetype as it is.
BuiltCreature built_common(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers
);

int value_of(const std::vector<NumberOffer>& offers, std::string_view key, int otherwise);

std::vector<NumberOffer>
four_degree_offers(const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice);
void finish_four_degree(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers,
    BuiltCreature& built
);

std::vector<NumberOffer>
srd5_offers(const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice);
void finish_srd5(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers,
    BuiltCreature& built
);

} // namespace rules
