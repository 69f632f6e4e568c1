#include "game/reinforcements.h"

#include "game/fights.h"
#include "game/turns.h"

namespace game {

std::vector<Id> drop_in(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    Id creature,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
) {
    if (campaign.encounter.phase == Phase::no_fight) open_fight(campaign, rulebook, base::no_id);
    return add_creatures(campaign, rulebook, creature, count, shares_initiative, initiative, dice);
}

int join_prepared(
    Campaign& campaign, const rules::Rulebook& rulebook, Id prepared, rules::Dice& dice
) {
    const PreparedEncounter* found = find_prepared(std::as_const(campaign.preparation), prepared);
    if (found == nullptr) return 0;
    int came = 0;
    for (const PreparedCreatures& part : found->creatures) {
        const std::vector<Id> ids = add_creatures(
            campaign,
            rulebook,
            part.creature,
            part.count,
            part.shares_initiative,
            std::nullopt,
            dice
        );
        for (const Id id : ids) {
            if (part.is_hidden) set_hidden(campaign.encounter, id, true);
        }
        came += static_cast<int>(ids.size());
    }
    return came;
}

} // namespace game
