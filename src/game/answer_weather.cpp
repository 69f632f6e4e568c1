// "weather", "weather day 12", "weather +3".
#include "game/answer_topics.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/weather_report.h"

namespace game {

namespace {

base::Error not_possible(std::string message) {
    return {base::ErrorKind::not_possible, std::move(message)};
}

std::string row_of(const Climates& climates, const Campaign& campaign, const DayWeather& day) {
    const bool in_fahrenheit = campaign.places.in_fahrenheit;
    return short_date_text(campaign.calendar, day.day) + "\t" +
           climates.phrases.skies[static_cast<std::size_t>(day.sky)].name + "\t" +
           temperature_text(day.low_c, in_fahrenheit) + " to " +
           temperature_text(day.high_c, in_fahrenheit) + "\t" + wind_text(climates.phrases, day);
}

NamedValues values_of(const Climates& climates, const DayWeather& day) {
    return {
        {"day", static_cast<int>(day.day)},
        {"sky", climates.phrases.skies[static_cast<std::size_t>(day.sky)].name},
        {"high_c", Quantity(day.high_c)},
        {"low_c", Quantity(day.low_c)},
        {"wind", climates.phrases.winds[static_cast<std::size_t>(day.wind)]},
        {"wind_kmh", Quantity(day.wind_kmh)},
        {"wind_from", std::string(compass_words(day.wind_from))},
        {"overruled", day.overrule != nullptr}};
}

Answer weather_answer(
    const Climates& climates,
    const Campaign& campaign,
    const Place& place,
    const WeatherReport& report
) {
    const bool in_fahrenheit = campaign.places.in_fahrenheit;
    const DayWeather& today = report.days.front();
    Answer answer;
    answer.title = short_date_text(campaign.calendar, today.day) + ", " + place.name + ": " +
                   short_weather(climates.phrases, today, in_fahrenheit);
    answer.lines.push_back(report.line);
    std::vector<std::string> events;
    for (const WeatherEvent event : report.events)
        events.emplace_back(event_words(event));
    std::vector<std::string> consequences;
    for (const WeatherRule* rule : report.rules) {
        consequences.push_back(rule->line);
        answer.lines.push_back(rule->line + " (" + rule->source + ", " + rule->verified + ")");
    }
    if (today.overrule != nullptr && !today.overrule->note.empty())
        answer.lines.push_back(today.overrule->note);
    std::vector<NamedValues> ahead;
    for (const DayWeather& day : report.days) {
        answer.lines.push_back(row_of(climates, campaign, day));
        if (&day != &today) ahead.push_back(values_of(climates, day));
    }
    answer.values = values_of(climates, today);
    answer.values.push_back({"place", place.name});
    answer.values.push_back({"line", report.line});
    answer.values.push_back({"events", std::move(events)});
    answer.values.push_back({"rules", std::move(consequences)});
    answer.values.push_back({"days_ahead", std::move(ahead)});
    return answer;
}

} // namespace

base::Result<Answer> answer_weather(const AnswerContext& context, Words& words) {
    if (context.campaign == nullptr || context.climates == nullptr)
        return not_possible("Weather where? Name a campaign with --campaign FILE.");
    const Campaign& campaign = *context.campaign;
    constexpr int days_most = 1'000'000'000;
    std::int64_t day = now(campaign).day;
    if (words.take("day")) {
        const auto wanted = words.take_number(-days_most, days_most);
        if (!wanted) return misfit();
        day = *wanted;
    } else if (const auto later = words.take_number(-days_most, days_most)) {
        day += *later;
    }
    const Place* place = current_place(campaign.places);
    if (place == nullptr)
        return not_possible("The party is at no place; choose one in the panel Places.");
    const auto source =
        weather_source(campaign.places, *place, *context.climates, year_clock(campaign.calendar));
    if (!source) return not_possible("There is no weather at " + place->name + ".");
    return weather_answer(
        *context.climates,
        campaign,
        *place,
        report_weather(*context.climates, *source, campaign.about, day)
    );
}

} // namespace game
