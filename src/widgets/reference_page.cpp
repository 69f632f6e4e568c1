#include "widgets/reference_page.h"

#include "game/own_page_keeping.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <algorithm>
#include <functional>

namespace widgets {

using game::OwnPage;
using game::ReferenceEntry;

namespace {

void ask_page(
    const PanelContext& context,
    base::Id page,
    std::string label,
    const std::string& typed_in,
    std::function<void(OwnPage&)> change
) {
    context.edits.add(
        &game::Campaign::own_pages,
        std::move(label),
        [page, change = std::move(change)](game::OwnPages& pages) {
            if (OwnPage* found = game::find_own_page(pages, page)) change(*found);
        },
        "own page/" + std::to_string(page) + typed_in
    );
}

// Wide tables are scrolled sideways, so that no figure is cut.
void draw_figures(const ReferenceEntry& entry) {
    const auto columns = static_cast<int>(entry.columns.size());
    const float gap = px(18.0F);
    float width = 0.0F;
    std::vector<float> widths;
    for (std::size_t at = 0; at < entry.columns.size(); ++at) {
        float widest = ImGui::CalcTextSize(entry.columns[at].c_str()).x;
        for (const std::vector<std::string>& row : entry.rows)
            widest = std::max(widest, ImGui::CalcTextSize(row[at].c_str()).x);
        widths.push_back(widest + gap);
        width += widest + gap;
    }
    const bool is_wide = width > ImGui::GetContentRegionAvail().x;
    const float line = ImGui::GetTextLineHeightWithSpacing() + px(2.0F);
    const float height = line * static_cast<float>(entry.rows.size() + 1) +
                         (is_wide ? ImGui::GetStyle().ScrollbarSize + px(4.0F) : 0.0F);
    ImGui::BeginChild(
        "figures", {0.0F, height}, ImGuiChildFlags_None, ImGuiWindowFlags_HorizontalScrollbar
    );
    const float left = ImGui::GetCursorPosX();
    const float top = ImGui::GetCursorPosY();
    const auto draw_row = [&](std::size_t row, const std::vector<std::string>& cells, Ink ink) {
        float x = left;
        for (int at = 0; at < columns; ++at) {
            ImGui::SetCursorPos({x, top + line * static_cast<float>(row)});
            text(ink, cells[static_cast<std::size_t>(at)]);
            x += widths[static_cast<std::size_t>(at)];
        }
    };
    draw_row(0, entry.columns, Ink::muted);
    for (std::size_t row = 0; row < entry.rows.size(); ++row)
        draw_row(row + 1, entry.rows[row], Ink::text);
    ImGui::SetCursorPos({left, top});
    ImGui::Dummy({width, line * static_cast<float>(entry.rows.size() + 1)});
    ImGui::EndChild();
}

void draw_rule(const ReferenceEntry& entry) {
    text_wrapped(Ink::text, entry.text);
    ImGui::Dummy({0.0F, px(2.0F)});
    for (const std::string& point : entry.points) {
        const float left = ImGui::GetCursorPosX();
        text(Ink::muted, "-");
        ImGui::SameLine(left + px(14.0F));
        text_wrapped(Ink::text, point);
    }
    if (!entry.rows.empty()) {
        ImGui::Dummy({0.0F, px(2.0F)});
        draw_figures(entry);
    }
    push_font(TextSize::small);
    text_wrapped(Ink::muted, "Source: " + entry.source);
    ImGui::PopFont();
}

void draw_own_page(const PanelContext& context, ReferenceView& view, const OwnPage& page) {
    ImGui::BeginDisabled(context.is_read_only);
    Flow flow;
    const float width = px(230.0F);
    flow.field("Title", width);
    const auto title =
        checked_text("##title", page.title, view.drafts, context.now_seconds, width, check_name);
    Flow::end_field();
    const char* remove = "Remove this page";
    flow.next(button_width(remove));
    if (button(remove, read_only_reason(context)))
        context.edits.add(
            &game::Campaign::own_pages,
            "Remove the page " + page.title,
            [id = page.id](game::OwnPages& pages) { game::remove_own_page(pages, id); }
        );
    draw_complaints(view.drafts, "##title");
    const float height = std::max(px(120.0F), ImGui::GetContentRegionAvail().y - px(8.0F));
    const auto typed = long_text("##text", page.text, view.drafts, context.now_seconds, height);
    draw_complaints(view.drafts, "##text");
    if (title.has_value())
        ask_page(
            context,
            page.id,
            "The page " + page.title + " is now called " + *title,
            "title",
            [words = *title](OwnPage& changed) { changed.title = words; }
        );
    if (typed.has_value())
        ask_page(
            context,
            page.id,
            "Write on the page " + page.title,
            "text",
            [words = *typed](OwnPage& changed) { changed.text = words; }
        );
    ImGui::EndDisabled();
}

} // namespace

void ask_own_page(const PanelContext& context, ReferenceView& view, const std::string& title) {
    context.edits.add(
        &game::Campaign::own_pages,
        "Add the page " + title,
        [title](game::OwnPages& pages) { game::add_own_page(pages, title); }
    );
    view.opened = game::own_page_key(context.campaign.own_pages.next_id);
    view.drafts = {};
}

void draw_reference_page(
    const PanelContext& context, ReferenceView& view, const ReferenceEntry& entry
) {
    ImGui::PushID(entry.key.c_str());
    push_font(TextSize::name);
    text_wrapped(Ink::text, entry.title);
    ImGui::PopFont();
    text(Ink::muted, entry.chapter);
    const OwnPage* own =
        game::find_own_page(context.campaign.own_pages, game::own_page_of(entry.key));
    if (own != nullptr)
        draw_own_page(context, view, *own);
    else
        draw_rule(entry);
    ImGui::PopID();
}

} // namespace widgets
