#include "widgets/print_panel.h"

#include "widgets/campaign_path.h"
#include "widgets/entry_list.h"
#include "widgets/form.h"
#include "widgets/print_panel_parts.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <functional>

namespace widgets {

const PanelInfo print_panel_info{
    "print",
    "Print",
    "Pages on paper: which, on what paper, and how they will look. Saved as PDF.",
    "Ctrl+P",
    360.0F,
    300.0F};

namespace {

void draw_progress(PrintDesk& desk) {
    const PrintState& state = desk.state();
    if (state.doing.empty()) {
        if (state.problem.empty())
            text(
                Ink::muted,
                state.pages == 0
                    ? std::string("No page yet.")
                    : std::to_string(state.pages) +
                          (state.pages == 1 ? " page on " : " pages on ") +
                          std::to_string(state.sides) + (state.sides == 1 ? " side." : " sides.")
            );
        return;
    }
    const std::string words = state.all == 0 ? state.doing
                                             : state.doing + ": " + std::to_string(state.done) +
                                                   " of " + std::to_string(state.all);
    Flow flow;
    const float width = std::min(px(240.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::ProgressBar(
        state.all == 0 ? 0.0F : static_cast<float>(state.done) / static_cast<float>(state.all),
        {width, row_height()},
        words.c_str()
    );
    flow.next(button_width("Stop"));
    if (button("Stop")) desk.stop();
}

void draw_saving(const PanelContext& context, PrintPanelView& view) {
    PrintDesk& desk = *context.print_desk;
    PrintChoices& choices = desk.choices();
    const std::string usual = beside_campaign(context, "-pages.pdf");
    ImGui::SetNextItemWidth(std::min(px(360.0F), ImGui::GetContentRegionAvail().x));
    ImGui::InputTextWithHint("##path", usual.c_str(), &view.path);
    std::string why_not;
    if (choices.order.pages.empty())
        why_not = "Choose a page first.";
    else if (!view.path.empty() && !view.path.ends_with(".pdf"))
        why_not = "The name of the file ends in .pdf.";
    Flow flow;
    flow.next(button_width("Save PDF"));
    if (primary_button("Save PDF", why_not)) desk.save(view.path.empty() ? usual : view.path);
    flow.next(button_width("Open it afterwards"));
    if (toggle_button("Open it afterwards", choices.opens_afterwards))
        choices.opens_afterwards = !choices.opens_afterwards;
    if (!view.path.empty() && !choices.order.pages.empty() && !why_not.empty()) complaint(why_not);
    draw_progress(desk);
}

// Saving stays in sight, whatever the list above does.
void draw_choices(const PanelContext& context, PrintPanelView& view) {
    const bool is_empty = context.print_desk->choices().order.pages.empty();
    const float gap = ImGui::GetStyle().ItemSpacing.y;
    const float footer = is_empty ? 0.0F : 3.0F * row_height() + 4.0F * gap;
    if (ImGui::BeginChild("wanted", {0.0F, -footer})) {
        draw_wanted_pages(context, view);
        if (!is_empty) draw_paper_choices(context);
    }
    ImGui::EndChild();
    if (!is_empty) draw_saving(context, view);
}

void draw_column(const char* name, float width, const std::function<void()>& draw) {
    if (ImGui::BeginChild(name, {width, 0.0F})) draw();
    ImGui::EndChild();
}

// Pages, paper and preview beside each other, in a wide panel.
void draw_three_columns(const PanelContext& context, PrintPanelView& view) {
    draw_column("pages", px(380.0F), [&] { draw_wanted_pages(context, view); });
    ImGui::SameLine();
    draw_column("paper", px(300.0F), [&] {
        draw_paper_choices(context);
        heading("File");
        draw_saving(context, view);
    });
    ImGui::SameLine();
    draw_column("preview", 0.0F, [&] { draw_print_preview(context, view); });
}

} // namespace

void draw_print_panel(const PanelContext& context, PrintPanelView& view) {
    if (context.print_desk == nullptr) {
        empty_state("Pages on paper. There is no printing here.");
        return;
    }
    const bool is_empty = context.print_desk->choices().order.pages.empty();
    const float room = ImGui::GetContentRegionAvail().x;
    if (!is_empty && room >= px(1080.0F)) {
        draw_three_columns(context, view);
        return;
    }
    const bool has_both = room >= px(560.0F);
    if (!has_both && !is_empty) {
        Flow flow;
        flow.next(button_width("Choices"));
        if (toggle_button("Choices", !view.shows_preview)) view.shows_preview = false;
        flow.next(button_width("Preview"));
        if (toggle_button("Preview", view.shows_preview)) view.shows_preview = true;
    }
    const bool shows_choices = has_both || is_empty || !view.shows_preview;
    const bool shows_preview = !is_empty && (has_both || view.shows_preview);
    if (shows_choices)
        draw_column(
            "choices",
            shows_preview ? std::clamp(room / 2.0F, px(290.0F), px(380.0F)) : 0.0F,
            [&] { draw_choices(context, view); }
        );
    if (shows_choices && shows_preview) ImGui::SameLine();
    if (shows_preview)
        draw_column("preview", 0.0F, [&] { draw_print_preview(context, view); });
    else if (!is_empty)
        context.print_desk->show(view.side, 0);
}

} // namespace widgets
