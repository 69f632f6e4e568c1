#include "app/frame_pacing.h"

#include <algorithm>

namespace app {

void FramePacing::note_event(double now) {
    owed_ = frames_after_event;
    rest_is_due_ = true;
    rest_at_ = now + rest_seconds;
}

void FramePacing::note_frame(double now, std::optional<double> wish) {
    owed_ = std::max(0, owed_ - 1);
    if (rest_is_due_ && now >= rest_at_) rest_is_due_ = false;
    due_at_.reset();
    if (wish.has_value()) due_at_ = now + std::max(0.0, *wish);
}

bool FramePacing::is_due(double now) const {
    const std::optional<double> left = wait(now);
    return left.has_value() && *left <= 0.0;
}

std::optional<double> FramePacing::wait(double now) const {
    if (owed_ > 0) return 0.0;
    std::optional<double> next = due_at_;
    if (rest_is_due_) next = next.has_value() ? std::min(*next, rest_at_) : rest_at_;
    if (!next.has_value()) return std::nullopt;
    return std::max(0.0, *next - now);
}

} // namespace app
