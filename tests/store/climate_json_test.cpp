// Climates and the words of the weather, read from assets; and files with a slip in them.
#include "store/climate_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <functional>
#include <set>
#include <unistd.h>

namespace {

using nlohmann::json;

// A copy of the climates' assets that goes with the test.
struct Assets {
    Assets()
        : path(
              std::filesystem::temp_directory_path() /
              ("tablewick_climates_" + std::to_string(getpid()))
          ) {
        std::filesystem::remove_all(path);
        std::filesystem::create_directories(path);
        const std::filesystem::path real = TABLEWICK_SOURCE_DIR "/assets";
        for (const char* folder : {"climates", "weather"})
            std::filesystem::copy(real / folder, path / folder);
    }

    ~Assets() { std::filesystem::remove_all(path); }

    Assets(const Assets&) = delete;
    Assets& operator=(const Assets&) = delete;

    void change(const std::string& file, const std::function<void(json&)>& change) const {
        std::ifstream in(path / file);
        json content = json::parse(in);
        in.close();
        change(content);
        std::ofstream(path / file) << content.dump(2);
    }

    // The one problem that is found, as a person reads it.
    std::string problem() const {
        const auto reading = store::load_climates(path);
        REQUIRE(reading.problems.size() == 1);
        return base::to_text(reading.problems.front());
    }

    std::filesystem::path path;
};

std::string complaint(const std::string& file, const std::function<void(json&)>& change) {
    const Assets assets;
    assets.change(file, change);
    return assets.problem();
}

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("climates: eight or more that can be told apart, with figures of our own") {
    const auto reading = store::load_climates(TABLEWICK_SOURCE_DIR "/assets");
    CHECK(reading.problems.empty());
    CHECK(reading.climates.climates.size() >= 8);
    std::set<std::string> titles;
    for (const game::Climate& climate : reading.climates.climates) {
        CAPTURE(climate.key);
        titles.insert(climate.title);
        CHECK(climate.source.find("our own figures") == 0);
        CHECK(climate.summary.size() <= 80);
        CHECK(climate.summary.find('\n') == std::string::npos);
    }
    CHECK(titles.size() == reading.climates.climates.size());
    for (const game::WeatherRule& rule : reading.climates.rules) {
        CAPTURE(rule.line);
        CHECK_FALSE(rule.source.empty());
        CHECK(rule.line.size() <= 120);
    }
}

TEST_CASE("climates: a slip is said with file, pointer and what was expected") {
    const std::string rain = complaint("climates/steppe.json", [](json& top) {
        top["seasons"]["summer"]["weather"]["wet_after_dry"] = 1.7;
    });
    CHECK(holds(rain, "steppe.json"));
    CHECK(holds(rain, "/seasons/summer/weather/wet_after_dry"));
    CHECK(holds(rain, "a number from 0.0 to 1.0"));

    const std::string word = complaint("climates/steppe.json", [](json& top) {
        top["seasons"]["winter"]["weather"]["wet"]["frogs"] = 1;
    });
    CHECK(holds(word, "/seasons/winter/weather/wet"));
    CHECK(holds(word, "frogs"));

    const std::string none = complaint("climates/steppe.json", [](json& top) {
        top["seasons"]["autumn"]["weather"]["dry"] = json::object();
    });
    CHECK(holds(none, "/seasons/autumn/weather/dry"));
    CHECK(holds(none, "at least one weight above 0"));

    CHECK(holds(complaint("climates/steppe.json", [](json& top) { top.erase("mean_c"); }), "mean_c")
    );
    CHECK(holds(
        complaint("climates/steppe.json", [](json& top) { top["format"] = "recipe"; }),
        "\"tablewick-climate\""
    ));
}

TEST_CASE("climates: weather that would hardly ever change is refused") {
    const std::string stuck = complaint("climates/monsoon.json", [](json& top) {
        json& season = top["seasons"]["summer"]["weather"];
        season["wet_after_dry"] = 0.02;
        season["wet_after_wet"] = 0.99;
    });
    CHECK(holds(stuck, "/seasons/summer/weather"));
    CHECK(holds(stuck, "weather that changes more"));
}

TEST_CASE("climates: one broken file leaves the others at work") {
    const Assets assets;
    std::ofstream(assets.path / "climates/desert.json") << "{ \"format\": ";
    const auto reading = store::load_climates(assets.path);
    REQUIRE(reading.problems.size() == 1);
    CHECK(holds(base::to_text(reading.problems.front()), "desert.json"));
    CHECK(game::find_climate(reading.climates, "desert") == nullptr);
    CHECK(game::find_climate(reading.climates, "steppe") != nullptr);
    CHECK_FALSE(reading.climates.rules.empty());
}

TEST_CASE("climates: without the sentences the weather still has its plain names") {
    const Assets assets;
    std::filesystem::remove(assets.path / "weather/phrases.json");
    const auto reading = store::load_climates(assets.path);
    CHECK(reading.problems.size() == 1);
    const auto sky = static_cast<std::size_t>(game::Sky::heavy_rain);
    CHECK(reading.climates.phrases.skies[sky].name == "heavy rain");
    CHECK(reading.climates.phrases.winds[0] == "still");
}

TEST_CASE("climates: sentences and rules with a slip are said like climates") {
    const std::string few = complaint("weather/phrases.json", [](json& top) {
        top["skies"]["fog"]["openings"] = {"Fog"};
    });
    CHECK(holds(few, "phrases.json"));
    CHECK(holds(few, "/skies/fog"));
    const std::string always = complaint("weather/rules.json", [](json& top) {
        top["rules"][0]["when"] = json::object();
    });
    CHECK(holds(always, "/rules/0/when"));
    CHECK(holds(always, "at least one condition"));
    const std::string falling = complaint("weather/figures.json", [](json& top) {
        top["wind_below_kmh"] = {2, 12, 9, 50, 75};
    });
    CHECK(holds(falling, "/wind_below_kmh/2"));
    CHECK(holds(falling, "above the one before it"));
}

TEST_CASE("climates: no folder of climates is one clear sentence") {
    const Assets assets;
    std::filesystem::remove_all(assets.path / "climates");
    CHECK(holds(assets.problem(), "There are no climates, so there is no weather."));
}
