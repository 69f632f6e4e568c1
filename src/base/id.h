// Ids of things in the campaign. They are unique within their section and never reused.
#pragma once

#include <cstdint>

namespace base {

using Id = std::uint32_t;

inline constexpr Id no_id = 0; // means "none"; real ids count from one

} // namespace base
