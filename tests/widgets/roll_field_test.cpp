#include "widgets/roll_field.h"

#include <doctest/doctest.h>

using widgets::whole_number;

TEST_CASE("roll field: reads what a hand types for a whole number") {
    CHECK(whole_number("17") == 17);
    CHECK(whole_number(" +4 ") == 4);
    CHECK(whole_number("-3") == -3);
    CHECK_FALSE(whole_number("").has_value());
    CHECK_FALSE(whole_number("1d20").has_value());
    CHECK_FALSE(whole_number("+-3").has_value());
    CHECK_FALSE(whole_number("99999999999").has_value());
    CHECK_FALSE(whole_number("1.5").has_value());
}
