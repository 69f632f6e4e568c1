// The weather of the days ahead where the party is.
#include "game/date_text.h"
#include "game/places_edit.h"
#include "game/weather_report.h"
#include "print/pages.h"

namespace print {

base::Result<Blocks> weather_page(const PrintSource& source, const std::string& /*detail*/) {
    const game::Campaign& campaign = source.campaign;
    const game::Place* place = game::current_place(campaign.places);
    if (place == nullptr)
        return base::Error{
            base::ErrorKind::not_found,
            "The party is at no place.",
            {},
            "Choose one in the panel Places."};
    const auto weather = game::weather_source(
        campaign.places, *place, source.climates, game::year_clock(campaign.calendar)
    );
    if (!weather.has_value())
        return base::Error{
            base::ErrorKind::not_found, "There is no weather at " + place->name + ".", {}, {}};
    const game::WeatherReport report =
        game::report_weather(source.climates, *weather, campaign.about, campaign.clock.day);
    const bool in_fahrenheit = campaign.places.in_fahrenheit;
    Blocks blocks{Title{"Weather", place->name}, Paragraph{report.line, TextStyle::strong}};
    Table days{{{"Day"}, {"Sky and high"}, {"Low", true}, {"Wind"}}, {}, 0, false, false};
    for (const game::DayWeather& day : report.days)
        days.rows.push_back(
            {{game::short_date_text(campaign.calendar, day.day), {}, true},
             {game::short_weather(source.climates.phrases, day, in_fahrenheit)},
             {game::temperature_text(day.low_c, in_fahrenheit)},
             {game::wind_text(source.climates.phrases, day)}}
        );
    blocks.emplace_back(std::move(days));
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

} // namespace print
