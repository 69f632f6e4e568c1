// Ready calendars from their files, and what is said of a broken one.
#include "store/calendars.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <functional>
#include <unistd.h>

namespace {

using nlohmann::json;

json small_calendar() {
    return {
        {"format", "tablewick-calendar"},
        {"name", "Small"},
        {"parts",
         {{{"id", 1}, {"name", "Ebb"}, {"days", 30}},
          {{"id", 2}, {"name", "Flow"}, {"days", 31}}}}};
}

std::string complaint(const std::function<void(json&)>& change) {
    json calendar = small_calendar();
    change(calendar);
    const auto read = store::read_calendar(calendar.dump(1), "small.json");
    return read.ok() ? std::string("none") : base::to_text(read.error());
}

} // namespace

TEST_CASE("calendars: all files of the program are read") {
    const store::ReadyCalendars ready =
        store::load_calendars(std::string(TABLEWICK_SOURCE_DIR) + "/assets");
    for (const base::Error& error : ready.errors)
        FAIL(base::to_text(error));
    REQUIRE(ready.calendars.size() == 3);
    CHECK(ready.calendars[0].name == "Gregorian");
    CHECK(ready.calendars[0].next_id > 60);
}

TEST_CASE("calendars: a small file is enough, and its next id stands above every other") {
    const auto read = store::read_calendar(small_calendar().dump(), "small.json");
    REQUIRE(read.ok());
    CHECK(read.value().parts.size() == 2);
    CHECK(read.value().next_id == 3);
}

TEST_CASE("calendars: what is wrong is named with file, line and pointer") {
    CHECK(complaint([](json&) {}) == "none");
    const std::string end = " Correct it there, or put the original file back.";
    CHECK(
        complaint([](json& c) { c["format"] = "other"; }) ==
        "small.json:1:1: This is not a calendar: its \"format\" must be \"tablewick-calendar\"." +
            end
    );
    CHECK(complaint([](json& c) {
              c["parts"][0]["days"] = "many";
          }).find("(/parts/0/days)") != std::string::npos);
    CHECK(complaint([](json& c) {
              c["parts"][0]["days"] = 99999;
          }).find("(/parts/0/days)") != std::string::npos);
    CHECK(complaint([](json& c) {
              c["parts"][1]["id"] = 1;
          }).find("/parts/1") != std::string::npos);
    CHECK(complaint([](json& c) {
              c["parts"][1]["length"] = 31;
          }).find("(/parts/1/length): A calendar has no \"length\".") != std::string::npos);
    CHECK(
        complaint([](json& c) {
            c["midwinter"] = {{"part", 7}, {"day", 1}};
        }).find("(/midwinter/part): The id of one of the parts is needed here, not 7.") !=
        std::string::npos
    );
    CHECK(complaint([](json& c) {
              c["holidays"] = {{{"id", 5}, {"name", "Fair"}, {"part", 1}, {"day", 31}}};
          }).find("Fair is on day 31, but Ebb has 30.") != std::string::npos);
    CHECK(complaint([](json& c) { c.erase("name"); }).find("needs a name") != std::string::npos);
    CHECK(complaint([](json& c) {
              c.erase("parts");
          }).find("at least one month") != std::string::npos);
    CHECK_FALSE(store::read_calendar("{", "small.json").ok());
}

TEST_CASE("calendars: a broken file leaves the rest") {
    const std::filesystem::path assets = std::filesystem::temp_directory_path() /
                                         ("tablewick_calendars_" + std::to_string(getpid()));
    std::filesystem::create_directories(assets / "calendars");
    std::ofstream(assets / "calendars" / "a.json") << "{";
    std::ofstream(assets / "calendars" / "b.json") << small_calendar();
    std::ofstream(assets / "calendars" / "notes.txt") << "not a calendar";
    const store::ReadyCalendars ready = store::load_calendars(assets);
    std::filesystem::remove_all(assets);
    CHECK(ready.calendars.size() == 1);
    REQUIRE(ready.errors.size() == 1);
    CHECK(ready.errors[0].place.file.find("a.json") != std::string::npos);
    CHECK(store::load_calendars("/nowhere").calendars.empty());
}
