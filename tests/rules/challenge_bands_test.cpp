#include "building_table.h"
#include "rules/challenge_bands.h"
#include "rules/isotonic.h"

#include <doctest/doctest.h>

#include <vector>

namespace {

using rules::ChallengeRow;
using rules::ChallengeStatistics;
using rules::Quartiles;

const ChallengeStatistics& published() {
    return building_table::srd5().creature_building.statistics;
}

const std::vector<Quartiles ChallengeRow::*> every_number = {
    &ChallengeRow::armor_class,
    &ChallengeRow::hit_points,
    &ChallengeRow::attack,
    &ChallengeRow::save_dc,
    &ChallengeRow::damage,
    &ChallengeRow::attacks_per_turn,
    &ChallengeRow::ability};

ChallengeStatistics three_steps(const std::vector<Quartiles>& numbers) {
    ChallengeStatistics statistics;
    for (std::size_t at = 0; at < numbers.size(); ++at) {
        statistics.steps.push_back({static_cast<double>(at), 2});
        if (numbers[at].count == 0) continue;
        ChallengeRow row;
        row.challenge = static_cast<double>(at);
        row.armor_class = numbers[at];
        statistics.rows.push_back(row);
    }
    return statistics;
}

} // namespace

TEST_CASE("challenge bands: the list of challenge ratings with their proficiency") {
    // SRD 5.1, Monsters, Proficiency Bonus by Challenge Rating.
    const auto& steps = published().steps;
    REQUIRE(steps.size() == 34);
    CHECK(steps[0].challenge == 0);
    CHECK(steps[1].challenge == 0.125);
    CHECK(steps[3].challenge == 0.5);
    for (const rules::ChallengeStep& step : steps) {
        CAPTURE(step.challenge);
        const int band = step.challenge <= 4 ? 2 : 2 + (static_cast<int>(step.challenge) - 1) / 4;
        CHECK(step.proficiency == band);
    }
    CHECK(rules::step_of(published(), 0.25) == 2);
    CHECK(rules::step_of(published(), 17) == 20);
    CHECK(rules::step_of(published(), 99) == 33);
    CHECK(rules::step_of({}, 3) == 0);
}

TEST_CASE("challenge bands: they never fall, and low is never above typical, nor that above high") {
    for (const auto number : every_number) {
        const auto bands = rules::challenge_bands(published(), number);
        REQUIRE(bands.size() == 34);
        for (std::size_t at = 0; at < bands.size(); ++at) {
            CAPTURE(published().steps[at].challenge);
            CHECK(bands[at].low <= bands[at].typical);
            CHECK(bands[at].typical <= bands[at].high);
            if (at == 0) continue;
            CHECK(bands[at].low >= bands[at - 1].low);
            CHECK(bands[at].typical >= bands[at - 1].typical);
            CHECK(bands[at].high >= bands[at - 1].high);
        }
    }
}

TEST_CASE("challenge bands: within the quartiles wherever eight creatures or more stand behind them"
) {
    // The quartiles are those of the creatures of SRD 5.1 (CC-BY-4.0), see the table's source.
    int checked = 0;
    for (const auto number : every_number) {
        const auto bands = rules::challenge_bands(published(), number);
        for (const ChallengeRow& row : published().rows) {
            const Quartiles& raw = row.*number;
            if (raw.count < 8) continue;
            CAPTURE(row.challenge);
            const auto& band = bands[rules::step_of(published(), row.challenge)];
            for (const int value : {band.low, band.typical, band.high}) {
                CHECK(value >= raw.first);
                CHECK(value <= raw.third);
            }
            checked += 1;
        }
    }
    CHECK(checked > 75);
}

TEST_CASE("challenge bands: contradictions are pooled by weight, gaps filled in a straight line") {
    // Medians 10, 16, 12 with 2, 1 and 3 creatures: the last two become (16 + 3 x 12) / 4 = 13.
    const auto pooled = rules::challenge_bands(
        three_steps({{2, 10, 10, 10}, {1, 16, 16, 16}, {3, 12, 12, 12}}), &ChallengeRow::armor_class
    );
    REQUIRE(pooled.size() == 3);
    CHECK(pooled[0].typical == 10);
    CHECK(pooled[1].typical == 13);
    CHECK(pooled[2].typical == 13);
    const auto filled = rules::challenge_bands(
        three_steps({{2, 9, 10, 11}, {}, {}, {3, 15, 16, 17}}), &ChallengeRow::armor_class
    );
    REQUIRE(filled.size() == 4);
    CHECK(filled[1] == rules::ChallengeBand{11, 12, 13});
    CHECK(filled[2] == rules::ChallengeBand{13, 14, 15});
    CHECK(rules::challenge_bands(published(), &ChallengeRow::armor_class)[21].typical >= 18);
}

TEST_CASE("challenge bands: a well-populated rating holds its quartiles against the pooling") {
    // Alone the median 20 would be pooled with the 10 after it to 15; eight creatures from 9 to 12
    // say no.
    const auto bands = rules::challenge_bands(
        three_steps({{8, 19, 20, 21}, {8, 20, 20, 24}, {1, 10, 10, 10}}), &ChallengeRow::armor_class
    );
    CHECK(bands[0].low >= 19);
    CHECK(bands[1].low >= 20);
    CHECK(bands[2].low >= 20);
    CHECK(rules::challenge_bands(three_steps({{}, {}}), &ChallengeRow::armor_class).empty());
}
