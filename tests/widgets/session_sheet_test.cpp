// An evening planned, written down while it happens, and told.
#include "driver.h"
#include "fixtures.h"
#include "game/register_keeping.h"
#include "game/session_keeping.h"
#include "widgets/recap_page.h"
#include "widgets/register_panel.h"
#include "widgets/session_sheet.h"

#include <doctest/doctest.h>

namespace {

using Sheet = driver::PanelDriver<widgets::SessionSheetView>;
using Recap = driver::PanelDriver<widgets::RecapPageView>;
using RegisterDriver = driver::PanelDriver<widgets::RegisterView>;

game::Campaign with_session() {
    game::Campaign campaign = fixtures::sluice_campaign();
    game::begin_session(campaign, "2026-01-31");
    game::enter(campaign, "Selbra", game::Kind::person);
    game::enter(campaign, "Wrack Ferry", game::Kind::place);
    return campaign;
}

Sheet sheet(game::Campaign campaign) {
    return {std::move(campaign), fixtures::four_degree(), widgets::draw_session_sheet};
}

const game::Session& session(const Sheet& ui) {
    return *game::current_session(ui.campaign().sessions);
}

} // namespace

TEST_CASE("session sheet: the first session is begun and planned") {
    Sheet ui = sheet(fixtures::sluice_campaign());
    ui.click("Begin the first session");
    REQUIRE(ui.campaign().sessions.sessions.size() == 1);
    CHECK(session(ui).played_on == "2026-01-31");
    CHECK(session(ui).present.size() == 5);
    ui.fill("##Title", "The drowned bell");
    ui.click("##new scene");
    ui.type("The toll house");
    ui.key(ImGuiKey_Enter);
    ui.click("##new question");
    ui.type("Who rang it?");
    ui.key(ImGuiKey_Enter);
    REQUIRE(session(ui).scenes.size() == 1);
    REQUIRE(session(ui).goals.size() == 1);
    CHECK(session(ui).goals[0].is_question);
    ui.click("##add fight");
    ui.click("Ambush at the sluice", driver::inside("##Combo"));
    CHECK(session(ui).encounters.size() == 1);
    ui.click("Start this fight##planned");
    CHECK(ui.encounter().phase == game::Phase::gathering);
    ui.click("Begin another");
    CHECK(ui.campaign().sessions.sessions.size() == 2);
    CHECK(session(ui).goals.size() == 1); // carried over
    CHECK(session(ui).number == 2);
    ui.undo();
    CHECK(ui.campaign().sessions.sessions.size() == 1);
}

TEST_CASE("session sheet: a line is written with Enter, and the next one may follow at once") {
    Sheet ui = sheet(with_session());
    ui.selection.wants_note = true; // the key that jumps to the field
    ui.frames(3);
    ui.type("Selbra rows them over.");
    CHECK(ui.view.names.find(ui.view.typed).size() == 1);
    ui.key(ImGuiKey_Enter);
    ui.type("! Mended the boat");
    ui.key(ImGuiKey_Enter);
    REQUIRE(session(ui).lines.size() == 2);
    CHECK(session(ui).lines[0].text == "Selbra rows them over.");
    CHECK(session(ui).lines[1].kind == game::NoteKind::deed);
    CHECK(session(ui).lines[1].written_at == "2026-01-31T19:04:05Z");
    CHECK(ui.last_edit() == "Note: Mended the boat");
}

TEST_CASE("session sheet: words selected in the line go into the Register as what they are") {
    Sheet ui = sheet(with_session());
    ui.click("##typed note");
    ui.type("Harrowmouth");
    ui.key(ImGuiKey_A, ImGuiMod_Ctrl);
    ui.frames(2);
    ui.click("place##selected");
    const auto& entries = ui.campaign().registered.entries;
    REQUIRE(entries.size() == 3);
    CHECK(entries.back().name == "Harrowmouth");
    CHECK(entries.back().kind == game::Kind::place);
    CHECK(ui.view.typed == "Harrowmouth"); // the line is still there
}

TEST_CASE("session sheet: a line is opened, changed, called a discovery, and struck") {
    game::Campaign campaign = with_session();
    const base::Id id = campaign.sessions.current;
    const base::Id line =
        game::write_note(campaign, id, game::NoteKind::note, "Selbra lies at Wrack Ferry.", "");
    Sheet ui = sheet(std::move(campaign));
    const std::string at = std::to_string(line);
    ui.click("##note " + at);
    ui.click("discovery##kind " + at);
    CHECK(session(ui).lines[0].kind == game::NoteKind::discovery);
    ui.fill("##line " + at, "Selbra lied.");
    CHECK(session(ui).lines[0].text == "Selbra lied.");
    ui.click("p  Selbra##to " + at + "/0");
    CHECK(ui.selection.wanted_panel == "register");
    CHECK(ui.selection.wanted_entry == 1);
    ui.click("Strike it##" + at);
    CHECK(session(ui).lines.empty());
}

TEST_CASE("session sheet: for reading only nothing is written") {
    Sheet ui = sheet(with_session());
    ui.is_read_only = true;
    ui.frames(2);
    CHECK_FALSE(ui.is_enabled("##typed note"));
    CHECK_FALSE(ui.is_enabled("Begin another"));
}

TEST_CASE("session sheet: a narrow panel at twice the text with large targets") {
    driver::Settings settings;
    settings.size = {760.0F, 1100.0F};
    settings.scale = 2.0F;
    settings.is_touch = true;
    Sheet ui{with_session(), fixtures::four_degree(), widgets::draw_session_sheet, settings};
    ui.click("##typed note");
    ui.type("Selbra rows them over the wide and very slow water to Wrack Ferry.");
    ui.key(ImGuiKey_Enter);
    CHECK(session(ui).lines.size() == 1);
    ui.click("Plan");
    ui.click("Last time");
    CHECK(ui.shows("This is the first session."));
}

TEST_CASE("recap page: filled from the notes, changed, copied") {
    game::Campaign campaign = with_session();
    game::write_note(
        campaign, campaign.sessions.current, game::NoteKind::deed, "Mended Selbra's boat", ""
    );
    Recap ui{std::move(campaign), fixtures::four_degree(), widgets::draw_recap_page};
    CHECK_FALSE(ui.is_enabled("Copy as text"));
    ui.click("Fill from the notes");
    const auto recap = [&]() -> const game::RecapPage& {
        return ui.campaign().sessions.sessions.front().recap;
    };
    CHECK(recap().deeds == "Mended Selbra's boat");
    CHECK(recap().people == "Selbra");
    ui.click("##What is next");
    ui.type("Ask for the bell");
    ui.wait(2.0);
    CHECK(recap().next == "Ask for the bell");
    ui.click("Copy as text");
    CHECK(ui.shows("Copied as text."));
    ui.undo();
    CHECK(recap().next.empty());
}

TEST_CASE("register: an entry is made, described, renamed, merged") {
    game::Campaign campaign = with_session();
    game::write_note(
        campaign, campaign.sessions.current, game::NoteKind::note, "Selbra waits.", ""
    );
    RegisterDriver ui{std::move(campaign), fixtures::four_degree(), widgets::draw_register};
    ui.click("##new name");
    ui.type("The Grey Ferrywoman");
    ui.click("Enter it");
    REQUIRE(ui.campaign().registered.entries.size() == 3);
    ui.fill("##summary", "rows at night");
    CHECK(ui.campaign().registered.entries[2].summary == "rows at night");
    ui.click("##merge");
    ui.click("Selbra##1");
    REQUIRE(ui.campaign().registered.entries.size() == 2);
    CHECK(ui.campaign().registered.entries[0].summary == "rows at night");
    CHECK(ui.shows("Session 1"));
    ui.fill("##name", "Selbra Vonn");
    CHECK(ui.campaign().sessions.sessions[0].lines[0].text == "Selbra Vonn waits.");
    ui.fill("##name", "Wrack Ferry");
    CHECK(ui.shows("Another entry has that name"));
    CHECK(ui.campaign().registered.entries[0].name == "Selbra Vonn");
}

TEST_CASE("register: found by a word, of one kind alone") {
    RegisterDriver ui{with_session(), fixtures::four_degree(), widgets::draw_register};
    ui.click("l  place##find");
    CHECK(ui.view.found.size() == 1);
    ui.click("##find");
    ui.type("selb");
    CHECK(ui.shows("Nothing in the Register fits that."));
    ui.click("l  place##find");
    CHECK(ui.view.found.size() == 1);
}

TEST_CASE("register: empty it says what it is for") {
    RegisterDriver ui{fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_register};
    CHECK(ui.shows("Whoever and whatever the party meets"));
    ui.click("##new name");
    ui.type("Selbra");
    ui.key(ImGuiKey_Enter);
    CHECK(ui.campaign().registered.entries.size() == 1);
}

TEST_CASE("session sheet: a line of loot goes into the Treasure Ledger with one press") {
    game::Campaign campaign = with_session();
    const game::Id session = campaign.sessions.current;
    game::write_note(campaign, session, game::NoteKind::loot, "120 gp under the sluice", "");
    game::write_note(campaign, session, game::NoteKind::note, "It rains 2 gp worth.", "");
    Sheet ui = sheet(std::move(campaign));
    ui.prices = fixtures::four_degree_prices();
    ui.click("To the ledger"); // on the line of loot alone
    REQUIRE(ui.campaign().treasury.lines.size() == 1);
    CHECK(ui.campaign().treasury.lines[0].amount == 12'000);
    CHECK(ui.campaign().treasury.lines[0].text == "120 gp under the sluice");
    CHECK(ui.last_edit() == "Into the ledger: 120 gp under the sluice");
    CHECK_FALSE(ui.has("To the ledger"));
    ui.undo();
    CHECK(ui.has("To the ledger"));
}
