// The ready lists of names, and files of names the GM has.
#include "base/unicode.h"
#include "store/name_lists.h"
#include "store/text_file.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <functional>
#include <set>
#include <unistd.h>

namespace {

using nlohmann::json;

json small_list() {
    return {
        {"format", "tablewick-names"},
        {"key", "fen"},
        {"title", "Fen folk"},
        {"kind", "person"},
        {"about", "Soft and short."},
        {"source", "our own invention"},
        {"names", {"Addel", "Bodwin"}}};
}

std::string complaint(const std::function<void(json&)>& change) {
    json list = small_list();
    change(list);
    const auto read = store::read_name_list(list, "fen.json");
    return read.ok() ? std::string("none") : base::to_text(read.error());
}

// A folder of its own that goes with the test.
struct Folder {
    Folder()
        : path(
              std::filesystem::temp_directory_path() /
              ("tablewick_names_" + std::to_string(getpid()))
          ) {
        std::filesystem::remove_all(path);
        std::filesystem::create_directories(path / "names");
    }

    ~Folder() { std::filesystem::remove_all(path); }

    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string write(const std::string& name, const std::string& text) const {
        std::ofstream(path / name, std::ios::binary) << text;
        return (path / name).string();
    }

    std::filesystem::path path;
};

std::string refusal(const std::string& file) {
    const auto text = store::read_text_file(file);
    return text.ok() ? std::string("none") : text.error().message;
}

} // namespace

TEST_CASE("ready names: at least twelve lists, each of 130 names or more, of our own") {
    const store::NameListReading reading = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets");
    CHECK(reading.problems.empty());
    CHECK(reading.lists.size() >= 12);
    std::set<game::Kind> kinds;
    int with_marks = 0;
    int in_other_letters = 0;
    for (const game::ReadyNameList& list : reading.lists) {
        CAPTURE(list.key);
        kinds.insert(list.kind);
        CHECK(list.names.size() >= 130);
        CHECK(list.source == "our own invention");
        std::string all;
        for (const std::string& name : list.names)
            all += name;
        with_marks += all.find("\u00E9") != std::string::npos ? 1 : 0;
        with_marks += all.find("\u00F6") != std::string::npos ? 1 : 0;
        in_other_letters += base::letters_only(all).find(U'\u0430') != std::u32string::npos ? 1 : 0;
    }
    CHECK(kinds.size() == 5);
    CHECK(with_marks >= 2);
    CHECK(in_other_letters == 1);
}

TEST_CASE("ready names: a slip in a list is named with file, pointer and what is needed") {
    CHECK(complaint([](json&) {}) == "none");
    CHECK(
        complaint([](json& list) { list["names"][1] = "ADDEL"; }) ==
        "fen.json (/names/1): In a list of names, a name that stands once is needed here, not "
        "\"ADDEL\". Correct it there, or put the original file back."
    );
    CHECK(
        complaint([](json& list) { list["kind"] = "weather"; }) ==
        "fen.json (/kind): In a list of names, one of person, place, creature, item, faction is "
        "needed here, not \"weather\". Correct it there, or put the original file back."
    );
    const auto holds = [](const std::string& text, const std::string& part) {
        return text.find(part) != std::string::npos;
    };
    CHECK(holds(complaint([](json& list) { list["names"][0] = 7; }), "(/names/0)"));
    CHECK(holds(complaint([](json& list) { list["names"][0] = "..."; }), "a name with letters"));
    CHECK(holds(complaint([](json& list) { list["names"] = json::array(); }), "at least one name"));
    CHECK(holds(complaint([](json& list) { list.erase("about"); }), "about"));
    CHECK(holds(complaint([](json& list) { list["colour"] = "red"; }), "colour"));
    CHECK(holds(complaint([](json& list) { list["format"] = "other"; }), "tablewick-names"));
    CHECK(holds(
        complaint([](json& list) { list["names"][0] = std::string(300, 'a'); }), "at most 200 bytes"
    ));
}

TEST_CASE("ready names: a broken file leaves the others usable and gives one message") {
    const Folder folder;
    folder.write("names/a.json", small_list().dump());
    folder.write("names/b.json", "{\"format\": ");
    json second = small_list();
    second["title"] = "Twice the same key";
    folder.write("names/c.json", second.dump());
    json third = small_list();
    third["key"] = "hill";
    third["names"] = {"E\u0301va"};
    folder.write("names/d.json", third.dump());
    const store::NameListReading reading = store::load_name_lists(folder.path);
    REQUIRE(reading.lists.size() == 2);
    CHECK(reading.lists[1].names.front() == "\u00C9va"); // composed
    REQUIRE(reading.problems.size() == 2);
    CHECK(base::to_text(reading.problems[0]).find("b.json") != std::string::npos);
    CHECK(
        base::to_text(reading.problems[1]).find("a key that no other list has") != std::string::npos
    );
}

TEST_CASE("ready names: without any list the message says what to do") {
    const store::NameListReading reading = store::load_name_lists("/nowhere at all");
    CHECK(reading.lists.empty());
    REQUIRE(reading.problems.size() == 1);
    CHECK(reading.problems[0].message == "There are no lists of names.");
}

TEST_CASE("a file of names: read, or one clear sentence why not") {
    const Folder folder;
    const auto text = store::read_text_file(folder.write(
        "names.txt",
        "\xEF\xBB\xBF"
        "Addel\n"
    ));
    REQUIRE(text.ok());
    CHECK(text.value() == "Addel\n"); // the byte order mark is no name
    CHECK(refusal((folder.path / "gone.txt").string()) == "There is no such file.");
    CHECK(refusal(folder.path.string()) == "This is no text file.");
    CHECK(
        refusal(folder.write("latin.txt", "Andr\xE9\n")) ==
        "This file is not text in UTF-8; save it as UTF-8."
    );
    CHECK(
        refusal(folder.write("large.txt", std::string(store::text_file_bytes_max + 1, 'a'))) ==
        "This file is larger than 1 MB, too large for a list."
    );
    CHECK(
        refusal(folder.write("full.txt", std::string(store::text_file_bytes_max, 'a'))) == "none"
    );
}
