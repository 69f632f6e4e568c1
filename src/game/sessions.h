// Sessions: the plan and the running notes of each evening, and the page the players get of it.
#pragma once

#include "base/id.h"
#include "base/unknown_fields.h"

#include <cstdint>
#include <string>
#include <vector>

namespace game {

using base::Id;

// What a line of the notes is about.
enum class NoteKind {
    note,      // whatever the GM wrote
    deed,      // something the party did
    discovery, // something it learned
    loot,      // something it gained
    next,      // something to come back to
};

struct NoteLine {
    Id id = base::no_id;
    NoteKind kind = NoteKind::note;
    std::string text;
    std::string written_at; // UTC, "2026-01-31T19:04:05Z"
    std::int64_t day = 0;   // in-world, running day of the campaign
    int second_of_day = 0;  // 0..86399
    int round = 0;          // of the fight; 0 outside one
    base::UnknownFields unknown{};

    bool operator==(const NoteLine&) const = default;
};

// Something planned that is checked off: a scene, a goal, loot.
struct PlanItem {
    Id id = base::no_id;
    std::string text;
    bool is_done = false;
    base::UnknownFields unknown{};

    bool operator==(const PlanItem&) const = default;
};

// What the party is after, or what nobody at the table knows yet. Carried over until it is done.
struct Goal {
    Id id = base::no_id;
    std::string text;
    bool is_question = false;
    bool is_done = false;
    base::UnknownFields unknown{};

    bool operator==(const Goal&) const = default;
};

// The handout of a session in five parts, one entry a line.
struct RecapPage {
    std::string places;
    std::string deeds;
    std::string people;
    std::string discoveries;
    std::string next;
    base::UnknownFields unknown{};

    bool operator==(const RecapPage&) const = default;
};

struct Session {
    Id id = base::no_id;
    int number = 1;
    std::string title;
    std::string played_on;   // real date, "2026-01-31"; may be empty
    std::string summary;     // what is planned
    std::string must_know;   // what must not be forgotten
    std::vector<Id> present; // characters
    std::vector<PlanItem> scenes;
    std::vector<Goal> goals;
    std::vector<Id> people;     // of the Register
    std::vector<Id> encounters; // of Preparation
    std::vector<PlanItem> loot;
    std::vector<NoteLine> lines; // in the order they were written
    std::uint64_t begun_at = 0;  // revision of the history when it was begun
    std::vector<Id>
        offers_done; // revisions of the history that were taken over as lines, or put aside
    RecapPage recap;
    base::UnknownFields unknown{};

    bool operator==(const Session&) const = default;
};

struct Sessions {
    std::vector<Session> sessions; // oldest first
    Id current = base::no_id;      // the one being played or prepared
    Id next_id = 1;                // for sessions and what stands in them
    base::UnknownFields unknown{};

    bool operator==(const Sessions&) const = default;
};

} // namespace game
