#include "app/controls.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <unistd.h>

using app::ControlList;
using app::ControlsFile;

TEST_CASE("controls: the file lists what has a label, where it stands, and follows changes") {
    const std::filesystem::path file = std::filesystem::temp_directory_path() /
                                       ("tablewick-controls-" + std::to_string(::getpid()));
    const auto listed = [&file] {
        std::ifstream stream(file);
        return nlohmann::json::parse(stream);
    };
    ControlsFile controls(file.string());
    ControlList::note_item(7, {10, 20, 30, 40}, "Turn Order");
    ControlList::note_label(7, "Next turn");
    ControlList::note_item(8, {10, 20, 30, 40}, "Turn Order"); // has no label
    ControlList::note_item(9, {10, 20, 0, 0}, "Turn Order");   // out of sight
    ControlList::note_label(9, "Hidden");
    controls.after_frame();
    REQUIRE(listed().size() == 1);
    CHECK(listed()[0]["label"] == "Next turn");
    CHECK(listed()[0]["x"] == 10.0);
    CHECK(listed()[0]["y"] == 20.0);
    CHECK(listed()[0]["width"] == 30.0);
    CHECK(listed()[0]["height"] == 40.0);
    CHECK(listed()[0]["window"] == "Turn Order");

    ControlList::note_item(7, {10, 20, 30, 40}, "Turn Order");
    ControlList::note_label(7, "a name that is no \xff text");
    controls.after_frame();
    REQUIRE(listed().size() == 1);
    CHECK(listed()[0]["label"] != "Next turn");

    controls.after_frame();
    CHECK(listed().empty());
    std::filesystem::remove(file);
}
