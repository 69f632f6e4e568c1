// The campaign itself: called, and given its rules.
#include "driver.h"
#include "fixtures.h"
#include "widgets/campaign_page.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::CampaignPageView>;

Driver page(game::Campaign campaign, const rules::Rulebook& book) {
    return {std::move(campaign), book, widgets::draw_campaign_page};
}

} // namespace

TEST_CASE("campaign page: an empty campaign is named and given its rules") {
    Driver ui = page({}, fixtures::four_degree());
    ui.fill("##title", "Salt Road Charter");
    CHECK(ui.campaign().about.title == "Salt Road Charter");
    ui.click("srd5");
    CHECK(ui.campaign().about.rules == rules::Family::srd5);
    ui.click("SRD 5.2.1");
    CHECK(ui.campaign().about.srd_edition == rules::SrdEdition::srd_5_2_1);
    ui.undo();
    ui.undo();
    CHECK(ui.campaign().about.rules == rules::Family::four_degree);
}

TEST_CASE("campaign page: with characters the rule family stays") {
    Driver ui = page(fixtures::sluice_campaign(), fixtures::four_degree());
    CHECK_FALSE(ui.is_enabled("srd5"));
    ui.click("fast, 800 XP##pace/fast"); // GM Core (ORC), experience points (from memory)
    CHECK(ui.campaign().about.pace == "fast");
    ui.click("standard, 1000 XP##pace/standard");
    CHECK(ui.campaign().about.pace.empty());
}

TEST_CASE("campaign page: a file of house rules is taken when the field is left, and listed") {
    rules::Rulebook book = fixtures::four_degree();
    book.house_ruled = {{"/dc_by_level/rows/7/dc", "23", "24"}};
    Driver ui = page(fixtures::sluice_campaign(), book);
    CHECK_FALSE(ui.is_enabled("Read again"));
    ui.click("##house rules");
    ui.type("our_rules");
    ui.wait(2.0);
    CHECK(ui.campaign().about.house_rules.empty()); // half typed
    ui.type(".json");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.campaign().about.house_rules == "our_rules.json");
    CHECK(ui.last_edit() == "Take house rules from our_rules.json");
    CHECK(ui.shows("/dc_by_level/rows/7/dc: 24 instead of 23"));
    ui.prices.house_ruled = {{"/scroll_price/rows/3/price_gp", "70", "90"}};
    ui.frames(2);
    CHECK(ui.shows("/scroll_price/rows/3/price_gp: 90 instead of 70"));
    CHECK(ui.is_enabled("Read again"));
}

TEST_CASE("campaign page: opened for reading only nothing can be changed") {
    Driver ui = page({}, fixtures::four_degree());
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("srd5"));
    CHECK_FALSE(ui.is_enabled("##title"));
}

TEST_CASE("campaign page: a narrow panel at twice the text with large targets") {
    driver::Settings settings;
    settings.size = {520.0F, 900.0F};
    settings.scale = 2.0F;
    settings.is_touch = true;
    game::Campaign campaign;
    campaign.about.rules = rules::Family::srd5;
    const Driver ui{campaign, fixtures::srd5(), widgets::draw_campaign_page, settings};
}
