// The temperate coast against a real daily record: seattle-weather.csv of the npm package
// vega-datasets 2.7.0, 1,461 days of 2012 to 2015 (its package says BSD-3-Clause). The climate's
// figures are our own, rounded; this test says how near to a real coast they come.
#include "game/weather_table.h"

#include <array>
#include <cmath>
#include <fstream>
#include <sstream>

namespace {

constexpr std::int64_t record_days = 1461; // four years
constexpr std::int64_t first_day = 12;     // 1 January, eleven days after midwinter (day 1)

struct RecordDay {
    int month = 0; // 1..12
    bool is_wet = false;
    double mean_c = 0.0;
};

std::vector<RecordDay> read_record() {
    std::ifstream stream(TABLEWICK_WEATHER_RECORD);
    REQUIRE_MESSAGE(
        stream.good(),
        "The weather record is not there. Fetch it: third_party/fetch_weather_record.sh "
        ".cache/weather_record"
    );
    std::vector<RecordDay> days;
    std::string line;
    std::getline(stream, line); // date,precipitation,temp_max,temp_min,wind,weather
    while (std::getline(stream, line)) {
        std::istringstream cells(line);
        std::string date;
        std::string rain;
        std::string high;
        std::string low;
        std::getline(cells, date, ',');
        std::getline(cells, rain, ',');
        std::getline(cells, high, ',');
        std::getline(cells, low, ',');
        days.push_back(
            {std::stoi(date.substr(5, 2)),
             std::stod(rain) > 0.0,
             (std::stod(high) + std::stod(low)) / 2.0}
        );
    }
    return days;
}

// Counts of one month or season; four years of the record, or many times four of the walk.
struct Tally {
    double days = 0, wet = 0, warmth = 0;
    std::array<double, 2> before{}; // days after a dry, a wet one
    std::array<double, 2> wet_after{};

    void add(const RecordDay& day, const RecordDay* yesterday) {
        days += 1;
        wet += day.is_wet ? 1 : 0;
        warmth += day.mean_c;
        if (yesterday == nullptr) return;
        const std::size_t kind = yesterday->is_wet ? 1 : 0;
        before.at(kind) += 1;
        wet_after.at(kind) += day.is_wet ? 1 : 0;
    }

    double wet_share() const { return wet / days; }

    double mean_c() const { return warmth / days; }

    double wet_chance(std::size_t kind) const { return wet_after.at(kind) / before.at(kind); }

    // How alike neighbouring days are: the lag-1 correlation of a two-state chain.
    double memory() const { return wet_chance(1) - wet_chance(0); }
};

std::size_t season_of(int month) { // December to February first
    return static_cast<std::size_t>(month % 12 / 3);
}

struct Tallies {
    std::array<Tally, 12> months;
    std::array<Tally, 4> seasons;

    void add(const RecordDay& day, const RecordDay* yesterday) {
        months.at(static_cast<std::size_t>(day.month - 1)).add(day, yesterday);
        seasons.at(season_of(day.month)).add(day, yesterday);
    }
};

Tallies tallies_of_record(const std::vector<RecordDay>& record) {
    Tallies tallies;
    for (std::size_t at = 0; at < record.size(); ++at)
        tallies.add(record[at], at == 0 ? nullptr : &record[at - 1]);
    return tallies;
}

// The same months over 60 times four years, so that the walk's own sampling error does not count.
Tallies tallies_of_walk(const std::vector<RecordDay>& record) {
    Tallies tallies;
    const auto source = weather_table::source_of(
        weather_table::climate("temperate_coast"), weather_table::usual_year()
    );
    for (std::int64_t block = 0; block < 60; ++block) {
        const auto days = game::walk_weather(
            source, first_day + block * record_days, static_cast<std::size_t>(record_days)
        );
        RecordDay yesterday;
        for (std::size_t at = 0; at < days.size(); ++at) {
            const RecordDay day{
                record[at].month, game::is_wet(days[at].sky), weather_table::mean_of(days[at])};
            tallies.add(day, at == 0 ? nullptr : &yesterday);
            yesterday = day;
        }
    }
    return tallies;
}

// Four years of one month are about 120 days. A figure of the record may be off by three of its own
// standard errors; the walk's own are smaller by sqrt(60).
constexpr double errors_allowed = 3.0;

} // namespace

TEST_CASE("weather record: the temperate coast has as many wet days a month as a real one") {
    const auto record = read_record();
    REQUIRE(record.size() == static_cast<std::size_t>(record_days));
    const Tallies real = tallies_of_record(record);
    const Tallies walked = tallies_of_walk(record);
    for (std::size_t month = 0; month < 12; ++month) {
        CAPTURE(month + 1);
        const Tally& ours = walked.months.at(month);
        const double p = ours.wet_share();
        // Neighbouring days are alike: the variance of a share grows by (1 + r) / (1 - r).
        const double r = ours.memory();
        const double error =
            std::sqrt(p * (1.0 - p) / real.months.at(month).days * (1.0 + r) / (1.0 - r));
        CAPTURE(p);
        CAPTURE(real.months.at(month).wet_share());
        CHECK(std::abs(p - real.months.at(month).wet_share()) <= errors_allowed * error);
    }
}

TEST_CASE("weather record: rain follows rain as often as on a real coast") {
    const auto record = read_record();
    const Tallies real = tallies_of_record(record);
    const Tallies walked = tallies_of_walk(record);
    for (std::size_t season = 0; season < 4; ++season)
        for (const std::size_t yesterday_wet : {0U, 1U}) {
            CAPTURE(season);
            CAPTURE(yesterday_wet);
            const double p = walked.seasons.at(season).wet_chance(yesterday_wet);
            const Tally& tally = real.seasons.at(season);
            // Given yesterday, today's rain is one toss: a share of independent days.
            const double error = std::sqrt(p * (1.0 - p) / tally.before.at(yesterday_wet));
            CAPTURE(p);
            CAPTURE(tally.wet_chance(yesterday_wet));
            CHECK(std::abs(p - tally.wet_chance(yesterday_wet)) <= errors_allowed * error);
        }
}

TEST_CASE("weather record: the months are as warm as on a real coast") {
    const auto record = read_record();
    const Tallies real = tallies_of_record(record);
    const Tallies walked = tallies_of_walk(record);
    const game::Climate& coast = weather_table::climate("temperate_coast");
    for (std::size_t month = 0; month < 12; ++month) {
        CAPTURE(month + 1);
        const double ours = walked.months.at(month).mean_c();
        // About 120 days that keep 3/4 of yesterday's deviation count as (1 - r) / (1 + r) of them.
        const double r = coast.keeps_warmth;
        const double restless =
            game::season_at(coast, static_cast<double>(month) / 12.0).restless_c;
        const double error =
            restless * std::sqrt((1.0 + r) / (1.0 - r) / real.months.at(month).days);
        CAPTURE(ours);
        CAPTURE(real.months.at(month).mean_c());
        CHECK(std::abs(ours - real.months.at(month).mean_c()) <= errors_allowed * error);
    }
}
