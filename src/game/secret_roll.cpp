#include "game/secret_roll.h"

#include "game/fights.h"
#include "game/odds_text.h"

#include <algorithm>
#include <utility>

namespace game {

using rules::RollMode;
using rules::Rulebook;

namespace {

int roll_d20(RollMode mode, rules::Dice& dice) {
    const int first = dice.d20();
    if (mode == RollMode::normal) return first;
    const int second = dice.d20();
    return mode == RollMode::advantage ? std::max(first, second) : std::min(first, second);
}

RolledCheck rolled(const PartyOdds& party, const MemberOdds& one, rules::Dice& dice) {
    RolledCheck check;
    check.character = one.character;
    check.name = one.name;
    check.modifier = one.member.modifier;
    if (one.member.fails_by_rule) {
        check.degree = party.kind == rules::CheckKind::four_degree ? rules::Degree::critical_failure
                                                                   : rules::Degree::failure;
        return check;
    }
    check.natural = roll_d20(one.member.mode, dice);
    check.degree = rules::check_degree(party.kind, check.natural, check.modifier, party.dc);
    return check;
}

void keep(TableRolls& kept, TableRoll roll) {
    roll.id = kept.next_id++;
    if (kept.rolls.size() < TableRolls::kept) {
        kept.rolls.push_back(std::move(roll));
        return;
    }
    const auto oldest = std::min_element(
        kept.rolls.begin(),
        kept.rolls.end(),
        [](const TableRoll& one, const TableRoll& other) { return one.id < other.id; }
    );
    *oldest = std::move(roll);
}

} // namespace

std::string roll_in_secret(
    Campaign& campaign, const Rulebook& rulebook, const OddsQuestion& question, rules::Dice& dice
) {
    const PartyOdds party = party_odds(campaign, rulebook, question);
    if (party.members.empty()) return {};
    const Clock time = now(campaign);
    TableRoll roll;
    roll.stat = question.stat;
    roll.dc = party.dc;
    roll.mode = question.mode;
    roll.day = time.day;
    roll.second_of_day = time.second_of_day;
    for (const MemberOdds& one : party.members)
        roll.results.push_back(rolled(party, one, dice));
    std::string line = roll_text(rulebook, roll);
    keep(campaign.table_rolls, std::move(roll));
    return line;
}

std::string result_text(const RolledCheck& result) {
    std::string degree = degree_words(result.degree);
    if (result.natural == 0) return degree;
    return std::to_string(result.natural + result.modifier) + " " + degree;
}

std::string roll_text(const Rulebook& rulebook, const TableRoll& roll) {
    std::string line =
        "Secret " + rollable_name(rulebook, roll.stat) + ", DC " + std::to_string(roll.dc);
    if (roll.mode != RollMode::normal)
        line += std::string(", ") + mode_words(rulebook.family, roll.mode);
    const char* before = ": ";
    for (const RolledCheck& result : roll.results) {
        line += before + result.name + " " + result_text(result);
        before = ", ";
    }
    return line;
}

std::vector<const TableRoll*> newest_rolls(const TableRolls& rolls, std::size_t count) {
    std::vector<const TableRoll*> newest;
    newest.reserve(rolls.rolls.size());
    for (const TableRoll& roll : rolls.rolls)
        newest.push_back(&roll);
    std::sort(newest.begin(), newest.end(), [](const TableRoll* one, const TableRoll* other) {
        return one->id > other->id;
    });
    newest.resize(std::min(newest.size(), count));
    return newest;
}

} // namespace game
