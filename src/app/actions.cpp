#include "app/actions.h"

#include "app/find_box.h"
#include "app/panel_actions.h"
#include "app/shell.h"
#include "app/shell_keys.h"
#include "game/turns.h"

#include <imgui.h>

#include <algorithm>
#include <charconv>
#include <optional>

namespace app {

namespace {

using widgets::ThemeName;

void scale_text(ShellState& state, int steps) {
    int& percent = state.settings.preferences.text_scale_percent;
    percent = text_scale_after(percent, steps);
}

std::string read_only_or(ShellState& state, bool is_possible, const char* otherwise) {
    if (state.campaign.is_read_only()) return "The campaign is open for reading only.";
    return is_possible ? "" : otherwise;
}

void add_shell_actions(std::vector<Action>& all) {
    all.push_back({"help", "The keys and what each panel is for", "F1", {}, [](ShellState& state) {
                       state.is_help_open = !state.is_help_open;
                   }});
    all.push_back({"find", "Find anything, do anything, ask", "Ctrl+F", {}, [](ShellState& state) {
                       state.find.wants_open = true;
                   }});
    all.push_back({"note", "Write a note", "Ctrl+N", {}, [](ShellState& state) {
                       bring_to_front(state, "session_sheet");
                       state.selection.wants_note = true;
                   }});
    all.push_back(
        {.key = "undo",
         .title = "Undo the last change",
         .keys = "Ctrl+Z",
         .run = [](ShellState& state) { state.edits.undo(); },
         .why_not =
             [](ShellState& state) {
                 return read_only_or(
                     state, state.campaign.document().can_undo(), "Nothing was changed yet."
                 );
             },
         .repeats = true,
         .yields_to_typing = true}
    );
    all.push_back(
        {.key = "redo",
         .title = "Redo what was undone",
         .keys = "Ctrl+Shift+Z, Ctrl+Y",
         .run = [](ShellState& state) { state.edits.redo(); },
         .why_not =
             [](ShellState& state) {
                 return read_only_or(
                     state, state.campaign.document().can_redo(), "Nothing was undone."
                 );
             },
         .repeats = true,
         .yields_to_typing = true}
    );
}

void add_looks(std::vector<Action>& all) {
    all.push_back(
        {.key = "larger",
         .title = "Larger text",
         .keys = "Ctrl+Plus",
         .run = [](ShellState& state) { scale_text(state, 1); },
         .repeats = true}
    );
    all.push_back(
        {.key = "smaller",
         .title = "Smaller text",
         .keys = "Ctrl+Minus",
         .run = [](ShellState& state) { scale_text(state, -1); },
         .repeats = true}
    );
    all.push_back({"usual_size", "Text at 100 %", "Ctrl+0", {}, [](ShellState& state) {
                       state.settings.preferences.text_scale_percent = 100;
                   }});
    all.push_back(
        {.key = "theme",
         .title = "The other theme, dark or paper",
         .keys = "Ctrl+T",
         .run =
             [](ShellState& state) {
                 ThemeName& theme = state.settings.preferences.theme;
                 theme = theme == ThemeName::dark ? ThemeName::paper : ThemeName::dark;
             },
         .yields_to_typing = true}
    );
    all.push_back(
        {"targets",
         "Targets for fingers, or for the mouse",
         {},
         {},
         [](ShellState& state) {
             bool& is_touch = state.settings.preferences.is_touch;
             is_touch = !is_touch;
         }}
    );
    all.push_back(
        {"fill",
         "Fill the window with this panel, and back",
         {},
         {},
         [](ShellState& state) {
             const std::string panel = state.tiles().focused;
             if (!panel.empty()) toggle_filling(state.tiles(), panel);
         }}
    );
    all.push_back({"usual_tiles", "Usual arrangement of this scene", {}, {}, [](ShellState& state) {
                       state.tiles() = default_tiles(state.settings.scenes.current);
                   }});
}

void add_end_and_hints(std::vector<Action>& all) {
    all.push_back({"quit", "Save and end", "Ctrl+Q", {}, [](ShellState& state) {
                       state.wants_to_quit = true;
                   }});
    all.push_back({"tab", "From one control to the next; Space presses it, Escape leaves", "Tab"});
    all.push_back({"double", "Fills the window with that panel, and back", "Double press on a tab"}
    );
}

void add_scenes(std::vector<Action>& all) {
    for (std::size_t at = 0; at < scene_infos.size(); ++at) {
        const SceneInfo& info = scene_infos[at];
        all.push_back(
            {std::string("scene/") + info.key,
             std::string("The scene ") + info.title,
             "Ctrl+" + std::to_string(at + 1),
             {},
             [key = info.key](ShellState& state) {
                 state.settings.scenes.current = key;
                 leave_controls();
             }}
        );
    }
}

void add_panels(std::vector<Action>& all) {
    for (const widgets::PanelInfo* info : panel_infos())
        all.push_back(
            {.key = std::string("panel/") + info->key,
             .title = info->title,
             .keys = info->shortcut,
             .run = [info](ShellState& state) { bring_to_front(state, info->key); },
             .is_in_help = false}
        );
}

void ask_next_turn(ShellState& state) {
    bring_to_front(state, "turn_order");
    state.edits.add(
        &game::Campaign::encounter,
        "Next turn",
        [book = &state.campaign.rulebook()](game::Encounter& encounter) {
            return game::advance_turn(encounter, *book);
        }
    );
}

std::string against_next_turn(ShellState& state) {
    const game::Encounter& fight = state.campaign.document().view().encounter;
    return read_only_or(state, fight.phase == game::Phase::running, "No fight is running.");
}

// What panels do, and the keys they read themselves (widgets/turn_order_keys.cpp and the like).
void add_panel_keys(std::vector<Action>& all) {
    const auto add =
        [&all](const char* panel, const char* key, const char* keys, const char* title) {
            all.push_back({std::string(panel) + "/" + key, title, keys, panel});
        };
    add("turn_order", "next", "Enter, Space", "Next turn");
    all.back().run = ask_next_turn;
    all.back().why_not = against_next_turn;
    add("turn_order", "temporary", "T after digits", "Temporary hit points");
    add("turn_order", "row", "Up, Down", "Choose another row; with Shift several");
    add("turn_order", "several", "Ctrl or Shift and press", "Choose several rows");
    add("turn_order", "nobody", "Escape", "Choose nobody");
    add("party_defences", "dc", "Up, Down", "A higher or lower DC");
    add("party_defences", "check", "Left, Right", "Another check");
    add("day_book", "page", "Page Up, Page Down", "The day, week, month or year before or after");
    for (const PanelAction& each : panel_actions())
        all.push_back(
            {.key = each.key,
             .title = each.title,
             .keys = each.keys,
             .panel = panel_of(each),
             .run = [&each](ShellState& state) { begin_pressing(state, each); },
             .also = each.also}
        );
}

struct NamedKey {
    std::string_view name;
    ImGuiKey key;
    bool any_shift = false; // a sign that some keyboards have above another
};

constexpr NamedKey named_keys[] = {
    {"Plus", ImGuiKey_Equal, true},
    {"Plus", ImGuiKey_KeypadAdd, true},
    {"Plus", ImGuiKey_RightBracket, true},
    {"Minus", ImGuiKey_Minus, true},
    {"Minus", ImGuiKey_KeypadSubtract, true},
    {"0", ImGuiKey_Keypad0},
};

bool is_down_now(ImGuiKey key, bool is_shifted, bool repeats) {
    return ImGui::GetIO().KeyShift == is_shifted && ImGui::IsKeyPressed(key, repeats);
}

// One key without Ctrl and Shift: "Z", "3", "F10", "Plus".
bool is_key_pressed(std::string_view name, bool is_shifted, bool repeats) {
    for (const NamedKey& named : named_keys)
        if (name == named.name &&
            is_down_now(named.key, named.any_shift ? ImGui::GetIO().KeyShift : is_shifted, repeats))
            return true;
    if (name.size() == 1 && name[0] >= 'A' && name[0] <= 'Z')
        return is_down_now(
            static_cast<ImGuiKey>(ImGuiKey_A + (name[0] - 'A')), is_shifted, repeats
        );
    if (name.size() == 1 && name[0] >= '0' && name[0] <= '9')
        return is_down_now(
            static_cast<ImGuiKey>(ImGuiKey_0 + (name[0] - '0')), is_shifted, repeats
        );
    int number = 0;
    const bool is_function =
        name.size() >= 2 && name[0] == 'F' &&
        std::from_chars(name.data() + 1, name.data() + name.size(), number).ptr ==
            name.data() + name.size();
    if (!is_function || number < 1 || number > 12) return false;
    return is_down_now(static_cast<ImGuiKey>(ImGuiKey_F1 + number - 1), is_shifted, repeats);
}

bool is_chord_pressed(std::string_view chord, bool repeats) {
    const auto take = [&chord](std::string_view modifier) {
        if (chord.substr(0, modifier.size()) != modifier) return false;
        chord.remove_prefix(modifier.size());
        return true;
    };
    const bool has_control = take("Ctrl+");
    const bool is_shifted = take("Shift+");
    return ImGui::GetIO().KeyCtrl == has_control && is_key_pressed(chord, is_shifted, repeats);
}

} // namespace

const std::vector<Action>& actions() {
    static const std::vector<Action> all = [] {
        std::vector<Action> made;
        add_shell_actions(made);
        add_looks(made);
        add_end_and_hints(made);
        add_scenes(made);
        add_panels(made);
        add_panel_keys(made);
        return made;
    }();
    return all;
}

const Action* find_action(std::string_view key) {
    const std::vector<Action>& all = actions();
    const auto found = std::find_if(all.begin(), all.end(), [key](const Action& action) {
        return action.key == key;
    });
    return found == all.end() ? nullptr : &*found;
}

std::string reason_against(const Action& action, ShellState& state) {
    return action.why_not ? action.why_not(state) : std::string();
}

void carry_out_action(const Action& action, ShellState& state) {
    if (!reason_against(action, state).empty()) return;
    if (action.run)
        action.run(state);
    else if (!action.panel.empty())
        bring_to_front(state, action.panel);
}

bool is_pressed(std::string_view keys, bool repeats) {
    constexpr std::string_view between = ", ";
    while (!keys.empty()) {
        const std::size_t end = keys.find(between);
        if (is_chord_pressed(keys.substr(0, end), repeats)) return true;
        keys =
            end == std::string_view::npos ? std::string_view{} : keys.substr(end + between.size());
    }
    return false;
}

} // namespace app
