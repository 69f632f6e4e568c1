#include "base/result.h"

#include <doctest/doctest.h>

TEST_CASE("result: an error says what, where and what now, leaving out what is unknown") {
    using base::Error;
    using base::ErrorKind;
    CHECK(
        to_text(Error{
            ErrorKind::wrong_type,
            "Hit points must be a whole number.",
            {"demo.json", 3, 7, "/party/2/hp"},
            "Open a backup."}) ==
        "demo.json:3:7 (/party/2/hp): Hit points must be a whole number. Open a backup."
    );
    CHECK(
        to_text(Error{ErrorKind::wrong_type, "It is wrong.", {"", 3, 7, ""}, ""}) ==
        "line 3, column 7: It is wrong."
    );
    CHECK(
        to_text(Error{ErrorKind::wrong_type, "It is wrong.", {"", 0, 0, "/a"}, ""}) ==
        "(/a): It is wrong."
    );
    CHECK(to_text(Error{ErrorKind::wrong_type, "It is wrong.", {}, ""}) == "It is wrong.");
}

TEST_CASE("result: a value or an error, never both") {
    const base::Result<int> good = 7;
    const base::Result<int> bad = base::Error{base::ErrorKind::not_found, "There is none.", {}, ""};
    CHECK(good.ok());
    CHECK(good.value() == 7);
    CHECK_FALSE(bad.ok());
    CHECK(bad.error().kind == base::ErrorKind::not_found);
}
