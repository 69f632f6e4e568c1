#include "widgets/happenings.h"

#include "game/date_text.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <ctime>
#include <vector>

namespace widgets {

const PanelInfo happenings_info{
    "happenings",
    "What happened",
    "Every change so far, newest first, with the way back.",
    "F8",
    320.0F,
    200.0F};

namespace {

constexpr double mark_seconds = 2.0; // the newest line stands out for a moment

bool contains(const std::string& text, const std::string& wanted) {
    const auto same = [](char one, char two) {
        return std::tolower(static_cast<unsigned char>(one)) ==
               std::tolower(static_cast<unsigned char>(two));
    };
    return std::search(text.begin(), text.end(), wanted.begin(), wanted.end(), same) != text.end();
}

// Indices of the lines to show, newest first.
std::vector<std::size_t> found_lines(const game::History& history, const std::string& search) {
    std::vector<std::size_t> found;
    for (std::size_t i = history.lines.size(); i > 0; --i)
        if (search.empty() || contains(history.lines[i - 1].label, search)) found.push_back(i - 1);
    return found;
}

// "Round 3, 12 Reedmonth 1204 AE, 18:04"
std::string world_time(const game::Calendar& calendar, const game::HistoryLine& line) {
    game::Clock clock;
    clock.day = line.day;
    clock.second_of_day = line.second_of_day;
    const std::string round = line.round > 0 ? "Round " + std::to_string(line.round) + ", " : "";
    return round + game::date_time_text(calendar, clock);
}

// "2026-01-31 20:04" on the clock of the person, from "2026-01-31T19:04:05Z"; a text of another
// form as it stands.
std::string real_time(const std::string& written_at) {
    std::tm utc{};
    const char* end = strptime(written_at.c_str(), "%Y-%m-%dT%H:%M:%SZ", &utc);
    if (end == nullptr || *end != '\0') return written_at;
    const std::time_t seconds = timegm(&utc);
    std::tm local{};
    if (localtime_r(&seconds, &local) == nullptr) return written_at;
    std::array<char, 32> text{};
    const std::size_t length = std::strftime(text.data(), text.size(), "%Y-%m-%d %H:%M", &local);
    return {text.data(), length};
}

void draw_happenings_header(const PanelContext& context, HappeningsView& view) {
    const auto reason = [&context](bool is_possible, const char* otherwise) {
        const std::string_view read_only = read_only_reason(context);
        return read_only.empty() && !is_possible ? std::string_view(otherwise) : read_only;
    };
    if (button("Undo", reason(context.can_undo, "Nothing to undo since the program was opened.")))
        context.edits.undo();
    ImGui::SameLine();
    if (button("Redo", reason(context.can_redo, "Nothing was undone."))) context.edits.redo();
    ImGui::SameLine();
    const float room = ImGui::GetContentRegionAvail().x;
    const bool has_search = !view.search.empty();
    const float clear = has_search ? button_width("Clear") + ImGui::GetStyle().ItemSpacing.x : 0.0F;
    ImGui::SetNextItemWidth(std::max(room - clear, px(60.0F)));
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "Search what happened", &view.search);
    if (!has_search) return;
    ImGui::SameLine();
    if (button("Clear")) view.search.clear();
}

float line_height() {
    return ImGui::GetTextLineHeight() * 2.0F + px(12.0F);
}

void draw_happenings_line(
    const game::Calendar& calendar, const game::HistoryLine& line, bool is_marked
) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    if (is_marked)
        ImGui::GetWindowDrawList()->AddRectFilled(
            at, {at.x + px(4.0F), at.y + line_height() - px(4.0F)}, colour_u32(Ink::accent)
        );
    const ImVec2 start = ImGui::GetCursorPos();
    const float inset = px(10.0F);
    ImGui::SetCursorPos({start.x + inset, start.y});
    text_fitted(Ink::text, line.label, width - inset);
    push_font(TextSize::small);
    ImGui::SetCursorPos({start.x + inset, start.y + ImGui::GetTextLineHeight() + px(4.0F)});
    text_fitted(
        Ink::muted, world_time(calendar, line) + "   " + real_time(line.written_at), width - inset
    );
    ImGui::PopFont();
    ImGui::SetCursorPos(start);
    ImGui::Dummy({width, line_height() - ImGui::GetStyle().ItemSpacing.y});
}

// True while the newest line is new.
bool is_newest_marked(const PanelContext& context, HappeningsView& view) {
    const std::uint64_t newest = context.campaign.history.lines.back().revision;
    if (newest != view.newest_seen) {
        const bool is_first_look = view.newest_seen == 0;
        view.newest_seen = newest;
        view.newest_at = is_first_look ? context.now_seconds - mark_seconds : context.now_seconds;
    }
    const double left = view.newest_at + mark_seconds - context.now_seconds;
    if (left > 0.0) ask_frame_in(left);
    return left > 0.0;
}

} // namespace

void draw_happenings(const PanelContext& context, HappeningsView& view) {
    const game::History& history = context.campaign.history;
    if (history.lines.empty()) {
        empty_state("Nothing has happened yet. Every change will stand here, with the way back.");
        return;
    }
    const bool is_marked = is_newest_marked(context, view);
    draw_happenings_header(context, view);
    const std::vector<std::size_t> found = found_lines(history, view.search);
    if (found.empty()) {
        text_wrapped(Ink::muted, "Nothing that happened contains \"" + view.search + "\".");
        return;
    }
    ImGui::BeginChild("lines");
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(found.size()), line_height());
    while (clipper.Step())
        for (int i = clipper.DisplayStart; i < clipper.DisplayEnd; ++i) {
            const std::size_t at = found[static_cast<std::size_t>(i)];
            draw_happenings_line(
                context.campaign.calendar,
                history.lines[at],
                is_marked && at + 1 == history.lines.size()
            );
        }
    ImGui::EndChild();
}

} // namespace widgets
