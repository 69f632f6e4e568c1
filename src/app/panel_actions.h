// What panels can be told to do without going there first: the table of their buttons and fields
// for Find, and how one is pressed.
#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <span>
#include <string>

namespace app {

struct ShellState;

struct PanelAction {
    // "party_roster/add": the panel, and what is done there; lasting, unlike any other.
    const char* key = "";
    const char* title = ""; // what a GM would type
    const char* also = "";  // other words for it
    // What is pressed in turn: a label as in widgets/far_press.h. "?" before it: only where it is
    // there, as what leads back from a form to the list.
    std::array<const char*, 4> presses{}; // those not needed are nothing
    // Why it is not there now, and what to do about it: one sentence. Nothing: it always is.
    const char* first = "";
    const char* keys = ""; // read by the panel itself

    std::size_t press_count() const;
};

std::span<const PanelAction> panel_actions();

// "party_roster" of "party_roster/add".
std::string panel_of(const PanelAction& action);

// An action under way, over a few frames.
struct PanelPressing {
    const PanelAction* action = nullptr; // nothing: there is none
    std::size_t step = 0;                // of its presses
    int from_frame = 0;                  // not before, while what opened it still closes
    int last_frame = 0;                  // then it is given up, or has settled
};

// Brings the panel to the front; what is to be pressed is pressed as it is drawn.
void begin_pressing(ShellState& state, const PanelAction& action);

// Draws a panel, and presses in it what is to be pressed.
void draw_and_press(ShellState& state, const std::string& panel, const std::function<void()>& draw);

} // namespace app
