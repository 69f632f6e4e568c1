#include "game/name_keeping.h"

#include "base/unicode.h"
#include "game/fights.h"
#include "game/registering.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

// The entry as it stands right after the name was used.
RegisterEntry entry_of(const Register& registered, const UsedName& used, Kind kind) {
    RegisterEntry entry;
    entry.name = used.name;
    entry.kind = kind;
    entry.summary = used.who;
    const RegisterEntry* place = find_registered_name(registered, used.where);
    if (place != nullptr && place->kind == Kind::place)
        entry.place = place->id;
    else if (!used.where.empty())
        entry.summary += (used.who.empty() ? "" : ", ") + used.where;
    return entry;
}

bool is_untouched(const Register& registered, const RegisterEntry& entry, const UsedName& used) {
    RegisterEntry made = entry_of(registered, used, entry.kind);
    made.id = entry.id;
    return made == entry;
}

UsedName* find_used(NameBook& book, Id used) {
    const auto found =
        std::find_if(book.used.begin(), book.used.end(), [used](const UsedName& each) {
            return each.id == used;
        });
    return found == book.used.end() ? nullptr : &*found;
}

} // namespace

Id use_name(Campaign& campaign, const NameGiven& given) {
    UsedName used;
    used.id = campaign.names.next_id++;
    used.name = given.name;
    used.list = given.list;
    used.who = given.who;
    used.where = given.where;
    used.day = now(campaign).day;
    const RegisterEntry* known = find_registered_name(campaign.registered, given.name);
    used.entry = known != nullptr
                     ? known->id
                     : add_register_entry(
                           campaign.registered, entry_of(campaign.registered, used, given.kind)
                       );
    if (is_favourite_name(campaign.names, given.name))
        toggle_favourite_name(campaign.names, given.name, {});
    campaign.names.used.push_back(std::move(used));
    return campaign.names.used.back().id;
}

void unuse_name(Campaign& campaign, Id used) {
    const UsedName* found = find_used(campaign.names, used);
    if (found == nullptr) return;
    const RegisterEntry* entry = find_register_entry(campaign.registered, found->entry);
    const bool goes_along = entry != nullptr && is_untouched(campaign.registered, *entry, *found) &&
                            std::none_of(
                                campaign.registered.entries.begin(),
                                campaign.registered.entries.end(),
                                [&](const RegisterEntry& other) { return other.place == entry->id; }
                            );
    if (goes_along)
        std::erase_if(campaign.registered.entries, [id = entry->id](const RegisterEntry& each) {
            return each.id == id;
        });
    std::erase_if(campaign.names.used, [used](const UsedName& each) { return each.id == used; });
}

void tell_used_name(Campaign& campaign, Id used, const std::string& who, const std::string& where) {
    UsedName* found = find_used(campaign.names, used);
    if (found == nullptr) return;
    RegisterEntry* entry = find_register_entry(campaign.registered, found->entry);
    const bool follows = entry != nullptr && is_untouched(campaign.registered, *entry, *found);
    found->who = who;
    found->where = where;
    if (!follows) return;
    RegisterEntry made = entry_of(campaign.registered, *found, entry->kind);
    made.id = entry->id;
    *entry = std::move(made);
}

const UsedName* find_used_name(const NameBook& book, Id used) {
    const auto found =
        std::find_if(book.used.begin(), book.used.end(), [used](const UsedName& each) {
            return each.id == used;
        });
    return found == book.used.end() ? nullptr : &*found;
}

std::vector<std::size_t> search_used_names(const NameBook& book, std::string_view text) {
    const std::u32string wanted = base::letters_only(text);
    const auto holds = [&](const std::string& words) {
        return base::letters_only(words).find(wanted) != std::u32string::npos;
    };
    std::vector<std::size_t> found;
    for (std::size_t at = book.used.size(); at-- > 0;) {
        const UsedName& used = book.used[at];
        if (wanted.empty() || holds(used.name) || holds(used.who) || holds(used.where))
            found.push_back(at);
    }
    return found;
}

bool is_favourite_name(const NameBook& book, std::string_view name) {
    return std::any_of(book.favourites.begin(), book.favourites.end(), [&](const auto& favourite) {
        return favourite.name == name;
    });
}

void toggle_favourite_name(NameBook& book, const std::string& name, const std::string& list) {
    const auto gone = std::erase_if(book.favourites, [&](const FavouriteName& favourite) {
        return favourite.name == name;
    });
    if (gone == 0) book.favourites.push_back({name, list});
}

} // namespace game
