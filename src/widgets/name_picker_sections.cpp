// Below the name: who got which, and what is kept for later.
#include "game/name_keeping.h"
#include "game/registering.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/name_picker_parts.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace widgets {

using game::Section;
using game::UsedName;

namespace {

std::string bearer_text(const UsedName& used) {
    if (used.who.empty()) return used.where;
    return used.where.empty() ? used.who : used.who + ", " + used.where;
}

void ask_tell(
    const PanelContext& context, const UsedName& used, std::string who, std::string where
) {
    context.edits.add(
        {Section::names, Section::registered},
        "Say who bears the name " + used.name,
        [id = used.id, who = std::move(who), where = std::move(where)](game::Campaign& campaign) {
            game::tell_used_name(campaign, id, who, where);
            return std::string();
        },
        "names/used/" + std::to_string(used.id)
    );
}

// Who and where of one used name, to be told later.
void draw_bearer_form(const PanelContext& context, NamePickerView& view, const UsedName& used) {
    const float width = ImGui::GetContentRegionAvail().x - px(70.0F);
    Flow flow;
    flow.field("who", width);
    if (auto who =
            checked_text("##bearer", used.who, view.drafts, context.now_seconds, width, check_text))
        ask_tell(context, used, *who, used.where);
    Flow::end_field();
    flow.field("where", width);
    if (auto where = checked_text(
            "##met at", used.where, view.drafts, context.now_seconds, width, check_text
        ))
        ask_tell(context, used, used.who, *where);
    Flow::end_field();
    draw_complaints(view.drafts, "##");
    static const std::vector<game::ReadyNameList> none;
    const std::string list =
        game::list_title(context.name_lists == nullptr ? none : *context.name_lists, used.list);
    if (!list.empty()) text_wrapped(Ink::muted, "From " + list + ".");
}

void draw_used_row(
    const PanelContext& context,
    NamePickerView& view,
    const EntryColumns& columns,
    const UsedName& used
) {
    ImGui::PushID(static_cast<int>(used.id));
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_open = view.opened == used.id;
    if (draw_entry_row(
            columns, used.name, bearer_text(used), {std::to_string(used.day)}, is_open
        )) {
        view.opened = is_open ? base::no_id : used.id;
        view.drafts = {};
    }
    const ImVec2 below = ImGui::GetCursorPos();
    const float width = button_width("Un-use");
    ImGui::SetCursorPos({at.x + columns.width - width, at.y + (columns.row - row_height()) / 2.0F});
    if (button("Un-use", read_only_reason(context))) ask_unuse(context, used);
    ImGui::SetCursorPos(below);
    ImGui::PopID();
}

void draw_used_names(const PanelContext& context, NamePickerView& view) {
    const game::NameBook& book = context.campaign.names;
    if (book.used.empty()) {
        text_wrapped(
            Ink::muted, "No name is used yet. \"Use it\" notes it with who, where and the day."
        );
        return;
    }
    ImGui::SetNextItemWidth(std::min(px(260.0F), ImGui::GetContentRegionAvail().x));
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "find a used name, who or where", &view.search);
    if (view.searched != view.search) {
        view.searched = view.search;
        view.found = game::search_used_names(book, view.search);
    }
    const EntryColumns columns = entry_columns(0.0F, button_width("Un-use") + px(8.0F), 1);
    draw_entry_titles(columns, {"day"});
    if (view.found.empty()) text_wrapped(Ink::muted, "No used name holds \"" + view.search + "\".");
    if (const UsedName* opened = game::find_used_name(book, view.opened)) {
        draw_used_row(context, view, columns, *opened);
        draw_bearer_form(context, view, *opened);
        return;
    }
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(view.found.size()), columns.row + px(2.0F));
    while (clipper.Step())
        for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row)
            draw_used_row(
                context, view, columns, book.used[view.found[static_cast<std::size_t>(row)]]
            );
    ImGui::Dummy({0.0F, 0.0F});
}

void draw_favourites(const PanelContext& context, NamePickerView& view) {
    const game::NameBook& book = context.campaign.names;
    if (book.favourites.empty()) {
        text_wrapped(Ink::muted, "\"Keep\" puts a name here; it goes when it is used.");
        return;
    }
    const float remove = button_width("Let go");
    const EntryColumns columns = entry_columns(0.0F, remove + px(8.0F), 0);
    static const std::vector<game::ReadyNameList> none;
    const auto& ready = context.name_lists == nullptr ? none : *context.name_lists;
    for (const game::FavouriteName& favourite : book.favourites) {
        ImGui::PushID(favourite.name.c_str());
        const ImVec2 at = ImGui::GetCursorPos();
        const std::string list = game::list_title(ready, favourite.list);
        const std::string clash = game::clash_text(view.in_play.check(favourite.name));
        std::string line = list;
        if (!list.empty() && !clash.empty()) line += "; ";
        line += clash;
        if (draw_entry_row(columns, favourite.name, line, {}, false)) {
            if (!favourite.list.empty()) view.list = favourite.list;
            view.row = {favourite.name};
            view.typed = favourite.name; // the GM's wish, whatever it is like
            view.is_stale = true;
        }
        const ImVec2 below = ImGui::GetCursorPos();
        ImGui::SetCursorPos(
            {at.x + columns.width - remove, at.y + (columns.row - row_height()) / 2.0F}
        );
        if (button("Let go", read_only_reason(context)))
            ask_favourite(context, favourite.name, favourite.list);
        ImGui::SetCursorPos(below);
        ImGui::PopID();
    }
    ImGui::Dummy({0.0F, 0.0F});
}

} // namespace

void draw_name_sections(const PanelContext& context, NamePickerView& view) {
    const game::NameBook& book = context.campaign.names;
    const auto counted = [](const char* what, std::size_t count) {
        return std::string(what) + " (" + std::to_string(count) + ")###" + what;
    };
    const std::array<std::pair<NameSection, std::string>, 3> sections{
        std::pair{NameSection::used, counted("Used", book.used.size())},
        std::pair{NameSection::favourites, counted("Kept", book.favourites.size())},
        std::pair{NameSection::own_lists, counted("Own lists", book.lists.size())}};
    ImGui::Separator();
    Flow flow;
    for (const auto& [section, label] : sections) {
        flow.next(button_width(label.c_str()));
        if (toggle_button(label.c_str(), view.section == section)) view.section = section;
    }
    const float least = row_height() * 4.0F;
    const float height = std::max(least, ImGui::GetContentRegionAvail().y);
    if (ImGui::BeginChild("section", {0.0F, height})) {
        switch (view.section) {
        case NameSection::used: draw_used_names(context, view); break;
        case NameSection::favourites: draw_favourites(context, view); break;
        case NameSection::own_lists: draw_own_lists(context, view); break;
        }
    }
    ImGui::EndChild();
}

} // namespace widgets
