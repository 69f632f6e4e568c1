// The keys of the shell: undo and redo, scenes, text size, panels and help. Panels read their own.
#pragma once

#include <array>
#include <string>

namespace app {

struct ShellState;

struct KeyHelp {
    const char* keys;
    const char* what;
};

// What the help overlay lists, apart from the keys that focus panels.
constexpr std::array<KeyHelp, 11> shell_key_helps{{
    {"F1", "This help, and away again"},
    {"Ctrl+N", "Write a note"},
    {"Ctrl+Z", "Undo the last change"},
    {"Ctrl+Shift+Z, Ctrl+Y", "Redo what was undone"},
    {"Ctrl+1 to Ctrl+4", "The scenes Prep, Fight, Roam, Wrap-up"},
    {"Ctrl+Plus, Ctrl+Minus", "Larger and smaller text"},
    {"Ctrl+0", "Text at 100 %"},
    {"Ctrl+T", "The other theme"},
    {"Ctrl+Q", "Save and end"},
    {"Tab", "From one control to the next; Space presses it, Escape leaves"},
    {"Double press on a tab", "Fills the window with that panel, and back"},
}};

// What the keys do in the Turn Order, which has them in the scene Fight.
constexpr std::array<KeyHelp, 7> fight_key_helps{{
    {"Enter, Space", "Next turn"},
    {"Digits, then H or G", "Hurt or heal the chosen by that number"},
    {"T after digits", "Temporary hit points"},
    {"C", "A condition for the chosen"},
    {"Up, Down", "Choose another row; with Shift several"},
    {"Ctrl or Shift and press", "Choose several rows"},
    {"Escape", "Choose nobody"},
}};

constexpr std::array<KeyHelp, 3> defences_key_helps{{
    {"Up, Down", "A higher or lower DC"},
    {"Left, Right", "Another check"},
    {"R", "Roll in secret for everybody"},
}};

constexpr std::array<KeyHelp, 6> names_key_helps{{
    {"Enter, Space, N", "The next name"},
    {"U", "Use the name"},
    {"L", "Something like it"},
    {"B", "Nothing more with its letter"},
    {"G", "Grow new names from the list"},
    {"K", "Keep it for later"},
}};

// Shows the panel with this key, in front, and gives it the keyboard.
void bring_to_front(ShellState& state, const std::string& panel);

void read_shell_keys(ShellState& state);

// The panel whose keys act now.
std::string keyboard_owner(ShellState& state);

} // namespace app
