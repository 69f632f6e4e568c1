// One frame of the whole program: top bar, messages, tiles with their panels, help. Owns what the
// person arranged; knows no window and no OpenGL, so it draws the same into a picture.
#pragma once

#include "app/find_box.h"
#include "app/finger_scroll.h"
#include "app/messages.h"
#include "app/open_campaign.h"
#include "app/panel_actions.h"
#include "app/panels.h"
#include "app/preferences.h"
#include "app/print_desk.h"
#include "app/scenes.h"
#include "app/tiles_view.h"
#include "rules/dice.h"

#include <cstdint>
#include <functional>
#include <string>

namespace app {

struct Settings {
    Preferences preferences;
    Scenes scenes = default_scenes();
    widgets::PrintChoices printing{};

    bool operator==(const Settings&) const = default;
};

// What the parts of the shell share.
struct ShellState {
    OpenCampaign& campaign;
    Settings settings;
    Messages messages{};
    TilesView tiles_view{};
    widgets::Selection selection{};
    game::Edits edits{};
    FindBox find{};
    PanelPressing pressing{};
    FingerScroll finger{};
    bool is_help_open = false;
    bool wants_to_quit = false;
    bool moves_in_menu = false;          // arrows and Enter choose in the menu that is open
    bool is_panel_chosen_by_key = false; // it keeps the keyboard until something is pressed

    Tiles& tiles() { return settings.scenes.arrangements[settings.scenes.current]; }
};

// What the shell needs of the window that shows it. Without any of it, it can still be drawn.
struct Surroundings {
    std::function<void()> wake{}; // from any thread: there is something new to draw
    ShowImage show_image{};
};

class Shell {
public:
    Shell(
        OpenCampaign& campaign,
        Settings settings,
        std::uint64_t dice_seed,
        Surroundings surroundings = {}
    );

    // Between ImGui::NewFrame and ImGui::Render; queued edits are carried out at its end.
    void draw();

    ShellState& state() { return state_; }

    // Returns when everything that is worked on beside the screen is ready to be drawn.
    void settle() { print_desk_.wait_until_idle(); }

private:
    void draw_panel(const std::string& key);

    ShellState state_;
    Panels panels_;
    rules::Dice dice_;
    std::function<base::Result<std::string>(const std::string&)> read_text_;
    std::function<void(const std::string&, const std::string&)> save_text_;
    PrintDesk print_desk_;
};

// "Salt Road Charter - Tablewick"
std::string window_title(const game::Campaign& campaign);

} // namespace app
