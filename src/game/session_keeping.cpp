#include "game/session_keeping.h"

#include "game/fights.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace game {

namespace {

// The words by which the history tells of something worth a line. They stand in the labels that
// fights.cpp, dying.cpp, experience.cpp and the Treasure Ledger write; a test holds them to it.
struct Notable {
    std::string_view word;
    bool is_at_start = false;
    NoteKind kind = NoteKind::deed;
};

constexpr std::array notables{
    Notable{"Begin the fight", true, NoteKind::note},
    Notable{"End the fight", true, NoteKind::deed},
    Notable{"Award ", true, NoteKind::deed},
    Notable{"Found ", true, NoteKind::loot},
    Notable{"is defeated", false, NoteKind::deed},
    Notable{" dies", false, NoteKind::note},
    Notable{"falls unconscious", false, NoteKind::note},
    Notable{"is dying", false, NoteKind::note},
};

const Notable* notable_in(std::string_view label) {
    for (const Notable& each : notables) {
        const std::size_t at = label.find(each.word);
        if (at == std::string_view::npos || (each.is_at_start && at != 0)) continue;
        return &each;
    }
    return nullptr;
}

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

NoteLine* find_line(Sessions& sessions, Id session, Id line) {
    Session* found = find_session(sessions, session);
    if (found == nullptr) return nullptr;
    for (NoteLine& each : found->lines)
        if (each.id == line) return &each;
    return nullptr;
}

bool is_offer_done(const Session& session, std::uint64_t revision) {
    const auto& done = session.offers_done;
    return std::find(done.begin(), done.end(), static_cast<Id>(revision)) != done.end();
}

// What is not finished goes on in the next session, under ids of its own.
template <class Item>
void carry_over(const std::vector<Item>& from, std::vector<Item>& to, Sessions& sessions) {
    for (const Item& item : from) {
        if (item.is_done) continue;
        to.push_back(item);
        to.back().id = sessions.next_id++;
    }
}

} // namespace

const Session* find_session(const Sessions& sessions, Id id) {
    for (const Session& session : sessions.sessions)
        if (session.id == id) return &session;
    return nullptr;
}

Session* find_session(Sessions& sessions, Id id) {
    return const_cast<Session*>( // NOLINT(cppcoreguidelines-pro-type-const-cast): it is ours
        find_session(std::as_const(sessions), id)
    );
}

const Session* current_session(const Sessions& sessions) {
    if (const Session* current = find_session(sessions, sessions.current)) return current;
    return sessions.sessions.empty() ? nullptr : &sessions.sessions.back();
}

const Session* session_before(const Sessions& sessions, Id id) {
    const Session* later = find_session(sessions, id);
    if (later == nullptr) return nullptr;
    const Session* before = nullptr;
    for (const Session& session : sessions.sessions) {
        const bool is_nearer = before == nullptr || session.number >= before->number;
        if (session.number < later->number && is_nearer) before = &session;
    }
    return before;
}

Id begin_session(Campaign& campaign, const std::string& played_on) {
    Sessions& sessions = campaign.sessions;
    Session session;
    session.id = sessions.next_id++;
    session.played_on = played_on;
    if (!campaign.history.lines.empty()) session.begun_at = campaign.history.lines.back().revision;
    for (const Character& character : campaign.party.characters)
        if (character.is_present) session.present.push_back(character.id);
    if (!sessions.sessions.empty()) {
        const Session& newest = sessions.sessions.back();
        session.number = newest.number + 1;
        carry_over(newest.goals, session.goals, sessions);
        carry_over(newest.scenes, session.scenes, sessions);
    }
    sessions.current = session.id;
    sessions.sessions.push_back(std::move(session));
    return sessions.current;
}

void remove_session(Sessions& sessions, Id session) {
    std::erase_if(sessions.sessions, [session](const Session& each) { return each.id == session; });
    if (sessions.current == session)
        sessions.current = sessions.sessions.empty() ? base::no_id : sessions.sessions.back().id;
}

Id write_note(
    Campaign& campaign,
    Id session,
    NoteKind kind,
    const std::string& text,
    const std::string& written_at
) {
    Session* found = find_session(campaign.sessions, session);
    if (found == nullptr || trimmed(text).empty()) return base::no_id;
    const Clock time = now(campaign);
    NoteLine line;
    line.id = campaign.sessions.next_id++;
    line.kind = kind;
    line.text = trimmed(text);
    line.written_at = written_at;
    line.day = time.day;
    line.second_of_day = time.second_of_day;
    if (campaign.encounter.phase == Phase::running) line.round = campaign.encounter.round;
    found->lines.push_back(std::move(line));
    return found->lines.back().id;
}

void change_note(Sessions& sessions, Id session, Id line, const std::string& text) {
    NoteLine* found = find_line(sessions, session, line);
    if (found != nullptr && !trimmed(text).empty()) found->text = trimmed(text);
}

void change_note_kind(Sessions& sessions, Id session, Id line, NoteKind kind) {
    if (NoteLine* found = find_line(sessions, session, line)) found->kind = kind;
}

void remove_note(Sessions& sessions, Id session, Id line) {
    Session* found = find_session(sessions, session);
    if (found == nullptr) return;
    std::erase_if(found->lines, [line](const NoteLine& each) { return each.id == line; });
}

TypedNote typed_note(std::string_view typed) {
    constexpr std::array<std::pair<char, NoteKind>, 4> signs{
        std::pair{'!', NoteKind::deed},
        std::pair{'*', NoteKind::discovery},
        std::pair{'$', NoteKind::loot},
        std::pair{'?', NoteKind::next}};
    const std::string_view text = trimmed(typed);
    for (const auto& [sign, kind] : signs)
        if (!text.empty() && text.front() == sign)
            return {kind, std::string(trimmed(text.substr(1)))};
    return {NoteKind::note, std::string(text)};
}

const char* note_kind_word(NoteKind kind) {
    switch (kind) {
    case NoteKind::note: return "note";
    case NoteKind::deed: return "deed";
    case NoteKind::discovery: return "discovery";
    case NoteKind::loot: return "loot";
    case NoteKind::next: return "to come back to";
    }
    return "";
}

const char* note_kind_sign(NoteKind kind) {
    switch (kind) {
    case NoteKind::note: return "";
    case NoteKind::deed: return "!";
    case NoteKind::discovery: return "*";
    case NoteKind::loot: return "$";
    case NoteKind::next: return "?";
    }
    return "";
}

std::vector<NoteOffer>
note_offers(const Campaign& campaign, const Session& session, std::size_t most) {
    constexpr std::string_view undid = "Undid: "; // as the document writes it
    constexpr std::string_view redid = "Redid: ";
    std::vector<NoteOffer> offers;
    std::map<std::string_view, int> undone; // labels that were taken back later
    const std::vector<HistoryLine>& lines = campaign.history.lines;
    for (auto line = lines.rbegin(); line != lines.rend() && offers.size() < most; ++line) {
        if (line->revision <= session.begun_at) break;
        std::string_view label = line->label;
        if (label.substr(0, undid.size()) == undid) {
            undone[label.substr(undid.size())] += 1;
            continue;
        }
        if (label.substr(0, redid.size()) == redid) label.remove_prefix(redid.size());
        if (undone[label] > 0) {
            undone[label] -= 1;
            continue;
        }
        const Notable* notable = notable_in(label);
        if (notable == nullptr || is_offer_done(session, line->revision)) continue;
        offers.push_back({line->revision, notable->kind, std::string(label)});
    }
    return offers;
}

void take_offer(
    Campaign& campaign, Id session, const NoteOffer& offer, const std::string& written_at
) {
    if (write_note(campaign, session, offer.kind, offer.text, written_at) != base::no_id)
        put_offer_aside(campaign.sessions, session, offer);
}

void put_offer_aside(Sessions& sessions, Id session, const NoteOffer& offer) {
    if (Session* found = find_session(sessions, session))
        found->offers_done.push_back(static_cast<Id>(offer.revision));
}

std::string session_title(const Session& session) {
    const std::string number = "Session " + std::to_string(session.number);
    return session.title.empty() ? number : number + ": " + session.title;
}

} // namespace game
