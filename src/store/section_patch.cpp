#include "store/section_patch.h"

#include "store/campaign_values.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <utility>

namespace store {

using game::Campaign;
using game::Section;

namespace {

// The key of the section in the file.
std::string_view key_of(Section section) {
    switch (section) {
    case Section::about: return "about";
    case Section::party: return "party";
    case Section::shelf: return "shelf";
    case Section::preparation: return "preparation";
    case Section::encounter: return "encounter";
    case Section::clock: return "clock";
    case Section::table_rolls: return "table_rolls";
    case Section::registered: return "register";
    case Section::names: return "names";
    case Section::calendar: return "calendar";
    case Section::day_book: return "day_book";
    case Section::places: return "places";
    case Section::sessions: return "sessions";
    case Section::treasury: return "treasury";
    case Section::own_pages: return "own_pages";
    }
    return {};
}

// Calls action with the member of Campaign that the section is, and with the key of its long list
// ("" if it has none) and that list's member. Such a list stands in the file even when it is empty
// (Presence::shown): the patch of its first element is applied to it.
struct NoList {};

template <class Action>
void with_section(Section section, Action&& action) {
    switch (section) {
    case Section::about: return action(&Campaign::about, "", NoList{});
    case Section::party: return action(&Campaign::party, "characters", &game::Party::characters);
    case Section::shelf:
        return action(&Campaign::shelf, "creatures", &game::CreatureShelf::creatures);
    case Section::preparation: return action(&Campaign::preparation, "", NoList{});
    case Section::encounter:
        return action(&Campaign::encounter, "combatants", &game::Encounter::combatants);
    case Section::clock: return action(&Campaign::clock, "", NoList{});
    case Section::table_rolls:
        return action(&Campaign::table_rolls, "rolls", &game::TableRolls::rolls);
    case Section::registered:
        return action(&Campaign::registered, "entries", &game::Register::entries);
    case Section::names: return action(&Campaign::names, "used", &game::NameBook::used);
    case Section::calendar: return action(&Campaign::calendar, "", NoList{});
    case Section::day_book: return action(&Campaign::day_book, "pages", &game::DayBook::pages);
    case Section::places: return action(&Campaign::places, "", NoList{});
    case Section::sessions:
        return action(&Campaign::sessions, "sessions", &game::Sessions::sessions);
    case Section::treasury: return action(&Campaign::treasury, "lines", &game::Treasury::lines);
    case Section::own_pages: return action(&Campaign::own_pages, "pages", &game::OwnPages::pages);
    }
}

Json operation(const char* op, const std::string& path) {
    Json one = Json::object();
    one["op"] = op;
    one["path"] = path;
    return one;
}

Json operation(const char* op, const std::string& path, Json value) {
    Json one = operation(op, path);
    one["value"] = std::move(value);
    return one;
}

void append_with_prefix(Json& patch, const std::string& prefix, Json operations) {
    for (Json& one : operations) {
        one["path"] = prefix + one["path"].get_ref<const std::string&>();
        patch.push_back(std::move(one));
    }
}

void append_both_ways(
    PatchPair& patches, const std::string& prefix, const Json& before, const Json& after
) {
    append_with_prefix(patches.forward, prefix, Json::diff(before, after));
    append_with_prefix(patches.backward, prefix, Json::diff(after, before));
}

template <class Part>
Json checked_json(const Part& part, const std::string& pointer, Problems& problems) {
    Json value = to_json(part);
    from_json<Part>(value, problems, pointer);
    return value;
}

// Elements at both ends that did not change are left alone; in between an element with the same id
// is compared inside, others are exchanged whole.
template <class Part>
void append_list_difference(
    const std::string& path,
    const std::vector<Part>& before,
    const std::vector<Part>& after,
    PatchPair& patches,
    Problems& problems
) {
    const std::size_t common = std::min(before.size(), after.size());
    std::size_t first = 0;
    while (first < common && before[first] == after[first])
        first += 1;
    std::size_t tail = 0;
    while (tail < common - first &&
           before[before.size() - 1 - tail] == after[after.size() - 1 - tail])
        tail += 1;
    const std::size_t before_end = before.size() - tail;
    const std::size_t after_end = after.size() - tail;
    const std::size_t pairs_end = std::min(before_end, after_end);
    for (std::size_t i = first; i < pairs_end; ++i) {
        if (before[i] == after[i]) continue;
        const std::string place = path + pointer_step(i);
        Json old_value = to_json(before[i]);
        Json new_value = checked_json(after[i], place, problems);
        if (before[i].id == after[i].id) {
            append_both_ways(patches, place, old_value, new_value);
        } else {
            patches.forward.push_back(operation("replace", place, std::move(new_value)));
            patches.backward.push_back(operation("replace", place, std::move(old_value)));
        }
    }
    // Additions run up and removals run down, so that every index still fits when its turn comes.
    for (std::size_t i = pairs_end; i < after_end; ++i) {
        const std::string place = path + pointer_step(i);
        patches.forward.push_back(operation("add", place, checked_json(after[i], place, problems)));
    }
    for (std::size_t i = after_end; i > pairs_end; --i)
        patches.backward.push_back(operation("remove", path + pointer_step(i - 1)));
    for (std::size_t i = before_end; i > pairs_end; --i)
        patches.forward.push_back(operation("remove", path + pointer_step(i - 1)));
    for (std::size_t i = pairs_end; i < before_end; ++i)
        patches.backward.push_back(operation("add", path + pointer_step(i), to_json(before[i])));
}

template <class Part>
void copy_list(const std::vector<Part>& from, std::vector<Part>& to) {
    to.resize(std::min(to.size(), from.size()));
    for (std::size_t i = 0; i < to.size(); ++i)
        if (!(to[i] == from[i])) to[i] = from[i];
    to.insert(to.end(), from.begin() + static_cast<std::ptrdiff_t>(to.size()), from.end());
}

} // namespace

void append_difference(
    Section section,
    const Campaign& before,
    const Campaign& after,
    PatchPair& patches,
    Problems& problems
) {
    const std::string path = pointer_step(key_of(section));
    with_section(section, [&](auto member, std::string_view list_key, auto list) {
        const auto& old_part = before.*member;
        const auto& new_part = after.*member;
        const Json old_rest = to_json(old_part, list_key);
        const Json new_rest = to_json(new_part, list_key);
        if (old_rest != new_rest) {
            using Part = std::remove_cvref_t<decltype(new_part)>;
            from_json<Part>(new_rest, problems, path);
            append_both_ways(patches, path, old_rest, new_rest);
        }
        if constexpr (!std::is_same_v<decltype(list), NoList>)
            append_list_difference(
                path + pointer_step(list_key), old_part.*list, new_part.*list, patches, problems
            );
    });
}

std::vector<Section> sections_of(const Json& patch) {
    std::vector<Section> sections;
    for (const Section section : all_sections) {
        const std::string key = pointer_step(key_of(section));
        const bool is_touched = std::any_of(patch.begin(), patch.end(), [&](const Json& one) {
            const auto& path = one["path"].get_ref<const std::string&>();
            return path.compare(0, key.size(), key) == 0 &&
                   (path.size() == key.size() || path[key.size()] == '/');
        });
        if (is_touched) sections.push_back(section);
    }
    return sections;
}

void copy_section(Section section, Campaign& from, Campaign& to) {
    with_section(section, [&](auto member, std::string_view /*key*/, auto list) {
        auto& target = to.*member;
        auto& source = from.*member;
        if constexpr (std::is_same_v<decltype(list), NoList>) {
            target = source;
        } else {
            copy_list(source.*list, target.*list);
            auto source_list = std::exchange(source.*list, {});
            auto target_list = std::exchange(target.*list, {});
            target = source;
            source.*list = std::move(source_list);
            target.*list = std::move(target_list);
        }
    });
}

bool is_same(Section section, const Campaign& a, const Campaign& b) {
    bool same = false;
    with_section(section, [&](auto member, std::string_view /*key*/, auto /*list*/) {
        same = a.*member == b.*member;
    });
    return same;
}

bool apply_patch(const Json& patch, const std::vector<Section>& sections, Campaign& campaign) {
    Json value = Json::object();
    for (const Section section : sections)
        with_section(section, [&](auto member, std::string_view /*key*/, auto /*list*/) {
            value[key_of(section)] = to_json(campaign.*member);
        });
    try {
        value.patch_inplace(patch);
    } catch (const Json::exception&) {
        return false;
    }
    Problems problems;
    Campaign patched;
    for (const Section section : sections)
        with_section(section, [&](auto member, std::string_view /*key*/, auto /*list*/) {
            using Part = std::remove_cvref_t<decltype(campaign.*member)>;
            const std::string key(key_of(section));
            patched.*member = from_json<Part>(value[key], problems, "/" + key);
        });
    if (!problems.empty()) return false;
    for (const Section section : sections)
        with_section(section, [&](auto member, std::string_view /*key*/, auto /*list*/) {
            campaign.*member = std::move(patched.*member);
        });
    return true;
}

} // namespace store
