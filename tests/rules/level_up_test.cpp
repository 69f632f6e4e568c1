#include "books.h"
#include "rules/level_up.h"

namespace {

using rules::LevelUp;

LevelUp gained(const rules::Rulebook& book, int level, int xp, int gained, const char* pace = "") {
    const auto after = rules::gain_xp(book, level, xp, gained, pace);
    REQUIRE(after.ok());
    return after.value();
}

} // namespace

TEST_CASE("level up: four-degree, 1,000 XP a level, the rest carries over") {
    const rules::Rulebook book = four_degree_book();
    // Worked example enc-10: 940 XP, an encounter of 80 and a moderate accomplishment of 30. GM
    // Core (ORC), experience points.
    const int award = book.advancement.awards[1].xp;
    CHECK(award == 30);
    CHECK(gained(book, 3, 940, 80 + award) == LevelUp{4, 50, 1, 950});
    CHECK(gained(book, 3, 0, 999) == LevelUp{3, 999, 0, 1});
    CHECK(gained(book, 3, 999, 1) == LevelUp{4, 0, 1, 1000});
    CHECK(gained(book, 1, 0, 2500) == LevelUp{3, 500, 2, 500});
    CHECK(gained(book, 5, 120, 0) == LevelUp{5, 120, 0, 880});
    // At the last level XP only adds up.
    CHECK(gained(book, 20, 900, 300) == LevelUp{20, 1200, 0, std::nullopt});
    CHECK(gained(book, 19, 900, 1300) == LevelUp{20, 1200, 1, std::nullopt});
    // GM Core (ORC), experience points (from memory): 800 and 1,200 for a faster or slower pace.
    CHECK(gained(book, 1, 0, 800, "fast") == LevelUp{2, 0, 1, 800});
    CHECK(gained(book, 1, 0, 1199, "slow") == LevelUp{1, 1199, 0, 1});
}

TEST_CASE("level up: accomplishments, against the published awards") {
    // GM Core (ORC), table XP Awards (accomplishments).
    const rules::Rulebook book = four_degree_book();
    REQUIRE(book.advancement.awards.size() == 3);
    CHECK(book.advancement.awards[0].xp == 10);
    CHECK_FALSE(book.advancement.awards[0].earns_hero_point);
    CHECK(book.advancement.awards[2].xp == 80);
    CHECK(book.advancement.awards[2].earns_hero_point);
}

TEST_CASE("level up: srd5 counts all XP ever gained") {
    // SRD 5.1, Beyond 1st Level / Character Advancement (SRD 5.2.1: same figures).
    const std::vector<int> published = {0,      300,    900,    2700,   6500,   14000,  23000,
                                        34000,  48000,  64000,  85000,  100000, 120000, 140000,
                                        165000, 195000, 225000, 265000, 305000, 355000};
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const rules::Rulebook book = srd_book(edition);
        for (int level = 2; level <= 20; ++level) {
            CAPTURE(level);
            const int needed = published[static_cast<std::size_t>(level - 1)];
            CHECK(gained(book, 1, 0, needed).level == level);
            CHECK(gained(book, 1, needed - 1, 0) == LevelUp{level - 1, needed - 1, level - 2, 1});
        }
        CHECK(gained(book, 3, 900, 1800) == LevelUp{4, 2700, 1, 3800});
        CHECK(gained(book, 20, 400000, 5) == LevelUp{20, 400005, 0, std::nullopt});
        // A level granted without XP stays.
        CHECK(gained(book, 5, 900, 100) == LevelUp{5, 1000, 0, 13000});
    }
}

TEST_CASE("level up: nonsense is refused in one sentence") {
    const rules::Rulebook four = four_degree_book();
    const rules::Rulebook srd = srd_book(rules::SrdEdition::srd_5_1);
    const auto said = [](const rules::Rulebook& book, int level, int xp, int gain, const char* pace
                      ) {
        const auto after = rules::gain_xp(book, level, xp, gain, pace);
        return after.ok() ? std::string("fine") : after.error().message;
    };
    CHECK(said(four, 0, 0, 10, "") == "Characters have levels from 1 to 20.");
    CHECK(said(srd, 21, 0, 10, "") == "Characters have levels from 1 to 20.");
    CHECK(said(four, 1, -1, 10, "") == "Experience points run from 0 to 100000000.");
    CHECK(said(four, 1, 0, -10, "") == "Experience points run from 0 to 100000000.");
    CHECK(said(srd, 1, 2, 100'000'000, "").find("run from 0") != std::string::npos);
    CHECK(said(four, 1, 0, 1, "brisk") == "This rulebook has no pace of advancement \"brisk\".");
    CHECK(said(srd, 1, 0, 1, "fast") == "This rulebook has no pace of advancement \"fast\".");
}
