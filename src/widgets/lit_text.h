// A text in which the names of the Register light up: each in the colour of its kind, with the
// letter of the kind raised before it and an underline of its own.
#pragma once

#include "game/mentions.h"
#include "widgets/ui.h"

#include <string_view>
#include <vector>

namespace widgets {

// Wraps at `width`; the cursor stands below it afterwards, as after any text.
void lit_text(
    Ink ink, std::string_view text, const std::vector<game::Mention>& mentions, float width
);

// How high lit_text will be.
float lit_text_height(
    std::string_view text, const std::vector<game::Mention>& mentions, float width
);

} // namespace widgets
