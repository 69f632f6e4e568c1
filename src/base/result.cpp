#include "base/result.h"

namespace base {

std::string to_text(const Place& place) {
    std::string text = place.file;
    if (place.line > 0) {
        text += (text.empty() ? "line " : ":") + std::to_string(place.line);
        text += (place.file.empty() ? ", column " : ":") + std::to_string(place.column);
    }
    if (!place.pointer.empty()) text += (text.empty() ? "" : " ") + ("(" + place.pointer + ")");
    return text;
}

std::string to_text(const Error& error) {
    const std::string where = to_text(error.place);
    std::string text = where.empty() ? error.message : where + ": " + error.message;
    if (!error.remedy.empty()) text += " " + error.remedy;
    return text;
}

} // namespace base
