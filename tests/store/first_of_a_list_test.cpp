// The first thing of every long list: undone, done again, removed, and replayed from the journal.
#include "store/campaign_json.h"
#include "store/document.h"
#include "store/json_text.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

namespace {

using game::Campaign;

template <class Part, class List>
void check_first(const char* what, Part Campaign::*part, List Part::*list) {
    CAPTURE(std::string(what));
    Campaign start;
    store::CampaignDocument document(start);
    store::Json replayed = store::campaign_value(document.view(), 0);
    document.set_sink([&replayed](const store::JournalEntry& entry) {
        replayed.patch_inplace(store::Json::parse(entry.patch));
        replayed["revision"] = entry.revision;
    });
    game::Edits edits;
    edits.add(part, "Add the first", [list](Part& changed) {
        typename List::value_type one;
        one.id = changed.next_id++;
        if constexpr (requires { one.name; }) one.name = "First";
        if constexpr (requires { one.title; }) one.title = "First";
        (changed.*list).push_back(one);
    });
    REQUIRE(document.carry_out(edits).ok());
    REQUIRE((document.view().*part.*list).size() == 1);
    document.undo();
    CHECK((document.view().*part.*list).empty());
    document.redo();
    CHECK((document.view().*part.*list).size() == 1);
    edits.add(part, "Remove it", [list](Part& changed) { (changed.*list).clear(); });
    REQUIRE(document.carry_out(edits).ok());
    document.undo();
    CHECK((document.view().*part.*list).size() == 1);
    const auto reading = store::read_campaign_value(replayed, "", "replayed");
    REQUIRE(reading.loaded.has_value());
    CHECK(reading.loaded->campaign == document.view());
}

} // namespace

TEST_CASE("bug: the first session, day page, place or name of a campaign is undone and replayed") {
    check_first("sessions", &Campaign::sessions, &game::Sessions::sessions);
    check_first("day book", &Campaign::day_book, &game::DayBook::pages);
    check_first("treasury", &Campaign::treasury, &game::Treasury::lines);
    check_first("own pages", &Campaign::own_pages, &game::OwnPages::pages);
    check_first("register", &Campaign::registered, &game::Register::entries);
    check_first("names", &Campaign::names, &game::NameBook::used);
    check_first("places", &Campaign::places, &game::Places::places);
    check_first("shelf", &Campaign::shelf, &game::CreatureShelf::creatures);
}
