#include "store/rulebook_spot.h"

#include "base/text.h"
#include "store/json.h"

#include <algorithm>
#include <cstdint>

namespace store {

using base::ErrorKind;

Wrong Spot::wrong(const std::string& expected, ErrorKind kind) const {
    constexpr std::size_t shown_max = 40;
    std::string found;
    if (value.is_primitive()) {
        const std::string written =
            value.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
        found = base::shortened(written, shown_max);
        if (found.size() < written.size()) found += "...";
    }
    return {pointer, expected, kind, found};
}

Spot Spot::at(const std::string& key) const {
    if (!value.is_object()) throw wrong("an object", ErrorKind::wrong_type);
    const auto found = value.find(key);
    if (found == value.end()) throw wrong("a key \"" + key + "\"", ErrorKind::missing_field);
    return {*found, pointer + pointer_step(key)};
}

bool Spot::has(const std::string& key) const {
    if (!value.is_object()) throw wrong("an object", ErrorKind::wrong_type);
    return value.contains(key);
}

std::string Spot::text() const {
    if (!value.is_string()) throw wrong("a text", ErrorKind::wrong_type);
    auto written = value.get<std::string>();
    if (written.empty()) throw wrong("a text that is not empty");
    return written;
}

std::string Spot::key() const {
    std::string written = text();
    const bool is_key = std::all_of(written.begin(), written.end(), [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') ||
               letter == '_';
    });
    if (!is_key) throw wrong("a key of small letters, digits and _");
    return written;
}

int Spot::number(int least, int most) const {
    if (!value.is_number_integer()) throw wrong("a whole number", ErrorKind::wrong_type);
    // A number past the signed range would turn negative on the way.
    const bool is_too_large =
        value.is_number_unsigned() && value.get<std::uint64_t>() > std::uint64_t{INT32_MAX};
    const auto wide = is_too_large ? std::int64_t{INT32_MAX} + 1 : value.get<std::int64_t>();
    if (wide < least || wide > most)
        throw wrong("a whole number from " + std::to_string(least) + " to " + std::to_string(most));
    return static_cast<int>(wide);
}

double Spot::fraction() const {
    if (!value.is_number()) throw wrong("a number", ErrorKind::wrong_type);
    return value.get<double>();
}

bool Spot::truth() const {
    if (!value.is_boolean()) throw wrong("true or false", ErrorKind::wrong_type);
    return value.get<bool>();
}

std::string Spot::text_or(const std::string& key) const {
    return has(key) ? at(key).text() : std::string();
}

int Spot::number_or(const std::string& key, int otherwise, int least, int most) const {
    return has(key) ? at(key).number(least, most) : otherwise;
}

bool Spot::truth_or(const std::string& key) const {
    return has(key) && at(key).truth();
}

void Spot::allow_only(const std::vector<std::string>& keys) const {
    if (!value.is_object()) throw wrong("an object", ErrorKind::wrong_type);
    for (const auto& [key, ignored] : value.items()) {
        if (std::find(keys.begin(), keys.end(), key) != keys.end()) continue;
        std::string known;
        for (const std::string& each : keys)
            known += (known.empty() ? "" : ", ") + each;
        throw Wrong{
            pointer + pointer_step(key),
            "one of the keys " + known,
            ErrorKind::out_of_range,
            "\"" + base::shortened(key, 40) + "\""};
    }
}

} // namespace store
