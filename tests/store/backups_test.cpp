#include "store/backups.h"
#include "store/samples.h"
#include "store/simulated_disk.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdio>
#include <set>

namespace {

const store::StorePaths paths = store::store_paths("/table/camp.json");

std::string stamp(int day, int hour, int minute = 0) {
    char text[32];
    std::snprintf(
        text,
        sizeof text,
        "2026-%02d-%02dT%02d-%02d-00Z",
        1 + (day - 1) / 28,
        1 + (day - 1) % 28,
        hour,
        minute
    );
    return text;
}

std::vector<std::string> kept_of(const std::vector<std::string>& names) {
    const std::vector<std::string> out = store::thinned_out(names);
    std::vector<std::string> kept = names;
    std::erase_if(kept, [&](const std::string& name) {
        return std::find(out.begin(), out.end(), name) != out.end();
    });
    return kept;
}

} // namespace

TEST_CASE("backups: of a long day the newest of each of the last 24 hours is kept") {
    std::vector<std::string> names;
    for (int hour = 0; hour < 24; ++hour)
        for (int minute = 0; minute < 60; minute += 10)
            names.push_back(stamp(1, hour, minute) + ".json");
    const auto kept = kept_of(names);
    CHECK(kept.size() == 24);
    CHECK(std::all_of(kept.begin(), kept.end(), [](const std::string& name) {
        return name.find("-50-00Z") != std::string::npos;
    }));
}

TEST_CASE(
    "backups: of months of weekly play thirty days are kept, and the hours of the last sessions"
) {
    std::vector<std::string> names;
    for (int day = 1; day <= 100; ++day)
        for (int hour = 19; hour < 23; ++hour)
            names.push_back(stamp(day, hour) + ".json");
    const auto kept = kept_of(names);
    std::set<std::string> days;
    for (const std::string& name : kept)
        days.insert(name.substr(0, 10));
    CHECK(days.size() == 30);
    CHECK(*days.begin() == stamp(71, 0).substr(0, 10));
    CHECK(kept.size() == 24 + 24); // six days with all four hours, twenty-four with their last
}

TEST_CASE("backups: originals of migrated files and files of other people are never thinned") {
    std::vector<std::string> names;
    for (int minute = 0; minute < 60; ++minute)
        names.push_back(stamp(1, 5, minute) + ".json");
    names.push_back(stamp(1, 5, 1) + "-version-1.json");
    names.push_back("before the great flood.json");
    const auto kept = kept_of(names);
    CHECK(kept.size() == 3);
}

TEST_CASE("backups: the same content is not kept twice") {
    simulated::Disk disk;
    REQUIRE(store::add_backup(disk, paths, "one", stamp(1, 1)).ok());
    REQUIRE(store::add_backup(disk, paths, "one", stamp(1, 2)).ok());
    REQUIRE(store::add_backup(disk, paths, "two", stamp(1, 3)).ok());
    CHECK(disk.names().size() == 2);
    CHECK(disk.content("/table/camp.backups/" + stamp(1, 3) + ".json") == "two");
}

TEST_CASE("backups: of two in the same second the later one stays") {
    simulated::Disk disk;
    REQUIRE(store::add_backup(disk, paths, "one", stamp(1, 1)).ok());
    REQUIRE(store::add_backup(disk, paths, "two", stamp(1, 1)).ok());
    CHECK(
        disk.names() == std::vector<std::string>{"/table/camp.backups/" + stamp(1, 1) + "-2.json"}
    );
    CHECK(disk.content("/table/camp.backups/" + stamp(1, 1) + "-2.json") == "two");
}

TEST_CASE("backups: the newest that can be read is found") {
    simulated::Disk disk;
    const std::string good = store::write_campaign(samples::demo(), 9);
    disk.put("/table/camp.backups/" + stamp(1, 1) + ".json", good);
    disk.put("/table/camp.backups/" + stamp(1, 2) + ".json", good.substr(0, 500));
    const auto backup = store::newest_good_backup(disk, paths);
    REQUIRE(backup.has_value());
    CHECK(backup->loaded.revision == 9);
    CHECK(backup->path.filename().string() == stamp(1, 1) + ".json");
}
