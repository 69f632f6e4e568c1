#include "app/preferences.h"

#include <doctest/doctest.h>

using app::Preferences;
using app::preferences_from_json;

TEST_CASE("preferences: what a person chose comes back") {
    Preferences chosen;
    chosen.theme = widgets::ThemeName::paper;
    chosen.text_scale_percent = 140;
    chosen.is_touch = true;
    chosen.width = 1920;
    chosen.height = 1200;
    const app::ReadPreferences read = preferences_from_json(app::to_json(chosen));
    CHECK(read.preferences == chosen);
    CHECK(read.complaints.empty());
    CHECK(preferences_from_json(app::to_json(Preferences())).preferences == Preferences());
}

TEST_CASE("preferences: an older file that knows less keeps the usual values for the rest") {
    const app::ReadPreferences read = preferences_from_json(R"({"theme": "paper"})");
    CHECK(read.preferences.theme == widgets::ThemeName::paper);
    CHECK(read.preferences.text_scale_percent == 100);
    CHECK(read.complaints.empty());
}

TEST_CASE("preferences: nonsense keeps the usual value and says so in one line") {
    struct Row {
        const char* text;
        const char* complaint;
    };

    for (const Row& row : {
             Row{R"({"theme": "plaid"})", "Preferences: theme is \"dark\" or \"paper\"."},
             Row{R"({"theme": 3})", "Preferences: theme is \"dark\" or \"paper\"."},
             Row{R"({"touch": "yes"})", "Preferences: touch is true or false."},
             Row{R"({"text_scale_percent": 1e9})",
                 "Preferences: text_scale_percent is a whole number of 80 to 250."},
             Row{R"({"text_scale_percent": 79})",
                 "Preferences: text_scale_percent is a whole number of 80 to 250."},
             Row{R"({"width": -4})", "Preferences: width is a whole number of 320 to 16384."},
             Row{R"({"height": 99999999999999})",
                 "Preferences: height is a whole number of 320 to 16384."},
             Row{"not json",
                 "Your preferences cannot be read, so the program starts with the usual ones."},
         }) {
        CAPTURE(row.text);
        const app::ReadPreferences read = preferences_from_json(row.text);
        CHECK(read.preferences == Preferences());
        REQUIRE(read.complaints.size() == 1);
        CHECK(read.complaints[0] == row.complaint);
    }
}

TEST_CASE("preferences: text grows and shrinks by tens, within 80 to 250 per cent") {
    CHECK(app::text_scale_after(100, 1) == 110);
    CHECK(app::text_scale_after(100, -1) == 90);
    CHECK(app::text_scale_after(80, -1) == 80);
    CHECK(app::text_scale_after(245, 1) == 250);
    CHECK(app::text_scale_after(250, 1) == 250);
}
