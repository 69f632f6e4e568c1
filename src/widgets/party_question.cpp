#include "widgets/party_question.h"

#include "game/party_figures.h"
#include "widgets/form.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

void draw_stat_choice(const PanelContext& context, const char* label, float width) {
    std::string& stat = context.selection.odds.stat;
    if (!begin_choice(label, game::rollable_name(context.rulebook, stat), width)) return;
    for (const game::RollableStat& each :
         game::rollable_stats(context.campaign.party, context.rulebook)) {
        const bool is_chosen = each.key == stat;
        if (choice_row(each.name, is_chosen)) stat = each.key;
        if (is_chosen && ImGui::IsWindowAppearing()) ImGui::SetScrollHereY();
    }
    ImGui::EndCombo();
}

void step_stat(const PanelContext& context, int step) {
    const auto stats = game::rollable_stats(context.campaign.party, context.rulebook);
    std::string& stat = context.selection.odds.stat;
    const auto found = std::find_if(stats.begin(), stats.end(), [&](const auto& each) {
        return each.key == stat;
    });
    const std::ptrdiff_t place = found == stats.end() ? 0 : found - stats.begin();
    const auto last = std::ssize(stats) - 1;
    stat = stats[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(place + step, 0, last))].key;
}

} // namespace widgets
