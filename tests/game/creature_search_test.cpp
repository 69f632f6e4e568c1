#include "fight_table.h"
#include "game/creature_search.h"
#include "open_library.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace {

using game::CreatureQuery;
using game::NameMatch;

using open_library::library;

std::vector<std::string> names(const CreatureQuery& query) {
    std::vector<std::string> found;
    for (const std::size_t place : game::search_creatures(library(), query))
        found.push_back(library()[place].name);
    return found;
}

std::vector<std::string> names(const std::string& text) {
    CreatureQuery query;
    query.text = text;
    return names(query);
}

using Names = std::vector<std::string>;

} // namespace

TEST_CASE("creature search: names that start so come before words that do, those before the rest") {
    const Names wolves = names("WOLF");
    REQUIRE(wolves.size() >= 4);
    CHECK(wolves[0] == "Wolf");
    CHECK(wolves[1] == "Dire Wolf");
    CHECK(wolves[2] == "Giant Wolf Spider");
    CHECK(std::find(wolves.begin(), wolves.end(), "Werewolf") > wolves.begin() + 2);
    CHECK(names("  goblin ").front() == "Goblin");
    CHECK(names("xyzzy").empty());
}

TEST_CASE("creature search: typed words may come in any order and be cut short") {
    CHECK(names("drag bl wyr") == Names{"Black Dragon Wyrmling", "Blue Dragon Wyrmling"});
    CHECK(names("adult black dragon") == Names{"Adult Black Dragon"});
}

TEST_CASE("creature search: one slip of the finger is forgiven, two are not") {
    CHECK(game::name_match("Gargoyle", "gargoyle") == NameMatch::whole);
    CHECK(game::name_match("Gargoyle", "garg") == NameMatch::start);
    CHECK(game::name_match("Stone Gargoyle", "garg") == NameMatch::word_starts);
    CHECK(game::name_match("Gargoyle", "goyle") == NameMatch::inside);
    CHECK(game::name_match("Gargoyle", "gargiyl") == NameMatch::one_slip);   // wrong
    CHECK(game::name_match("Gargoyle", "grgoyle") == NameMatch::one_slip);   // missing
    CHECK(game::name_match("Gargoyle", "garrgoyle") == NameMatch::one_slip); // too much
    CHECK(game::name_match("Gargoyle", "gragoyle") == NameMatch::one_slip);  // swapped
    CHECK(game::name_match("Gargoyle", "gargoylee") == NameMatch::one_slip); // too much at the end
    CHECK_FALSE(game::name_match("Gargoyle", "grgoile").has_value());
    CHECK_FALSE(game::name_match("Rat", "rab").has_value()); // too short to forgive
    CHECK(game::name_match("Anything", "") == NameMatch::start);
    CHECK_FALSE(game::name_match("", "ogre").has_value());
    CHECK(names("owlbaer") == Names{"Owlbear"});
}

TEST_CASE("creature search: rating, type, speed and damage narrow it down together") {
    CreatureQuery query;
    query.type = "dragon";
    query.rating_min = 17;
    query.rating_max = 20;
    query.damage_type = "fire";
    // SRD 5.1, Monsters (D): adult gold, adult red and dragon turtle CR 17, ancient brass CR 20.
    CHECK(
        names(query) ==
        Names{"Adult Gold Dragon", "Adult Red Dragon", "Ancient Brass Dragon", "Dragon Turtle"}
    );
    query = {};
    query.speed = "burrow";
    query.rating_max = 0;
    CHECK(names(query) == Names{"Badger"});
    query = {};
    CHECK(names(query).size() == library().size());
}

TEST_CASE("creature search: by rating, equal ones by name") {
    CreatureQuery query;
    query.text = "giant";
    query.type = "giant";
    query.order = game::CreatureOrder::by_rating;
    // SRD 5.1, Monsters (G), Giants: CR 5, 7, 8, 9, 9, 13.
    CHECK(
        names(query) ==
        Names{
            "Hill Giant", "Stone Giant", "Frost Giant", "Cloud Giant", "Fire Giant", "Storm Giant"}
    );
    query.order = game::CreatureOrder::by_name;
    CHECK(names(query).front() == "Cloud Giant");
}

TEST_CASE("creature search: every creature is found by its own name, first of all") {
    std::set<std::string> found;
    for (const game::LibraryCreature& creature : library()) {
        CAPTURE(creature.name);
        const Names answers = names(creature.name);
        REQUIRE_FALSE(answers.empty());
        CHECK(answers.front() == creature.name);
        found.insert(answers.front());
    }
    CHECK(found.size() == library().size());
}

TEST_CASE("creature search: the shelf by level or challenge, speed and damage") {
    game::CreatureShelf shelf;
    for (const int level : {1, 3, 5}) {
        game::Creature creature;
        creature.name = "Lurker of level " + std::to_string(level);
        creature.statistics.level = level;
        creature.statistics.challenge = 10 - level;
        creature.statistics.speeds_ft["land"] = 25;
        creature.statistics.attacks.resize(1);
        creature.statistics.attacks[0].damage_type = level == 3 ? "fire" : "slashing";
        shelf.creatures.push_back(creature);
    }
    const auto found = [&](rules::Family family, const CreatureQuery& query) {
        return game::search_shelf(shelf, family, query);
    };
    using Places = std::vector<std::size_t>;
    CreatureQuery query;
    query.rating_max = 4;
    CHECK(found(rules::Family::four_degree, query) == Places{0, 1});
    CHECK(found(rules::Family::srd5, query).empty());
    query.rating_max = 7;
    query.order = game::CreatureOrder::by_rating;
    CHECK(found(rules::Family::srd5, query) == Places{2, 1});
    query = {};
    query.damage_type = "fire";
    CHECK(found(rules::Family::four_degree, query) == Places{1});
    query.speed = "fly";
    CHECK(found(rules::Family::four_degree, query).empty());
    query = {};
    query.type = "dragon";
    CHECK(found(rules::Family::four_degree, query).empty());
}

TEST_CASE("creature search: what can be asked for comes from the creatures themselves") {
    const game::LibraryWords words = game::library_words(library());
    // SRD 5.1 (CC-BY-4.0), Monsters: challenge ratings 0 to 30, among the types aberration and
    // undead.
    CHECK(words.ratings.front() == 0);
    CHECK(words.ratings.back() == 30);
    CHECK(std::is_sorted(words.types.begin(), words.types.end()));
    CHECK(std::count(words.types.begin(), words.types.end(), "aberration") == 1);
    CHECK(std::count(words.types.begin(), words.types.end(), "undead") == 1);
    CHECK(std::count(words.speeds.begin(), words.speeds.end(), "burrow") == 1);
    CHECK(std::count(words.damage_types.begin(), words.damage_types.end(), "acid") == 1);
}
