// Texts of any script. Values are those of the Unicode Character Database and of the annexes named
// beside them (Unicode Standard).
#include "base/unicode.h"

#include <doctest/doctest.h>

TEST_CASE("unicode: the same name in another case is the same name") {
    // CaseFolding.txt: 00DF F 0073 0073; 1E9E F 0073 0073; 03C2 C 03C3; 0130 F 0069 0307.
    CHECK(base::folded("Stra\u00DFe") == "strasse");
    CHECK(base::folded("\u1E9E") == "ss");
    CHECK(base::folded("\u03C2") == "\u03C3");
    CHECK(base::folded("\u0130") == "i\u0307");
    CHECK(base::folded("\u00C9lan") == base::folded("\u00E9LAN"));
    CHECK(
        base::folded("\u0410\u0412\u0415\u041B\u042C\u042F") ==
        "\u0430\u0432\u0435\u043B\u044C\u044F"
    );
}

TEST_CASE("unicode: a mark typed apart is the letter with its mark") {
    // UAX #15, figure 3: 212B (angstrom sign) composes to 00C5; figure 4: 1E0B 0323 to 1E0D 0307.
    CHECK(base::composed("\u212B") == "\u00C5");
    CHECK(base::composed("\u1E0B\u0323") == "\u1E0D\u0307");
    CHECK(base::composed("e\u0301") == "\u00E9");
    CHECK(base::folded("E\u0301") == "\u00E9");
}

TEST_CASE("unicode: letters alone, without marks, signs and spaces") {
    CHECK(base::letters_only("\u00D1\u00E1 O'Rh\u00E9 2") == U"naorhe");
    // UAX #15, figure 6: 1E9B 0323 under NFKD is 0073 0323 0307, so the letter alone is s.
    CHECK(base::letters_only("\u1E9B\u0323") == U"s");
    CHECK(base::letters_only("\uFB01n") == U"fin"); // UnicodeData.txt: FB01 <compat> 0066 0069
    CHECK(base::letters_only("12 -- !").empty());
}

TEST_CASE("unicode: words as one looks for them") {
    using Words = std::vector<std::u32string>;
    CHECK(
        base::search_words("\u00D1\u00E1 O'Rh\u00E9, 12 crowns") ==
        Words{U"na", U"orhe", U"12", U"crowns"}
    );
    CHECK(base::search_words("d20+7 half-elf") == Words{U"d20", U"7", U"half", U"elf"});
    CHECK(base::search_words("Brack\u2019s STRA\u00DFE") == Words{U"bracks", U"strasse"});
    // UnicodeData.txt: FB01 <compat> 0066 0069; CaseFolding.txt: 0410 C 0430.
    CHECK(base::search_words("\uFB01n \u0410") == Words{U"fin", U"\u0430"});
    CHECK(base::search_words("\xff -- !").empty());
}

TEST_CASE("unicode: characters as a reader counts them") {
    CHECK(base::graphemes("e\u0301a") == std::vector<std::string>{"e\u0301", "a"});
    // GraphemeBreakTest.txt: regional indicators pair, Hangul syllables hold together.
    CHECK(base::graphemes("\U0001F1E6\U0001F1E7\U0001F1E8").size() == 2);
    CHECK(base::graphemes("\u1100\u1161\u11A8").size() == 1);
    CHECK(base::graphemes("").empty());
}

TEST_CASE("unicode: bytes that are no text are told and do no harm") {
    CHECK(base::is_utf8("\u00E9"));
    CHECK(base::is_utf8(""));
    CHECK_FALSE(base::is_utf8("\xC3"));
    CHECK_FALSE(base::is_utf8("\xED\xA0\x80")); // a surrogate: Unicode Standard, table 3-7
    CHECK_FALSE(base::is_utf8("\xC0\xAF"));     // overlong: the same table
    CHECK(base::folded("A\xFF") == "a\uFFFD");
    CHECK(base::graphemes("\xFF\xFE").size() == 2);
}

TEST_CASE("unicode: every word begins with a capital") {
    CHECK(base::capitalised("\u00E5lvra") == "\u00C5lvra");
    CHECK(base::capitalised("half-ear of the reeds") == "Half-Ear Of The Reeds");
    CHECK(base::capitalised("").empty());
}
