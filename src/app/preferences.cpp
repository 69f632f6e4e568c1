#include "app/preferences.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>

namespace app {

using nlohmann::json;

namespace {

std::optional<int> whole_in(const json& value, int minimum, int maximum) {
    if (!value.is_number_integer()) return std::nullopt;
    const auto number = value.get<std::int64_t>();
    if (number < minimum || number > maximum) return std::nullopt;
    return static_cast<int>(number);
}

} // namespace

std::string to_json(const Preferences& preferences) {
    const bool is_dark = preferences.theme == widgets::ThemeName::dark;
    json value{
        {"format", "tablewick preferences"},
        {"version", 1},
        {"theme", is_dark ? "dark" : "paper"},
        {"text_scale_percent", preferences.text_scale_percent},
        {"touch", preferences.is_touch}};
    if (preferences.width > 0 && preferences.height > 0) {
        value["width"] = preferences.width;
        value["height"] = preferences.height;
    }
    return value.dump(4) + "\n";
}

ReadPreferences preferences_from_json(std::string_view text) {
    ReadPreferences read;
    const json value = json::parse(text, nullptr, false);
    if (!value.is_object()) {
        read.complaints.emplace_back(
            "Your preferences cannot be read, so the program starts with the usual ones."
        );
        return read;
    }
    const auto number = [&](const char* key, int minimum, int maximum, int& target) {
        if (!value.contains(key)) return;
        if (const auto found = whole_in(value[key], minimum, maximum))
            target = *found;
        else
            read.complaints.push_back(
                "Preferences: " + std::string(key) + " is a whole number of " +
                std::to_string(minimum) + " to " + std::to_string(maximum) + "."
            );
    };
    Preferences& preferences = read.preferences;
    number("text_scale_percent", text_scale_min, text_scale_max, preferences.text_scale_percent);
    number("width", 320, 16384, preferences.width);
    number("height", 320, 16384, preferences.height);
    if (value.contains("theme")) {
        if (value["theme"] == "dark" || value["theme"] == "paper")
            preferences.theme =
                value["theme"] == "dark" ? widgets::ThemeName::dark : widgets::ThemeName::paper;
        else
            read.complaints.emplace_back(R"(Preferences: theme is "dark" or "paper".)");
    }
    if (value.contains("touch")) {
        if (value["touch"].is_boolean())
            preferences.is_touch = value["touch"].get<bool>();
        else
            read.complaints.emplace_back("Preferences: touch is true or false.");
    }
    return read;
}

int text_scale_after(int percent, int steps) {
    return std::clamp(percent + steps * text_scale_step, text_scale_min, text_scale_max);
}

} // namespace app
