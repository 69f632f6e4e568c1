// What a condition will do, shown before it is given, and giving it to several at once.
#include "fight_table.h"
#include "game/condition_giving.h"

#include <doctest/doctest.h>

#include <algorithm>

using fight_table::Table;

namespace {

game::ConditionGift gift(const std::string& key, int value) {
    game::ConditionGift made;
    made.condition.key = key;
    made.condition.value = value;
    return made;
}

Table two_heroes() {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 52, 22);
    table.hero("Bram", 46, 19);
    game::Character& ysolde = table.campaign.party.characters[0];
    ysolde.statistics.saves = {{"fortitude", 11}, {"reflex", 8}, {"will", 9}};
    ysolde.statistics.skills = {{"athletics", 12}, {"society", 6}, {"crafting", 7}};
    ysolde.statistics.speeds_ft = {{"land", 25}};
    game::link_party(table.campaign);
    return table;
}

bool says(const game::ConditionPreview& preview, const std::string& words) {
    return std::find(preview.changes.begin(), preview.changes.end(), words) !=
           preview.changes.end();
}

} // namespace

TEST_CASE("condition giving: frightened 2 before it is given, AC 22 -> 20 and all that follows") {
    // Player Core (ORC), frightened: a status penalty of its value to all checks and DCs.
    const Table table = two_heroes();
    const auto preview = game::preview_condition(
        table.campaign.encounter, table.rulebook, table.id("Ysolde"), gift("frightened", 2)
    );
    CHECK(preview.refusal.empty());
    CHECK(says(preview, "AC 22 -> 20"));
    CHECK(says(preview, "every save -2"));
    CHECK(says(preview, "every skill -2"));
    CHECK(table.who("Ysolde").conditions.empty()); // nothing has happened yet
}

TEST_CASE("condition giving: a weaker condition beside a stronger one changes no number") {
    Table table = two_heroes();
    table.give("Ysolde", "frightened", 2);
    const auto preview = game::preview_condition(
        table.campaign.encounter, table.rulebook, table.id("Ysolde"), gift("frightened", 1)
    );
    CHECK(preview.refusal.empty());
    CHECK(preview.changes.empty());
}

TEST_CASE("condition giving: what a condition brings with it is told") {
    const Table table = two_heroes();
    const auto preview = game::preview_condition(
        table.campaign.encounter, table.rulebook, table.id("Ysolde"), gift("grabbed", 0)
    );
    CHECK(says(preview, "is off-guard"));
    CHECK(says(preview, "AC 22 -> 20")); // off-guard: -2 circumstance, Player Core (ORC)
}

TEST_CASE("condition giving: drained lowers the HP maximum and the HP") {
    // Player Core (ORC), drained: level x value HP lost, and the maximum falls by as much.
    const Table table = two_heroes();
    const auto preview = game::preview_condition(
        table.campaign.encounter, table.rulebook, table.id("Ysolde"), gift("drained", 2)
    );
    CHECK(says(preview, "HP max 52 -> 44"));
    CHECK(says(preview, "HP 52 -> 44"));
}

TEST_CASE("condition giving: to two, one of them immune, each on its own turn") {
    Table table = two_heroes();
    table.campaign.party.characters[1].statistics.immunities = {"slowed"};
    game::link_party(table.campaign);
    game::ConditionGift slowed = gift("slowed", 1);
    slowed.condition.duration.kind = game::DurationKind::rounds;
    slowed.condition.duration.rounds_left = 2;
    slowed.counts_on_own_turn = true;
    const std::string line = game::give_condition(
        table.encounter(), table.rulebook, {table.id("Ysolde"), table.id("Bram")}, slowed
    );
    CHECK(line == "Give slowed 1 to Ysolde; Bram is immune");
    REQUIRE(table.who("Ysolde").conditions.size() == 1);
    CHECK(table.who("Ysolde").conditions[0].duration.whose_turn == table.id("Ysolde"));
    CHECK(table.who("Bram").conditions.empty());
    const auto preview =
        game::preview_condition(table.campaign.encounter, table.rulebook, table.id("Bram"), slowed);
    CHECK(preview.refusal == "is immune");
}

TEST_CASE("condition giving: advantage and disadvantage in srd5 are told before") {
    // SRD 5.1, Appendix PH-A, Restrained: attacks against it at advantage, Dexterity saves at
    // disadvantage, speed 0.
    Table table(rules::Family::srd5);
    table.hero("Wren", 24, 14);
    game::Character& wren = table.campaign.party.characters[0];
    wren.statistics.saves = {{"dex", 2}};
    wren.statistics.speeds_ft = {{"land", 30}};
    game::link_party(table.campaign);
    const auto preview = game::preview_condition(
        table.campaign.encounter, table.rulebook, table.id("Wren"), gift("restrained", 0)
    );
    CHECK(says(preview, "Dex at disadvantage"));
    CHECK(says(preview, "attacks on it at advantage"));
    CHECK(says(preview, "speed 30 -> 0"));
}
