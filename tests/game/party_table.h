// A party whose numbers are easy to work out by hand, for everything that looks at the party as a
// whole. No fight is on.
#pragma once

#include "fight_table.h"

namespace party_table {

struct Sheet {
    const char* name;
    int level;
    int armor_class;
    int perception;
    game::Modifiers saves;
    game::Modifiers skills;
};

inline base::Id add(game::Campaign& campaign, const Sheet& sheet) {
    game::Character character;
    character.name = sheet.name;
    character.statistics.level = sheet.level;
    character.statistics.armor_class = sheet.armor_class;
    character.statistics.hit_points = 40;
    character.statistics.perception = sheet.perception;
    character.statistics.saves = sheet.saves;
    character.statistics.skills = sheet.skills;
    character.statistics.speeds_ft = {{"land", 25}};
    return game::add_character(campaign, character);
}

// Ysolde (Perception +10), Orrin (+5) and Bram (+5), who is away tonight.
inline game::Campaign four_degree() {
    game::Campaign campaign;
    add(campaign,
        {"Ysolde",
         4,
         22,
         10,
         {{"fortitude", 11}, {"reflex", 8}, {"will", 9}},
         {{"athletics", 12}, {"mill_lore", 7}}});
    add(campaign,
        {"Orrin", 3, 20, 5, {{"fortitude", 9}, {"reflex", 12}, {"will", 9}}, {{"stealth", 14}}});
    add(campaign, {"Bram", 1, 18, 5, {{"fortitude", 12}, {"reflex", 7}, {"will", 9}}, {}});
    campaign.party.characters[0].statistics.difficulty_classes = {{"class_dc", 20}};
    campaign.party.characters[1].statistics.speeds_ft = {{"land", 30}, {"fly", 20}};
    campaign.party.characters[1].statistics.senses = "low-light vision";
    campaign.party.characters[1].statistics.abilities = {{"str", 1}, {"dex", 4}, {"int", 2}};
    campaign.party.characters[2].is_present = false;
    game::link_party(campaign);
    return campaign;
}

// Perrin and Wren, level 3.
inline game::Campaign srd5() {
    game::Campaign campaign;
    campaign.about.rules = rules::Family::srd5;
    add(campaign, {"Perrin", 3, 18, 1, {{"dex", 0}, {"wis", 3}}, {{"athletics", 5}}});
    add(campaign, {"Wren", 3, 14, 5, {{"dex", 4}, {"wis", 5}}, {{"stealth", 6}}});
    campaign.party.characters[0].statistics.abilities = {{"str", 3}, {"dex", 0}, {"wis", 1}};
    campaign.party.characters[1].statistics.abilities = {{"str", -1}, {"dex", 2}, {"wis", 3}};
    game::link_party(campaign);
    return campaign;
}

inline const rules::Rulebook& book(rules::Family family) {
    return fight_table::rulebook_of(family);
}

inline void give(game::Campaign& campaign, const std::string& who, const char* key, int value) {
    for (const game::Combatant& combatant : campaign.encounter.combatants) {
        if (combatant.name != who) continue;
        game::ActiveCondition condition;
        condition.key = key;
        condition.value = value;
        REQUIRE(game::add_condition(
            campaign.encounter, book(campaign.about.rules), combatant.id, condition
        ));
        return;
    }
    FAIL("nobody is called " << who);
}

} // namespace party_table
