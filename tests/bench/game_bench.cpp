// What the party's figures and odds cost, as ratios to a straightforward reference measured in the
// same run. Prints and never fails; run it by hand from a release build.
#include "bench/measure.h"
#include "bench/subsets.h"
#include "game/conditions.h"
#include "game/party_odds.h"
#include "game/roster.h"
#include "store/rulebook_json.h"

#include <cstdio>
#include <vector>

using measure::compare;

namespace {

// Five of level 4, each frightened and off-guard, so that every number has its reasons.
game::Campaign shaken_party(const rules::Rulebook& rulebook) {
    game::Campaign campaign;
    for (const int perception : {12, 9, 7, 4, 3}) {
        game::Character character;
        character.name = "Member with +" + std::to_string(perception);
        character.statistics.level = 4;
        character.statistics.perception = perception;
        character.statistics.saves = {{"fortitude", 9}, {"reflex", 8}, {"will", 7}};
        for (const rules::StatName& skill : rulebook.skills)
            character.statistics.skills[skill.key] = perception;
        game::add_character(campaign, character);
    }
    for (const game::Combatant& combatant : campaign.encounter.combatants)
        for (const char* key : {"frightened", "off_guard"}) {
            game::ActiveCondition condition;
            condition.key = key;
            condition.value = 1;
            game::add_condition(campaign.encounter, rulebook, combatant.id, condition);
        }
    return campaign;
}

// Each member's faces counted one by one, then every way in which each succeeds or fails.
double counted_half(const std::vector<game::MemberOdds>& members, int dc) {
    constexpr int faces = 20;
    std::vector<double> chances;
    for (const game::MemberOdds& one : members) {
        int succeeding = 0;
        for (int natural = 1; natural <= faces; ++natural)
            if (rules::four_degree_result(natural, one.member.modifier, dc) >=
                rules::Degree::success)
                succeeding += 1;
        chances.push_back(static_cast<double>(succeeding) / faces);
    }
    return measure::half_by_subsets(chances);
}

} // namespace

int main() {
    const auto rulebook = store::load_rulebook(
        TABLEWICK_SOURCE_DIR "/assets", rules::Family::four_degree, rules::SrdEdition::srd_5_1
    );
    if (!rulebook.ok()) {
        std::printf("%s\n", base::to_text(rulebook.error()).c_str());
        return 1;
    }
    const rules::Rulebook& book = rulebook.value();
    const game::Campaign campaign = shaken_party(book);
    game::OddsQuestion question;
    question.dc = 18;
    const game::PartyOdds party = game::party_odds(campaign, book, question);
    const auto counted = [&] { return counted_half(party.members, 18); };
    const char* reference = "faces and outcomes written out";
    compare(
        "a party of five at another DC",
        [&] { return game::odds_at(party, 18).group.at_least_half_succeed; },
        reference,
        counted
    );
    compare(
        "the same with every condition counted in",
        [&] { return game::party_odds(campaign, book, question).group.at_least_half_succeed; },
        reference,
        counted
    );
    compare(
        "all figures of the party with their reasons",
        [&] {
            return static_cast<double>(game::party_figures(campaign, book, false).columns.size());
        },
        reference,
        counted
    );
    std::printf("(sum kept: %g)\n", measure::kept);
    return 0;
}
