// The keys of the shell, as the list of actions has them. Panels read their own.
#pragma once

#include <string>

namespace app {

struct ShellState;

// Shows the panel with this key, in front, and gives it the keyboard.
void bring_to_front(ShellState& state, const std::string& panel);

// Ends moving by Tab from control to control: Enter and arrows belong to the panel again.
void leave_controls();

void read_shell_keys(ShellState& state);

// The panel whose keys act now.
std::string keyboard_owner(ShellState& state);

} // namespace app
