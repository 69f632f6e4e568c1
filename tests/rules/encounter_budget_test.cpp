#include "books.h"
#include "rules/encounter_budget.h"

#include <array>
#include <map>

namespace {

using rules::EncounterRating;
using rules::Opponents;

const rules::Rulebook& four() {
    static const rules::Rulebook book = four_degree_book();
    return book;
}

const rules::Rulebook& srd() {
    static const rules::Rulebook book = srd_book(rules::SrdEdition::srd_5_2_1);
    return book;
}

std::vector<int> party(int size, int level) {
    std::vector<int> levels;
    levels.assign(static_cast<std::size_t>(size), level);
    return levels;
}

std::map<std::string, int> budgets(const rules::Rulebook& book, const std::vector<int>& levels) {
    const auto list = rules::threat_budgets(book, levels);
    REQUIRE(list.ok());
    std::map<std::string, int> xp;
    for (const rules::ThreatBudget& each : list.value())
        xp[each.key] = each.xp;
    return xp;
}

EncounterRating rate(
    const rules::Rulebook& book,
    const std::vector<int>& levels,
    const std::vector<Opponents>& opponents
) {
    const auto rating = rules::rate_encounter(book, levels, opponents);
    REQUIRE(rating.ok());
    return rating.value();
}

// A four-degree fight worth exactly this many XP to a level 5 party: simple hazards of level 1 are
// worth 2 each.
std::vector<Opponents> worth(int xp) {
    REQUIRE(xp % 2 == 0);
    return {{1, xp / 2, true, false}};
}

} // namespace

TEST_CASE("budget: four-degree budgets grow and shrink with the party") {
    // GM Core (ORC), table Encounter Budget: 40/10, 60/20, 80/20, 120/30, 160/40.
    const auto usual = budgets(four(), party(4, 3));
    CHECK(usual.at("trivial") == 40);
    CHECK(usual.at("low") == 60);
    CHECK(usual.at("moderate") == 80);
    CHECK(usual.at("severe") == 120);
    CHECK(usual.at("extreme") == 160);
    CHECK(budgets(four(), party(5, 3)).at("moderate") == 100); // worked example enc-01
    CHECK(budgets(four(), party(6, 3)).at("low") == 100);      // worked example enc-03
    CHECK(budgets(four(), party(7, 3)).at("extreme") == 280);  // worked example enc-05
    CHECK(budgets(four(), party(3, 3)).at("severe") == 90);
    // A lone character: 60 - 3 x 20 would leave nothing for low, less than for trivial.
    CHECK(budgets(four(), party(1, 3)).at("trivial") == 10);
    CHECK(budgets(four(), party(1, 3)).at("low") == 10);
    CHECK(budgets(four(), party(1, 3)).at("moderate") == 20);
}

TEST_CASE("budget: four-degree XP of creatures and hazards by level difference") {
    // GM Core (ORC), tables Creature XP and XP Awards (hazards), -4 to +4.
    const std::vector<int> creatures = {10, 15, 20, 30, 40, 60, 80, 120, 160};
    const std::vector<int> simple = {2, 3, 4, 6, 8, 12, 16, 24, 32};
    for (std::size_t row = 0; row < creatures.size(); ++row) {
        const double level = 7 - 4 + static_cast<double>(row);
        CAPTURE(level);
        CHECK(rules::opponent_xp(four(), 7, {level}) == creatures[row]);
        CHECK(rules::opponent_xp(four(), 7, {level, 1, true, false}) == simple[row]);
        // A complex hazard is worth as much as a creature.
        CHECK(rules::opponent_xp(four(), 7, {level, 1, true, true}) == creatures[row]);
    }
    CHECK_FALSE(rules::opponent_xp(four(), 7, {2}).has_value());
    CHECK_FALSE(rules::opponent_xp(four(), 7, {12}).has_value());
    CHECK_FALSE(rules::opponent_xp(four(), 7, {12, 1, true, true}).has_value());
}

TEST_CASE("budget: one level 5 and two level 2 creatures against four of level 3") {
    // Worked example enc-06: GM Core (ORC), tables Creature XP and Encounter Budget; the threat
    // named is the highest whose budget is reached (our reading).
    const EncounterRating rating = rate(four(), party(4, 3), {{5, 1}, {2, 2}});
    CHECK(rating.party_level == 3);
    CHECK(rating.xp_each == std::vector<std::optional<int>>{80, 30});
    CHECK(rating.xp == 140);
    CHECK(rating.threat == "severe");
    CHECK_FALSE(rating.is_beyond);
    CHECK(rating.next_budget == "extreme");
    CHECK(rating.xp_to_next == 20);
    CHECK(rating.xp_award_each == 140); // four characters: the award is the XP
    CHECK(rating.remarks.empty());
}

TEST_CASE("budget: the award leaves the size of the party out") {
    // Worked example enc-08: five characters, 100 XP spent on a moderate fight, 80 XP each.
    CHECK(rate(four(), party(5, 5), worth(100)).xp_award_each == 80);
    // The same at every budget of every party: GM Core (ORC), XP awards and table Encounter Budget.
    for (int size = 2; size <= 8; ++size) {
        CAPTURE(size);
        const auto own = budgets(four(), party(size, 5));
        CHECK(rate(four(), party(size, 5), worth(own.at("moderate"))).xp_award_each == 80);
        CHECK(rate(four(), party(size, 5), worth(own.at("severe"))).xp_award_each == 120);
        CHECK(rate(four(), party(size, 5), worth(own.at("extreme"))).xp_award_each == 160);
        CHECK(rate(four(), party(size, 5), worth(own.at("extreme"))).threat == "extreme");
    }
    // Between the budgets and past them more XP is never worth less, and four characters get what
    // the fight is worth.
    for (int size = 1; size <= 8; ++size) {
        int last = 0;
        for (int xp = 0; xp <= 500; xp += 2) {
            CAPTURE(size);
            CAPTURE(xp);
            const int award = rate(four(), party(size, 5), worth(xp)).xp_award_each;
            CHECK(award >= last);
            if (size == 4) CHECK(award == xp);
            if (size > 4) CHECK(award <= xp);
            if (size < 4) CHECK(award >= xp);
            last = award;
        }
    }
}

TEST_CASE("budget: which threat a number of XP is, and how far the next one is") {
    // GM Core (ORC), table Encounter Budget, four characters: trivial is 40 or less.
    const auto at = [](int xp) { return rate(four(), party(4, 5), worth(xp)); };
    CHECK(at(0).threat.empty());
    CHECK(at(2).threat == "trivial");
    CHECK(at(2).next_budget == "low");
    CHECK(at(2).xp_to_next == 58);
    CHECK(at(58).threat == "trivial");
    CHECK(at(60).threat == "low");
    CHECK(at(60).xp_to_next == 20);
    CHECK(at(80).threat == "moderate");
    CHECK(at(118).threat == "moderate");
    CHECK(at(120).threat == "severe");
    CHECK(at(160).threat == "extreme");
    CHECK(at(160).next_budget.empty());
    CHECK_FALSE(at(160).xp_to_next.has_value());
    CHECK(at(400).threat == "extreme");
}

TEST_CASE("budget: opponents outside of the table are named, not counted as nothing") {
    const EncounterRating above = rate(four(), party(4, 4), {{9, 1}, {4, 1}});
    CHECK(above.xp == 40);
    CHECK(above.xp_each == std::vector<std::optional<int>>{std::nullopt, 40});
    CHECK(above.is_beyond);
    CHECK(above.threat == "beyond extreme");
    CHECK_FALSE(above.xp_to_next.has_value());
    REQUIRE(above.remarks.size() == 1);
    CHECK(
        above.remarks[0] == "A creature of level 9 is more than 4 levels above the party (4): too "
                            "dangerous for the table, no XP is counted."
    );
    const EncounterRating below = rate(four(), party(4, 9), {{4, 6}, {4, 2}, {9, 1}});
    CHECK(below.xp == 40);
    CHECK_FALSE(below.is_beyond);
    CHECK(below.threat == "trivial");
    REQUIRE(below.remarks.size() == 1); // said once
    CHECK(
        below.remarks[0] ==
        "A creature of level 4 is more than 4 levels below the party (9): worth no XP."
    );
    const EncounterRating trap = rate(four(), party(4, 4), {{9, 1, true, true}});
    CHECK(trap.is_beyond);
    CHECK(trap.remarks[0].find("A hazard of level 9") == 0);
    CHECK(rate(four(), party(4, 4), {{9, 0}}).remarks.empty()); // none of them there
}

TEST_CASE("budget: a party of mixed levels counts as its average") {
    // Common practice, no source: rounded to the nearest, halves up.
    CHECK(rules::party_level({3, 3, 4, 4}) == 4);
    CHECK(rules::party_level({3, 3, 3, 4}) == 3);
    CHECK(rules::party_level({1, 2, 2}) == 2);
    CHECK(rules::party_level({20}) == 20);
    CHECK(rate(four(), {3, 3, 3, 4}, {{3, 1}}).xp == 40);
}

TEST_CASE("budget: srd5 budgets add up what each character brings") {
    // SRD 5.2.1, Gameplay Toolbox / Combat Encounters, XP Budget per Character.
    const std::vector<std::array<int, 4>> published = {
        {1, 50, 75, 100},
        {3, 150, 225, 400},
        {5, 500, 750, 1100},
        {11, 1900, 2900, 4100},
        {17, 4500, 7200, 11700},
        {20, 6400, 13200, 22000},
    };
    for (const auto& row : published) {
        CAPTURE(row[0]);
        const auto four_of_them = budgets(srd(), party(4, row[0]));
        CHECK(four_of_them.at("low") == 4 * row[1]);
        CHECK(four_of_them.at("moderate") == 4 * row[2]);
        CHECK(four_of_them.at("high") == 4 * row[3]);
    }
    const auto mixed = budgets(srd(), {1, 3, 5});
    CHECK(mixed.at("low") == 50 + 150 + 500);
    CHECK(mixed.at("high") == 100 + 400 + 1100);
}

TEST_CASE("budget: srd5 XP by challenge, against the published table") {
    // SRD 5.1 and SRD 5.2.1, Monsters / Experience Points by Challenge Rating.
    const std::vector<std::pair<double, int>> published = {
        {0, 10},
        {0.125, 25},
        {0.25, 50},
        {0.5, 100},
        {1, 200},
        {5, 1800},
        {10, 5900},
        {17, 18000},
        {20, 25000},
        {24, 62000},
        {30, 155000},
    };
    for (const auto& row : published) {
        CAPTURE(row.first);
        CHECK(rules::opponent_xp(srd(), 0, {row.first}) == row.second);
    }
    CHECK_FALSE(rules::opponent_xp(srd(), 0, {31}).has_value());
    CHECK_FALSE(rules::opponent_xp(srd(), 0, {0.3}).has_value());
    CHECK_FALSE(rules::opponent_xp(srd(), 0, {1, 1, true, false}).has_value());
}

TEST_CASE("budget: an srd5 fight stays within a difficulty, and its XP are shared") {
    // SRD 5.2.1: four of level 1 have 200, 300 and 400 XP for low, moderate and high.
    const EncounterRating low = rate(srd(), party(4, 1), {{0.5, 2}});
    CHECK(low.xp == 200);
    CHECK(low.threat == "low"); // exactly its budget is still within
    CHECK(low.next_budget == "low");
    CHECK(low.xp_to_next == 0);
    CHECK(low.xp_award_each == 50);
    CHECK(low.remarks.empty());
    const EncounterRating moderate = rate(srd(), party(4, 1), {{0.5, 2}, {0.25, 1}});
    CHECK(moderate.xp == 250);
    CHECK(moderate.threat == "moderate");
    CHECK(moderate.xp_to_next == 50);
    CHECK(moderate.xp_award_each == 62); // 62.5 rounded down: common practice, no source
    const EncounterRating beyond = rate(srd(), party(4, 1), {{2, 1}});
    CHECK(beyond.xp == 450);
    CHECK(beyond.threat == "beyond high");
    CHECK(beyond.is_beyond);
    CHECK(beyond.next_budget.empty());
    const EncounterRating nothing = rate(srd(), party(4, 1), {});
    CHECK(nothing.threat.empty());
    CHECK(nothing.xp_to_next == 200);
    CHECK(nothing.party_level == 0);
}

TEST_CASE("budget: what srd5 tables do not rate is said") {
    const EncounterRating giant = rate(srd(), party(4, 20), {{31, 1}});
    CHECK(giant.is_beyond);
    CHECK(giant.threat == "beyond high");
    CHECK(
        giant.remarks ==
        std::vector<std::string>{"Challenge 31 is not in the table: no XP is counted."}
    );
    const EncounterRating odd = rate(srd(), party(4, 1), {{0.3, 1}, {1, 1, true, true}});
    CHECK_FALSE(odd.is_beyond);
    CHECK(odd.xp == 0);
    REQUIRE(odd.remarks.size() == 2);
    CHECK(odd.remarks[0] == "Challenge 0.3 is not in the table: no XP is counted.");
    CHECK(odd.remarks[1] == "Hazards have no XP in this rulebook: none is counted.");
    // SRD 5.2.1, Combat Encounters: more than two creatures a character ask for caution.
    CHECK(rate(srd(), party(4, 5), {{0, 8}}).remarks.empty());
    const EncounterRating crowd = rate(srd(), party(4, 5), {{0, 9}});
    REQUIRE(crowd.remarks.size() == 1);
    CHECK(
        crowd.remarks[0] == "More than 2 creatures for each character: take ones that fall easily."
    );
    const EncounterRating older =
        rate(srd_book(rules::SrdEdition::srd_5_1), party(4, 1), {{0.5, 2}});
    CHECK(older.threat == "low");
    CHECK(
        older.remarks ==
        std::vector<std::string>{"SRD 5.1 has no budget: the figures are those of SRD 5.2.1."}
    );
}

TEST_CASE("budget: harder threats cost more, higher levels and larger parties too") {
    for (const rules::Rulebook* book : {&four(), &srd()}) {
        for (int level = 1; level <= 20; ++level) {
            for (int size = 1; size <= 8; ++size) {
                const auto list = rules::threat_budgets(*book, party(size, level)).value();
                const auto larger = rules::threat_budgets(*book, party(size + 1, level)).value();
                for (std::size_t at = 0; at < list.size(); ++at) {
                    CHECK(list[at].xp < larger[at].xp);
                    if (at == 0) continue;
                    if (size > 2 || book == &srd()) CHECK(list[at].xp > list[at - 1].xp);
                    CHECK(list[at].xp >= list[at - 1].xp);
                }
            }
        }
    }
    for (int level = 2; level <= 20; ++level)
        CHECK(
            budgets(srd(), party(1, level)).at("low") >
            budgets(srd(), party(1, level - 1)).at("low")
        );
}

TEST_CASE("budget: nonsense is refused in one sentence") {
    const auto said = [](const rules::Rulebook& book,
                         const std::vector<int>& levels,
                         const std::vector<Opponents>& opponents) {
        const auto rating = rules::rate_encounter(book, levels, opponents);
        return rating.ok() ? std::string("fine") : rating.error().message;
    };
    CHECK(said(four(), {}, {{1, 1}}) == "Nobody of the party is present.");
    CHECK(said(srd(), {}, {}) == "Nobody of the party is present.");
    CHECK(
        said(srd(), {1, 21}, {}) ==
        "A character of level 21 has no budget: the tables run from 1 to 20."
    );
    CHECK(said(four(), {0}, {}).find("level 0 has no budget") != std::string::npos);
    CHECK(said(four(), {3}, {{3, -1}}) == "Opponents are counted from 0 to 1000.");
    CHECK(said(four(), {3}, {{3, 1001}}) == "Opponents are counted from 0 to 1000.");
    CHECK(said(four(), {3}, {{2.5, 1}}) == "Levels are whole numbers.");
    CHECK(said(srd(), {3}, {{1e9, 1}}) == "That level is no level of an opponent.");
    CHECK(
        said(srd(), {3}, std::vector<Opponents>(7, {30, 1000})) ==
        "That is more XP than any fight is worth."
    );
}
