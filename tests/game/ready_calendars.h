// The ready calendars, as the tests take them.
#pragma once

#include "store/calendars.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

// By its name: "Gregorian", "Salt Road Count", "Quay Reckoning".
inline game::Calendar ready_calendar(const std::string& name) {
    static const store::ReadyCalendars ready =
        store::load_calendars(std::string(TABLEWICK_SOURCE_DIR) + "/assets");
    const auto found = std::find_if(
        ready.calendars.begin(),
        ready.calendars.end(),
        [&](const game::Calendar& calendar) { return calendar.name == name; }
    );
    REQUIRE_MESSAGE(found != ready.calendars.end(), name);
    return *found;
}
