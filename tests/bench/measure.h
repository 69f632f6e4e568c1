// Time of a piece of work as a ratio to a reference measured in the same run. Prints and never
// fails.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <string>

namespace measure {

// Keeps results alive, so that no work is optimised away.
inline double kept = 0;

// The fastest of several runs in microseconds, each repeated until it is long enough to time.
inline double microseconds(const std::function<double()>& work) {
    using clock = std::chrono::steady_clock;
    constexpr double long_enough = 20'000;
    constexpr int runs = 5;
    int repeats = 1;
    double best = 0;
    for (int run = 0; run < runs;) {
        const clock::time_point start = clock::now();
        for (int repeat = 0; repeat < repeats; ++repeat)
            kept += work();
        const double took = std::chrono::duration<double, std::micro>(clock::now() - start).count();
        if (took < long_enough) {
            repeats *= 2;
            continue;
        }
        const double each = took / repeats;
        best = run == 0 ? each : std::min(best, each);
        run += 1;
    }
    return best;
}

inline void compare(
    const std::string& what,
    const std::function<double()>& ours,
    const std::string& reference_name,
    const std::function<double()>& reference
) {
    const double own = microseconds(ours);
    const double other = microseconds(reference);
    std::printf(
        "%-44s %10.2f us   %8.3f x of %s (%.2f us)\n",
        what.c_str(),
        own,
        own / other,
        reference_name.c_str(),
        other
    );
}

} // namespace measure
