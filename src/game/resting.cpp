// Nights and rests. Sources: Player Core (ORC), Rest and Daily Preparations; SRD 5.1, Adventuring /
// Resting; SRD 5.2.1, Rules Glossary / Short Rest, Long Rest.
#include "game/resting.h"

#include "game/conditions.h"
#include "game/effects.h"
#include "game/hurt.h"
#include "game/recovery_words.h"
#include "game/reminding.h"
#include "game/resting_parts.h"
#include "game/roster.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <set>
#include <utility>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using rules::Rulebook;

constexpr int seconds_a_day = 24 * seconds_an_hour;

bool is_srd(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5;
}

int dice_total(const Character& character) {
    return std::accumulate(
        character.hit_dice.begin(),
        character.hit_dice.end(),
        0,
        [](int sum, const HitDice& dice) { return sum + dice.total; }
    );
}

int dice_spent(const Character& character) {
    return std::accumulate(
        character.hit_dice.begin(),
        character.hit_dice.end(),
        0,
        [](int sum, const HitDice& dice) { return sum + dice.spent; }
    );
}

void spend_dice(Character& character, int sides, int count) {
    for (HitDice& dice : character.hit_dice) {
        if (dice.sides != sides) continue;
        const int taken = std::min(dice.total - dice.spent, count);
        dice.spent += taken;
        count -= taken;
    }
}

// The largest come back first (our reading: the documents leave the choice to the player).
void regain_dice(Character& character, int regained) {
    std::vector<HitDice*> largest_first;
    for (HitDice& dice : character.hit_dice)
        largest_first.push_back(&dice);
    std::stable_sort(
        largest_first.begin(),
        largest_first.end(),
        [](const HitDice* one, const HitDice* two) { return one->sides > two->sides; }
    );
    for (HitDice* dice : largest_first) {
        const int back = std::min(dice->spent, regained);
        dice->spent -= back;
        regained -= back;
    }
}

// four-degree: what the night gives, the maximum not considered.
int night_hp(const Rulebook& rulebook, const Character& character, rules::NightRest kind) {
    return rules::night_rest_hp(
        rulebook, constitution_of(character), character.statistics.level, kind
    );
}

RestOutlook outlook_of(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const Character& character,
    rules::NightRest kind
) {
    RestOutlook outlook;
    outlook.character = character.id;
    outlook.name = character.name;
    outlook.hit_dice_total = dice_total(character);
    outlook.hit_dice_left = outlook.hit_dice_total - dice_spent(character);
    const Combatant* combatant = find_party_combatant(campaign.encounter, character.id);
    if (combatant == nullptr) {
        outlook.why_not = "not in the party";
        return outlook;
    }
    outlook.hp = combatant->hp;
    outlook.hp_max = effective_hp_max(rulebook, *combatant);
    if (combatant->is_dead) {
        outlook.why_not = "dead";
    } else if (is_srd(rulebook) && combatant->hp < 1) {
        // SRD 5.1 and 5.2.1, long rest: at least 1 HP at its start.
        outlook.why_not = "at 0 HP: a long rest does nothing";
    } else if (is_srd(rulebook)) {
        outlook.hp_gained = std::max(outlook.hp_max - outlook.hp, 0);
        outlook.hit_dice_regained =
            rules::long_rest_hit_dice(rulebook, outlook.hit_dice_total, dice_spent(character));
    } else {
        outlook.hp_gained =
            std::clamp(outlook.hp_max - outlook.hp, 0, night_hp(rulebook, character, kind));
    }
    return outlook;
}

// "Ysolde Marr +10 HP, 2 hit dice".
std::string rested_text(const RestOutlook& outlook, int hp_gained) {
    std::string text = outlook.name + " +" + std::to_string(hp_gained) + " HP";
    if (outlook.hit_dice_regained > 0) text += ", " + hit_dice_text(outlook.hit_dice_regained);
    return text;
}

std::string rest_one(
    Campaign& campaign, const Rulebook& rulebook, const RestOutlook& outlook, rules::NightRest kind
) {
    if (!outlook.why_not.empty()) return outlook.name + " gains nothing (" + outlook.why_not + ")";
    const Id id = resting_combatant(campaign, outlook.character)->id;
    const int before = outlook.hp;
    Character& character = *find_character(campaign.party, outlook.character);
    rest_conditions(campaign.encounter, rulebook, id);
    // A condition that eases raises the maximum, and the night's HP count up to that.
    const Combatant& eased = *find_combatant(std::as_const(campaign.encounter), id);
    const int gained = is_srd(rulebook) ? effective_hp_max(rulebook, eased) - before
                                        : night_hp(rulebook, character, kind);
    heal(campaign.encounter, rulebook, id, gained);
    Combatant& rested = *find_combatant(campaign.encounter, id);
    rested.death_saves = {};
    refresh_reminders(rested, RefreshedBy::rest);
    regain_dice(character, outlook.hit_dice_regained);
    return rested_text(outlook, rested.hp - before);
}

// Checks what one character wants to spend of one size.
base::Result<base::Nothing> check_spent(const Campaign& campaign, const HitDiceSpent& spent) {
    const Character* character = find_character(campaign.party, spent.character);
    if (character == nullptr) return cannot("Somebody who rests is not in the party.");
    if (spent.count == 0) return base::Nothing{};
    const std::string sides = "d" + std::to_string(spent.sides);
    const int left = hit_dice_left(*character, spent.sides);
    if (spent.count < 0 || spent.count > left)
        return cannot(character->name + " has " + std::to_string(left) + sides + " left.");
    const Combatant* combatant = find_party_combatant(campaign.encounter, spent.character);
    if (combatant == nullptr || combatant->is_dead || combatant->hp < 1)
        return cannot(character->name + " is at 0 HP and cannot spend hit dice.");
    const int highest = spent.count * spent.sides;
    if (spent.rolled && (*spent.rolled < spent.count || *spent.rolled > highest))
        return Error{
            ErrorKind::out_of_range,
            character->name + ": " + std::to_string(spent.count) + sides + " gives " +
                std::to_string(spent.count) + " to " + std::to_string(highest) + "."};
    return base::Nothing{};
}

// HP of dice that were rolled one by one, each with Constitution and no less than the rulebook's
// least. A total typed from the table counts with Constitution for each die (the least of a single
// die cannot be told from it).
int hp_from_dice(
    const Rulebook& rulebook, const HitDiceSpent& spent, int constitution, rules::Dice& dice
) {
    const int least = rulebook.recovery.rests.hp_per_die_min;
    if (spent.rolled)
        return std::max(*spent.rolled + spent.count * constitution, spent.count * least);
    int hp = 0;
    for (int die = 0; die < spent.count; ++die)
        hp += std::max(dice.roll(spent.sides) + constitution, least);
    return hp;
}

} // namespace

Combatant* resting_combatant(Campaign& campaign, Id character) {
    for (Combatant& combatant : campaign.encounter.combatants)
        if (combatant.character == character) return &combatant;
    return nullptr;
}

Error cannot(std::string why) {
    return {ErrorKind::not_possible, std::move(why)};
}

std::string joined_lines(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines)
        if (!line.empty()) text += (text.empty() ? "" : "; ") + line;
    return text;
}

std::string why_no_rest(const Campaign& campaign) {
    return campaign.encounter.phase == Phase::no_fight ? std::string()
                                                       : std::string("Not while a fight is on.");
}

std::string let_time_pass(Campaign& campaign, const Rulebook& rulebook, std::int64_t seconds) {
    constexpr std::int64_t longest_timer = std::numeric_limits<int>::max();
    seconds = std::max<std::int64_t>(seconds, 0);
    const std::int64_t second = campaign.clock.second_of_day + seconds;
    const Clock before = campaign.clock;
    campaign.clock.day += second / seconds_a_day;
    campaign.clock.second_of_day = static_cast<int>(second % seconds_a_day);
    refresh_at_dawn(campaign, before, campaign.clock);
    std::vector<std::string> lines;
    const int run_down = static_cast<int>(std::min(seconds, longest_timer));
    for (const Notice& notice : pass_time(campaign.encounter, rulebook, run_down)) {
        const Combatant* combatant =
            find_combatant(std::as_const(campaign.encounter), notice.combatant);
        lines.push_back(
            (combatant == nullptr ? std::string() : combatant->name + ": ") + notice.text
        );
    }
    return joined_lines(lines);
}

HitDice usual_hit_dice(const Character& character, int sides) {
    HitDice dice;
    dice.sides = sides;
    if (character.hit_dice.empty())
        dice.total = std::clamp(character.statistics.level, 1, int{Limits::hit_dice_max});
    return dice;
}

int hit_dice_left(const Character& character, int sides) {
    int left = 0;
    for (const HitDice& dice : character.hit_dice)
        if (dice.sides == sides) left += dice.total - dice.spent;
    return left;
}

int constitution_of(const Character& character) {
    const auto found = character.statistics.abilities.find("con");
    return found == character.statistics.abilities.end() ? 0 : found->second;
}

std::vector<RestOutlook> night_outlooks(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const std::vector<Id>& characters,
    rules::NightRest kind
) {
    std::vector<RestOutlook> outlooks;
    for (const Id id : characters) {
        const Character* character = find_character(campaign.party, id);
        if (character != nullptr)
            outlooks.push_back(outlook_of(campaign, rulebook, *character, kind));
    }
    return outlooks;
}

base::Result<std::string> rest_night(
    Campaign& campaign,
    const Rulebook& rulebook,
    const std::vector<Id>& characters,
    rules::NightRest kind
) {
    const std::string why_not = why_no_rest(campaign);
    if (!why_not.empty()) return cannot(why_not);
    const std::vector<RestOutlook> outlooks =
        night_outlooks(std::as_const(campaign), rulebook, characters, kind);
    if (outlooks.empty()) return cannot("Nobody is chosen.");
    int hours =
        is_srd(rulebook) ? rulebook.recovery.rests.long_hours : rulebook.recovery.night_rest.hours;
    constexpr int hours_a_day = 24;
    if (!is_srd(rulebook) && kind == rules::NightRest::full_day) hours = hours_a_day;
    std::vector<std::string> lines;
    lines.reserve(outlooks.size() + 1);
    for (const RestOutlook& outlook : outlooks)
        lines.push_back(rest_one(campaign, rulebook, outlook, kind));
    const std::string ended =
        let_time_pass(campaign, rulebook, std::int64_t{hours} * seconds_an_hour);
    lines.push_back(ended);
    return std::string(is_srd(rulebook) ? "Long rest: " : "Night's rest: ") + joined_lines(lines);
}

rules::Distribution
hit_dice_outlook(const Campaign& campaign, const Rulebook& rulebook, const HitDiceSpent& spent) {
    const Character* character = find_character(campaign.party, spent.character);
    if (character == nullptr || spent.count < 1) return rules::certain(0);
    return rules::short_rest_hp(
        rulebook, {{spent.count, spent.sides}}, constitution_of(*character)
    );
}

base::Result<std::string> rest_short(
    Campaign& campaign,
    const Rulebook& rulebook,
    const std::vector<HitDiceSpent>& spent,
    rules::Dice& dice
) {
    if (!is_srd(rulebook)) return cannot("This rulebook has no short rest.");
    const std::string why_not = why_no_rest(campaign);
    if (!why_not.empty()) return cannot(why_not);
    int count = 0;
    std::set<std::pair<Id, int>> listed;
    for (const HitDiceSpent& each : spent) {
        const auto checked = check_spent(campaign, each);
        if (!checked.ok()) return checked.error();
        if (!listed.emplace(each.character, each.sides).second)
            return cannot("The same hit dice are listed twice.");
        count += each.count;
    }
    if (count == 0) return cannot("Nobody spends a hit die.");
    std::vector<std::string> lines;
    for (const HitDiceSpent& each : spent) {
        if (each.count == 0) continue;
        Character& character = *find_character(campaign.party, each.character);
        const int hp = hp_from_dice(rulebook, each, constitution_of(character), dice);
        spend_dice(character, each.sides, each.count);
        const Id id = resting_combatant(campaign, each.character)->id;
        const std::string healed = heal(campaign.encounter, rulebook, id, hp);
        lines.push_back(
            (healed.empty() ? character.name + " regains nothing" : healed) + " (" +
            std::to_string(each.count) + "d" + std::to_string(each.sides) + ")"
        );
    }
    refresh_party(campaign.encounter, RefreshedBy::short_rest);
    lines.push_back(let_time_pass(
        campaign, rulebook, std::int64_t{rulebook.recovery.rests.short_hours} * seconds_an_hour
    ));
    return "Short rest: " + joined_lines(lines);
}

} // namespace game
