#include "widgets/house_rule_mark.h"

#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>
#include <string_view>

namespace widgets {

static bool is_below(std::string_view pointer, std::string_view table) {
    return pointer == table ||
           (pointer.substr(0, table.size()) == table && pointer[table.size()] == '/');
}

void draw_house_rule_mark(const PanelContext& context, std::initializer_list<const char*> tables) {
    std::vector<rules::HouseRule> replaced;
    for (const rules::HouseRule& rule : context.rulebook.house_ruled) {
        const bool is_shown = std::any_of(tables.begin(), tables.end(), [&](const char* table) {
            return is_below(rule.pointer, table);
        });
        if (is_shown) replaced.push_back(rule);
    }
    draw_house_rule_mark(replaced);
}

void draw_house_rule_mark(const std::vector<rules::HouseRule>& replaced) {
    if (replaced.empty()) return;
    std::string all;
    for (const rules::HouseRule& rule : replaced)
        all += (all.empty() ? "" : "\n") + rule.pointer + ": " + rule.is_now + " instead of " +
               rule.was;
    push_font(TextSize::small);
    text(Ink::item, "house rules count here");
    ImGui::PopFont();
    ImGui::SetItemTooltip("%s", all.c_str());
}

} // namespace widgets
