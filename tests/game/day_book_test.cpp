// Pages, timers, what falls due, and the world's clock set on by hand.
#include "game/date_text.h"
#include "game/day_book_keeping.h"
#include "game/fight_table.h"
#include "game/ready_calendars.h"
#include "game/time_passing.h"

namespace {

constexpr int hour = 3600;

struct Road {
    rules::Rulebook book = fight_table::rulebook_of(rules::Family::four_degree);
    game::Campaign campaign;
    base::Id orrin = base::no_id; // the combatant

    Road() {
        campaign.calendar = ready_calendar("Salt Road Count");
        campaign.clock = {12, 20 * hour, {}};
        game::Character character;
        character.name = "Orrin";
        character.statistics.hit_points = 30;
        game::add_character(campaign, character);
        orrin = campaign.encounter.combatants.front().id;
    }

    void effect(const std::string& name, int seconds) {
        game::ActiveCondition active;
        active.name = name;
        active.duration.kind = game::DurationKind::timed;
        active.duration.seconds_left = seconds;
        REQUIRE(game::add_condition(campaign.encounter, book, orrin, active));
    }

    std::size_t effects() const { return campaign.encounter.combatants.front().conditions.size(); }

    std::string pass(std::int64_t seconds) {
        const auto said = game::advance_time(campaign, book, seconds);
        return said.ok() ? said.value() : said.error().message;
    }

    std::string set(const game::Clock& time) {
        const auto said = game::set_time(campaign, book, time);
        return said.ok() ? said.value() : said.error().message;
    }
};

} // namespace

TEST_CASE("day book: one page a day, sorted, and an emptied page is gone") {
    game::DayBook book;
    game::write_page(book, 12, "Rain.");
    game::write_page(book, 3, "Set out.");
    game::write_page(book, 12, "Rain, and a toll.");
    CHECK(book.pages.size() == 2);
    CHECK(book.pages.front().day == 3);
    CHECK(game::page_text(book, 12) == "Rain, and a toll.");
    CHECK(game::page_text(book, 4).empty());
    game::write_page(book, 3, "");
    game::write_page(book, 4, "");
    CHECK(book.pages.size() == 1);
}

namespace {

// An evening of which one line was written on each of these days.
void write_notes(game::Campaign& campaign, const std::vector<std::pair<int, std::string>>& lines) {
    game::Session session;
    session.id = campaign.sessions.next_id++;
    for (const auto& [day, text] : lines) {
        game::NoteLine line;
        line.id = campaign.sessions.next_id++;
        line.day = day;
        line.text = text;
        session.lines.push_back(line);
    }
    campaign.sessions.sessions.push_back(session);
}

} // namespace

TEST_CASE("day book: days are found by page, note and timer, newest first") {
    game::Campaign campaign;
    game::DayBook& book = campaign.day_book;
    game::write_page(book, 1, "Hired a boat.\nThe Ferry sank.");
    game::write_page(book, 9, "Paid for the ferry.");
    game::write_page(book, 5, "Nothing.");
    write_notes(campaign, {{5, "The FERRYMAN lies."}, {6, "Rain."}});
    game::add_day_timer(book, "ferry leaves", {20, 0, {}});
    CHECK(game::search_days(campaign, "FERRY") == std::vector<std::int64_t>{20, 9, 5, 1});
    CHECK(game::search_days(campaign, "").empty());
    CHECK(game::search_days(campaign, "dragon").empty());
    CHECK(game::found_line(campaign, 1, "ferry") == "The Ferry sank.");
    CHECK(game::found_line(campaign, 5, "ferry") == "The FERRYMAN lies.");
    CHECK(game::found_line(campaign, 20, "ferry") == "ferry leaves");
}

TEST_CASE("day book: a day has the lines that every evening wrote on it") {
    game::Campaign campaign;
    write_notes(campaign, {{4, "Set out."}, {5, "Rain."}});
    write_notes(campaign, {{5, "Still the same night."}});
    const auto notes = game::notes_of_day(campaign.sessions, 5);
    REQUIRE(notes.size() == 2);
    CHECK(notes[0].line->text == "Rain.");
    CHECK(notes[1].line->text == "Still the same night.");
    CHECK(notes[1].session->id != notes[0].session->id);
    CHECK(game::notes_of_day(campaign.sessions, 6).empty());
    const game::BookFacts facts =
        game::book_facts(campaign, fight_table::rulebook_of(rules::Family::srd5));
    CHECK(game::day_marks(campaign, facts, 5).has_text);
    CHECK_FALSE(game::day_marks(campaign, facts, 6).has_text);
}

TEST_CASE("day book: timers stand soonest first, are ticked off and taken back") {
    game::DayBook book;
    const base::Id debt = game::add_day_timer(book, "debt", {20, 0, {}});
    const base::Id fish = game::add_day_timer(book, "fish spoils", {13, 6 * hour, {}});
    CHECK(game::add_day_timer(book, "", {13, 0, {}}) == base::no_id);
    CHECK(book.timers.front().id == fish);
    game::set_day_timer_done(book, debt, true);
    CHECK(book.timers.back().is_done);
    game::remove_day_timer(book, fish);
    CHECK(book.timers.size() == 1);
}

TEST_CASE("day book: what ends is listed by when, timers and conditions together") {
    Road road;
    road.effect("Haste", 10 * hour);
    game::add_day_timer(road.campaign.day_book, "fish spoils", {13, 7 * hour, {}});
    game::add_day_timer(road.campaign.day_book, "arrival", {13, 5 * hour, {}});
    const game::BookFacts facts = game::book_facts(road.campaign, road.book);
    const std::vector<game::DueEntry>& due = facts.due;
    REQUIRE(due.size() == 3);
    CHECK(due[0].text == "arrival");
    CHECK(due[1].text == "Orrin: Haste ends");
    CHECK(due[1].at == game::Clock{13, 6 * hour, {}});
    CHECK(due[2].text == "fish spoils");
    CHECK(game::time_left_text(road.campaign.clock, due[1].at) == "in 10 hours");
    CHECK(game::time_left_text({14, 8 * hour, {}}, due[1].at) == "1 day late");
    CHECK(game::time_left_text({13, 5 * hour, {}}, {13, 5 * hour + 30, {}}) == "in 1 minute");
    const game::DayMarks marks = game::day_marks(road.campaign, facts, 13);
    CHECK(marks.has_due);
    CHECK_FALSE(marks.is_today);
    CHECK(game::day_marks(road.campaign, facts, 12).is_today);
    CHECK(game::day_marks(road.campaign, facts, 14).has_holiday); // Causeway Day
    CHECK(game::day_marks(road.campaign, facts, 9).has_new_moon); // of the Ember Moon
}

TEST_CASE("time passes: forward it ends conditions and calls what is due, over midnight") {
    Road road;
    road.effect("Haste", 10 * hour);
    road.effect("Ward", 30 * hour);
    game::add_day_timer(road.campaign.day_book, "fish spoils", {13, 6 * hour, {}});
    CHECK(road.pass(600) == "On to 12 Reedmonth, 20:10");
    CHECK(road.pass(10 * hour) == "On to 13 Reedmonth, 06:10; Orrin: Haste ends; due: fish spoils");
    CHECK(road.effects() == 1);
    CHECK(road.pass(0) == "On to 13 Reedmonth, 06:10"); // nothing comes due twice
    CHECK(road.pass(-1) == "That is too far away.");
}

TEST_CASE("time passes: years at a stretch, and no further than dates go") {
    Road road;
    road.effect("Curse", 1'000'000);
    CHECK(road.pass(100'000LL * 86'400) == "On to 19 Rimemonth, 20:00; Orrin: Curse ends");
    CHECK(road.campaign.clock.day == 100'012);
    CHECK(road.pass(2'000'000'000LL * 86'400) == "That is too far away.");
    CHECK(road.campaign.clock.day == 100'012);
}

TEST_CASE("time set back: nothing that ended comes to life, what runs keeps its time") {
    Road road;
    road.effect("Haste", hour);
    road.effect("Ward", 40 * hour);
    CHECK(road.set({13, 8 * hour, {}}) == "On to 13 Reedmonth, 08:00; Orrin: Haste ends");
    CHECK(road.set({10, 9 * hour, {}}) == "Back to 10 Reedmonth, 09:00");
    CHECK(road.effects() == 1);
    CHECK(
        road.campaign.encounter.combatants.front().conditions.front().duration.seconds_left ==
        28 * hour
    );
}

TEST_CASE("time passes: dawn and dusk by the calendar, the next ones to come") {
    const game::Calendar calendar = ready_calendar("Quay Reckoning"); // 6:30 and 19:30
    CHECK(game::next_dawn(calendar, {3, 5 * hour, {}}) == game::Clock{3, 6 * hour + 1800, {}});
    CHECK(
        game::next_dawn(calendar, {3, 6 * hour + 1800, {}}) == game::Clock{4, 6 * hour + 1800, {}}
    );
    CHECK(game::next_dusk(calendar, {3, 5 * hour, {}}) == game::Clock{3, 19 * hour + 1800, {}});
    CHECK(game::next_dusk({}, {3, 5 * hour, {}}) == game::Clock{3, 18 * hour, {}});
}

TEST_CASE("time passes: a fight rolls the date over midnight, and nobody sets the clock meanwhile"
) {
    fight_table::Table table(rules::Family::four_degree);
    table.campaign.calendar = ready_calendar("Salt Road Count");
    table.campaign.clock = {28, 24 * hour - 6, {}};
    table.hero("Ysolde", 30, 18);
    table.foe("Lurker", 20, 15);
    table.initiative("Ysolde", 20);
    table.initiative("Lurker", 10);
    REQUIRE(game::begin_fight(table.campaign.encounter, table.rulebook));
    CHECK(game::date_time_text(table.campaign) == "28 Reedmonth 1204 AE, 23:59");
    while (table.campaign.encounter.round < 2)
        game::advance_turn(table.campaign.encounter, table.rulebook);
    CHECK(game::date_time_text(table.campaign) == "1 Mistmonth 1204 AE, 00:00");
    const auto said = game::advance_time(table.campaign, table.rulebook, 600);
    REQUIRE_FALSE(said.ok());
    CHECK(said.error().message == "Not while a fight is on; its rounds move the time.");
    CHECK_FALSE(game::set_time(table.campaign, table.rulebook, {1, 0, {}}).ok());
    game::end_fight(table.campaign, table.rulebook);
    CHECK(game::date_time_text(table.campaign) == "1 Mistmonth 1204 AE, 00:00");
    CHECK((table.campaign.clock == game::Clock{29, 0, {}}));
}

TEST_CASE("day book: the lines of the history that belong to a day") {
    game::History history;
    for (const std::int64_t day : {1, 2, 2, 3})
        history.lines.push_back({1, "Hurt", 0, day, 0, "", {}});
    CHECK(game::history_of_day(history, 2) == std::vector<std::size_t>{1, 2});
    CHECK(game::history_of_day(history, 9).empty());
}
