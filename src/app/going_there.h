// From what was found to where it stands: the panel comes to the front and opens it, an action is
// carried out.
#pragma once

#include "game/finding.h"

#include <string>

namespace app {

struct ShellState;

void go_to(ShellState& state, const game::FindTarget& target);

// "note", "rule": what it is, beside the entry.
const char* kind_of(const game::FindTarget& target);

// Why an action cannot be done now; empty for everything else.
std::string reason_against(const game::FindTarget& target, ShellState& state);

} // namespace app
