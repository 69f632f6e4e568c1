#include "game/campaign.h"

#include <doctest/doctest.h>

namespace {

game::Character character(base::Id id, const std::string& name, int hit_points) {
    game::Character one;
    one.id = id;
    one.name = name;
    one.statistics.hit_points = hit_points;
    return one;
}

game::Campaign two_heroes() {
    game::Campaign campaign;
    campaign.party.characters = {character(1, "Odrin", 40), character(2, "Wessa", 33)};
    campaign.party.next_id = 3;
    game::link_party(campaign);
    return campaign;
}

const game::Combatant& combatant_of(const game::Campaign& campaign, base::Id id) {
    const game::Combatant* found = game::find_party_combatant(campaign.encounter, id);
    REQUIRE(found != nullptr);
    return *found;
}

} // namespace

TEST_CASE("campaign: entries are found by id, and no id finds nothing") {
    game::Campaign campaign = two_heroes();
    campaign.shelf.creatures = {{}};
    campaign.shelf.creatures.front().id = 6;
    campaign.preparation.encounters = {{}};
    campaign.preparation.encounters.front().id = 9;
    REQUIRE(game::find_character(campaign.party, 2) != nullptr);
    CHECK(game::find_character(campaign.party, 2)->name == "Wessa");
    CHECK(game::find_character(campaign.party, 5) == nullptr);
    CHECK(game::find_creature(campaign.shelf, 6) == &campaign.shelf.creatures.front());
    CHECK(game::find_creature(campaign.shelf, 9) == nullptr);
    CHECK(game::find_prepared(campaign.preparation, 9) == &campaign.preparation.encounters.front());
    CHECK(game::find_prepared(campaign.preparation, 6) == nullptr);
    campaign.party.characters.front().id = base::no_id;
    CHECK(game::find_character(campaign.party, base::no_id) == nullptr);
}

TEST_CASE("campaign: a new hero stands by, unhurt, and falls as a hero does") {
    const game::Campaign campaign = two_heroes();
    REQUIRE(campaign.encounter.combatants.size() == 2);
    const game::Combatant& odrin = combatant_of(campaign, 1);
    CHECK(odrin.name == "Odrin");
    CHECK(odrin.hp == 40);
    CHECK(odrin.standing == game::Standing::absent);
    CHECK(odrin.side == game::Side::party);
    CHECK_FALSE(odrin.dies_at_zero);
    CHECK(odrin.id != combatant_of(campaign, 2).id);
}

TEST_CASE("campaign: the sheet follows the roster, wounds and conditions stay") {
    game::Campaign campaign = two_heroes();
    game::Combatant& wounded = campaign.encounter.combatants.front();
    wounded.hp = 12;
    game::ActiveCondition afraid;
    afraid.id = 1;
    afraid.key = "frightened";
    wounded.conditions = {afraid};
    game::Character& odrin = campaign.party.characters.front();
    odrin.name = "Odrin the Tall";
    odrin.statistics.armor_class = 23;
    odrin.reminders = {{}};
    odrin.reminders.front().text = "Shield";
    game::link_party(campaign);
    const game::Combatant& now = combatant_of(campaign, 1);
    CHECK(now.name == "Odrin the Tall");
    CHECK(now.statistics.armor_class == 23);
    CHECK(now.reminders.size() == 1);
    CHECK(now.hp == 12);
    CHECK(now.conditions.size() == 1);
    const game::Campaign before = campaign;
    game::link_party(campaign); // a second time changes nothing
    CHECK(campaign == before);
}

TEST_CASE("campaign: who leaves the party leaves the fight, and nothing points at the gone") {
    game::Campaign campaign = two_heroes();
    game::Encounter& encounter = campaign.encounter;
    const base::Id gone = combatant_of(campaign, 1).id;
    const base::Id stays = combatant_of(campaign, 2).id;
    game::Combatant lurker;
    lurker.id = encounter.next_id++;
    encounter.combatants.push_back(lurker);
    encounter.order = {gone, stays, lurker.id};
    for (const base::Id id : {gone, stays}) {
        game::Prompt prompt;
        prompt.combatant = id;
        encounter.prompts.push_back(prompt);
        encounter.notices.push_back({id, "Frightened ends", {}});
    }
    campaign.party.characters.erase(campaign.party.characters.begin());
    game::link_party(campaign);
    CHECK(game::find_combatant(encounter, gone) == nullptr);
    CHECK(game::find_combatant(encounter, lurker.id) != nullptr); // no character, no roster
    CHECK(encounter.order == std::vector<base::Id>{stays, lurker.id});
    REQUIRE(encounter.prompts.size() == 1);
    CHECK(encounter.prompts.front().combatant == stays);
    REQUIRE(encounter.notices.size() == 1);
    CHECK(encounter.notices.front().combatant == stays);
}
