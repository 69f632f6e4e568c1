// Reference: looking a rule up, reading its figures, and pages of one's own.
#include "driver.h"
#include "fixtures.h"
#include "widgets/reference_panel.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

using Driver = driver::PanelDriver<widgets::ReferenceView>;

struct Table : Driver {
    explicit Table(
        const driver::Settings& settings = {}, game::Campaign campaign = fixtures::sluice_campaign()
    )
        : Driver(std::move(campaign), fixtures::four_degree(), widgets::draw_reference, settings) {
        reference = &fixtures::reference();
        frames(3);
    }

    const game::OwnPages& pages() const { return campaign().own_pages; }
};

} // namespace

TEST_CASE("reference: a rule is found while it is typed, and read with its figures and source") {
    Table ui;
    ui.click("##search");
    ui.type("cove");
    ui.frames(2);
    ui.click("Cover");
    CHECK(ui.shows("standard cover"));
    CHECK(ui.shows("can hide"));
    CHECK(ui.shows("Source: Player Core (ORC), Cover"));
}

TEST_CASE("reference: a misspelt word finds the condition, with what it does") {
    Table ui;
    ui.click("##search");
    ui.type("frigthened");
    ui.frames(2);
    ui.click("Frightened");
    CHECK(ui.shows("Source: GM Core and Player Core, conditions"));
    CHECK_FALSE(ui.has("Cover"));
}

TEST_CASE("reference: what answers nothing says so, and a chapter narrows the list") {
    Table ui;
    ui.fill("##search", "zqzqzq");
    CHECK(ui.shows("Nothing to look up fits that."));
    ui.fill("##search", "");
    ui.click("##chapter");
    ui.click("Travel");
    CHECK(ui.has("Falling"));
    CHECK_FALSE(ui.has("Cover"));
    ui.click("##chapter");
    ui.click("All chapters");
    ui.fill("##search", "cover");
    CHECK(ui.has("Cover"));
}

TEST_CASE("reference: arrows leaf through the list, Escape closes the page") {
    Table ui;
    ui.click("##chapter");
    ui.click("Recovery");
    ui.click("First aid");
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.view.opened == "treat_wounds_rules");
    ui.key(ImGuiKey_Escape);
    CHECK(ui.view.opened.empty());
}

TEST_CASE("reference: a page of one's own is added, written, renamed, removed, and undone") {
    Table ui;
    CHECK_FALSE(ui.is_enabled("Add the page"));
    ui.click("##new page");
    ui.type("Tolls of the Salt Road");
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    REQUIRE(ui.pages().pages.size() == 1);
    ui.click("##text");
    ui.type("Two coppers a mule.");
    ui.wait(1.2);
    CHECK(ui.pages().pages[0].text == "Two coppers a mule.");
    ui.fill("##title", "Tolls");
    CHECK(ui.pages().pages[0].title == "Tolls");
    CHECK(ui.last_edit() == "The page Tolls of the Salt Road is now called Tolls");
    ui.fill("##title", "");
    CHECK(ui.pages().pages[0].title == "Tolls");
    ui.click("Remove this page");
    CHECK(ui.pages().pages.empty());
    ui.undo();
    REQUIRE(ui.pages().pages.size() == 1);
    CHECK(ui.pages().pages[0].text == "Two coppers a mule.");
}

TEST_CASE("reference: another panel opens a page in it") {
    Table ui;
    ui.selection.wanted = {"reference", base::no_id, base::no_id, "falling"};
    ui.frames(2);
    CHECK(ui.view.opened == "falling");
    CHECK(ui.selection.wanted == widgets::Wanted{});
    ui.selection.wanted = {"register", 3, base::no_id, {}};
    ui.frames(2);
    CHECK(ui.view.opened == "falling");
    CHECK(ui.selection.wanted.id == 3);
}

TEST_CASE("reference: a campaign open for reading shows everything and changes nothing") {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.own_pages.pages = {{4, "Customs", "No dice off the table.", {}}};
    campaign.own_pages.next_id = 5;
    Table ui({}, campaign);
    ui.is_read_only = true;
    ui.fill("##search", "customs");
    CHECK_FALSE(ui.is_enabled("Add the page"));
    ui.click("Customs");
    CHECK(ui.shows("No dice off the table."));
    CHECK_FALSE(ui.is_enabled("Remove this page"));
}

TEST_CASE("reference: without its file the conditions are still there") {
    Table ui;
    ui.reference = nullptr;
    ui.frames(2);
    ui.fill("##search", "prone");
    CHECK(ui.has("Prone"));
}

TEST_CASE("reference: stands in the smallest tile, at large text and under a finger") {
    for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F}) {
        CAPTURE(scale);
        driver::Settings settings;
        settings.size = {320.0F * std::min(scale, 2.0F), 200.0F * std::max(scale, 1.0F) + 120.0F};
        settings.scale = scale;
        settings.is_touch = true;
        Table ui(settings);
        ui.fill("##search", "travel speed");
        ui.click("Travel speed");
        CHECK(ui.shows("miles a day"));
        ui.click("Back to the list");
        CHECK(ui.has("Travel speed"));
    }
}
