// What is told about a day: events, the line to read aloud, the rules that apply.
#include "game/weather_table.h"

#include <algorithm>
#include <map>
#include <set>

using game::DayWeather;
using game::Sky;
using game::WeatherEvent;
using game::WindStrength;
using weather_table::source_of;
using weather_table::usual_year;

namespace {

bool has(const std::vector<WeatherEvent>& events, WeatherEvent event) {
    return std::find(events.begin(), events.end(), event) != events.end();
}

int words_in(const std::string& line) {
    return static_cast<int>(std::count(line.begin(), line.end(), ' ')) + 1;
}

std::vector<std::string>
rules_on(rules::Family family, rules::SrdEdition edition, const DayWeather& day) {
    const auto source = source_of(weather_table::climate("desert"), usual_year());
    game::About about;
    about.rules = family;
    about.srd_edition = edition;
    std::vector<std::string> lines;
    for (const game::WeatherRule* rule :
         game::rules_for_weather(weather_table::climates().rules, source, about, day))
        lines.push_back(rule->line);
    return lines;
}

bool one_says(const std::vector<std::string>& lines, const std::string& words) {
    return std::any_of(lines.begin(), lines.end(), [&](const std::string& line) {
        return line.find(words) != std::string::npos;
    });
}

DayWeather mild_day() {
    DayWeather day;
    day.sky = Sky::fair;
    day.high_c = 18.0;
    day.low_c = 8.0;
    day.wind = WindStrength::light;
    return day;
}

} // namespace

TEST_CASE("weather: over 400 days no line to read is that of one of the ten days before") {
    for (const game::Climate& climate : weather_table::climates().climates) {
        CAPTURE(climate.key);
        const auto source = source_of(climate, usual_year());
        std::vector<std::string> lines;
        for (std::int64_t day = 1; day <= 400; ++day) {
            const auto report = game::report_weather(weather_table::climates(), source, {}, day);
            const auto begin = lines.size() > 10 ? lines.end() - 10 : lines.begin();
            CHECK_MESSAGE(std::find(begin, lines.end(), report.line) == lines.end(), report.line);
            lines.push_back(report.line);
        }
        CHECK(std::set<std::string>(lines.begin(), lines.end()).size() > 100);
    }
}

TEST_CASE("weather: a line to read is spoken in eight seconds") {
    // 150 words a minute, a usual pace of reading aloud: 20 words (common practice, no source).
    for (const game::Climate& climate : weather_table::climates().climates) {
        const auto source = source_of(climate, usual_year(), 7);
        for (std::int64_t day = 1; day <= 800; ++day) {
            const std::string line =
                game::report_weather(weather_table::climates(), source, {}, day).line;
            CHECK_MESSAGE(words_in(line) <= 20, line);
            CHECK_MESSAGE(line.find_first_of("{}") == std::string::npos, line);
            CHECK_MESSAGE(line.find("  ") == std::string::npos, line);
            CHECK_MESSAGE(line.back() == '.', line);
        }
    }
}

TEST_CASE("weather: the line tells of a marked change, of strong wind and of the first snow") {
    const auto& phrases = weather_table::climates().phrases;
    const auto source = source_of(weather_table::climate("continental"), usual_year());
    DayWeather yesterday = mild_day();
    DayWeather today = mild_day();
    today.day = 1;
    const auto ends_with_one_of = [&](const std::vector<std::string>& sentences,
                                      const std::vector<WeatherEvent>& events) {
        const std::string line = game::line_to_read(source, phrases, yesterday, today, events);
        CAPTURE(line);
        return std::any_of(sentences.begin(), sentences.end(), [&](const std::string& each) {
            return line.size() > each.size() &&
                   line.compare(line.size() - each.size(), each.size(), each) == 0;
        });
    };
    yesterday.high_c = 10.0;
    CHECK(ends_with_one_of(phrases.warmer, {}));
    yesterday.high_c = 26.0;
    CHECK(ends_with_one_of(phrases.colder, {}));
    today.wind = WindStrength::storm;
    today.wind_from = 1;
    CHECK_FALSE(ends_with_one_of(phrases.colder, {}));
    CHECK(ends_with_one_of(phrases.first_snow, {WeatherEvent::first_snow}));
}

TEST_CASE("weather: the first snow comes at most once a winter, in the cold north each winter") {
    for (const game::Climate& climate : weather_table::climates().climates) {
        CAPTURE(climate.key);
        const auto source = source_of(climate, usual_year());
        constexpr int years = 12;
        std::map<int, int> firsts; // by the winter, counted from midsummer
        std::map<int, bool> has_snow;
        const auto winter_of = [](std::int64_t day) {
            return static_cast<int>((static_cast<double>(day) + 365.2425 / 2.0) / 365.2425);
        };
        for (const DayWeather& day : game::walk_weather(source, 1, years * 365)) {
            if (!game::is_snow(day.sky)) continue;
            has_snow[winter_of(day.day)] = true;
            if (has(game::weather_events(source, day), WeatherEvent::first_snow))
                firsts[winter_of(day.day)] += 1;
        }
        for (const auto& [winter, count] : firsts)
            CHECK(count == 1);
        // The winter that was on at day 1 may have had its first snow before.
        for (const auto& [winter, snowed] : has_snow)
            if (winter > 0) CHECK(firsts[winter] == 1);
        if (climate.key == "subarctic") CHECK(firsts.size() >= years - 1);
        if (climate.key == "desert") CHECK(firsts.empty());
    }
}

TEST_CASE("weather: a dry spell needs so many days without rain, and has them") {
    const auto source = source_of(weather_table::climate("dry_summer"), usual_year());
    const int needed = weather_table::climates().figures.dry_spell_days;
    int told = 0;
    int dry = 0; // in a row, today counted
    for (const DayWeather& day : game::walk_weather(source, -50, 1600)) {
        dry = game::is_wet(day.sky) ? 0 : dry + 1;
        if (day.day < 1) continue;
        CAPTURE(day.day);
        const bool is_told = has(game::weather_events(source, day), WeatherEvent::dry_spell);
        CHECK(is_told == (dry >= needed));
        told += is_told ? 1 : 0;
    }
    CHECK(told > 20);
}

TEST_CASE("weather: heat, hard frost, gale, fog, thunder and dust are told when they are there") {
    const auto source = source_of(weather_table::climate("desert"), usual_year());
    CHECK_FALSE(has(game::weather_events(source, mild_day()), WeatherEvent::heat));
    DayWeather day = mild_day();
    day.high_c = 40.0;
    day.wind = WindStrength::gale;
    auto events = game::weather_events(source, day);
    CHECK(has(events, WeatherEvent::heat));
    CHECK(has(events, WeatherEvent::gale));
    CHECK(has(events, WeatherEvent::dust));
    day.low_c = -15.0;
    day.sky = Sky::thunderstorm;
    events = game::weather_events(source, day);
    CHECK(has(events, WeatherEvent::hard_frost));
    CHECK(has(events, WeatherEvent::thunderstorm));
    CHECK_FALSE(has(events, WeatherEvent::dust)); // it rains
    day.sky = Sky::fog;
    CHECK(has(game::weather_events(source, day), WeatherEvent::fog));
    const auto coast = source_of(weather_table::climate("temperate_coast"), usual_year());
    day.sky = Sky::clear;
    CHECK_FALSE(has(game::weather_events(coast, day), WeatherEvent::dust));
}

TEST_CASE("weather: rules apply to the weather and the rulebook they are written for") {
    using rules::Family;
    using rules::SrdEdition;
    const DayWeather mild = mild_day();
    CHECK(rules_on(Family::four_degree, SrdEdition::srd_5_1, mild).empty());
    CHECK(rules_on(Family::srd5, SrdEdition::srd_5_1, mild).empty());
    CHECK(rules_on(Family::srd5, SrdEdition::srd_5_2_1, mild).empty());
    DayWeather day = mild;
    day.sky = Sky::fog;
    CHECK(one_says(rules_on(Family::four_degree, SrdEdition::srd_5_1, day), "concealed"));
    // SRD 5.1, Vision and Light: patchy fog is lightly, opaque fog heavily obscured (from memory).
    CHECK(one_says(rules_on(Family::srd5, SrdEdition::srd_5_1, day), "lightly obscured"));
    day.sky = Sky::snow;
    // SRD 5.1, Travel Pace: difficult terrain halves the distance.
    CHECK(one_says(rules_on(Family::srd5, SrdEdition::srd_5_1, day), "half pace"));
    // Player Core (ORC), table Travel Speed: a half, a third in greater difficult terrain.
    CHECK(one_says(rules_on(Family::four_degree, SrdEdition::srd_5_1, day), "half or a third"));
    day.sky = Sky::heavy_rain;
    CHECK(one_says(rules_on(Family::srd5, SrdEdition::srd_5_2_1, day), "open flames"));
    CHECK(rules_on(Family::srd5, SrdEdition::srd_5_1, day).empty());
}

TEST_CASE("weather: each temperature falls under one row of the four-degree table at most") {
    // GM Core (ORC), table Temperature Effects, in Fahrenheit; from memory.
    const auto row_at = [](double low_f, double high_f) {
        DayWeather day = mild_day();
        day.low_c = game::celsius_of(low_f, true);
        day.high_c = game::celsius_of(high_f, true);
        return rules_on(rules::Family::four_degree, rules::SrdEdition::srd_5_1, day);
    };
    CHECK(row_at(33, 94).empty());
    const std::vector<std::pair<int, const char*>> cold{
        {32, "Mild cold"},
        {13, "Mild cold"},
        {12, "Severe cold"},
        {-20, "Severe cold"},
        {-21, "Extreme cold"},
        {-79, "Extreme cold"},
        {-80, "Incredible cold"}};
    for (const auto& [degrees, name] : cold) {
        CAPTURE(degrees);
        const auto found = row_at(degrees, 60);
        REQUIRE(found.size() == 1);
        CHECK(one_says(found, name));
    }
    const std::vector<std::pair<int, const char*>> hot{
        {95, "Mild heat"},
        {104, "Mild heat"},
        {105, "Severe heat"},
        {115, "Extreme heat"},
        {140, "Incredible heat"}};
    for (const auto& [degrees, name] : hot) {
        CAPTURE(degrees);
        const auto found = row_at(60, degrees);
        REQUIRE(found.size() == 1);
        CHECK(one_says(found, name));
    }
}

TEST_CASE("weather: temperatures are told in the unit the GM reads") {
    CHECK(game::temperature_text(12.4, false) == "12 C");
    CHECK(game::temperature_text(-3.6, false) == "-4 C");
    CHECK(game::temperature_text(0.0, true) == "32 F");
    CHECK(game::temperature_text(100.0, true) == "212 F");
    CHECK(game::temperature_text(-0.2, false) == "0 C");
    // Every whole degree that is typed in comes back as it was typed.
    for (int degrees = -80; degrees <= 130; ++degrees) {
        CHECK(
            game::temperature_text(game::celsius_of(degrees, true), true) ==
            std::to_string(degrees) + " F"
        );
    }
}
