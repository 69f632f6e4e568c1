#include "store/name_lists.h"

#include "base/unicode.h"
#include "game/roster.h"
#include "store/asset_file.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>
#include <system_error>
#include <tuple>
#include <utility>

namespace store {

namespace {

using base::ErrorKind;
using game::Kind;
using game::ReadyNameList;

constexpr const char* what = "a list of names";

constexpr std::array kinds = {
    std::pair{std::string_view("person"), Kind::person},
    std::pair{std::string_view("place"), Kind::place},
    std::pair{std::string_view("creature"), Kind::creature},
    std::pair{std::string_view("item"), Kind::item},
    std::pair{std::string_view("faction"), Kind::faction},
};

// Composed, so that the same letters are the same bytes wherever the list was typed.
std::string list_name(const Spot& spot) {
    const std::string name = base::composed(spot.text());
    if (name.size() > game::Limits::name_bytes_max)
        throw spot.wrong(
            "a name of at most " + std::to_string(game::Limits::name_bytes_max) + " bytes"
        );
    if (base::letters_only(name).empty()) throw spot.wrong("a name with letters");
    return name;
}

ReadyNameList read_list(const Spot& top) {
    top.allow_only({"format", "key", "title", "kind", "about", "source", "names"});
    if (top.at("format").text() != "tablewick-names")
        throw top.at("format").wrong("\"tablewick-names\"", ErrorKind::wrong_format);
    ReadyNameList list;
    list.key = top.at("key").key();
    list.title = top.at("title").text();
    list.kind = top.at("kind").word(kinds);
    list.about = top.at("about").text();
    list.source = top.at("source").text();
    std::set<std::string> seen;
    top.at("names").each([&](const Spot& each) {
        list.names.push_back(list_name(each));
        if (!seen.insert(base::folded(list.names.back())).second)
            throw each.wrong("a name that stands once", ErrorKind::duplicate);
    });
    if (list.names.empty()) throw top.at("names").wrong("at least one name");
    return list;
}

std::vector<std::filesystem::path> list_files(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> files;
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator(folder, none))
        if (entry.path().extension() == ".json") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

} // namespace

base::Result<ReadyNameList>
read_name_list(const nlohmann::json& list, const std::string& file_name) {
    try {
        return read_list({list, {}});
    } catch (const Wrong& wrong) {
        return error_of(wrong, what, file_name);
    }
}

NameListReading load_name_lists(const std::filesystem::path& assets_folder) {
    NameListReading reading;
    std::set<std::string> keys;
    const auto files = list_files(assets_folder / "names");
    if (files.empty())
        reading.problems.push_back(
            {ErrorKind::not_found,
             "There are no lists of names.",
             {(assets_folder / "names").string(), 0, 0, {}},
             "Install Tablewick again, or write lists of your own."}
        );
    for (const std::filesystem::path& file : files) {
        ReadyNameList list;
        auto read = read_asset_file(file, what, [&](const Spot& top) {
            list = read_list(top);
            if (keys.count(list.key) > 0)
                throw top.at("key").wrong("a key that no other list has", ErrorKind::duplicate);
        });
        if (!read.ok()) {
            reading.problems.push_back(read.error());
            continue;
        }
        keys.insert(list.key);
        reading.lists.push_back(std::move(list));
    }
    std::sort(
        reading.lists.begin(),
        reading.lists.end(),
        [](const ReadyNameList& one, const ReadyNameList& other) {
            return std::tie(one.kind, one.title) < std::tie(other.kind, other.title);
        }
    );
    return reading;
}

} // namespace store
