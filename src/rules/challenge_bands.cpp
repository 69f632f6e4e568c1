#include "rules/challenge_bands.h"

#include "rules/isotonic.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rules {

namespace {

// The rows that have the number, with the quartile asked for.
struct Line {
    std::vector<double> challenges;
    std::vector<double> fit;
};

Line fitted(
    const ChallengeStatistics& statistics,
    Quartiles ChallengeRow::*number,
    double Quartiles::*quartile
) {
    Line line;
    std::vector<double> values;
    std::vector<double> weights;
    for (const ChallengeRow& row : statistics.rows) {
        const Quartiles& found = row.*number;
        if (found.count <= 0) continue;
        line.challenges.push_back(row.challenge);
        values.push_back(found.*quartile);
        weights.push_back(found.count);
    }
    line.fit = isotonic_fit(values, weights);
    return line;
}

double interpolated(const Line& line, double challenge) {
    const auto above = std::lower_bound(line.challenges.begin(), line.challenges.end(), challenge);
    const auto place = static_cast<std::size_t>(above - line.challenges.begin());
    if (above == line.challenges.end()) return line.fit.back();
    if (place == 0 || *above == challenge) return line.fit[place];
    const double share = (challenge - line.challenges[place - 1]) /
                         (line.challenges[place] - line.challenges[place - 1]);
    return line.fit[place - 1] + share * (line.fit[place] - line.fit[place - 1]);
}

struct Bounds {
    double least = -std::numeric_limits<double>::infinity();
    double most = std::numeric_limits<double>::infinity();
};

// What the well-populated challenge ratings demand here: a first quartile at or below this one must
// not be undercut, a third quartile at or above it not be passed. Both rise with the challenge, so
// keeping within them keeps the order.
Bounds trusted_bounds(
    const ChallengeStatistics& statistics, Quartiles ChallengeRow::*number, double challenge
) {
    Bounds bounds;
    for (const ChallengeRow& row : statistics.rows) {
        const Quartiles& found = row.*number;
        if (found.count < trusted_count) continue;
        if (row.challenge <= challenge)
            bounds.least = std::max(bounds.least, std::ceil(found.first));
        if (row.challenge >= challenge)
            bounds.most = std::min(bounds.most, std::floor(found.third));
    }
    return bounds;
}

int within(const Bounds& bounds, double number) {
    const double rounded = std::round(number);
    return static_cast<int>(std::min(std::max(rounded, bounds.least), bounds.most));
}

} // namespace

std::vector<ChallengeBand>
challenge_bands(const ChallengeStatistics& statistics, Quartiles ChallengeRow::*number) {
    const Line low = fitted(statistics, number, &Quartiles::first);
    const Line typical = fitted(statistics, number, &Quartiles::median);
    const Line high = fitted(statistics, number, &Quartiles::third);
    std::vector<ChallengeBand> bands;
    if (low.challenges.empty()) return bands;
    bands.reserve(statistics.steps.size());
    for (const ChallengeStep& step : statistics.steps) {
        const Bounds bounds = trusted_bounds(statistics, number, step.challenge);
        bands.push_back(
            {within(bounds, interpolated(low, step.challenge)),
             within(bounds, interpolated(typical, step.challenge)),
             within(bounds, interpolated(high, step.challenge))}
        );
    }
    return bands;
}

std::size_t step_of(const ChallengeStatistics& statistics, double challenge) {
    std::size_t nearest = 0;
    for (std::size_t place = 1; place < statistics.steps.size(); ++place) {
        const double distance = std::abs(statistics.steps[place].challenge - challenge);
        if (distance < std::abs(statistics.steps[nearest].challenge - challenge)) nearest = place;
    }
    return nearest;
}

} // namespace rules
