// Everything the program can be told to do, in one list: the keys act from it, the help shows it,
// and Find offers it.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace app {

struct ShellState;

struct Action {
    std::string key;   // "undo", "panel/register": lasting, unlike any other
    std::string title; // "Undo the last change"
    // "Ctrl+Shift+Z, Ctrl+Y": this text is both read by people and acted on (is_pressed), unless
    // `panel` reads the key itself. Empty: there is none.
    std::string keys{};
    std::string panel{}; // the panel in which the keys work, with the keyboard on it
    // Nothing: a hint for the hand, or what only makes sense in its panel, which Find brings up.
    std::function<void(ShellState&)> run{};
    std::function<std::string(ShellState&)> why_not{}; // one sentence; empty: it can be done now
    bool repeats = false;                              // while the key is held
    bool yields_to_typing = false; // the key belongs to a field that is typed in
    bool is_in_help = true;        // panels and scenes have lists of their own there
    std::string also{};            // other words it is found by
};

const std::vector<Action>& actions();

const Action* find_action(std::string_view key);

// Why it cannot be done now; empty when it can.
std::string reason_against(const Action& action, ShellState& state);

// Does it if it can be done; brings its panel to the front where only the panel can.
void carry_out_action(const Action& action, ShellState& state);

// Whether one of these key combinations ("Ctrl+Shift+Z, F3") was pressed in this frame. False for
// words that name no key.
bool is_pressed(std::string_view keys, bool repeats);

} // namespace app
