// What the Print panel needs of the printing, which goes on beside the screen: the order is laid
// out, drawn and saved on another thread.
#pragma once

#include "print/order.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace widgets {

// Remembered from evening to evening.
struct PrintChoices {
    print::PrintOrder order{};
    bool opens_afterwards = true; // what was saved, with the program the system has for it

    bool operator==(const PrintChoices&) const = default;
};

// One side of a sheet, ready to be shown.
struct SidePicture {
    std::uint64_t texture = 0; // 0: not ready yet
    int width = 0;             // pixels
    int height = 0;
};

struct WantedPageState {
    std::size_t first_side = 0; // on which it begins
    std::string problem{};      // why there is no such page, one sentence

    bool operator==(const WantedPageState&) const = default;
};

struct PrintState {
    std::string doing{};  // "Laying out"; empty: nothing is going on
    std::size_t done = 0; // of all, in steps of whatever it is
    std::size_t all = 0;
    std::string problem{}; // why nothing was laid out, one sentence; empty: no problem
    std::size_t pages = 0; // of what was laid out last
    std::size_t sides = 0;
    std::vector<WantedPageState> wanted{}; // as laid out last
    SidePicture picture{};
};

class PrintDesk {
public:
    PrintDesk() = default;
    virtual ~PrintDesk() = default;
    PrintDesk(const PrintDesk&) = delete;
    PrintDesk& operator=(const PrintDesk&) = delete;

    virtual PrintChoices& choices() = 0;
    virtual const PrintState& state() const = 0;
    // Once a frame while the panel is seen: keeps what is laid out in step with choices and
    // campaign, and has the side drawn this wide, in pixels.
    virtual void show(std::size_t side, int width) = 0;
    // A message tells how it went.
    virtual void save(const std::string& path) = 0;
    virtual void stop() = 0;
};

} // namespace widgets
