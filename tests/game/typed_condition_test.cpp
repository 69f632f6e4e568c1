#include "game/typed_condition.h"

#include <doctest/doctest.h>

using game::typed_condition;

namespace {

rules::Rulebook book() {
    rules::Rulebook book;
    for (const char* name : {"frightened", "friendly", "off-guard", "prone", "persistent damage"}) {
        rules::ConditionRule rule;
        rule.key = name;
        rule.name = name;
        rule.has_value = rule.key == "frightened";
        if (rule.key == "persistent damage") rule.fading = rules::Fading::persistent_damage;
        book.conditions.push_back(rule);
    }
    return book;
}

game::Encounter fight() {
    game::Encounter encounter;
    encounter.phase = game::Phase::running;
    for (const char* name : {"Orrin Tace", "Reed Lurker 1", "Reed Lurker 2"}) {
        game::Combatant combatant;
        combatant.id = encounter.next_id++;
        combatant.name = name;
        combatant.standing = game::Standing::in_order;
        encounter.combatants.push_back(combatant);
        encounter.order.push_back(combatant.id);
    }
    encounter.current = encounter.order[1];
    return encounter;
}

std::string meant(std::string_view typed) {
    const auto given = typed_condition(fight(), book(), typed);
    return given ? given->text : std::string();
}

} // namespace

TEST_CASE("typed condition: its name, its value, and who gets it") {
    CHECK(meant("frightened 2 orrin") == "Give frightened 2 to Orrin Tace");
    CHECK(meant("Frightened to Orrin Tace") == "Give frightened 1 to Orrin Tace");
    CHECK(meant("frig 3 on lurker 2") == "Give frightened 3 to Reed Lurker 2");
    CHECK(meant("off-guard orr") == "Give off-guard to Orrin Tace");
    CHECK(meant("prone") == "Give prone to Reed Lurker 1"); // whose turn it is
}

TEST_CASE("typed condition: what is not clear is not offered") {
    CHECK(meant("fri orrin").empty()); // frightened or friendly
    CHECK(meant("frightened bram").empty());
    CHECK(meant("prone 2 orrin").empty()); // has no value
    CHECK(meant("frightened 0").empty());
    CHECK(meant("persistent damage orrin").empty());
    CHECK(meant("").empty());
    CHECK(meant("orrin").empty());
    game::Encounter over = fight();
    over.phase = game::Phase::no_fight;
    CHECK_FALSE(typed_condition(over, book(), "prone").has_value());
}

TEST_CASE("typed condition: the name alone says no more than a question would") {
    CHECK_FALSE(typed_condition(fight(), book(), "frightened")->says_more);
    CHECK(typed_condition(fight(), book(), "frightened 2")->says_more);
    CHECK(typed_condition(fight(), book(), "frightened orrin")->says_more);
}
