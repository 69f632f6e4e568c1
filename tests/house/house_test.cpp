// The house: which folder may include which, and what never stands in the code of the game.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

struct SourceFile {
    std::string path;   // below src
    std::string folder; // first part of path; empty for main.cpp
    std::vector<std::string> lines;
};

std::vector<std::string> lines_of(const std::filesystem::path& path) {
    std::ifstream stream(path);
    std::vector<std::string> lines;
    for (std::string line; std::getline(stream, line);)
        lines.push_back(line);
    return lines;
}

std::vector<SourceFile> source_files() {
    const std::filesystem::path root = std::filesystem::path(TABLEWICK_SOURCE_DIR) / "src";
    std::vector<SourceFile> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root)) {
        if (!entry.is_regular_file()) continue;
        const std::filesystem::path below = std::filesystem::relative(entry.path(), root);
        const bool is_in_folder = below.has_parent_path();
        files.push_back(
            {below.generic_string(),
             is_in_folder ? below.begin()->string() : std::string(),
             lines_of(entry.path())}
        );
    }
    return files;
}

// The text between quotes or angle brackets of an include line; empty for any other line.
std::string included(const std::string& line) {
    const std::string word = "#include";
    if (line.compare(0, word.size(), word) != 0) return {};
    const std::size_t from = line.find_first_of("\"<", word.size());
    const std::size_t to = line.find_first_of("\">", from + 1);
    if (from == std::string::npos || to == std::string::npos) return {};
    return line.substr(from + 1, to - from - 1);
}

bool begins_with(const std::string& text, const std::string& start) {
    return text.compare(0, start.size(), start) == 0;
}

} // namespace

TEST_CASE("house: arrows between the folders point one way") {
    const std::map<std::string, std::set<std::string>> may_include = {
        {"base", {"base"}},
        {"rules", {"base", "rules"}},
        {"game", {"base", "rules", "game"}},
        {"store", {"base", "rules", "game", "store"}},
        {"print", {"base", "rules", "game", "print"}},
        {"widgets", {"base", "rules", "game", "print", "widgets"}},
        {"app", {"base", "rules", "game", "store", "print", "widgets", "app"}},
        {"", {"app"}},
    };
    std::size_t arrows = 0;
    for (const SourceFile& file : source_files()) {
        CAPTURE(file.path);
        REQUIRE(may_include.count(file.folder) == 1);
        for (const std::string& line : file.lines) {
            const std::string target = included(line);
            const std::size_t slash = target.find('/');
            if (slash == std::string::npos) continue;
            const std::string folder = target.substr(0, slash);
            if (may_include.count(folder) == 0 || folder.empty()) continue;
            CAPTURE(line);
            CHECK(may_include.at(file.folder).count(folder) == 1);
            arrows += 1;
        }
    }
    CHECK(arrows > 50);
}

TEST_CASE("house: the game knows no screen, no stream, no file and no JSON") {
    const std::vector<std::string> forbidden = {
        "imgui",
        "GLFW",
        "glad",
        "nlohmann",
        "fstream",
        "iostream",
        "filesystem",
        "cstdio",
        "thread",
        "mutex",
        "unistd.h",
        "chrono",
    };
    for (const SourceFile& file : source_files()) {
        if (file.folder != "base" && file.folder != "rules" && file.folder != "game") continue;
        for (const std::string& line : file.lines) {
            const std::string target = included(line);
            if (target.empty()) continue;
            CAPTURE(file.path);
            CAPTURE(line);
            CHECK(std::none_of(forbidden.begin(), forbidden.end(), [&](const std::string& word) {
                return begins_with(target, word);
            }));
        }
    }
}

TEST_CASE("house: only store reads JSON, and panels reach neither files nor windows") {
    for (const SourceFile& file : source_files()) {
        for (const std::string& line : file.lines) {
            const std::string target = included(line);
            if (target.empty()) continue;
            CAPTURE(file.path);
            CAPTURE(line);
            if (begins_with(target, "nlohmann"))
                CHECK((file.folder == "store" || file.folder == "app"));
            if (begins_with(target, "imgui"))
                CHECK((file.folder == "widgets" || file.folder == "app" || file.folder.empty()));
            if (file.folder == "widgets") {
                CHECK_FALSE(begins_with(target, "fstream"));
                CHECK_FALSE(begins_with(target, "filesystem"));
                CHECK_FALSE(begins_with(target, "GLFW"));
            }
        }
    }
}

TEST_CASE("house: every file can be read in one go") {
    for (const SourceFile& file : source_files()) {
        CAPTURE(file.path);
        CHECK(file.lines.size() <= 600);
    }
}

TEST_CASE("house: every header says first what it is for") {
    for (const SourceFile& file : source_files()) {
        if (file.path.size() < 2 || file.path.substr(file.path.size() - 2) != ".h") continue;
        CAPTURE(file.path);
        REQUIRE(file.lines.size() > 2);
        CHECK(begins_with(file.lines[0], "// "));
        CHECK(std::find(file.lines.begin(), file.lines.end(), "#pragma once") != file.lines.end());
    }
}
