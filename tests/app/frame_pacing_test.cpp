// Frames are drawn after events, when something on the screen is due, and never otherwise.
#include "app/frame_pacing.h"

#include <doctest/doctest.h>

#include <cmath>

using app::FramePacing;

namespace {

// A loop as the program runs it, over a clock of its own: sleeps as long as it may, counts frames.
struct Evening {
    FramePacing pacing;
    double now = 0.0;
    int frames = 0;

    void until(double end) {
        while (true) {
            if (pacing.is_due(now)) {
                frames += 1;
                pacing.note_frame(now, std::nullopt);
                continue;
            }
            const auto wait = pacing.wait(now);
            if (!wait.has_value() || now + *wait > end) break;
            now += *wait;
        }
        now = end;
    }
};

} // namespace

TEST_CASE("frame pacing: the first frames come without any event") {
    const FramePacing pacing;
    CHECK(pacing.is_due(0.0));
}

TEST_CASE("frame pacing: an hour without events draws nothing") {
    Evening evening;
    evening.until(10.0);
    const int after_start = evening.frames;
    CHECK(after_start == FramePacing::frames_after_event);
    evening.until(3610.0);
    CHECK(evening.frames == after_start);
    CHECK_FALSE(evening.pacing.wait(evening.now).has_value()); // sleeps until something happens
}

TEST_CASE("frame pacing: one event draws a few frames, one more for a tooltip, then rests") {
    Evening evening;
    evening.until(10.0);
    const int before = evening.frames;
    evening.pacing.note_event(evening.now);
    CHECK(evening.pacing.is_due(evening.now));
    evening.until(3610.0);
    CHECK(evening.frames - before == FramePacing::frames_after_event + 1);
}

TEST_CASE("frame pacing: a hundred events within a second draw at most a few frames each") {
    Evening evening;
    evening.until(10.0);
    const int before = evening.frames;
    for (int i = 0; i < 100; ++i) {
        evening.pacing.note_event(evening.now);
        evening.until(evening.now + 0.01);
    }
    evening.until(3610.0);
    CHECK(evening.frames - before <= 100 * FramePacing::frames_after_event + 1);
}

TEST_CASE("frame pacing: text that is due to be committed in a second gets its frame then") {
    FramePacing pacing;
    for (int i = 0; i < FramePacing::frames_after_event; ++i)
        pacing.note_frame(5.0, 1.0);
    CHECK_FALSE(pacing.is_due(5.5));
    REQUIRE(pacing.wait(5.25).has_value());
    CHECK(*pacing.wait(5.25) == doctest::Approx(0.75));
    CHECK(pacing.is_due(6.0));
    pacing.note_frame(6.0, std::nullopt);
    CHECK_FALSE(pacing.is_due(1000.0));
}

TEST_CASE("frame pacing: a wish in the past or below zero is due at once, once") {
    FramePacing pacing;
    for (int i = 0; i < FramePacing::frames_after_event; ++i)
        pacing.note_frame(5.0, -3.0);
    CHECK(pacing.is_due(5.0));
    pacing.note_frame(5.0, std::nullopt);
    CHECK_FALSE(pacing.is_due(5.0));
}

TEST_CASE("frame pacing: what moves draws as often as it asks and stops with it") {
    Evening evening;
    evening.until(10.0);
    int moving = 0;
    double now = 10.0;
    evening.pacing.note_event(now);
    // Two seconds of a mark that fades, a frame every tenth of a second.
    while (now < 12.0) {
        if (evening.pacing.is_due(now)) {
            moving += 1;
            evening.pacing.note_frame(now, 0.1);
            continue;
        }
        now += evening.pacing.wait(now).value_or(1.0);
    }
    CHECK(moving >= 19);
    CHECK(moving <= 25);
    evening.pacing.note_frame(now, std::nullopt);
    CHECK_FALSE(evening.pacing.wait(now).has_value());
}
