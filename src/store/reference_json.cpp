#include "store/reference_json.h"

#include "store/asset_file.h"
#include "store/files.h"
#include "store/house_rules.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace store {

namespace {

using base::ErrorKind;
using game::Reference;
using game::ReferenceEntry;
using nlohmann::json;
using rules::Family;
using rules::SrdEdition;

constexpr const char* what = "the reference";

constexpr std::array families = {
    std::pair{std::string_view("four_degree"), Family::four_degree},
    std::pair{std::string_view("srd5"), Family::srd5}};

constexpr std::array editions = {
    std::pair{std::string_view("srd_5_1"), SrdEdition::srd_5_1},
    std::pair{std::string_view("srd_5_2_1"), SrdEdition::srd_5_2_1}};

// NOLINTNEXTLINE(misc-no-recursion): a list holds values, not lists
std::string written(const json& value, bool has_sign) {
    if (value.is_string()) return value.get<std::string>();
    if (value.is_boolean()) return value.get<bool>() ? "yes" : "no";
    if (value.is_array()) {
        std::string list;
        for (const json& each : value)
            list += (list.empty() ? "" : ", ") + written(each, has_sign);
        return list;
    }
    std::string number = value.dump();
    if (number.size() > 2 && number.compare(number.size() - 2, 2, ".0") == 0)
        number.resize(number.size() - 2);
    return (has_sign && number.front() != '-' && number != "0" ? "+" : "") + number;
}

// What stands at a pointer of the rulebook; nullptr where it leads nowhere.
const json* value_at(const json& tables, const std::string& pointer) {
    try {
        return &tables.at(json::json_pointer(pointer));
    } catch (const json::exception&) {
        return nullptr;
    }
}

// Puts the rulebook's values into texts.
struct Filler {
    const json& tables;
    const json* row = nullptr; // of a table; none outside of one

    // The value a name between braces stands for; nullptr: the row has none.
    const json* value_of(const Spot& spot, const std::string& name) const {
        if (name.front() != '/') {
            if (row == nullptr) throw spot.wrong("a pointer into the rulebook in {" + name + "}");
            const auto found = row->find(name);
            return found == row->end() ? nullptr : &*found;
        }
        const json* value = value_at(tables, name);
        if (value == nullptr || value->is_object())
            throw spot.wrong("a pointer to a value of the rulebook in {" + name + "}");
        return value;
    }

    std::string filled(const Spot& spot) const {
        const std::string text = spot.text();
        std::string out;
        std::size_t at = 0;
        for (std::size_t open = text.find('{'); open != std::string::npos;
             open = text.find('{', at)) {
            const std::size_t close = text.find('}', open);
            const bool has_sign = open + 1 < text.size() && text[open + 1] == '+';
            const std::size_t from = open + (has_sign ? 2 : 1);
            if (close == std::string::npos || close <= from)
                throw spot.wrong("a name between { and }");
            const json* value = value_of(spot, text.substr(from, close - from));
            out += text.substr(at, open - at);
            out += value == nullptr ? "-" : written(*value, has_sign);
            at = close + 1;
        }
        return out + text.substr(at);
    }

    std::vector<std::string> filled_list(const Spot& list) const {
        std::vector<std::string> read;
        list.each([&](const Spot& each) { read.push_back(filled(each)); });
        return read;
    }

    // The table at this pointer of the rulebook.
    const json& table(const Spot& spot) const {
        const json* rows = value_at(tables, spot.text());
        const bool is_table = rows != nullptr && rows->is_array() && !rows->empty() &&
                              std::all_of(rows->begin(), rows->end(), [](const json& each) {
                                  return each.is_object();
                              });
        if (!is_table) throw spot.wrong("a pointer to a table of the rulebook");
        return *rows;
    }
};

std::vector<std::vector<std::string>> given_rows(const Filler& filler, const Spot& figures) {
    std::vector<std::vector<std::string>> rows;
    const std::size_t titles = figures.at("titles").value.size();
    figures.at("rows").each([&](const Spot& row) {
        rows.push_back(filler.filled_list(row));
        if (rows.back().size() != titles) throw row.wrong("as many cells as there are titles");
    });
    return rows;
}

void read_figures(const Filler& filler, const Spot& figures, ReferenceEntry& entry) {
    if (figures.has("titles")) {
        figures.allow_only({"titles", "rows"});
        entry.columns = filler.filled_list(figures.at("titles"));
        entry.rows = given_rows(filler, figures);
        return;
    }
    figures.allow_only({"rows_of", "columns"});
    const json& table = filler.table(figures.at("rows_of"));
    const Spot columns = figures.at("columns");
    columns.each([&](const Spot& column) {
        column.allow_only({"title", "cell"});
        entry.columns.push_back(column.at("title").text());
        bool is_known = false;
        for (const json& row : table)
            is_known |= Filler{filler.tables, &row}.filled(column.at("cell")) != "-";
        if (!is_known) throw column.at("cell").wrong("a name that a row of the table has");
    });
    for (const json& row : table) {
        std::vector<std::string> cells;
        columns.each([&](const Spot& column) {
            cells.push_back(Filler{filler.tables, &row}.filled(column.at("cell")));
        });
        entry.rows.push_back(std::move(cells));
    }
}

bool counts_in(const Spot& spot, SrdEdition edition) {
    return !spot.has("edition") || spot.at("edition").word(editions) == edition;
}

std::string with_capital(std::string text) {
    if (text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// All but the key, which stands in the row where there is one.
ReferenceEntry read_entry(const Filler& filler, const Spot& spot, const std::string& chapter) {
    spot.allow_only({"key", "title", "text", "also", "points", "figures", "edition", "source"});
    ReferenceEntry entry;
    entry.chapter = chapter;
    entry.title = with_capital(filler.filled(spot.at("title")));
    entry.text = filler.filled(spot.at("text"));
    entry.source = spot.at("source").text();
    if (spot.has("also")) entry.also = filler.filled_list(spot.at("also"));
    if (spot.has("points")) entry.points = filler.filled_list(spot.at("points"));
    if (spot.has("figures")) read_figures(filler, spot.at("figures"), entry);
    return entry;
}

// One entry for each row of the table.
void read_rows(const Filler& filler, const Spot& chapter, Reference& reference) {
    chapter.allow_only({"title", "rows_of", "entry"});
    if (chapter.at("entry").has("key"))
        throw chapter.at("entry").at("key").wrong("no key: it is that of the row");
    for (const json& row : filler.table(chapter.at("rows_of"))) {
        const auto key = row.find("key");
        if (key == row.end() || !key->is_string())
            throw chapter.at("rows_of").wrong("a pointer to a table whose rows have keys");
        reference.entries.push_back(
            read_entry(Filler{filler.tables, &row}, chapter.at("entry"), chapter.at("title").text())
        );
        reference.entries.back().key = key->get<std::string>();
    }
}

Reference read_chapters(const Spot& top, const json& tables, Family family, SrdEdition edition) {
    top.allow_only({"format", "family", "about", "chapters"});
    if (top.at("format").text() != "tablewick-reference")
        throw top.at("format").wrong("\"tablewick-reference\"", ErrorKind::wrong_format);
    if (top.at("family").word(families) != family)
        throw top.at("family").wrong("the family of the rulebook", ErrorKind::wrong_format);
    Reference reference;
    const Filler filler{tables};
    std::set<std::string> keys;
    const auto note_key = [&keys](const Spot& spot, const std::string& key) {
        if (!keys.insert(key).second)
            throw spot.wrong("a key that no other entry has", ErrorKind::duplicate);
    };
    top.at("chapters").each([&](const Spot& chapter) {
        if (chapter.has("rows_of")) {
            const std::size_t before = reference.entries.size();
            read_rows(filler, chapter, reference);
            for (std::size_t at = before; at < reference.entries.size(); ++at)
                note_key(chapter.at("rows_of"), reference.entries[at].key);
            return;
        }
        chapter.allow_only({"title", "entries"});
        chapter.at("entries").each([&](const Spot& spot) {
            ReferenceEntry entry = read_entry(filler, spot, chapter.at("title").text());
            entry.key = spot.at("key").key();
            note_key(spot.at("key"), entry.key);
            if (counts_in(spot, edition)) reference.entries.push_back(std::move(entry));
        });
    });
    if (reference.entries.empty()) throw top.at("chapters").wrong("at least one entry");
    return reference;
}

const char* file_of(Family family) {
    return family == Family::four_degree ? "four_degree.json" : "srd5.json";
}

} // namespace

base::Result<Reference> read_reference(
    const json& reference,
    const std::string& file_name,
    const json& tables,
    Family family,
    SrdEdition edition
) {
    try {
        return read_chapters({reference, {}}, tables, family, edition);
    } catch (const Wrong& wrong) {
        return error_of(wrong, what, file_name);
    }
}

base::Result<Reference> load_reference(
    const std::filesystem::path& assets_folder,
    Family family,
    SrdEdition edition,
    const std::filesystem::path& house_rules_file
) {
    json tables;
    auto read = read_asset_file(
        assets_folder / "rules" / file_of(family),
        "the rulebook",
        [&](const Spot& top) { tables = top.value; }
    );
    if (!read.ok()) return read.error();
    if (!house_rules_file.empty()) {
        const auto text = disk().read(house_rules_file);
        if (text.ok())
            static_cast<void>(lay_over(tables, text.value(), house_rules_file.string(), family));
    }
    Reference reference;
    read =
        read_asset_file(assets_folder / "reference" / file_of(family), what, [&](const Spot& top) {
            reference = read_chapters(top, tables, family, edition);
        });
    if (!read.ok()) return read.error();
    return reference;
}

} // namespace store
