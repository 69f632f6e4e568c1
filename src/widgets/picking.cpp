#include "widgets/picking.h"

#include "widgets/ui.h"

#include <imgui.h>

namespace widgets {

Pick pick_by_hand(bool picks_several) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.KeyShift) return Pick::range;
    return io.KeyCtrl || picks_several ? Pick::toggle : Pick::only;
}

void draw_several(bool& picks_several) {
    if (toggle_button("Several", picks_several)) picks_several = !picks_several;
    ImGui::SetItemTooltip("Each press picks one more, or takes it out");
}

} // namespace widgets
