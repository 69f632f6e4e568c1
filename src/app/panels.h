// Every panel of the program, by its key, with its view state. The one list: menus, keys, help and
// scenes come from it.
#pragma once

#include "widgets/panel.h"

#include <memory>
#include <span>
#include <string>

namespace app {

// In the order of the menu.
std::span<const widgets::PanelInfo* const> panel_infos();
// The panel with this key, or nullptr.
const widgets::PanelInfo* find_panel(const std::string& key);

// The view state of all panels.
class Panels {
public:
    Panels();
    ~Panels();
    Panels(const Panels&) = delete;
    Panels& operator=(const Panels&) = delete;

    void draw(const std::string& key, const widgets::PanelContext& context);

private:
    struct Views;
    std::unique_ptr<Views> views_;
};

} // namespace app
