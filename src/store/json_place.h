// Where in a JSON text something stands, for messages about values that were read long ago.
#pragma once

#include "base/result.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace store {

// Line and column (from 1, in bytes) of a byte of the text; past the end means its last byte + 1.
base::Place place_of_byte(std::string_view text, std::size_t byte);

// Line and column of the value that the pointer names. When the text has no such value, of the
// innermost value on the way to it. `occurrence` picks among equal keys in the last object (1 is
// the first); then the place of the key itself is meant. Works on any text, even a broken one.
base::Place place_of_pointer(std::string_view text, std::string_view pointer);
base::Place place_of_key(
    std::string_view text, std::string_view object_pointer, std::string_view key, int occurrence
);

} // namespace store
