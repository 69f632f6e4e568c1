// The two halves of the table of panel actions, for its own files alone.
#pragma once

#include "app/panel_actions.h"

#include <span>

namespace app {

inline constexpr const char* no_party = "Enter a player character first, in the Party.";

// Names, sessions, world, money, paper, rules.
std::span<const PanelAction> actions_around_fights();

} // namespace app
