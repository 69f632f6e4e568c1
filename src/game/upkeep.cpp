#include "game/upkeep.h"

#include "game/hurt.h"
#include "game/turn_steps.h"

#include <algorithm>

namespace game {

void set_concentration(Encounter& encounter, Id id, const std::string& on_what) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr) return;
    combatant->concentrating_on = on_what;
    if (!on_what.empty()) return;
    std::erase_if(encounter.prompts, [id](const Prompt& prompt) {
        return prompt.combatant == id && prompt.kind == PromptKind::concentration;
    });
}

void set_death_saves(
    Encounter& encounter, const rules::Rulebook& rulebook, Id id, int successes, int failures
) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->is_dead) return;
    const rules::DeathSaveRules& rule = rulebook.death_saves;
    combatant->death_saves.successes = std::clamp(successes, 0, rule.successes_to_stable);
    combatant->death_saves.failures = std::clamp(failures, 0, rule.failures_to_death);
    if (combatant->death_saves.failures >= rule.failures_to_death)
        die(encounter, rulebook, *combatant);
    else if (combatant->death_saves.successes >= rule.successes_to_stable)
        stabilize(encounter, rulebook, id);
}

} // namespace game
