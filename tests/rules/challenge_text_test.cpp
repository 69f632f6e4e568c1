#include "rules/challenge_text.h"

#include <doctest/doctest.h>

TEST_CASE("challenge text: fractions and whole numbers as the document writes them") {
    // SRD 5.1, Monsters / Experience Points by Challenge Rating
    CHECK(rules::challenge_text(0) == "0");
    CHECK(rules::challenge_text(0.125) == "1/8");
    CHECK(rules::challenge_text(0.25) == "1/4");
    CHECK(rules::challenge_text(0.5) == "1/2");
    CHECK(rules::challenge_text(30) == "30");
    CHECK(rules::challenge_text(2.5) == "2.5"); // in no table; typed by hand
}
