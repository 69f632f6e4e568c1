// The JSON type of this folder: keys keep their order, so files read in the order of their meaning.
// Declared only: files that look inside include <nlohmann/json.hpp>.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <string_view>

namespace store {

using Json = nlohmann::ordered_json;

// One step of a JSON pointer (RFC 6901): "/" and the key with "~" and "/" escaped.
std::string pointer_step(std::string_view key);
std::string pointer_step(std::size_t index);

} // namespace store
