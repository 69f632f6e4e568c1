// What is typed into Find and can be done at once: dice to roll, a condition to give.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace app {

struct ShellState;

struct TypedOrder {
    std::string label; // "Roll 3d6+4"
    std::function<void(ShellState&)> run;
    bool takes_enter = true; // false: Enter goes to the first hit, a press does this
};

std::optional<TypedOrder> typed_order(ShellState& state, const std::string& typed);

} // namespace app
