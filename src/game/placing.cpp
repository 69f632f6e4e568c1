#include "game/placing.h"

#include "game/fights.h"
#include "game/roster.h"
#include "game/shelf.h"
#include "game/turns.h"

#include <algorithm>
#include <utility>

namespace game {

static void roll_hit_points(Combatant& combatant, rules::Dice& dice) {
    const auto hit_dice = rules::parse_dice(combatant.statistics.hit_dice);
    if (!hit_dice.ok()) return;
    const int rolled = std::max(rules::roll(hit_dice.value(), dice), Limits::hp_min);
    combatant.statistics.hit_points = std::min(rolled, Limits::hp_max);
    combatant.hp = combatant.statistics.hit_points;
}

std::vector<Id> place_creature(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::string& name,
    const Statistics& statistics,
    const Placing& placing,
    rules::Dice& dice
) {
    if (name.empty() || placing.count < 1 || placing.count > Limits::count_max) return {};
    Encounter& encounter = campaign.encounter;
    if (encounter.phase == Phase::no_fight) open_fight(campaign, rulebook, base::no_id);
    Creature creature;
    creature.name = name;
    creature.statistics = statistics;
    std::vector<Id> placed = add_opponents(
        encounter,
        rulebook,
        creature,
        placing.count,
        placing.shares_initiative,
        placing.initiative,
        dice
    );
    for (const Id id : placed) {
        if (placing.is_hidden) set_hidden(encounter, id, true);
        if (placing.hit_points == HitPointsBy::rolled)
            roll_hit_points(*find_combatant(encounter, id), dice);
    }
    return placed;
}

Id keep_on_shelf(CreatureShelf& shelf, const std::string& name, const Statistics& statistics) {
    if (name.empty()) return base::no_id;
    Creature creature;
    creature.name = free_name(shelf.creatures, name);
    creature.statistics = statistics;
    return add_creature(shelf, std::move(creature));
}

} // namespace game
