// Everything that stands beside a creature while it is being made: its numbers with their bands,
// how it and this party fare against each other, and what so many of it do to the fight that is on.
#pragma once

#include "game/campaign.h"
#include "game/party_reading.h"
#include "rules/creature_building.h"
#include "rules/encounter_budget.h"
#include "rules/hazard_building.h"
#include "rules/rulebook.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace game {

struct BuilderReading {
    std::vector<rules::NumberOffer> numbers;
    Statistics statistics; // step counted
    PartyReading party;
    // XP of one, for this party; none: nobody plays, or the tables do not rate it.
    std::optional<int> xp_each;
    // "40 XP each. With 2 more: 80 XP: moderate (80); 40 to severe (120)"; why not, where it cannot
    // be said.
    std::string threat_text;
};

// The levels of the characters who play tonight.
std::vector<int> present_levels(const Party& party);

// The opponents of the fight that is on or gathering, defeated ones included: the whole fight is
// what the party is measured by. Empty without a fight.
std::vector<rules::Opponents> opponents_of(const Encounter& encounter, rules::Family family);

// What the GM changes about the finished numbers.
using StatisticsChange = std::function<void(Statistics&)>;

// `count` from 1 up. Under 1 ms for five characters.
BuilderReading builder_reading(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const rules::BuildChoice& choice,
    int count,
    const StatisticsChange& change = {}
);

// The same for a hazard.
BuilderReading hazard_reading(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const rules::HazardChoice& choice,
    int count
);

// What so many creatures of these numbers do to the fight that is on, as in threat_text.
std::string threat_text(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const Statistics& statistics,
    int count
);

// A choice to begin with: the party's level (four-degree) or half of it as a challenge rating
// (srd5; our own, a usual single opponent of a small group), 1 without a party.
rules::BuildChoice first_choice(const Campaign& campaign, const rules::Rulebook& rulebook);

// Another kind of creature. A name that was only the kind's goes along with it.
void choose_archetype(
    rules::BuildChoice& choice, const rules::Rulebook& rulebook, const std::string& archetype
);

// What may be typed for a number of the builder, by its key.
struct NumberRange {
    int minimum = 0;
    int maximum = 0;

    bool operator==(const NumberRange&) const = default;
};

NumberRange number_range(const std::string& key);

// The next weaker (-1) or stronger (+1) band of this number becomes its choice; nothing changes
// where there is none.
void nudge(rules::NumberChoices& choices, const rules::NumberOffer& offer, int direction);

// "claws +12, 2d8+4 slashing"; with how often a turn where it is more than once.
std::string built_attack_text(const Attack& attack);

// "+9, 45 % against the party's DCs"; only the modifier where nobody has a DC.
std::string save_text(const SaveReading& save);

// One line of what an attack does to the other side: "hits on 12+ (45 %), 9.2 a round".
std::string attack_text(const AttackReading& attack);

// "drops in 2.4 rounds"; "is never dropped".
std::string rounds_text(const PartyReading& reading);

} // namespace game
