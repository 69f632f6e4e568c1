#include "game/registering.h"

#include "base/unicode.h"

#include <algorithm>
#include <utility>

namespace game {

Id add_register_entry(Register& registered, RegisterEntry entry) {
    entry.id = registered.next_id++;
    registered.entries.push_back(std::move(entry));
    return registered.entries.back().id;
}

const RegisterEntry* find_register_entry(const Register& registered, Id id) {
    const auto& entries = registered.entries;
    const auto found =
        std::find_if(entries.begin(), entries.end(), [id](const RegisterEntry& entry) {
            return entry.id == id;
        });
    return found == entries.end() ? nullptr : &*found;
}

RegisterEntry* find_register_entry(Register& registered, Id id) {
    return const_cast<RegisterEntry*>( // NOLINT(cppcoreguidelines-pro-type-const-cast): it is ours
        find_register_entry(std::as_const(registered), id)
    );
}

const RegisterEntry* find_registered_name(const Register& registered, std::string_view name) {
    const std::string wanted = base::folded(name);
    const auto& entries = registered.entries;
    const auto found =
        std::find_if(entries.begin(), entries.end(), [&](const RegisterEntry& entry) {
            return base::folded(entry.name) == wanted;
        });
    return found == entries.end() ? nullptr : &*found;
}

const char* kind_word(Kind kind) {
    switch (kind) {
    case Kind::person: return "person";
    case Kind::place: return "place";
    case Kind::creature: return "creature";
    case Kind::item: return "item";
    case Kind::faction: return "faction";
    }
    return "";
}

const char* kind_letter(Kind kind) {
    switch (kind) {
    case Kind::person: return "p";
    case Kind::place: return "l";
    case Kind::creature: return "c";
    case Kind::item: return "i";
    case Kind::faction: return "f";
    }
    return "";
}

} // namespace game
