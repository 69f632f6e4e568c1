// What is on the disk of a campaign: the file, and what its journal has on top.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>

namespace end_to_end {

// Discarded when there is no sound JSON.
nlohmann::json read_json(const std::filesystem::path& file);
std::string journal_of(const std::filesystem::path& file);
// Is a change with this in its label on the disk, in the file or in its journal?
bool is_on_disk(const std::filesystem::path& file, const std::string& label);

} // namespace end_to_end
