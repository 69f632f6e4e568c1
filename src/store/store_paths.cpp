#include "store/store_paths.h"

#include <system_error>

namespace store {

namespace {

Path with_ending(const Path& file, const std::string& ending) {
    return file.parent_path() / (file.stem().string() + ending);
}

} // namespace

StorePaths store_paths(const Path& campaign_file) {
    std::error_code problem;
    Path file = std::filesystem::weakly_canonical(campaign_file, problem);
    if (problem || file.empty()) file = campaign_file;
    StorePaths paths;
    paths.file = file;
    paths.temporary = with_ending(file, ".json.writing");
    paths.journal = with_ending(file, ".journal");
    paths.temporary_journal = with_ending(file, ".journal.writing");
    paths.backups = with_ending(file, ".backups");
    paths.lock = with_ending(file, ".lock");
    return paths;
}

Path StorePaths::beside(const std::string& word, const std::string& stamp) const {
    return with_ending(file, "." + word + "-" + stamp + ".json");
}

Path StorePaths::aside(const std::string& stamp) const {
    return with_ending(file, ".journal.aside-" + stamp);
}

Path unused(Files& files, const Path& path) {
    const std::string ending = path.extension() == ".json" ? ".json" : "";
    const std::string name = path.filename().string();
    const std::string start = name.substr(0, name.size() - ending.size());
    Path free = path;
    for (int i = 2; files.state(free).ok(); ++i)
        free = path.parent_path() / (start + "-" + std::to_string(i) + ending);
    return free;
}

} // namespace store
