// How much faster the search for changes to a fight is than trying everything; and that both agree.
// A ratio, so that it says the same on every machine. Run by hand:
// build/PRESET/tests/encounter_bench
#include "game/encounter_suggestions.h"
#include "game/suggestions_brute.h"

#include <chrono>
#include <cstdio>
#include <functional>

namespace {

double seconds_of(const std::function<void()>& work, int times) {
    const auto start = std::chrono::steady_clock::now();
    for (int each = 0; each < times; ++each)
        work();
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    return spent.count() / times;
}

} // namespace

int main() {
    const std::vector<int> worth{10, 15, 20, 30, 40, 60, 80, 120, 160};
    bool agrees = true;
    for (const std::size_t size : {10U, 20U, 40U, 300U}) {
        std::vector<game::CreatureOffer> offers;
        std::vector<int> counts(size, 0);
        for (std::size_t at = 0; at < size; ++at)
            offers.push_back({"creature", 1.0, worth[(at * 7) % worth.size()]});
        counts[0] = 2;
        counts[1] = 1;
        game::SuggestionGoal goal;
        goal.xp_min = 120;
        goal.xp_max = 159;
        goal.xp_best = 123; // met by nothing: both must look everywhere
        goal.creatures_max = 12;
        goal.count_max = 12;
        goal.wanted = 12;
        std::vector<game::PlanSuggestion> found;
        const double search =
            seconds_of([&] { found = game::suggest_changes(offers, counts, goal); }, 20);
        std::printf("%3zu offers: search %8.3f ms", size, search * 1e3);
        constexpr std::size_t brute_max = 20;
        if (size <= brute_max) {
            std::vector<game::PlanSuggestion> expected;
            const double brute =
                seconds_of([&] { expected = brute::suggest(offers, counts, goal); }, 1);
            agrees = agrees && found == expected;
            std::printf(
                ", everything tried %9.1f ms, %.0f times as long", brute * 1e3, brute / search
            );
        }
        std::printf("\n");
    }
    return agrees ? 0 : 1;
}
