// What becomes of a session: begun, written in, carried over to the next.
#pragma once

#include "game/campaign.h"

#include <string>
#include <string_view>
#include <vector>

namespace game {

const Session* find_session(const Sessions& sessions, Id id);
Session* find_session(Sessions& sessions, Id id);

// The session being played or prepared; the newest where none is named, nullptr without any.
const Session* current_session(const Sessions& sessions);

// The one before the session with this id, by number; nullptr for the first.
const Session* session_before(const Sessions& sessions, Id id);

// A new session with the next number, which becomes the current one: who plays tonight is present,
// unfinished goals, open questions and scenes of the newest session are carried over. `played_on`
// is the real date. Section sessions. Returns its id.
Id begin_session(Campaign& campaign, const std::string& played_on);

void remove_session(Sessions& sessions, Id session);

// Writes a line into the session, with the in-world time and the round of now. `written_at` is UTC.
// Blank lines are not written. Section sessions. Returns the id of the line, no_id if none was.
Id write_note(
    Campaign& campaign,
    Id session,
    NoteKind kind,
    const std::string& text,
    const std::string& written_at
);

void change_note(Sessions& sessions, Id session, Id line, const std::string& text);
void change_note_kind(Sessions& sessions, Id session, Id line, NoteKind kind);
void remove_note(Sessions& sessions, Id session, Id line);

// The kind that a line begins with: "!" deed, "?" next, "*" discovery, "$" loot; its sign is taken
// off. Anything else is a note.
struct TypedNote {
    NoteKind kind = NoteKind::note;
    std::string text;

    bool operator==(const TypedNote&) const = default;
};

TypedNote typed_note(std::string_view typed);

// "a deed", "a discovery", as a button says it; one letter that marks it in a list.
const char* note_kind_word(NoteKind kind);
const char* note_kind_sign(NoteKind kind);

// Something that the history tells and that may be worth a line: a fight begun or ended, somebody
// fallen or defeated, XP, loot.
struct NoteOffer {
    std::uint64_t revision = 0; // of the line of the history
    NoteKind kind = NoteKind::deed;
    std::string text;

    bool operator==(const NoteOffer&) const = default;
};

// What happened since the session began and is neither taken over nor put aside, newest first, at
// most `most`.
std::vector<NoteOffer>
note_offers(const Campaign& campaign, const Session& session, std::size_t most);

// Takes the offer as a line, or puts it aside. Section sessions.
void take_offer(
    Campaign& campaign, Id session, const NoteOffer& offer, const std::string& written_at
);
void put_offer_aside(Sessions& sessions, Id session, const NoteOffer& offer);

// "Session 7: The drowned bell"; "Session 7".
std::string session_title(const Session& session);

} // namespace game
