#include "rules/level_up.h"

#include <algorithm>
#include <string>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

constexpr int xp_max = 100'000'000;

const AdvancementPace* find_pace(const AdvancementTables& tables, std::string_view key) {
    if (key.empty() && !tables.paces.empty()) return &tables.paces.front();
    const auto found =
        std::find_if(tables.paces.begin(), tables.paces.end(), [key](const AdvancementPace& pace) {
            return pace.key == key;
        });
    return found == tables.paces.end() ? nullptr : &*found;
}

LevelUp climb(const AdvancementTables& tables, int level, int xp, int xp_per_level) {
    LevelUp after{level, xp, 0, {}};
    while (after.level < tables.level_max && after.xp >= xp_per_level) {
        after.xp -= xp_per_level;
        after.level += 1;
    }
    if (after.level < tables.level_max) after.xp_to_next = xp_per_level - after.xp;
    return after;
}

LevelUp look_up(const AdvancementTables& tables, int level, int xp) {
    LevelUp after{level, xp, 0, {}};
    for (const LevelXp& row : tables.xp_by_level) {
        if (row.xp <= xp) after.level = std::max(after.level, row.level);
        if (row.level == after.level + 1) after.xp_to_next = row.xp - xp;
    }
    if (after.level >= tables.level_max) after.xp_to_next.reset();
    return after;
}

} // namespace

base::Result<LevelUp>
gain_xp(const Rulebook& rulebook, int level, int xp, int gained, std::string_view pace) {
    const AdvancementTables& tables = rulebook.advancement;
    if (level < 1 || level > tables.level_max)
        return Error{
            ErrorKind::out_of_range,
            "Characters have levels from 1 to " + std::to_string(tables.level_max) + "."};
    if (xp < 0 || gained < 0 || xp > xp_max || gained > xp_max - xp)
        return Error{
            ErrorKind::out_of_range,
            "Experience points run from 0 to " + std::to_string(xp_max) + "."};
    const AdvancementPace* const chosen = find_pace(tables, pace);
    if (chosen == nullptr && !pace.empty())
        return Error{
            ErrorKind::not_found,
            "This rulebook has no pace of advancement \"" + std::string(pace) + "\"."};
    LevelUp after = chosen == nullptr ? look_up(tables, level, xp + gained)
                                      : climb(tables, level, xp + gained, chosen->xp);
    after.levels_gained = after.level - level;
    return after;
}

} // namespace rules
