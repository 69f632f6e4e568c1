#include "app/find_box.h"

#include "app/going_there.h"
#include "app/shell.h"
#include "game/answers.h"
#include "widgets/form.h"
#include "widgets/popup.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace app {

namespace {

using widgets::Ink;
using widgets::px;

constexpr std::size_t hits_max = 40;
constexpr std::size_t answer_lines_max = 10;
constexpr const char* popup_name = "find";

// The first word of a question, and how it is asked.
const game::AnswerTopicInfo* topic_of(const std::string& typed) {
    static const std::vector<game::AnswerTopicInfo> topics = game::answer_topics();
    const std::size_t from = typed.find_first_not_of(' ');
    if (from == std::string::npos) return nullptr;
    const std::string word = typed.substr(from, typed.find(' ', from) - from);
    const auto found =
        std::find_if(topics.begin(), topics.end(), [&word](const game::AnswerTopicInfo& topic) {
            return topic.word == word;
        });
    return found == topics.end() ? nullptr : &*found;
}

void look_for_answer(ShellState& state, FindBox& box) {
    box.answer.reset();
    box.hint.clear();
    const game::AnswerTopicInfo* topic = topic_of(box.typed);
    if (topic == nullptr) return;
    const game::AnswerContext context{
        state.campaign.rulebook(),
        &state.campaign.document().view(),
        &state.campaign.climates(),
        &state.campaign.prices(),
        &state.campaign.reference()};
    const auto answer = game::answer(context, box.typed);
    if (answer.ok())
        box.answer = answer.value();
    else if (box.typed.find(' ') != std::string::npos)
        box.hint = answer.error().message;
    else
        box.hint = "ask: " + topic->form;
}

void look_for_hits(FindBox& box) {
    box.hits = box.finder.index().find(box.typed, hits_max);
    box.chosen = std::min(box.chosen, box.hits.empty() ? 0 : box.hits.size() - 1);
}

void look(ShellState& state, FindBox& box) {
    const bool is_new = box.typed != box.found_for;
    if (is_new) {
        box.found_for = box.typed;
        box.chosen = 0;
        look_for_answer(state, box);
        box.order = typed_order(state, box.typed);
    }
    if (!is_new && box.found_in == box.finder.version()) return;
    box.found_in = box.finder.version();
    look_for_hits(box);
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells{{}};
    for (const char letter : line)
        if (letter == '\t')
            cells.emplace_back();
        else
            cells.back() += letter;
    return cells;
}

// The lines of an answer; cells stand below each other.
void draw_answer_lines(const std::vector<std::string>& lines) {
    std::vector<float> widths;
    for (const std::string& line : lines) {
        const std::vector<std::string> cells = cells_of(line);
        widths.resize(std::max(widths.size(), cells.size()), 0.0F);
        for (std::size_t at = 0; at + 1 < cells.size(); ++at)
            widths[at] = std::max(widths[at], ImGui::CalcTextSize(cells[at].c_str()).x);
    }
    for (const std::string& line : lines) {
        float x = ImGui::GetCursorPosX();
        const std::vector<std::string> cells = cells_of(line);
        for (std::size_t at = 0; at < cells.size(); ++at) {
            if (at > 0) ImGui::SameLine(x);
            widgets::text_wrapped(Ink::text, cells[at]);
            x += widths[at] + px(18.0F);
        }
    }
}

void draw_answer(const FindBox& box) {
    if (!box.hint.empty()) widgets::text_wrapped(Ink::muted, box.hint);
    if (!box.answer) return;
    widgets::push_font(widgets::TextSize::current);
    widgets::text_wrapped(Ink::accent, box.answer->title);
    ImGui::PopFont();
    const std::vector<std::string>& lines = box.answer->lines;
    const std::size_t shown = std::min(lines.size(), answer_lines_max);
    draw_answer_lines({lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(shown)});
    if (lines.size() > shown) widgets::text(Ink::muted, "...");
    if (!box.hits.empty()) ImGui::Separator();
}

// Moves the choice, and tells whether it moved.
bool read_arrows(FindBox& box) {
    const std::size_t before = box.chosen;
    if (ImGui::IsKeyPressed(ImGuiKey_DownArrow) && box.chosen + 1 < box.hits.size())
        box.chosen += 1;
    if (ImGui::IsKeyPressed(ImGuiKey_UpArrow) && box.chosen > 0) box.chosen -= 1;
    return box.chosen != before;
}

// Whether the hit was pressed.
bool draw_hit(ShellState& state, const FindBox& box, std::size_t at, float width) {
    const game::FindEntry& entry = box.finder.index().entry(box.hits[at]);
    const std::string reason = reason_against(entry.target, state);
    const ImVec2 start = ImGui::GetCursorPos();
    const float height = widgets::row_height();
    ImGui::PushID(static_cast<int>(at));
    const bool is_pressed = widgets::row_ground(
        entry.text + "###hit " + std::to_string(at), width, height, at == box.chosen
    );
    ImGui::PopID();
    const float y = start.y + (height - ImGui::GetTextLineHeight()) / 2.0F;
    const float inset = px(8.0F);
    const char* kind = kind_of(entry.target);
    const float kind_width = ImGui::CalcTextSize(kind).x;
    const float room = width - kind_width - 4.0F * inset;
    const std::string beside = reason.empty() ? entry.beside : reason;
    const float whole = ImGui::CalcTextSize(entry.text.c_str()).x;
    const float text_width = beside.empty() ? room : std::min(whole, room * 0.62F);
    ImGui::SetCursorPos({start.x + inset, y});
    widgets::text_fitted(reason.empty() ? Ink::text : Ink::muted, entry.text, text_width);
    if (!beside.empty()) {
        ImGui::SetCursorPos({start.x + text_width + 2.0F * inset, y});
        widgets::text_fitted(Ink::muted, beside, room - text_width);
    }
    ImGui::SetCursorPos({start.x + width - kind_width - inset, y});
    widgets::text(Ink::accent, kind);
    ImGui::SetCursorPos({start.x, start.y + height});
    return is_pressed;
}

void go(ShellState& state, std::size_t at) {
    const FindBox& box = state.find;
    const game::FindTarget target = box.finder.index().entry(box.hits[at]).target;
    if (!reason_against(target, state).empty()) return;
    ImGui::CloseCurrentPopup();
    go_to(state, target);
}

void carry_out_order(ShellState& state, const FindBox& box) {
    ImGui::CloseCurrentPopup();
    box.order->run(state);
}

void draw_order(ShellState& state, const FindBox& box) {
    if (box.order && widgets::primary_button((box.order->label + "###order").c_str()))
        carry_out_order(state, box);
}

void draw_hits(ShellState& state, bool has_moved, float height) {
    const FindBox& box = state.find;
    if (!ImGui::BeginChild("hits", {0.0F, height})) {
        ImGui::EndChild();
        return;
    }
    const float width = ImGui::GetContentRegionAvail().x;
    std::optional<std::size_t> pressed;
    for (std::size_t at = 0; at < box.hits.size(); ++at) {
        if (draw_hit(state, box, at, width)) pressed = at;
        if (has_moved && at == box.chosen) ImGui::SetScrollHereY();
    }
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::EndChild();
    if (pressed) go(state, *pressed);
}

void draw_no_hits(const FindBox& box) {
    if (box.typed.find_first_not_of(' ') == std::string::npos)
        widgets::text_wrapped(
            Ink::muted,
            "Names, notes, rules, creatures, panels and everything the program does; a slip of "
            "the finger is forgiven. Questions are answered here: dc level 7, odds +9 dc 20, "
            "rule cover."
        );
    else if (box.finder.is_behind())
        widgets::text(Ink::muted, "The campaign is being read ...");
    else if (!box.answer && !box.order && box.hint.empty())
        widgets::text_wrapped(Ink::muted, "Nothing like \"" + box.typed + "\" was found.");
}

void draw_field(ShellState& state, FindBox& box) {
    if (box.wants_keyboard) {
        ImGui::SetKeyboardFocusHere();
        box.wants_keyboard = false;
    }
    const float close = widgets::button_width("Close find");
    ImGui::SetNextItemWidth(
        ImGui::GetContentRegionAvail().x - close - ImGui::GetStyle().ItemSpacing.x
    );
    const bool is_entered = ImGui::InputTextWithHint(
        "##find",
        "find, do or ask",
        &box.typed,
        ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_AutoSelectAll
    );
    ImGui::SameLine();
    const bool is_closed =
        widgets::button("Close find") || ImGui::IsKeyPressed(ImGuiKey_Escape, false);
    look(state, box);
    const bool is_ordered = is_entered && box.order && box.order->takes_enter && box.chosen == 0;
    if (is_ordered)
        carry_out_order(state, box);
    else if (is_entered && box.chosen < box.hits.size())
        go(state, box.chosen);
    else if (is_entered)
        box.wants_keyboard = true;
    if (is_closed) ImGui::CloseCurrentPopup();
}

void follow_campaign(ShellState& state, FindBox& box) {
    constexpr double soon = 0.02;
    box.finder.follow(
        {state.campaign.document().view(),
         state.campaign.rulebook(),
         state.campaign.library(),
         state.campaign.reference(),
         state.campaign.prices(),
         state.campaign.document().revision()}
    );
    if (box.finder.is_behind()) widgets::ask_frame_in(soon);
}

} // namespace

void draw_find_box(ShellState& state) {
    FindBox& box = state.find;
    if (std::exchange(box.wants_open, false)) {
        state.is_help_open = false; // it would take the keyboard back
        ImGui::OpenPopup(popup_name);
        box.wants_keyboard = true;
        box.finder.look_again();
        box.found_for.clear(); // answers may have changed
        box.answer.reset();
        box.hint.clear();
    }
    const ImVec2 display = ImGui::GetIO().DisplaySize;
    const float width = std::min(px(760.0F), display.x - px(16.0F));
    const float top = std::min(px(60.0F), display.y * 0.1F);
    const float bottom = display.y - top;
    ImGui::SetNextWindowPos({(display.x - width) / 2.0F, top});
    // As wide as said, as high as what stands in it.
    ImGui::SetNextWindowContentSize({width - 2.0F * ImGui::GetStyle().WindowPadding.x, 0.0F});
    box.is_open = widgets::begin_popup(popup_name);
    if (!box.is_open) return;
    follow_campaign(state, box);
    draw_field(state, box);
    const bool has_moved = read_arrows(box);
    draw_answer(box);
    draw_order(state, box);
    if (box.hits.empty()) {
        draw_no_hits(box);
    } else {
        // Whole rows, at least one.
        const float row = widgets::row_height();
        const float room = bottom - ImGui::GetCursorScreenPos().y - px(16.0F);
        const float rows = std::min(std::floor(room / row), static_cast<float>(box.hits.size()));
        draw_hits(state, has_moved, row * std::max(rows, 1.0F));
    }
    ImGui::EndPopup();
}

} // namespace app
