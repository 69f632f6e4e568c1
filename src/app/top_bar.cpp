#include "app/top_bar.h"

#include "app/shell.h"
#include "app/shell_menus.h"
#include "game/date_text.h"
#include "game/fights.h"
#include "game/weather_report.h"
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
        std::string shown = cut + "...";
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
    return words + game::short_date_time_text(campaign);
}

// "Salt Ferry, light rain 12 C"; empty where the party is at no place.
std::string place_words(const game::Campaign& campaign, const game::Climates& climates) {
    const game::Place* place = game::current_place(campaign.places);
    if (place == nullptr) return {};
    const auto source = game::weather_source(
        campaign.places, *place, climates, game::year_clock(campaign.calendar)
    );
    if (!source) return place->name;
    const auto today = game::walk_weather(*source, game::now(campaign).day, 1);
    return place->name + ", " +
           game::short_weather(climates.phrases, today.front(), campaign.places.in_fahrenheit);
}

struct SaveWords {
    std::string text;
    Ink ink = Ink::muted;
};

SaveWords save_words(const store::SaveState& state) {
    switch (state.kind) {
    case store::SaveKind::saved: return {"saved", Ink::muted};
    case store::SaveKind::saving: return {"saving", Ink::muted};
    case store::SaveKind::not_saved: return {"! not saved: " + state.cause, Ink::harm};
    case store::SaveKind::read_only: return {"! read only: " + state.cause, Ink::harm};
    }
    return {};
}

// Draws from left to right at the height of a row of buttons.
struct Pen {
    float x = 0.0F;
    float y = 0.0F;

    void place() const { ImGui::SetCursorPos({x, y}); }

    // Text stands in the middle of the row.
    void place_text() const {
        ImGui::SetCursorPos({x, y + (widgets::row_height() - ImGui::GetTextLineHeight()) / 2.0F});
    }

    void move_on(float gap) { x += ImGui::GetItemRectSize().x + gap; }
};

void draw_scenes(ShellState& state, Pen& pen) {
    std::string& current = state.settings.scenes.current;
    for (const SceneInfo& info : scene_infos) {
        pen.place();
        if (widgets::toggle_button(info.title, current == info.key)) current = info.key;
        pen.move_on(px(4.0F));
        ImGui::SetItemTooltip("%s", info.help);
    }
    pen.x += px(12.0F);
}

// The button names what it takes back, as far as there is room.
void draw_undo(ShellState& state, Pen& pen, float room) {
    const store::CampaignDocument& document = state.campaign.document();
    const std::string undo = document.undo_label();
    const std::string redo = document.redo_label();
    const bool is_read_only = state.campaign.is_read_only();
    const auto reason = [is_read_only](bool is_possible, const char* otherwise) {
        if (is_read_only) return "The campaign is open for reading only.";
        return is_possible ? "" : otherwise;
    };
    const bool has_room = room >= widgets::button_width("Undo: ...");
    const std::string words = undo.empty() || !has_room ? "Undo" : cut_to("Undo: " + undo, room);
    pen.place();
    const char* why_not = reason(document.can_undo(), "Nothing was changed yet.");
    if (widgets::button((words + "###undo").c_str(), why_not)) state.edits.undo();
    pen.move_on(px(4.0F));
    if (document.can_undo()) ImGui::SetItemTooltip("Undo: %s (Ctrl+Z)", undo.c_str());
    pen.place();
    why_not = reason(document.can_redo(), "Nothing was undone.");
    if (widgets::button("Redo###redo", why_not)) state.edits.redo();
    pen.move_on(px(16.0F));
    if (document.can_redo()) ImGui::SetItemTooltip("Redo: %s (Ctrl+Y)", redo.c_str());
}

float menus_width() {
    float width = 0.0F;
    for (const char* caption : {"Find", "Panels", "Settings", "Help"})
        width += widgets::button_width(caption) + px(4.0F);
    return width;
}

float scenes_width() {
    float width = px(16.0F);
    for (const SceneInfo& info : scene_infos)
        width += widgets::button_width(info.title) + px(4.0F);
    return width;
}

void draw_menus(ShellState& state, Pen pen) {
    pen.place();
    if (widgets::button("Find")) state.find.wants_open = true;
    pen.move_on(px(4.0F));
    ImGui::SetItemTooltip("Find anything, do anything, ask (Ctrl+F)");
    pen.place();
    if (widgets::button("Panels")) ImGui::OpenPopup("panels menu");
    pen.move_on(px(4.0F));
    pen.place();
    if (widgets::button("Settings")) ImGui::OpenPopup("settings menu");
    pen.move_on(px(4.0F));
    pen.place();
    if (widgets::toggle_button("Help", state.is_help_open))
        state.is_help_open = !state.is_help_open;
    draw_panels_menu(state);
    draw_settings_menu(state);
    draw_find_box(state);
}

// `place`: where the party is, as far as there is room; `place_room` 0 leaves it out.
void draw_identity(
    const game::Campaign& campaign,
    const std::string& place,
    Pen& pen,
    float title_room,
    float place_room
) {
    const std::string& title = campaign.about.title;
    widgets::push_font(widgets::TextSize::name);
    pen.place_text();
    widgets::text_fitted(Ink::text, title.empty() ? "Unnamed campaign" : title, title_room);
    ImGui::PopFont();
    pen.move_on(px(16.0F));
    pen.place_text();
    widgets::text(Ink::muted, time_words(campaign));
    pen.move_on(px(16.0F));
    if (place.empty() || place_room <= 0.0F) return;
    pen.place_text();
    widgets::text_fitted(Ink::muted, place, place_room);
    pen.move_on(px(16.0F));
}

// How the parts of the bar share its width: one row if they fit, else two or three.
struct BarPlan {
    float inside = 0.0F; // width without the padding
    float title = 0.0F;
    float saved = 0.0F;
    float undo = 0.0F;  // for the button with its name
    float place = 0.0F; // 0: left out
    int rows = 1;
};

// What the place takes of the room that is over: all it needs, else what is readable, else nothing.
float room_for_place(const std::string& place, float over) {
    const float room = std::min(width_of(place), over - px(16.0F));
    const float readable = px(110.0F);
    return place.empty() || room < std::min(width_of(place), readable) ? 0.0F : room;
}

BarPlan plan_bar(
    const game::Campaign& campaign, const std::string& place, const SaveWords& save, float inside
) {
    BarPlan plan;
    plan.inside = inside;
    plan.saved = std::min(width_of(save.text), px(300.0F));
    widgets::push_font(widgets::TextSize::name);
    plan.title = std::min(width_of(campaign.about.title), px(280.0F));
    ImGui::PopFont();
    const float gap = px(16.0F);
    const float identity = plan.title + width_of(time_words(campaign)) + plan.saved + 3.0F * gap;
    const float fixed = menus_width() + widgets::button_width("Redo") + 2.0F * gap;
    const float undo_least = widgets::button_width("Undo: ...");
    if (identity + scenes_width() + fixed + undo_least <= inside) {
        const float over = inside - identity - scenes_width() - fixed;
        plan.place = room_for_place(place, over - widgets::button_width("Undo"));
        const float taken = plan.place > 0.0F ? plan.place + gap : 0.0F;
        plan.undo = std::min(over - taken, px(300.0F));
        return plan;
    }
    const bool fits_two = scenes_width() + fixed + undo_least <= inside;
    plan.rows = fits_two ? 2 : 3;
    plan.undo = std::min(inside - fixed - (fits_two ? scenes_width() : 0.0F), px(360.0F));
    plan.title = std::max(plan.title + std::min(0.0F, inside - identity), px(80.0F));
    plan.place = room_for_place(place, inside - identity);
    return plan;
}

void draw_bar(
    ShellState& state, const std::string& place, const BarPlan& plan, const SaveWords& save, Pen pen
) {
    const float left = pen.x;
    const float right = left + plan.inside;
    const float row = widgets::row_height() + px(4.0F);
    draw_identity(state.campaign.document().view(), place, pen, plan.title, plan.place);
    if (plan.rows > 1) pen.x = right - plan.saved;
    pen.place_text();
    widgets::text_fitted(save.ink, save.text, plan.saved);
    pen.move_on(px(16.0F));
    if (plan.rows > 1) pen = {left, pen.y + row};
    draw_scenes(state, pen);
    if (plan.rows > 2) pen = {left, pen.y + row};
    draw_undo(state, pen, plan.undo);
    draw_menus(state, {right - menus_width(), pen.y});
}

} // namespace

float draw_top_bar(ShellState& state, float width) {
    const SaveWords save = save_words(state.campaign.save_state());
    const float padding = px(12.0F);
    const float top = px(7.0F);
    const game::Campaign& campaign = state.campaign.document().view();
    const std::string place = place_words(campaign, state.campaign.climates());
    const BarPlan plan = plan_bar(campaign, place, save, width - 2.0F * padding);
    const auto rows = static_cast<float>(plan.rows);
    const float height = 2.0F * top + rows * widgets::row_height() + (rows - 1.0F) * px(4.0F);
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize({width, height});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {padding, top});
    ImGui::PushStyleColor(ImGuiCol_WindowBg, widgets::colour(Ink::ground));
    ImGui::Begin("###top bar", nullptr, bar_window);
    ImGui::PopStyleColor();
    ImGui::PopStyleVar();
    draw_bar(state, place, plan, save, {padding, top});
    ImGui::End();
    return height;
}

} // namespace app
