// The colour of what a name of the Register stands for. Its letter says the same: kind_letter.
#pragma once

#include "game/register.h"
#include "widgets/ui.h"

namespace widgets {

Ink ink_of_kind(game::Kind kind);

} // namespace widgets
