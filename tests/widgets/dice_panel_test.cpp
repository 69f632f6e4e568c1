// Dice thrown by hand: what they can add up to, in the open and in secret, kept at hand.
#include "driver.h"
#include "fixtures.h"
#include "widgets/dice_panel.h"

#include <doctest/doctest.h>

namespace {

struct DicePanel : driver::PanelDriver<widgets::DicePanelView> {
    explicit DicePanel(const driver::Settings& settings = {})
        : PanelDriver(
              fixtures::sluice_campaign(),
              fixtures::four_degree(),
              widgets::draw_dice_panel,
              settings
          ) {}

    const game::TableRolls& rolls() const { return campaign().table_rolls; }
};

} // namespace

TEST_CASE("dice panel: the distribution stands there before anything is rolled") {
    DicePanel ui;
    ui.fill("##expression", "2d6+3"); // Enter rolls at once
    // Common knowledge of 2d6: mean 7; 3 of 36 ways give 4 or less, 6 of 36 exactly 7.
    CHECK(ui.shows("mean 10"));
    CHECK(ui.shows("50 % up to 10"));
    REQUIRE(ui.rolls().dice_rolls.size() == 1);
    CHECK(ui.rolls().dice_rolls[0].expression == "2d6+3");
    const int total = ui.rolls().dice_rolls[0].total;
    CHECK(total >= 5);
    CHECK(total <= 15);
    CHECK(ui.last_edit() == "Roll 2d6+3: " + std::to_string(total));
    CHECK(ui.shows(std::to_string(total) + " or more:"));
    ui.undo();
    CHECK(ui.rolls().dice_rolls.empty());
}

TEST_CASE("dice panel: a secret roll is not told in the history") {
    DicePanel ui;
    ui.click("In secret");
    ui.click("Roll");
    REQUIRE(ui.rolls().dice_rolls.size() == 1);
    CHECK(ui.rolls().dice_rolls[0].is_secret);
    CHECK(ui.last_edit() == "Roll dice in secret");
    CHECK(ui.shows("in secret: 1d20 ="));
}

TEST_CASE("dice panel: what was rolled last is one press away, what is pinned stays") {
    DicePanel ui;
    CHECK(ui.has("1d20##quick"));
    ui.fill("##expression", "3d8-1");
    CHECK(ui.has("3d8-1##quick"));
    ui.click("Pin###pin");
    CHECK(ui.rolls().pinned_dice == std::vector<std::string>{"3d8-1"});
    for (int each = 1; each <= 9; ++each)
        ui.fill("##expression", std::to_string(each) + "d4");
    CHECK(ui.rolls().recent_dice.size() == game::TableRolls::recent_kept);
    CHECK(ui.has("3d8-1##quick"));
    ui.click("3d8-1##quick");
    CHECK(ui.view.typed == "3d8-1");
    CHECK(ui.rolls().dice_rolls.back().expression == "3d8-1");
    ui.click("Unpin###pin");
    CHECK(ui.rolls().pinned_dice.empty());
}

TEST_CASE("dice panel: nonsense is refused with a reason, and nothing is rolled") {
    DicePanel ui;
    ui.fill("##expression", "3d0");
    CHECK_FALSE(ui.is_enabled("Roll"));
    CHECK_FALSE(ui.view.complaint.empty());
    CHECK(ui.shows(ui.view.complaint));
    ui.fill("##expression", "");
    CHECK_FALSE(ui.is_enabled("Roll"));
    CHECK(ui.rolls().dice_rolls.empty());
}

TEST_CASE("dice panel: read-only, chances are shown and nothing can be rolled") {
    DicePanel ui;
    ui.is_read_only = true;
    ui.fill("##expression", "2d6");
    CHECK(ui.shows("mean 7"));
    CHECK_FALSE(ui.is_enabled("Roll"));
    CHECK(ui.rolls().dice_rolls.empty());
}

TEST_CASE("dice panel: stands at every text size, in touch density, in both themes") {
    for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F})
        for (const bool is_touch : {false, true})
            for (const float width : {300.0F, 640.0F, 1280.0F}) {
                CAPTURE(scale);
                CAPTURE(is_touch);
                CAPTURE(width);
                driver::Settings settings;
                settings.size = {width * scale, 800.0F};
                settings.scale = scale;
                settings.is_touch = is_touch;
                settings.theme = is_touch ? widgets::ThemeName::paper : widgets::ThemeName::dark;
                DicePanel ui(settings);
                for (const char* dice : {"20d20+5", "1d1", "100d100", "2d6-9", "7"})
                    ui.fill("##expression", dice);
                ui.frames(2);
            }
}
