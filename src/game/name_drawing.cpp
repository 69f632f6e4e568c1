#include "game/name_drawing.h"

#include "base/unicode.h"
#include "game/name_sound.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

std::string take_one(std::vector<std::string>& names, rules::Dice& dice) {
    const auto at = static_cast<std::size_t>(dice.roll(static_cast<int>(names.size())) - 1);
    std::swap(names[at], names.back());
    std::string name = std::move(names.back());
    names.pop_back();
    return name;
}

bool goes_beside(const std::string& name, const std::vector<std::string>& others) {
    const std::u32string letters = base::letters_only(name);
    const std::u32string initial = initial_of(name);
    return std::none_of(others.begin(), others.end(), [&](const std::string& other) {
        return initial == initial_of(other) || sound_alike(name, other) ||
               look_alike(letters, base::letters_only(other));
    });
}

std::set<std::u32string> pairs_of(std::u32string_view letters) {
    std::set<std::u32string> pairs;
    for (std::size_t at = 0; at + 1 < letters.size(); ++at)
        pairs.emplace(letters.substr(at, 2));
    return pairs;
}

} // namespace

std::vector<NameSource>
name_sources(const std::vector<ReadyNameList>& ready, const std::vector<NameList>& own) {
    std::vector<NameSource> sources;
    sources.reserve(ready.size() + own.size());
    for (const NameList& list : own)
        sources.push_back({list.name, list.name, list.kind, "Your own list.", &list.names, list.id}
        );
    for (const ReadyNameList& list : ready)
        sources.push_back({list.key, list.title, list.kind, list.about, &list.names, base::no_id});
    return sources;
}

std::string list_title(const std::vector<ReadyNameList>& ready, const std::string& key) {
    const auto found = std::find_if(ready.begin(), ready.end(), [&](const ReadyNameList& list) {
        return list.key == key;
    });
    return found == ready.end() ? key : found->title;
}

RecentInitials recent_initials(const NameBook& book, std::int64_t day) {
    constexpr std::size_t of_today_max = 200; // by then every letter is there
    RecentInitials recent;
    std::size_t back = 0;
    for (auto used = book.used.rbegin(); used != book.used.rend(); ++used, ++back) {
        const bool is_last = back < names_in_the_ear;
        const bool is_today = used->day == day && back < of_today_max;
        if (!is_last && !is_today) break;
        const std::u32string initial = initial_of(used->name);
        if (is_last) recent.last.insert(initial);
        if (is_today) recent.today.insert(initial);
    }
    return recent;
}

NamesLeft names_left(
    const std::vector<std::string>& names,
    const NamesInPlay& in_play,
    const RecentInitials& recent,
    const NameWishes& wishes
) {
    NamesLeft left;
    for (const std::string& name : names) {
        const NameCheck check = in_play.check(name);
        if (check.clash == NameClash::same) {
            left.used += 1;
            continue;
        }
        if (check.clash != NameClash::none && !wishes.allows_similar) {
            left.similar += 1;
            continue;
        }
        const std::u32string initial = initial_of(name);
        if (wishes.barred.count(initial) > 0)
            left.barred += 1;
        else if (wishes.passed.count(base::folded(name)) > 0)
            left.passed += 1;
        else if (recent.last.count(initial) > 0)
            left.echoing.push_back(name);
        else if (recent.today.count(initial) > 0)
            left.repeating.push_back(name);
        else
            left.fresh.push_back(name);
    }
    return left;
}

std::vector<std::string> draw_names(
    const NamesLeft& left,
    std::size_t count,
    const std::vector<std::string>& beside,
    rules::Dice& dice
) {
    std::vector<std::string> drawn;
    std::vector<std::string> neighbours = beside;
    std::vector<std::string> set_aside; // taken only when nothing better is left
    for (const std::vector<std::string>* rank : {&left.fresh, &left.repeating, &left.echoing}) {
        std::vector<std::string> names = *rank;
        while (!names.empty() && drawn.size() < count) {
            std::string name = take_one(names, dice);
            if (std::find(beside.begin(), beside.end(), name) != beside.end()) continue;
            if (!goes_beside(name, neighbours)) {
                set_aside.push_back(std::move(name));
                continue;
            }
            neighbours.push_back(name);
            drawn.push_back(std::move(name));
        }
    }
    for (std::string& name : set_aside) {
        if (drawn.size() == count) break;
        drawn.push_back(std::move(name));
    }
    return drawn;
}

double manner_shared(std::string_view one, std::string_view other) {
    const std::u32string first = base::letters_only(one);
    const std::u32string second = base::letters_only(other);
    const std::set<std::u32string> pairs = pairs_of(first);
    const std::set<std::u32string> others = pairs_of(second);
    if (pairs.empty() || others.empty()) return 0.0;
    const auto shared = static_cast<double>(std::count_if(
        pairs.begin(),
        pairs.end(),
        [&](const std::u32string& pair) { return others.count(pair) > 0; }
    ));
    // Sound first, then the ending that makes two names rhyme, then the length.
    constexpr double pair_weight = 0.5;
    constexpr double ending_weight = 0.3;
    constexpr double length_weight = 0.2;
    const double alike = 2.0 * shared / static_cast<double>(pairs.size() + others.size());
    const bool rhymes = first.substr(first.size() - 2) == second.substr(second.size() - 2);
    const std::size_t shorter = std::min(first.size(), second.size());
    const std::size_t longer = std::max(first.size(), second.size());
    return pair_weight * alike + (rhymes ? ending_weight : 0.0) +
           length_weight * static_cast<double>(shorter) / static_cast<double>(longer);
}

std::vector<std::string> draw_names_like(
    const NamesLeft& left, const std::string& name, std::size_t count, rules::Dice& dice
) {
    std::vector<std::pair<double, std::string>> ranked;
    for (const std::vector<std::string>* rank : {&left.fresh, &left.repeating, &left.echoing})
        for (const std::string& each : *rank)
            if (each != name) ranked.emplace_back(-manner_shared(name, each), each);
    std::sort(ranked.begin(), ranked.end());
    constexpr std::size_t choice = 3; // times as many, so that a second press brings others
    std::vector<std::string> nearest;
    for (std::size_t at = 0; at < std::min(ranked.size(), choice * count); ++at)
        nearest.push_back(ranked[at].second);
    std::vector<std::string> drawn;
    while (!nearest.empty() && drawn.size() < count)
        drawn.push_back(take_one(nearest, dice));
    return drawn;
}

std::string nothing_left_text(const NamesLeft& left) {
    std::string why;
    const auto add = [&](std::size_t count, const std::string& what) {
        if (count > 0) why += (why.empty() ? "" : ", ") + std::to_string(count) + " " + what;
    };
    add(left.used, "in play");
    add(left.similar, "too like a name in play");
    add(left.barred, "begin with a letter you left out");
    add(left.passed, "passed by");
    return "No good name is left in this list" + (why.empty() ? "." : ": " + why + ".");
}

} // namespace game
