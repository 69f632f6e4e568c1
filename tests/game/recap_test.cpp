// The page the players get.
#include "game/recap.h"
#include "game/register_keeping.h"
#include "game/registering.h"
#include "game/session_keeping.h"

#include <doctest/doctest.h>

namespace {

game::Campaign evening() {
    game::Campaign campaign;
    const base::Id session = game::begin_session(campaign, "2026-01-31");
    const base::Id selbra = game::enter(campaign, "Selbra", game::Kind::person);
    game::find_register_entry(campaign.registered, selbra)->summary = "ferrywoman";
    game::enter(campaign, "Wrack Ferry", game::Kind::place);
    game::enter(campaign, "Lantern", game::Kind::item);
    const auto write = [&](game::NoteKind kind, const char* text) {
        game::write_note(campaign, session, kind, text, "");
    };
    write(game::NoteKind::note, "Selbra rows us to Wrack Ferry.");
    write(game::NoteKind::deed, "Mended Selbra's boat");
    write(game::NoteKind::loot, "A Lantern that burns green");
    write(game::NoteKind::next, "Ask for the bell");
    game::Session& sheet = *game::find_session(campaign.sessions, session);
    sheet.title = "The *drowned* bell";
    sheet.goals = {{90, "Reach Harrowmouth"}, {91, "Cross the reeds", false, true}};
    return campaign;
}

game::RecapPage filled(const game::Campaign& campaign) {
    game::RegisteredNames names;
    names.follow(campaign.registered);
    return game::recap_of(campaign, campaign.sessions.sessions.front(), names);
}

} // namespace

TEST_CASE("recap: filled from the notes by what they are and whom they name") {
    const game::RecapPage recap = filled(evening());
    CHECK(recap.places == "Wrack Ferry");
    CHECK(recap.people == "Selbra: ferrywoman");
    CHECK(recap.deeds == "Mended Selbra's boat");
    CHECK(recap.discoveries == "A Lantern that burns green");
    CHECK(recap.next == "Ask for the bell\nReach Harrowmouth"); // what is done is left out
}

TEST_CASE("recap: written out as Markdown and as plain text") {
    game::Campaign campaign = evening();
    game::Session& session = campaign.sessions.sessions.front();
    CHECK(game::is_empty(session.recap));
    session.recap = filled(campaign);
    session.recap.people += "\n\n";
    CHECK_FALSE(game::is_empty(session.recap));
    const std::string markdown = game::recap_markdown(session);
    CHECK(markdown.find("# Session 1: The \\*drowned\\* bell\n") == 0);
    CHECK(markdown.find("## Whom we met\n\n- Selbra: ferrywoman\n") != std::string::npos);
    CHECK(markdown.find("- \n") == std::string::npos); // blank lines are no entries
    const std::string text = game::recap_text(session);
    CHECK(text.find("Session 1: The *drowned* bell\n2026-01-31\n") == 0);
    CHECK(
        text.find("What is next\n  Ask for the bell\n  Reach Harrowmouth\n") != std::string::npos
    );
    session.recap.deeds.clear();
    CHECK(game::recap_text(session).find("What we did") == std::string::npos);
}
