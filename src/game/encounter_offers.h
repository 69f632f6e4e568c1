// What may take part in a prepared encounter so that it reaches another threat: the shelf, weaker
// and stronger forms of what takes part, ready creatures, and creatures to be built. The search
// itself: encounter_suggestions.h.
#pragma once

#include "base/result.h"
#include "game/encounter_plan.h"
#include "game/encounter_suggestions.h"
#include "game/library_creature.h"
#include "rules/creature_building.h"

#include <optional>
#include <string>
#include <vector>

namespace game {

// Where an offer comes from. What is not on the shelf is put there when it is chosen.
struct OfferSource {
    Id creature = base::no_id;                      // of the shelf
    rules::BuildStep step = rules::BuildStep::none; // a form of that creature
    std::string ready;                              // key of a ready creature
    std::optional<rules::BuildChoice> built;        // made up

    bool operator==(const OfferSource&) const = default;
};

// Where to look beside the shelf.
struct OfferPlaces {
    bool has_ready = false;
    std::string ready_type; // only ready creatures of this type; empty: all
    bool has_built = false;

    bool operator==(const OfferPlaces&) const = default;
};

// What the search needs of an encounter.
struct SuggestionQuestion {
    std::vector<CreatureOffer> offers; // as far as the tables rate them
    std::vector<OfferSource> sources;  // by offer
    std::vector<int> counts;           // by offer
    SuggestionGoal goal;

    bool operator==(const SuggestionQuestion&) const = default;
};

// `aim` as the key of a ThreatAim. Hazards of the shelf are no offers; those in the encounter stay.
// None: no such aim, or the encounter holds a creature that the tables call too dangerous, which
// must go first.
std::optional<SuggestionQuestion> suggestion_question(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const PreparedEncounter& prepared,
    const EncounterPlan& plan,
    const std::string& aim,
    const OfferPlaces& places = {},
    const std::vector<LibraryCreature>& ready = {}
);

// Carries the moves out in the prepared encounter with this id; creatures that are not on the shelf
// yet are put there. New ones stand at the end, those that are gone are taken out. Sections shelf
// and preparation. Returns what happened, or nothing when the encounter is gone.
std::string carry_out(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    Id encounter,
    const SuggestionQuestion& question,
    const PlanSuggestion& suggestion,
    const std::vector<LibraryCreature>& ready = {}
);

} // namespace game
