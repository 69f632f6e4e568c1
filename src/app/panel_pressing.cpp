// How an action of a panel is carried out: its buttons are pressed in turn, as they are drawn.
#include "app/panel_actions.h"
#include "app/panels.h"
#include "app/shell.h"
#include "app/shell_keys.h"
#include "widgets/far_press.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace app {

namespace {

// What opens at a press is there one or two frames later.
constexpr int frames_for_one = 6;
constexpr int frames_for_optional = 2;
// What was pressed shows, and a field that wants the keyboard has it, so many frames later.
constexpr int frames_to_settle = 4;

bool is_optional(const PanelPressing& pressing) {
    return pressing.action->presses[pressing.step][0] == '?';
}

void wait_for_step(PanelPressing& pressing, int from_frame) {
    pressing.from_frame = from_frame;
    pressing.last_frame = from_frame;
    if (pressing.step < pressing.action->press_count())
        pressing.last_frame += is_optional(pressing) ? frames_for_optional : frames_for_one;
}

std::string missing_text(const PanelAction& action) {
    if (*action.first != '\0') return action.first;
    const widgets::PanelInfo* info = find_panel(panel_of(action));
    return std::string("The panel ") + (info == nullptr ? "" : info->title) +
           " does not offer it now.";
}

// After the panel was drawn: goes on, or says why it does not.
void settle(ShellState& state, const widgets::FarPress& press) {
    PanelPressing& pressing = state.pressing;
    const int now = ImGui::GetFrameCount();
    if (press.is_met && !press.why_not.empty()) {
        state.messages.add(press.why_not);
        pressing = {};
        return;
    }
    if (!press.is_met && now < pressing.last_frame) return;
    if (!press.is_met && !is_optional(pressing)) {
        state.messages.add(missing_text(*pressing.action));
        pressing = {};
        return;
    }
    pressing.step += 1;
    wait_for_step(pressing, now + 1);
    if (pressing.step < pressing.action->press_count()) return;
    pressing = {};
    pressing.last_frame = now + frames_to_settle;
}

} // namespace

std::size_t PanelAction::press_count() const {
    const auto* end = std::find(presses.begin(), presses.end(), nullptr);
    return static_cast<std::size_t>(end - presses.begin());
}

std::string panel_of(const PanelAction& action) {
    const std::string key = action.key;
    return key.substr(0, key.find('/'));
}

void begin_pressing(ShellState& state, const PanelAction& action) {
    bring_to_front(state, panel_of(action));
    state.pressing.action = &action;
    state.pressing.step = 0;
    wait_for_step(state.pressing, ImGui::GetFrameCount() + 1);
    widgets::ask_frame_in(0.0);
}

void draw_and_press(
    ShellState& state, const std::string& panel, const std::function<void()>& draw
) {
    PanelPressing& pressing = state.pressing;
    const int now = ImGui::GetFrameCount();
    if (pressing.action != nullptr || now < pressing.last_frame) widgets::ask_frame_in(0.0);
    const bool is_here = pressing.action != nullptr && panel == panel_of(*pressing.action) &&
                         now >= pressing.from_frame;
    if (is_here && now > pressing.last_frame) pressing = {}; // the panel was out of sight meanwhile
    if (!is_here || pressing.action == nullptr) {
        draw();
        return;
    }
    widgets::FarPress press;
    press.label = pressing.action->presses[pressing.step] + (is_optional(pressing) ? 1 : 0);
    widgets::set_far_press(&press);
    draw();
    widgets::set_far_press(nullptr);
    settle(state, press);
}

} // namespace app
