// A finger drags what is longer than its place: with targets for fingers, a list follows the hand.
#pragma once

namespace app {

struct FingerScroll {
    unsigned window = 0; // under the finger, that can be scrolled; 0: none
    bool is_dragged = false;
};

// Once a frame, before anything is drawn.
void scroll_by_finger(FingerScroll& scroll);

} // namespace app
