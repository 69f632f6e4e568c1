#include "app/messages.h"

#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace app {

using widgets::Ink;
using widgets::px;

namespace {

constexpr std::size_t shown_at_once = 3; // more wait until one is dismissed

// The buttons stand on the right; the text wraps in what is left.
void draw_line(const std::string& text, float buttons) {
    const float right = ImGui::GetContentRegionMax().x;
    ImGui::AlignTextToFramePadding();
    ImGui::PushTextWrapPos(right - buttons - px(12.0F));
    widgets::text(Ink::text, text);
    ImGui::PopTextWrapPos();
    ImGui::SameLine(right - buttons);
}

void draw_choice(OpenCampaign& campaign) {
    const char* ours = "Keep ours";
    const char* theirs = "Take theirs";
    draw_line(
        "The campaign file was changed by something else while it is open here. Both versions are "
        "kept on the disk; choose which one goes on.",
        widgets::button_width(ours) + widgets::button_width(theirs) + px(8.0F)
    );
    if (widgets::button(ours)) campaign.keep_ours();
    ImGui::SameLine();
    if (widgets::button(theirs)) campaign.take_theirs();
}

// The own place cannot be written: what was done is in memory and safe elsewhere by one press.
void draw_other_place(Messages& messages, OpenCampaign& campaign, const std::string& cause) {
    const char* save = "Save a copy there";
    const float field = px(280.0F);
    draw_line(
        "Not saved: " + cause + " It is tried again by itself; everything stays here meanwhile.",
        field + widgets::button_width(save) + px(8.0F)
    );
    ImGui::SetNextItemWidth(field);
    ImGui::InputTextWithHint("##copy", "another place, FILE.json", &messages.copy_to);
    ImGui::SameLine();
    const bool is_named = !messages.copy_to.empty();
    if (widgets::button(save, is_named ? "" : "Name a file first, such as /media/stick/copy.json."))
        campaign.save_copy_to(messages.copy_to);
}

} // namespace

void Messages::add(std::string text) {
    if (std::find(texts.begin(), texts.end(), text) == texts.end())
        texts.push_back(std::move(text));
}

float draw_messages(Messages& messages, OpenCampaign& campaign, float x, float y, float width) {
    const store::SaveState save = campaign.save_state();
    const bool has_choice = save.is_changed_outside;
    const bool has_trouble = save.kind == store::SaveKind::not_saved && !has_choice;
    if (messages.texts.empty() && !has_choice && !has_trouble) return 0.0F;
    ImGui::SetNextWindowPos({x, y});
    ImGui::SetNextWindowSizeConstraints({width, 0.0F}, {width, px(400.0F)});
    ImGui::PushStyleColor(ImGuiCol_WindowBg, widgets::colour(Ink::raised));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {px(16.0F), px(6.0F)});
    ImGui::Begin(
        "###messages",
        nullptr,
        ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
            ImGuiWindowFlags_AlwaysAutoResize | ImGuiWindowFlags_NoFocusOnAppearing
    );
    if (has_choice) draw_choice(campaign);
    if (has_trouble) draw_other_place(messages, campaign, save.cause);
    std::size_t dismissed = messages.texts.size();
    for (std::size_t i = 0; i < std::min(messages.texts.size(), shown_at_once); ++i) {
        ImGui::PushID(static_cast<int>(i));
        draw_line(messages.texts[i], widgets::button_width("Dismiss"));
        if (widgets::button("Dismiss")) dismissed = i;
        ImGui::PopID();
    }
    if (messages.texts.size() > shown_at_once)
        widgets::text(
            Ink::muted,
            "and " + std::to_string(messages.texts.size() - shown_at_once) + " more behind these"
        );
    if (dismissed < messages.texts.size())
        messages.texts.erase(messages.texts.begin() + static_cast<std::ptrdiff_t>(dismissed));
    const ImVec2 from = ImGui::GetWindowPos();
    const float height = ImGui::GetWindowHeight();
    ImGui::GetWindowDrawList()->AddRectFilled(
        from, {from.x + px(5.0F), from.y + height}, widgets::colour_u32(Ink::accent)
    );
    ImGui::End();
    ImGui::PopStyleVar();
    ImGui::PopStyleColor();
    return height;
}

} // namespace app
