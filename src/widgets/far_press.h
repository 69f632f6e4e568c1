// A press from afar: what is asked for elsewhere, as in Find, presses a control of a panel by the
// words that are written on it. One at a time.
#pragma once

#include <string>
#include <string_view>

namespace widgets {

struct FarPress {
    // A label of buttons, fields and choices: as a whole, its visible part, or all from "##" on.
    // "Begin|Go on": either of them, whichever is there.
    std::string label{};
    bool is_met = false;   // it was there
    std::string why_not{}; // it was there and refuses
};

// While the panel is drawn; nothing afterwards.
void set_far_press(FarPress* press);

// Asked by every button: true presses it now. One that is disabled tells why instead.
bool is_pressed_from_afar(const char* label, std::string_view why_not);

// Before a field or a choice is drawn: it takes the keyboard, or opens, in the next frame.
void meet_far_press(const char* label);

} // namespace widgets
