// Reminders come up at the moment they are of use and are ticked off with one tap.
#include "driver.h"
#include "fixtures.h"
#include "game/hurt.h"
#include "game/roster.h"
#include "game/turns.h"
#include "widgets/reminders.h"

#include <doctest/doctest.h>

namespace {

using Driver = driver::PanelDriver<widgets::RemindersView>;
using game::ComesUp;
using game::RefreshedBy;

game::Reminder reminder(const std::string& text, RefreshedBy refreshed_by, ComesUp comes_up) {
    game::Reminder made;
    made.text = text;
    made.refreshed_by = refreshed_by;
    made.comes_up = comes_up;
    return made;
}

// Ysolde Marr is up; Orrin Tace has a reaction against hits.
game::Campaign running() {
    game::Campaign campaign = fixtures::sluice_campaign();
    for (const game::Character& each : std::vector(campaign.party.characters)) {
        game::Character changed = each;
        changed.reminders.clear();
        if (each.name == "Ysolde Marr")
            changed.reminders = {
                reminder("Raise the shield", RefreshedBy::turn, ComesUp::own_turn),
                reminder("Scouts ahead", RefreshedBy::rest, ComesUp::exploring)};
        if (each.name == "Orrin Tace")
            changed.reminders = {
                reminder("Nimble dodge", RefreshedBy::round, ComesUp::hurt),
                reminder("Trick step", RefreshedBy::short_rest, ComesUp::own_turn)};
        game::update_character(campaign, changed);
    }
    return fixtures::running(campaign, fixtures::four_degree());
}

struct Table : Driver {
    explicit Table(game::Campaign campaign = running(), const driver::Settings& settings = {})
        : Driver(std::move(campaign), fixtures::four_degree(), widgets::draw_reminders, settings) {
        frames(2);
    }

    void hurt(const std::string& name, int amount) {
        game::Damage damage;
        damage.amount = amount;
        const base::Id id = combatant(name).id;
        game::Edit edit;
        edit.sections = {game::Section::encounter};
        edit.label = "Hurt " + name;
        edit.change = [id, damage](game::Campaign& campaign) {
            return game::hurt(campaign.encounter, fixtures::four_degree(), id, damage);
        };
        REQUIRE(document.edit(edit).ok());
        frames(2);
    }

    int left(const std::string& name, std::size_t which) {
        const game::Combatant& who = combatant(name);
        const auto used = who.reminders_used.find(who.reminders.at(which).id);
        return who.reminders.at(which).uses - (used == who.reminders_used.end() ? 0 : used->second);
    }
};

} // namespace

TEST_CASE("reminders: nobody has one, and the panel leads to where they are added") {
    game::Campaign campaign = fixtures::sluice_campaign();
    for (const game::Character& each : std::vector(campaign.party.characters)) {
        game::Character changed = each;
        changed.reminders.clear();
        game::update_character(campaign, changed);
    }
    Table ui(campaign);
    CHECK(ui.shows("What a player may forget"));
    ui.click("Go to the party");
    CHECK(ui.selection.wanted_panel == "party_roster");
}

TEST_CASE("reminders: whose turn it is sees its own, used with one press and given back") {
    Table ui;
    CHECK(ui.shows("Whose turn it is"));
    CHECK(ui.shows("1 of 1 left, each turn"));
    ui.click("Used##Raise the shield");
    CHECK(ui.left("Ysolde Marr", 0) == 0);
    CHECK(ui.shows("0 of 1 left, each turn"));
    ui.click("Give back##Raise the shield");
    CHECK(ui.left("Ysolde Marr", 0) == 1);
    ui.undo();
    CHECK(ui.left("Ysolde Marr", 0) == 0);
}

TEST_CASE("reminders: the dodge comes up when Orrin is hurt, and goes when it is used") {
    Table ui;
    CHECK_FALSE(ui.shows("Now, before it is too late"));
    ui.hurt("Orrin Tace", 4);
    CHECK(ui.shows("Orrin Tace can: Nimble dodge (1 left)"));
    ui.click("Used##called Nimble dodge");
    CHECK_FALSE(ui.shows("Now, before it is too late"));
    CHECK(ui.left("Orrin Tace", 0) == 0);
    ui.hurt("Orrin Tace", 4);
    CHECK_FALSE(ui.shows("Now, before it is too late"));
}

TEST_CASE("reminders: not now puts it away without using it") {
    Table ui;
    ui.hurt("Orrin Tace", 4);
    ui.click("Not now");
    CHECK_FALSE(ui.shows("Now, before it is too late"));
    CHECK(ui.left("Orrin Tace", 0) == 1);
}

TEST_CASE("reminders: ten minutes' rest gives back what a short rest gives back") {
    Table ui;
    ui.click("Used##Trick step");
    REQUIRE(ui.left("Orrin Tace", 1) == 0);
    ui.click("Ten minutes are over");
    CHECK(ui.left("Orrin Tace", 1) == 1);
}

TEST_CASE("reminders: a narrow panel at twice the text with large targets; read only nothing moves"
) {
    driver::Settings settings;
    settings.size = {320.0F, 700.0F};
    settings.scale = 2.0F;
    settings.is_touch = true;
    Table ui(running(), settings);
    CHECK(ui.shows("Raise the shield"));
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("Used##Raise the shield"));
}
