#include "store/text_file.h"

#include "base/unicode.h"
#include "store/files.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string_view>
#include <system_error>

namespace store {

using base::Error;
using base::ErrorKind;

std::filesystem::path typed_path(const std::string& path) {
    const char* home = std::getenv("HOME"); // NOLINT(concurrency-mt-unsafe): nobody changes it
    if (home == nullptr || path.compare(0, 2, "~/") != 0) return path;
    return std::filesystem::path(home) / path.substr(2);
}

base::Result<std::string> read_text_file(const std::string& path) {
    const std::filesystem::path file = typed_path(path);
    const base::Place place{file.string(), 0, 0, {}};
    std::error_code failed;
    const std::filesystem::file_status status = std::filesystem::status(file, failed);
    if (!std::filesystem::exists(status))
        return Error{ErrorKind::not_found, "There is no such file.", place, {}};
    if (!std::filesystem::is_regular_file(status))
        return Error{ErrorKind::cannot_read, "This is no text file.", place, {}};
    std::ifstream stream(file, std::ios::binary);
    if (!stream) return Error{ErrorKind::cannot_read, "This file is not yours to read.", place, {}};
    std::string text(text_file_bytes_max + 1, '\0');
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(stream.gcount()));
    if (text.size() > text_file_bytes_max)
        return Error{
            ErrorKind::too_large,
            "This file is larger than 1 MB, too large for a list.",
            place,
            {}};
    if (!base::is_utf8(text))
        return Error{
            ErrorKind::bad_text, "This file is not text in UTF-8; save it as UTF-8.", place, {}};
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.compare(0, byte_order_mark.size(), byte_order_mark) == 0)
        text.erase(0, byte_order_mark.size());
    return text;
}

base::Result<base::Nothing> write_text_file(const std::string& path, const std::string& text) {
    const std::filesystem::path file = typed_path(path);
    std::filesystem::path half = file;
    half += ".new";
    return write_whole(disk(), half, file, text);
}

} // namespace store
