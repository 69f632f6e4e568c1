// Fields of a file that this version does not know. They ride along with the value they stood in,
// so that a newer program, a script or a person loses nothing by opening the file here.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace base {

// Key and JSON text, sorted by key.
using UnknownFields = std::vector<std::pair<std::string, std::string>>;

} // namespace base
