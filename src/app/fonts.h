// The typefaces of the program: B612 for words and B612 Mono for figures, DejaVu Sans behind them
// for other scripts. Built once for each text scale.
#pragma once

#include "widgets/ui.h"

#include <string>

struct ImFontAtlas;

namespace app {

struct LoadedFonts {
    widgets::Fonts fonts;
    std::string complaint; // one sentence when a typeface is missing; empty otherwise
};

// Replaces what the atlas holds. `scale` is text scale x display scale.
LoadedFonts load_fonts(ImFontAtlas& atlas, float scale);

} // namespace app
