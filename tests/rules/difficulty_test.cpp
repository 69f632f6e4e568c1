#include "books.h"
#include "rules/difficulty.h"

namespace {

int level_dc(int level, const std::vector<std::string>& adjustments = {}) {
    static const rules::Rulebook book = four_degree_book();
    const auto dc = rules::dc_for_level(book, level, adjustments);
    REQUIRE(dc.ok());
    return dc.value();
}

} // namespace

TEST_CASE("difficulty: the DC of every level, against the published table") {
    // GM Core (ORC), table DCs by Level, levels 0 to 25.
    const std::vector<int> published = {14, 15, 16, 18, 19, 20, 22, 23, 24, 26, 27, 28, 30,
                                        31, 32, 34, 35, 36, 38, 39, 40, 42, 44, 46, 48, 50};
    for (std::size_t level = 0; level < published.size(); ++level) {
        CAPTURE(level);
        CHECK(level_dc(static_cast<int>(level)) == published[level]);
    }
}

TEST_CASE("difficulty: the DC of every spell rank is that of the level it comes with") {
    // GM Core (ORC), table DCs by Level (spell rank columns).
    const std::vector<int> published = {15, 18, 20, 23, 26, 28, 31, 34, 36, 39};
    const rules::Rulebook book = four_degree_book();
    for (int rank = 1; rank <= 10; ++rank) {
        CAPTURE(rank);
        const auto dc = rules::dc_for_spell_rank(book, rank);
        REQUIRE(dc.ok());
        CHECK(dc.value() == published[static_cast<std::size_t>(rank - 1)]);
        CHECK(dc.value() == level_dc(2 * rank - 1));
    }
}

TEST_CASE("difficulty: simple DCs and typical DCs, easiest first") {
    // GM Core (ORC), table Simple DCs.
    const rules::Rulebook four = four_degree_book();
    CHECK(rules::simple_dc(four, "untrained").value() == 10);
    CHECK(rules::simple_dc(four, "trained").value() == 15);
    CHECK(rules::simple_dc(four, "expert").value() == 20);
    CHECK(rules::simple_dc(four, "master").value() == 30);
    CHECK(rules::simple_dc(four, "legendary").value() == 40);
    // SRD 5.1 and 5.2.1, Ability Checks / Typical Difficulty Classes.
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const rules::Rulebook srd = srd_book(edition);
        CHECK(rules::simple_dc(srd, "very_easy").value() == 5);
        CHECK(rules::simple_dc(srd, "easy").value() == 10);
        CHECK(rules::simple_dc(srd, "medium").value() == 15);
        CHECK(rules::simple_dc(srd, "hard").value() == 20);
        CHECK(rules::simple_dc(srd, "very_hard").value() == 25);
        CHECK(rules::simple_dc(srd, "nearly_impossible").value() == 30);
    }
}

TEST_CASE("difficulty: steps and rarities move a DC, and add up") {
    // Worked example dc-02: GM Core (ORC), tables DCs by Level and DC Adjustments.
    const rules::Rulebook book = four_degree_book();
    CHECK(rules::dc_for_spell_rank(book, 3, {"rare"}).value() == 25);
    // GM Core (ORC), table DC Adjustments (from memory, agreeing with a second recollection).
    const std::vector<std::pair<std::string, int>> published = {
        {"incredibly_easy", -10},
        {"very_easy", -5},
        {"easy", -2},
        {"normal", 0},
        {"hard", 2},
        {"very_hard", 5},
        {"incredibly_hard", 10},
        {"common", 0},
        {"uncommon", 2},
        {"rare", 5},
        {"unique", 10},
    };
    for (const auto& row : published) {
        CAPTURE(row.first);
        CHECK(level_dc(5, {row.first}) == 20 + row.second);
        CHECK(rules::simple_dc(book, "expert", {row.first}).value() == 20 + row.second);
    }
    CHECK(level_dc(5, {"rare", "easy"}) == 23);
    CHECK(rules::dc_adjustment(book, {}).value() == 0);
}

TEST_CASE("difficulty: every list the screen shows, with its source, moved as a whole") {
    const rules::Rulebook four = four_degree_book();
    const std::vector<rules::DcList> lists = rules::dc_lists(four);
    REQUIRE(lists.size() == 3);
    CHECK(lists[0].title == "By level");
    CHECK(lists[0].source == "GM Core (ORC), table DCs by Level");
    CHECK(lists[0].rows.size() == 26);
    CHECK(lists[0].rows[7] == rules::NamedDc{"7", "level 7", 23});
    CHECK(lists[1].rows[2] == rules::NamedDc{"3", "rank 3", 20});
    CHECK(lists[2].rows[2] == rules::NamedDc{"expert", "expert", 20});
    const std::vector<rules::DcList> harder = rules::dc_lists(four, 5);
    for (std::size_t list = 0; list < lists.size(); ++list) {
        for (std::size_t row = 0; row < lists[list].rows.size(); ++row) {
            CHECK(harder[list].rows[row].dc == lists[list].rows[row].dc + 5);
            // Harder from row to row: a level, a rank and a proficiency more never make it easier.
            if (row > 0) CHECK(lists[list].rows[row].dc > lists[list].rows[row - 1].dc);
        }
    }
    const std::vector<rules::DcList> srd = rules::dc_lists(srd_book(rules::SrdEdition::srd_5_2_1));
    REQUIRE(srd.size() == 2);
    CHECK(srd[0].title == "Typical");
    CHECK(srd[0].rows[4] == rules::NamedDc{"very_hard", "very hard", 25});
}

TEST_CASE("difficulty: a row that the GM replaced is found by its pointer") {
    rules::Rulebook book = four_degree_book();
    book.house_ruled = {
        {"/dc_adjustments/rarities/2/amount"},
        {"/dc_by_level/rows/7/dc"},
        {"/simple_dc/rows/2/dc"}};
    CHECK(rules::is_house_ruled_adjustment(book, "rare"));
    CHECK_FALSE(rules::is_house_ruled_adjustment(book, "hard"));
    CHECK_FALSE(rules::is_house_ruled_adjustment(book, "mean"));
    for (const rules::DcList& list : rules::dc_lists(book, 2)) {
        REQUIRE(list.pointers.size() == list.rows.size());
        for (std::size_t row = 0; row < list.rows.size(); ++row) {
            const bool is_replaced =
                list.rows[row].name == "level 7" || list.rows[row].name == "expert";
            CAPTURE(list.rows[row].name);
            CHECK(rules::is_house_ruled(book, list.pointers[row]) == is_replaced);
        }
    }
}

TEST_CASE("difficulty: traps of srd5, against the published tables") {
    // SRD 5.1, Traps: Trap Save DCs and Attack Bonuses; Damage Severity by Level.
    const rules::Rulebook book = srd_book(rules::SrdEdition::srd_5_1);
    const std::vector<rules::TrapDanger> published = {
        {"setback", "setback", 10, 11, 3, 5},
        {"dangerous", "dangerous", 12, 15, 6, 8},
        {"deadly", "deadly", 16, 20, 9, 12}};
    CHECK(book.difficulty.traps.dangers == published);
    const rules::DcList saves = rules::dc_lists(book).back();
    CHECK(saves.title == "Saves against traps");
    CHECK(saves.rows[2] == rules::NamedDc{"dangerous_min", "dangerous, at least", 12});
    CHECK(saves.rows[5] == rules::NamedDc{"deadly_max", "deadly, at most", 20});
    CHECK(saves.pointers[5] == "/traps/dangers/2/save_dc_max");
    const std::vector<std::pair<int, std::vector<std::string>>> damage = {
        {1, {"1d10", "2d10", "4d10"}},
        {4, {"1d10", "2d10", "4d10"}},
        {5, {"2d10", "4d10", "10d10"}},
        {10, {"2d10", "4d10", "10d10"}},
        {11, {"4d10", "10d10", "18d10"}},
        {16, {"4d10", "10d10", "18d10"}},
        {17, {"10d10", "18d10", "24d10"}},
        {20, {"10d10", "18d10", "24d10"}}};
    for (const auto& [level, dice] : damage) {
        CAPTURE(level);
        const rules::TrapDamage* row = rules::trap_damage(book, level);
        REQUIRE(row != nullptr);
        REQUIRE(row->damage.size() == dice.size());
        for (std::size_t at = 0; at < dice.size(); ++at)
            CHECK(rules::to_text(row->damage[at]) == dice[at]);
    }
    CHECK(rules::trap_damage(book, 0) == nullptr);
    CHECK(rules::trap_damage(book, 21) == nullptr);
    CHECK(rules::trap_damage(four_degree_book(), 3) == nullptr);
}

TEST_CASE("difficulty: what the tables do not hold is said, never guessed") {
    const rules::Rulebook four = four_degree_book();
    const auto high = rules::dc_for_level(four, 26);
    REQUIRE_FALSE(high.ok());
    CHECK(high.error().kind == base::ErrorKind::out_of_range);
    CHECK(high.error().message == "There is no DC for level 26: the table runs from 0 to 25.");
    CHECK_FALSE(rules::dc_for_level(four, -1).ok());
    CHECK_FALSE(rules::dc_for_spell_rank(four, 0).ok());
    CHECK_FALSE(rules::dc_for_spell_rank(four, 11).ok());
    const auto unknown = rules::dc_for_level(four, 3, {"hard", "mean"});
    REQUIRE_FALSE(unknown.ok());
    CHECK(unknown.error().kind == base::ErrorKind::not_found);
    CHECK(unknown.error().message == "This rulebook has no DC adjustment \"mean\".");
    CHECK_FALSE(rules::simple_dc(four, "medium").ok());
    CHECK_FALSE(rules::simple_dc(four, "expert", {"mean"}).ok());
    const rules::Rulebook srd = srd_book(rules::SrdEdition::srd_5_1);
    const auto level = rules::dc_for_level(srd, 3);
    REQUIRE_FALSE(level.ok());
    CHECK(level.error().kind == base::ErrorKind::not_possible);
    CHECK(level.error().message == "This rulebook has no DCs by level.");
    CHECK_FALSE(rules::simple_dc(srd, "hard", {"rare"}).ok());
}
