// What is offered to bring a fight to another threat.
#include "game/encounter_offers.h"
#include "game/roster.h"
#include "open_library.h"
#include "party_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

using fight_table::rulebook_of;
using rules::Family;

namespace {

struct Evening {
    game::Campaign campaign;
    const rules::Rulebook& book;
    base::Id fight = base::no_id;

    Evening(Family family, const std::vector<int>& levels) : book(rulebook_of(family)) {
        campaign.about.rules = family;
        for (const int level : levels) {
            game::Character character;
            character.name = "Hero";
            character.statistics.level = level;
            game::add_character(campaign, character);
        }
        game::PreparedEncounter prepared;
        prepared.id = fight = campaign.preparation.next_id++;
        prepared.name = "Ford";
        campaign.preparation.encounters.push_back(prepared);
    }

    base::Id shelve(const std::string& name, int level) {
        game::Creature creature;
        creature.name = name;
        creature.statistics.level = level;
        return game::add_creature(campaign.shelf, creature);
    }

    game::PreparedEncounter& prepared() {
        return *game::find_prepared(campaign.preparation, fight);
    }

    game::EncounterPlan plan() {
        std::vector<base::Id> everybody;
        for (const game::Character& character : campaign.party.characters)
            everybody.push_back(character.id);
        return game::plan_encounter(campaign, book, prepared(), everybody).value();
    }

    std::optional<game::SuggestionQuestion> question(
        const std::string& aim,
        const game::OfferPlaces& places = {},
        const std::vector<game::LibraryCreature>& ready = {}
    ) {
        return game::suggestion_question(campaign, book, prepared(), plan(), aim, places, ready);
    }
};

std::vector<std::string> names(const game::SuggestionQuestion& question) {
    std::vector<std::string> all;
    for (const game::CreatureOffer& offer : question.offers)
        all.push_back(offer.name);
    return all;
}

bool has(const std::vector<std::string>& all, const std::string& name) {
    return std::find(all.begin(), all.end(), name) != all.end();
}

} // namespace

TEST_CASE("encounter offers: weak and elite forms of the shelf, but no hazards of it") {
    Evening evening(Family::four_degree, {4, 4, 4, 4});
    game::change_count(evening.prepared(), evening.shelve("Reed Lurker", 4), 1);
    const base::Id gate = evening.shelve("Falling gate", 4);
    game::find_creature(evening.campaign.shelf, gate)->statistics.hazard = game::Hazard::simple;
    const auto question = evening.question("moderate");
    REQUIRE(question.has_value());
    CHECK(
        names(*question) ==
        std::vector<std::string>{"Reed Lurker", "Weak Reed Lurker", "Elite Reed Lurker"}
    );
    CHECK(question->offers[0].kin == question->offers[2].kin);
    // GM Core (ORC), table Creature XP: level +0, -1, +1.
    CHECK(question->offers[0].xp == 40);
    CHECK(question->offers[1].xp == 30);
    CHECK(question->offers[2].xp == 60);
    // A form that stands on the shelf by name is offered once.
    evening.shelve("Elite Reed Lurker", 5);
    const auto again = names(evening.question("moderate").value());
    CHECK(std::count(again.begin(), again.end(), "Elite Reed Lurker") == 1);
}

TEST_CASE("encounter offers: the present fight made stronger puts the elite form on the shelf") {
    Evening evening(Family::four_degree, {4, 4, 4, 4});
    const base::Id lurker = evening.shelve("Reed Lurker", 4);
    game::change_count(evening.prepared(), lurker, 2); // 80 XP
    const auto question = evening.question("severe");  // 120
    REQUIRE(question.has_value());
    const auto found = game::suggest_changes(question->offers, question->counts, question->goal);
    const auto stronger =
        std::find_if(found.begin(), found.end(), [](const game::PlanSuggestion& each) {
            return each.moves.size() == 1 && each.moves[0].kind == game::MoveKind::step;
        });
    REQUIRE(stronger != found.end());
    CHECK(stronger->xp == 120);
    const std::string done =
        game::carry_out(evening.campaign, evening.book, evening.fight, *question, *stronger);
    CHECK(done.find("Ford: ") == 0);
    REQUIRE(evening.campaign.shelf.creatures.size() == 2);
    CHECK(evening.campaign.shelf.creatures.back().name == "Elite Reed Lurker");
    CHECK(evening.plan().rating.xp == 120);
    REQUIRE(evening.prepared().creatures.size() == 1);
    CHECK(evening.prepared().creatures[0].count == 2);
}

TEST_CASE("encounter offers: built ones fill a fight from an empty shelf") {
    for (const Family family : {Family::four_degree, Family::srd5}) {
        Evening evening(family, {3, 3, 3, 3});
        game::OfferPlaces places;
        places.has_built = true;
        CHECK(evening.question("moderate")->offers.empty());
        const auto question = evening.question("moderate", places);
        REQUIRE(question.has_value());
        const auto found =
            game::suggest_changes(question->offers, question->counts, question->goal);
        REQUIRE_FALSE(found.empty());
        for (const game::PlanSuggestion& each : found) {
            Evening changed = evening;
            game::carry_out(changed.campaign, changed.book, changed.fight, *question, each);
            CHECK(changed.plan().rating.xp == each.xp);
            CHECK(changed.plan().rating.threat == "moderate");
            CHECK_FALSE(changed.campaign.shelf.creatures.empty());
        }
    }
}

TEST_CASE("encounter offers: ready creatures, all or of one type") {
    Evening evening(Family::srd5, {3, 3, 3, 3});
    game::OfferPlaces places;
    places.has_ready = true;
    const auto every = evening.question("moderate", places, open_library::library());
    CHECK(has(names(*every), "Owlbear"));
    CHECK(has(names(*every), "Wolf"));
    places.ready_type = "beast";
    const auto beasts = evening.question("moderate", places, open_library::library());
    CHECK(has(names(*beasts), "Wolf"));
    CHECK_FALSE(has(names(*beasts), "Owlbear"));
    const auto found = game::suggest_changes(beasts->offers, beasts->counts, beasts->goal);
    REQUIRE_FALSE(found.empty());
    game::carry_out(
        evening.campaign,
        evening.book,
        evening.fight,
        *beasts,
        found.front(),
        open_library::library()
    );
    CHECK(evening.plan().rating.xp == found.front().xp);
    CHECK(evening.campaign.shelf.creatures.front().statistics.creature_type == "beast");
}

TEST_CASE("encounter offers: a suggestion carried out leads to what it says") {
    Evening evening(Family::four_degree, {4, 4, 4, 4, 4});
    const base::Id lurker = evening.shelve("Reed Lurker", 2);
    evening.shelve("Sluice Wight", 3);
    evening.shelve("Gutter Moth", -7); // more than 4 below: no offer
    game::change_count(evening.prepared(), lurker, 2);
    game::PreparedHazards hazard;
    hazard.level = 4;
    evening.prepared().hazards = {hazard}; // 8 XP that stay
    const auto question = evening.question("severe");
    REQUIRE(question.has_value());
    CHECK(question->offers.size() == 4); // three forms of those who take part, one of the other
    CHECK(question->goal.fixed_xp == 8);
    const auto found = game::suggest_changes(question->offers, question->counts, question->goal);
    REQUIRE_FALSE(found.empty());
    for (const game::PlanSuggestion& each : found) {
        Evening changed = evening;
        game::carry_out(changed.campaign, changed.book, changed.fight, *question, each);
        CHECK(changed.plan().rating.xp == each.xp);
        CHECK(changed.plan().rating.threat == "severe");
    }
    CHECK_FALSE(evening.question("no such").has_value());
    game::change_count(evening.prepared(), evening.shelve("The Tide", 9), 1);
    CHECK_FALSE(evening.question("severe").has_value());
}
