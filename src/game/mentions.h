// Names of the Register found in what the GM wrote: whole words, whatever their case, the longest
// name where several begin at the same place.
#pragma once

#include "game/campaign.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace game {

// A name in a text, as bytes [begin, end).
struct Mention {
    std::size_t begin = 0;
    std::size_t end = 0;
    Id entry = base::no_id; // of the Register
    Kind kind = Kind::person;

    bool operator==(const Mention&) const = default;
};

// The names of the Register, ready to be looked for. A text of n words takes n lookups times the
// words of the longest name; ten thousand names do not slow it down.
class RegisteredNames {
public:
    // Takes in what changed; cheap when nothing did. True: something did.
    bool follow(const Register& registered);

    // In the order of the text, none overlapping. Of entries with the same name the first counts.
    std::vector<Mention> find(std::string_view text) const;

private:
    struct Named {
        Id entry = base::no_id;
        Kind kind = Kind::person;
    };

    std::vector<std::string> names_; // as followed, by place in the Register
    std::vector<Named> entries_;
    std::unordered_map<std::string, Named> by_name_;
    std::size_t words_max_ = 0; // of the longest name
};

// A place where an entry is spoken of.
enum class MentionPlace { note, plan, day_page, name_use, entry };

struct MentionSpot {
    MentionPlace place = MentionPlace::note;
    Id owner = base::no_id; // session, page of the Day Book, used name, other entry
    Id line = base::no_id;  // of notes: the line
    std::int64_t day = 0;   // in-world; 0 where it has none
    std::string title;      // "Session 7", "12 Reedmonth": where it stands
    std::string text;       // the line or the sentence

    bool operator==(const MentionSpot&) const = default;
};

// Every spot that names the entry: notes and plans of sessions, pages of the Day Book, used names,
// notes of other entries; newest first where there is a day.
std::vector<MentionSpot>
mentions_of(const Campaign& campaign, const RegisteredNames& names, Id entry);

} // namespace game
