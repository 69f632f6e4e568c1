#include "building_table.h"
#include "rules/hazard_building.h"

#include <doctest/doctest.h>

using building_table::four_degree;
using rules::Band;

namespace {

rules::HazardChoice hazard(int level, bool is_complex) {
    rules::HazardChoice choice;
    choice.level = level;
    choice.is_complex = is_complex;
    return choice;
}

} // namespace

TEST_CASE("hazards: a simple and a complex one of level 10, as published") {
    // GM Core (ORC), Building Hazards, tables Stealth and Disable DCs, Defenses, Offense.
    rules::HazardChoice choice = hazard(10, false);
    choice.numbers["stealth_dc"].band = Band::extreme;
    choice.numbers["disable_dc"].band = Band::low;
    const rules::BuiltHazard simple = rules::built_hazard(four_degree(), choice);
    CHECK(simple.stealth_dc == 35);
    CHECK(simple.disable_dc == 26); // printed as 25 to 27
    CHECK(simple.armor_class == 30);
    CHECK(simple.fortitude == 22);
    CHECK(simple.reflex == 16);
    CHECK(simple.hardness == 18);   // 17 to 19
    CHECK(simple.hit_points == 72); // 70 to 74
    CHECK(simple.broken_threshold == 36);
    CHECK(simple.attack == 26);
    CHECK(rules::to_text(simple.damage) == "4d12+26");
    CHECK(simple.effect_dc == 29);
    const rules::BuiltHazard complex = rules::built_hazard(four_degree(), hazard(10, true));
    CHECK(complex.attack == 23);
    CHECK(rules::to_text(complex.damage) == "2d12+13");
    CHECK(complex.stealth_modifier == complex.stealth_dc - 10);
}

TEST_CASE("hazards: their tables agree with those of creatures where the book says so") {
    // GM Core (ORC), Building Hazards: AC and saves are a creature's; a complex hazard strikes as a
    // creature with high attack and damage; Stealth DCs are 10 and a creature's skill.
    const rules::CreatureBuilding& building = four_degree().creature_building;
    const auto low_of = [&](const rules::NumberTable& table, int level, Band band) {
        return rules::find_cell(table, building.tables, level, band)->low;
    };
    for (int level = -1; level <= 24; ++level) {
        CAPTURE(level);
        for (const Band band : {Band::low, Band::high, Band::extreme}) {
            CHECK(
                low_of(building.hazards.armor_class, level, band) ==
                low_of(building.tables.armor_class, level, band)
            );
            CHECK(
                low_of(building.hazards.saves, level, band) ==
                low_of(building.tables.saves, level, band)
            );
            CHECK(
                low_of(building.hazards.stealth_disable_dc, level, band) ==
                10 + low_of(building.tables.skills, level, band)
            );
        }
        const rules::BuiltHazard complex = rules::built_hazard(four_degree(), hazard(level, true));
        CHECK(complex.attack == low_of(building.tables.attack, level, Band::high));
        CHECK(
            complex.damage ==
            rules::find_cell(building.tables.damage, building.tables, level, Band::high)->dice
        );
        CHECK(complex.effect_dc == low_of(building.tables.spell_dc, level, Band::high));
    }
}

TEST_CASE("hazards: typed numbers stand as typed, a rulebook without hazards gives none") {
    rules::HazardChoice choice = hazard(3, false);
    choice.numbers["hit_points"].value = 99;
    choice.numbers["attack"].value = 4;
    choice.numbers["stealth_dc"].value = 20;
    choice.numbers["damage"].value = 11;
    const rules::BuiltHazard built = rules::built_hazard(four_degree(), choice);
    CHECK(built.hit_points == 99);
    CHECK(built.broken_threshold == 49);
    CHECK(built.attack == 4);
    CHECK(built.stealth_modifier == 10);
    CHECK(rules::mean(built.damage) == doctest::Approx(11).epsilon(0.05));
    CHECK(rules::built_hazard(building_table::srd5(), choice).armor_class == 0);
    CHECK(rules::hazard_offers(building_table::srd5(), choice).empty());
}

TEST_CASE("hazards: every number names its bands, what has one value a level has none") {
    // GM Core (ORC), Building Hazards, level 10: Stealth and Disable DCs 26 (25 to 27), 32, 35.
    const auto offers = rules::hazard_offers(four_degree(), hazard(10, false));
    const rules::NumberOffer* stealth = rules::find_offer(offers, "stealth_dc");
    REQUIRE(stealth != nullptr);
    REQUIRE(stealth->bands.size() == 3);
    CHECK(stealth->bands[0].value == 26);
    CHECK(stealth->bands[1].value == 32);
    CHECK(stealth->bands[2].value == 35);
    CHECK(stealth->band == Band::high);
    CHECK(rules::find_offer(offers, "hit_points")->bands.empty());
    CHECK(rules::find_offer(offers, "save_reflex")->band == Band::low);
}
