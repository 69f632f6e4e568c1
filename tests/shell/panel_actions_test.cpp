// What panels do is done from Find: every action of the table presses what it names, and something
// happens; where it cannot, one sentence says what to do first.
#include "app/actions.h"
#include "app/panel_actions.h"
#include "app/shell_keys.h"
#include "game/conditions.h"
#include "game/own_page_keeping.h"
#include "game/places_edit.h"
#include "game/reference.h"
#include "game/register_keeping.h"
#include "game/registering.h"
#include "game/session_keeping.h"
#include "game/treasure.h"
#include "shell_driver.h"
#include "store/calendars.h"
#include "store/creature_library.h"
#include "store/name_lists.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <unistd.h>
#include <vector>

using driver::ShellDriver;

namespace {

const app::PanelAction& action_of(const std::string& key) {
    for (const app::PanelAction& action : app::panel_actions())
        if (action.key == key) return action;
    FAIL("no action is called " << key);
    return app::panel_actions().front();
}

// A campaign in which everything stands that can be opened, without a fight.
game::Campaign furnished(game::Campaign campaign) {
    campaign.calendar = store::load_calendars(TABLEWICK_SOURCE_DIR "/assets").calendars.front();
    game::enter(campaign, "Marta Quill", game::Kind::person);
    game::enter(campaign, "Old Quill", game::Kind::person);
    const base::Id session = game::begin_session(campaign, "2026-01-31");
    game::write_note(campaign, session, game::NoteKind::deed, "Barred the sluice", "2026-01-31");
    game::begin_session(campaign, "2026-02-07");
    campaign.sessions.sessions.back().recap.deeds = "Barred the sluice";
    REQUIRE(game::add_ledger_line(campaign, game::LedgerKind::found, "chest", 5000).ok());
    game::TreasureItem item;
    item.name = "Reed mask";
    item.value = 700;
    REQUIRE(game::add_item(campaign, item).ok());
    game::Place place;
    place.name = "Salt Ferry";
    place.climate = "temperate_coast";
    game::WeatherOverrule said;
    said.day = campaign.clock.day;
    said.note = "fog";
    place.overrules = {said};
    game::add_place(campaign.places, place, campaign.about.title);
    game::add_own_page(campaign.own_pages, "Tolls of the Salt Road");
    campaign.about.house_rules = "ours.json";
    // Two reminders that are used up.
    game::Character& ysolde = campaign.party.characters.front();
    for (const auto by : {game::RefreshedBy::short_rest, game::RefreshedBy::dawn}) {
        game::Reminder reminder;
        reminder.id = 900 + static_cast<base::Id>(by);
        reminder.text = "Raise the shield";
        reminder.refreshed_by = by;
        ysolde.reminders.push_back(reminder);
        for (game::Combatant& combatant : campaign.encounter.combatants) {
            if (combatant.character != ysolde.id) continue;
            combatant.reminders.push_back(reminder);
            combatant.reminders_used[reminder.id] = 1;
        }
    }
    return campaign;
}

// In which campaign an action has something to press.
enum class World { without_fight, gathering, fight, srd5 };

World world_of(const std::string& key) {
    static const std::set<std::string> gathering{
        "turn_order/roll",
        "turn_order/type",
        "turn_order/roll_all",
        "turn_order/begin",
        "turn_order/call_off"};
    const std::string panel = key.substr(0, key.find('/'));
    if (gathering.count(key) > 0) return World::gathering;
    if (panel == "open_creatures") return World::srd5;
    if (key == "turn_order/party") return World::without_fight;
    if (panel == "turn_order" || panel == "condition_timers" || panel == "close_up")
        return World::fight;
    return World::without_fight;
}

game::Campaign campaign_of(World world) {
    switch (world) {
    case World::without_fight: return furnished(fixtures::sluice_campaign());
    case World::gathering:
        return fixtures::opened(furnished(fixtures::sluice_campaign()), fixtures::four_degree());
    case World::fight:
        return fixtures::running(furnished(fixtures::sluice_campaign()), fixtures::four_degree());
    case World::srd5: return furnished(fixtures::pier_campaign());
    }
    return {};
}

struct Doing : ShellDriver {
    explicit Doing(World world)
        : ShellDriver(
              campaign_of(world),
              {},
              {},
              world == World::srd5 ? fixtures::srd5() : fixtures::four_degree()
          ) {
        on_disk.price_book = fixtures::four_degree_prices();
        on_disk.ready_names = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
        on_disk.ready_calendars = store::load_calendars(TABLEWICK_SOURCE_DIR "/assets").calendars;
        if (world == World::srd5) {
            auto loaded =
                store::load_creature_library(TABLEWICK_SOURCE_DIR "/assets", fixtures::srd5());
            REQUIRE(loaded.ok());
            on_disk.ready_creatures = std::move(loaded).value();
        }
    }

    const game::Campaign& campaign() { return on_disk.document().view(); }

    void run(const std::string& key) {
        app::begin_pressing(state(), action_of(key));
        frames(30);
    }

    // The panel opens this entry.
    void open(const std::string& panel, base::Id id, const std::string& entry_key = {}) {
        state().selection.wanted_panel = panel;
        state().selection.wanted = {panel, id, base::no_id, entry_key};
        frames(4);
    }

    void choose(const std::vector<base::Id>& combatants) {
        state().selection.combatants = combatants;
        frames(2);
    }

    // All that is drawn, as one number.
    std::size_t drawn() {
        frames(2);
        std::string bytes;
        const ImDrawData* data = ImGui::GetDrawData();
        for (int at = 0; at < data->CmdListsCount; ++at) {
            const auto& vertices = data->CmdLists[at]->VtxBuffer;
            bytes.append(
                reinterpret_cast<const char*>(vertices.Data),
                static_cast<std::size_t>(vertices.size_in_bytes())
            );
        }
        return std::hash<std::string>()(bytes);
    }
};

using Setup = std::function<void(Doing&)>;

// What must be open or done before, where the campaign alone is not enough.
const std::map<std::string, Setup>& setups() {
    static const auto character = [](Doing& ui) {
        ui.open("party_roster", ui.campaign().party.characters.front().id);
    };
    static const auto creature = [](Doing& ui) {
        ui.open("creature_shelf", ui.campaign().shelf.creatures.front().id);
    };
    static const auto prepared = [](Doing& ui) {
        ui.open("encounter_preparation", ui.campaign().preparation.encounters.front().id);
    };
    static const auto entry = [](Doing& ui) {
        ui.state().selection.wanted_entry = ui.campaign().registered.entries.front().id;
    };
    static const auto item = [](Doing& ui) {
        ui.open("treasure_ledger", ui.campaign().treasury.items.front().id);
    };
    static const auto basket = [](Doing& ui) {
        app::bring_to_front(ui.state(), "price_book");
        ui.frames(3);
        ui.run("price_book/search");
        ui.type("rope (50");
        ui.frames(3);
        ui.click("rope (50 feet)");
    };
    static const auto open_creature = [](Doing& ui) {
        ui.open("open_creatures", base::no_id, ui.on_disk.ready_creatures.front().key);
    };
    static const auto name = [](Doing& ui) {
        app::bring_to_front(ui.state(), "name_picker");
        ui.frames(3);
    };
    static const std::map<std::string, Setup> all{
        {"party_roster/reminder", character},
        {"party_roster/attack", character},
        {"party_roster/remove", character},
        {"creature_shelf/drop_in", creature},
        {"creature_shelf/copy", creature},
        {"creature_shelf/weak", creature},
        {"creature_shelf/elite", creature},
        {"creature_shelf/remove", creature},
        {"open_creatures/keep", open_creature},
        {"open_creatures/fight", open_creature},
        {"encounter_preparation/creatures", prepared},
        {"encounter_preparation/remove", prepared},
        {"register/merge", entry},
        {"register/remove", entry},
        {"treasure_ledger/sell", item},
        {"treasure_ledger/give", item},
        {"price_book/charge", basket},
        {"price_book/empty", basket},
        {"name_picker/use", name},
        {"places/remove",
         [](Doing& ui) { ui.open("places", ui.campaign().places.places.front().id); }},
        {"reference/remove",
         [](Doing& ui) {
             ui.open(
                 "reference", base::no_id, game::own_page_key(ui.campaign().own_pages.pages[0].id)
             );
         }},
        {"print/paper", [](Doing& ui) { ui.run("print/evening"); }},
        {"print/clear", [](Doing& ui) { ui.run("print/evening"); }},
        {"party_defences/earlier",
         [](Doing& ui) {
             ui.run("party_defences/secret");
             ui.run("party_defences/secret");
         }},
        {"session_sheet/offer",
         [](Doing& ui) {
             for (const char* key : {"turn_order/party", "turn_order/roll_all", "turn_order/begin"})
                 ui.run(key);
         }},
        {"happenings/search", [](Doing& ui) { ui.run("party_roster/add"); }},
        {"recovery/wounds", [](Doing& ui) { ui.run("recovery/night"); }},
        {"session_sheet/notes", [](Doing& ui) { ui.run("session_sheet/plan"); }},
        {"day_book/today",
         [](Doing& ui) {
             ui.run("day_book/jump");
             ui.type("+3");
             ui.key(ImGuiKey_Enter);
         }},
        {"weather_walk/today",
         [](Doing& ui) {
             app::bring_to_front(ui.state(), "weather_walk");
             ui.frames(3);
             ui.click("Tomorrow##ahead 1");
         }},
        {"turn_order/begin", [](Doing& ui) { ui.run("turn_order/roll_all"); }},
        {"turn_order/up", [](Doing& ui) { ui.choose({ui.encounter().order.back()}); }},
        {"turn_order/group",
         [](Doing& ui) {
             ui.choose({ui.encounter().order.front(), ui.encounter().order.back()});
         }},
        {"turn_order/roll_due",
         [](Doing& ui) {
             ui.state().edits.add(&game::Campaign::encounter, "Burn", [](game::Encounter& fight) {
                 game::ActiveCondition fire;
                 fire.key = "persistent_damage";
                 fire.damage = "1d6";
                 fire.damage_type = "fire";
                 const rules::Rulebook& book = fixtures::four_degree();
                 static_cast<void>(game::add_condition(fight, book, fight.current, fire));
             });
             ui.frames(2);
             app::carry_out_action(*app::find_action("turn_order/next"), ui.state());
         }},
        {"turn_order/return",
         [](Doing& ui) {
             ui.choose({ui.encounter().current});
             ui.run("turn_order/delay");
         }},
        {"turn_order/use_readied",
         [](Doing& ui) {
             ui.run("turn_order/ready");
             ui.type("Strikes whoever comes through");
             ui.key(ImGuiKey_Enter);
             ui.frames(3);
         }},
        {"turn_order/reaction_back", [](Doing& ui) { ui.run("turn_order/reaction"); }},
        {"turn_order/show", [](Doing& ui) { ui.run("turn_order/hide"); }},
    };
    return all;
}

} // namespace

TEST_CASE("panel actions: each presses what it names, and something happens") {
    for (const app::PanelAction& action : app::panel_actions()) {
        const std::string key = action.key;
        CAPTURE(key);
        if (key == "print/save") continue; // a test of its own, for it writes a file
        Doing ui(world_of(key));
        const auto setup = setups().find(key);
        if (setup != setups().end()) setup->second(ui);
        app::bring_to_front(ui.state(), app::panel_of(action));
        ui.frames(3);
        const std::uint64_t revision = ui.on_disk.document().revision();
        const std::size_t before = ui.drawn();
        ui.run(key);
        CHECK(ui.state().pressing.action == nullptr);
        for (const std::string& message : ui.state().messages.texts)
            FAIL_CHECK("it says: " << message);
        const bool happened = ui.on_disk.document().revision() != revision ||
                              !ui.on_disk.saved_texts.empty() || ui.drawn() != before;
        CHECK(happened);
    }
}

TEST_CASE("panel actions: the pages that are chosen are saved") {
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("tablewick_saves_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    {
        Doing ui(World::without_fight);
        ui.on_disk.kept_in = (folder / "salt.json").string();
        ui.state().settings.printing.opens_afterwards = false;
        ui.run("print/evening");
        ui.run("print/save");
        ui.shell.settle();
        ui.frames(2);
        REQUIRE(ui.state().messages.texts.size() == 1);
        CHECK(ui.state().messages.texts[0].find("Saved as ") == 0);
    }
    CHECK(std::filesystem::exists(folder / "salt-pages.pdf"));
    std::filesystem::remove_all(folder);
}

TEST_CASE("panel actions: what is not there says in one sentence what to do first") {
    const std::pair<const char*, const char*> cases[] = {
        {"session_sheet/goal", "Begin a session first, in the Session Sheet."},
        {"turn_order/end", "No fight is running: start one first."},
        {"turn_order/begin", "Open a fight in the Turn Order first."},
        {"party_roster/reminder", "Open a character of the Party first."},
        {"register/remove", "Open an entry of the Register first."},
        {"party_defences/secret", "Enter a player character first, in the Party."},
        {"price_book/charge", "Put something into the basket first, in the Price Book."},
        {"print/save", "Choose a page first, in the panel Print."}};
    for (const auto& each : cases) {
        const std::string key = each.first;
        const std::string words = each.second;
        CAPTURE(key);
        ShellDriver ui{game::Campaign()};
        ui.on_disk.price_book = fixtures::four_degree_prices();
        app::begin_pressing(ui.state(), action_of(key));
        ui.frames(20);
        REQUIRE(ui.state().messages.texts.size() == 1);
        CHECK(ui.state().messages.texts[0] == words);
        CHECK(ui.on_disk.document().revision() == 0);
    }
}

TEST_CASE("panel actions: a button that refuses tells its reason, and nothing is done") {
    Doing ui(World::gathering);
    const std::uint64_t before = ui.on_disk.document().revision();
    ui.run("turn_order/begin");
    REQUIRE(ui.state().messages.texts.size() == 1);
    CHECK(ui.state().messages.texts[0].find("Initiative is missing for ") == 0);
    CHECK(ui.on_disk.document().revision() == before);
}

TEST_CASE("panel actions: one whose panel is put away meanwhile is given up") {
    Doing ui(World::without_fight);
    app::begin_pressing(ui.state(), action_of("creature_shelf/new"));
    app::close_panel(ui.tiles(), "creature_shelf");
    ui.frames(20);
    const std::uint64_t before = ui.on_disk.document().revision();
    app::bring_to_front(ui.state(), "creature_shelf");
    ui.frames(20);
    CHECK(ui.on_disk.document().revision() == before);
    CHECK(ui.state().pressing.action == nullptr);
}

TEST_CASE("panel actions: a field is typed into at once") {
    Doing ui(World::without_fight);
    ui.run("register/faction");
    ui.type("The Weir Wardens");
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    const game::RegisterEntry* entry =
        game::find_registered_name(ui.campaign().registered, "The Weir Wardens");
    REQUIRE(entry != nullptr);
    CHECK(entry->kind == game::Kind::faction);
}

TEST_CASE("panel actions: every panel has some, and each belongs to a panel there is") {
    std::set<std::string> panels;
    for (const app::PanelAction& action : app::panel_actions()) {
        const std::string key = action.key;
        CAPTURE(key);
        CHECK(app::find_panel(app::panel_of(action)) != nullptr);
        CHECK(action.press_count() > 0);
        panels.insert(app::panel_of(action));
    }
    for (const widgets::PanelInfo* info : app::panel_infos()) {
        const std::string panel = info->key;
        if (panel == "difficulty") continue; // its rows are pressed where they stand
        CAPTURE(panel);
        CHECK(panels.count(panel) == 1);
    }
}

TEST_CASE("bug: in a menu that Find opened, arrows and Enter choose, and are free again after it") {
    Doing ui(World::without_fight);
    ui.run("session_sheet/fight");
    CHECK(ui.campaign().sessions.sessions.back().encounters.empty());
    ui.key(ImGuiKey_DownArrow);
    ui.key(ImGuiKey_Enter);
    ui.frames(3);
    CHECK(ui.campaign().sessions.sessions.back().encounters.size() == 1);
    CHECK((ImGui::GetIO().ConfigFlags & ImGuiConfigFlags_NavEnableKeyboard) == 0);
}
