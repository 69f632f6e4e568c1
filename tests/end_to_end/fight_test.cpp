// The real program under a virtual screen, with a real mouse and keyboard, through a full round;
// then the file.
#include "end_to_end/campaign_on_disk.h"
#include "end_to_end/screen.h"
#include "game/campaign.h"
#include "store/verify.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

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

json combatant(const json& campaign, const std::string& name) {
    for (const json& each : campaign["encounter"]["combatants"]) {
        if (each["name"] == name) return each;
    }
    FAIL("nobody is called " << name);
    return {};
}

int how_many_have(const json& campaign, const std::string& condition) {
    int count = 0;
    for (const json& each : campaign["encounter"]["combatants"])
        for (const json& active : each.value("conditions", json::array()))
            count += active.value("key", "") == condition ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("end to end: a full round by mouse and keyboard, and all of it is in the file") {
    const Folder folder;
    const Screen screen;
    const std::filesystem::path file = folder.path() / "evening.json";
    std::filesystem::copy_file(source / "demo_campaign.json", file);
    {
        Program program(screen, folder, file);
        program.press("Fight");
        program.press("Roll all that are missing");
        program.press("Begin the fight");
        REQUIRE(program.wait_for("Next turn"));
        CHECK(wait_until([&] { return is_on_disk(file, "Begin"); }));

        // Somebody is hurt by typing digits and H: whoever is current, nobody else being picked.
        program.key("7");
        program.key("h");
        CHECK(wait_until([&] { return is_on_disk(file, " loses 7"); }));

        // Then a condition, found by typing.
        program.press("Condition");
        REQUIRE(program.wait_for("Give it"));
        program.type("prone");
        program.key("Return");
        CHECK(wait_until([&] { return is_on_disk(file, "Give prone to "); }));
        program.key("Return");
        CHECK(wait_until([&] { return is_on_disk(file, "Round 1: "); }));

        // The next turn is taken back, and forward again by the mouse.
        program.key("ctrl+z");
        CHECK(wait_until([&] { return is_on_disk(file, "Undid"); }));
        program.press("Next turn");
        for (int turn = 0; turn < 16; ++turn)
            program.key("Return");
        CHECK(wait_until([&] { return is_on_disk(file, "Round 2: "); }));
        REQUIRE(program.quit());
    }
    const json campaign = read_json(file);
    REQUIRE(campaign.is_object());
    CHECK(campaign["encounter"]["phase"] == "running");
    CHECK(campaign["encounter"]["round"].get<int>() >= 2);
    const int prone_before = how_many_have(read_json(source / "demo_campaign.json"), "prone");
    CHECK(how_many_have(campaign, "prone") == prone_before + 1);
    CHECK(store::verify_campaign(file, source / "assets").is_good);
    const auto revision = campaign["revision"].get<std::uint64_t>();

    // Started again, all is there: the fight goes on where it stood.
    Program program(screen, folder, file);
    REQUIRE(program.wait_for("Next turn"));
    program.key("Return");
    CHECK(wait_until([&] {
        return journal_of(file).find("\"revision\":" + std::to_string(revision + 1)) !=
               std::string::npos;
    }));
    REQUIRE(program.quit());
    CHECK(read_json(file)["revision"] == revision + 1);
}

TEST_CASE(
    "end to end: the plug is pulled in the middle of a fight and nothing that was saved is lost"
) {
    const Folder folder;
    const Screen screen;
    const std::filesystem::path file = folder.path() / "evening.json";
    std::filesystem::copy_file(source / "assets/campaigns/lantern_quay.json", file);
    {
        Program program(screen, folder, file);
        program.press("Fight");
        REQUIRE(program.wait_for("Next turn"));
        program.key("5");
        program.key("h");
        REQUIRE(wait_until([&] { return is_on_disk(file, "Perrin Dask loses 5"); }));
        program.kill_it();
    }
    Program program(screen, folder, file);
    REQUIRE(program.wait_for("Next turn"));
    REQUIRE(program.quit());
    CHECK(combatant(read_json(file), "Perrin Dask")["hp"] == 14); // 19 before
    CHECK(store::verify_campaign(file, source / "assets").is_good);
}

TEST_CASE("end to end: with no campaign named the demo opens from a copy, never the original") {
    const Folder folder;
    const Screen screen;
    const json original = read_json(source / "demo_campaign.json");
    {
        Program program(screen, folder, std::filesystem::path{});
        program.press("Fight");
        program.press("Roll all that are missing");
        program.press("Begin the fight");
        REQUIRE(program.wait_for("Next turn"));
        REQUIRE(program.quit());
    }
    CHECK(read_json(source / "demo_campaign.json") == original);
    CHECK(
        read_json(folder.path() / "data/tablewick/demo_campaign.json")["encounter"]["phase"] ==
        "running"
    );
}
