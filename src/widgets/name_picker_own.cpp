// Lists of the GM's own: written, pasted, taken from a file.
#include "game/own_name_lists.h"
#include "game/registering.h"
#include "widgets/entry_list.h"
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

using game::NameBook;
using game::NameList;

namespace {

void ask_add_names(
    const PanelContext& context,
    OwnListView& own,
    const NameList& list,
    std::vector<std::string> names
) {
    if (names.empty()) {
        own.message = "There is no name in it.";
        return;
    }
    NameBook trial = context.campaign.names; // what will be new
    const std::size_t added = game::add_to_name_list(trial, list.id, names);
    const std::size_t known = names.size() - added;
    own.message = std::to_string(added) + (added == 1 ? " name" : " names") + " added" +
                  (known > 0 ? ", " + std::to_string(known) + " left out" : "") + ".";
    if (added == 0) return;
    context.edits.add(
        &game::Campaign::names,
        "Add names to " + list.name,
        [id = list.id, names = std::move(names)](NameBook& book) {
            game::add_to_name_list(book, id, names);
        }
    );
}

void draw_import(const PanelContext& context, OwnListView& own, const NameList& list) {
    if (context.read_text == nullptr) return;
    const float take = button_width("Take from file");
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const float room = ImGui::GetContentRegionAvail().x;
    ImGui::SetNextItemWidth(std::max(room - take - gap, row_height() * 2.0F));
    ImGui::InputTextWithHint("##path", "a text file: /home/you/names.txt", &own.path);
    same_line_if_fits(take);
    const std::string refusal = read_only_reason(context);
    const bool is_empty = own.path.empty();
    if (!button(
            "Take from file",
            !refusal.empty() ? refusal
            : is_empty       ? "Type its path first."
                             : ""
        ))
        return;
    const base::Result<std::string> text = (*context.read_text)(own.path);
    if (!text.ok()) {
        own.message = text.error().message;
        return;
    }
    ask_add_names(context, own, list, game::split_names(text.value()));
}

void draw_kind_choice(const PanelContext& context, Flow& flow, const NameList& list) {
    constexpr std::array kinds{
        game::Kind::person,
        game::Kind::place,
        game::Kind::creature,
        game::Kind::item,
        game::Kind::faction};
    const float width = px(120.0F);
    flow.field("for a", width);
    if (begin_choice("##kind", game::kind_word(list.kind), width)) {
        for (const game::Kind kind : kinds)
            if (choice_row(game::kind_word(kind), kind == list.kind) && !context.is_read_only)
                context.edits.add(
                    &game::Campaign::names,
                    "Change what " + list.name + " is for",
                    [id = list.id, kind](NameBook& book) {
                        game::set_name_list_kind(book, id, kind);
                    }
                );
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_names_of(const PanelContext& context, const NameList& list) {
    const float remove = button_width("Remove");
    const EntryColumns columns = entry_columns(0.0F, remove + px(8.0F), 0);
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(list.names.size()), columns.row + px(2.0F));
    while (clipper.Step())
        for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row) {
            const std::string& name = list.names[static_cast<std::size_t>(row)];
            ImGui::PushID(row);
            const ImVec2 at = ImGui::GetCursorPos();
            ImGui::SetCursorPosY(at.y + (columns.row - ImGui::GetTextLineHeight()) / 2.0F);
            text_fitted(Ink::text, name, columns.name);
            ImGui::SetCursorPos(
                {at.x + columns.width - remove, at.y + (columns.row - row_height()) / 2.0F}
            );
            if (button("Remove", read_only_reason(context)))
                context.edits.add(
                    &game::Campaign::names,
                    "Remove " + name + " from " + list.name,
                    [id = list.id, name](NameBook& book) {
                        game::remove_from_name_list(book, id, name);
                    }
                );
            ImGui::SetCursorPos({at.x, at.y + columns.row + px(2.0F)});
            ImGui::PopID();
        }
    ImGui::Dummy({0.0F, 0.0F});
}

void draw_open_list(const PanelContext& context, NamePickerView& view, const NameList& list) {
    OwnListView& own = view.own;
    const std::string refusal = read_only_reason(context);
    Flow flow;
    flow.next(button_width("All lists"));
    if (button("All lists")) own.opened = base::no_id;
    const float width = std::min(px(220.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    if (own.wants_name) {
        give_keyboard_to_next_field();
        own.wants_name = false;
    }
    if (auto name = checked_text(
            "##list name", list.name, own.drafts, context.now_seconds, width, check_name
        )) {
        if (view.list == list.name) view.list = *name;
        context.edits.add(
            &game::Campaign::names,
            "Rename " + list.name + " to " + *name,
            [id = list.id, name = *name](NameBook& book) {
                game::rename_name_list(book, id, name);
            },
            "names/list/" + std::to_string(list.id)
        );
    }
    draw_kind_choice(context, flow, list);
    flow.next(button_width("Delete list"));
    if (button("Delete list", refusal))
        context.edits.add(
            &game::Campaign::names,
            "Delete the list " + list.name,
            [id = list.id](NameBook& book) { game::remove_name_list(book, id); }
        );
    draw_complaints(own.drafts, "##list name");
    text(Ink::muted, "Type or paste names: one a line, or with commas between.");
    ImGui::InputTextMultiline(
        "##pasted", &own.pasted, {ImGui::GetContentRegionAvail().x, row_height() * 2.5F}
    );
    const bool is_empty = own.pasted.empty();
    if (button(
            "Add to the list",
            !refusal.empty() ? refusal
            : is_empty       ? "Nothing is typed."
                             : ""
        )) {
        ask_add_names(context, own, list, game::split_names(own.pasted));
        own.pasted.clear();
    }
    draw_import(context, own, list);
    if (!own.message.empty()) text_wrapped(Ink::muted, own.message);
    draw_names_of(context, list);
}

} // namespace

void ask_new_list(const PanelContext& context, NamePickerView& view) {
    context.edits.add(&game::Campaign::names, "Begin a list of names", [](NameBook& book) {
        game::add_name_list(book, "Own names", game::Kind::person);
    });
    view.section = NameSection::own_lists;
    view.own = {};
    view.own.opened = context.campaign.names.next_id;
    view.own.wants_name = true;
}

void draw_own_lists(const PanelContext& context, NamePickerView& view) {
    const NameBook& book = context.campaign.names;
    if (const NameList* list = game::find_name_list(book, view.own.opened)) {
        draw_open_list(context, view, *list);
        return;
    }
    if (book.lists.empty())
        text_wrapped(
            Ink::muted, "Write, paste or take from a file the names you want to draw from."
        );
    if (button("New list", read_only_reason(context))) ask_new_list(context, view);
    const EntryColumns columns = entry_columns(0.0F, 0.0F, 1);
    for (const NameList& list : book.lists) {
        ImGui::PushID(static_cast<int>(list.id));
        if (draw_entry_row(
                columns,
                list.name,
                game::kind_word(list.kind),
                {std::to_string(list.names.size())},
                false
            )) {
            view.own = {};
            view.own.opened = list.id;
        }
        ImGui::PopID();
    }
    ImGui::Dummy({0.0F, 0.0F});
}

} // namespace widgets
