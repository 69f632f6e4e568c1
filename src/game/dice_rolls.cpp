#include "game/dice_rolls.h"

#include "game/fights.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace game {

DiceRoll rolled_dice(const rules::DiceExpression& expression, rules::Dice& dice, bool is_secret) {
    DiceRoll roll;
    roll.expression = rules::to_text(expression);
    roll.is_secret = is_secret;
    const auto add = [&roll](int number) {
        if (roll.faces.empty())
            roll.faces = std::to_string(number);
        else
            roll.faces += (number < 0 ? " - " : " + ") + std::to_string(std::abs(number));
        roll.total += number;
    };
    for (const rules::DiceTerm& term : expression.terms)
        for (int die = 0; die < std::abs(term.count); ++die)
            add(term.count < 0 ? -dice.roll(term.sides) : dice.roll(term.sides));
    if (expression.constant != 0 || roll.faces.empty()) add(expression.constant);
    return roll;
}

std::string dice_roll_label(const DiceRoll& roll) {
    if (roll.is_secret) return "Roll dice in secret";
    return "Roll " + roll.expression + ": " + std::to_string(roll.total);
}

std::string keep_dice_roll(Campaign& campaign, DiceRoll roll) {
    TableRolls& kept = campaign.table_rolls;
    const Clock time = now(campaign);
    roll.id = kept.next_id++;
    roll.day = time.day;
    roll.second_of_day = time.second_of_day;
    std::erase(kept.recent_dice, roll.expression);
    kept.recent_dice.insert(kept.recent_dice.begin(), roll.expression);
    if (kept.recent_dice.size() > TableRolls::recent_kept)
        kept.recent_dice.resize(TableRolls::recent_kept);
    std::string label = dice_roll_label(roll);
    if (kept.dice_rolls.size() < dice_rolls_kept) {
        kept.dice_rolls.push_back(std::move(roll));
        return label;
    }
    const auto by_id = [](const DiceRoll& one, const DiceRoll& other) { return one.id < other.id; };
    *std::min_element(kept.dice_rolls.begin(), kept.dice_rolls.end(), by_id) = std::move(roll);
    return label;
}

bool is_pinned_dice(const TableRolls& rolls, const std::string& expression) {
    return std::find(rolls.pinned_dice.begin(), rolls.pinned_dice.end(), expression) !=
           rolls.pinned_dice.end();
}

void toggle_pinned_dice(TableRolls& rolls, const std::string& expression) {
    if (std::erase(rolls.pinned_dice, expression) > 0) return;
    rolls.pinned_dice.push_back(expression);
    if (rolls.pinned_dice.size() > TableRolls::pinned_kept)
        rolls.pinned_dice.erase(rolls.pinned_dice.begin());
}

std::vector<const DiceRoll*> newest_dice_rolls(const TableRolls& rolls, std::size_t count) {
    std::vector<const DiceRoll*> newest;
    newest.reserve(rolls.dice_rolls.size());
    for (const DiceRoll& roll : rolls.dice_rolls)
        newest.push_back(&roll);
    std::sort(newest.begin(), newest.end(), [](const DiceRoll* one, const DiceRoll* other) {
        return one->id > other->id;
    });
    newest.resize(std::min(newest.size(), count));
    return newest;
}

} // namespace game
