// What the test hooks of Dear ImGui write down during a frame.
#pragma once

#include "driver.h"

namespace driver {

// Where the hooks write; null: nowhere. One screen draws at a time.
struct Recorder {
    static void begin(Screen& screen);
    static void end();
    static std::vector<Item>* items;
    static bool is_full_log; // a frame that lays out scrolled-away items too
};

} // namespace driver
