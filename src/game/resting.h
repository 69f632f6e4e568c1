// Hit points that come back between fights: wounds treated, nights, short and long rests, for the
// members of the party, with the in-world time they take. What the rules give is computed in
// rules/recovery.h. Nothing here happens while a fight is on.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "rules/dice.h"
#include "rules/recovery.h"
#include "rules/rulebook.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace game {

// In-world time moves on outside of a fight, and timed conditions run down. Seconds from 0.
// Sections encounter and clock. Returns what ended, "Haste of Orrin Tace ends", in one line.
std::string
let_time_pass(Campaign& campaign, const rules::Rulebook& rulebook, std::int64_t seconds);

// --- four-degree: treating wounds ---

// One patient's check as rolled at the table; what is not there is rolled by the program.
struct PatientRolls {
    Id character = base::no_id;
    std::optional<int> natural; // d20, 1..20
    std::optional<int> hp;      // the dice of healing or harm, as rolled, before a full hour counts
};

struct WoundTreatment {
    std::string rank = "trained"; // whose DC is taken
    int modifier = 0;             // of Medicine
    bool takes_full_hour = false; // one hour on each patient
    std::vector<PatientRolls> patients;
};

// Somebody of the party who knows Medicine, with the modifier as it is now.
struct Healer {
    Id character = base::no_id;
    std::string name;
    int modifier = 0;

    bool operator==(const Healer&) const = default;
};

// Those who play tonight and have Medicine on their sheet, the best first.
std::vector<Healer> healers(const Campaign& campaign, const rules::Rulebook& rulebook);

// Was this character treated less than an hour ago (as counted by the program)?
bool is_treated(const Campaign& campaign, Id character);

// What the dice may show for this degree: HP restored, or harm of a critical failure; 0..0 for a
// failure.
struct RollRange {
    int lowest = 0;
    int highest = 0;
};

RollRange
treatment_range(const rules::Rulebook& rulebook, const std::string& rank, rules::Degree degree);

// Treats the patients one after the other, each with a check of their own. Restored HP end the
// condition that treatment ends (wounded); each patient cannot be treated again for an hour, kept
// as an effect of that name; time passes for each. Critical failures harm like any damage. Sections
// encounter and clock. Returns what happened in one line. Errors, nothing is changed then:
// not_possible (srd5, a fight is on, nobody chosen, somebody was treated already), not_found (no
// such rank), out_of_range (a roll that those dice cannot show).
base::Result<std::string> treat_wounds(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const WoundTreatment& treatment,
    rules::Dice& dice
);

// --- nights and rests ---

// What a rest would do for one character.
struct RestOutlook {
    Id character = base::no_id;
    std::string name;
    int hp = 0;
    int hp_max = 0; // during the rest, drained and the like counted
    int hp_gained = 0;
    int hit_dice_left = 0;     // srd5, before
    int hit_dice_total = 0;    // srd5
    int hit_dice_regained = 0; // srd5, long rest
    std::string why_not;       // gains nothing: "dead", "at 0 HP"; empty otherwise

    bool operator==(const RestOutlook&) const = default;
};

// four-degree: a night of this kind. srd5: a long rest (`kind` is not read).
std::vector<RestOutlook> night_outlooks(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::vector<Id>& characters,
    rules::NightRest kind
);

// The night passes for them: HP, conditions that a rest ends or eases, reminders of a rest; hit
// dice and death saves in srd5. Who is not named only lives through the hours. Sections party,
// encounter and clock. Errors (not_possible): a fight is on, nobody chosen.
base::Result<std::string> rest_night(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::vector<Id>& characters,
    rules::NightRest kind
);

// srd5: hit dice of one character spent in a short rest.
struct HitDiceSpent {
    Id character = base::no_id;
    int sides = 8;
    int count = 0;
    std::optional<int> rolled; // the dice alone, without Constitution; none: rolled by the program
};

// Hit dice of a new size: one for each level; a second size starts at one.
HitDice usual_hit_dice(const Character& character, int sides);

// Hit dice of one size that are left.
int hit_dice_left(const Character& character, int sides);

// The Constitution modifier on the sheet; 0 if none stands there.
int constitution_of(const Character& character);

// HP from these hit dice; the maximum is not considered.
rules::Distribution hit_dice_outlook(
    const Campaign& campaign, const rules::Rulebook& rulebook, const HitDiceSpent& spent
);

// An hour's rest for all who spend something. Sections party, encounter and clock. Errors, nothing
// is changed then: not_possible (four-degree, a fight is on, nobody spends anything, more than are
// left, somebody at 0 HP), out_of_range (a roll that those dice cannot show).
base::Result<std::string> rest_short(
    Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::vector<HitDiceSpent>& spent,
    rules::Dice& dice
);

// Why nobody can rest or be treated now; empty when they can.
std::string why_no_rest(const Campaign& campaign);

} // namespace game
