#include "game/own_name_lists.h"

#include "base/unicode.h"
#include "game/roster.h"
#include "game/shelf.h"

#include <algorithm>
#include <set>
#include <utility>

namespace game {

namespace {

// Spaces around a name, and the bullet or number that stood before it in a list.
std::string trimmed_name(std::string_view text) {
    constexpr std::string_view around = " \t\r\n";
    constexpr std::string_view before = " \t\r\n-*0123456789.)";
    const std::size_t from = text.find_first_not_of(before);
    if (from == std::string_view::npos) return {};
    const std::size_t to = text.find_last_not_of(around);
    return base::composed(text.substr(from, to - from + 1));
}

} // namespace

std::vector<std::string> split_names(std::string_view text) {
    std::vector<std::string> names;
    std::set<std::string> seen;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of("\n,;"), text.size());
        std::string name = trimmed_name(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (name.size() > Limits::name_bytes_max || base::letters_only(name).empty()) continue;
        if (seen.insert(base::folded(name)).second) names.push_back(std::move(name));
    }
    return names;
}

Id add_name_list(NameBook& book, const std::string& name, Kind kind) {
    NameList list;
    list.id = book.next_id++;
    list.name = free_name(book.lists, name);
    list.kind = kind;
    book.lists.push_back(std::move(list));
    return book.lists.back().id;
}

const NameList* find_name_list(const NameBook& book, Id list) {
    const auto found =
        std::find_if(book.lists.begin(), book.lists.end(), [list](const NameList& each) {
            return each.id == list;
        });
    return found == book.lists.end() ? nullptr : &*found;
}

NameList* find_name_list(NameBook& book, Id list) {
    const auto found =
        std::find_if(book.lists.begin(), book.lists.end(), [list](const NameList& each) {
            return each.id == list;
        });
    return found == book.lists.end() ? nullptr : &*found;
}

std::size_t add_to_name_list(NameBook& book, Id list, const std::vector<std::string>& names) {
    NameList* found = find_name_list(book, list);
    if (found == nullptr) return 0;
    std::set<std::string> seen;
    for (const std::string& name : found->names)
        seen.insert(base::folded(name));
    std::size_t added = 0;
    for (const std::string& name : names) {
        if (found->names.size() >= list_names_max) break;
        if (!seen.insert(base::folded(name)).second) continue;
        found->names.push_back(name);
        added += 1;
    }
    return added;
}

void remove_from_name_list(NameBook& book, Id list, const std::string& name) {
    if (NameList* found = find_name_list(book, list)) std::erase(found->names, name);
}

void rename_name_list(NameBook& book, Id list, const std::string& name) {
    NameList* found = find_name_list(book, list);
    if (found == nullptr || found->name == name) return;
    const std::string before = found->name;
    found->name = free_name(book.lists, name);
    for (UsedName& used : book.used)
        if (used.list == before) used.list = found->name;
    for (FavouriteName& favourite : book.favourites)
        if (favourite.list == before) favourite.list = found->name;
}

void set_name_list_kind(NameBook& book, Id list, Kind kind) {
    if (NameList* found = find_name_list(book, list)) found->kind = kind;
}

void remove_name_list(NameBook& book, Id list) {
    std::erase_if(book.lists, [list](const NameList& each) { return each.id == list; });
}

} // namespace game
