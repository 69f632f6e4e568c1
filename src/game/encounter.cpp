#include "game/encounter.h"

#include <algorithm>

namespace game {

const Combatant* find_combatant(const Encounter& encounter, Id id) {
    const auto found = std::find_if(
        encounter.combatants.begin(),
        encounter.combatants.end(),
        [id](const Combatant& combatant) { return combatant.id == id; }
    );
    return id == base::no_id || found == encounter.combatants.end() ? nullptr : &*found;
}

Combatant* find_combatant(Encounter& encounter, Id id) {
    return const_cast<Combatant*>(find_combatant(std::as_const(encounter), id));
}

const Combatant* find_party_combatant(const Encounter& encounter, Id character) {
    const auto found = std::find_if(
        encounter.combatants.begin(),
        encounter.combatants.end(),
        [character](const Combatant& combatant) { return combatant.character == character; }
    );
    return character == base::no_id || found == encounter.combatants.end() ? nullptr : &*found;
}

const ActiveCondition* find_active(const Combatant& combatant, Id condition) {
    const auto found = std::find_if(
        combatant.conditions.begin(),
        combatant.conditions.end(),
        [condition](const ActiveCondition& active) { return active.id == condition; }
    );
    return condition == base::no_id || found == combatant.conditions.end() ? nullptr : &*found;
}

ActiveCondition* find_active(Combatant& combatant, Id condition) {
    return const_cast<ActiveCondition*>(find_active(std::as_const(combatant), condition));
}

const ActiveCondition* find_active(const Combatant& combatant, const std::string& key) {
    const auto found = std::find_if(
        combatant.conditions.begin(),
        combatant.conditions.end(),
        [&key](const ActiveCondition& active) { return active.key == key; }
    );
    return key.empty() || found == combatant.conditions.end() ? nullptr : &*found;
}

} // namespace game
