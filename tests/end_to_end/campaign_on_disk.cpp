#include "end_to_end/campaign_on_disk.h"

#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

namespace end_to_end {

nlohmann::json read_json(const std::filesystem::path& file) {
    std::ifstream stream(file);
    return nlohmann::json::parse(stream, nullptr, false);
}

std::string journal_of(const std::filesystem::path& file) {
    std::ifstream stream(std::filesystem::path(file).replace_extension(".journal"));
    return {(std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>()};
}

bool is_on_disk(const std::filesystem::path& file, const std::string& label) {
    if (journal_of(file).find(label) != std::string::npos) return true;
    const nlohmann::json campaign = read_json(file);
    return !campaign.is_discarded() && campaign.dump().find(label) != std::string::npos;
}

} // namespace end_to_end
