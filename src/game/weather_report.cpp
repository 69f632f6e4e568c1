#include "game/weather_report.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace game {

namespace {

bool has_event(const std::vector<WeatherEvent>& events, WeatherEvent event) {
    return std::find(events.begin(), events.end(), event) != events.end();
}

// The last day at or before `day` on which the year has just passed its middle.
std::int64_t midsummer_before(const YearClock& year, std::int64_t day) {
    constexpr int longest_year = 4000; // days; a longer one is cut
    for (int back = 0; back < longest_year; ++back, --day)
        if (year(day) >= 0.5 && year(day - 1) < 0.5) break;
    return day;
}

bool is_first_snow(const WeatherSource& source, const DayWeather& today) {
    if (!is_snow(today.sky)) return false;
    const std::int64_t summer = midsummer_before(source.year, today.day);
    constexpr std::int64_t at_once = 16; // in winter the last snow is not long ago
    for (std::int64_t end = today.day; end > summer; end -= at_once) {
        const std::int64_t begin = std::max(summer, end - at_once);
        const auto days = walk_weather(source, begin, static_cast<std::size_t>(end - begin));
        const bool has_snow = std::any_of(days.begin(), days.end(), [](const DayWeather& each) {
            return is_snow(each.sky);
        });
        if (has_snow) return false;
    }
    return true;
}

bool is_dry_spell(const WeatherSource& source, const DayWeather& today) {
    if (is_wet(today.sky)) return false;
    const auto before = static_cast<std::size_t>(source.figures.dry_spell_days - 1);
    const auto days = walk_weather(source, today.day - static_cast<std::int64_t>(before), before);
    return std::none_of(days.begin(), days.end(), [](const DayWeather& each) {
        return is_wet(each.sky);
    });
}

bool has_dust(const WeatherSource& source, const DayWeather& day) {
    return source.climate.has_dust && !is_wet(day.sky) && day.wind >= WindStrength::gale;
}

// Choices among sentences go by the day, mixed so that neighbours differ.
std::size_t day_number(const WeatherSource& source, std::int64_t day) {
    const auto offset = static_cast<std::int64_t>(source.seed % 1009U);
    constexpr std::int64_t cycle = 1'000'000'000'000; // above every day, keeps the number positive
    return static_cast<std::size_t>(day + offset + cycle);
}

const std::string& turn_of(const std::vector<std::string>& sentences, std::size_t number) {
    static const std::string none;
    return sentences.empty() ? none : sentences[number % sentences.size()];
}

std::string with_direction(std::string sentence, int octant) {
    constexpr std::string_view mark = "{from}";
    const std::size_t at = sentence.find(mark);
    if (at != std::string::npos) sentence.replace(at, mark.size(), compass_words(octant));
    return sentence;
}

std::size_t season_of(double share) {
    return static_cast<std::size_t>(std::lround(share * 4.0)) % 4;
}

// The sentence after the sky: what matters most about the day.
std::string second_sentence(
    const WeatherSource& source,
    const WeatherPhrases& phrases,
    const DayWeather& yesterday,
    const DayWeather& today,
    const std::vector<WeatherEvent>& events
) {
    const std::size_t number = day_number(source, today.day);
    if (has_event(events, WeatherEvent::first_snow)) return turn_of(phrases.first_snow, number);
    if (has_event(events, WeatherEvent::dust)) return turn_of(phrases.dust, number);
    if (today.wind >= WindStrength::strong)
        return with_direction(
            turn_of(phrases.gusts[static_cast<std::size_t>(today.wind)], number), today.wind_from
        );
    const double change = today.high_c - yesterday.high_c;
    if (change >= source.figures.change_c) return turn_of(phrases.warmer, number);
    if (change <= -source.figures.change_c) return turn_of(phrases.colder, number);
    if (has_event(events, WeatherEvent::dry_spell) && number % 3 == 0)
        return turn_of(phrases.dry_spell, number / 3);
    if (is_wet(today.sky) != is_wet(yesterday.sky) && number % 2 == 0)
        return turn_of(is_wet(today.sky) ? phrases.broke : phrases.cleared, number / 2);
    if (number % 2 == 1) {
        const auto& below = source.figures.warmth_below_c;
        const auto band = std::upper_bound(below.begin(), below.end(), today.high_c);
        return turn_of(phrases.warmth[static_cast<std::size_t>(band - below.begin())], number / 2);
    }
    return turn_of(source.climate.touches[season_of(source.year(today.day))], number / 2);
}

} // namespace

std::string_view event_words(WeatherEvent event) {
    switch (event) {
    case WeatherEvent::first_snow: return "first snow of the winter";
    case WeatherEvent::fog: return "fog";
    case WeatherEvent::thunderstorm: return "thunderstorm";
    case WeatherEvent::gale: return "gale";
    case WeatherEvent::dust: return "blowing dust";
    case WeatherEvent::dry_spell: return "dry spell";
    case WeatherEvent::heat: return "heat";
    case WeatherEvent::hard_frost: return "hard frost";
    }
    return {};
}

std::vector<WeatherEvent> weather_events(const WeatherSource& source, const DayWeather& day) {
    std::vector<WeatherEvent> events;
    const auto add_if = [&events](bool is_so, WeatherEvent event) {
        if (is_so) events.push_back(event);
    };
    add_if(is_first_snow(source, day), WeatherEvent::first_snow);
    add_if(day.sky == Sky::fog, WeatherEvent::fog);
    add_if(day.sky == Sky::thunderstorm, WeatherEvent::thunderstorm);
    add_if(day.wind >= WindStrength::gale, WeatherEvent::gale);
    add_if(has_dust(source, day), WeatherEvent::dust);
    add_if(is_dry_spell(source, day), WeatherEvent::dry_spell);
    add_if(day.high_c >= source.figures.heat_c, WeatherEvent::heat);
    add_if(day.low_c <= source.figures.hard_frost_c, WeatherEvent::hard_frost);
    return events;
}

std::string line_to_read(
    const WeatherSource& source,
    const WeatherPhrases& phrases,
    const DayWeather& yesterday,
    const DayWeather& today,
    const std::vector<WeatherEvent>& events
) {
    const SkyWords& words = phrases.skies[static_cast<std::size_t>(today.sky)];
    if (words.openings.empty()) return {};
    const std::size_t number = day_number(source, today.day);
    std::string line = turn_of(words.openings, number) + ", " + turn_of(words.closings, number);
    const std::string second = second_sentence(source, phrases, yesterday, today, events);
    return line + "." + (second.empty() ? "" : " " + second);
}

std::vector<const WeatherRule*> rules_for_weather(
    const std::vector<WeatherRule>& rules,
    const WeatherSource& source,
    const About& about,
    const DayWeather& day
) {
    std::vector<const WeatherRule*> found;
    for (const WeatherRule& rule : rules) {
        if (rule.family != about.rules) continue;
        if (rule.edition && *rule.edition != about.srd_edition) continue;
        const auto& skies = rule.skies;
        if (!skies.empty() && std::find(skies.begin(), skies.end(), day.sky) == skies.end())
            continue;
        if (rule.wind_least && day.wind < *rule.wind_least) continue;
        if (rule.high_least_c && day.high_c < *rule.high_least_c) continue;
        if (rule.high_below_c && day.high_c >= *rule.high_below_c) continue;
        if (rule.low_most_c && day.low_c > *rule.low_most_c) continue;
        if (rule.low_above_c && day.low_c <= *rule.low_above_c) continue;
        if (rule.needs_dust && !has_dust(source, day)) continue;
        found.push_back(&rule);
    }
    return found;
}

WeatherReport report_weather(
    const Climates& climates, const WeatherSource& source, const About& about, std::int64_t day
) {
    WeatherReport report;
    report.days = walk_weather(source, day - 1, days_ahead + 2);
    report.yesterday = report.days.front();
    report.days.erase(report.days.begin());
    const DayWeather& today = report.days.front();
    report.events = weather_events(source, today);
    report.line = line_to_read(source, climates.phrases, report.yesterday, today, report.events);
    report.rules = rules_for_weather(climates.rules, source, about, today);
    return report;
}

std::optional<WeatherSource>
weather_source(const Places& places, const Place& place, const Climates& climates, YearClock year) {
    const Place& there = weather_place(places, place);
    const Climate* climate = find_climate(climates, there.climate);
    if (climate == nullptr) return std::nullopt;
    return WeatherSource{
        *climate,
        climates.figures,
        weather_seed(places.weather_seed, there.id),
        static_cast<double>(there.warmer_by),
        &there == &place ? 0.0 : static_cast<double>(place.warmer_by),
        there.overrules,
        std::move(year)};
}

double in_unit(double celsius, bool in_fahrenheit) {
    return in_fahrenheit ? celsius * 9.0 / 5.0 + 32.0 : celsius;
}

double celsius_of(double degrees, bool in_fahrenheit) {
    const double celsius = in_fahrenheit ? (degrees - 32.0) * 5.0 / 9.0 : degrees;
    return std::round(celsius * 10.0) / 10.0;
}

std::string temperature_text(double celsius, bool in_fahrenheit) {
    return std::to_string(std::lround(in_unit(celsius, in_fahrenheit))) +
           (in_fahrenheit ? " F" : " C");
}

std::string_view compass_words(int octant) {
    static constexpr std::array<std::string_view, 8> words{
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"};
    return words[static_cast<std::size_t>(octant) % words.size()];
}

std::string wind_text(const WeatherPhrases& phrases, const DayWeather& day) {
    std::string words = phrases.winds[static_cast<std::size_t>(day.wind)];
    if (day.wind == WindStrength::still) return words;
    return words + " from the " + std::string(compass_words(day.wind_from));
}

std::string
short_weather(const WeatherPhrases& phrases, const DayWeather& day, bool in_fahrenheit) {
    return phrases.skies[static_cast<std::size_t>(day.sky)].name + " " +
           temperature_text(day.high_c, in_fahrenheit);
}

} // namespace game
