// How well two colours can be told apart: relative luminance and contrast ratio as the Web Content
// Accessibility Guidelines (WCAG) 2.2 define them. Pure; for the tests of the themes.
#pragma once

#include "widgets/ui.h"

namespace widgets {

// 0 (black) to 1 (white). WCAG 2.2, definition "relative luminance".
double relative_luminance(Rgb colour);

// 1 to 21. WCAG 2.2, definition "contrast ratio"; the order of the two does not matter.
double contrast_ratio(Rgb one, Rgb two);

// What is seen where `above` is painted with this opacity over `below`, blended as the screen
// blends.
Rgb blended(Rgb above, Rgb below, double opacity);

} // namespace widgets
