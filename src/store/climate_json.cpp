#include "store/climate_json.h"

#include "game/weather.h"
#include "store/asset_file.h"
#include "store/enum_words.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <system_error>

namespace store {

using base::ErrorKind;
using game::Climate;
using game::Climates;
using game::ClimateSeason;

namespace {

constexpr std::array<const char*, 4> season_keys{"winter", "spring", "summer", "autumn"};
constexpr std::array<const char*, 6> warmth_keys{"bitter", "frosty", "cold", "mild", "warm", "hot"};
constexpr std::size_t days_apart = 11; // a line to read comes back after this many at the soonest

double number(const Spot& spot, double least, double most) {
    const double value = spot.fraction();
    if (!(value >= least && value <= most)) {
        std::string range = std::to_string(least);
        range.erase(range.find_last_not_of('0') + 1);
        std::string upper = std::to_string(most);
        upper.erase(upper.find_last_not_of('0') + 1);
        throw spot.wrong("a number from " + range + "0 to " + upper + "0");
    }
    return value;
}

void check_format(const Spot& top, const std::string& format) {
    if (top.at("format").text() != format)
        throw top.at("format").wrong("\"" + format + "\"", ErrorKind::wrong_format);
}

std::vector<std::string> texts(const Spot& list, std::size_t least) {
    std::vector<std::string> read;
    list.each([&](const Spot& each) { read.push_back(each.text()); });
    if (read.size() < least)
        throw list.wrong("a list of " + std::to_string(least) + " texts or more");
    return read;
}

// {"clear": 3, "fair": 4}: weights, made to sum to 1.
std::array<double, 4> weights(const Spot& map, int first_sky) {
    std::vector<std::string> known;
    for (int sky = first_sky; sky < first_sky + 4; ++sky)
        known.emplace_back(word_of(static_cast<game::Sky>(sky)));
    map.allow_only(known);
    std::array<double, 4> read{};
    for (std::size_t at = 0; at < 4; ++at)
        if (map.has(known[at])) read[at] = number(map.at(known[at]), 0.0, 1000.0);
    const double sum = std::accumulate(read.begin(), read.end(), 0.0);
    if (sum <= 0.0) throw map.wrong("at least one weight above 0");
    for (double& weight : read)
        weight /= sum;
    return read;
}

ClimateSeason read_season(const Spot& spot) {
    spot.allow_only(
        {"wet_after_dry",
         "wet_after_wet",
         "lingers",
         "dry",
         "wet",
         "spread_c",
         "wet_warmer_c",
         "restless_c",
         "wind_kmh"}
    );
    ClimateSeason season;
    season.wet_after_dry = number(spot.at("wet_after_dry"), 0.0, 1.0);
    season.wet_after_wet = number(spot.at("wet_after_wet"), 0.0, 1.0);
    season.lingers = number(spot.at("lingers"), 0.0, 1.0);
    // The seasons between hold it too: the chance is the product of two even changes, lowest at
    // an end.
    if (game::renewal_chance(season) < game::renewal_least)
        throw spot.wrong("weather that changes more: less lingering, or chances of rain closer "
                         "to each other");
    season.dry = weights(spot.at("dry"), 0);
    season.wet = weights(spot.at("wet"), 4);
    season.spread_c = number(spot.at("spread_c"), 0.5, 40.0);
    season.wet_warmer_c = number(spot.at("wet_warmer_c"), -20.0, 20.0);
    season.restless_c = number(spot.at("restless_c"), 0.1, 20.0);
    season.wind_kmh = number(spot.at("wind_kmh"), 1.0, 80.0);
    return season;
}

Climate read_climate(const Spot& top, const std::string& key) {
    check_format(top, "tablewick-climate");
    top.allow_only(
        {"format",
         "title",
         "summary",
         "source",
         "mean_c",
         "swing_c",
         "lag",
         "keeps_warmth",
         "wind_changes",
         "wind_from_deg",
         "wind_turns_deg",
         "has_dust",
         "seasons"}
    );
    Climate climate;
    climate.key = key;
    climate.title = top.at("title").text();
    climate.summary = top.at("summary").text();
    climate.source = top.at("source").text();
    climate.mean_c = number(top.at("mean_c"), -50.0, 45.0);
    climate.swing_c = number(top.at("swing_c"), 0.0, 40.0);
    climate.lag = number(top.at("lag"), -0.25, 0.25);
    climate.keeps_warmth = number(top.at("keeps_warmth"), 0.0, 0.95);
    climate.wind_changes = number(top.at("wind_changes"), 0.05, 1.5);
    climate.wind_from_deg = top.at("wind_from_deg").number(0, 359);
    climate.wind_turns_deg = top.at("wind_turns_deg").number(0, 180);
    climate.has_dust = top.truth_or("has_dust");
    const Spot seasons = top.at("seasons");
    seasons.allow_only({season_keys.begin(), season_keys.end()});
    for (std::size_t at = 0; at < season_keys.size(); ++at) {
        const Spot season = seasons.at(season_keys[at]);
        season.allow_only({"weather", "touches"});
        climate.seasons[at] = read_season(season.at("weather"));
        climate.touches[at] = texts(season.at("touches"), 1);
    }
    return climate;
}

void read_sky_words(const Spot& spot, game::SkyWords& words) {
    spot.allow_only({"name", "openings", "closings"});
    words.name = spot.at("name").text();
    words.openings = texts(spot.at("openings"), 1);
    words.closings = texts(spot.at("closings"), 1);
    if (std::lcm(words.openings.size(), words.closings.size()) < days_apart)
        throw spot.wrong("openings and closings that give 11 different pairs, such as 4 and 3");
}

void read_phrases(const Spot& top, game::WeatherPhrases& phrases) {
    check_format(top, "tablewick-weather-phrases");
    top.allow_only({"format", "source", "skies", "winds", "warmth", "changes"});
    const Spot skies = top.at("skies");
    for (std::size_t sky = 0; sky < phrases.skies.size(); ++sky) {
        const std::string key(word_of(static_cast<game::Sky>(sky)));
        read_sky_words(skies.at(key), phrases.skies[sky]);
    }
    const Spot winds = top.at("winds");
    for (std::size_t wind = 0; wind < phrases.winds.size(); ++wind) {
        const Spot each = winds.at(std::string(word_of(static_cast<game::WindStrength>(wind))));
        each.allow_only({"name", "sentences"});
        phrases.winds[wind] = each.at("name").text();
        phrases.gusts[wind] = texts(each.at("sentences"), 1);
    }
    const Spot warmth = top.at("warmth");
    for (std::size_t at = 0; at < warmth_keys.size(); ++at)
        phrases.warmth[at] = texts(warmth.at(warmth_keys[at]), 1);
    const Spot changes = top.at("changes");
    changes.allow_only({"warmer", "colder", "cleared", "broke", "first_snow", "dry_spell", "dust"});
    phrases.warmer = texts(changes.at("warmer"), 1);
    phrases.colder = texts(changes.at("colder"), 1);
    phrases.cleared = texts(changes.at("cleared"), 1);
    phrases.broke = texts(changes.at("broke"), 1);
    phrases.first_snow = texts(changes.at("first_snow"), 1);
    phrases.dry_spell = texts(changes.at("dry_spell"), 1);
    phrases.dust = texts(changes.at("dust"), 1);
}

// The words of the file formats, in force until the names to show are read.
void name_plainly(game::WeatherPhrases& phrases) {
    const auto plain = [](std::string_view word) {
        std::string name(word);
        std::replace(name.begin(), name.end(), '_', ' ');
        return name;
    };
    for (std::size_t sky = 0; sky < phrases.skies.size(); ++sky)
        phrases.skies[sky].name = plain(word_of(static_cast<game::Sky>(sky)));
    for (std::size_t wind = 0; wind < phrases.winds.size(); ++wind)
        phrases.winds[wind] = plain(word_of(static_cast<game::WindStrength>(wind)));
}

template <std::size_t Count>
void rising(const Spot& list, double least, double most, std::array<double, Count>& figures) {
    std::size_t at = 0;
    list.each([&](const Spot& each) {
        if (at == Count) throw each.wrong(std::to_string(Count) + " numbers");
        figures[at] = number(each, least, most);
        if (at > 0 && figures[at] <= figures[at - 1])
            throw each.wrong("a number above the one before it");
        at += 1;
    });
    if (at != Count) throw list.wrong(std::to_string(Count) + " numbers");
}

void read_of_skies(const Spot& map, std::array<double, game::walked_skies>& factors) {
    for (std::size_t sky = 0; sky < factors.size(); ++sky)
        factors[sky] = number(map.at(std::string(word_of(static_cast<game::Sky>(sky)))), 0.05, 5.0);
}

void read_figures(const Spot& top, game::WeatherFigures& figures) {
    check_format(top, "tablewick-weather-figures");
    top.allow_only(
        {"format",
         "source",
         "spread",
         "wind",
         "wind_below_kmh",
         "wind_typical_kmh",
         "wind_keeps",
         "wind_turn_keeps",
         "snow_below_c",
         "sleet_below_c",
         "heat_c",
         "hard_frost_c",
         "dry_spell_days",
         "change_c",
         "warmth_below_c"}
    );
    read_of_skies(top.at("spread"), figures.spread);
    read_of_skies(top.at("wind"), figures.wind);
    rising(top.at("wind_below_kmh"), 0.0, 300.0, figures.wind_below_kmh);
    rising(top.at("wind_typical_kmh"), 0.1, 300.0, figures.wind_typical_kmh);
    figures.wind_keeps = number(top.at("wind_keeps"), 0.0, 0.95);
    figures.wind_turn_keeps = number(top.at("wind_turn_keeps"), 0.0, 0.95);
    figures.snow_below_c = number(top.at("snow_below_c"), -10.0, 10.0);
    figures.sleet_below_c = number(top.at("sleet_below_c"), figures.snow_below_c, 10.0);
    figures.heat_c = number(top.at("heat_c"), 0.0, 60.0);
    figures.hard_frost_c = number(top.at("hard_frost_c"), -60.0, 0.0);
    figures.dry_spell_days = top.at("dry_spell_days").number(2, 60);
    figures.change_c = number(top.at("change_c"), 1.0, 30.0);
    rising(top.at("warmth_below_c"), -60.0, 60.0, figures.warmth_below_c);
}

template <class Enum>
Enum word(const Spot& spot) {
    const auto found = from_word<Enum>(spot.text());
    if (!found) throw spot.wrong("one of " + all_words<Enum>());
    return *found;
}

game::WeatherRule read_rule(const Spot& spot) {
    spot.allow_only({"family", "edition", "when", "line", "source", "verified"});
    game::WeatherRule rule;
    rule.family = word<rules::Family>(spot.at("family"));
    if (spot.has("edition")) rule.edition = word<rules::SrdEdition>(spot.at("edition"));
    rule.line = spot.at("line").text();
    rule.source = spot.at("source").text();
    rule.verified = spot.at("verified").text();
    const Spot when = spot.at("when");
    when.allow_only(
        {"skies", "wind_least", "high_least_c", "high_below_c", "low_most_c", "low_above_c", "dust"}
    );
    if (when.value.empty()) throw when.wrong("at least one condition");
    if (when.has("skies"))
        when.at("skies").each([&](const Spot& each) { rule.skies.push_back(word<game::Sky>(each)); }
        );
    if (when.has("wind_least")) rule.wind_least = word<game::WindStrength>(when.at("wind_least"));
    const auto degrees = [&](const char* key, std::optional<double>& target) {
        if (when.has(key)) target = number(when.at(key), -100.0, 100.0);
    };
    degrees("high_least_c", rule.high_least_c);
    degrees("high_below_c", rule.high_below_c);
    degrees("low_most_c", rule.low_most_c);
    degrees("low_above_c", rule.low_above_c);
    rule.needs_dust = when.truth_or("dust");
    return rule;
}

} // namespace

ClimateReading load_climates(const std::filesystem::path& assets_folder) {
    ClimateReading reading;
    name_plainly(reading.climates.phrases);
    const auto keep = [&](const base::Result<base::Nothing>& read) {
        if (!read.ok()) reading.problems.push_back(read.error());
    };
    const std::filesystem::path weather = assets_folder / "weather";
    Climates& climates = reading.climates;
    keep(read_asset_file(
        weather / "phrases.json",
        "the words of the weather",
        [&](const Spot& top) {
            game::WeatherPhrases phrases;
            read_phrases(top, phrases);
            climates.phrases = std::move(phrases);
        }
    ));
    keep(read_asset_file(
        weather / "figures.json",
        "the figures of the weather",
        [&](const Spot& top) {
            game::WeatherFigures figures;
            read_figures(top, figures);
            climates.figures = figures;
        }
    ));
    keep(read_asset_file(weather / "rules.json", "the rules of the weather", [&](const Spot& top) {
        check_format(top, "tablewick-weather-rules");
        top.allow_only({"format", "about", "rules"});
        std::vector<game::WeatherRule> read;
        top.at("rules").each([&](const Spot& each) { read.push_back(read_rule(each)); });
        climates.rules = std::move(read);
    }));
    std::vector<std::filesystem::path> files;
    std::error_code error;
    for (std::filesystem::directory_iterator file(assets_folder / "climates", error), end;
         !error && file != end;
         file.increment(error))
        if (file->path().extension() == ".json") files.push_back(file->path());
    std::sort(files.begin(), files.end());
    for (const std::filesystem::path& file : files)
        keep(read_asset_file(file, "this climate", [&](const Spot& top) {
            climates.climates.push_back(read_climate(top, file.stem().string()));
        }));
    if (files.empty())
        reading.problems.push_back(
            {ErrorKind::not_found,
             "There are no climates, so there is no weather.",
             {(assets_folder / "climates").string(), 0, 0, {}},
             "Install Tablewick again."}
        );
    std::stable_sort(
        climates.climates.begin(),
        climates.climates.end(),
        [](const Climate& one, const Climate& two) { return one.title < two.title; }
    );
    return reading;
}

} // namespace store
