// "odds +9 dc 20", "attack +9 ac 18 2d6+4 agile", "group +5 +7 +2 dc 15".
#include "game/answer_topics.h"
#include "game/party_odds.h"
#include "game/sheet.h"
#include "rules/attack_odds.h"
#include "rules/group_odds.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace game {

namespace {

using rules::CheckKind;
using rules::Degree;
using rules::DegreeOdds;
using rules::Rulebook;

struct DegreeName {
    Degree degree;
    const char* key;
    const char* name;
};

constexpr std::array<DegreeName, 4> degree_names{{
    {Degree::critical_success, "critical_success", "critical success"},
    {Degree::success, "success", "success"},
    {Degree::failure, "failure", "failure"},
    {Degree::critical_failure, "critical_failure", "critical failure"},
}};

constexpr std::array<DegreeName, 3> attack_names{{
    {Degree::critical_success, "critical_hit", "critical hit"},
    {Degree::success, "hit", "hit"},
    {Degree::failure, "miss", "miss"},
}};

bool has_degree(CheckKind kind, Degree degree) {
    if (kind == CheckKind::four_degree) return true;
    if (degree == Degree::critical_failure) return false;
    return degree != Degree::critical_success || kind == CheckKind::srd5_attack;
}

std::string chance_cells(const rules::Fraction& chance) {
    return precise_percent(rules::value_of(chance)) + "\t" + rules::to_text(chance);
}

std::string mode_text(rules::RollMode mode) {
    switch (mode) {
    case rules::RollMode::normal: return {};
    case rules::RollMode::advantage: return ", the better of two d20";
    case rules::RollMode::disadvantage: return ", the worse of two d20";
    }
    return {};
}

// Chances of one check are multiples of one part in this: 20, or 400 for two d20.
double faces_of(rules::RollMode mode) {
    return rules::check_odds(CheckKind::srd5_check, 0, 1, mode).of;
}

// Mean damage is a multiple of one part in this. Means of dice are whole halves; damage that would
// fall below 0 counts as 0, and then every roll of the dice counts, twice on a critical hit.
double damage_ways(const rules::Attack& attack) {
    if (rules::distribution_of(attack.damage).lowest >= 0) return 2.0;
    double ways = 1.0;
    for (const rules::DiceTerm& term : attack.damage.terms)
        ways *= std::pow(term.sides, std::abs(term.count) * 2);
    return ways;
}

NamedValue chance_value(std::string name, const rules::Fraction& chance) {
    return {std::move(name), Quantity(chance)};
}

struct AttackQuestion {
    rules::Attack attack;
    int ac = 0;
    bool has_damage = false;
    bool is_agile = false;
};

// The words behind "attack +9 ac 18".
base::Result<base::Nothing> take_attack_parts(AttackQuestion& question, Words& words) {
    while (!words.is_at_end()) {
        const rules::RollMode mode = take_roll_mode(words);
        if (mode != rules::RollMode::normal) {
            question.attack.mode = mode;
        } else if (words.take("agile")) {
            question.is_agile = true;
        } else if (!question.has_damage) {
            const auto dice = words.take_dice();
            if (!dice.ok()) {
                if (std::isdigit(static_cast<unsigned char>(words.next().front())) != 0)
                    return dice.error();
                return misfit();
            }
            question.attack.damage = dice.value();
            question.has_damage = true;
        } else {
            return misfit();
        }
    }
    return base::Nothing{};
}

void add_damage(Answer& answer, const Rulebook& rulebook, const AttackQuestion& question) {
    const rules::Attack& attack = question.attack;
    const double denominator = faces_of(attack.mode) * damage_ways(attack);
    const auto mean_of = [&](const rules::Attack& one) {
        return Quantity(rules::expected_damage(one, question.ac), denominator);
    };
    const auto said = [](const Quantity& quantity) {
        const std::string exact = quantity.exact && quantity.exact->denominator > 1
                                      ? " (" + rules::to_text(*quantity.exact) + ")"
                                      : std::string();
        return decimal_text(quantity.decimal) + exact;
    };
    const Quantity one = mean_of(attack);
    answer.title += ", " + decimal_text(one.decimal) + " damage on average";
    answer.lines.push_back(
        "Damage " + rules::to_text(attack.damage) + ": " + said(one) + " on average"
    );
    answer.values.push_back({"expected_damage", one});
    const auto& penalties =
        question.is_agile ? rulebook.turn.agile_attack_penalty : rulebook.turn.attack_penalty;
    if (penalties.size() < 2) return;
    const std::vector<rules::Attack> routine = rules::attack_routine(attack, penalties);
    std::vector<NamedValues> rows;
    std::string line;
    for (const rules::Attack& each : routine) {
        const Quantity mean = mean_of(each);
        line += (line.empty() ? "" : ", ") + decimal_text(mean.decimal);
        rows.push_back({{"modifier", each.modifier}, {"expected_damage", mean}});
    }
    const Quantity total(rules::expected_damage(routine, question.ac), denominator);
    answer.lines.push_back(
        "A whole turn: " + line + "; " + said(total) + " with " +
        counted(static_cast<int>(routine.size()), "attack")
    );
    answer.values.push_back({"attacks", std::move(rows)});
    answer.values.push_back({"expected_damage_of_turn", total});
}

} // namespace

rules::RollMode take_roll_mode(Words& words) {
    if (words.take("advantage") || words.take("fortune")) return rules::RollMode::advantage;
    if (words.take("disadvantage") || words.take("misfortune"))
        return rules::RollMode::disadvantage;
    return rules::RollMode::normal;
}

void add_degrees(Answer& answer, CheckKind kind, const DegreeOdds& odds) {
    NamedValues degrees;
    for (const DegreeName& each : degree_names) {
        if (!has_degree(kind, each.degree)) continue;
        const rules::Fraction chance = rules::exact_chance(odds, each.degree);
        answer.lines.push_back(each.name + std::string("\t") + chance_cells(chance));
        degrees.push_back(chance_value(each.key, chance));
    }
    answer.values.push_back({"degrees", std::move(degrees)});
}

base::Result<Answer> answer_odds(const AnswerContext& context, Words& words) {
    const auto modifier = words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max);
    if (!modifier || !(words.take("dc") || words.take("against"))) return misfit();
    words.take("dc");
    const auto dc = words.take_number(0, AnswerLimits::dc_max);
    if (!dc) return misfit();
    const rules::RollMode mode = take_roll_mode(words);
    const CheckKind kind = check_kind(context.rulebook);
    const DegreeOdds odds = rules::check_odds(kind, *modifier, *dc, mode);
    const rules::Fraction succeeds = rules::exact_chance_of_success(odds);
    Answer answer;
    answer.title = precise_percent(rules::value_of(succeeds)) +
                   " succeed: " + signed_text(*modifier) + " against DC " + std::to_string(*dc) +
                   mode_text(mode);
    add_degrees(answer, kind, odds);
    const int needed = rules::needed_roll(kind, *modifier, *dc);
    constexpr int faces = 20;
    answer.lines.push_back(
        needed > faces ? std::string("No roll succeeds.")
                       : "Succeeds from " + std::to_string(needed) + " on the die."
    );
    answer.values.push_back(chance_value("succeeds", succeeds));
    answer.values.push_back({"modifier", *modifier});
    answer.values.push_back({"dc", *dc});
    if (needed <= faces) answer.values.push_back({"needed_roll", needed});
    return answer;
}

base::Result<Answer> answer_attack(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    AttackQuestion question;
    question.attack.kind =
        rulebook.family == rules::Family::srd5 ? CheckKind::srd5_attack : CheckKind::four_degree;
    const auto modifier = words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max);
    if (!modifier || !words.take("ac")) return misfit();
    const auto ac = words.take_number(0, AnswerLimits::dc_max);
    if (!ac) return misfit();
    question.attack.modifier = *modifier;
    question.ac = *ac;
    const auto taken = take_attack_parts(question, words);
    if (!taken.ok()) return taken.error();

    const DegreeOdds odds = rules::attack_odds(question.attack, *ac);
    const rules::Fraction hits = rules::exact_chance_of_success(odds);
    Answer answer;
    answer.title = precise_percent(rules::value_of(hits)) + " hit: " + signed_text(*modifier) +
                   " against AC " + std::to_string(*ac) + mode_text(question.attack.mode);
    NamedValues degrees;
    for (const DegreeName& each : attack_names) {
        rules::Fraction chance = rules::exact_chance(odds, each.degree);
        if (each.degree == Degree::failure)
            chance = rules::fraction_of(odds.failure + odds.critical_failure, odds.of);
        answer.lines.push_back(each.name + std::string("\t") + chance_cells(chance));
        degrees.push_back(chance_value(each.key, chance));
    }
    answer.values.push_back({"degrees", std::move(degrees)});
    answer.values.push_back(chance_value("hits", hits));
    answer.values.push_back({"modifier", *modifier});
    answer.values.push_back({"ac", *ac});
    if (question.has_damage) add_damage(answer, rulebook, question);
    return answer;
}

void add_group(
    Answer& answer, CheckKind kind, const std::vector<rules::GroupMember>& members, int dc
) {
    const rules::GroupOdds odds = rules::group_odds(kind, members, dc);
    double ways = 1.0;
    double faces = 1.0;
    for (const rules::GroupMember& member : members) {
        ways *= faces_of(member.mode);
        faces = std::max(faces, faces_of(member.mode));
    }
    const auto row = [&](const std::string& name, const std::string& key, double chance) {
        answer.lines.push_back(name + "\t" + precise_percent(chance));
        answer.values.push_back({key, Quantity(chance, ways)});
    };
    answer.title = "About " + decimal_text(odds.expected_succeeding, 1) + " of " +
                   std::to_string(members.size()) + " succeed against DC " + std::to_string(dc);
    row("all succeed", "all_succeed", odds.all_succeed);
    row("at least half succeed", "at_least_half_succeed", odds.at_least_half_succeed);
    row("nobody succeeds", "nobody_succeeds", odds.none_succeeds);
    std::vector<NamedValues> counts;
    std::string line;
    for (std::size_t succeeding = 0; succeeding < odds.exactly.size(); ++succeeding) {
        const double chance = odds.exactly[succeeding];
        line += (line.empty() ? "" : ", ") + std::to_string(succeeding) + ": " +
                precise_percent(chance);
        counts.push_back(
            {{"succeeding", static_cast<int>(succeeding)}, {"chance", Quantity(chance, ways)}}
        );
    }
    answer.lines.push_back("So many succeed: " + line);
    answer.values.push_back({"expected_succeeding", Quantity(odds.expected_succeeding, faces)});
    answer.values.push_back({"expected_failing", Quantity(odds.expected_failing, faces)});
    answer.values.push_back({"exactly", std::move(counts)});
    answer.values.push_back({"dc", dc});
}

base::Result<Answer> answer_group(const AnswerContext& context, Words& words) {
    std::vector<rules::GroupMember> members;
    std::vector<std::string> modifiers;
    while (const auto modifier =
               words.take_number(AnswerLimits::modifier_min, AnswerLimits::modifier_max)) {
        if (static_cast<int>(members.size()) == AnswerLimits::party_max)
            return base::Error{
                base::ErrorKind::out_of_range,
                "A group has " + std::to_string(AnswerLimits::party_max) + " members at most."};
        members.push_back({*modifier});
        modifiers.push_back(signed_text(*modifier));
    }
    if (members.empty() || !words.take("dc")) return misfit();
    const auto dc = words.take_number(0, AnswerLimits::dc_max);
    if (!dc) return misfit();
    const rules::RollMode mode = take_roll_mode(words);
    for (rules::GroupMember& member : members)
        member.mode = mode;
    Answer answer;
    add_group(answer, check_kind(context.rulebook), members, *dc);
    answer.title += mode_text(mode);
    answer.values.push_back({"modifiers", std::move(modifiers)});
    return answer;
}

} // namespace game
