#include "widgets/builder_footer.h"

#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

float builder_body_height() {
    constexpr float rows_min = 6.0F;
    const float row = row_height() + ImGui::GetStyle().ItemSpacing.y;
    const float foot = 2.0F * row + ImGui::GetTextLineHeightWithSpacing();
    return std::max(ImGui::GetContentRegionAvail().y - foot, rows_min * row);
}

void draw_builder_footer(
    const PanelContext& context,
    const std::string& name,
    const game::BuilderReading& reading,
    game::Placing& placing,
    std::string& done
) {
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && name.empty()) why_not = "Give it a name first.";
    std::string line = done.empty() ? why_not : done;
    if (line.empty()) line = reading.threat_text;
    text_fitted(Ink::muted, line, ImGui::GetContentRegionAvail().x);
    Flow flow;
    draw_placing(flow, placing, !reading.statistics.hit_dice.empty());
    flow.next(button_width("Keep on the shelf"));
    if (button("Keep on the shelf", why_not))
        done = "Done: " + ask_keeping(context, name, reading.statistics) + ".";
    flow.next(button_width("Into the fight"));
    if (primary_button("Into the fight", why_not))
        done = "Done: " + ask_placing(context, name, reading.statistics, placing) + ".";
}

} // namespace widgets
