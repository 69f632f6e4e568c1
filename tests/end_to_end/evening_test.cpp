// A whole evening in the real program, from an empty campaign to the opening of the next one, by a
// real mouse and keyboard; then the file.
#include "end_to_end/campaign_on_disk.h"
#include "end_to_end/screen.h"
#include "store/verify.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <sstream>
#include <string>
#include <thread>
#include <vector>

using end_to_end::Folder;
using end_to_end::is_on_disk;
using end_to_end::journal_of;
using end_to_end::Program;
using end_to_end::read_json;
using end_to_end::Screen;
using end_to_end::wait_until;
using nlohmann::json;

namespace {

const std::filesystem::path source = TABLEWICK_SOURCE_DIR;

// One evening: the program, the campaign it has open, and what a GM does one after the other.
struct Evening {
    const Folder folder{};
    const Screen screen{};
    const std::filesystem::path file = folder.path() / "evening.json";
    Program program{screen, folder, Program::CommandLine{{"--new", file.string()}}};

    // What was done must be on the disk before the next thing is done.
    void expect(const std::string& label) const {
        CAPTURE(label);
        REQUIRE(wait_until([&] { return is_on_disk(file, label); }));
    }

    // A new entry waits for its name, with the keyboard in the field.
    void name_it(const std::string& name) {
        REQUIRE(program.wait_for("##name"));
        std::this_thread::sleep_for(std::chrono::milliseconds(500));
        program.type(name);
        program.key("Return");
        expect("is now called " + name);
    }

    void enter_character(const std::string& name, int armor_class, int hit_points) {
        program.press("Add a player character");
        name_it(name);
        program.fill("##ac", std::to_string(armor_class));
        program.fill("##hp", std::to_string(hit_points));
        program.press("Back to the party");
    }

    // The hits on the disk so far.
    std::vector<std::string> hits() const {
        std::vector<std::string> lines;
        std::istringstream journal(journal_of(file));
        for (std::string line; std::getline(journal, line);)
            if (line.find(" loses 9") != std::string::npos) lines.push_back(line);
        return lines;
    }

    // Whoever is up is hit for 9, three times; the turn of one that falls ends by itself.
    void hit_everybody_once() {
        for (std::size_t turn = 1; turn <= 3; ++turn) {
            program.key("9");
            program.key("h");
            REQUIRE(wait_until([&] { return hits().size() == turn; }));
            if (hits().back().find("is defeated") == std::string::npos) program.key("Return");
        }
    }

    void prepare();
    void plan();
    void fight();
    void roam();
    void wrap_up();
    void open_the_next();
};

void Evening::prepare() {
    program.press("Prep");
    enter_character("Ysolde Marr", 20, 48);
    enter_character("Orrin Tace", 21, 40);
    program.press("Creature Shelf");
    program.press("New creature");
    name_it("Reed Lurker");
    program.fill("##ac", "17");
    program.fill("##hp", "5");
    program.press("Prepared Encounters");
    program.press("Prepare an encounter");
    name_it("At the sluice");
    program.press("Add creatures");
    program.press("Reed Lurker"); // in the list that opened; on the shelf its form is open
    expect("At the sluice: 1 Reed Lurker");
}

void Evening::plan() {
    program.key("shift+F7");
    program.press("Begin the first session");
    expect("Begin Session 1");
    program.fill("##Title", "The wet door");
    expect("Title: The wet door");
    program.press("##new goal");
    program.type("Find who opened the sluice");
    program.key("Return");
    expect("Find who opened the sluice");
}

void Evening::fight() {
    program.press("Prepared Encounters");
    program.press("Start this fight");
    expect("Start the fight At the sluice");
    program.press("Fight");
    program.press("Roll all that are missing");
    program.press("Begin the fight");
    REQUIRE(program.wait_for("Next turn"));
    hit_everybody_once();
    expect("is defeated");
    program.key("ctrl+n");
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    program.type("! Drove the lurker from Wrack Ferry");
    program.key("Return");
    expect("Note: Drove the lurker from Wrack Ferry");
    program.press("End fight");
    expect("End the fight At the sluice");
}

void Evening::roam() {
    program.press("Roam");
    program.key("shift+F5");
    program.press("Add the first place");
    expect("Add the place");
    program.key("shift+F2");
    program.press("Use it");
    expect("Use the name");
    program.key("shift+F8");
    program.press("##what");
    program.type("the sluice chest");
    program.fill("##amount", "12 gp 3 sp");
    expect("Note 12 gp 3 sp found: the sluice chest");
}

void Evening::wrap_up() {
    program.press("Wrap-up");
    program.press("Recap Page");
    program.press("Fill from the notes");
    expect("Fill the recap from the notes");
}

void Evening::open_the_next() {
    program.key("shift+F7");
    program.press("Begin another");
    expect("Begin Session 2");
    REQUIRE(program.quit());
}

} // namespace

TEST_CASE("end to end: an evening from an empty campaign to the opening of the next") {
    Evening evening;
    evening.prepare();
    evening.plan();
    evening.fight();
    evening.roam();
    evening.wrap_up();
    evening.open_the_next();

    const json campaign = read_json(evening.file);
    REQUIRE(campaign.is_object());
    CHECK(store::verify_campaign(evening.file, source / "assets").is_good);
    CHECK(campaign["party"]["characters"].size() == 2);
    CHECK(campaign["party"]["characters"][0]["name"] == "Ysolde Marr");
    CHECK(campaign["party"]["characters"][0]["statistics"]["hit_points"] == 48);
    CHECK(campaign["encounter"]["phase"] == "no_fight");
    int lost = 0; // each of the party was hit once for 9
    for (const json& combatant : campaign["encounter"]["combatants"])
        lost += (combatant["name"] == "Ysolde Marr" ? 48 : 40) - combatant["hp"].get<int>();
    CHECK(lost == 18);
    REQUIRE(campaign["sessions"]["sessions"].size() == 2);
    const json& first = campaign["sessions"]["sessions"][0];
    const json& next = campaign["sessions"]["sessions"][1];
    CHECK(first["title"] == "The wet door");
    REQUIRE(first["lines"].size() == 1);
    CHECK(first["lines"][0]["round"].get<int>() >= 1); // written while the fight was on
    CHECK(first["recap"]["deeds"] == "Drove the lurker from Wrack Ferry");
    REQUIRE(next["goals"].size() == 1); // it is not reached yet
    CHECK(next["goals"][0]["text"] == "Find who opened the sluice");
    CHECK(campaign["treasury"]["lines"][0]["amount"] == 1230);
    CHECK(campaign["names"]["used"].size() == 1);
    CHECK(campaign["register"]["entries"].size() == 1); // whoever bears the name
    CHECK(campaign["places"]["places"].size() == 1);
}
