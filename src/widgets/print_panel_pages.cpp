#include "widgets/form.h"
#include "widgets/print_panel_parts.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <optional>
#include <utility>

namespace widgets {

using print::WantedPage;

namespace {

std::optional<print::PrintSource> source_of(const PanelContext& context) {
    if (context.name_lists == nullptr || context.library == nullptr ||
        context.climates == nullptr || context.prices == nullptr)
        return std::nullopt;
    return print::PrintSource{
        context.campaign,
        context.rulebook,
        *context.name_lists,
        *context.library,
        *context.climates,
        *context.prices,
        {}};
}

using Offers = std::vector<print::DetailOffer>;

Offers offers_for(const PanelContext& context, const WantedPage& page) {
    const std::optional<print::PrintSource> source = source_of(context);
    return source.has_value() ? print::detail_offers(page.key, *source) : Offers();
}

std::string words_of(const Offers& offers, const std::string& detail) {
    for (const print::DetailOffer& offer : offers)
        if (offer.detail == detail) return offer.words;
    return detail.empty() && !offers.empty() ? offers.front().words : detail;
}

// The row of a page, its name and what it is of. True when it is pressed.
bool draw_row(const WantedPage& page, const Offers& offers, bool is_open) {
    const print::PageKind* kind = print::find_page_kind(page.key);
    const std::string title(kind == nullptr ? std::string_view(page.key) : kind->title);
    const float width = ImGui::GetContentRegionAvail().x;
    const bool is_pressed = row_ground(title + "##page", width, row_height(), is_open);
    const ImVec2 at = ImGui::GetCursorPos();
    const float inset = px(8.0F);
    ImGui::SetCursorPos({at.x + inset, at.y + (row_height() - ImGui::GetTextLineHeight()) / 2.0F});
    text_fitted(Ink::text, title, width - 2.0F * inset);
    const float left = std::min(ImGui::CalcTextSize(title.c_str()).x, width) + 2.0F * inset;
    const std::string words = words_of(offers, page.detail);
    if (!words.empty() && width - left > px(60.0F)) {
        ImGui::SameLine();
        text_fitted(Ink::muted, words, width - left - inset);
    }
    ImGui::SetCursorPos({at.x, at.y + row_height() + px(2.0F)});
    return is_pressed;
}

// A field for each part.
void draw_parts(WantedPage& page, const std::vector<print::DetailField>& fields) {
    std::vector<std::string> parts = print::split_detail(page.detail, fields.size());
    const float name_width = width_of_letters(8);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::string name(fields[i].name);
        const std::string label = "##" + name;
        ImGui::AlignTextToFramePadding();
        const float left = ImGui::GetCursorPosX();
        text(Ink::muted, name);
        ImGui::SameLine(left + name_width);
        const float width = ImGui::GetContentRegionAvail().x;
        if (fields[i].choices.empty()) {
            ImGui::SetNextItemWidth(width);
            ImGui::InputText(label.c_str(), &parts[i]);
        } else if (begin_choice(label.c_str(), parts[i].empty() ? "usual" : parts[i], width)) {
            for (const std::string_view choice : fields[i].choices)
                if (choice_row(std::string(choice), parts[i] == choice)) parts[i] = choice;
            ImGui::EndCombo();
        }
    }
    page.detail = print::join_detail(parts);
}

void draw_detail(WantedPage& page, const Offers& offers) {
    const std::vector<print::DetailField> fields = print::detail_fields(page.key);
    if (!fields.empty()) {
        draw_parts(page, fields);
        return;
    }
    const std::string_view hint = print::typed_detail_hint(page.key);
    const float whole = ImGui::GetContentRegionAvail().x;
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const bool has_both = !hint.empty() && !offers.empty();
    const float width = has_both ? (whole - gap) / 2.0F : whole;
    if (!offers.empty() && begin_choice("##detail", words_of(offers, page.detail), width)) {
        for (const print::DetailOffer& offer : offers)
            if (choice_row(offer.words + "##" + offer.detail, offer.detail == page.detail))
                page.detail = offer.detail;
        ImGui::EndCombo();
    }
    if (hint.empty()) return;
    if (has_both) ImGui::SameLine();
    ImGui::SetNextItemWidth(width);
    ImGui::InputTextWithHint("##typed", std::string(hint).c_str(), &page.detail);
}

// What is done with the open row.
void draw_open_row(std::vector<WantedPage>& pages, const Offers& offers, PrintPanelView& view) {
    const std::size_t at = view.open_page;
    ImGui::Indent(px(12.0F));
    draw_detail(pages[at], offers);
    Flow flow;
    flow.next(button_width("Up"));
    const bool goes_up = button("Up", at == 0 ? "It is the first one." : "");
    flow.next(button_width("Down"));
    const bool goes_down = button("Down", at + 1 == pages.size() ? "It is the last one." : "");
    flow.next(button_width("Remove"));
    const bool goes_away = button("Remove");
    ImGui::Unindent(px(12.0F));
    if (goes_up || goes_down) {
        const std::size_t other = goes_up ? at - 1 : at + 1;
        std::swap(pages[at], pages[other]);
        view.open_page = other;
    } else if (goes_away) {
        pages.erase(pages.begin() + static_cast<std::ptrdiff_t>(at));
        view.open_page = no_open_page;
    }
}

void draw_adding(
    const PanelContext& context, std::vector<WantedPage>& pages, PrintPanelView& view
) {
    Flow flow;
    const float width = std::min(px(160.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    if (begin_choice("##add", "Add a page", width)) {
        for (const print::PageKind& kind : print::page_kinds()) {
            const std::string words = std::string(kind.title) + ": " + std::string(kind.about) +
                                      "##" + std::string(kind.key);
            if (!choice_row(words, false)) continue;
            pages.push_back({std::string(kind.key)});
            view.open_page = pages.size() - 1;
        }
        ImGui::EndCombo();
    }
    const char* set = "Set for an evening";
    flow.next(button_width(set));
    const std::optional<print::PrintSource> source = source_of(context);
    const char* why_not = source.has_value() ? "" : "What pages are made of cannot be read.";
    if (pages.empty() ? primary_button(set, why_not) : button(set, why_not)) {
        pages = print::evening_set(*source);
        view.open_page = no_open_page;
        view.side = 0;
    }
    if (pages.empty()) return;
    flow.next(button_width("Remove all"));
    if (button("Remove all")) pages.clear();
}

} // namespace

void draw_wanted_pages(const PanelContext& context, PrintPanelView& view) {
    std::vector<WantedPage>& pages = context.print_desk->choices().order.pages;
    if (pages.empty())
        empty_state(
            "Real pages for the table: plans, cards to cut out, boards to write on. Choose pages, "
            "see how they will look, and save them as PDF."
        );
    else
        heading("Pages");
    const std::vector<WantedPageState>& states = context.print_desk->state().wanted;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        ImGui::PushID(static_cast<int>(i));
        const Offers offers = offers_for(context, pages[i]);
        const bool is_open = view.open_page == i;
        if (draw_row(pages[i], offers, is_open)) {
            view.open_page = is_open ? no_open_page : i;
            if (!is_open && i < states.size()) view.side = states[i].first_side;
        } else if (is_open) {
            draw_open_row(pages, offers, view);
        }
        if (i < states.size() && !states[i].problem.empty()) complaint(states[i].problem);
        ImGui::PopID();
    }
    draw_adding(context, pages, view);
    if (pages.empty()) view = {};
}

} // namespace widgets
