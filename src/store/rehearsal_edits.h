// Seeded, varied edits as a game master makes them in a fight: for the rehearsal that the crash
// test kills, and for tests that need many different edits.
#pragma once

#include "game/edits.h"
#include "rules/rulebook.h"
#include "store/document.h"

#include <cstdint>
#include <random>

namespace store {

class RehearsalEdits {
public:
    // The rulebook is kept by reference.
    RehearsalEdits(const rules::Rulebook& rulebook, std::uint64_t seed);

    // The next edit that makes sense in this state: opens and starts a fight when none is on, then
    // hurts, heals, gives and ends conditions, ends turns, renames, writes notes, edits the party.
    game::Edit next(const game::Campaign& campaign);

    // 0 .. count - 1
    int draw(int count);

private:
    game::Edit fight_edit(const game::Campaign& campaign);
    game::Edit roster_edit(const game::Campaign& campaign);
    game::Id any_combatant(const game::Campaign& campaign);

    const rules::Rulebook& rulebook_;
    std::mt19937_64 random_;
    int notes_ = 0;
};

// One step of a rehearsal: an edit, an undo or a redo. The same seed and the same campaign give the
// same steps.
base::Result<base::Nothing> rehearse_step(CampaignDocument& document, RehearsalEdits& edits);

} // namespace store
