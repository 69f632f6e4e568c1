// Searching and picking a condition: by typing, by arrow keys, by a press.
#include "widgets/condition_picker_parts.h"
#include "widgets/form.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <utility>

namespace widgets {

namespace {

std::string lower(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    return result;
}

// How well a condition fits what is typed; 0: not at all. Its name counts before its effect.
int fit(const rules::ConditionRule& rule, const std::string& search) {
    if (search.empty()) return 1;
    const std::size_t at = lower(rule.name).find(search);
    if (at == 0) return 3;
    if (at != std::string::npos) return 2;
    return lower(rule.summary).find(search) != std::string::npos ? 1 : 0;
}

std::size_t recency(const ConditionPickerView& view, const std::string& key) {
    const auto found = std::find(view.recent.begin(), view.recent.end(), key);
    return static_cast<std::size_t>(found - view.recent.begin());
}

// Best fit first, then those given last, then by name as the rulebook lists them.
std::vector<const rules::ConditionRule*>
listed_conditions(const PanelContext& context, const ConditionPickerView& view) {
    const std::string search = lower(view.search);
    std::vector<const rules::ConditionRule*> listed;
    for (const rules::ConditionRule& rule : context.rulebook.conditions) {
        if (fit(rule, search) > 0) listed.push_back(&rule);
    }
    std::stable_sort(listed.begin(), listed.end(), [&](const auto* one, const auto* other) {
        const int fit_one = fit(*one, search);
        const int fit_other = fit(*other, search);
        if (fit_one != fit_other) return fit_one > fit_other;
        return recency(view, one->key) < recency(view, other->key);
    });
    return listed;
}

// Moves the pick up or down; below the last condition stands the effect in own words.
void step_pick_in_list(const PanelContext& context, ConditionPickerView& view, int step) {
    const auto listed = listed_conditions(context, view);
    const auto found = std::find_if(listed.begin(), listed.end(), [&](const auto* rule) {
        return !view.is_own && rule->key == view.key;
    });
    const auto last = static_cast<std::ptrdiff_t>(listed.size());
    const std::ptrdiff_t place =
        std::clamp<std::ptrdiff_t>((found - listed.begin()) + step, 0, last);
    if (place == last)
        pick_condition(context, view, {});
    else
        pick_condition(context, view, listed[static_cast<std::size_t>(place)]->key);
    view.wants_scroll = true;
}

struct SearchKeys {
    int step = 0;
};

int on_search_key(ImGuiInputTextCallbackData* data) {
    auto* keys = static_cast<SearchKeys*>(data->UserData);
    if (data->EventKey == ImGuiKey_UpArrow) keys->step = -1;
    if (data->EventKey == ImGuiKey_DownArrow) keys->step = 1;
    return 0;
}

// A row: the name, and below it in one line what it does.
bool draw_list_row(const std::string& name, const std::string& summary, bool is_on) {
    const float width = ImGui::GetContentRegionAvail().x;
    push_font(TextSize::small);
    const float small_line = ImGui::GetTextLineHeight();
    ImGui::PopFont();
    const float lines = ImGui::GetTextLineHeight() + small_line + px(6.0F);
    const float height = std::max(row_height(), lines);
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_pressed = row_ground(name + "###condition", width, height, is_on);
    const float inset = px(10.0F);
    ImGui::SetCursorPos({at.x + inset, at.y + (height - lines) / 2.0F + px(2.0F)});
    ImGui::PushFont(look().fonts.strong);
    text_fitted(Ink::text, name, width - inset);
    ImGui::PopFont();
    push_font(TextSize::small);
    ImGui::SetCursorPos({at.x + inset, at.y + (height + lines) / 2.0F - small_line - px(3.0F)});
    text_fitted(Ink::muted, summary, width - inset);
    ImGui::PopFont();
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
    return is_pressed;
}

void follow(ConditionPickerView& view, float top) {
    if (!std::exchange(view.wants_scroll, false)) return;
    const float bottom = ImGui::GetCursorPosY();
    if (top < ImGui::GetScrollY()) ImGui::SetScrollY(top);
    if (bottom > ImGui::GetScrollY() + ImGui::GetWindowHeight())
        ImGui::SetScrollY(bottom - ImGui::GetWindowHeight());
}

} // namespace

void pick_condition(const PanelContext& context, ConditionPickerView& view, std::string_view key) {
    view.is_own = key.empty();
    view.key = std::string(key);
    view.complaint.clear();
    const auto known = view.last_choices.find(view.key);
    view.choice = known == view.last_choices.end() ? ConditionChoice{} : known->second;
    if (view.is_own) view.choice.name = view.search;
    // Whoever was meant the last time may be gone.
    if (game::find_combatant(context.campaign.encounter, view.choice.duration.whose_turn) ==
        nullptr) {
        view.choice.duration.whose_turn = base::no_id;
        if (view.choice.turn_of == TurnOf::somebody) view.choice.turn_of = TurnOf::own;
    }
}

bool draw_condition_search(const PanelContext& context, ConditionPickerView& view) {
    if (std::exchange(view.wants_search_focus, false)) ImGui::SetKeyboardFocusHere();
    const bool is_escaped = ImGui::IsKeyPressed(ImGuiKey_Escape, false) &&
                            ImGui::GetActiveID() == ImGui::GetID("##search");
    SearchKeys keys;
    const std::string before = view.search;
    ImGui::SetNextItemWidth(-1.0F);
    const bool is_entered = ImGui::InputTextWithHint(
        "##search",
        "type to find a condition, or words of your own",
        &view.search,
        ImGuiInputTextFlags_CallbackHistory | ImGuiInputTextFlags_EnterReturnsTrue,
        &on_search_key,
        &keys
    );
    if (is_escaped) {
        ImGui::CloseCurrentPopup();
        return false;
    }
    if (view.search != before) {
        const auto listed = listed_conditions(context, view);
        pick_condition(
            context, view, listed.empty() ? std::string_view() : std::string_view(listed[0]->key)
        );
        view.wants_scroll = true;
    }
    if (keys.step != 0) step_pick_in_list(context, view, keys.step);
    return is_entered;
}

void draw_condition_list(const PanelContext& context, ConditionPickerView& view) {
    for (const rules::ConditionRule* rule : listed_conditions(context, view)) {
        ImGui::PushID(rule->key.c_str());
        const float top = ImGui::GetCursorPosY();
        const bool is_on = !view.is_own && rule->key == view.key;
        if (draw_list_row(rule->name, rule->summary, is_on))
            pick_condition(context, view, rule->key);
        if (is_on) follow(view, top);
        ImGui::PopID();
    }
    const float top = ImGui::GetCursorPosY();
    if (draw_list_row("In your own words", "A name, and the numbers it changes.", view.is_own))
        pick_condition(context, view, {});
    if (view.is_own) follow(view, top);
    ImGui::Dummy({0.0F, 0.0F});
}

} // namespace widgets
