// A ready creature as its card reads: one line a subject, in the order of a sheet.
#pragma once

#include "game/library_creature.h"
#include "rules/rulebook.h"

#include <string>
#include <vector>

namespace game {

struct CardLine {
    std::string title; // "Speed"
    std::string text;  // "walk 10 ft, swim 40 ft"

    bool operator==(const CardLine&) const = default;
};

// "large aberration, CR 10, 5900 XP"
std::string card_subtitle(const LibraryCreature& creature);

// AC and HP, speeds, abilities, saves, skills, what it resists, senses, attacks and a turn of them,
// effects with saves, magic, notes. Subjects that it has nothing of are left out.
std::vector<CardLine> card_lines(const rules::Rulebook& rulebook, const LibraryCreature& creature);

} // namespace game
