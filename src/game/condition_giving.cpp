#include "game/condition_giving.h"

#include "game/conditions.h"
#include "game/effects.h"
#include "game/sheet.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace game {

namespace {

using rules::Rulebook;

ActiveCondition made_for(const ConditionGift& gift, Id target) {
    ActiveCondition condition = gift.condition;
    if (gift.counts_on_own_turn) condition.duration.whose_turn = target;
    return condition;
}

std::string why_refused(const Combatant& combatant) {
    return combatant.is_dead ? "is dead" : "is immune";
}

std::string mode_text(rules::RollMode mode) {
    switch (mode) {
    case rules::RollMode::normal: return "";
    case rules::RollMode::advantage: return "at advantage";
    case rules::RollMode::disadvantage: return "at disadvantage";
    }
    return "";
}

bool has_sign(SheetPart part) {
    return part != SheetPart::armor_class && part != SheetPart::difficulty_class;
}

std::string number_text(const SheetNumber& of, int number) {
    return has_sign(of.part) ? signed_text(number) : std::to_string(number);
}

// How one number changes: "AC 19 -> 17", "Fort at disadvantage", "Ref fails".
std::string change_text(const SheetNumber& before, const SheetNumber& after) {
    std::string text;
    if (after.number.total != before.number.total) {
        text = " " + number_text(before, before.number.total) + " -> " +
               number_text(after, after.number.total);
    }
    if (after.number.fails && !before.number.fails) text += " fails";
    if (after.number.mode != before.number.mode) {
        const std::string mode = mode_text(after.number.mode);
        text += mode.empty() ? " straight" : " " + mode;
    }
    if (text.empty()) return text;
    return (before.part == SheetPart::skill ? before.name : before.brief) + text;
}

// The numbers of one part of the sheet; where all of several change alike they become one phrase.
void add_part(
    std::vector<std::string>& changes,
    const std::vector<SheetNumber>& before,
    const std::vector<SheetNumber>& after,
    SheetPart part,
    const std::string& all_of_them
) {
    std::vector<std::string> texts;
    std::vector<int> steps;
    std::size_t count = 0;
    for (std::size_t at = 0; at < std::min(before.size(), after.size()); ++at) {
        if (before[at].part != part) continue;
        count += 1;
        const std::string text = change_text(before[at], after[at]);
        if (text.empty()) continue;
        texts.push_back(text);
        const bool is_plain = before[at].number.mode == after[at].number.mode &&
                              before[at].number.fails == after[at].number.fails;
        steps.push_back(is_plain ? after[at].number.total - before[at].number.total : 0);
    }
    const bool is_alike =
        count > 2 && texts.size() == count && steps.front() != 0 &&
        std::all_of(steps.begin(), steps.end(), [&](int step) { return step == steps.front(); });
    if (is_alike && !all_of_them.empty())
        changes.push_back(all_of_them + " " + signed_text(steps.front()));
    else
        changes.insert(changes.end(), texts.begin(), texts.end());
}

void add_changed(
    std::vector<std::string>& changes, const std::string& what, int before, int after
) {
    if (before != after)
        changes.push_back(what + " " + std::to_string(before) + " -> " + std::to_string(after));
}

void add_body(
    std::vector<std::string>& changes,
    const Rulebook& rulebook,
    const Combatant& before,
    const Combatant& after,
    const std::string& given
) {
    for (const auto& [kind, speed] : before.statistics.speeds_ft) {
        add_changed(
            changes,
            kind == "land" ? "speed" : kind + " speed",
            effective_speed_ft(rulebook, before, kind),
            effective_speed_ft(rulebook, after, kind)
        );
    }
    add_changed(
        changes, "HP max", effective_hp_max(rulebook, before), effective_hp_max(rulebook, after)
    );
    add_changed(changes, "HP", before.hp, after.hp);
    add_changed(
        changes,
        "actions",
        actions_at_turn_start(rulebook, before),
        actions_at_turn_start(rulebook, after)
    );
    if (can_react(rulebook, before) && !can_react(rulebook, after))
        changes.emplace_back("no reactions");
    const rules::RollMode attacks = attacks_against(rulebook, after).mode;
    if (attacks != attacks_against(rulebook, before).mode)
        changes.push_back("attacks on it " + mode_text(attacks));
    for (const HoldingCondition& holding : holding_conditions(rulebook, after)) {
        const bool is_given_itself = holding.rule->key == given;
        if (!is_given_itself && !has_condition(rulebook, before, holding.rule->key))
            changes.push_back("is " + holding.rule->name);
    }
    if (after.is_dead && !before.is_dead) changes.emplace_back("dies");
}

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t at = 0; at < names.size(); ++at) {
        if (at > 0) text += at + 1 == names.size() ? " and " : ", ";
        text += names[at];
    }
    return text;
}

} // namespace

ConditionPreview preview_condition(
    const Encounter& encounter, const Rulebook& rulebook, Id combatant, const ConditionGift& gift
) {
    ConditionPreview preview;
    const Combatant* before = find_combatant(encounter, combatant);
    if (before == nullptr) {
        preview.refusal = "is gone";
        return preview;
    }
    Encounter tried = encounter;
    if (!add_condition(tried, rulebook, combatant, made_for(gift, combatant))) {
        preview.refusal = why_refused(*before);
        return preview;
    }
    const Combatant& after = *find_combatant(tried, combatant);
    const std::vector<SheetNumber> old_numbers = sheet_numbers(rulebook, *before);
    const std::vector<SheetNumber> new_numbers = sheet_numbers(rulebook, after);
    const auto add = [&](SheetPart part, const char* all_of_them) {
        add_part(preview.changes, old_numbers, new_numbers, part, all_of_them);
    };
    add(SheetPart::armor_class, "");
    add(SheetPart::save, "every save");
    add(SheetPart::perception, "");
    add(SheetPart::attack, "every attack");
    add(SheetPart::difficulty_class, "");
    add(SheetPart::skill, "every skill");
    add_body(preview.changes, rulebook, *before, after, gift.condition.key);
    return preview;
}

std::string give_condition(
    Encounter& encounter,
    const Rulebook& rulebook,
    const std::vector<Id>& targets,
    const ConditionGift& gift
) {
    std::vector<std::string> given;
    std::vector<std::string> refused;
    for (const Id target : targets) {
        const Combatant* combatant = find_combatant(encounter, target);
        if (combatant == nullptr) continue;
        const std::string name = combatant->name;
        const std::string refusal = name + " " + why_refused(*combatant);
        if (add_condition(encounter, rulebook, target, made_for(gift, target)))
            given.push_back(name);
        else
            refused.push_back(refusal);
    }
    std::string line = "Give " + condition_text(rulebook, gift.condition);
    line += " to " + (given.empty() ? std::string("nobody") : joined(given));
    return refused.empty() ? line : line + "; " + joined(refused);
}

} // namespace game
