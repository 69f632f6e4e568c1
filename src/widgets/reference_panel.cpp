#include "widgets/reference_panel.h"

#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/reference_page.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace widgets {

using game::ReferenceEntry;

const PanelInfo reference_info{
    "reference",
    "Reference",
    "Rules in short words with their figures, and pages of your own.",
    "Shift+F10",
    320.0F,
    200.0F};

namespace {

const ReferenceEntry* find_entry(const ReferenceView& view, const std::string& key) {
    const auto found =
        std::find_if(view.entries.begin(), view.entries.end(), [&key](const ReferenceEntry& entry) {
            return entry.key == key;
        });
    return found == view.entries.end() ? nullptr : &*found;
}

void open_entry(ReferenceView& view, const std::string& key) {
    view.opened = key;
    view.drafts = {};
}

// Takes over what has changed since the last frame.
void follow(const PanelContext& context, ReferenceView& view) {
    static const game::Reference none;
    const game::Reference& reference = context.reference == nullptr ? none : *context.reference;
    const bool is_same = view.conditions == context.rulebook.conditions &&
                         view.reference == reference &&
                         view.own_pages == context.campaign.own_pages;
    if (!is_same) {
        view.conditions = context.rulebook.conditions;
        view.reference = reference;
        view.own_pages = context.campaign.own_pages;
        view.entries = game::reference_pages(context.rulebook, &view.reference, &view.own_pages);
    }
    const std::string wanted = view.chapter + "\n" + view.search;
    if (is_same && wanted == view.found_for) return;
    view.found_for = wanted;
    view.found = game::search_reference(view.entries, view.search);
    std::erase_if(view.found, [&view](std::size_t at) {
        return !view.chapter.empty() && view.entries[at].chapter != view.chapter;
    });
}

void draw_chapter_choice(ReferenceView& view, float width) {
    const char* all = "All chapters";
    if (!begin_choice("##chapter", view.chapter.empty() ? all : view.chapter, width)) return;
    if (choice_row(all, view.chapter.empty())) view.chapter.clear();
    std::string before;
    for (const ReferenceEntry& entry : view.entries) {
        if (entry.chapter == before) continue;
        before = entry.chapter;
        if (choice_row(entry.chapter, view.chapter == entry.chapter)) view.chapter = entry.chapter;
    }
    ImGui::EndCombo();
}

void draw_new_page(const PanelContext& context, ReferenceView& view, Flow& flow) {
    const float width = std::min(px(180.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##new page");
    const bool is_entered = ImGui::InputTextWithHint(
        "##new page", "a page of your own", &view.new_title, ImGuiInputTextFlags_EnterReturnsTrue
    );
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && !check_name(view.new_title).empty()) why_not = "Type its title first.";
    flow.next(button_width("Add the page"));
    const bool is_pressed = button("Add the page", why_not);
    if ((!is_pressed && !is_entered) || !why_not.empty()) return;
    ask_own_page(context, view, view.new_title);
    view.new_title.clear();
}

void draw_reference_list(const PanelContext& context, ReferenceView& view) {
    Flow flow;
    const float width = std::min(px(180.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "Look up a rule", &view.search);
    flow.next(width);
    draw_chapter_choice(view, width);
    draw_new_page(context, view, flow);
    if (view.found.empty()) text_wrapped(Ink::muted, "Nothing to look up fits that.");
    // Where the panel is low the list keeps some height, and the whole is scrolled.
    const float height = std::max(ImGui::GetContentRegionAvail().y, px(150.0F));
    if (ImGui::BeginChild("entries", {0.0F, height})) {
        const EntryColumns columns = entry_columns(0.0F, 0.0F, 0);
        ImGuiListClipper clipper;
        clipper.Begin(static_cast<int>(view.found.size()));
        while (clipper.Step())
            for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row) {
                const ReferenceEntry& entry =
                    view.entries[view.found[static_cast<std::size_t>(row)]];
                ImGui::PushID(entry.key.c_str());
                const std::string second = entry.chapter + ": " + entry.text;
                if (draw_entry_row(columns, entry.title, second, {}, view.opened == entry.key))
                    open_entry(view, entry.key);
                ImGui::PopID();
            }
        ImGui::Dummy({0.0F, 0.0F});
    }
    ImGui::EndChild();
}

// Places in the list stand for ids here: the keys of entries are words.
void read_reference_keys(const PanelContext& context, ReferenceView& view) {
    std::vector<base::Id> shown;
    shown.reserve(view.found.size());
    base::Id opened = base::no_id;
    for (const std::size_t at : view.found) {
        shown.push_back(static_cast<base::Id>(at + 1));
        if (view.entries[at].key == view.opened) opened = shown.back();
    }
    const base::Id before = opened;
    read_entry_keys(context, shown, opened);
    if (opened == before) return;
    open_entry(view, opened == base::no_id ? std::string() : view.entries[opened - 1].key);
}

} // namespace

void draw_reference(const PanelContext& context, ReferenceView& view) {
    const Wanted wanted = take_wanted(context.selection, reference_info);
    if (!wanted.panel.empty()) open_entry(view, wanted.key);
    follow(context, view);
    if (view.entries.empty()) {
        empty_state("Rules to look up stand here, and whatever you write on pages of your own.");
        Flow flow;
        draw_new_page(context, view, flow);
        return;
    }
    read_reference_keys(context, view);
    const ReferenceEntry* opened = find_entry(view, view.opened);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && opened != nullptr ? ImGui::GetContentRegionAvail().x * 0.42F : 0.0F;
    if (is_wide || opened == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) draw_reference_list(context, view);
        ImGui::EndChild();
    }
    if (opened == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the list"))
        view.opened.clear();
    if (ImGui::BeginChild("page", {0.0F, 0.0F})) draw_reference_page(context, view, *opened);
    ImGui::EndChild();
}

} // namespace widgets
