// An evening in the real program by the keyboard alone, from an empty campaign to opening it again:
// Find, the keys of the panels, Tab and arrows. No mouse event is sent.
#include "end_to_end/campaign_on_disk.h"
#include "end_to_end/screen.h"
#include "store/verify.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <string>
#include <thread>
#include <vector>

using end_to_end::Folder;
using end_to_end::is_on_disk;
using end_to_end::Program;
using end_to_end::read_json;
using end_to_end::Screen;
using end_to_end::wait_until;
using nlohmann::json;

namespace {

const std::filesystem::path source = TABLEWICK_SOURCE_DIR;

struct KeyboardEvening {
    const Folder folder{};
    const Screen screen{};
    const std::filesystem::path file = folder.path() / "keys.json";
    Program program{screen, folder, Program::CommandLine{{"--new", file.string()}}};

    // What was done must be on the disk before the next thing is done.
    void expect(const std::string& label) const {
        CAPTURE(label);
        REQUIRE(wait_until([&] { return is_on_disk(file, label); }));
    }

    // Finds an action by some of its words and does it; the box is gone then.
    void find_and_do(const std::string& words, const std::string& title) {
        CAPTURE(title);
        program.key("ctrl+f");
        REQUIRE(program.wait_for("##find"));
        settle();
        program.type(words);
        REQUIRE(program.wait_for(title));
        settle();
        program.key("Return");
        REQUIRE(wait_until([&] { return !program.shows("##find"); }));
        settle();
    }

    // The keyboard is in the field of a new entry.
    void name_it(const std::string& name) {
        REQUIRE(program.wait_for("##name"));
        settle();
        program.type(name);
        program.key("Tab");
        expect("is now called " + name);
    }

    void tab_on(int controls) {
        for (int at = 0; at < controls; ++at)
            program.key("Tab");
    }

    void enter_character(const std::string& name, int armor_class, int hit_points) {
        find_and_do("add player", "Add a player character");
        name_it(name);
        tab_on(4); // from the player: calling, remove, level, AC
        program.type(std::to_string(armor_class));
        tab_on(1);
        program.type(std::to_string(hit_points));
        program.key("Return");
        expect("HP of " + name + ": " + std::to_string(hit_points));
    }

    static void settle() { std::this_thread::sleep_for(std::chrono::milliseconds(600)); }

    void prepare();
    void plan();
    void fight();
    void roam();
    void wrap_up();
};

void KeyboardEvening::prepare() {
    program.key("ctrl+1");
    enter_character("Ysolde Marr", 20, 48);
    enter_character("Orrin Tace", 21, 40);
    find_and_do("new creature", "New creature");
    name_it("Reed Lurker");
    find_and_do("prepare encounter", "Prepare an encounter");
    name_it("At the sluice");
    find_and_do("add creatures", "Add creatures to the encounter");
    program.key("Down");
    program.key("Return");
    expect("At the sluice: 1 Reed Lurker");
}

void KeyboardEvening::plan() {
    find_and_do("begin session", "Begin a session");
    expect("Begin Session 1");
    find_and_do("set goal", "Set a goal for the session");
    program.type("Find who opened the sluice");
    program.key("Return");
    expect("Plan: Find who opened the sluice");
}

void KeyboardEvening::fight() {
    find_and_do("start prepared", "Start the prepared encounter");
    expect("Start the fight At the sluice");
    program.key("ctrl+2");
    find_and_do("initiative opponents", "Roll initiative for the opponents");
    expect("Roll initiative for the opponents");
    find_and_do("type initiative", "Type initiative");
    program.type("52");
    program.key("Return");
    expect("Initiative of Ysolde Marr: 52");
    settle();
    program.type("51");
    program.key("Return");
    expect("Initiative of Orrin Tace: 51");
    find_and_do("begin fight", "Begin the fight, first round");
    expect("Begin the fight");
    program.type("9h");
    expect("Ysolde Marr loses 9");
    find_and_do("condition chosen", "A condition for the chosen");
    program.type("frightened");
    program.key("Return");
    expect("frightened");
    settle();
    program.key("Return"); // the keyboard belongs to the turns again
    expect("Round 1: Orrin Tace");
    program.key("ctrl+n");
    settle();
    program.type("! Held the sluice");
    program.key("Return");
    expect("Note: Held the sluice");
    find_and_do("end fight", "End the fight");
    expect("End the fight At the sluice");
}

void KeyboardEvening::roam() {
    program.key("ctrl+3");
    find_and_do("rest night", "Rest for the night");
    expect("Night's rest");
    program.key("shift+F2");
    settle();
    program.key("u");
    expect("Use the name");
    find_and_do("money found", "Money found");
    program.type("the sluice chest");
    tab_on(1);
    program.type("12 gp 3 sp");
    program.key("Return");
    expect("Note 12 gp 3 sp found: the sluice chest");
}

void KeyboardEvening::wrap_up() {
    program.key("ctrl+4");
    find_and_do("fill recap", "Fill the recap from the notes");
    expect("Fill the recap from the notes");
    find_and_do("save recap", "Save the recap as Markdown");
    const std::filesystem::path page = folder.path() / "keys-session-1.md";
    REQUIRE(wait_until([&] { return std::filesystem::exists(page); }));
    REQUIRE(program.quit());
}

} // namespace

TEST_CASE("end to end: an evening by the keyboard alone, and the campaign opened again") {
    KeyboardEvening evening;
    evening.prepare();
    evening.plan();
    evening.fight();
    evening.roam();
    evening.wrap_up();

    const json campaign = read_json(evening.file);
    REQUIRE(campaign.is_object());
    CHECK(store::verify_campaign(evening.file, source / "assets").is_good);
    const json& characters = campaign["party"]["characters"];
    REQUIRE(characters.size() == 2);
    CHECK(characters[0]["statistics"]["armor_class"] == 20);
    CHECK(characters[1]["statistics"]["hit_points"] == 40);
    CHECK(campaign["encounter"]["phase"] == "no_fight");
    REQUIRE(campaign["sessions"]["sessions"].size() == 1);
    const json& session = campaign["sessions"]["sessions"][0];
    CHECK(session["goals"][0]["text"] == "Find who opened the sluice");
    CHECK(session["recap"]["deeds"] == "Held the sluice");
    CHECK(campaign["treasury"]["lines"][0]["amount"] == 1230);
    CHECK(campaign["names"]["used"].size() == 1);
    CHECK(campaign["register"]["entries"].size() == 1);

    Program again(evening.screen, evening.folder, evening.file);
    CHECK(again.quit());
}
