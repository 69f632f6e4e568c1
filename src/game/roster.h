// The party, the shelf and prepared encounters: adding, changing, removing entries.
#pragma once

#include "game/campaign.h"

#include <string>
#include <vector>

namespace game {

// Sections party and encounter. Returns the new id.
Id add_character(Campaign& campaign, Character character);
void update_character(
    Campaign& campaign, const Character& character
); // by id; HP are capped at a lower maximum
void remove_character(
    Campaign& campaign, const rules::Rulebook& rulebook, Id character
); // out of a running fight too; if it was its turn, the next one starts
void set_present(Campaign& campaign, Id character, bool is_present);

Id add_creature(CreatureShelf& shelf, Creature creature);
void update_creature(CreatureShelf& shelf, const Creature& creature);
void remove_creature(CreatureShelf& shelf, Id creature);

Id add_prepared(Preparation& preparation, PreparedEncounter encounter);
void update_prepared(Preparation& preparation, const PreparedEncounter& encounter);
void remove_prepared(Preparation& preparation, Id encounter);

// Limits that the fields of the roster and the file share. A number outside is refused, never
// clamped in silence.
struct Limits {
    static constexpr int level_min = -1;
    static constexpr int level_max = 30;
    static constexpr int armor_class_min = 0;
    static constexpr int armor_class_max = 99;
    static constexpr int hp_min = 1;
    static constexpr int hp_max = 9999;
    static constexpr int modifier_min = -30;
    static constexpr int modifier_max = 99;
    static constexpr int dc_min = 0;
    static constexpr int dc_max = 99;
    static constexpr int speed_max = 1000;
    static constexpr int name_bytes_max = 200;
    static constexpr int text_bytes_max = 100000;
    static constexpr int count_max = 50; // of one creature in an encounter
    static constexpr int experience_max = 100'000'000;
    static constexpr int hit_die_sides_min = 2;
    static constexpr int hit_die_sides_max = 100;
    static constexpr int hit_dice_max = 100; // of one size
    static constexpr int per_turn_max = 20;  // uses of one attack in a turn
};

// What is wrong in a campaign as a whole, beyond the type and range of single fields: duplicate
// ids, references to nothing, unknown stats or conditions, an order that does not match standings,
// unreadable dice. `pointer` is a JSON pointer into the campaign file.
struct Problem {
    std::string pointer;
    std::string text;

    bool operator==(const Problem&) const = default;
};

std::vector<Problem> find_problems(const Campaign& campaign, const rules::Rulebook& rulebook);

} // namespace game
