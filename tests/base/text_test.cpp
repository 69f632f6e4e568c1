#include "base/text.h"

#include <doctest/doctest.h>

TEST_CASE("text: traits are read as whole words, in any case") {
    CHECK(base::has_word("finesse, thrown 10 feet", "finesse"));
    CHECK(base::has_word("Agile, Finesse", "finesse"));
    CHECK(base::has_word("agile/finesse", "finesse"));
    CHECK(base::has_word("spell attack, range 60 feet", "spell"));
    CHECK_FALSE(base::has_word("spellbound blade", "spell"));
    CHECK_FALSE(base::has_word("nonfinesse", "finesse"));
    CHECK(base::has_word("nonfinesse, finesse", "finesse")); // the second one counts
    CHECK_FALSE(base::has_word("", "finesse"));
    CHECK_FALSE(base::has_word("agile", ""));
    CHECK_FALSE(base::has_word("\xC3\xA9spell", "spell")); // a letter with an accent before it
}

TEST_CASE("text: lower case leaves other letters alone") {
    CHECK(base::lowercase("2D8+7 \xC3\x84") == "2d8+7 \xC3\x84");
    CHECK(base::lowercase("").empty());
}

TEST_CASE("text: a long text is cut between characters") {
    CHECK(base::shortened("abcdef", 3) == "abc");
    CHECK(base::shortened("abc", 3) == "abc");
    CHECK(base::shortened("a\xC3\xA9z", 2) == "a"); // the second byte of the accent does not fit
    CHECK(base::shortened("a\xC3\xA9z", 3) == "a\xC3\xA9");
    CHECK(base::shortened("\xE2\x82\xAC", 2).empty());
}
