// Creatures of the shelf made weaker and stronger.
#include "fight_table.h"
#include "game/creature_step.h"

#include <doctest/doctest.h>

using fight_table::rulebook_of;
using rules::BuildStep;
using rules::Family;

namespace {

game::Statistics creature(int level, int armor_class, int hit_points) {
    game::Statistics statistics;
    statistics.level = level;
    statistics.armor_class = armor_class;
    statistics.hit_points = hit_points;
    statistics.perception = 10;
    statistics.saves = {{"will", 8}};
    statistics.skills = {{"stealth", 11}};
    statistics.difficulty_classes = {{"spell_dc", 20}};
    game::Attack attack;
    attack.bonus = 14;
    attack.damage = "2d8+5";
    statistics.attacks = {attack};
    return statistics;
}

} // namespace

TEST_CASE("creature step: an elite creature of level 4, as published") {
    // Monster Core (ORC), Adjusting Creatures: all numbers 2 up, HP by the starting level, level 5.
    const auto elite = game::stepped_statistics(
        rulebook_of(Family::four_degree), creature(4, 21, 60), BuildStep::elite
    );
    REQUIRE(elite.has_value());
    CHECK(elite->level == 5);
    CHECK(elite->armor_class == 23);
    CHECK(elite->hit_points == 75);
    CHECK(elite->attacks[0].bonus == 16);
    CHECK(elite->attacks[0].damage == "2d8+7"); // mean 14 becomes 16
    CHECK(elite->saves.at("will") == 10);
    CHECK(elite->skills.at("stealth") == 13);
    CHECK(elite->perception == 12);
    CHECK(elite->difficulty_classes.at("spell_dc") == 22);
}

TEST_CASE("creature step: a weak creature of level 6, as published") {
    const auto weak = game::stepped_statistics(
        rulebook_of(Family::four_degree), creature(6, 23, 95), BuildStep::weak
    );
    REQUIRE(weak.has_value());
    CHECK(weak->level == 5);
    CHECK(weak->armor_class == 21);
    CHECK(weak->hit_points == 75);
    CHECK(weak->attacks[0].damage == "2d8+3");
}

TEST_CASE("creature step: at the bottom the level moves by two or there is no weaker form") {
    // Monster Core (ORC): a creature of level 0 or below becomes elite by two levels in steps of
    // its own, and none weaker than level 1 is printed.
    const rules::Rulebook& book = rulebook_of(Family::four_degree);
    CHECK(game::stepped_statistics(book, creature(-1, 15, 8), BuildStep::elite)->level == 1);
    CHECK(game::stepped_statistics(book, creature(1, 15, 18), BuildStep::weak)->level == -1);
    CHECK_FALSE(game::stepped_statistics(book, creature(0, 15, 15), BuildStep::weak).has_value());
    CHECK(game::stepped_statistics(book, creature(1, 15, 4), BuildStep::weak)->hit_points == 1);
}

TEST_CASE("creature step: neither hazards nor creatures of srd5 have such forms") {
    game::Statistics hazard = creature(4, 21, 60);
    hazard.hazard = game::Hazard::simple;
    CHECK_FALSE(game::stepped_statistics(rulebook_of(Family::four_degree), hazard, BuildStep::elite)
                    .has_value());
    CHECK_FALSE(
        game::stepped_statistics(rulebook_of(Family::srd5), creature(4, 21, 60), BuildStep::elite)
            .has_value()
    );
    CHECK(game::stepped_name("Reed Lurker", BuildStep::weak) == "Weak Reed Lurker");
}
