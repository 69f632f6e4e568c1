// How far apart two colours look, and how somebody who is colour-blind sees them. Pure; for the
// tests of the themes.
#pragma once

#include "widgets/ui.h"

namespace widgets {

// CIE L*a*b* under D65: lightness 0..100, red-green and yellow-blue about -128..127.
struct Lab {
    double lightness = 0.0;
    double a = 0.0;
    double b = 0.0;
};

// sRGB (IEC 61966-2-1) to L*a*b* (CIE 15).
Lab lab_of(Rgb colour);

// CIEDE2000 colour difference; 1 is about what is just seen side by side. Formula: "The CIEDE2000
// Color-Difference Formula: Implementation Notes, Supplementary Test Data, and Mathematical
// Observations" (2005).
double colour_difference(Lab one, Lab other);

enum class ColourSight { usual, no_red, no_green, no_blue };

// What a colour looks like to these eyes. Matrices: "A Physiologically-based Model for Simulation
// of Color Vision Deficiency" (2009), severity 1.0, in linear light; from memory.
Rgb seen_with(ColourSight sight, Rgb colour);

} // namespace widgets
