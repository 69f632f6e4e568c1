// Who got which name, favourites, own lists.
#include "game/name_keeping.h"
#include "game/own_name_lists.h"
#include "game/registering.h"

#include <doctest/doctest.h>

namespace {

game::NameGiven ferrywoman() {
    return {"Selbra", "fen_given", game::Kind::person, "ferrywoman with one eye", "Wrack Ferry"};
}

} // namespace

TEST_CASE("names: a used name has who, where and the in-world day, and stands in the Register") {
    game::Campaign campaign;
    campaign.clock.day = 11;
    const game::Id id = game::use_name(campaign, ferrywoman());
    const game::UsedName* used = game::find_used_name(campaign.names, id);
    REQUIRE(used != nullptr);
    CHECK(used->who == "ferrywoman with one eye");
    CHECK(used->where == "Wrack Ferry");
    CHECK(used->day == 11);
    const game::RegisterEntry* entry = game::find_register_entry(campaign.registered, used->entry);
    REQUIRE(entry != nullptr);
    CHECK(entry->name == "Selbra");
    CHECK(entry->kind == game::Kind::person);
    CHECK(entry->summary == "ferrywoman with one eye, Wrack Ferry");
}

TEST_CASE("names: a fight that runs past midnight counts for the day") {
    game::Campaign campaign;
    campaign.clock = {11, 86390, {}};
    campaign.encounter.elapsed_seconds = 30;
    campaign.encounter.phase = game::Phase::running;
    game::use_name(campaign, ferrywoman());
    CHECK(campaign.names.used.back().day == 12);
}

TEST_CASE("names: a place of the Register becomes the place of the entry") {
    game::Campaign campaign;
    const game::Id ferry = game::add_register_entry(
        campaign.registered, {0, "wrack ferry", game::Kind::place, "", "", 0, "", 0, false, {}}
    );
    game::use_name(campaign, ferrywoman());
    CHECK(campaign.registered.entries.back().place == ferry);
    CHECK(campaign.registered.entries.back().summary == "ferrywoman with one eye");
}

TEST_CASE("names: a name that the Register knows keeps its entry") {
    game::Campaign campaign;
    const game::Id known = game::add_register_entry(
        campaign.registered, {0, "SELBRA", game::Kind::person, "old", "", 0, "", 0, false, {}}
    );
    const game::Id id = game::use_name(campaign, ferrywoman());
    CHECK(campaign.registered.entries.size() == 1);
    CHECK(campaign.names.used.back().entry == known);
    game::unuse_name(campaign, id);
    CHECK(campaign.registered.entries.size() == 1); // it was there before
}

TEST_CASE("names: taken back, the entry goes along unless something was added to it") {
    game::Campaign campaign;
    game::unuse_name(campaign, game::use_name(campaign, ferrywoman()));
    CHECK(campaign.names.used.empty());
    CHECK(campaign.registered.entries.empty());
    const game::Id id = game::use_name(campaign, ferrywoman());
    campaign.registered.entries.back().notes = "owes Bram two coins";
    game::unuse_name(campaign, id);
    CHECK(campaign.names.used.empty());
    CHECK(campaign.registered.entries.size() == 1);
    game::unuse_name(campaign, 99); // gone already: nothing happens
}

TEST_CASE("names: a place that others stand at stays in the Register") {
    game::Campaign campaign;
    const game::Id place =
        game::use_name(campaign, {"Wrack Ferry", "", game::Kind::place, "four houses", ""});
    game::use_name(campaign, ferrywoman());
    game::unuse_name(campaign, place);
    CHECK(campaign.registered.entries.size() == 2);
}

TEST_CASE("names: who and where told later reach the untouched entry") {
    game::Campaign campaign;
    const game::Id id =
        game::use_name(campaign, {"Selbra", "fen_given", game::Kind::person, "", ""});
    game::tell_used_name(campaign, id, "ferrywoman", "the ferry");
    CHECK(campaign.names.used.back().who == "ferrywoman");
    CHECK(campaign.registered.entries.back().summary == "ferrywoman, the ferry");
    campaign.registered.entries.back().summary = "my own words";
    game::tell_used_name(campaign, id, "smuggler", "the ferry");
    CHECK(campaign.names.used.back().who == "smuggler");
    CHECK(campaign.registered.entries.back().summary == "my own words");
}

TEST_CASE("names: used names are found by name, who or where, newest first") {
    game::Campaign campaign;
    game::use_name(campaign, ferrywoman());
    game::use_name(campaign, {"Al\u00E9ra", "", game::Kind::person, "lamplighter", "quay"});
    using Found = std::vector<std::size_t>;
    CHECK(game::search_used_names(campaign.names, "") == Found{1, 0});
    CHECK(game::search_used_names(campaign.names, "alera") == Found{1});
    CHECK(game::search_used_names(campaign.names, "ONE EYE") == Found{0});
    CHECK(game::search_used_names(campaign.names, "quay") == Found{1});
    CHECK(game::search_used_names(campaign.names, "nobody").empty());
}

TEST_CASE("names: a favourite goes when it is used") {
    game::Campaign campaign;
    game::toggle_favourite_name(campaign.names, "Selbra", "fen_given");
    CHECK(game::is_favourite_name(campaign.names, "Selbra"));
    game::use_name(campaign, ferrywoman());
    CHECK_FALSE(game::is_favourite_name(campaign.names, "Selbra"));
    game::toggle_favourite_name(campaign.names, "Quilla", "");
    game::toggle_favourite_name(campaign.names, "Quilla", "");
    CHECK(campaign.names.favourites.empty());
}

TEST_CASE("names: a pasted text becomes names, whatever stands between them") {
    using Names = std::vector<std::string>;
    CHECK(game::split_names("Addel\nBodwin\r\n\n  Corra  ") == Names{"Addel", "Bodwin", "Corra"});
    CHECK(game::split_names("Addel, Bodwin; Corra,,") == Names{"Addel", "Bodwin", "Corra"});
    CHECK(
        game::split_names("1. Addel\n- Bodwin\n* The Muddy Queen") ==
        Names{"Addel", "Bodwin", "The Muddy Queen"}
    );
    CHECK(game::split_names("Addel, addel, ADDEL") == Names{"Addel"});
    CHECK(game::split_names("E\u0301va, \u00C9va") == Names{"\u00C9va"});
    CHECK(game::split_names(" , 12 ; -\n").empty());
    CHECK(game::split_names(std::string(500, 'a')).empty()); // no name is that long
}

TEST_CASE("names: own lists are written, added to, renamed and deleted") {
    game::NameBook book;
    const game::Id list = game::add_name_list(book, "Own names", game::Kind::person);
    const game::Id second = game::add_name_list(book, "Own names", game::Kind::place);
    CHECK(game::find_name_list(book, second)->name == "Own names 2");
    CHECK(game::add_to_name_list(book, list, {"Addel", "Bodwin"}) == 2);
    CHECK(game::add_to_name_list(book, list, {"ADDEL", "Corra"}) == 1);
    game::remove_from_name_list(book, list, "Bodwin");
    CHECK(game::find_name_list(book, list)->names == std::vector<std::string>{"Addel", "Corra"});
    book.used.push_back({});
    book.used.back().list = "Own names";
    game::rename_name_list(book, list, "Own names 2");
    CHECK(game::find_name_list(book, list)->name == "Own names 2 2"); // that one was taken
    CHECK(book.used.back().list == "Own names 2 2");
    game::set_name_list_kind(book, list, game::Kind::item);
    CHECK(game::find_name_list(book, list)->kind == game::Kind::item);
    game::remove_name_list(book, list);
    CHECK(game::find_name_list(book, list) == nullptr);
    CHECK(game::add_to_name_list(book, list, {"Addel"}) == 0);
}
