// The party's numbers side by side: one row a character, one column a number, each as it is now
// with its reasons, and who is best and worst. Conditions count in a fight and, where they last,
// after it.
#pragma once

#include "game/campaign.h"
#include "game/effects.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

enum class FigureKind { armor_class, save, perception, passive_perception, skill, dc, speed };

struct FigureColumn {
    FigureKind kind = FigureKind::armor_class;
    std::string key;   // what it is asked for by: "ac", "fortitude", "class_dc", "land"
    std::string name;  // "Fortitude", "class DC", "fly speed"
    std::string brief; // "Fort"; fits over a column

    bool operator==(const FigureColumn&) const = default;
};

struct PartyFigure {
    bool is_there = true;    // a character may have no spell DC and no wings
    bool is_on_sheet = true; // false: not written there, so the plain ability is what it rolls
    EffectiveNumber number;
    bool is_best = false; // of those that are there; neither is marked where all are equal
    bool is_worst = false;

    bool operator==(const PartyFigure&) const = default;
};

struct PartyRow {
    Id character = base::no_id;
    Id combatant = base::no_id;
    std::string name;
    bool is_present = true;
    std::vector<PartyFigure> figures; // as the columns
    std::string senses;

    bool operator==(const PartyRow&) const = default;
};

struct PartyFigures {
    std::vector<FigureColumn> columns;
    std::vector<PartyRow> rows; // in the order of the party

    bool operator==(const PartyFigures&) const = default;
};

// Columns: AC, every save, perception and what stands against being noticed; the skills, DCs and
// speeds that anybody shown has.
PartyFigures
party_figures(const Campaign& campaign, const rules::Rulebook& rulebook, bool with_absent);

// Can the whole party roll this column? Not AC, DCs and speeds.
bool is_rolled(FigureKind kind);

// The DC to go unnoticed by it: 10 + perception; srd5 counts 5 for advantage and disadvantage.
// Sources: SRD 5.1, Using Ability Scores, Passive Checks; Player Core (ORC), Checks, DCs of
// statistics (10 + modifier).
EffectiveNumber passive_perception(const rules::Rulebook& rulebook, const Combatant& combatant);

// A check that everybody in the party can make.
struct RollableStat {
    std::string key;
    std::string name; // "Perception", "Dexterity save", "Dexterity check"

    bool operator==(const RollableStat&) const = default;
};

// Perception, saves, all skills of the rulebook, what only the sheets know (lores, tools), and in
// srd5 plain ability checks.
std::vector<RollableStat> rollable_stats(const Party& party, const rules::Rulebook& rulebook);

// Its name as above; a lore or tool by its key in plain words.
std::string rollable_name(const rules::Rulebook& rulebook, std::string_view key);

// The character's combatant; for a character that is not linked yet, one made of its sheet.
Combatant combatant_of(const Campaign& campaign, const Character& character);

} // namespace game
