// Damage, healing and what happens at 0 HP, for both rule families.
#pragma once

#include "game/encounter.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

struct Damage {
    int amount = 0;       // as rolled, 0 or more
    std::string type;     // damage type key; empty: no type, nothing resists it
    bool is_half = false; // saved against an area effect: halved (rounded down) before resistances
    bool is_doubled = false;   // critically failed basic save
    bool is_critical = false;  // a critical hit: dying 2, two failed death saves
    bool is_nonlethal = false; // four-degree: unconscious at 0, not dying. srd5: knocked out
};

// What damage would really do, for the number pad: "7 fire, resists 5: loses 2".
struct DamagePreview {
    int taken = 0;     // after half/double, immunity, weakness, resistance
    int from_temp = 0; // part that temporary HP absorb
    int hp_after = 0;
    bool drops = false; // reaches 0
    std::string text;   // one line

    bool operator==(const DamagePreview&) const = default;
};

DamagePreview
preview_damage(const rules::Rulebook& rulebook, const Combatant& combatant, const Damage& damage);

// Applies damage: order is half/double, immunity, weakness, resistance (four-degree); or resistance
// then vulnerability (srd5). Temporary HP go first. At 0: opponents that die at zero are defeated;
// four-degree PCs gain dying (plus wounded) and move to just before the current turn; srd5 PCs fall
// unconscious with death saves; massive damage kills. Damage at 0 HP raises dying or adds failed
// saves. Damage to a concentrating srd5 creature adds a concentration prompt. Returns what happened
// in one line
// ("Reed Lurker 2 loses 7, is defeated").
std::string
hurt(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, const Damage& damage);

// Restores HP up to the effective maximum; brings back the dying (wounded +1) and the unconscious
// at 0. A dead one stays dead. Returns one line.
std::string heal(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, int amount);

// Temporary HP do not add up: the higher stays. Returns one line.
std::string give_temp_hp(Encounter& encounter, Id combatant, int amount);

// Sets HP by hand, 0..effective maximum, without any rule attached.
void set_hp(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, int hp);

// Moves it below the list / brings it back into the order where its initiative stands.
void set_defeated(
    Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, bool is_defeated
);

// Stops dying at 0 HP (first aid; four-degree: loses dying, gains wounded; srd5: stable).
void stabilize(Encounter& encounter, const rules::Rulebook& rulebook, Id combatant);

// The DC of the concentration save that this damage asks for (srd5).
// Source: SRD 5.1, Spellcasting / Duration; SRD 5.2.1 caps it at 30.
int concentration_dc(const rules::Rulebook& rulebook, int damage_taken);

} // namespace game
