// Changes that bring a fight to a wanted threat.
#include "game/encounter_suggestions.h"
#include "suggestions_brute.h"

#include <doctest/doctest.h>

#include <random>

using game::CreatureOffer;
using game::SuggestionGoal;

namespace {

std::vector<std::string> texts(
    const std::vector<CreatureOffer>& offers,
    const std::vector<int>& counts,
    const SuggestionGoal& goal
) {
    std::vector<std::string> said;
    for (const game::PlanSuggestion& each : game::suggest_changes(offers, counts, goal))
        said.push_back(
            game::suggestion_text(offers, each) + ": " + std::to_string(each.xp) + " XP"
        );
    return said;
}

// A party of four at level 4, GM Core (ORC), table Creature XP: level 2 is worth 20, 3 is 30, 4 is
// 40, 5 is 60.
const std::vector<CreatureOffer> shelf{
    {"Reed Lurker", 2, 20},
    {"Sluice Wight", 3, 30},
    {"Mudcaller", 4, 40},
    {"Mudcaller, elite", 5, 60},
};

SuggestionGoal goal(int least, int most, int best) {
    SuggestionGoal wanted;
    wanted.xp_min = least;
    wanted.xp_max = most;
    wanted.xp_best = best;
    return wanted;
}

} // namespace

TEST_CASE("suggestions: one move first, nearest to the budget first, few creatures first") {
    // 60 XP (three lurkers), wanted moderate: 80 to 119.
    const auto said = texts(shelf, {3, 0, 0, 0}, goal(80, 119, 80));
    REQUIRE(said.size() >= 4);
    CHECK(said[0] == "add 1 Reed Lurker: 80 XP");
    CHECK(said[1] == "1 Mudcaller instead of 1 Reed Lurker: 80 XP");
    CHECK(said[2] == "2 Sluice Wight instead of 2 Reed Lurker: 80 XP");
    CHECK(said[3] == "add 1 Sluice Wight: 90 XP");
}

TEST_CASE("suggestions: too much is taken away or made weaker") {
    // 180 XP, wanted severe: 120 to 159.
    const auto said = texts(shelf, {0, 0, 3, 1}, goal(120, 159, 120));
    REQUIRE(said.size() >= 2);
    CHECK(said[0] == "without 1 Mudcaller, elite: 120 XP");
    CHECK(said[1] == "3 Reed Lurker instead of 3 Mudcaller: 120 XP");
}

TEST_CASE("suggestions: a weak or elite form of the same creature is a step, not a swap") {
    std::vector<CreatureOffer> offers = shelf;
    offers[2].kin = offers[3].kin = 1;
    const auto found = game::suggest_changes(offers, {0, 0, 2, 0}, goal(100, 110, 100));
    const bool has_step = std::any_of(found.begin(), found.end(), [](const auto& each) {
        return each.moves.size() == 1 && each.moves[0].kind == game::MoveKind::step &&
               each.moves[0] == game::PlanMove{game::MoveKind::step, 2, 3, 1};
    });
    CHECK(has_step);
}

TEST_CASE("suggestions: an empty fight is put together from two kinds") {
    SuggestionGoal wanted = goal(80, 119, 80);
    wanted.wanted = 9;
    const auto found = game::suggest_changes(shelf, {0, 0, 0, 0}, wanted);
    const bool has_pair = std::any_of(found.begin(), found.end(), [](const auto& each) {
        return each.moves.size() == 2;
    });
    CHECK(has_pair);
    for (const game::PlanSuggestion& each : found)
        CHECK(each.xp >= 80);
}

TEST_CASE("suggestions: nothing to do, nothing on offer, nothing that leads there") {
    CHECK(game::suggest_changes(shelf, {4, 0, 0, 0}, goal(80, 119, 80)).empty());
    CHECK(game::suggest_changes({}, {}, goal(80, 119, 80)).empty());
    CHECK(game::suggest_changes(shelf, {0, 0, 0, 1}, goal(1, 15, 10)).empty()); // never emptied
}

TEST_CASE("suggestions: the search finds what trying everything finds") {
    std::mt19937_64 random(20);
    const auto draw = [&random](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned long>(high - low + 1));
    };
    const std::vector<int> four_degree_xp{10, 15, 20, 30, 40, 60, 80, 120, 160};
    const std::vector<int> srd5_xp{10, 25, 50, 100, 200, 450, 700, 1100};
    int suggested = 0;
    for (int round = 0; round < 400; ++round) {
        CAPTURE(round);
        const std::vector<int>& worth = round % 2 == 0 ? four_degree_xp : srd5_xp;
        std::vector<CreatureOffer> offers;
        std::vector<int> counts;
        const int size = draw(1, 6);
        for (int at = 0; at < size; ++at) {
            const auto which = static_cast<std::size_t>(draw(0, 7));
            offers.push_back({"c" + std::to_string(at), 1.0, worth[which], draw(0, 2)});
            counts.push_back(draw(0, 2) == 0 ? draw(1, 3) : 0);
        }
        SuggestionGoal wanted;
        wanted.xp_best = draw(1, round % 2 == 0 ? 20 : 60) * 10;
        wanted.xp_min = wanted.xp_best - draw(0, 3) * 10;
        wanted.xp_max = wanted.xp_best + draw(0, 4) * 10;
        wanted.fixed_xp = draw(0, 3) == 0 ? 8 : 0;
        wanted.count_max = draw(2, 5);
        wanted.creatures_max = draw(3, 12);
        wanted.alike_max = static_cast<std::size_t>(draw(1, 3));
        wanted.wanted = static_cast<std::size_t>(draw(1, 12));
        const auto found = game::suggest_changes(offers, counts, wanted);
        const auto expected = brute::suggest(offers, counts, wanted);
        REQUIRE(found.size() == expected.size());
        for (std::size_t at = 0; at < found.size(); ++at) {
            CAPTURE(game::suggestion_text(offers, found[at]));
            CAPTURE(game::suggestion_text(offers, expected[at]));
            CHECK(found[at] == expected[at]);
        }
        suggested += static_cast<int>(found.size());
        // What is suggested is true.
        for (const game::PlanSuggestion& each : found) {
            const std::vector<int> after = game::counts_after(counts, each.moves);
            int xp = wanted.fixed_xp;
            for (std::size_t at = 0; at < offers.size(); ++at)
                xp += offers[at].xp * after[at];
            CHECK(xp == each.xp);
        }
    }
    CHECK(suggested > 500);
}
