#include "store/journal_text.h"

#include "store/checksum.h"
#include "store/json_text.h"

#include <nlohmann/json.hpp>

namespace store {

namespace {

// A patch carries parts of a campaign a few levels deeper than the file does.
constexpr int line_depth_max = JsonLimits::depth_max + 8;
constexpr std::string_view checksum_start = R"(,"crc32":")";
constexpr std::string_view checksum_end = R"("})";
constexpr std::size_t checksum_digits = 8;

std::string sealed(const Json& line) {
    std::string text = line.dump();
    text.pop_back();
    const std::string sum = crc32_text(text);
    return text.append(checksum_start).append(sum).append(checksum_end) + "\n";
}

// The line without its checksum, as a value; nothing if the checksum does not fit.
std::optional<Json> unsealed(std::string_view line) {
    const std::size_t tail = checksum_start.size() + checksum_digits + checksum_end.size();
    if (line.size() <= tail) return std::nullopt;
    const std::string_view content = line.substr(0, line.size() - tail);
    const std::string_view seal = line.substr(content.size());
    const std::string expected =
        std::string(checksum_start) + crc32_text(content) + std::string(checksum_end);
    if (seal != expected) return std::nullopt;
    auto value = parse_json(std::string(content) + "}", "", line_depth_max);
    if (!value || !value.value().is_object()) return std::nullopt;
    return std::move(value).value();
}

bool is_count(const Json& object, const char* key) {
    return object.contains(key) && object[key].is_number_unsigned();
}

bool is_text(const Json& object, const char* key) {
    return object.contains(key) && object[key].is_string();
}

bool take_line(const Json& line, JournalReading& reading) {
    if (line.contains("base")) {
        const Json& base = line["base"];
        if (!base.is_object() || !is_count(base, "revision") || !is_count(base, "size") ||
            !is_text(base, "crc32"))
            return false;
        reading.bases.push_back({base["revision"], base["size"], base["crc32"]});
        return true;
    }
    if (!is_count(line, "revision") || !is_text(line, "label") || !is_text(line, "written_at") ||
        !line.contains("patch") || !line["patch"].is_array())
        return false;
    reading.entries.push_back(
        {line["revision"], line["label"], line["patch"].dump(), line["written_at"]}
    );
    return true;
}

} // namespace

FileMark mark_of(std::string_view text, std::uint64_t revision) {
    return {revision, text.size(), crc32_text(text)};
}

std::string journal_line(const FileMark& base) {
    Json line = Json::object();
    line["base"]["revision"] = base.revision;
    line["base"]["size"] = base.size;
    line["base"]["crc32"] = base.crc32;
    return sealed(line);
}

std::string journal_line(const JournalEntry& entry) {
    Json line = Json::object();
    line["revision"] = entry.revision;
    line["label"] = entry.label;
    line["written_at"] = entry.written_at;
    // The patch is JSON already; it is put in as it is.
    std::string text = line.dump();
    text.pop_back();
    text += ",\"patch\":" + entry.patch;
    const std::string sum = crc32_text(text);
    return text.append(checksum_start).append(sum).append(checksum_end) + "\n";
}

JournalReading read_journal(std::string_view text) {
    JournalReading reading;
    while (reading.good_bytes < text.size()) {
        const std::string_view rest = text.substr(reading.good_bytes);
        const std::size_t line_break = rest.find('\n');
        const auto value = unsealed(rest.substr(0, line_break));
        if (line_break == std::string_view::npos || !value || !take_line(*value, reading)) {
            const bool is_last =
                line_break == std::string_view::npos || line_break + 1 == rest.size();
            reading.is_torn = is_last;
            reading.is_damaged = !is_last;
            break;
        }
        reading.good_bytes += line_break + 1;
    }
    return reading;
}

} // namespace store
