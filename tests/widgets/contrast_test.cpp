// What the style paints, against the Web Content Accessibility Guidelines (WCAG) 2.2: text 7:1
// (success criterion 1.4.6, level AAA), parts of controls 3:1 (success criterion 1.4.11). The
// colour tables themselves are held by the contrast test of the program.
#include "driver.h"
#include "widgets/contrast.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>

using widgets::contrast_ratio;
using widgets::Ink;
using widgets::ink_of;
using widgets::Rgb;
using widgets::ThemeName;

namespace {

constexpr double text_least = 7.0;
constexpr double control_least = 3.0;

constexpr std::array<ThemeName, 2> themes{ThemeName::dark, ThemeName::paper};

Rgb rgb_of(const ImVec4& colour) {
    const auto part = [](float share) {
        return static_cast<std::uint8_t>(std::lround(share * 255.0F));
    };
    return {part(colour.x), part(colour.y), part(colour.z)};
}

} // namespace

TEST_CASE("contrast: the formula gives the published examples") {
    const Rgb black{0, 0, 0};
    const Rgb white{255, 255, 255};
    // WCAG 2.2, definitions "relative luminance" (0 for darkest black, 1 for lightest white) and
    // "contrast ratio" (ratios range from 1 to 21).
    CHECK(widgets::relative_luminance(black) == doctest::Approx(0.0));
    CHECK(widgets::relative_luminance(white) == doctest::Approx(1.0));
    // The parts weigh as the definition prints: red 0.2126, green 0.7152, blue 0.0722.
    CHECK(widgets::relative_luminance({255, 0, 0}) == doctest::Approx(0.2126));
    CHECK(widgets::relative_luminance({0, 255, 0}) == doctest::Approx(0.7152));
    CHECK(widgets::relative_luminance({0, 0, 255}) == doctest::Approx(0.0722));
}

TEST_CASE("contrast: the order of two colours does not matter") {
    const Rgb one{0x12, 0x34, 0x56};
    const Rgb two{0xE0, 0xC0, 0x80};
    CHECK(contrast_ratio(one, two) == contrast_ratio(two, one));
}

TEST_CASE("contrast: what the style of the screen paints, opacity counted, holds 3:1") {
    for (const ThemeName theme : themes) {
        CAPTURE(static_cast<int>(theme));
        ImGuiContext* context = ImGui::CreateContext();
        widgets::Look look;
        look.theme = theme;
        widgets::apply_style(look);
        const Rgb panel = ink_of(theme, Ink::panel);
        const ImVec4* colours = ImGui::GetStyle().Colors;
        for (const int part :
             {ImGuiCol_ScrollbarGrab,
              ImGuiCol_ScrollbarGrabHovered,
              ImGuiCol_ScrollbarGrabActive,
              ImGuiCol_Border,
              ImGuiCol_CheckMark,
              ImGuiCol_SliderGrab,
              ImGuiCol_NavHighlight}) {
            CAPTURE(std::string(ImGui::GetStyleColorName(part)));
            const Rgb seen = widgets::blended(rgb_of(colours[part]), panel, colours[part].w);
            CHECK(contrast_ratio(seen, panel) >= control_least);
        }
        for (const int part : {ImGuiCol_Text, ImGuiCol_TextDisabled}) {
            const Rgb seen = rgb_of(colours[part]);
            CHECK(contrast_ratio(seen, panel) >= text_least);
            // A marked piece of text stays readable.
            const ImVec4 mark = colours[ImGuiCol_TextSelectedBg];
            const Rgb marked = widgets::blended(rgb_of(mark), ink_of(theme, Ink::ground), mark.w);
            CHECK(contrast_ratio(ink_of(theme, Ink::text), marked) >= 4.5);
        }
        ImGui::DestroyContext(context);
    }
}
