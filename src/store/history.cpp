#include "store/history.h"

#include "game/fights.h"
#include "store/campaign_values.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace store {

namespace {

constexpr std::size_t label_bytes_max = 500;

bool is_continuation(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// Bytes of the character that starts with this byte; 0 if none does (RFC 3629).
std::size_t length_of(unsigned char first) {
    if (first < 0x80) return 1;
    if (first >= 0xC2 && first <= 0xDF) return 2;
    if (first >= 0xE0 && first <= 0xEF) return 3;
    if (first >= 0xF0 && first <= 0xF4) return 4;
    return 0;
}

// The second byte keeps out overlong forms, surrogates and numbers above U+10FFFF (RFC 3629).
bool is_second_byte_good(unsigned char first, unsigned char second) {
    switch (first) {
    case 0xE0: return second >= 0xA0;
    case 0xED: return second <= 0x9F;
    case 0xF0: return second >= 0x90;
    case 0xF4: return second <= 0x8F;
    default: return true;
    }
}

Json operation(const char* op, std::size_t index) {
    Json one = Json::object();
    one["op"] = op;
    one["path"] = "/history/lines" + pointer_step(index);
    return one;
}

} // namespace

game::HistoryLine history_line(
    const game::Campaign& campaign,
    std::uint64_t revision,
    const std::string& label,
    std::string written_at
) {
    const game::Encounter& encounter = campaign.encounter;
    const bool is_running = encounter.phase == game::Phase::running;
    const game::Clock now = game::now(campaign);
    game::HistoryLine line;
    line.revision = revision;
    line.label = short_label(label);
    line.round = is_running ? encounter.round : 0;
    line.day = now.day;
    line.second_of_day = now.second_of_day;
    line.written_at = std::move(written_at);
    return line;
}

Json add_to_history(game::History& history, game::HistoryLine line, bool replaces_last) {
    Json operations = Json::array();
    std::vector<game::HistoryLine>& lines = history.lines;
    if (replaces_last && !lines.empty()) {
        operations.push_back(operation("replace", lines.size() - 1));
        operations.back()["value"] = to_json(line);
        lines.back() = std::move(line);
        return operations;
    }
    const std::size_t surplus =
        lines.size() >= history_lines_kept ? lines.size() - history_lines_kept + 1 : 0;
    for (std::size_t i = 0; i < surplus; ++i)
        operations.push_back(operation("remove", 0));
    lines.erase(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(surplus));
    operations.push_back(operation("add", lines.size()));
    operations.back()["value"] = to_json(line);
    lines.push_back(std::move(line));
    return operations;
}

bool is_text(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const auto first = static_cast<unsigned char>(text[at]);
        const std::size_t length = length_of(first);
        if (length == 0 || at + length > text.size()) return false;
        for (std::size_t i = 1; i < length; ++i)
            if (!is_continuation(text[at + i])) return false;
        if (length > 1 && !is_second_byte_good(first, static_cast<unsigned char>(text[at + 1])))
            return false;
        at += length;
    }
    return true;
}

bool is_writable_text(const Json& value) {
    if (value.is_string()) return is_text(value.get_ref<const std::string&>());
    if (value.is_object())
        return std::all_of(
            value.get_ref<const Json::object_t&>().begin(),
            value.get_ref<const Json::object_t&>().end(),
            [](const auto& entry) { return is_text(entry.first) && is_writable_text(entry.second); }
        );
    return !value.is_array() || std::all_of(value.begin(), value.end(), is_writable_text);
}

std::string short_label(const std::string& label) {
    if (label.size() <= label_bytes_max) return label;
    constexpr std::string_view mark = "...";
    std::size_t end = label_bytes_max - mark.size();
    while (end > 0 && is_continuation(label[end]))
        end -= 1;
    return label.substr(0, end).append(mark);
}

} // namespace store
