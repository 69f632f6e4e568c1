// Entries of the Register: adding and finding them.
#pragma once

#include "game/register.h"

#include <string_view>

namespace game {

// Gives the entry its id and returns it.
Id add_register_entry(Register& registered, RegisterEntry entry);

const RegisterEntry* find_register_entry(const Register& registered, Id id);
RegisterEntry* find_register_entry(Register& registered, Id id);

// By name, upper and lower case alike; the first one, or nullptr.
const RegisterEntry* find_registered_name(const Register& registered, std::string_view name);

// "person", "place", "creature", "item", "faction".
const char* kind_word(Kind kind);

// The letter that marks the kind beside a name: p, l, c, i, f.
const char* kind_letter(Kind kind);

} // namespace game
