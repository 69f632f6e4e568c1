#include "widgets/form.h"
#include "widgets/print_panel_parts.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace widgets {

using print::Arrangement;
using print::PrintSetup;

namespace {

struct ArrangementWords {
    Arrangement arrangement;
    const char* label;
};

constexpr std::array<ArrangementWords, 3> arrangements{{
    {Arrangement::one_up, "One page a sheet"},
    {Arrangement::two_up, "Two to cut apart"},
    {Arrangement::booklet, "Booklet to fold"},
}};

// "A5, 148 x 210 mm"
std::string paper_words(const print::Paper& paper) {
    const auto whole = [](double mm) { return std::to_string(std::lround(mm)); };
    return std::string(paper.name) + ", " + whole(paper.size.width) + " x " +
           whole(paper.size.height) + " mm";
}

void draw_toggle(Flow& flow, const char* label, bool& is_on) {
    flow.next(button_width(label));
    if (toggle_button(label, is_on)) is_on = !is_on;
}

bool has_cards(const print::PrintOrder& order) {
    return std::any_of(order.pages.begin(), order.pages.end(), [](const print::WantedPage& page) {
        return page.key == "creatures" || page.key == "conditions";
    });
}

} // namespace

void draw_paper_choices(const PanelContext& context) {
    print::PrintOrder& order = context.print_desk->choices().order;
    PrintSetup& setup = order.setup;
    heading("Paper");
    const float width = std::min(width_of_letters(26), ImGui::GetContentRegionAvail().x);
    if (begin_choice("##paper", paper_words(*setup.paper), width)) {
        for (const print::Paper& paper : print::papers())
            if (choice_row(paper_words(paper), &paper == setup.paper)) setup.paper = &paper;
        ImGui::EndCombo();
    }
    Flow sheets;
    for (const ArrangementWords& each : arrangements) {
        sheets.next(button_width(each.label));
        if (toggle_button(each.label, setup.arrangement == each.arrangement))
            setup.arrangement = each.arrangement;
    }
    Flow flow;
    draw_toggle(flow, "Binder holes", setup.has_rings);
    draw_toggle(flow, "Both sides", setup.is_double_sided);
    draw_toggle(flow, "Large letters", setup.is_large_type);
    if (!has_cards(order)) return;
    Flow cards;
    for (const print::CardSize& card : print::card_sizes()) {
        const std::string label = "Cards " + std::string(card.key);
        cards.next(button_width(label.c_str()));
        if (toggle_button(label.c_str(), setup.card == &card)) setup.card = &card;
    }
}

} // namespace widgets
