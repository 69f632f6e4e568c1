// The command line as a person or a script uses it: real arguments, real output, real exit codes.
#include "app/ask.h"
#include "app/command_line.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>
#include <vector>

namespace {

// What a stream of the process receives while this lives.
class Caught {
public:
    explicit Caught(std::FILE* stream) : stream_(stream), file_(std::tmpfile()) {
        REQUIRE(file_ != nullptr);
        std::fflush(stream_);
        before_ = dup(fileno(stream_));
        dup2(fileno(file_), fileno(stream_));
    }

    Caught(const Caught&) = delete;
    Caught& operator=(const Caught&) = delete;

    ~Caught() {
        restore();
        std::fclose(file_);
    }

    std::string text() {
        restore();
        std::rewind(file_);
        std::string read;
        for (int letter = std::fgetc(file_); letter != EOF; letter = std::fgetc(file_))
            read += static_cast<char>(letter);
        return read;
    }

private:
    void restore() {
        if (before_ < 0) return;
        std::fflush(stream_);
        dup2(before_, fileno(stream_));
        close(before_);
        before_ = -1;
    }

    std::FILE* stream_;
    std::FILE* file_;
    int before_ = -1;
};

struct Ended {
    int code = 0;
    std::string out;
    std::string err;
};

Ended tablewick(std::vector<std::string> words) {
    words.insert(words.begin(), "tablewick");
    std::vector<char*> arguments;
    arguments.reserve(words.size());
    for (std::string& word : words)
        arguments.push_back(word.data());
    Ended ended;
    Caught out(stdout);
    Caught err(stderr);
    ended.code = app::run_command_line(static_cast<int>(arguments.size()), arguments.data());
    ended.out = out.text();
    ended.err = err.text();
    return ended;
}

const std::string demo = TABLEWICK_SOURCE_DIR "/demo_campaign.json";

} // namespace

TEST_CASE("command line: a question is answered in plain lines") {
    // GM Core (ORC), tables DCs by Level and DC Adjustments.
    const Ended dc = tablewick({"ask", "dc", "level", "7", "hard"});
    CHECK(dc.code == 0);
    CHECK(dc.out == "DC 25\nlevel 7: 23, hard +2\nSource: GM Core (ORC), table DCs by Level\n");
    CHECK(dc.err.empty());
    CHECK(tablewick({"ask", "dc level 7 hard"}).out == dc.out); // one quoted argument
    // SRD 5.1, Ability Checks / Typical Difficulty Classes.
    CHECK(tablewick({"ask", "srd", "dc", "hard"}).out.find("DC 20\n") == 0);
    CHECK(tablewick({"ask", "--family", "srd5", "dc", "hard"}).out.find("DC 20\n") == 0);
    CHECK(tablewick({"ask", "odds", "-1", "dc", "10"}).out.find("50 % succeed") == 0);
}

TEST_CASE("command line: a question is answered as JSON") {
    // Player Core (ORC), Treat Wounds: worked example heal-02.
    const Ended heal = tablewick({"ask", "--json", "heal", "expert", "+13"});
    CHECK(heal.code == 0);
    const nlohmann::json json = nlohmann::json::parse(heal.out);
    CHECK(json["format"] == "tablewick-answer");
    CHECK(json["values"]["choices"][1]["hp_restored"]["exact"] == "151/10");
    CHECK(json["values"]["choices"][1]["hp_restored"]["decimal"] == 15.1);
}

TEST_CASE("command line: a campaign answers for its party by its own rulebook") {
    const Ended party = tablewick({"ask", "party", "--campaign", demo, "--json"});
    CHECK(party.code == 0);
    CHECK(nlohmann::json::parse(party.out)["values"]["characters"].size() == 5);
    const Ended other = tablewick({"ask", "srd", "dc", "hard", "--campaign", demo});
    CHECK(other.code == 2);
    CHECK(other.err.find("another rulebook") != std::string::npos);
}

TEST_CASE("command line: both example campaigns have places, and weather where the party is") {
    for (const std::string& file :
         {demo, std::string(TABLEWICK_SOURCE_DIR "/assets/campaigns/lantern_quay.json")}) {
        CAPTURE(file);
        const Ended weather = tablewick({"ask", "weather", "--campaign", file, "--json"});
        CHECK(weather.code == 0);
        const nlohmann::json values = nlohmann::json::parse(weather.out)["values"];
        CHECK_FALSE(values["line"].get<std::string>().empty());
        CHECK(values["days_ahead"].size() == 7);
        CHECK(tablewick({"ask", "weather", "+1", "--campaign", file}).code == 0);
    }
}

TEST_CASE("command line: both example campaigns have a calendar, and any date is told") {
    for (const std::string& file :
         {demo, std::string(TABLEWICK_SOURCE_DIR "/assets/campaigns/lantern_quay.json")}) {
        CAPTURE(file);
        const Ended today = tablewick({"ask", "date", "--campaign", file, "--json"});
        CHECK(today.code == 0);
        const nlohmann::json values = nlohmann::json::parse(today.out)["values"];
        CHECK(values["days_away"] == 0);
        CHECK_FALSE(values["season"].get<std::string>().empty());
        CHECK_FALSE(values["moons"].empty());
        CHECK(tablewick({"ask", "date", "+1 year", "--campaign", file}).code == 0);
        CHECK(tablewick({"ask", "date", "1 Nevermonth", "--campaign", file}).code == 2);
    }
}

TEST_CASE("command line: a campaign's house rules and its journal count") {
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("tablewick_ask_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "ours.json")
        << R"({"format": "tablewick-house-rules", "family": "four_degree",)"
        << R"( "replace": {"/dc_by_level/rows/7/dc": 24}})";
    std::ofstream(folder / "ford.json")
        << R"({"format": "tablewick", "version": 1, "revision": 0,)"
        << R"( "about": {"rules": "four_degree", "house_rules": "ours.json"}})";
    const std::string file = (folder / "ford.json").string();
    CHECK(tablewick({"ask", "dc", "level", "7", "--campaign", file}).out.find("DC 24") == 0);
    std::filesystem::remove(folder / "ours.json");
    const Ended gone = tablewick({"ask", "dc", "level", "7", "--campaign", file});
    CHECK(gone.code == 1);
    CHECK(gone.err.find("ours.json") != std::string::npos);
    std::filesystem::remove_all(folder);
}

TEST_CASE("command line: what does not fit ends with 2 and one line on the error stream") {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"ask"},
             {"ask", "lunch"},
             {"ask", "dc", "level"},
             {"ask", "dc", "level", "99"},
             {"ask", "party"},
             {"ask", "--frobnicate"},
             {"ask", "--family", "other", "dc"},
             {"ask", "dc", "--campaign"}}) {
        const Ended ended = tablewick(words);
        CAPTURE(ended.err);
        CHECK(ended.code == 2);
        CHECK(ended.out.empty());
        CHECK(ended.err.find("tablewick: ") == 0);
        CHECK(std::count(ended.err.begin(), ended.err.end(), '\n') == 1);
    }
    CHECK(tablewick({"ask", "party", "--campaign", "/no/such.json"}).code == 1);
}

TEST_CASE("command line: a price, and house rules that reach it") {
    // SRD 5.1, Equipment, Weapons: longsword 15 gp.
    CHECK(tablewick({"ask", "srd", "price", "longsword"}).out.find("Longsword: 15 gp") == 0);
    CHECK(tablewick({"ask", "split", "1204", "gp", "5"}).out.find("240 gp 8 sp each") == 0);
    const std::string json = tablewick({"ask", "split", "1204", "gp", "5", "--json"}).out;
    CHECK(json.find("\"each_worth\": 24080,") != std::string::npos);
    CHECK(json.find("\"left_over_worth\": 0,") != std::string::npos);
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("tablewick_price_" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    std::ofstream(folder / "ours.json")
        << R"({"format": "tablewick-house-rules", "family": "four_degree",)"
        << R"( "replace_prices": {"/scroll_price/rows/3/price_gp": 90}})";
    std::ofstream(folder / "ford.json")
        << R"({"format": "tablewick", "version": 1, "revision": 0,)"
        << R"( "about": {"rules": "four_degree", "house_rules": "ours.json"}})";
    const std::string file = (folder / "ford.json").string();
    const auto scroll = [](const std::vector<std::string>& words) {
        return tablewick(words).out.find("scroll, rank 4: 90 gp") == 0;
    };
    CHECK(scroll({"ask", "price", "scroll, rank 4", "--campaign", file}));
    CHECK_FALSE(scroll({"ask", "price", "scroll, rank 4"}));
    std::filesystem::remove_all(folder);
}
