#include "game/mentions.h"

#include "base/unicode.h"
#include "game/registering.h"
#include "game/session_keeping.h"

#include <algorithm>

namespace game {

namespace {

// A run of letters, digits and marks, as bytes of the text.
struct Word {
    std::size_t begin = 0;
    std::size_t end = 0;
};

// Bytes of other scripts count as letters; of ASCII only letters and digits do.
bool is_word_byte(char byte) {
    const auto value = static_cast<unsigned char>(byte);
    return value >= 0x80U || (value >= '0' && value <= '9') || (value >= 'A' && value <= 'Z') ||
           (value >= 'a' && value <= 'z');
}

std::vector<Word> words_of(std::string_view text) {
    std::vector<Word> words;
    for (std::size_t at = 0; at < text.size();) {
        if (!is_word_byte(text[at])) {
            at += 1;
            continue;
        }
        Word word{at, at};
        while (at < text.size() && is_word_byte(text[at]))
            at += 1;
        word.end = at;
        words.push_back(word);
    }
    return words;
}

// What stands between two words of a name: one space for any white space, other signs as they are.
void append_gap(std::string& key, std::string_view gap) {
    for (const char sign : gap) {
        const bool is_space = sign == ' ' || sign == '\t' || sign == '\n' || sign == '\r';
        if (!is_space)
            key += sign;
        else if (!key.empty() && key.back() != ' ')
            key += ' ';
    }
}

} // namespace

bool RegisteredNames::follow(const Register& registered) {
    const std::size_t count = registered.entries.size();
    bool is_same = names_.size() == count;
    for (std::size_t at = 0; is_same && at < count; ++at) {
        const RegisterEntry& entry = registered.entries[at];
        is_same = names_[at] == entry.name && entries_[at].entry == entry.id &&
                  entries_[at].kind == entry.kind;
    }
    if (is_same) return false;
    names_.clear();
    entries_.clear();
    by_name_.clear();
    words_max_ = 0;
    for (const RegisterEntry& entry : registered.entries) {
        names_.push_back(entry.name);
        entries_.push_back({entry.id, entry.kind});
        const std::vector<Word> words = words_of(entry.name);
        if (words.empty()) continue;
        std::string key;
        for (std::size_t at = 0; at < words.size(); ++at) {
            if (at > 0)
                append_gap(
                    key,
                    std::string_view(entry.name)
                        .substr(words[at - 1].end, words[at].begin - words[at - 1].end)
                );
            key += base::folded(std::string_view(entry.name)
                                    .substr(words[at].begin, words[at].end - words[at].begin));
        }
        words_max_ = std::max(words_max_, words.size());
        by_name_.emplace(std::move(key), Named{entry.id, entry.kind});
    }
    return true;
}

std::vector<Mention> RegisteredNames::find(std::string_view text) const {
    std::vector<Mention> found;
    if (by_name_.empty()) return found;
    const std::vector<Word> words = words_of(text);
    std::vector<std::string> folded;
    folded.reserve(words.size());
    for (const Word& word : words)
        folded.push_back(base::folded(text.substr(word.begin, word.end - word.begin)));
    for (std::size_t first = 0; first < words.size();) {
        std::string key;
        std::size_t past = first; // one past the last word of the longest name that begins here
        const Named* longest = nullptr;
        const std::size_t end = std::min(words.size(), first + words_max_);
        for (std::size_t at = first; at < end; ++at) {
            if (at > first)
                append_gap(
                    key, text.substr(words[at - 1].end, words[at].begin - words[at - 1].end)
                );
            key += folded[at];
            const auto named = by_name_.find(key);
            if (named == by_name_.end()) continue;
            longest = &named->second;
            past = at + 1;
        }
        if (longest == nullptr) {
            first += 1;
            continue;
        }
        found.push_back({words[first].begin, words[past - 1].end, longest->entry, longest->kind});
        first = past;
    }
    return found;
}

namespace {

char lowered(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool is_plain(char letter) {
    return static_cast<unsigned char>(letter) < 0x80;
}

// The longest run of plain letters and digits of a name, in small letters.
std::string longest_plain_run(std::string_view name) {
    std::string longest;
    std::string run;
    for (const char letter : name) {
        const char low = lowered(letter);
        const bool is_part = (low >= 'a' && low <= 'z') || (low >= '0' && low <= '9');
        if (is_part)
            run += low;
        else
            run.clear();
        if (run.size() > longest.size()) longest = run;
    }
    return longest;
}

class Spots {
public:
    Spots(const RegisteredNames& names, const Register& registered, Id entry)
        : names_(names), entry_(entry) {
        const RegisterEntry* known = find_register_entry(registered, entry);
        if (known != nullptr) run_ = longest_plain_run(known->name);
    }

    // Passes over most of twenty thousand notes without taking them apart: a text in plain letters
    // that lacks the longest plain run of the name does not hold the name. Any other letter may
    // fold to a plain one, so such texts are looked at.
    bool may_be_in(std::string_view text) const {
        if (!std::all_of(text.begin(), text.end(), is_plain)) return true;
        const auto same = [](char one, char low) { return lowered(one) == low; };
        return std::search(text.begin(), text.end(), run_.begin(), run_.end(), same) != text.end();
    }

    void add(MentionSpot spot) {
        if (!may_be_in(spot.text)) return;
        const auto mentions = names_.find(spot.text);
        const bool is_named = std::any_of(mentions.begin(), mentions.end(), [&](const Mention& m) {
            return m.entry == entry_;
        });
        if (is_named) spots.push_back(std::move(spot));
    }

    std::vector<MentionSpot> spots;

private:
    const RegisteredNames& names_;
    Id entry_;
    std::string run_;
};

void add_session(const Session& session, Id entry, Spots& spots) {
    const std::string title = session_title(session);
    const auto plan = [&](const std::string& text) {
        spots.add({MentionPlace::plan, session.id, base::no_id, 0, title + ", plan", text});
    };
    plan(session.summary);
    plan(session.must_know);
    for (const PlanItem& scene : session.scenes)
        plan(scene.text);
    for (const Goal& goal : session.goals)
        plan(goal.text);
    for (const PlanItem& loot : session.loot)
        plan(loot.text);
    const auto is_planned =
        std::find(session.people.begin(), session.people.end(), entry) != session.people.end();
    if (is_planned)
        spots.spots.push_back(
            {MentionPlace::plan, session.id, base::no_id, 0, title + ", plan", "expected"}
        );
    for (const NoteLine& line : session.lines)
        if (spots.may_be_in(line.text))
            spots.add({MentionPlace::note, session.id, line.id, line.day, title, line.text});
}

} // namespace

std::vector<MentionSpot>
mentions_of(const Campaign& campaign, const RegisteredNames& names, Id entry) {
    Spots spots(names, campaign.registered, entry);
    for (const Session& session : campaign.sessions.sessions)
        add_session(session, entry, spots);
    for (const DayPage& page : campaign.day_book.pages)
        spots.add({MentionPlace::day_page, page.id, base::no_id, page.day, "Day Book", page.text});
    for (const UsedName& used : campaign.names.used)
        if (used.entry == entry)
            spots.spots.push_back(
                {MentionPlace::name_use,
                 used.id,
                 base::no_id,
                 used.day,
                 "Name given",
                 used.name + (used.who.empty() ? "" : ", " + used.who) +
                     (used.where.empty() ? "" : ", " + used.where)}
            );
    for (const RegisterEntry& other : campaign.registered.entries) {
        if (other.id == entry) continue;
        spots.add({MentionPlace::entry, other.id, base::no_id, 0, other.name, other.notes});
        spots.add({MentionPlace::entry, other.id, base::no_id, 0, other.name, other.summary});
    }
    std::stable_sort(
        spots.spots.begin(),
        spots.spots.end(),
        [](const MentionSpot& one, const MentionSpot& other) { return one.day > other.day; }
    );
    return std::move(spots.spots);
}

} // namespace game
