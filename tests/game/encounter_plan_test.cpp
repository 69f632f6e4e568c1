// A prepared encounter measured against the party, and changed.
#include "game/encounter_plan.h"
#include "game/roster.h"
#include "rules/books.h"

#include <utility>

namespace {

const rules::Rulebook& four() {
    static const rules::Rulebook book = four_degree_book();
    return book;
}

const rules::Rulebook& srd() {
    static const rules::Rulebook book = srd_book(rules::SrdEdition::srd_5_2_1);
    return book;
}

struct Evening {
    game::Campaign campaign;
    game::PreparedEncounter fight;

    explicit Evening(const std::vector<int>& levels) {
        for (const int level : levels) {
            game::Character character;
            character.name = "Hero";
            character.statistics.level = level;
            game::add_character(campaign, character);
        }
    }

    base::Id shelve(const std::string& name, int level, double challenge = 0) {
        game::Creature creature;
        creature.name = name;
        creature.statistics.level = level;
        creature.statistics.challenge = challenge;
        return game::add_creature(campaign.shelf, creature);
    }

    void put(base::Id creature, int count) { game::change_count(fight, creature, count); }

    std::vector<base::Id> everybody() const {
        std::vector<base::Id> ids;
        for (const game::Character& character : campaign.party.characters)
            ids.push_back(character.id);
        return ids;
    }

    game::EncounterPlan plan(const rules::Rulebook& book) const {
        const auto planned = game::plan_encounter(campaign, book, fight, everybody());
        REQUIRE(planned.ok());
        return planned.value();
    }
};

} // namespace

TEST_CASE("encounter plan: one of level 5 and two of level 2 against four of level 3") {
    // Worked example enc-06: GM Core (ORC), tables Creature XP and Encounter Budget.
    Evening evening({3, 3, 3, 3});
    evening.put(evening.shelve("Mudcaller", 5), 1);
    evening.put(evening.shelve("Reed Lurker", 2), 2);
    const game::EncounterPlan plan = evening.plan(four());
    CHECK(plan.threat_text == "140 XP: severe (120); 20 to extreme (160)");
    CHECK(plan.party_text == "4 characters, level 3");
    REQUIRE(plan.creatures.size() == 2);
    CHECK(plan.creatures[0].xp_each == 80);
    CHECK(plan.creatures[1].xp == 60);
    CHECK(plan.creatures[1].rating == "level 2");
    CHECK(plan.rating.xp_award_each == 140);
    REQUIRE(plan.bar.marks.size() == 5);
    CHECK(plan.bar.marks[3].is_reached);
    CHECK_FALSE(plan.bar.marks[4].is_reached);
    CHECK(plan.bar.filled > plan.bar.marks[3].at);
    CHECK(plan.bar.filled < plan.bar.marks[4].at);
    CHECK(plan.bar.marks[4].at < 1.0);
}

TEST_CASE("encounter plan: the threat in words, from nothing to beyond") {
    // GM Core (ORC), table Encounter Budget: 40, 60, 80, 120, 160 for four characters.
    Evening evening({4, 4, 4, 4});
    CHECK(evening.plan(four()).threat_text == "0 XP; 60 to low (60)");
    const base::Id wight = evening.shelve("Sluice Wight", 2);
    evening.put(wight, 1);
    CHECK(evening.plan(four()).threat_text == "20 XP: trivial (up to 40); 40 to low (60)");
    evening.put(wight, 3);
    CHECK(evening.plan(four()).threat_text == "80 XP: moderate (80); 40 to severe (120)");
    evening.put(wight, 5);
    CHECK(evening.plan(four()).threat_text == "180 XP: extreme (160)");
    evening.put(evening.shelve("The Tide", 9), 1);
    const game::EncounterPlan beyond = evening.plan(four());
    CHECK(beyond.threat_text == "180 XP: beyond extreme");
    REQUIRE(beyond.rating.remarks.size() == 1);
    CHECK(beyond.rating.remarks[0].find("more than 4 levels above the party") != std::string::npos);
    CHECK_FALSE(beyond.creatures[1].xp_each.has_value());
}

TEST_CASE("encounter plan: mixed levels, who is away, and a party of nobody") {
    Evening evening({3, 3, 4, 6});
    CHECK(evening.plan(four()).party_text == "4 characters, levels 3 to 6 (counts as 4)");
    const auto nobody = game::plan_encounter(evening.campaign, four(), evening.fight, {});
    REQUIRE_FALSE(nobody.ok());
    CHECK(nobody.error().message == "Nobody of the party is present.");
    const std::vector<base::Id> two{evening.everybody()[0], evening.everybody()[3]};
    CHECK(game::levels_of(evening.campaign.party, two) == std::vector<int>{3, 6});
}

TEST_CASE("encounter plan: hazards count by level, simple or complex") {
    // GM Core (ORC), table XP Awards (hazards): 8 and 40 at the party's level.
    Evening evening({5, 5, 5, 5});
    game::PreparedHazards hazards;
    hazards.level = 5;
    hazards.count = 2;
    evening.fight.hazards = {hazards, hazards};
    evening.fight.hazards[1].is_complex = true;
    evening.fight.hazards[1].name = "Sluice gate";
    const game::EncounterPlan plan = evening.plan(four());
    CHECK(plan.rating.xp == 96);
    REQUIRE(plan.hazards.size() == 2);
    CHECK(plan.hazards[0].name == "simple hazard");
    CHECK(plan.hazards[0].xp == 16);
    CHECK(plan.hazards[1].name == "Sluice gate, complex hazard");
    CHECK(plan.hazards[1].xp_each == 40);
}

TEST_CASE("encounter plan: srd5 stays within a difficulty") {
    // SRD 5.2.1, Combat Encounters: four of level 1 have 200, 300, 400; CR 1/2 is 100, 1/4 is 50.
    Evening evening({1, 1, 1, 1});
    evening.put(evening.shelve("Lamp Eater", 1, 0.5), 2);
    const base::Id rat = evening.shelve("Dock Rat", 1, 0.25);
    evening.put(rat, 1);
    const game::EncounterPlan plan = evening.plan(srd());
    CHECK(plan.threat_text == "250 XP: moderate (up to 300); 50 left");
    CHECK(plan.creatures[0].rating == "CR 1/2");
    CHECK_FALSE(plan.bar.marks[1].is_reached);
    CHECK(plan.bar.marks[0].is_reached);
    evening.put(rat, 4);
    CHECK(evening.plan(srd()).threat_text == "450 XP: beyond high");
}

TEST_CASE("encounter plan: what counts as which threat") {
    // GM Core (ORC), table Encounter Budget.
    const auto aims =
        game::threat_aims(four(), rules::threat_budgets(four(), {3, 3, 3, 3}).value());
    REQUIRE(aims.size() == 5);
    CHECK(aims[0] == game::ThreatAim{"trivial", "trivial", 1, 59, 40});
    CHECK(aims[2] == game::ThreatAim{"moderate", "moderate", 80, 119, 80});
    CHECK(aims[4] == game::ThreatAim{"extreme", "extreme", 160, 199, 160});
    // Each XP of a band is rated as that threat.
    for (const game::ThreatAim& aim : aims) {
        for (const int xp : {aim.xp_min, aim.xp_max}) {
            if (xp % 2 != 0) continue; // simple hazards of 2 XP make any even number
            const auto rating =
                rules::rate_encounter(four(), {3, 3, 3, 3}, {{-1, xp / 2, true, false}});
            REQUIRE(rating.ok());
            CHECK(rating.value().threat == aim.name);
        }
    }
    const auto low = game::threat_aims(srd(), rules::threat_budgets(srd(), {1, 1, 1, 1}).value());
    CHECK(low[1] == game::ThreatAim{"moderate", "moderate", 201, 300, 300});
}

TEST_CASE("encounter plan: counts change where the creature stands, and end at nothing and at fifty"
) {
    game::PreparedEncounter fight;
    game::change_count(fight, 7, 3);
    game::change_count(fight, 8, 1);
    fight.creatures[0].is_hidden = true;
    game::change_count(fight, 7, 2);
    REQUIRE(fight.creatures.size() == 2);
    CHECK(fight.creatures[0].count == 5);
    CHECK(fight.creatures[0].is_hidden); // what the GM set stays
    game::change_count(fight, 7, -5);
    REQUIRE(fight.creatures.size() == 1);
    CHECK(fight.creatures[0].creature == 8);
    game::change_count(fight, 8, -9);
    CHECK(fight.creatures.empty());
    game::change_count(fight, 9, 80);
    CHECK(fight.creatures[0].count == 50);
}
