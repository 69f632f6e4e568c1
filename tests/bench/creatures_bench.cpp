// What finding, building and reading creatures costs, against the limit of 1 ms that a panel has
// for each of them. Prints and never fails; run it by hand from a release build.
#include "game/creature_building.h"
#include "game/creature_search.h"
#include "game/party_reading.h"
#include "game/roster.h"
#include "store/creature_library.h"
#include "store/rulebook_json.h"

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

namespace {

// Keeps results alive, so that no work is optimised away.
double kept = 0;

void measure(const std::string& what, const std::function<double()>& work) {
    using clock = std::chrono::steady_clock;
    constexpr int repeats = 50;
    constexpr int runs = 5;
    double best = 0;
    for (int run = 0; run < runs; ++run) {
        const clock::time_point start = clock::now();
        for (int repeat = 0; repeat < repeats; ++repeat)
            kept += work();
        const double took =
            std::chrono::duration<double, std::milli>(clock::now() - start).count() / repeats;
        best = run == 0 ? took : std::min(best, took);
    }
    std::printf("%-52s %8.3f ms of 1\n", what.c_str(), best);
}

rules::Rulebook loaded(rules::Family family) {
    auto rulebook = store::load_rulebook(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, rules::SrdEdition::srd_5_1
    );
    return rulebook.ok() ? std::move(rulebook).value() : rules::Rulebook();
}

void bench_search(const rules::Rulebook& rulebook) {
    const auto library =
        store::load_creature_library(std::string(TABLEWICK_SOURCE_DIR) + "/assets", rulebook);
    if (!library.ok()) return;
    std::vector<game::LibraryCreature> thousand;
    constexpr std::size_t many = 1000;
    while (thousand.size() < many)
        thousand.push_back(library.value()[thousand.size() % library.value().size()]);
    for (const char* typed : {"", "wolf", "adlut black"}) {
        game::CreatureQuery query;
        query.text = typed;
        measure("search of 1,000 creatures for \"" + std::string(typed) + "\"", [&] {
            return static_cast<double>(game::search_creatures(thousand, query).size());
        });
    }
}

game::Campaign party_of_five() {
    game::Campaign campaign;
    for (int number = 1; number <= 5; ++number) {
        game::Character character;
        character.name = "Hero " + std::to_string(number);
        character.statistics.hit_points = 150;
        character.statistics.armor_class = 28;
        for (const char* damage : {"3d12+14", "3d8+6"}) {
            game::Attack attack;
            attack.name = damage;
            attack.bonus = 22;
            attack.damage = damage;
            attack.damage_type = "slashing";
            attack.per_turn = character.statistics.attacks.empty() ? 3 : 0;
            character.statistics.attacks.push_back(attack);
        }
        character.statistics.difficulty_classes = {{"class_dc", 27}, {"spell_dc", 28}};
        game::add_character(campaign, character);
    }
    return campaign;
}

void bench_building(const rules::Rulebook& rulebook, const std::string& family) {
    rules::BuildChoice choice;
    choice.level = 15;
    choice.challenge = 15;
    choice.archetype = "guard";
    measure("a creature built, " + family, [&] {
        return static_cast<double>(game::built_statistics(rulebook, choice).hit_points);
    });
    const game::Campaign campaign = party_of_five();
    const game::Statistics creature = game::built_statistics(rulebook, choice);
    measure("read-out against five heroes, " + family, [&] {
        const auto party = game::present_party(campaign);
        return game::party_reading(rulebook, party, creature).damage_on_creature;
    });
}

} // namespace

int main() {
    const rules::Rulebook four_degree = loaded(rules::Family::four_degree);
    const rules::Rulebook srd5 = loaded(rules::Family::srd5);
    bench_search(srd5);
    bench_building(four_degree, "four-degree");
    bench_building(srd5, "srd5");
    std::printf("(sum kept: %g)\n", kept);
    return 0;
}
