#include "books.h"
#include "rules/recovery.h"

namespace {

using doctest::Approx;
using rules::TreatWoundsOutlook;

TreatWoundsOutlook treat(const char* rank, int modifier, bool takes_full_hour = false) {
    static const rules::Rulebook book = four_degree_book();
    const auto outlook = rules::treat_wounds_outlook(book, rank, modifier, takes_full_hour);
    REQUIRE(outlook.ok());
    return outlook.value();
}

// A row of worked_examples: heal-02, heal-04, heal-05.
struct Example {
    const char* rank;
    int dc;
    int modifier;
    rules::DegreeOdds odds;
    double restored;
    double lost;
    double restored_in_an_hour;
};

} // namespace

TEST_CASE("treat wounds: what to expect, against worked examples") {
    // Player Core (ORC), Treat Wounds: 2d8 or 4d8 plus the bonus of the DC, 1d8 harm on a critical
    // failure (from memory), doubled by a full hour. Examples heal-02, heal-04 and heal-05,
    // computed with exact fractions.
    const std::vector<Example> examples = {
        {"expert", 20, 13, {1, 5, 10, 4, 20}, 151.0 / 10, 9.0 / 40, 151.0 / 5},
        {"legendary", 40, 30, {1, 8, 10, 1, 20}, 329.0 / 10, 9.0 / 40, 329.0 / 5},
        {"trained", 15, 13, {1, 0, 10, 9, 20}, 63.0 / 5, 9.0 / 40, 126.0 / 5},
    };
    for (const Example& example : examples) {
        CAPTURE(example.rank);
        const TreatWoundsOutlook outlook = treat(example.rank, example.modifier);
        CHECK(outlook.dc == example.dc);
        CHECK(outlook.minutes == 10);
        CHECK(outlook.odds == example.odds);
        CHECK(outlook.hp_restored == Approx(example.restored));
        CHECK(outlook.hp_lost == Approx(example.lost));
        CHECK(rules::mean(outlook.change) == Approx(example.restored - example.lost));
        const TreatWoundsOutlook hour = treat(example.rank, example.modifier, true);
        CHECK(hour.minutes == 60);
        CHECK(hour.hp_restored == Approx(example.restored_in_an_hour));
        CHECK(hour.hp_lost == Approx(example.lost)); // harm is not doubled
        CHECK(rules::mean(hour.change) == Approx(example.restored_in_an_hour - example.lost));
    }
}

TEST_CASE("treat wounds: every total that can come up") {
    // Expert DC 20 with +13: harm 1 to 8 (1/20), nothing (5/20), 2d8+10 (10/20), 4d8+10 (4/20).
    const TreatWoundsOutlook outlook = treat("expert", 13);
    CHECK(outlook.change.lowest == -8);
    CHECK(rules::highest(outlook.change) == 42);
    CHECK(rules::chance_of_total(outlook.change, -8) == Approx(1.0 / 160));
    CHECK(rules::chance_of_total(outlook.change, 0) == Approx(0.25));
    CHECK(rules::chance_of_total(outlook.change, 12) == Approx(0.5 / 64));
    CHECK(rules::chance_at_least(outlook.change, 1) == Approx(14.0 / 20));
    const TreatWoundsOutlook hour = treat("expert", 13, true);
    CHECK(rules::highest(hour.change) == 84);
    CHECK(rules::chance_of_total(hour.change, 24) == Approx(0.5 / 64));
    CHECK(rules::chance_of_total(hour.change, 25) == Approx(0.0)); // doubled totals are even
}

TEST_CASE("treat wounds: a healer may take the DC of the own rank or a lower one") {
    // Player Core (ORC), Treat Wounds: trained 15, expert 20, master 30, legendary 40.
    const rules::Rulebook book = four_degree_book();
    const auto choices = rules::treat_wounds_choices(book, "master", 18);
    REQUIRE(choices.ok());
    REQUIRE(choices.value().size() == 3);
    CHECK(choices.value()[0].rank == "trained");
    CHECK(choices.value()[0].dc == 15);
    CHECK(choices.value()[1].dc == 20);
    CHECK(choices.value()[2].dc == 30);
    CHECK(choices.value()[2] == treat("master", 18));
    CHECK(rules::treat_wounds_choices(book, "trained", 18).value().size() == 1);
    CHECK(rules::treat_wounds_choices(book, "legendary", 18).value().size() == 4);
    const auto untrained = rules::treat_wounds_choices(book, "untrained", 18);
    REQUIRE_FALSE(untrained.ok());
    CHECK(untrained.error().kind == base::ErrorKind::not_found);
    CHECK(untrained.error().message == "Nobody treats wounds with the proficiency \"untrained\".");
    const auto srd =
        rules::treat_wounds_outlook(srd_book(rules::SrdEdition::srd_5_1), "trained", 5);
    REQUIRE_FALSE(srd.ok());
    CHECK(srd.error().kind == base::ErrorKind::not_possible);
}

TEST_CASE("treat wounds: a better healer never does worse") {
    for (const char* rank : {"trained", "expert", "master", "legendary"}) {
        double last = -10;
        for (int modifier = -5; modifier <= 50; ++modifier) {
            const TreatWoundsOutlook outlook = treat(rank, modifier);
            const double expected = rules::mean(outlook.change);
            CHECK(expected >= last - 1e-9);
            CHECK(expected == Approx(outlook.hp_restored - outlook.hp_lost));
            last = expected;
        }
    }
}

TEST_CASE("first aid: the DC to stabilise the dying") {
    // Player Core (ORC), Administer First Aid: 5 above the recovery check, which is 10 + dying.
    const rules::Rulebook book = four_degree_book();
    for (int dying = 1; dying <= 4; ++dying)
        CHECK(rules::stabilize_dc(book, dying) == book.dying.recovery_dc_base + dying + 5);
    CHECK(rules::stabilize_dc(book, 2) == 17);
    CHECK(book.recovery.first_aid.actions == 2);
}

TEST_CASE("night rest: Constitution, at least 1, times level") {
    // Player Core (ORC), Rest and Daily Preparations; a full day and rough comfort from memory.
    const rules::Rulebook book = four_degree_book();
    CHECK(rules::night_rest_hp(book, 3, 4) == 12);
    CHECK(rules::night_rest_hp(book, 0, 7) == 7);
    CHECK(rules::night_rest_hp(book, -2, 7) == 7);
    CHECK(rules::night_rest_hp(book, 3, 4, rules::NightRest::full_day) == 24);
    CHECK(rules::night_rest_hp(book, 3, 5, rules::NightRest::rough) == 7);
    CHECK(rules::night_rest_hp(book, 1, 0) == 1);
    CHECK(book.recovery.night_rest.hours == 8);
}

TEST_CASE("short rest: hit dice with Constitution") {
    const rules::Rulebook older = srd_book(rules::SrdEdition::srd_5_1);
    const rules::Rulebook newer = srd_book(rules::SrdEdition::srd_5_2_1);
    // SRD 5.1, Adventuring / Resting: each die plus the modifier; the mean of 1d10 is 5.5.
    const auto three = rules::short_rest_hp(older, {{3, 10}}, 2);
    CHECK(rules::mean(three) == Approx(3 * 7.5));
    CHECK(three.lowest == 9);
    CHECK(rules::highest(three) == 36);
    CHECK(three == rules::short_rest_hp(newer, {{3, 10}}, 2));
    const auto mixed = rules::short_rest_hp(older, {{1, 8}, {2, 6}}, 0);
    CHECK(rules::mean(mixed) == Approx(4.5 + 7));
    CHECK(rules::short_rest_hp(older, {}, 3) == rules::certain(0));
    CHECK(rules::short_rest_hp(older, {{0, 8}}, 3) == rules::certain(0));
    // SRD 5.2.1, Short Rest: at least 1 for each die. 1d6 - 3: faces 1 to 4 give 1, then 2 and 3.
    CHECK(rules::mean(rules::short_rest_hp(newer, {{1, 6}}, -3)) == Approx((4 * 1 + 2 + 3) / 6.0));
    // SRD 5.1 names no least: never below 0 (our reading).
    CHECK(rules::mean(rules::short_rest_hp(older, {{1, 6}}, -3)) == Approx((1 + 2 + 3) / 6.0));
}

TEST_CASE("long rest: hit dice come back by edition") {
    // SRD 5.1, Resting: half of the total, at least one. SRD 5.2.1, Long Rest: all of them.
    const rules::Rulebook older = srd_book(rules::SrdEdition::srd_5_1);
    const rules::Rulebook newer = srd_book(rules::SrdEdition::srd_5_2_1);
    CHECK(rules::long_rest_hit_dice(older, 8, 8) == 4);
    CHECK(rules::long_rest_hit_dice(older, 7, 7) == 3);
    CHECK(rules::long_rest_hit_dice(older, 1, 1) == 1);
    CHECK(rules::long_rest_hit_dice(older, 8, 2) == 2); // no more than were spent
    CHECK(rules::long_rest_hit_dice(newer, 8, 8) == 8);
    CHECK(rules::long_rest_hit_dice(newer, 8, 0) == 0);
    for (const rules::Rulebook* book : {&older, &newer}) {
        CHECK(book->recovery.rests.short_hours == 1);
        CHECK(book->recovery.rests.long_hours == 8);
    }
}
