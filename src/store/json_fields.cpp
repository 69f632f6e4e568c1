#include "store/json_fields.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <utility>

namespace store {

using base::ErrorKind;

namespace {

// Keys whose plain words would not be what people say.
constexpr std::pair<std::string_view, std::string_view> spoken_keys[] = {
    {"hp", "Hit points"},
    {"temp_hp", "Temporary hit points"},
    {"dc", "The DC"},
    {"id", "The id"},
    {"next_id", "The next id"},
    {"key", "The key"},
    {"at", "The moment"},
    {"day", "The day"},
    {"speeds_ft", "Speeds"},
    {"second_of_day", "The second of the day"},
};

std::string range_text(Whole range) {
    return std::to_string(range.min) + " to " + std::to_string(range.max);
}

} // namespace

void Problems::add(ErrorKind kind, std::string pointer, std::string message) {
    if (errors_.size() >= kept) return;
    base::Place place;
    place.pointer = std::move(pointer);
    errors_.push_back({kind, std::move(message), std::move(place), {}});
}

std::string spoken(std::string_view key) {
    for (const auto& [word, text] : spoken_keys)
        if (word == key) return std::string(text);
    std::string text(key);
    std::replace(text.begin(), text.end(), '_', ' ');
    if (!text.empty())
        text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    return text;
}

ObjectReader::ObjectReader(const Json& value, Problems& problems, std::string pointer)
    : value_(value), problems_(problems), pointer_(std::move(pointer)) {}

void ObjectReader::problem(ErrorKind kind, std::string_view key, const std::string& text) {
    problems_.add(kind, inner_.empty() ? pointer_to(key) : inner_, text);
}

const Json* ObjectReader::find(std::string_view key, Presence presence) {
    described_.push_back(key);
    const auto found = value_.find(key);
    if (found != value_.end()) return &*found;
    if (presence == Presence::required)
        problems_.add(ErrorKind::missing_field, pointer_, spoken(key) + " is missing.");
    return nullptr;
}

std::optional<std::int64_t>
ObjectReader::whole(std::string_view key, const Json& value, Whole range) {
    std::optional<std::int64_t> number;
    constexpr double exact_max = 9007199254740992.0; // 2^53: above it a double skips whole numbers
    const bool is_above_int64 =
        value.is_number_unsigned() && value.get<std::uint64_t>() > std::uint64_t{INT64_MAX};
    if (value.is_number_integer() && !is_above_int64) {
        number = value.get<std::int64_t>();
    } else if (value.is_number_float()) {
        const double written = value.get<double>();
        if (std::floor(written) == written && std::abs(written) <= exact_max)
            number = static_cast<std::int64_t>(written);
    }
    if (number && *number >= range.min && *number <= range.max) return number;
    const bool is_too_far = number.has_value() || is_above_int64;
    problem(
        is_too_far ? ErrorKind::out_of_range : ErrorKind::wrong_type,
        key,
        spoken(key) + " must be a whole number from " + range_text(range) + "."
    );
    return std::nullopt;
}

std::optional<double>
ObjectReader::number(std::string_view key, const Json& value, double min, double max) {
    const bool is_number = value.is_number();
    if (is_number) {
        const auto number = value.get<double>();
        if (number >= min && number <= max) return number;
    }
    problem(
        is_number ? ErrorKind::out_of_range : ErrorKind::wrong_type,
        key,
        spoken(key) + " must be a number from " +
            range_text({std::llround(min), std::llround(max)}) + "."
    );
    return std::nullopt;
}

std::optional<bool> ObjectReader::flag(std::string_view key, const Json& value) {
    if (value.is_boolean()) return value.get<bool>();
    problem(ErrorKind::wrong_type, key, spoken(key) + " must be true or false.");
    return std::nullopt;
}

std::optional<std::string>
ObjectReader::text(std::string_view key, const Json& value, std::size_t bytes_max) {
    if (!value.is_string()) {
        problem(ErrorKind::wrong_type, key, spoken(key) + " must be a text in quotes.");
        return std::nullopt;
    }
    const auto& text = value.get_ref<const std::string&>();
    if (text.size() <= bytes_max) return text;
    problem(
        ErrorKind::out_of_range,
        key,
        spoken(key) + " must be no longer than " + std::to_string(bytes_max) + " bytes."
    );
    return std::nullopt;
}

bool ObjectReader::is_list(std::string_view key, const Json& value) {
    if (!value.is_array())
        problem(ErrorKind::wrong_type, key, spoken(key) + " must be a list in brackets.");
    return value.is_array();
}

bool ObjectReader::is_map(std::string_view key, const Json& value) {
    if (!value.is_object())
        problem(ErrorKind::wrong_type, key, spoken(key) + " must be an object in braces.");
    return value.is_object();
}

std::optional<base::Id> ObjectReader::map_id(std::string_view key, const std::string& word) {
    const bool is_number =
        !word.empty() && word.size() <= 10 && word[0] != '0' &&
        std::all_of(word.begin(), word.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (is_number)
        if (const long long id = std::stoll(word); id <= std::int64_t{UINT32_MAX})
            return static_cast<base::Id>(id);
    problem(ErrorKind::wrong_type, key, spoken(key) + " must name ids: whole numbers from 1.");
    return std::nullopt;
}

void ObjectReader::unknown_word(std::string_view key, const std::string& choices) {
    problem(ErrorKind::out_of_range, key, spoken(key) + " must be one of: " + choices + ".");
}

base::UnknownFields ObjectReader::left_over() const {
    base::UnknownFields fields;
    if (value_.size() == 0) return fields;
    for (const auto& [key, value] : value_.items()) {
        const bool is_known =
            std::find(described_.begin(), described_.end(), key) != described_.end();
        if (!is_known) fields.emplace_back(key, value.dump());
    }
    std::sort(fields.begin(), fields.end());
    return fields;
}

void write_unknown(const base::UnknownFields& fields, Json& object) {
    Json::object_t::Container& entries = object.get_ref<Json::object_t&>();
    const std::size_t described = entries.size();
    for (const auto& [key, text] : fields) {
        const auto is_key = [&name = key](const auto& entry) { return entry.first == name; };
        const auto end = entries.begin() + static_cast<std::ptrdiff_t>(described);
        if (std::find_if(entries.begin(), end, is_key) == end)
            entries.emplace_back(key, Json::parse(text));
    }
}

} // namespace store
