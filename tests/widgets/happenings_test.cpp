// What happened: read, searched and taken back as a game master does.
#include "driver.h"
#include "fixtures.h"
#include "widgets/happenings.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <ctime>

using HappeningsDriver = driver::PanelDriver<widgets::HappeningsView>;

namespace {

// A fixed clock of the person, so that the texts are the same on every machine: an hour ahead of
// Greenwich, in the notation of POSIX.
struct ClockOfThePerson {
    ClockOfThePerson() {
        setenv("TZ", "TBL-1", 1);
        tzset();
    }
};

HappeningsDriver opened(game::Campaign campaign) {
    static const ClockOfThePerson clock;
    return {std::move(campaign), fixtures::four_degree(), widgets::draw_happenings};
}

game::Campaign with_lines(int count) {
    game::Campaign campaign = fixtures::sluice_campaign();
    for (int i = 1; i <= count; ++i) {
        game::HistoryLine line;
        line.revision = static_cast<std::uint64_t>(i);
        line.label = "Change number " + std::to_string(i);
        line.day = 12;
        line.second_of_day = 18 * 3600 + 4 * 60;
        line.written_at = "2026-01-31T19:04:05Z";
        campaign.history.lines.push_back(line);
    }
    return campaign;
}

void edit(HappeningsDriver& ui, const std::string& title) {
    game::Edit edit;
    edit.sections = {game::Section::about};
    edit.label = "Name the campaign " + title;
    edit.change = [title](game::Campaign& campaign) {
        campaign.about.title = title;
        return std::string();
    };
    REQUIRE(ui.document.edit(edit).ok());
    ui.frames(2);
}

} // namespace

TEST_CASE("happenings: before anything happened the panel says what it is for") {
    auto ui = opened(with_lines(0));
    CHECK(ui.shows("Nothing has happened yet."));
    CHECK_FALSE(ui.has("Undo"));
}

TEST_CASE("happenings: the newest change stands on top, with round, in-world and real time") {
    game::Campaign campaign = with_lines(2);
    campaign.history.lines.back().round = 3;
    auto ui = opened(campaign);
    const std::string text = ui.text();
    CHECK(text.find("Change number 2") < text.find("Change number 1"));
    CHECK(text.find("Round 3, Day 12, 18:04") != std::string::npos);
    CHECK(text.find("2026-01-31 20:04") != std::string::npos);
}

TEST_CASE("happenings: a time in a form of its own is shown as it stands") {
    game::Campaign campaign = with_lines(1);
    campaign.history.lines.back().written_at = "the third evening";
    auto ui = opened(campaign);
    CHECK(ui.shows("the third evening"));
}

TEST_CASE("happenings: a change is taken back and done again from here") {
    auto ui = opened(with_lines(1));
    CHECK_FALSE(ui.campaign().about.title == "Low Water");
    const std::string before = ui.campaign().about.title;
    edit(ui, "Low Water");
    CHECK(ui.shows("Name the campaign Low Water"));
    ui.click("Undo");
    CHECK(ui.campaign().about.title == before);
    ui.click("Redo");
    CHECK(ui.campaign().about.title == "Low Water");
}

TEST_CASE("happenings: a campaign open for reading only takes nothing back and says why") {
    auto ui = opened(with_lines(1));
    edit(ui, "Low Water");
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Undo"));
    ui.hover("Undo");
    CHECK(ui.shows("The campaign is open for reading only."));
}

TEST_CASE("happenings: the search finds upper and lower case alike, and says when nothing fits") {
    auto ui = opened(with_lines(12));
    ui.fill("##search", "NUMBER 12");
    CHECK(ui.shows("Change number 12"));
    CHECK_FALSE(ui.shows("Change number 3"));
    ui.fill("##search", "flood");
    CHECK(ui.shows("Nothing that happened contains \"flood\"."));
    ui.click("Clear");
    CHECK(ui.shows("Change number 12"));
}

TEST_CASE("happenings: five thousand lines are scrolled like five") {
    auto ui = opened(with_lines(5000));
    CHECK(ui.seen().find("Change number 5000") != std::string::npos);
    CHECK(ui.seen().find("Change number 4900") == std::string::npos);
    ui.frames(20);
}
