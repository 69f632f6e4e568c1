// The live read-out beside a creature that is being made: how it and this very party fare against
// each other, with the party's conditions of the moment. Pure computation; under 1 ms for five PCs.
#pragma once

#include "game/attack_routine.h"
#include "game/campaign.h"
#include "rules/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

// One side's turn of attacks against the other.
struct AttackReading {
    std::string routine;         // "3 longsword"; empty: it has no attack, all else is 0
    int needed = 21;             // natural roll of the first attack to hit, 1..21
    double chance = 0;           // of the first attack to hit, 0..1
    double damage_per_round = 0; // expected, resistances and the like counted

    bool operator==(const AttackReading&) const = default;
};

struct MemberReading {
    Id combatant = base::no_id;
    std::string name;
    AttackReading on_creature; // the member attacks the creature
    AttackReading by_creature; // the creature attacks the member

    bool operator==(const MemberReading&) const = default;
};

// Its save against one DC of one member.
struct SaveAgainst {
    Id combatant = base::no_id;
    std::string dc_key; // "spell_dc"
    int dc = 0;
    int needed = 21;   // natural roll to succeed, 1..21
    double chance = 0; // to succeed or better, 0..1

    bool operator==(const SaveAgainst&) const = default;
};

struct SaveReading {
    std::string save; // key of the rulebook
    int modifier = 0;
    std::vector<SaveAgainst> against; // every DC of every member
    std::optional<double> chance;     // mean over them; none without any DC

    bool operator==(const SaveReading&) const = default;
};

struct PartyReading {
    std::vector<MemberReading> members;   // present and alive, in the order of the party
    double damage_on_member = 0;          // its expected damage a round, mean over the members
    double damage_on_creature = 0;        // of all members together, a round
    std::optional<double> rounds_to_drop; // expected; none: they never do
    std::vector<SaveReading> saves;

    bool operator==(const PartyReading&) const = default;
};

// The party members who play tonight and live, from the encounter.
std::vector<const Combatant*> present_party(const Campaign& campaign);

// Everybody uses, every round, the routine that takes most from the other; healing, magic without
// an attack roll and actions of other kinds are left out. An attack of several damage types counts
// as its first.
PartyReading party_reading(
    const rules::Rulebook& rulebook,
    const std::vector<const Combatant*>& party,
    const Statistics& creature
);

} // namespace game
