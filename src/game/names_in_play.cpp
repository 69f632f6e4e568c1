#include "game/names_in_play.h"

#include "base/unicode.h"
#include "game/name_distance.h"
#include "game/name_sound.h"

#include <algorithm>
#include <bit>
#include <functional>
#include <utility>

namespace game {

namespace {

constexpr std::size_t word_letters_min = 3; // "of" and "le" are nobody's name

std::uint64_t hash_of(std::u32string_view letters) {
    return std::hash<std::u32string_view>{}(letters);
}

// One bit for a letter that stands in the name, another where it stands twice. A letter more or
// less changes one bit, another letter two, a swap none.
std::uint64_t seen_in(std::u32string_view letters) {
    constexpr unsigned classes = 32;
    std::uint64_t seen = 0;
    for (const char32_t letter : letters) {
        const std::uint64_t once = std::uint64_t{1} << (static_cast<unsigned>(letter) % classes);
        seen |= (seen & once) != 0 ? once << classes : once;
    }
    return seen;
}

std::uint64_t bucket_of(char32_t initial, std::size_t length) {
    constexpr unsigned length_bits = 32;
    return (static_cast<std::uint64_t>(initial) << length_bits) | length;
}

std::vector<std::string_view> words_of(std::string_view name) {
    std::vector<std::string_view> words;
    while (!name.empty()) {
        const std::size_t end = std::min(name.find(' '), name.size());
        if (end > 0) words.push_back(name.substr(0, end));
        name.remove_prefix(std::min(end + 1, name.size()));
    }
    return words;
}

template <class List>
std::vector<std::string_view> names_of(const List& list) {
    std::vector<std::string_view> names;
    names.reserve(list.size());
    for (const auto& each : list)
        names.push_back(each.name);
    return names;
}

void erase_from(
    std::unordered_multimap<std::uint64_t, std::uint32_t>& map,
    std::uint64_t hash,
    std::uint32_t slot
) {
    const auto [begin, end] = map.equal_range(hash);
    const auto found =
        std::find_if(begin, end, [slot](const auto& each) { return each.second == slot; });
    if (found != end) map.erase(found);
}

} // namespace

std::string clash_text(const NameCheck& check) {
    switch (check.clash) {
    case NameClash::none: return {};
    case NameClash::same: return "already in play";
    case NameClash::sounds_like: return "sounds like " + check.with;
    case NameClash::looks_like: return "looks like " + check.with;
    }
    return {};
}

bool look_alike(std::u32string_view one, std::u32string_view other) {
    const std::size_t shorter = std::min(one.size(), other.size());
    const std::size_t longer = std::max(one.size(), other.size());
    if (shorter < letters_for_a_slip) return one == other;
    const bool allows_two = shorter >= letters_for_two_slips && one[0] == other[0];
    const std::size_t slips = allows_two ? 2 : 1;
    return longer - shorter <= slips && are_within_slips(one, other, slips);
}

bool sound_alike(std::string_view one, std::string_view other) {
    return sound_of(base::letters_only(one)) == sound_of(base::letters_only(other));
}

bool NamesInPlay::follow(const Campaign& campaign) {
    const History& history = campaign.history;
    const Stamp now{
        &campaign,
        history.lines.empty() ? 0 : history.lines.back().revision,
        {campaign.names.used.size(),
         campaign.registered.entries.size(),
         campaign.party.characters.size(),
         campaign.encounter.combatants.size()}};
    if (now == stamp_) return false;
    stamp_ = now;
    follow_list(lists_[0], names_of(campaign.names.used));
    follow_list(lists_[1], names_of(campaign.registered.entries));
    follow_list(lists_[2], names_of(campaign.party.characters));
    follow_list(lists_[3], names_of(campaign.encounter.combatants));
    return true;
}

// Names come at the end and go one by one, so what differs lies between the equal beginning and the
// equal end.
void NamesInPlay::follow_list(Followed& followed, const std::vector<std::string_view>& names) {
    std::vector<std::string>& known = followed.names;
    const std::size_t shared = std::min(known.size(), names.size());
    std::size_t front = 0;
    while (front < shared && known[front] == names[front])
        ++front;
    std::size_t back = 0;
    while (back < shared - front && known[known.size() - 1 - back] == names[names.size() - 1 - back]
    )
        ++back;
    const auto from = static_cast<std::ptrdiff_t>(front);
    const auto gone_end = static_cast<std::ptrdiff_t>(known.size() - back);
    for (std::ptrdiff_t at = from; at < gone_end; ++at)
        remove(known[static_cast<std::size_t>(at)], followed.slots[static_cast<std::size_t>(at)]);
    known.erase(known.begin() + from, known.begin() + gone_end);
    followed.slots.erase(followed.slots.begin() + from, followed.slots.begin() + gone_end);
    std::vector<std::string> come;
    std::vector<std::vector<Slot>> slots;
    for (std::size_t at = front; at < names.size() - back; ++at) {
        come.emplace_back(names[at]);
        slots.push_back(add(come.back()));
    }
    known.insert(known.begin() + from, come.begin(), come.end());
    followed.slots.insert(followed.slots.begin() + from, slots.begin(), slots.end());
}

std::vector<NamesInPlay::Slot> NamesInPlay::add(const std::string& name) {
    folded_[base::folded(name)] += 1;
    review(name);
    std::vector<Slot> slots;
    std::u32string letters = base::letters_only(name);
    if (!letters.empty()) slots.push_back(add_letters(name, std::move(letters)));
    const std::vector<std::string_view> words = words_of(name);
    if (words.size() < 2) return slots;
    for (const std::string_view word : words) {
        letters = base::letters_only(word);
        if (letters.size() >= word_letters_min)
            slots.push_back(add_letters(name, std::move(letters)));
    }
    return slots;
}

void NamesInPlay::remove(const std::string& name, const std::vector<Slot>& slots) {
    const std::string folded = base::folded(name);
    const auto found = folded_.find(folded);
    if (found != folded_.end() && --found->second == 0) folded_.erase(found);
    std::erase_if(verdicts_, [&](const auto& each) {
        return each.second.check.with == name || each.second.folded == folded;
    });
    for (const Slot slot : slots)
        remove_slot(slot);
}

NamesInPlay::Slot NamesInPlay::add_letters(const std::string& name, std::u32string letters) {
    Slot slot = 0;
    if (free_.empty()) {
        slot = static_cast<Slot>(slots_.size());
        slots_.emplace_back();
    } else {
        slot = free_.back();
        free_.pop_back();
    }
    const std::u32string_view all = letters;
    review(name, all);
    sounds_.emplace(hash_of(sound_of(all)), slot);
    wholes_.emplace(hash_of(all), slot);
    tails_.emplace(hash_of(all.substr(1)), slot);
    buckets_[bucket_of(all[0], all.size())].push_back({seen_in(all), slot});
    slots_[slot] = {name, std::move(letters)};
    return slot;
}

void NamesInPlay::remove_slot(Slot slot) {
    const std::u32string_view letters = slots_[slot].letters;
    erase_from(sounds_, hash_of(sound_of(letters)), slot);
    erase_from(wholes_, hash_of(letters), slot);
    erase_from(tails_, hash_of(letters.substr(1)), slot);
    std::erase_if(buckets_[bucket_of(letters[0], letters.size())], [slot](const Placed& each) {
        return each.slot == slot;
    });
    slots_[slot] = {};
    free_.push_back(slot);
}

// A slip at the first letter: another one, one more, one less, or the first two swapped.
const NamesInPlay::Entry* NamesInPlay::one_slip_at_the_front(std::u32string_view letters) const {
    const auto find = [&](const auto& map, std::u32string_view key, const auto& part_of) {
        const auto [begin, end] = map.equal_range(hash_of(key));
        for (auto each = begin; each != end; ++each) {
            const Entry& entry = slots_[each->second];
            const bool is_long =
                std::min(entry.letters.size(), letters.size()) >= letters_for_a_slip;
            if (is_long && part_of(std::u32string_view(entry.letters)) == key) return &entry;
        }
        return static_cast<const Entry*>(nullptr);
    };
    const auto whole = [](std::u32string_view all) { return all; };
    const auto tail = [](std::u32string_view all) { return all.substr(1); };
    if (const Entry* replaced = find(tails_, letters.substr(1), tail)) return replaced;
    if (const Entry* longer = find(tails_, letters, tail)) return longer;
    if (const Entry* shorter = find(wholes_, letters.substr(1), whole)) return shorter;
    if (letters.size() < 2) return nullptr;
    std::u32string swapped(letters);
    std::swap(swapped[0], swapped[1]);
    return find(wholes_, swapped, whole);
}

const NamesInPlay::Entry* NamesInPlay::alike(std::u32string_view letters) const {
    if (const Entry* found = one_slip_at_the_front(letters)) return found;
    constexpr std::size_t slips = 2;
    const std::uint64_t seen = seen_in(letters);
    const std::size_t shortest = letters.size() > slips ? letters.size() - slips : 1;
    for (std::size_t length = shortest; length <= letters.size() + slips; ++length) {
        const auto bucket = buckets_.find(bucket_of(letters[0], length));
        if (bucket == buckets_.end()) continue;
        // Slips that make up the length change one bit each, the others two.
        const std::size_t uneven =
            std::max(length, letters.size()) - std::min(length, letters.size());
        const int bits_max = static_cast<int>(2 * slips - uneven);
        for (const Placed& each : bucket->second) {
            if (std::popcount(each.letters_seen ^ seen) > bits_max) continue;
            const Entry& entry = slots_[each.slot];
            if (look_alike(letters, entry.letters)) return &entry;
        }
    }
    return nullptr;
}

NameCheck NamesInPlay::judge(const Verdict& asked, const std::string& name) const {
    if (folded_.count(asked.folded) > 0) return {NameClash::same, name};
    if (asked.letters.empty()) return {};
    if (asked.letters.size() >= letters_for_a_slip) {
        const auto [begin, end] = sounds_.equal_range(hash_of(asked.sound));
        for (auto each = begin; each != end; ++each)
            if (sound_of(slots_[each->second].letters) == asked.sound)
                return {NameClash::sounds_like, slots_[each->second].name};
    }
    if (const Entry* entry = alike(asked.letters)) return {NameClash::looks_like, entry->name};
    return {};
}

NameCheck NamesInPlay::check(const std::string& name) const {
    const auto known = verdicts_.find(name);
    if (known != verdicts_.end()) return known->second.check;
    constexpr std::size_t verdicts_max = 20'000; // a long list and all that grew from it
    if (verdicts_.size() >= verdicts_max) verdicts_.clear();
    Verdict asked;
    asked.folded = base::folded(name);
    asked.letters = base::letters_only(name);
    asked.sound = sound_of(asked.letters);
    asked.check = judge(asked, name);
    return verdicts_.emplace(name, std::move(asked)).first->second.check;
}

void NamesInPlay::review(const std::string& come) {
    if (verdicts_.empty()) return;
    const std::string folded = base::folded(come);
    for (auto& [name, verdict] : verdicts_)
        if (verdict.folded == folded) verdict.check = {NameClash::same, name};
}

void NamesInPlay::review(const std::string& come, std::u32string_view letters) {
    if (verdicts_.empty()) return;
    const std::u32string sound = sound_of(letters);
    for (auto& [name, verdict] : verdicts_) {
        if (verdict.check.clash != NameClash::none || verdict.letters.empty()) continue;
        const bool is_heard =
            verdict.letters.size() >= letters_for_a_slip && verdict.sound == sound;
        if (is_heard)
            verdict.check = {NameClash::sounds_like, come};
        else if (look_alike(verdict.letters, letters))
            verdict.check = {NameClash::looks_like, come};
    }
}

} // namespace game
