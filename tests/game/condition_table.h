// One plain creature with round numbers and the attacks it may make, so that a test of effects
// shows nothing but what a condition changes.
#pragma once

#include "fight_table.h"

namespace condition_table {

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

inline Combatant sheet() {
    Combatant combatant;
    combatant.statistics.level = 4;
    combatant.statistics.armor_class = 20;
    combatant.statistics.hit_points = 50;
    combatant.statistics.perception = 10;
    combatant.statistics.abilities = {
        {"str", 4}, {"dex", 3}, {"con", 2}, {"int", 1}, {"wis", 2}, {"cha", 0}};
    combatant.statistics.saves = {
        {"fortitude", 10}, {"reflex", 10}, {"will", 10}, {"dex", 5}, {"str", 5}, {"con", 5}};
    combatant.statistics.skills = {
        {"athletics", 10}, {"stealth", 10}, {"arcana", 10}, {"religion", 10}, {"diplomacy", 10}};
    combatant.statistics.difficulty_classes = {{"spell_dc", 20}, {"class_dc", 20}};
    combatant.statistics.speeds_ft = {{"land", 30}};
    combatant.hp = 50;
    return combatant;
}

inline const game::Attack sword{"sword", 10, "1d8+4", "slashing", false, false, "", {}};
inline const game::Attack dagger{
    "dagger", 10, "1d4+4", "piercing", false, true, "finesse, agile", {}};
inline const game::Attack bow{"bow", 10, "1d8", "piercing", true, false, "", {}};
inline const game::Attack bolt{"bolt", 10, "2d8", "cold", true, false, "spell attack", {}};

inline Combatant with(const std::vector<std::pair<std::string, int>>& conditions) {
    Combatant combatant = sheet();
    Id id = 1;
    for (const auto& [key, value] : conditions) {
        ActiveCondition condition;
        condition.id = id++;
        condition.key = key;
        condition.value = value;
        combatant.conditions.push_back(condition);
    }
    return combatant;
}

} // namespace condition_table
