// Which conditions hold, against Player Core (ORC), conditions, and SRD 5.1, Appendix PH-A.
#include "condition_table.h"

using namespace condition_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const rules::Rulebook& four_degree() {
    return rulebook_of(rules::Family::four_degree);
}

std::vector<std::string> keys_of(const rules::Rulebook& rulebook, const Combatant& combatant) {
    std::vector<std::string> keys;
    for (const game::HoldingCondition& holding : game::holding_conditions(rulebook, combatant))
        keys.push_back(holding.rule->key);
    return keys;
}

} // namespace

TEST_CASE("holding: restrained stands in for grabbed, stunned for slowed, blinded for dazzled") {
    CHECK_FALSE(
        game::has_condition(four_degree(), with({{"restrained", 0}, {"grabbed", 0}}), "grabbed")
    );
    CHECK_FALSE(game::has_condition(four_degree(), with({{"stunned", 1}, {"slowed", 1}}), "slowed")
    );
    CHECK_FALSE(
        game::has_condition(four_degree(), with({{"blinded", 0}, {"dazzled", 0}}), "dazzled")
    );
}

TEST_CASE("holding: what a condition brings with it, over several steps") {
    const std::vector<std::pair<std::string, std::vector<std::string>>> rows = {
        {"grabbed", {"grabbed", "immobilized", "off_guard"}},
        {"restrained", {"immobilized", "off_guard", "restrained"}},
        {"unnoticed", {"undetected", "unnoticed"}},
        {"invisible", {"invisible", "undetected"}},
        {"unconscious", {"blinded", "off_guard", "unconscious"}},
        {"dying", {"blinded", "dying", "off_guard", "unconscious"}},
        {"paralyzed", {"off_guard", "paralyzed"}},
        {"confused", {"confused", "off_guard"}},
        {"prone", {"off_guard", "prone"}},
        {"encumbered", {"clumsy", "encumbered"}},
        {"frightened", {"frightened"}},
    };
    for (const auto& [key, expected] : rows) {
        const std::string given = key;
        CAPTURE(given);
        CHECK(keys_of(four_degree(), with({{key, 1}})) == expected);
    }
}

TEST_CASE("holding: a condition from two sources counts once, with the higher value") {
    CHECK(
        game::condition_value(four_degree(), with({{"encumbered", 0}, {"clumsy", 3}}), "clumsy") ==
        3
    );
    CHECK(game::condition_value(four_degree(), with({{"encumbered", 0}}), "clumsy") == 1);
    CHECK(
        game::condition_value(
            four_degree(), with({{"frightened", 1}, {"frightened", 2}}), "frightened"
        ) == 2
    );
    CHECK(game::condition_value(four_degree(), sheet(), "frightened") == 0);
}

TEST_CASE("holding: an implied condition says which one brings it") {
    const auto holding = game::holding_conditions(four_degree(), with({{"encumbered", 0}}));
    REQUIRE(holding.size() == 2);
    CHECK(holding.front().rule->key == "clumsy");
    CHECK(holding.front().because == "encumbered");
    CHECK(holding.back().because.empty());
    // Clumsy of its own, as strong as the implied one, needs no other to explain it.
    const Combatant both = with({{"encumbered", 0}, {"clumsy", 1}});
    CHECK(game::holding_conditions(four_degree(), both).front().because.empty());
}

TEST_CASE("holding: a poison in petrified flesh stands still, and is back with the flesh") {
    // SRD 5.1, Appendix PH-A, petrified; SRD 5.2.1, Rules Glossary, petrified.
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5, edition);
        Combatant combatant = with({{"poisoned", 0}, {"petrified", 0}});
        CHECK_FALSE(game::has_condition(rulebook, combatant, "poisoned"));
        CHECK(game::effective_check(rulebook, combatant, "arcana").mode == rules::RollMode::normal);
        combatant.conditions.pop_back();
        CHECK(game::has_condition(rulebook, combatant, "poisoned"));
    }
}

TEST_CASE("holding: a paused condition still holds; only its timer stands still") {
    Combatant combatant = with({{"frightened", 2}});
    combatant.conditions.front().is_paused = true;
    CHECK(game::condition_value(four_degree(), combatant, "frightened") == 2);
    CHECK(game::effective_ac(four_degree(), combatant).total == 18);
}

TEST_CASE("holding: a key that the rulebook does not know is passed over") {
    CHECK(game::holding_conditions(four_degree(), with({{"moonstruck", 3}})).empty());
}
