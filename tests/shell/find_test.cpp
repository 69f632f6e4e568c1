// Find: one key, one box over everything; what is found is gone to, what can be done is done, what
// is asked is answered.
#include "app/actions.h"
#include "app/shell_keys.h"
#include "game/own_page_keeping.h"
#include "game/register_keeping.h"
#include "game/session_keeping.h"
#include "shell_driver.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <thread>

using driver::inside;
using driver::running_fight;
using driver::ShellDriver;

namespace {

// The Sluice campaign with something of everything in it.
game::Campaign full_campaign() {
    game::Campaign campaign = running_fight();
    game::enter(campaign, "Marta Quill", game::Kind::person);
    const base::Id session = game::begin_session(campaign, "2026-01-31");
    for (const char* note :
         {"The ferry was late", "Toll paid to the reeve", "A lantern in the fog"})
        game::write_note(campaign, session, game::NoteKind::note, note, "2026-01-31T19:04:05Z");
    const base::Id page = game::add_own_page(campaign.own_pages, "Tolls of the Salt Road");
    game::find_own_page(campaign.own_pages, page)->text = "Two coppers a mule.";
    return campaign;
}

struct Finding : ShellDriver {
    explicit Finding(
        game::Campaign campaign = full_campaign(), const driver::Settings& settings = {}
    )
        : ShellDriver(std::move(campaign), settings) {}

    void open() {
        key(ImGuiKey_F, ImGuiMod_Ctrl);
        settle();
    }

    // The index is made on another thread.
    void settle() {
        frames(2);
        for (int tries = 0; tries < 500 && state().find.finder.is_behind(); ++tries) {
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
            frames(1);
        }
        REQUIRE_FALSE(state().find.finder.is_behind());
        frames(1);
    }

    // Opens the box, replaces what stands in it.
    void look_for(std::string_view words) {
        open();
        type(words);
        frames(2);
    }

    std::string first() {
        const auto& hits = state().find.hits;
        return hits.empty() ? std::string() : state().find.finder.index().entry(hits[0]).text;
    }

    bool is_box_open() { return has("##find"); }
};

} // namespace

TEST_CASE("find: one key opens the box, another closes it, and nothing of it stays") {
    Finding ui;
    CHECK_FALSE(ui.is_box_open());
    ui.open();
    CHECK(ui.is_box_open());
    CHECK(ui.shows("a slip of the finger is forgiven"));
    ui.key(ImGuiKey_Escape);
    ui.frames(2);
    CHECK_FALSE(ui.is_box_open());
    ui.click("Find");
    ui.frames(2);
    CHECK(ui.is_box_open());
    ui.click("Close find");
    ui.frames(2);
    CHECK_FALSE(ui.is_box_open());
}

TEST_CASE("find: opened over the help, it takes its place") {
    Finding ui;
    ui.key(ImGuiKey_F1);
    REQUIRE(ui.state().is_help_open);
    ui.look_for("marta");
    CHECK_FALSE(ui.state().is_help_open);
    CHECK(ui.first() == "Marta Quill");
}

TEST_CASE("find: a name of the Register is gone to with Enter, misspelt or not") {
    Finding ui;
    ui.look_for("mrata quil");
    CHECK(ui.first() == "Marta Quill");
    ui.key(ImGuiKey_Enter);
    ui.frames(4);
    CHECK_FALSE(ui.is_box_open());
    CHECK(ui.tiles().focused == "register");
    CHECK(ui.shows("Marta Quill"));
}

TEST_CASE("find: a line of the notes opens its session at that line") {
    Finding ui;
    ui.look_for("reeve");
    CHECK(ui.first() == "Toll paid to the reeve");
    ui.key(ImGuiKey_Enter);
    ui.frames(4);
    CHECK(ui.tiles().focused == "session_sheet");
    CHECK(ui.shows("Toll paid to the reeve"));
    CHECK(ui.state().selection.wanted == widgets::Wanted{});
}

TEST_CASE("find: rules, own pages, the party, the shelf and prepared fights are all there") {
    Finding ui;
    const std::pair<const char*, const char*> cases[] = {
        {"coppers mule", "reference"},
        {"orrin tace", "party_roster"},
        {"mudcaller", "creature_shelf"},
        {"ambush sluice", "encounter_preparation"}};
    for (const auto& each : cases) {
        const std::string words = each.first;
        const std::string panel = each.second;
        CAPTURE(words);
        ui.look_for(words);
        ui.key(ImGuiKey_Enter);
        ui.frames(4);
        CHECK(ui.tiles().focused == panel);
        CHECK(ui.state().selection.wanted == widgets::Wanted{});
    }
    ui.look_for("frightened");
    ui.key(ImGuiKey_Enter);
    ui.frames(4);
    CHECK(ui.shows("Source: GM Core and Player Core, conditions"));
}

TEST_CASE("find: arrows choose, and a press of the hand goes there as well") {
    Finding ui;
    ui.look_for("to");
    REQUIRE(ui.state().find.hits.size() > 3);
    ui.key(ImGuiKey_DownArrow);
    ui.key(ImGuiKey_DownArrow);
    CHECK(ui.state().find.chosen == 2);
    ui.key(ImGuiKey_UpArrow);
    CHECK(ui.state().find.chosen == 1);
    ui.type("ll paid");
    ui.frames(2);
    CHECK(ui.state().find.chosen == 0);
    ui.click("Toll paid to the reeve###hit 0");
    ui.frames(4);
    CHECK_FALSE(ui.is_box_open());
    CHECK(ui.tiles().focused == "session_sheet");
}

TEST_CASE("find: what the program does is done from the box, and its key stands beside it") {
    Finding ui;
    ui.look_for("paper");
    CHECK(ui.shows("Ctrl+T"));
    ui.key(ImGuiKey_Enter);
    CHECK(ui.state().settings.preferences.theme == widgets::ThemeName::paper);
    ui.look_for("scene wrap");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.state().settings.scenes.current == "wrap-up");
    ui.look_for("next turn");
    CHECK(ui.shows("Enter, Space in Turn Order"));
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    CHECK(ui.current() == "Reed Lurker 2");
    ui.look_for("undo");
    CHECK(ui.first() == "Undo the last change");
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    CHECK(ui.current() == "Ysolde Marr");
}

TEST_CASE("find: what cannot be done now says why and stays open") {
    Finding ui(fixtures::sluice_campaign());
    ui.look_for("next turn");
    CHECK(ui.shows("No fight is running."));
    ui.key(ImGuiKey_Enter);
    ui.frames(2);
    CHECK(ui.is_box_open());
    CHECK(ui.on_disk.document().revision() == 0);
}

TEST_CASE("find: a question is answered in the box") {
    Finding ui;
    ui.look_for("dc level 7");
    CHECK(ui.shows("DC 23")); // GM Core (ORC), table DCs by Level: level 7
    ui.key(ImGuiKey_Escape);
    ui.look_for("group");
    CHECK(ui.shows("ask: group +5 +7 +2 dc 15"));
    ui.key(ImGuiKey_Escape);
    ui.look_for("rule cover");
    CHECK(ui.shows("standard cover"));
    ui.key(ImGuiKey_Escape);
    ui.look_for("zqxzqxzq");
    CHECK(ui.shows("Nothing like \"zqxzqxzq\" was found."));
}

TEST_CASE("find: keys belong to the box while it is open") {
    Finding ui;
    ui.look_for("n");
    ui.key(ImGuiKey_Space);
    ui.frames(2);
    CHECK(ui.current() == "Ysolde Marr");
    CHECK(ui.is_box_open());
}

TEST_CASE("find: what was written since is found when the box opens again") {
    Finding ui;
    ui.look_for("bittern");
    CHECK(ui.state().find.hits.empty());
    ui.key(ImGuiKey_Escape);
    ui.frames(2);
    ui.state().edits.add(&game::Campaign::own_pages, "A page", [](game::OwnPages& pages) {
        game::add_own_page(pages, "The bittern's call");
    });
    ui.frames(3);
    ui.look_for("bittern");
    CHECK(ui.first() == "The bittern's call");
}

TEST_CASE("find: every action of the program is found by its title") {
    Finding ui;
    ui.open();
    const game::FindIndex& index = ui.state().find.finder.index();
    for (const app::Action& action : app::actions()) {
        if (!action.run && action.panel.empty()) continue; // a hint for the hand
        CAPTURE(action.title);
        bool is_found = false;
        for (const game::FindHit& hit : index.find(action.title, 40))
            is_found |= index.entry(hit).target.key == action.key;
        CHECK(is_found);
    }
}

TEST_CASE("find: a button of a panel is pressed from the box, in any scene") {
    Finding ui(fixtures::sluice_campaign());
    ui.look_for("new pc");
    CHECK(ui.first() == "Add a player character");
    CHECK(ui.shows("Party, F5"));
    ui.key(ImGuiKey_Enter);
    ui.frames(12);
    CHECK_FALSE(ui.is_box_open());
    CHECK(ui.tiles().focused == "party_roster");
    CHECK(ui.on_disk.document().view().party.characters.size() == 6);
    ui.type("Ketta Vane");
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    CHECK(ui.on_disk.document().view().party.characters.back().name == "Ketta Vane");
}

TEST_CASE("find: what cannot be pressed says what to do first") {
    Finding ui(fixtures::sluice_campaign());
    ui.look_for("hand out shares");
    ui.key(ImGuiKey_Enter);
    ui.frames(20);
    CHECK_FALSE(ui.state().messages.texts.empty());
}

TEST_CASE("find: typed dice are rolled at once") {
    Finding ui;
    ui.look_for("3d6+4");
    CHECK(ui.has("Roll 3d6+4"));
    ui.key(ImGuiKey_Enter);
    ui.frames(4);
    CHECK_FALSE(ui.is_box_open());
    CHECK(ui.tiles().focused == "dice");
    const auto& rolls = ui.on_disk.document().view().table_rolls.dice_rolls;
    REQUIRE(rolls.size() == 1);
    CHECK(rolls[0].expression == "3d6+4");
    CHECK(rolls[0].total >= 7);
    CHECK(rolls[0].total <= 22);
    ui.look_for("15"); // a mere number is not rolled
    CHECK_FALSE(ui.has("###order"));
}

TEST_CASE("find: a condition is given by typing it, in any scene, and a question stays one") {
    Finding ui;
    ui.click("Roam");
    ui.look_for("frightened 2 orrin");
    ui.click("Give frightened 2 to Orrin Tace###order");
    ui.frames(3);
    const auto& fight = ui.encounter();
    const auto orrin = std::find_if(
        fight.combatants.begin(),
        fight.combatants.end(),
        [](const game::Combatant& each) { return each.name == "Orrin Tace"; }
    );
    REQUIRE(orrin->conditions.size() == 1);
    CHECK(orrin->conditions[0].key == "frightened");
    CHECK(orrin->conditions[0].value == 2);
    const std::uint64_t before = ui.on_disk.document().revision();
    ui.look_for("frightened"); // what does it do?
    CHECK(ui.has("###order"));
    ui.key(ImGuiKey_Enter);
    ui.frames(4);
    CHECK(ui.on_disk.document().revision() == before);
    CHECK(ui.tiles().focused == "reference");
}

TEST_CASE("find: stands on small windows, at large text and under a finger") {
    for (const float scale : {0.8F, 1.0F, 2.0F, 2.5F}) {
        CAPTURE(scale);
        driver::Settings settings;
        settings.size = {1280.0F, 800.0F};
        settings.scale = scale;
        settings.is_touch = true;
        Finding ui(full_campaign(), settings);
        ui.look_for("t");
        CHECK(ui.state().find.hits.size() > 5);
        ui.key(ImGuiKey_Escape);
    }
    driver::Settings narrow;
    narrow.size = {420.0F, 700.0F};
    Finding ui(full_campaign(), narrow);
    ui.look_for("toll");
    CHECK(ui.has("###hit 1"));
    CHECK(ui.first() == "Toll paid to the reeve");
}
