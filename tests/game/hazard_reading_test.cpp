// A hazard before it acts, and what it counts as.
#include "game/builder_reading.h"
#include "game/creature_building.h"
#include "game/hazard_reading.h"
#include "game/opponent_rating.h"
#include "game/placing.h"
#include "party_table.h"

#include <doctest/doctest.h>

using fight_table::rulebook_of;
using rules::Family;

TEST_CASE("hazard reading: who finds it and who makes it harmless, counted by hand") {
    game::Statistics hazard;
    hazard.difficulty_classes = {{"stealth_dc", 22}, {"disable_dc", 20}};
    const auto chances =
        game::hazard_chances(party_table::four_degree(), rulebook_of(Family::four_degree), hazard);
    // Perception +10 against 22: 12 and more, 9 of 20 faces. +5: 17 and more, 4 of 20.
    REQUIRE(chances.size() == 2); // Bram is away
    CHECK(chances[0].find_needed == 12);
    CHECK(chances[0].find_chance == doctest::Approx(0.45));
    CHECK(chances[1].find_chance == doctest::Approx(0.2));
    // Neither is trained in Thievery: the natural 20 lifts a failure by one degree.
    CHECK(chances[0].disable_needed == 20);
    CHECK(
        game::hazard_chance_text(chances[0]) ==
        "Ysolde finds it on 12+ (45 %), disables it on 20 (5 %)"
    );
    CHECK(game::hazard_chances(
              party_table::four_degree(), rulebook_of(Family::four_degree), game::Statistics{}
    )
              .empty());
}

TEST_CASE("hazard reading: in a fight it counts as a hazard, a simple one for a fifth") {
    // GM Core (ORC), table Hazard XP: of the party's level, simple 8, complex 40.
    game::Campaign campaign = party_table::four_degree();
    const rules::Rulebook& book = rulebook_of(Family::four_degree);
    rules::HazardChoice choice = game::first_hazard(campaign);
    const int level = choice.level;
    CHECK(game::hazard_reading(campaign, book, choice, 1).xp_each == 8);
    choice.is_complex = true;
    CHECK(game::hazard_reading(campaign, book, choice, 1).xp_each == 40);
    rules::Dice dice(7);
    game::place_creature(
        campaign, book, "Falling gate", game::hazard_statistics(book, choice), {}, dice
    );
    const auto opponents = game::opponents_of(campaign.encounter, Family::four_degree);
    REQUIRE(opponents.size() == 1);
    CHECK(opponents[0].is_hazard);
    CHECK(opponents[0].is_complex);
    CHECK(
        game::rating_text(opponents[0], Family::four_degree) ==
        "complex hazard, level " + std::to_string(level)
    );
}
