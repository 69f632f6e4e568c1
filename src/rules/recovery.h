// Hit points that come back outside of a fight: treated wounds, first aid, rests. Sources: Player
// Core (ORC), Treat Wounds, Administer First Aid, Rest and Daily Preparations; SRD 5.1, Adventuring
// / Resting; SRD 5.2.1, Rules Glossary / Short Rest, Long Rest.
#pragma once

#include "base/result.h"
#include "rules/distribution.h"
#include "rules/odds.h"
#include "rules/rulebook.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace rules {

// What one treatment at the DC of one proficiency rank may lead to.
struct TreatWoundsOutlook {
    std::string rank; // "expert"
    std::string name;
    int dc = 0;
    int minutes = 0;
    DegreeOdds odds;
    Distribution change;    // of HP; below 0: harmed by a critical failure
    double hp_restored = 0; // expected HP, of all cases
    double hp_lost = 0;     // expected HP, of all cases

    bool operator==(const TreatWoundsOutlook&) const = default;
};

// The outlook at the DC of a rank ("trained" to "legendary"), with this Medicine modifier. A full
// hour multiplies what is restored, not the harm. Patients at full HP are not considered. Errors:
// not_found (no such rank), not_possible in srd5.
base::Result<TreatWoundsOutlook> treat_wounds_outlook(
    const Rulebook& rulebook, std::string_view rank, int modifier, bool takes_full_hour = false
);

// The outlooks at every DC that somebody of this rank may choose: the own one and those below,
// lowest first. Errors as above.
base::Result<std::vector<TreatWoundsOutlook>> treat_wounds_choices(
    const Rulebook& rulebook, std::string_view rank, int modifier, bool takes_full_hour = false
);

// HP that the treatment leads to on average, harm taken off.
double net_hp(const TreatWoundsOutlook& outlook);

// The place of the choice with the highest net_hp, the first of equal ones. At least one choice.
std::size_t best_choice(const std::vector<TreatWoundsOutlook>& choices);

// four-degree: the DC to stabilise somebody at this dying value (from 1) by first aid.
int stabilize_dc(const Rulebook& rulebook, int dying);

// How somebody spends a night (four-degree).
enum class NightRest {
    usual,    // the night's sleep
    full_day, // a whole day and night in bed; from memory
    rough,    // without shelter or comfort, rounded down; from memory
};

// four-degree: HP that a night gives back. Levels below 1 count as 1.
int night_rest_hp(
    const Rulebook& rulebook, int con_modifier, int level, NightRest kind = NightRest::usual
);

// srd5: HP from hit dice spent in a short rest, the maximum not considered. Each die adds the
// Constitution modifier; a die restores at least 1 in SRD 5.2.1, and in SRD 5.1, which names no
// least, never less than 0 (our reading). `dice` holds counts from 0 and sides from 1, 100 dice at
// most in all.
Distribution
short_rest_hp(const Rulebook& rulebook, const std::vector<DiceTerm>& dice, int con_modifier);

// srd5: hit dice that a long rest gives back to somebody who has `total` and spent `spent` of them
// (0..total): half the total, at least 1, in SRD 5.1; all in SRD 5.2.1. Hit points return in full.
int long_rest_hit_dice(const Rulebook& rulebook, int total, int spent);

} // namespace rules
