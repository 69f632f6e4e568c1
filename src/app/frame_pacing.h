// When to draw: only after something happened, or when something on the screen is due to change.
// Pure: knows no clock and no window; times are seconds of any steady clock.
#pragma once

#include <optional>

namespace app {

class FramePacing {
public:
    // A key, the hand, the window, or another thread: the next frames show it.
    void note_event(double now);
    // What the frame that was drawn now asked for: a frame after this many seconds.
    void note_frame(double now, std::optional<double> wish);

    bool is_due(double now) const;
    // How long nothing needs to be drawn; nothing: until the next event.
    std::optional<double> wait(double now) const;

    // Frames that follow an event at once: the library answers input one frame later and lays out
    // new windows in a second one.
    static constexpr int frames_after_event = 3;
    // A late frame for tooltips, which come when the pointer has rested this long.
    static constexpr double rest_seconds = 0.6;

private:
    int owed_ = frames_after_event;
    std::optional<double> due_at_;
    bool rest_is_due_ = false;
    double rest_at_ = 0.0;
};

} // namespace app
