#include "store/house_rules.h"

#include "store/json_place.h"
#include "store/json_text.h"
#include "store/rulebook_spot.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>
#include <utility>

namespace store {

namespace {

using base::Error;
using base::ErrorKind;
using nlohmann::json;

constexpr const char* remedy = "Correct the house rule, or take it out.";

const char* family_key(rules::Family family) {
    return family == rules::Family::four_degree ? "four_degree" : "srd5";
}

// What a value is called in a message.
std::string kind_of(const json& value) {
    if (value.is_number()) return "a number";
    if (value.is_string()) return "a text";
    if (value.is_boolean()) return "true or false";
    if (value.is_null()) return "null";
    return "a list or a group of values";
}

// What is wrong with one replacement, without place and remedy.
struct Complaint {
    ErrorKind kind = ErrorKind::not_found;
    std::string message;
};

// The table on the way to the pointer that only repeats figures, if there is one: where they count.
std::optional<std::string> counts_elsewhere(const json& tables, const json::json_pointer& pointer) {
    for (json::json_pointer at = pointer; !at.empty();) {
        at = at.parent_pointer();
        const json& around = tables.at(at);
        if (!around.is_object() || !around.contains("computed_from")) continue;
        std::string places;
        for (const json& place : around.at("computed_from"))
            places += (places.empty() ? "" : " and ") + place.get<std::string>();
        return places;
    }
    return {};
}

std::optional<Complaint> replace_one(
    json& tables, const std::string& written, const json& replacement, const std::string& where
) {
    std::optional<json::json_pointer> pointer;
    try {
        pointer = json::json_pointer(written);
        static_cast<void>(std::as_const(tables).at(*pointer));
    } catch (const json::exception&) {
        return Complaint{
            ErrorKind::dangling_reference, "This pointer leads to nothing in " + where + "."};
    }
    json& value = tables.at(*pointer);
    if (value.is_structured())
        return Complaint{
            ErrorKind::wrong_type,
            "A house rule replaces a single value, and this pointer leads to " + kind_of(value) +
                "."};
    if (const auto places = counts_elsewhere(tables, *pointer))
        return Complaint{
            ErrorKind::not_possible,
            "This table only repeats figures for looking up; they count in " + *places + "."};
    if (kind_of(value) != kind_of(replacement))
        return Complaint{
            ErrorKind::wrong_type,
            "The" + where.substr(3) + " has " + kind_of(value) + " here, the house rule " +
                kind_of(replacement) + "."};
    value = replacement;
    return {};
}

// Checks everything but the replacements.
void check_head(const Spot& top, rules::Family family) {
    top.allow_only({"format", "family", "about", "replace", "replace_prices"});
    if (top.at("format").text() != "tablewick-house-rules")
        throw top.at("format").wrong("\"tablewick-house-rules\"", ErrorKind::wrong_format);
    if (top.at("family").text() != family_key(family))
        throw top.at("family").wrong(
            std::string("\"") + family_key(family) + "\", as the rulebook has it",
            ErrorKind::wrong_format
        );
    top.text_or("about");
    if (!top.has("replace_prices")) top.at("replace");
    for (const char* group : {"replace", "replace_prices"})
        if (top.has(group) && !top.at(group).value.is_object())
            throw top.at(group).wrong("an object of pointers and values", ErrorKind::wrong_type);
}

// One of the two groups of replacements, and what it replaces values in.
struct Group {
    const char* key;
    const char* where;
};

base::Result<std::vector<rules::HouseRule>> lay_group_over(
    json& tables,
    std::string_view text,
    const std::string& file,
    rules::Family family,
    const Group& group
) {
    const base::Result<Json> parsed = parse_json(text, file);
    if (!parsed.ok()) {
        Error error = parsed.error();
        error.remedy = remedy;
        return error;
    }
    const json house_rules(parsed.value());
    try {
        check_head({house_rules, {}}, family);
    } catch (const Wrong& wrong) {
        base::Place place = place_of_pointer(text, wrong.pointer);
        place.file = file;
        const std::string found = wrong.found.empty() ? "" : ", not " + wrong.found;
        return Error{
            wrong.kind,
            "These house rules cannot be read: " + wrong.expected + " is needed" + found + ".",
            place,
            remedy};
    }
    json changed = tables;
    std::vector<rules::HouseRule> replaced;
    const json replacements = house_rules.value(group.key, json::object());
    for (const auto& [pointer, value] : replacements.items()) {
        if (const auto complaint = replace_one(changed, pointer, value, group.where))
            return Error{
                complaint->kind,
                complaint->message,
                place_of_replacement(text, file, pointer, std::string("/") + group.key),
                remedy};
        replaced.push_back({pointer, tables.at(json::json_pointer(pointer)).dump(), value.dump()});
    }
    std::sort(replaced.begin(), replaced.end(), [](const auto& one, const auto& other) {
        return one.pointer < other.pointer;
    });
    tables = std::move(changed);
    return replaced;
}

} // namespace

base::Place place_of_replacement(
    std::string_view text,
    const std::string& file,
    const std::string& pointer,
    const std::string& group
) {
    base::Place place = place_of_key(text, group, pointer, 1);
    place.file = file;
    place.pointer = pointer;
    return place;
}

base::Result<std::vector<rules::HouseRule>>
lay_over(json& tables, std::string_view text, const std::string& file, rules::Family family) {
    return lay_group_over(tables, text, file, family, {"replace", "the rulebook"});
}

base::Result<std::vector<rules::HouseRule>> lay_prices_over(
    json& prices, std::string_view text, const std::string& file, rules::Family family
) {
    return lay_group_over(prices, text, file, family, {"replace_prices", "the price list"});
}

} // namespace store
