#include "store/asset_file.h"

#include "store/json_place.h"
#include "store/json_text.h"

#include <fstream>
#include <sstream>

namespace store {

using base::Error;
using base::ErrorKind;

static constexpr const char* remedy = "Correct it there, or put the original file back.";

Error error_of(const Wrong& wrong, const std::string& what, const std::string& file_name) {
    const std::string found = wrong.found.empty() ? "" : ", not " + wrong.found;
    return {
        wrong.kind,
        "In " + what + ", " + wrong.expected + " is needed here" + found + ".",
        {file_name, 0, 0, wrong.pointer},
        remedy};
}

base::Result<base::Nothing> read_asset_file(
    const std::filesystem::path& path,
    const std::string& what,
    const std::function<void(const Spot&)>& read
) {
    std::ifstream stream(path, std::ios::binary);
    if (!stream) {
        return Error{
            ErrorKind::not_found,
            "The file of " + what + " cannot be read.",
            {path.string(), 0, 0, {}},
            "Install Tablewick again."};
    }
    std::ostringstream buffer;
    buffer << stream.rdbuf();
    const std::string text = buffer.str();
    const base::Result<Json> parsed = parse_json(text, path.string());
    if (!parsed.ok()) {
        Error error = parsed.error();
        error.remedy = remedy;
        return error;
    }
    const nlohmann::json top(parsed.value());
    try {
        read({top, {}});
    } catch (const Wrong& wrong) {
        Error error = error_of(wrong, what, path.string());
        // People look for lines, not for pointers.
        const base::Place place = place_of_pointer(text, error.place.pointer);
        error.place.line = place.line;
        error.place.column = place.column;
        return error;
    }
    return base::Nothing{};
}

} // namespace store
