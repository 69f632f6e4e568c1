// What Find looks through: every section of the campaign as entries that lead back to it.
#include "game/find_sources.h"
#include "game/own_page_keeping.h"

#include <doctest/doctest.h>

#include <algorithm>

using game::FindEntry;
using game::FindKind;

namespace {

const FindEntry& entry_with(const std::vector<FindEntry>& entries, const std::string& text) {
    CAPTURE(text);
    const auto found = std::find_if(entries.begin(), entries.end(), [&](const FindEntry& entry) {
        return entry.text == text;
    });
    REQUIRE(found != entries.end());
    return *found;
}

} // namespace

TEST_CASE("find sources: a name of the Register is found by who it is, its notes line by line") {
    game::Register registered;
    game::RegisterEntry inn;
    inn.id = 3;
    inn.name = "The Muddy Queen";
    inn.kind = game::Kind::place;
    game::RegisterEntry marta;
    marta.id = 4;
    marta.name = "Marta Quill";
    marta.summary = "ferrywoman";
    marta.place = 3;
    marta.notes = "Owes the reeve.\n\nFears the fog.";
    registered.entries = {inn, marta};
    const auto entries = game::find_in_register(registered);
    REQUIRE(entries.size() == 4);
    const FindEntry& name = entry_with(entries, "Marta Quill");
    CHECK(name.beside == "person, ferrywoman, The Muddy Queen");
    CHECK(name.also == name.beside);
    CHECK(name.target == game::FindTarget{FindKind::entry, 4, base::no_id, {}});
    const FindEntry& note = entry_with(entries, "Fears the fog.");
    CHECK(note.beside == "Marta Quill");
    CHECK(note.also.empty()); // not found by the name: that is an entry of its own
    CHECK(note.target.id == 4);
}

TEST_CASE("find sources: a session by its title, its plan and each line of its notes") {
    game::Sessions sessions;
    game::Session session;
    session.id = 7;
    session.number = 6;
    session.title = "The rope ferry";
    session.summary = "Cross the river.";
    session.scenes = {{8, "The cut rope", false, {}}};
    session.goals = {{9, "Find the knife", false, false, {}}};
    session.loot = {{10, "Twelve silver", false, {}}};
    game::NoteLine line;
    line.id = 11;
    line.text = "Selbra will not cross";
    session.lines = {line};
    sessions.sessions = {session};
    const auto entries = game::find_in_sessions(sessions);
    REQUIRE(entries.size() == 6);
    CHECK(entries[0].target.kind == FindKind::session);
    for (const char* text : {"Cross the river.", "The cut rope", "Find the knife", "Twelve silver"})
        CHECK(entry_with(entries, text).target.id == 7);
    const FindEntry& note = entry_with(entries, "Selbra will not cross");
    CHECK(note.target == game::FindTarget{FindKind::note, 7, 11, {}});
    CHECK(note.recency == 6);
}

TEST_CASE("find sources: used names are left out where the Register has them") {
    game::NameBook names;
    game::UsedName loose;
    loose.id = 1;
    loose.name = "Tollick";
    loose.who = "boy who sells eels";
    game::UsedName known = loose;
    known.id = 2;
    known.entry = 5;
    names.used = {loose, known};
    const auto entries = game::find_in_names(names);
    REQUIRE(entries.size() == 1);
    CHECK(entries[0].target.id == 1);
    CHECK(entries[0].beside == "boy who sells eels");
}

TEST_CASE("find sources: party, shelf, prepared fights and places with their notes") {
    game::Party party;
    party.characters.resize(1);
    party.characters[0].id = 2;
    party.characters[0].name = "Ysolde Marr";
    party.characters[0].player = "Lena";
    party.characters[0].notes = "Hates boats";
    CHECK(entry_with(game::find_in_party(party), "Ysolde Marr").also == "Lena");
    CHECK(entry_with(game::find_in_party(party), "Hates boats").target.id == 2);
    game::CreatureShelf shelf;
    shelf.creatures.resize(1);
    shelf.creatures[0].id = 3;
    shelf.creatures[0].name = "Reed Lurker";
    CHECK(entry_with(game::find_in_shelf(shelf), "Reed Lurker").target.kind == FindKind::creature);
    game::Preparation preparation;
    preparation.encounters.resize(1);
    preparation.encounters[0].id = 4;
    preparation.encounters[0].name = "Ambush at the sluice";
    preparation.encounters[0].note = "At dusk";
    CHECK(entry_with(game::find_in_preparation(preparation), "At dusk").target.id == 4);
    game::Places places;
    places.places.resize(1);
    places.places[0].id = 5;
    places.places[0].name = "Salt Ferry";
    CHECK(entry_with(game::find_in_places(places), "Salt Ferry").target.id == 5);
}

TEST_CASE("find sources: a rule is found by its other words, a page of one's own by its lines") {
    game::ReferenceEntry rule;
    rule.key = "cover";
    rule.title = "Cover";
    rule.text = "Something solid.";
    rule.also = {"wall"};
    game::ReferenceEntry page;
    page.key = game::own_page_key(7);
    page.chapter = "Own pages";
    page.title = "Tolls";
    page.text = "Two coppers a mule.\nA silver a wagon.";
    const auto entries = game::find_in_reference({rule, page});
    REQUIRE(entries.size() == 4);
    CHECK(entry_with(entries, "Cover").also == "Something solid. wall");
    CHECK(entry_with(entries, "Cover").beside == "Something solid.");
    CHECK(entry_with(entries, "A silver a wagon.").target.key == "own/7");
    CHECK(entry_with(entries, "A silver a wagon.").beside == "Tolls");
}
