// The themes against the contrast that the Web Content Accessibility Guidelines 2.2 ask for.
#include "widgets/contrast.h"

#include <doctest/doctest.h>

#include <array>

using widgets::contrast_ratio;
using widgets::Ink;
using widgets::ink_of;
using widgets::Rgb;
using widgets::ThemeName;

TEST_CASE("contrast: black on white is 21 to 1, as the guidelines say") {
    // WCAG 2.2, definition of contrast ratio: "can range from 1 to 21".
    CHECK(contrast_ratio({0, 0, 0}, {255, 255, 255}) == doctest::Approx(21.0));
    CHECK(contrast_ratio({255, 255, 255}, {0, 0, 0}) == doctest::Approx(21.0));
    CHECK(contrast_ratio({12, 34, 56}, {12, 34, 56}) == doctest::Approx(1.0));
}

TEST_CASE("contrast: the grey that just fails and the grey that just passes 4.5 to 1 on white") {
    // W3C, "Understanding Success Criterion 1.4.3" (WCAG 2.2) and the tools of the W3C: #777777 has
    // 4.48:1 and is not rounded up, #767676 has 4.54:1.
    CHECK(
        contrast_ratio({0x77, 0x77, 0x77}, {255, 255, 255}) == doctest::Approx(4.48).epsilon(0.001)
    );
    CHECK(
        contrast_ratio({0x76, 0x76, 0x76}, {255, 255, 255}) == doctest::Approx(4.54).epsilon(0.001)
    );
}

TEST_CASE("contrast: text of every meaning has 7 to 1 on every ground of both themes") {
    // WCAG 2.2, success criterion 1.4.6 (enhanced).
    constexpr std::array texts{
        Ink::text,
        Ink::muted,
        Ink::accent,
        Ink::harm,
        Ink::good,
        Ink::person,
        Ink::place,
        Ink::creature,
        Ink::item,
        Ink::faction};
    for (const ThemeName theme : {ThemeName::dark, ThemeName::paper})
        for (const Ink ground : {Ink::ground, Ink::panel, Ink::raised})
            for (const Ink ink : texts) {
                CAPTURE(static_cast<int>(theme));
                CAPTURE(static_cast<int>(ground));
                CAPTURE(static_cast<int>(ink));
                CHECK(contrast_ratio(ink_of(theme, ink), ink_of(theme, ground)) >= 7.0);
            }
}

TEST_CASE("contrast: the frames of controls have 3 to 1 on every ground of both themes") {
    // WCAG 2.2, success criterion 1.4.11.
    for (const ThemeName theme : {ThemeName::dark, ThemeName::paper})
        for (const Ink ground : {Ink::ground, Ink::panel, Ink::raised}) {
            CAPTURE(static_cast<int>(theme));
            CAPTURE(static_cast<int>(ground));
            CHECK(contrast_ratio(ink_of(theme, Ink::line), ink_of(theme, ground)) >= 3.0);
        }
}

TEST_CASE("contrast: the caption of the one next step has 7 to 1 on its accent") {
    for (const ThemeName theme : {ThemeName::dark, ThemeName::paper})
        CHECK(contrast_ratio(ink_of(theme, Ink::ground), ink_of(theme, Ink::accent)) >= 7.0);
}
