#include "rules/attack_penalty.h"

#include <doctest/doctest.h>

// Source: Player Core (ORC License), multiple attack penalty: second attack -5 (agile -4), third
// and later -10 (agile -8).
TEST_CASE("attack penalty: second and later attacks of a turn (Player Core, ORC)") {
    rules::TurnRules turn;
    turn.attack_penalty = {0, -5, -10};
    turn.agile_attack_penalty = {0, -4, -8};
    CHECK(rules::attack_penalty(turn, false, 0) == 0);
    CHECK(rules::attack_penalty(turn, false, 1) == -5);
    CHECK(rules::attack_penalty(turn, false, 2) == -10);
    CHECK(rules::attack_penalty(turn, false, 6) == -10);
    CHECK(rules::attack_penalty(turn, true, 1) == -4);
    CHECK(rules::attack_penalty(turn, true, 3) == -8);
}

TEST_CASE("attack penalty: a rulebook without one asks for none") {
    CHECK(rules::attack_penalty({}, false, 3) == 0);
}
