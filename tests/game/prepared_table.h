// A party of three and a prepared encounter of four, nothing opened yet.
#pragma once

#include "fight_table.h"

namespace fight_table {

struct Prepared {
    Table table{rules::Family::four_degree};
    Id lurkers = base::no_id;
    Id chief = base::no_id;
    Id plan = base::no_id;

    Prepared() {
        game::Campaign& campaign = table.campaign;
        campaign.encounter = {};
        for (const char* name : {"Ysolde", "Orrin", "Bram"}) {
            game::Character character;
            character.name = name;
            character.statistics.hit_points = 40;
            game::add_character(campaign, character);
        }
        game::Creature lurker;
        lurker.name = "Reed Lurker";
        lurker.statistics.hit_points = 30;
        lurkers = game::add_creature(campaign.shelf, lurker);
        lurker.name = "Mudcaller";
        chief = game::add_creature(campaign.shelf, lurker);
        game::PreparedEncounter encounter;
        encounter.name = "The cart";
        encounter.creatures = {{lurkers, 3, true, false, {}}, {chief, 1, false, true, {}}};
        plan = game::add_prepared(campaign.preparation, encounter);
    }
};

} // namespace fight_table
