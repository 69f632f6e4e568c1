#include "print/page_kinds.h"

#include "print/pages.h"

namespace print {

const std::vector<PageKind>& page_kinds() {
    static const std::vector<PageKind> kinds{
        {"names", "Names", "unused names to tick off", "a list of names", names_page},
        {"session-plan",
         "Session plan",
         "what is planned, with boxes to tick",
         "number of a session",
         session_plan_page},
        {"notes", "Notes", "the running notes", "number of a session, or blank", notes_page},
        {"recap",
         "Recap Page",
         "what happened, for the players",
         "number of a session, or blank",
         recap_page},
        {"party", "Party defences", "everybody's numbers side by side", "", party_page},
        {"initiative",
         "Initiative board",
         "the fight as it stands, with room to write",
         "blank",
         initiative_page},
        {"creatures",
         "Creature cards",
         "the shelf as cards to cut out",
         "shelf, register, fight, or the name of an open creature",
         creature_cards},
        {"conditions", "Condition cards", "what is in play, as cards", "all", condition_cards},
        {"difficulty", "Difficulty", "the DCs of the rulebook", "", difficulty_page},
        {"encounters", "Encounters", "budgets and XP of the rulebook", "", encounter_page},
        {"month", "Month", "a month of the calendar", "a date, or blank", month_page},
        {"week", "Week", "a week with room to write", "a date, or blank", week_page},
        {"staves",
         "Staff calendar",
         "a week or month of five-line staves to draw along",
         "week or month, then a date, or blank",
         staff_calendar_page},
        {"reminders", "Reminders", "what each player can do, to tick off", "", reminders_page},
        {"register", "Register", "people, places and things", "a kind or a name", register_page},
        {"characters",
         "Characters",
         "a sheet a player reads at a glance, and a pack to fill",
         "name of a character",
         character_page},
        {"treasure", "Treasure", "what the party owns and who carries it", "", treasure_page},
        {"prices", "Prices", "the price list", "a kind of goods", prices_page},
        {"weather", "Weather", "the days ahead where the party is", "", weather_page},
        {"paper",
         "Blank paper",
         "squares, hexes, dots, lines or staves",
         "squares, hexes, dots, lines, staves",
         ruled_page},
        {"divider",
         "Divider",
         "a page that begins a part of a binder",
         "TITLE, then | and reeds, waves, branch, stars, knot or spirals, then | and a picture's "
         "file",
         divider_page},
        {"handout",
         "Handout",
         "your own picture or letter for the players",
         "a picture's file, then | and a text",
         handout_page},
    };
    return kinds;
}

const PageKind* find_page_kind(std::string_view key) {
    for (const PageKind& kind : page_kinds())
        if (kind.key == key) return &kind;
    return nullptr;
}

} // namespace print
