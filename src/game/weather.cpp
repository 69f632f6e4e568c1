#include "game/weather.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace game {

namespace {

constexpr std::size_t dry_skies = 4; // the first four that are walked

// Which of a day's numbers.
enum class Draw : std::uint64_t { wet = 1, lingers, sky, warmth, wind, wind_turn };

// Scrambles all bits of a number (the finaliser of the SplitMix64 generator).
std::uint64_t scramble(std::uint64_t bits) {
    bits += 0x9E3779B97F4A7C15U;
    bits = (bits ^ (bits >> 30U)) * 0xBF58476D1CE4E5B9U;
    bits = (bits ^ (bits >> 27U)) * 0x94D049BB133111EBU;
    return bits ^ (bits >> 31U);
}

std::uint64_t bits_of(std::uint64_t seed, std::int64_t day, Draw draw) {
    return scramble(
        scramble(seed + static_cast<std::uint64_t>(draw)) ^ static_cast<std::uint64_t>(day)
    );
}

double uniform(std::uint64_t seed, std::int64_t day, Draw draw) { // 0 <= x < 1
    return static_cast<double>(bits_of(seed, day, draw) >> 11U) * 0x1.0p-53;
}

// Nearly normal, mean 0 and deviation 1: the sum of the number's four quarters. It ends at 3.5
// deviations, which keeps the weather within what a climate can do.
double bell(std::uint64_t seed, std::int64_t day, Draw draw) {
    std::uint64_t bits = bits_of(seed, day, draw);
    double sum = 0.0;
    for (int quarter = 0; quarter < 4; ++quarter, bits >>= 16U)
        sum += static_cast<double>(bits & 0xFFFFU);
    constexpr double mean = 2.0 * 65535.0;
    constexpr double deviation = 37836.9; // of four quarters: sqrt(4 * (65536^2 - 1) / 12)
    return (sum - mean) / deviation;
}

bool is_dry(std::size_t sky) {
    return sky < dry_skies;
}

std::size_t index_of(Sky sky) {
    return static_cast<std::size_t>(sky);
}

// What an overruled sky is to the walk: snow is rain with frost.
std::size_t walked(Sky sky) {
    switch (sky) {
    case Sky::light_snow: return index_of(Sky::light_rain);
    case Sky::sleet:
    case Sky::snow: return index_of(Sky::rain);
    case Sky::heavy_snow: return index_of(Sky::heavy_rain);
    default: return index_of(sky);
    }
}

Sky frozen(std::size_t sky, double mean_c, const WeatherFigures& figures) {
    const Sky plain = static_cast<Sky>(sky);
    if (is_dry(sky) || mean_c >= figures.sleet_below_c) return plain;
    if (mean_c >= figures.snow_below_c) return Sky::sleet;
    if (plain == Sky::light_rain) return Sky::light_snow;
    return plain == Sky::rain ? Sky::snow : Sky::heavy_snow;
}

std::size_t pick(const std::array<double, 4>& shares, double at) {
    std::size_t chosen = 0;
    for (double sum = shares[0]; at >= sum && chosen < 3; sum += shares[chosen])
        chosen += 1;
    // Rounding at the very end must not choose what has no share.
    while (chosen > 0 && shares[chosen] <= 0.0)
        chosen -= 1;
    return chosen;
}

// One day's step of the sky.
class SkyStep {
public:
    SkyStep(const WeatherSource& source, std::int64_t day)
        : season_(season_at(source.climate, source.year(day))),
          wet_(uniform(source.seed, day, Draw::wet)),
          lingers_(uniform(source.seed, day, Draw::lingers)),
          sky_(uniform(source.seed, day, Draw::sky)) {}

    bool starts_anew() const {
        const auto [least, most] = std::minmax(season_.wet_after_dry, season_.wet_after_wet);
        return (wet_ < least || wet_ >= most) && lingers_ >= season_.lingers;
    }

    std::size_t after(std::size_t before) const {
        const bool is_wet = wet_ < (is_dry(before) ? season_.wet_after_dry : season_.wet_after_wet);
        if (is_wet != is_dry(before) && lingers_ < season_.lingers) return before;
        return is_wet ? dry_skies + pick(season_.wet, sky_) : pick(season_.dry, sky_);
    }

    const ClimateSeason& season() const { return season_; }

private:
    ClimateSeason season_;
    double wet_;
    double lingers_;
    double sky_;
};

// A deviation that remembers: with weight `keeps` from each day to the next, deviation 1 in the
// long run. A day whose value was said is where it starts for the days after it.
class Deviation {
public:
    Deviation(std::uint64_t seed, Draw draw, double keeps, std::int64_t first, std::size_t count)
        : keeps_(keeps), news_size_(std::sqrt(1.0 - keeps * keeps)), reach_(reach(keeps)),
          first_(first - static_cast<std::int64_t>(reach_)) {
        news_.reserve(reach_ + count);
        for (std::size_t at = 0; at < reach_ + count; ++at)
            news_.push_back(bell(seed, first_ + static_cast<std::int64_t>(at), draw));
    }

    // How many days back there is something that still counts.
    static std::size_t reach(double keeps) {
        constexpr double negligible = 2e-6;
        return keeps <= 0.0 ? 1
                            : static_cast<std::size_t>(std::log(negligible) / std::log(keeps)) + 1;
    }

    double on(std::int64_t day) const {
        double sum = 0.0;
        double weight = news_size_;
        const auto at = static_cast<std::size_t>(day - first_);
        for (std::size_t back = 0; back <= reach_; ++back, weight *= keeps_) {
            if (is_said_ && day - static_cast<std::int64_t>(back) == said_day_)
                return sum + weight / news_size_ * said_;
            sum += weight * news_[at - back];
        }
        return sum;
    }

    void say(std::int64_t day, double value) {
        is_said_ = true;
        said_day_ = day;
        said_ = value;
    }

private:
    double keeps_;
    double news_size_;
    std::size_t reach_;
    std::int64_t first_;
    std::vector<double> news_;
    bool is_said_ = false;
    std::int64_t said_day_ = 0;
    double said_ = 0.0;
};

WindStrength strength_of(double kmh, const WeatherFigures& figures) {
    const auto& below = figures.wind_below_kmh;
    const auto found = std::upper_bound(below.begin(), below.end(), kmh);
    return static_cast<WindStrength>(found - below.begin());
}

const WeatherOverrule* overrule_of(const WeatherSource& source, std::int64_t day) {
    const auto found = std::lower_bound(
        source.overrules.begin(),
        source.overrules.end(),
        day,
        [](const WeatherOverrule& each, std::int64_t wanted) { return each.day < wanted; }
    );
    return found != source.overrules.end() && found->day == day ? &*found : nullptr;
}

// The first day that must be walked so that what was said before `first` is felt.
std::int64_t first_felt(const WeatherSource& source, std::int64_t first) {
    const std::size_t reach = std::max(
        Deviation::reach(source.climate.keeps_warmth), Deviation::reach(source.figures.wind_keeps)
    );
    std::int64_t felt = first;
    bool has_warmth = false;
    bool has_wind = false;
    for (std::size_t left = source.overrules.size(); left > 0; --left) {
        const WeatherOverrule& each = source.overrules[left - 1];
        if (each.day >= first) continue;
        if (each.day < first - static_cast<std::int64_t>(reach)) break;
        if (each.high_c.has_value() && !has_warmth) felt = each.day;
        if (each.wind.has_value() && !has_wind) felt = each.day;
        has_warmth = has_warmth || each.high_c.has_value();
        has_wind = has_wind || each.wind.has_value();
    }
    return felt;
}

// The sky of the day before `day`: any, if `day` starts anew.
std::size_t sky_before(const WeatherSource& source, std::int64_t day) {
    // A tenth of all days start anew, so nobody gets as far as this.
    constexpr std::int64_t back_most = 1000;
    std::vector<SkyStep> steps;
    std::size_t sky = 0;
    for (std::int64_t at = day; at > day - back_most; --at) {
        const WeatherOverrule* said = at == day ? nullptr : overrule_of(source, at);
        if (said != nullptr && said->sky.has_value()) {
            sky = walked(*said->sky);
            break;
        }
        steps.emplace_back(source, at);
        if (steps.back().starts_anew()) break;
    }
    // The first step is that of `day` itself.
    for (auto step = steps.rbegin(); step != steps.rend() && step + 1 != steps.rend(); ++step)
        sky = step->after(sky);
    return sky;
}

// Walks from day to day; the news of all processes are drawn once.
class Walk {
public:
    Walk(const WeatherSource& source, std::int64_t first, std::size_t count)
        : source_(source),
          warmth_(source.seed, Draw::warmth, source.climate.keeps_warmth, first, count),
          wind_(source.seed, Draw::wind, source.figures.wind_keeps, first, count),
          turn_(source.seed, Draw::wind_turn, source.figures.wind_turn_keeps, first, count),
          sky_(sky_before(source, first)) {}

    DayWeather step(std::int64_t day) {
        const SkyStep step(source_, day);
        const WeatherOverrule* said = overrule_of(source_, day);
        sky_ = step.after(sky_);
        if (said != nullptr && said->sky.has_value()) sky_ = walked(*said->sky);
        DayWeather weather;
        weather.day = day;
        weather.overrule = said;
        set_temperature(step.season(), weather);
        weather.sky = said != nullptr && said->sky.has_value()
                          ? *said->sky
                          : frozen(sky_, (weather.high_c + weather.low_c) / 2.0, source_.figures);
        set_wind(step.season(), weather);
        return weather;
    }

private:
    void set_temperature(const ClimateSeason& season, DayWeather& weather) {
        const Climate& climate = source_.climate;
        const double wet = wet_share(season);
        const double of_sky = season.wet_warmer_c * (is_dry(sky_) ? -wet : 1.0 - wet);
        const double usual =
            seasonal_mean_c(climate, source_.year(weather.day)) + source_.warmer_by_c + of_sky;
        const double spread = season.spread_c * source_.figures.spread[sky_];
        if (weather.overrule != nullptr && weather.overrule->high_c.has_value()) {
            const double above = *weather.overrule->high_c - spread / 2.0 - usual;
            warmth_.say(weather.day, above / season.restless_c);
        }
        const double mean = usual + season.restless_c * warmth_.on(weather.day) + source_.shift_c;
        weather.high_c = mean + spread / 2.0;
        weather.low_c = mean - spread / 2.0;
    }

    void set_wind(const ClimateSeason& season, DayWeather& weather) {
        const Climate& climate = source_.climate;
        const WeatherFigures& figures = source_.figures;
        const double changes = climate.wind_changes;
        const double usual = season.wind_kmh * figures.wind[sky_];
        if (weather.overrule != nullptr && weather.overrule->wind.has_value()) {
            const auto strength = static_cast<std::size_t>(*weather.overrule->wind);
            const double kmh = figures.wind_typical_kmh[strength];
            wind_.say(weather.day, (std::log(kmh / usual) + changes * changes / 2.0) / changes);
        }
        weather.wind_kmh =
            usual * std::exp(changes * wind_.on(weather.day) - changes * changes / 2.0);
        weather.wind = strength_of(weather.wind_kmh, figures);
        const double from = climate.wind_from_deg + climate.wind_turns_deg * turn_.on(weather.day);
        weather.wind_from = (static_cast<int>(std::lround(from / 45.0)) % 8 + 8) % 8;
    }

    const WeatherSource& source_;
    Deviation warmth_;
    Deviation wind_;
    Deviation turn_;
    std::size_t sky_;
};

} // namespace

std::vector<DayWeather>
walk_weather(const WeatherSource& source, std::int64_t first, std::size_t count) {
    const std::int64_t felt = first_felt(source, first);
    const auto ahead = static_cast<std::size_t>(first - felt);
    Walk walk(source, felt, ahead + count);
    std::vector<DayWeather> days;
    days.reserve(ahead + count);
    for (std::size_t at = 0; at < ahead + count; ++at)
        days.push_back(walk.step(felt + static_cast<std::int64_t>(at)));
    days.erase(days.begin(), days.begin() + static_cast<std::ptrdiff_t>(ahead));
    return days;
}

std::uint64_t weather_seed(std::uint32_t campaign_seed, Id place) {
    return scramble((std::uint64_t{campaign_seed} << 32U) | place);
}

bool is_wet(Sky sky) {
    return index_of(sky) >= dry_skies;
}

bool is_snow(Sky sky) {
    return sky == Sky::light_snow || sky == Sky::snow || sky == Sky::heavy_snow;
}

ClimateSeason season_at(const Climate& climate, double share) {
    const double quarters = share * 4.0;
    const auto begun = static_cast<std::size_t>(quarters) % 4;
    const double t = quarters - std::floor(quarters);
    const ClimateSeason& one = climate.seasons[begun];
    const ClimateSeason& two = climate.seasons[(begun + 1) % 4];
    ClimateSeason season;
    season.wet_after_dry = std::lerp(one.wet_after_dry, two.wet_after_dry, t);
    season.wet_after_wet = std::lerp(one.wet_after_wet, two.wet_after_wet, t);
    season.lingers = std::lerp(one.lingers, two.lingers, t);
    for (std::size_t sky = 0; sky < 4; ++sky) {
        season.dry[sky] = std::lerp(one.dry[sky], two.dry[sky], t);
        season.wet[sky] = std::lerp(one.wet[sky], two.wet[sky], t);
    }
    season.spread_c = std::lerp(one.spread_c, two.spread_c, t);
    season.wet_warmer_c = std::lerp(one.wet_warmer_c, two.wet_warmer_c, t);
    season.restless_c = std::lerp(one.restless_c, two.restless_c, t);
    season.wind_kmh = std::lerp(one.wind_kmh, two.wind_kmh, t);
    return season;
}

double seasonal_mean_c(const Climate& climate, double share) {
    return climate.mean_c -
           climate.swing_c * std::cos(2.0 * std::numbers::pi * (share - climate.lag));
}

std::array<double, walked_skies> next_sky_chances(const ClimateSeason& season, Sky before) {
    const std::size_t from = walked(before);
    const double wet = is_dry(from) ? season.wet_after_dry : season.wet_after_wet;
    std::array<double, walked_skies> chances{};
    for (std::size_t sky = 0; sky < walked_skies; ++sky) {
        const double group = is_dry(sky) ? 1.0 - wet : wet;
        const double share = is_dry(sky) ? season.dry[sky] : season.wet[sky - dry_skies];
        const bool can_linger = is_dry(sky) == is_dry(from);
        const double fresh = can_linger ? (1.0 - season.lingers) * share : share;
        chances[sky] = group * (fresh + (sky == from ? season.lingers : 0.0));
    }
    return chances;
}

double renewal_chance(const ClimateSeason& season) {
    return (1.0 - std::abs(season.wet_after_wet - season.wet_after_dry)) * (1.0 - season.lingers);
}

double wet_share(const ClimateSeason& season) {
    return season.wet_after_dry / (1.0 + season.wet_after_dry - season.wet_after_wet);
}

} // namespace game
