#include "store/files.h"
#include "store/house_rules.h"
#include "store/json_place.h"
#include "store/json_text.h"
#include "store/rulebook_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <optional>
#include <sstream>

namespace store {

namespace {

using base::Error;
using base::ErrorKind;
using nlohmann::json;
using rules::Rulebook;

// The text of a file; empty when it cannot be opened.
std::optional<std::string> read_file(const std::filesystem::path& path) {
    std::ifstream stream(path, std::ios::binary);
    if (!stream) return {};
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

// The rulebook as it is shipped, and the tables that it was read from.
struct Shipped {
    json tables;
    Rulebook rulebook;
};

base::Result<Shipped> load_shipped(
    const std::filesystem::path& assets_folder, rules::Family family, rules::SrdEdition edition
) {
    const char* name = family == rules::Family::four_degree ? "four_degree.json" : "srd5.json";
    const std::filesystem::path path = assets_folder / "rules" / name;
    const std::optional<std::string> text = read_file(path);
    if (!text) {
        return Error{
            ErrorKind::not_found,
            "The rulebook cannot be read.",
            {path.string(), 0, 0, {}},
            "Install Tablewick again."};
    }
    const base::Result<Json> parsed = parse_json(*text, path.string());
    if (!parsed.ok()) {
        Error error = parsed.error();
        error.remedy = "Correct it there, or put the original file back.";
        return error;
    }
    json tables(parsed.value());
    base::Result<Rulebook> rulebook = read_rulebook(tables, path.string(), edition);
    if (rulebook.ok() && rulebook.value().family != family) {
        rulebook = Error{
            ErrorKind::wrong_format,
            "The rulebook is of another rule family.",
            {path.string(), 0, 0, "/family"},
            "Put the original file back."};
    }
    if (!rulebook.ok()) { // people look for lines, not for pointers
        Error error = rulebook.error();
        const base::Place place = place_of_pointer(*text, error.place.pointer);
        error.place.line = place.line;
        error.place.column = place.column;
        return error;
    }
    return Shipped{std::move(tables), std::move(rulebook).value()};
}

// The tables were sound without the house rules, so whatever is wrong now is theirs.
Error blamed_on_house_rules(
    Error error, const std::string& text, const std::filesystem::path& house_rules_file
) {
    error.place = place_of_replacement(text, house_rules_file.string(), error.place.pointer);
    error.remedy = "Correct the house rule, or take it out.";
    return error;
}

} // namespace

base::Result<Rulebook> load_rulebook(
    const std::filesystem::path& assets_folder,
    rules::Family family,
    rules::SrdEdition edition,
    const std::filesystem::path& house_rules_file
) {
    base::Result<Shipped> shipped = load_shipped(assets_folder, family, edition);
    if (!shipped.ok()) return shipped.error();
    if (house_rules_file.empty()) return std::move(shipped).value().rulebook;

    const base::Result<std::string> text = disk().read(house_rules_file);
    if (!text.ok()) return text.error();
    json tables = std::move(shipped).value().tables;
    base::Result<std::vector<rules::HouseRule>> replaced =
        lay_over(tables, text.value(), house_rules_file.string(), family);
    if (!replaced.ok()) return replaced.error();
    base::Result<Rulebook> rulebook = read_rulebook(tables, house_rules_file.string(), edition);
    if (!rulebook.ok())
        return blamed_on_house_rules(rulebook.error(), text.value(), house_rules_file);
    rulebook.value().house_ruled = std::move(replaced).value();
    return rulebook;
}

} // namespace store
