// JSON text to values, for texts that people and other programs may have spoiled: everything that
// is wrong ends in an Error with line, column and JSON pointer, never in an exception.
#pragma once

#include "base/result.h"
#include "store/json.h"

#include <string>
#include <string_view>

namespace store {

struct JsonLimits {
    static constexpr std::size_t bytes_max = std::size_t{256} << 20;
    static constexpr int depth_max = 64;
};

// Refuses texts over 256 MB, nesting over 64, duplicate keys, numbers that do not fit a double,
// bytes that are not UTF-8, and anything after the end. `file` goes into the place of the error.
base::Result<Json>
parse_json(std::string_view text, const std::string& file, int depth_max = JsonLimits::depth_max);

// The error for a text of this size that was not even read; ok if it is small enough.
base::Result<base::Nothing> check_size(std::size_t bytes, const std::string& file);

} // namespace store
