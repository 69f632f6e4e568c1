// Entries of the Register: entered, renamed, merged, found again.
#include "game/register_keeping.h"
#include "game/registering.h"
#include "game/session_keeping.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>

namespace {

struct World {
    game::Campaign campaign;
    base::Id session = base::no_id;

    World() {
        campaign.clock.day = 12;
        session = game::begin_session(campaign, "");
    }

    base::Id enter(const std::string& name, game::Kind kind = game::Kind::person) {
        return game::enter(campaign, name, kind);
    }

    game::RegisterEntry& entry(base::Id id) {
        return *game::find_register_entry(campaign.registered, id);
    }

    void note(const std::string& text) {
        game::write_note(campaign, session, game::NoteKind::note, text, "");
    }

    const std::string& line(std::size_t at) {
        return game::find_session(campaign.sessions, session)->lines[at].text;
    }
};

} // namespace

TEST_CASE("register: whoever is entered was met today, and nobody twice") {
    World world;
    const base::Id selbra = world.enter("Selbra");
    CHECK(world.entry(selbra).is_met);
    CHECK(world.entry(selbra).first_met_day == 12);
    CHECK(world.enter("SELBRA", game::Kind::place) == selbra);
    CHECK(world.campaign.registered.entries.size() == 1);
    CHECK(world.enter("  ") == base::no_id);
}

TEST_CASE("register: a new name goes along wherever the entry was spoken of") {
    World world;
    const base::Id selbra = world.enter("Selbra");
    world.note("Selbra waits; selbra's boat leaks. Selbrand laughs.");
    world.campaign.day_book.pages = {{1, 3, "With Selbra."}};
    CHECK(game::rename_entry(world.campaign, selbra, "Selbra Vonn") == 2);
    CHECK(world.line(0) == "Selbra Vonn waits; Selbra Vonn's boat leaks. Selbrand laughs.");
    CHECK(world.campaign.day_book.pages[0].text == "With Selbra Vonn.");
    CHECK(world.entry(selbra).name == "Selbra Vonn");
    // A name that another has is not taken.
    world.enter("Tollick");
    CHECK(game::rename_entry(world.campaign, selbra, "tollick") == 0);
    CHECK(world.entry(selbra).name == "Selbra Vonn");
    // Upper and lower case of its own name may change.
    game::rename_entry(world.campaign, selbra, "SELBRA VONN");
    CHECK(world.entry(selbra).name == "SELBRA VONN");
}

TEST_CASE("register: two that were one keep what each knew, and every mention") {
    World world;
    const base::Id stranger = world.enter("The Grey Ferrywoman");
    world.campaign.clock.day = 14;
    const base::Id selbra = world.enter("Selbra");
    const base::Id ferry = world.enter("Wrack Ferry", game::Kind::place);
    world.entry(stranger).summary = "rows at night";
    world.entry(stranger).place = ferry;
    world.entry(selbra).summary = "has one eye";
    world.entry(selbra).attitude = "friendly";
    world.note("The grey ferrywoman nods.");
    game::find_session(world.campaign.sessions, world.session)->people = {stranger};
    game::merge_entries(world.campaign, stranger, selbra);
    CHECK(world.campaign.registered.entries.size() == 2);
    CHECK(world.line(0) == "Selbra nods.");
    CHECK(world.entry(selbra).summary == "has one eye");
    CHECK(world.entry(selbra).notes == "rows at night");
    CHECK(world.entry(selbra).place == ferry);
    CHECK(world.entry(selbra).first_met_day == 12); // the earlier day
    CHECK(
        game::find_session(world.campaign.sessions, world.session)->people ==
        std::vector<base::Id>{selbra}
    );
    game::merge_entries(world.campaign, selbra, selbra); // nothing happens
    CHECK(world.campaign.registered.entries.size() == 2);
}

TEST_CASE("register: taken out, nothing points to it any more and what is written stays") {
    World world;
    const base::Id ferry = world.enter("Wrack Ferry", game::Kind::place);
    const base::Id selbra = world.enter("Selbra");
    world.entry(selbra).place = ferry;
    world.note("At Wrack Ferry.");
    game::find_session(world.campaign.sessions, world.session)->people = {ferry, selbra};
    game::remove_entry(world.campaign, ferry);
    CHECK(world.entry(selbra).place == base::no_id);
    CHECK(
        game::find_session(world.campaign.sessions, world.session)->people ==
        std::vector<base::Id>{selbra}
    );
    CHECK(world.line(0) == "At Wrack Ferry.");
}

TEST_CASE("register: found by a part of the name, a slip, or a word of the notes") {
    World world;
    world.enter("Selbra");
    world.enter("Old Selbrand");
    const base::Id ferry = world.enter("Wrack Ferry", game::Kind::place);
    world.entry(ferry).notes = "Selbra's home";
    const auto names = [&](const std::string& text, std::vector<game::Kind> kinds = {}) {
        std::string all;
        for (const std::size_t place :
             game::search_register(world.campaign.registered, {text, std::move(kinds)}))
            all += world.campaign.registered.entries[place].name + ";";
        return all;
    };
    CHECK(names("selbra") == "Selbra;Old Selbrand;Wrack Ferry;");
    CHECK(names("Slebra") == "Old Selbrand;Selbra;"); // one slip each
    CHECK(names("", {game::Kind::place}) == "Wrack Ferry;");
    CHECK(names("") == "Old Selbrand;Selbra;Wrack Ferry;");
    CHECK(names("nobody").empty());
}
