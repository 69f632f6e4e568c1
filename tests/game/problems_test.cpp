#include "prepared_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

ActiveCondition condition(Id id, const std::string& key, Id source) {
    ActiveCondition active;
    active.id = id;
    active.key = key;
    active.source = source;
    return active;
}

} // namespace

TEST_CASE("problems: each kind is found where it stands") {
    const auto first = [](auto change) {
        Prepared prepared;
        Table& table = prepared.table;
        game::open_fight(table.campaign, table.rulebook, prepared.plan);
        change(table.campaign);
        const auto problems = game::find_problems(table.campaign, table.rulebook);
        return problems.empty() ? std::string("none")
                                : problems.front().pointer + " " + problems.front().text;
    };
    using game::Campaign;
    CHECK(first([](Campaign&) {}) == "none");
    CHECK(first([](Campaign& c) {
              c.party.characters[1].id = c.party.characters[0].id;
          }).find("/party/characters/1/id The id 1 is used twice.") == 0);
    CHECK(first([](Campaign& c) {
              c.party.characters[1].name.clear();
          }) == "/party/characters/1/name The name is empty.");
    CHECK(first([](Campaign& c) {
              c.party.characters[0].statistics.saves["luck"] = 3;
          }) == "/party/characters/0/statistics/saves/luck \"luck\" is not in the rulebook.");
    CHECK(first([](Campaign& c) {
              c.shelf.creatures[0].statistics.attacks = {
                  {"claw", 5, "3d0", "slashing", false, false, "", {}}};
          }).find("/shelf/creatures/0/statistics/attacks/0/damage") == 0);
    CHECK(first([](Campaign& c) {
              c.shelf.creatures[0].statistics.hit_dice = "many";
          }).find("/shelf/creatures/0/statistics/hit_dice") == 0);
    CHECK(
        first([](Campaign& c) { c.preparation.encounters[0].creatures[1].creature = 77; }) ==
        "/preparation/encounters/0/creatures/1/creature There is no creature 77 on the shelf."
    );
    CHECK(first([](Campaign& c) {
              c.party.characters[0].hit_dice = {{8, 2, 3, {}}};
          }) == "/party/characters/0/hit_dice/0/spent More hit dice are spent than there are.");
    CHECK(first([](Campaign& c) {
              c.party.characters[0].hit_dice = {{8, 2, 0, {}}, {8, 1, 0, {}}};
          }) == "/party/characters/0/hit_dice/1/sides There are two entries of d8.");
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[0].hp = 41;
          }) == "/encounter/combatants/0/hp Hit points are above the maximum of 40.");
    CHECK(first([](Campaign& c) {
              c.encounter.order.push_back(c.encounter.order[0]);
          }).find("Listed twice.") != std::string::npos);
    CHECK(first([](Campaign& c) {
              c.encounter.order.pop_back();
          }).find("is missing in the order.") != std::string::npos);
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[0].conditions = {{}};
          }).find("/encounter/combatants/0/conditions/0/id") == 0);
    CHECK(first([](Campaign& c) {
              c.encounter.phase = game::Phase::running;
          }) == "/encounter/round A running fight is in round 1 or later.");
    CHECK(first([](Campaign& c) {
              c.party.characters[0].statistics.skills["a/b~c"] = 3;
          }) == "/party/characters/0/statistics/skills/a~1b~0c \"a/b~c\" is not in the rulebook.");
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[2].hp = -1;
          }) == "/encounter/combatants/2/hp Hit points are below 0.");
    CHECK(first([](Campaign& c) {
              c.preparation.encounters[0].creatures[0].count = 0;
          }) == "/preparation/encounters/0/creatures/0/count The count must be 1 to 50.");
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[1].group = c.encounter.next_id;
          }).find("/encounter/combatants/1/group The group must be below next_id") == 0);
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[1].character = c.encounter.combatants[0].character;
          }) == "/encounter/combatants/1/character The character 1 has two combatants.");
    CHECK(
        first([](Campaign& c) {
            c.encounter.combatants[0].conditions = {condition(1000, "lovestruck", 0)};
            c.encounter.next_id = 2000;
        }) == "/encounter/combatants/0/conditions/0/key \"lovestruck\" is no condition of the "
              "rulebook."
    );
    CHECK(first([](Campaign& c) {
              c.encounter.combatants[0].conditions = {condition(1000, "prone", 999)};
              c.encounter.next_id = 2000;
          }) == "/encounter/combatants/0/conditions/0/source There is no combatant 999.");
    CHECK(first([](Campaign& c) {
              c.encounter.prompts.resize(1);
              c.encounter.prompts[0].id = 1000;
              c.encounter.prompts[0].combatant = c.encounter.combatants[0].id;
              c.encounter.prompts[0].condition = 5000;
              c.encounter.next_id = 2000;
          }) == "/encounter/prompts/0/condition Ysolde has no condition 5000.");
    CHECK(first([](Campaign& c) {
              c.encounter.notices = {{.combatant = 999, .text = "Dies"}};
          }) == "/encounter/notices/0/combatant There is no combatant 999.");
    CHECK(first([](Campaign& c) {
              c.encounter.phase = game::Phase::running;
              c.encounter.round = 1;
          }) == "/encounter/current The current combatant is not in the order.");
}
