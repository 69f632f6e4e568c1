// Hit points, actions, reactions and the nearness of death under conditions.
// Sources: Player Core (ORC), conditions; SRD 5.1, Appendix PH-A; SRD 5.2.1, Rules Glossary.
#include "condition_table.h"

using namespace condition_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

const rules::Rulebook& four_degree() {
    return rulebook_of(rules::Family::four_degree);
}

} // namespace

TEST_CASE("effects: drained costs maximum hit points by level, at least one level's worth") {
    CHECK(game::effective_hp_max(four_degree(), with({{"drained", 2}})) == 50 - 2 * 4);
    Combatant small = with({{"drained", 3}});
    small.statistics.level = -1; // counts as level 1
    CHECK(game::effective_hp_max(four_degree(), small) == 50 - 3);
    small.statistics.hit_points = 2;
    CHECK(game::effective_hp_max(four_degree(), small) == 1); // never none at all
}

TEST_CASE("effects: the fourth level of exhaustion halves the maximum, rounded down (SRD 5.1)") {
    Combatant tired = with({{"exhaustion", 4}});
    tired.statistics.hit_points = 27;
    CHECK(game::effective_hp_max(rulebook_of(rules::Family::srd5), tired) == 13);
    CHECK(
        game::effective_hp_max(
            rulebook_of(rules::Family::srd5, rules::SrdEdition::srd_5_2_1), tired
        ) == 27
    );
}

TEST_CASE("effects: doomed lowers the dying value that kills") {
    CHECK(game::death_threshold(four_degree(), sheet()) == 4);
    CHECK(game::death_threshold(four_degree(), with({{"doomed", 1}})) == 3);
    CHECK(game::death_threshold(four_degree(), with({{"doomed", 3}})) == 1);
    CHECK(game::death_threshold(four_degree(), with({{"doomed", 9}})) == 0);
}

TEST_CASE("effects: how many actions a turn starts with") {
    using Conditions = std::vector<std::pair<std::string, int>>;
    // Before stunned with a value takes its share; that is for the start of the turn.
    const std::vector<std::pair<Conditions, int>> rows = {
        {{}, 3},
        {{{"quickened", 0}}, 4},
        {{{"slowed", 1}}, 2},
        {{{"slowed", 2}, {"quickened", 0}}, 2},
        {{{"slowed", 5}}, 0},
        {{{"stunned", 1}}, 3},
        {{{"stunned", 1}, {"slowed", 2}}, 3}, // stunned overrides slowed
        {{{"stunned", 0}}, 0},                // with a duration instead of a value
        {{{"paralyzed", 0}}, 3},              // purely mental actions remain
        {{{"restrained", 0}}, 3},             // it may try to get free
        {{{"petrified", 0}}, 0},
        {{{"unconscious", 0}}, 0},
        {{{"dying", 2}}, 0},
        {{{"unconscious", 0}, {"quickened", 0}}, 0},
    };
    for (const auto& [conditions, actions] : rows) {
        const std::string first = conditions.empty() ? "none" : conditions.front().first;
        CAPTURE(first);
        CHECK(game::actions_at_turn_start(four_degree(), with(conditions)) == actions);
    }
}

TEST_CASE("effects: who may react and who may delay") {
    struct Row {
        std::string key;
        bool can_react, can_delay;
    };

    const std::vector<Row> rows = {
        {"frightened", true, true},
        {"confused", false, false},
        {"fleeing", true, false},
        {"stunned", false, false},
        {"unconscious", false, false},
        {"petrified", false, false},
        {"grabbed", true, true},
    };
    for (const Row& row : rows) {
        CAPTURE(row.key);
        CHECK(game::can_react(four_degree(), with({{row.key, 1}})) == row.can_react);
        CHECK(game::can_delay(four_degree(), with({{row.key, 1}})) == row.can_delay);
    }
    const rules::Rulebook& srd = rulebook_of(rules::Family::srd5);
    CHECK_FALSE(game::can_delay(srd, sheet())); // srd5 has no delay
    for (const char* key : {"incapacitated", "paralyzed", "petrified", "stunned", "unconscious"}) {
        CAPTURE(std::string(key));
        CHECK_FALSE(game::can_react(srd, with({{key, 0}})));
    }
    CHECK(game::can_react(srd, with({{"restrained", 0}})));
}
