#include "widgets/register_panel.h"

#include "game/registering.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/kind_ink.h"
#include "widgets/read_only.h"
#include "widgets/register_parts.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>

namespace widgets {

using game::Kind;
using game::RegisterEntry;

const PanelInfo register_info{
    "register",
    "Register",
    "People, places, creatures, items and factions, and where each is spoken of.",
    "Shift+F3",
    380.0F,
    300.0F};

std::optional<Kind> draw_kind_choice(Flow& flow, const std::vector<Kind>& chosen, const char* id) {
    constexpr std::array kinds{
        Kind::person, Kind::place, Kind::creature, Kind::item, Kind::faction};
    std::optional<Kind> pressed;
    for (const Kind kind : kinds) {
        const std::string label =
            std::string(game::kind_letter(kind)) + "  " + game::kind_word(kind) + "##" + id;
        flow.next(button_width(label.c_str()));
        const bool is_on = std::find(chosen.begin(), chosen.end(), kind) != chosen.end();
        ImGui::PushStyleColor(ImGuiCol_Text, colour(ink_of_kind(kind)));
        if (toggle_button(label.c_str(), is_on)) pressed = kind;
        ImGui::PopStyleColor();
    }
    return pressed;
}

static std::uint64_t revision_of(const game::Campaign& campaign) {
    return campaign.history.lines.empty() ? 0 : campaign.history.lines.back().revision;
}

static void ask_entering(const PanelContext& context, RegisterView& view) {
    context.edits.add(
        {game::Section::registered},
        "Enter " + view.new_name + " in the Register",
        [name = view.new_name, kind = view.new_kind](game::Campaign& campaign) {
            game::enter(campaign, name, kind);
            return std::string();
        }
    );
    const RegisterEntry* known =
        game::find_registered_name(context.campaign.registered, view.new_name);
    view.opened = known == nullptr ? context.campaign.registered.next_id : known->id;
    view.new_name.clear();
}

static void draw_entering(const PanelContext& context, RegisterView& view) {
    Flow flow;
    const float width = std::min(px(220.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##new name");
    const bool is_entered = ImGui::InputTextWithHint(
        "##new name", "a new name", &view.new_name, ImGuiInputTextFlags_EnterReturnsTrue
    );
    if (const auto kind = draw_kind_choice(flow, {view.new_kind}, "new")) view.new_kind = *kind;
    flow.next(button_width("Enter it"));
    const bool has_name = !check_name(view.new_name).empty();
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && has_name) why_not = "Type a name first.";
    const bool is_pressed = button("Enter it", why_not);
    if ((is_pressed || is_entered) && why_not.empty()) ask_entering(context, view);
}

static void draw_search(RegisterView& view) {
    Flow flow;
    const float width = std::min(px(220.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##find");
    ImGui::InputTextWithHint("##find", "find a name or a word", &view.query.text);
    std::vector<Kind>& kinds = view.query.kinds;
    if (const auto kind = draw_kind_choice(flow, kinds, "find")) {
        if (std::erase(kinds, *kind) == 0) kinds.push_back(*kind);
    }
}

static void look_up(const PanelContext& context, RegisterView& view) {
    const std::uint64_t revision = revision_of(context.campaign);
    const bool is_new = view.found_at != revision || view.found_for != view.query ||
                        view.found.size() > context.campaign.registered.entries.size();
    if (!is_new) return;
    view.found_at = revision;
    view.found_for = view.query;
    view.found = game::search_register(context.campaign.registered, view.query);
}

static std::string second_line(const game::Register& registered, const RegisterEntry& entry) {
    std::string line = entry.summary;
    const RegisterEntry* place = game::find_register_entry(registered, entry.place);
    if (place != nullptr) line += (line.empty() ? "" : "; ") + place->name;
    return line;
}

static void draw_register_list(const PanelContext& context, RegisterView& view) {
    draw_entering(context, view);
    ImGui::Separator();
    draw_search(view);
    look_up(context, view);
    if (view.found.empty()) text_wrapped(Ink::muted, "Nothing in the Register fits that.");
    const float mark = ImGui::CalcTextSize("m").x + px(16.0F);
    const EntryColumns columns = entry_columns(mark, 0.0F, 0);
    if (ImGui::BeginChild("entries", {0.0F, 0.0F})) {
        ImGuiListClipper clipper;
        clipper.Begin(static_cast<int>(view.found.size()));
        while (clipper.Step()) {
            for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row) {
                const RegisterEntry& entry =
                    context.campaign.registered.entries[view.found[static_cast<std::size_t>(row)]];
                ImGui::PushID(static_cast<int>(entry.id));
                const ImVec2 at = ImGui::GetCursorPos();
                const bool is_pressed = draw_entry_row(
                    columns,
                    entry.name,
                    second_line(context.campaign.registered, entry),
                    {},
                    view.opened == entry.id
                );
                const ImVec2 below = ImGui::GetCursorPos();
                ImGui::SetCursorPos(
                    {at.x + px(8.0F), at.y + (columns.row - ImGui::GetTextLineHeight()) / 2.0F}
                );
                text(ink_of_kind(entry.kind), game::kind_letter(entry.kind));
                ImGui::SetCursorPos(below);
                ImGui::PopID();
                if (!is_pressed) continue;
                view.opened = entry.id;
                view.drafts = {};
                view.is_naming = false;
            }
        }
        ImGui::Dummy({0.0F, 0.0F});
    }
    ImGui::EndChild();
}

static void read_register_keys(const PanelContext& context, RegisterView& view) {
    std::vector<base::Id> shown;
    shown.reserve(view.found.size());
    const auto& entries = context.campaign.registered.entries;
    for (const std::size_t place : view.found)
        if (place < entries.size()) shown.push_back(entries[place].id);
    const base::Id before = view.opened;
    read_entry_keys(context, shown, view.opened);
    if (view.opened == before) return;
    view.drafts = {};
    view.is_naming = false;
}

void draw_register(const PanelContext& context, RegisterView& view) {
    if (context.selection.wanted_entry != base::no_id) {
        view.opened = context.selection.wanted_entry;
        context.selection.wanted_entry = base::no_id;
        view.drafts = {};
    }
    if (context.campaign.registered.entries.empty()) {
        empty_state("Whoever and whatever the party meets stands here: people, places, creatures, "
                    "items, factions. Names that you use or light up in your notes come by "
                    "themselves.");
        draw_entering(context, view);
        return;
    }
    read_register_keys(context, view);
    const RegisterEntry* opened =
        game::find_register_entry(context.campaign.registered, view.opened);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && opened != nullptr ? ImGui::GetContentRegionAvail().x * 0.42F : 0.0F;
    if (is_wide || opened == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) draw_register_list(context, view);
        ImGui::EndChild();
    }
    if (opened == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the Register"))
        view.opened = base::no_id;
    if (ImGui::BeginChild("sheet", {0.0F, 0.0F})) draw_register_sheet(context, view, *opened);
    ImGui::EndChild();
}

} // namespace widgets
