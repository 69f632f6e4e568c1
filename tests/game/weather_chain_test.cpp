// The walk against the mathematics of its chain, computed by Eigen.
#include "game/weather_table.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

using game::Sky;
using game::WeatherOverrule;

namespace {

constexpr int skies = game::walked_skies;
using Matrix = Eigen::Matrix<double, skies, skies>;

Matrix chain_of(const game::ClimateSeason& season) {
    Matrix chain;
    for (int from = 0; from < skies; ++from) {
        const auto chances = game::next_sky_chances(season, static_cast<Sky>(from));
        for (int to = 0; to < skies; ++to)
            chain(from, to) = chances[static_cast<std::size_t>(to)];
    }
    return chain;
}

struct LongRun {
    Eigen::Matrix<double, skies, 1> shares;
    double second = 0.0; // the second largest eigenvalue: how long the past is felt
};

LongRun long_run(const Matrix& chain) {
    const Eigen::EigenSolver<Matrix> solver(chain.transpose());
    LongRun found;
    int first = 0;
    for (int i = 1; i < skies; ++i)
        if (solver.eigenvalues()(i).real() > solver.eigenvalues()(first).real()) first = i;
    found.shares = solver.eigenvectors().col(first).real();
    found.shares /= found.shares.sum();
    for (int i = 0; i < skies; ++i)
        if (i != first) found.second = std::max(found.second, std::abs(solver.eigenvalues()(i)));
    return found;
}

// A climate whose temperature never lets anything freeze, so that the sky is what was walked.
game::Climate without_frost(game::Climate climate) {
    climate.mean_c = 60.0;
    climate.swing_c = 0.0;
    return climate;
}

// Chances of being off by that many standard errors are below one in 100,000.
constexpr double errors_allowed = 4.5;

} // namespace

TEST_CASE("weather: in the long run each sky has the share that its chain's eigenvector says") {
    constexpr int days = 20000;
    for (const game::Climate& plain : weather_table::climates().climates) {
        const game::Climate climate = without_frost(plain);
        for (const double share : {0.0, 0.125, 0.25, 0.5, 0.75}) {
            CAPTURE(climate.key);
            CAPTURE(share);
            const game::ClimateSeason season = game::season_at(climate, share);
            const LongRun expected = long_run(chain_of(season));
            std::array<int, skies> counted{};
            const auto walk = game::walk_weather(
                weather_table::source_of(climate, weather_table::standing_year(share)), -7000, days
            );
            for (const game::DayWeather& day : walk)
                counted.at(static_cast<std::size_t>(day.sky)) += 1;
            double wet = 0.0;
            for (int sky = 0; sky < skies; ++sky) {
                CAPTURE(sky);
                const double p = expected.shares(sky);
                // Days that follow each other are alike: a chain's share varies at most (1 + l) /
                // (1 - l) times as much as that of independent days, l its second eigenvalue.
                const double error = std::sqrt(
                    p * (1.0 - p) / days * (1.0 + expected.second) / (1.0 - expected.second)
                );
                const double found =
                    static_cast<double>(counted.at(static_cast<std::size_t>(sky))) / days;
                CHECK(std::abs(found - p) <= errors_allowed * error + 1e-9);
                if (game::is_wet(static_cast<Sky>(sky))) wet += p;
            }
            CHECK(game::wet_share(season) == doctest::Approx(wet).epsilon(1e-9));
        }
    }
}

TEST_CASE("weather: the chances of tomorrow sum to 1 from every sky") {
    for (const game::Climate& climate : weather_table::climates().climates)
        for (const double share : {0.0, 0.3, 0.5, 0.9}) {
            const Matrix chain = chain_of(game::season_at(climate, share));
            for (int from = 0; from < skies; ++from)
                CHECK(chain.row(from).sum() == doctest::Approx(1.0).epsilon(1e-12));
            CHECK(chain.minCoeff() >= 0.0);
        }
}

TEST_CASE("weather: the day after an overruled one has the chances that the chain says") {
    // Each seed is another campaign in which the GM says the same about day 10.
    const game::Climate climate = without_frost(weather_table::climate("temperate_coast"));
    const game::ClimateSeason season = game::season_at(climate, 0.0);
    constexpr int campaigns = 6000;
    for (const Sky said : {Sky::thunderstorm, Sky::clear, Sky::fog}) {
        CAPTURE(static_cast<int>(said));
        WeatherOverrule overrule;
        overrule.day = 10;
        overrule.sky = said;
        const std::vector<WeatherOverrule> overrules{overrule};
        std::array<std::array<int, skies>, 2> counted{};
        for (std::uint64_t seed = 0; seed < campaigns; ++seed) {
            const game::WeatherSource source{
                climate,
                weather_table::climates().figures,
                seed,
                0.0,
                0.0,
                overrules,
                weather_table::standing_year(0.0)};
            const auto walk = game::walk_weather(source, 11, 2);
            for (std::size_t after = 0; after < 2; ++after)
                counted[after].at(static_cast<std::size_t>(walk[after].sky)) += 1;
        }
        const Matrix once = chain_of(season);
        const Matrix twice = once * once;
        for (std::size_t after = 0; after < 2; ++after)
            for (int sky = 0; sky < skies; ++sky) {
                CAPTURE(after);
                CAPTURE(sky);
                const double p = (after == 0 ? once : twice)(static_cast<int>(said), sky);
                const double found =
                    static_cast<double>(counted[after].at(static_cast<std::size_t>(sky))) /
                    campaigns;
                const double error = std::sqrt(p * (1.0 - p) / campaigns);
                CHECK(std::abs(found - p) <= errors_allowed * error + 1e-9);
            }
    }
    // What was said matters: rain is likelier after a storm than after a clear day, by far more
    // than the sampling error of 1 % in 6,000.
    CHECK(season.wet_after_wet - season.wet_after_dry > 0.3);
}

TEST_CASE("weather: deviations of the temperature have the size and the memory they are given") {
    game::Climate climate = without_frost(weather_table::climate("temperate_coast"));
    climate.mean_c = 40.0;
    for (game::ClimateSeason& season : climate.seasons) {
        season.wet_warmer_c = 0.0;
        season.restless_c = 3.0;
    }
    constexpr int days = 30000;
    const auto walk = game::walk_weather(
        weather_table::source_of(climate, weather_table::standing_year(0.5)), 1, days
    );
    double square = 0.0;
    double product = 0.0;
    double sum = 0.0;
    for (std::size_t at = 0; at < walk.size(); ++at) {
        const double here = weather_table::mean_of(walk[at]) - 40.0;
        sum += here;
        square += here * here;
        if (at > 0) product += here * (weather_table::mean_of(walk[at - 1]) - 40.0);
    }
    const double keeps = climate.keeps_warmth;
    // Standard errors of an autoregressive process of the first order (Bartlett): of the lag-1
    // correlation sqrt((1 - r^2) / n), of the mean s sqrt((1 + r) / (1 - r) / n), of the deviation
    // s sqrt((1 + r^2) / (1 - r^2) / 2n).
    const double correlation_error = std::sqrt((1.0 - keeps * keeps) / days);
    const double mean_error = 3.0 * std::sqrt((1.0 + keeps) / (1.0 - keeps) / days);
    const double size_error =
        3.0 * std::sqrt((1.0 + keeps * keeps) / (1.0 - keeps * keeps) / (2.0 * days));
    CHECK(std::abs(product / square - keeps) <= errors_allowed * correlation_error);
    CHECK(std::abs(sum / days) <= errors_allowed * mean_error);
    CHECK(std::abs(std::sqrt(square / days) - 3.0) <= errors_allowed * size_error);
}
