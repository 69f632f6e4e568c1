#include "app/top_bar.h"

#include "app/shell.h"
#include "app/shell_menus.h"
#include "game/fights.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace app {

using widgets::Ink;
using widgets::px;

namespace {

constexpr ImGuiWindowFlags bar_window =
    ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
    ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoScrollWithMouse;

float width_of(const std::string& words) {
    return ImGui::CalcTextSize(words.c_str()).x;
}

// Cut with an ellipsis so that a button with this caption is no wider.
std::string cut_to(const std::string& words, float width) {
    if (widgets::button_width(words.c_str()) <= width) return words;
    std::string cut = words;
    while (!cut.empty()) {
        do
            cut.pop_back();
        while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0U) == 0x80U);
        if (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0x80U) != 0U) cut.pop_back();
        const std::string shown = cut + "...";
        if (widgets::button_width(shown.c_str()) <= width) return shown;
    }
    return "...";
}

std::string time_words(const game::Campaign& campaign) {
    std::string words;
    const game::Encounter& fight = campaign.encounter;
    if (fight.phase == game::Phase::running) {
        const int rest = fight.elapsed_seconds % 60;
        words = "Round " + std::to_string(fight.round) + "  " +
                std::to_string(fight.elapsed_seconds / 60) + (rest < 10 ? ":0" : ":") +
                std::to_string(rest) + "   ";
    }
    return words + game::time_text(game::now(campaign));
}

struct SaveWords {
    std::string text;
    Ink ink = Ink::muted;
};

SaveWords save_words(const SaveState& state) {
    switch (state.kind) {
    case SaveKind::saved: return {"saved", Ink::muted};
    case SaveKind::saving: return {"saving", Ink::muted};
    case SaveKind::not_saved: return {"! not saved: " + state.cause, Ink::harm};
    case SaveKind::read_only: return {"! read only: " + state.cause, Ink::harm};
    case SaveKind::memory_only: return {"! only in memory: " + state.cause, Ink::harm};
    }
    return {};
}

void draw_scenes(ShellState& state) {
    std::string& current = state.settings.scenes.current;
    for (const SceneInfo& info : scene_infos) {
        if (widgets::toggle_button(info.title, current == info.key)) current = info.key;
        ImGui::SetItemTooltip("%s", info.help);
        ImGui::SameLine(0.0F, px(4.0F));
    }
    ImGui::SameLine(0.0F, px(16.0F));
}

// The button names what it takes back, as far as there is room.
void draw_undo(ShellState& state, float room) {
    const store::CampaignDocument& document = state.campaign.document();
    const std::string undo = document.undo_label();
    const std::string redo = document.redo_label();
    const char* read_only =
        state.campaign.is_read_only() ? "The campaign is open for reading only." : "";
    const std::string words = undo.empty() ? "Undo" : cut_to("Undo: " + undo, room);
    const char* nothing = *read_only != '\0' ? read_only : "Nothing was changed yet.";
    if (widgets::button((words + "###undo").c_str(), document.can_undo() ? read_only : nothing))
        state.edits.undo();
    if (document.can_undo()) ImGui::SetItemTooltip("Undo: %s (Ctrl+Z)", undo.c_str());
    ImGui::SameLine(0.0F, px(4.0F));
    const char* none = *read_only != '\0' ? read_only : "Nothing was undone.";
    if (widgets::button("Redo###redo", document.can_redo() ? read_only : none)) state.edits.redo();
    if (document.can_redo()) ImGui::SetItemTooltip("Redo: %s (Ctrl+Y)", redo.c_str());
    ImGui::SameLine(0.0F, px(16.0F));
}

float menus_width() {
    float width = 0.0F;
    for (const char* caption : {"Panels", "Settings", "Help"})
        width += widgets::button_width(caption) + px(4.0F);
    return width;
}

float scenes_width() {
    float width = px(16.0F);
    for (const SceneInfo& info : scene_infos)
        width += widgets::button_width(info.title) + px(4.0F);
    return width;
}

void draw_menus(ShellState& state) {
    if (widgets::button("Panels")) ImGui::OpenPopup("panels menu");
    ImGui::SameLine(0.0F, px(4.0F));
    if (widgets::button("Settings")) ImGui::OpenPopup("settings menu");
    ImGui::SameLine(0.0F, px(4.0F));
    if (widgets::toggle_button("Help", state.is_help_open))
        state.is_help_open = !state.is_help_open;
    draw_panels_menu(state);
    draw_settings_menu(state);
}

void draw_identity(const game::Campaign& campaign, float title_room) {
    widgets::push_font(widgets::TextSize::name);
    const float line = ImGui::GetTextLineHeight();
    const float top = ImGui::GetCursorPosY();
    const std::string& title = campaign.about.title;
    ImGui::SetCursorPosY(top + (widgets::row_height() - line) / 2.0F);
    widgets::text_fitted(Ink::text, title.empty() ? "Unnamed campaign" : title, title_room);
    ImGui::PopFont();
    ImGui::SameLine(0.0F, px(16.0F));
    ImGui::SetCursorPosY(top + (widgets::row_height() - ImGui::GetTextLineHeight()) / 2.0F);
    widgets::text(Ink::muted, time_words(campaign));
}

void draw_save_state(const SaveState& save, float room) {
    const SaveWords words = save_words(save);
    widgets::text_fitted(words.ink, words.text, std::max(room, px(60.0F)));
}

} // namespace

float draw_top_bar(ShellState& state, float width) {
    const game::Campaign& campaign = state.campaign.document().view();
    const SaveState save = state.campaign.save_state();
    const float padding = px(12.0F);
    const float top = px(7.0F);
    const float row = widgets::row_height();
    const float gap = px(16.0F);
    widgets::push_font(widgets::TextSize::name);
    const float title = width_of(campaign.about.title);
    ImGui::PopFont();
    const float inside = width - 2.0F * padding;
    const float times = width_of(time_words(campaign));
    const float saved = std::min(width_of(save_words(save).text), px(260.0F));
    const float undo_least =
        widgets::button_width("Undo: ...") + widgets::button_width("Redo") + gap;
    const float controls = scenes_width() + undo_least + menus_width();
    const float identity = std::min(title, px(260.0F)) + times + saved + 3.0F * gap;
    const bool is_one_row = identity + controls <= inside;
    const bool is_three_rows = controls > inside;
    const float rows = is_one_row ? 1.0F : is_three_rows ? 3.0F : 2.0F;
    const float height = 2.0F * top + rows * row + (rows - 1.0F) * px(4.0F);
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize({width, height});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {padding, top});
    ImGui::PushStyleColor(ImGuiCol_WindowBg, widgets::colour(Ink::ground));
    ImGui::Begin("###top bar", nullptr, bar_window);
    ImGui::PopStyleColor();
    ImGui::SetCursorPos({padding, top});
    const float title_room = is_one_row ? px(260.0F) : inside - times - saved - 2.0F * gap;
    draw_identity(campaign, std::max(title_room, px(80.0F)));
    const auto start_row = [&](float number) {
        ImGui::SetCursorPos({padding, top + number * (row + px(4.0F))});
    };
    float undo_room = inside - scenes_width() - menus_width() - widgets::button_width("Redo") - gap;
    if (is_one_row) {
        undo_room = std::min(px(260.0F), undo_room - identity);
        const float used =
            scenes_width() + menus_width() + gap + widgets::button_width("Redo") + undo_room;
        ImGui::SameLine(padding + inside - used - saved - gap);
    } else {
        ImGui::SameLine(padding + inside - saved);
    }
    ImGui::SetCursorPosY(top + (row - ImGui::GetTextLineHeight()) / 2.0F);
    draw_save_state(save, saved);
    if (is_one_row) {
        ImGui::SameLine(0.0F, gap);
        ImGui::SetCursorPosY(top);
    } else {
        start_row(1.0F);
    }
    draw_scenes(state);
    if (is_three_rows) {
        start_row(2.0F);
        undo_room = inside - menus_width() - widgets::button_width("Redo") - gap;
    }
    draw_undo(state, std::min(undo_room, px(360.0F)));
    ImGui::SetCursorPosX(padding + inside - menus_width());
    draw_menus(state);
    ImGui::End();
    ImGui::PopStyleVar();
    return height;
}

} // namespace app
