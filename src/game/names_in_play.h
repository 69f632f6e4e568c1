// Which names the players already know, and whether another one could be taken for one of them.
#pragma once

#include "game/campaign.h"

#include <array>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

namespace game {

enum class NameClash { none, same, sounds_like, looks_like };

struct NameCheck {
    NameClash clash = NameClash::none;
    std::string with; // the name in play

    bool operator==(const NameCheck&) const = default;
};

// "sounds like Ysolde Marr"; empty without a clash.
std::string clash_text(const NameCheck& check);

// Two names look alike when they are one slip apart, or two slips where they begin with the same
// letter and the shorter one has six letters or more: then no more than a third of it differs.
// A name of fewer than three letters looks like itself alone.
inline constexpr std::size_t letters_for_two_slips = 6;
inline constexpr std::size_t letters_for_a_slip = 3;
bool look_alike(std::u32string_view one, std::u32string_view other);
bool sound_alike(std::string_view one, std::string_view other);

// Used names, names of the Register, of the characters and of everybody in the fight, each as a
// whole and by its words ("Marr" of "Ysolde Marr"). Follows a campaign: what changed is taken in,
// the rest stays, and so do answers that were given before; a hundred thousand names do not slow
// the asking down.
class NamesInPlay {
public:
    // Returns true if anything may have changed since the last call.
    bool follow(const Campaign& campaign);

    NameCheck check(const std::string& name) const;

    std::size_t size() const { return slots_.size() - free_.size(); }

private:
    using Slot = std::uint32_t;

    struct Entry {
        std::string name; // the whole one, also where the letters are those of one word
        std::u32string letters;
    };

    // In a bucket, with what tells most others from it without a look at the letters.
    struct Placed {
        std::uint64_t letters_seen = 0;
        Slot slot = 0;
    };

    // A list of names as it was taken in, with the slots of each.
    struct Followed {
        std::vector<std::string> names;
        std::vector<std::vector<Slot>> slots;
    };

    // What tells cheaply that nothing changed.
    struct Stamp {
        const Campaign* campaign = nullptr;
        std::uint64_t revision = 0;
        std::array<std::size_t, 4> sizes{};

        bool operator==(const Stamp&) const = default;
    };

    // An answer, with what it takes to tell whether one more name in play changes it.
    struct Verdict {
        NameCheck check;
        std::string folded;
        std::u32string letters;
        std::u32string sound;
    };

    NameCheck judge(const Verdict& asked, const std::string& name) const;
    void review(const std::string& come);                              // a whole name
    void review(const std::string& come, std::u32string_view letters); // it or a word of it
    void follow_list(Followed& followed, const std::vector<std::string_view>& names);
    std::vector<Slot> add(const std::string& name);
    void remove(const std::string& name, const std::vector<Slot>& slots);
    Slot add_letters(const std::string& name, std::u32string letters);
    void remove_slot(Slot slot);
    const Entry* alike(std::u32string_view letters) const;
    const Entry* one_slip_at_the_front(std::u32string_view letters) const;

    Stamp stamp_;
    mutable std::unordered_map<std::string, Verdict> verdicts_; // by name asked for
    std::array<Followed, 4> lists_;
    std::vector<Entry> slots_;
    std::vector<Slot> free_;
    std::unordered_map<std::string, int> folded_; // whole names, how often
    // By hash; what is found is compared in full.
    std::unordered_multimap<std::uint64_t, Slot> sounds_;
    std::unordered_multimap<std::uint64_t, Slot> wholes_;
    std::unordered_multimap<std::uint64_t, Slot> tails_;             // without the first letter
    std::unordered_map<std::uint64_t, std::vector<Placed>> buckets_; // by first letter and length
};

} // namespace game
