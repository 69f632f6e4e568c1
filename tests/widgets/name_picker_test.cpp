// Names: pulled, given, taken back, grown, and lists of one's own.
#include "driver.h"
#include "fixtures.h"
#include "game/name_keeping.h"
#include "game/name_sound.h"
#include "game/registering.h"
#include "store/name_lists.h"
#include "widgets/name_picker.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

using Driver = driver::PanelDriver<widgets::NamePickerView>;

struct Table : Driver {
    explicit Table(
        game::Campaign campaign = fixtures::sluice_campaign(), const driver::Settings& settings = {}
    )
        : Driver(
              std::move(campaign), fixtures::four_degree(), widgets::draw_name_picker, settings
          ) {
        name_lists = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
        frames(3);
    }

    const std::string& called() const { return view.row.at(0); }

    const game::NameBook& book() const { return campaign().names; }

    const game::UsedName& last() const { return book().used.back(); }
};

game::Campaign with_used(const std::vector<std::string>& names) {
    game::Campaign campaign = fixtures::sluice_campaign();
    for (const std::string& name : names)
        game::use_name(campaign, {name, "fen_given", game::Kind::person, "somebody", "the bank"});
    return campaign;
}

} // namespace

TEST_CASE("names: a good name stands there at once, and one press gives the next") {
    Table ui;
    const std::string first = ui.called();
    CHECK(ui.seen().find(first) != std::string::npos);
    CHECK(ui.view.row.size() == 5);
    ui.click("Next name");
    CHECK(ui.called() != first);
    CHECK(ui.campaign().history.lines.empty()); // looking at names changes nothing
}

TEST_CASE("names: used with who and where, in the Register, and taken back by undo") {
    Table ui;
    const std::string name = ui.called();
    ui.fill("##who", "ferrywoman with one eye");
    ui.fill("##where", "Wrack Ferry");
    ui.click("Use it");
    REQUIRE(ui.book().used.size() == 1);
    CHECK(ui.last().name == name);
    CHECK(ui.last().who == "ferrywoman with one eye");
    CHECK(ui.last().where == "Wrack Ferry");
    CHECK(ui.last().day == ui.campaign().clock.day);
    CHECK(ui.last_edit() == "Use the name " + name + " for ferrywoman with one eye");
    REQUIRE(ui.campaign().registered.entries.size() == 1);
    CHECK(ui.campaign().registered.entries[0].name == name);
    CHECK(ui.campaign().registered.entries[0].kind == game::Kind::person);
    CHECK(ui.shows("and in the Register"));
    CHECK(ui.called() != name); // the next one stands there already
    CHECK(ui.view.who.empty());
    CHECK(ui.view.where == "Wrack Ferry");
    ui.undo();
    CHECK(ui.book().used.empty());
    CHECK(ui.campaign().registered.entries.empty());
    ui.redo();
    CHECK(ui.last().name == name);
}

TEST_CASE("names: the kind of the list is the kind of the entry") {
    Table ui;
    ui.click("##list");
    ui.click("Ships and barges");
    ui.click("Use it");
    CHECK(ui.campaign().registered.entries.at(0).kind == game::Kind::item);
    CHECK(ui.last().list == "ships");
}

TEST_CASE("names: un-used from the list of used names, and right after giving it") {
    Table ui(with_used({"Selbra", "Tollick"}));
    ui.click("Un-use", driver::near("Selbra"));
    REQUIRE(ui.book().used.size() == 1);
    CHECK(ui.last().name == "Tollick");
    CHECK(ui.campaign().registered.entries.size() == 1);
    ui.click("Use it");
    CHECK(ui.book().used.size() == 2);
    ui.click("Take back");
    CHECK(ui.book().used.size() == 1);
}

TEST_CASE("names: used names are searched, and who and where told later") {
    Table ui(with_used({"Selbra", "Tollick"}));
    ui.fill("##search", "toll");
    CHECK(ui.has("Tollick"));
    CHECK_FALSE(ui.has("Selbra"));
    ui.click("Tollick");
    ui.fill("##bearer", "eel boy");
    CHECK(ui.last().who == "eel boy");
    ui.fill("##met at", "the quay");
    CHECK(ui.last().where == "the quay");
    CHECK(ui.campaign().registered.entries.at(1).summary == "eel boy, the quay");
    ui.click("Tollick"); // closes it
    ui.fill("##search", "zzz");
    CHECK(ui.shows("No used name holds \"zzz\"."));
}

TEST_CASE("names: nothing with this letter, until it is let in again") {
    Table ui;
    const std::string barred = game::shown_initial(ui.called());
    const std::u32string initial = game::initial_of(ui.called());
    ui.click("###bar");
    for (int i = 0; i < 40; ++i) {
        for (const std::string& name : ui.view.row)
            CHECK(game::initial_of(name) != initial);
        ui.click("Next name");
    }
    ui.click("###not " + barred);
    CHECK(ui.view.barred.empty());
}

TEST_CASE("names: several letters are left out from the list of letters") {
    Table ui;
    ui.click("Letters");
    ui.click("A##letter");
    ui.click("K##letter");
    CHECK(ui.view.barred.count(U"a") == 1);
    CHECK(ui.view.barred.count(U"k") == 1);
    ui.click("A##letter");
    CHECK(ui.view.barred.size() == 1);
    ui.key(ImGuiKey_Escape);
    CHECK_FALSE(ui.has("A##letter"));
}

TEST_CASE("names: a further candidate becomes the name") {
    Table ui;
    const std::string other = ui.view.row.at(2);
    ui.click(other + "##candidate");
    CHECK(ui.called() == other);
}

TEST_CASE("names: something like this one") {
    Table ui;
    ui.click("##list");
    ui.click("Fen folk, given names");
    ui.fill("##own name", "Tollick");
    ui.click("Like this one");
    for (const std::string& name : ui.view.row)
        CHECK(name.substr(name.size() - 3) == "ick");
}

TEST_CASE("names: new ones grown from the list, none of it among them") {
    Table ui;
    ui.click("Grow new ones");
    REQUIRE(ui.view.row.size() == 5);
    for (const std::string& name : ui.view.row)
        for (const game::ReadyNameList& list : ui.name_lists)
            if (list.key == ui.view.list)
                CHECK(std::find(list.names.begin(), list.names.end(), name) == list.names.end());
    CHECK(ui.shows("grown"));
    const std::string grown = ui.called();
    ui.click("Use it");
    CHECK(ui.last().name == grown);
}

TEST_CASE("names: kept for later, found again, let go by using it") {
    Table ui;
    const std::string name = ui.called();
    ui.click("###keep");
    CHECK(game::is_favourite_name(ui.book(), name));
    ui.click("Next name");
    ui.click("###Kept");
    ui.click(name, driver::inside("section"));
    CHECK(ui.called() == name);
    ui.click("Use it");
    CHECK(ui.book().favourites.empty());
    CHECK(ui.shows("it goes when it is used"));
}

TEST_CASE("names: a name of one's own is looked at before it is used") {
    Table ui(with_used({"Tollick"}));
    ui.fill("##own name", "Tallick");
    CHECK(ui.called() == "Tallick");
    CHECK(ui.shows("looks like Tollick"));
    ui.click("Use it"); // the GM decides
    CHECK(ui.last().name == "Tallick");
}

TEST_CASE("names: by keyboard, but not while somebody types") {
    Table ui;
    const std::string first = ui.called();
    ui.key(ImGuiKey_N);
    const std::string second = ui.called();
    CHECK(second != first);
    ui.key(ImGuiKey_Space);
    CHECK(ui.called() != second);
    ui.key(ImGuiKey_U);
    CHECK(ui.book().used.size() == 1);
    ui.key(ImGuiKey_K);
    CHECK(ui.book().favourites.size() == 1);
    ui.click("##who");
    ui.type("nun");
    CHECK(ui.book().used.size() == 1);
    CHECK(ui.view.who == "nun");
    Table other;
    other.has_keyboard = false;
    const std::string name = other.called();
    other.key(ImGuiKey_N);
    CHECK(other.called() == name);
}

TEST_CASE("names: an own list is begun, named, pasted into, drawn from and deleted") {
    Table ui;
    ui.click("###Own lists");
    ui.click("New list");
    ui.fill("##list name", "Smugglers");
    REQUIRE(ui.book().lists.size() == 1);
    CHECK(ui.book().lists[0].name == "Smugglers");
    ui.click("##pasted");
    ui.type("Addel, Bodwin; Corra, addel");
    ui.click("Add to the list");
    CHECK(ui.book().lists[0].names == std::vector<std::string>{"Addel", "Bodwin", "Corra"});
    CHECK(ui.shows("3 names added."));
    ui.click("##pasted");
    ui.type("Corra, Dunna");
    ui.click("Add to the list");
    CHECK(ui.shows("1 name added, 1 left out."));
    ui.click("##list");
    ui.click("Smugglers");
    CHECK(
        std::find(ui.book().lists[0].names.begin(), ui.book().lists[0].names.end(), ui.called()) !=
        ui.book().lists[0].names.end()
    );
    ui.click("Grow new ones");
    CHECK(ui.shows("too small to grow names from"));
    ui.click("Delete list");
    CHECK(ui.book().lists.empty());
    CHECK_FALSE(ui.view.row.empty()); // from another list
    ui.undo();
    CHECK(ui.book().lists[0].names.size() == 4);
}

TEST_CASE("names: taken from a file, or one sentence why not") {
    Table ui;
    ui.read_text = [](const std::string& path) -> base::Result<std::string> {
        if (path == "names.txt") return std::string("Addel\nBodwin\n");
        return base::Error{base::ErrorKind::not_found, "There is no such file.", {}, {}};
    };
    ui.click("###Own lists");
    ui.click("New list");
    ui.key(ImGuiKey_Escape);
    ui.fill("##path", "gone.txt");
    ui.click("Take from file");
    CHECK(ui.shows("There is no such file."));
    CHECK(ui.book().lists.at(0).names.empty());
    ui.fill("##path", "names.txt");
    ui.click("Take from file");
    CHECK(ui.book().lists.at(0).names.size() == 2);
}

TEST_CASE("names: when nothing is left, it says so and similar ones can pass") {
    game::Campaign campaign = with_used({"Tollick"});
    campaign.names.lists.push_back(
        {campaign.names.next_id++, "Two", game::Kind::person, {"Tollick", "Tallick"}, {}}
    );
    Table ui(campaign);
    ui.click("##list");
    ui.click("Two");
    CHECK(ui.shows("No good name is left in this list: 1 in play, 1 too like a name in play."));
    CHECK(ui.shows("Grow new ones from it, or let similar ones pass too."));
    CHECK_FALSE(ui.has("Use it"));
    ui.click("Similar ones too");
    CHECK(ui.called() == "Tallick");
    CHECK(ui.shows("looks like Tollick"));
}

TEST_CASE("names: a list that has passed by begins again") {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.names.lists.push_back(
        {campaign.names.next_id++, "Two", game::Kind::person, {"Addel", "Quilla"}, {}}
    );
    Table ui(campaign);
    ui.click("##list");
    ui.click("Two");
    const std::string first = ui.called();
    ui.click("Next name");
    CHECK(ui.called() != first);
    ui.click("Next name");
    CHECK(ui.shows("The list begins again"));
    CHECK(ui.view.row.size() == 2);
}

TEST_CASE("names: without any list, the first step is one of your own") {
    Driver ui{fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_name_picker};
    CHECK(ui.shows("Names come from lists, and there is none."));
    ui.click("New list");
    REQUIRE(ui.campaign().names.lists.size() == 1);
    CHECK(ui.shows("No good name is left in this list."));
    CHECK(ui.has("##pasted"));
}

TEST_CASE("names: read only, names are looked at and none is given") {
    Table ui(with_used({"Selbra"}));
    ui.is_read_only = true;
    ui.frames(2);
    CHECK(ui.is_enabled("Next name"));
    CHECK_FALSE(ui.is_enabled("Use it"));
    CHECK_FALSE(ui.is_enabled("Un-use"));
    ui.key(ImGuiKey_U);
    CHECK(ui.book().used.size() == 1);
}

TEST_CASE("names: nothing is cut in any size") {
    for (const float width : {380.0F, 640.0F, 1280.0F})
        for (const float scale : {1.0F, 2.0F}) {
            driver::Settings settings;
            settings.size = {width * scale, 800.0F};
            settings.scale = scale;
            settings.is_touch = scale < 1.5F;
            Table ui(with_used({"Selbra", "Tollick"}), settings);
            ui.click("##list");
            ui.click("Taverns and inns");
            ui.click("###Own lists");
            ui.click("New list");
            CHECK(ui.has("Next name"));
        }
}
