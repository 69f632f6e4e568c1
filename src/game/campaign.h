// The campaign: everything that is saved, as one plain value. Sections are its members; an edit
// changes one of them (or, for roster changes and the start and end of a fight, several).
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"
#include "game/calendar.h"
#include "game/day_book.h"
#include "game/encounter.h"
#include "game/name_book.h"
#include "game/own_pages.h"
#include "game/places.h"
#include "game/register.h"
#include "game/sessions.h"
#include "game/statistics.h"
#include "game/table_rolls.h"
#include "game/treasury.h"
#include "rules/rulebook.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

struct About {
    std::string title = "New campaign";
    rules::Family rules = rules::Family::four_degree;
    rules::SrdEdition srd_edition = rules::SrdEdition::srd_5_1;
    std::string
        house_rules;  // file laid over the rulebook, relative to the campaign's folder; empty: none
    std::string pace; // of advancement, a key of the rulebook; empty: the usual one
    std::string note;
    base::UnknownFields unknown{};

    bool operator==(const About&) const = default;
};

// srd5: the hit dice of one size that a character has, spent in short rests.
struct HitDice {
    int sides = 8; // 2..100
    int total = 1; // 1..100
    int spent = 0; // 0..total
    base::UnknownFields unknown{};

    bool operator==(const HitDice&) const = default;
};

struct Character {
    Id id = base::no_id;
    std::string name;
    std::string player;
    std::string calling;    // class and ancestry, free text
    bool is_present = true; // plays tonight
    Statistics statistics;
    std::vector<Reminder> reminders;
    std::string notes;
    int experience = 0;            // XP as the sheet says; four-degree: since the last level
    std::vector<HitDice> hit_dice; // srd5; one entry a size
    base::UnknownFields unknown{};

    bool operator==(const Character&) const = default;
};

struct Party {
    std::vector<Character> characters;
    Id next_id = 1; // for characters and reminders
    base::UnknownFields unknown{};

    bool operator==(const Party&) const = default;
};

// A ready creature: the GM's own stat entry.
struct Creature {
    Id id = base::no_id;
    std::string name;
    Statistics statistics;
    std::string notes;
    base::UnknownFields unknown{};

    bool operator==(const Creature&) const = default;
};

struct CreatureShelf {
    std::vector<Creature> creatures;
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const CreatureShelf&) const = default;
};

// So many of one creature in a prepared encounter.
struct PreparedCreatures {
    Id creature = base::no_id; // of CreatureShelf
    int count = 1;
    bool shares_initiative = false;
    bool is_hidden = false;
    base::UnknownFields unknown{};

    bool operator==(const PreparedCreatures&) const = default;
};

// So many hazards of one level in a prepared encounter, for its XP.
struct PreparedHazards {
    std::string name; // may be empty
    int level = 1;
    int count = 1;
    bool is_complex = false;
    base::UnknownFields unknown{};

    bool operator==(const PreparedHazards&) const = default;
};

struct PreparedEncounter {
    Id id = base::no_id;
    std::string name;
    std::vector<PreparedCreatures> creatures;
    std::string note;
    std::vector<PreparedHazards> hazards;
    base::UnknownFields unknown{};

    bool operator==(const PreparedEncounter&) const = default;
};

struct Preparation {
    std::vector<PreparedEncounter> encounters;
    Id next_id = 1;
    base::UnknownFields unknown{};

    bool operator==(const Preparation&) const = default;
};

// In-world time. During a fight Encounter::elapsed_seconds runs on top of it.
struct Clock {
    std::int64_t day = 1;         // running day of the campaign, from 1
    int second_of_day = 8 * 3600; // 0..86399
    base::UnknownFields unknown{};

    bool operator==(const Clock&) const = default;
};

// One line of "what just happened", written by the document with every edit; not part of undo.
struct HistoryLine {
    std::uint64_t revision = 0;
    std::string label;
    int round = 0;        // of the fight; 0 outside one
    std::int64_t day = 0; // in-world, after the change
    int second_of_day = 0;
    std::string written_at; // UTC, "2026-01-31T19:04:05Z"
    base::UnknownFields unknown{};

    bool operator==(const HistoryLine&) const = default;
};

struct History {
    std::vector<HistoryLine> lines; // oldest first; the document keeps the last 5,000
    base::UnknownFields unknown{};

    bool operator==(const History&) const = default;
};

struct Campaign {
    About about;
    Party party;
    CreatureShelf shelf;
    Preparation preparation;
    Encounter encounter;
    Clock clock;
    TableRolls table_rolls;
    Register registered;
    NameBook names;
    Calendar calendar;
    DayBook day_book;
    Places places;
    Sessions sessions;
    Treasury treasury;
    OwnPages own_pages;
    History history;
    base::UnknownFields unknown{};

    bool operator==(const Campaign&) const = default;
};

const Character* find_character(const Party& party, Id id);
Character* find_character(Party& party, Id id);
const Creature* find_creature(const CreatureShelf& shelf, Id id);
Creature* find_creature(CreatureShelf& shelf, Id id);
const PreparedEncounter* find_prepared(const Preparation& preparation, Id id);
PreparedEncounter* find_prepared(Preparation& preparation, Id id);

// Gives every character a combatant (absent if new), removes those of gone characters, and copies
// each character's statistics and name into its combatant. Called after load, undo and every roster
// change.
void link_party(Campaign& campaign);

} // namespace game
