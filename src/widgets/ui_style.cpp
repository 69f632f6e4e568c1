// The colour tables, the look in force, and sizes.
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace widgets {

namespace {

Look look_in_force; // one window, one look

struct InkPair {
    Ink ink = Ink::ground;
    Rgb dark;
    Rgb paper;
};

// Tuned until text has 7:1 on ground, panel and raised, lines 3:1, and no two kinds come closer
// than CIEDE2000 10 under simulated colour blindness; the tests of contrast and colour sight hold
// it.
constexpr std::array<InkPair, 14> inks{{
    {Ink::ground, {0x15, 0x18, 0x1B}, {0xF4, 0xEE, 0xDF}},
    {Ink::panel, {0x1D, 0x22, 0x26}, {0xFB, 0xF7, 0xEC}},
    {Ink::raised, {0x28, 0x2F, 0x35}, {0xE9, 0xE0, 0xCB}},
    {Ink::text, {0xEF, 0xE9, 0xDC}, {0x22, 0x26, 0x2A}},
    {Ink::muted, {0xC6, 0xBF, 0xB0}, {0x43, 0x44, 0x40}},
    {Ink::accent, {0xE9, 0xBA, 0x58}, {0x63, 0x3E, 0x00}},
    {Ink::harm, {0xFF, 0xA7, 0x9E}, {0x7E, 0x1A, 0x15}},
    {Ink::good, {0x93, 0xD6, 0xA2}, {0x17, 0x51, 0x2A}},
    {Ink::person, {0xC1, 0xE7, 0xFF}, {0x1A, 0x4A, 0x6D}},
    {Ink::place, {0xD4, 0xC0, 0x2E}, {0x35, 0x23, 0x04}},
    {Ink::creature, {0xFD, 0xA3, 0xC1}, {0x76, 0x1C, 0x3F}},
    {Ink::item, {0xBF, 0xDD, 0x91}, {0x38, 0x4E, 0x00}},
    {Ink::faction, {0xBE, 0xB2, 0xFC}, {0x32, 0x18, 0xB9}},
    {Ink::line, {0x86, 0x89, 0x8A}, {0x7D, 0x77, 0x68}},
}};

ImVec4 to_colour(Rgb rgb, float alpha = 1.0F) {
    constexpr float most = 255.0F;
    return {
        static_cast<float>(rgb.red) / most,
        static_cast<float>(rgb.green) / most,
        static_cast<float>(rgb.blue) / most,
        alpha};
}

void apply_sizes(ImGuiStyle& style, const Look& look) {
    // Whole pixels: the library cuts positions to them and takes the spacing off again afterwards.
    const auto at = [&look](float length) { return std::round(length * look.scale); };
    // 44 or 30 px with a line of 16, never less.
    const float padding = std::ceil((look.is_touch ? 14.0F : 7.0F) * look.scale);
    style.WindowPadding = {at(12.0F), at(10.0F)};
    style.FramePadding = {at(10.0F), padding};
    style.CellPadding = {at(6.0F), at(3.0F)};
    style.ItemSpacing = {at(8.0F), at(6.0F)};
    style.ItemInnerSpacing = {at(8.0F), at(4.0F)};
    style.IndentSpacing = at(16.0F);
    style.ScrollbarSize = at(look.is_touch ? 20.0F : 14.0F);
    style.GrabMinSize = at(look.is_touch ? 32.0F : 20.0F);
    style.WindowRounding = 0.0F;
    style.ChildRounding = 0.0F;
    style.FrameRounding = at(5.0F);
    style.PopupRounding = at(6.0F);
    style.ScrollbarRounding = at(7.0F);
    style.GrabRounding = at(5.0F);
    style.WindowBorderSize = 0.0F;
    style.ChildBorderSize = 0.0F;
    style.FrameBorderSize = std::max(1.0F, at(1.0F));
    style.PopupBorderSize = std::max(1.0F, at(1.5F));
    style.DisabledAlpha = 0.5F;
    style.SeparatorTextBorderSize = at(1.0F);
    style.MouseCursorScale = 1.0F;
}

void apply_colours(ImGuiStyle& style, ThemeName theme) {
    const auto ink = [theme](Ink which, float alpha = 1.0F) {
        return to_colour(ink_of(theme, which), alpha);
    };
    ImVec4* colours = style.Colors;
    std::fill(colours, colours + ImGuiCol_COUNT, ink(Ink::raised));
    colours[ImGuiCol_Text] = ink(Ink::text);
    colours[ImGuiCol_TextDisabled] = ink(Ink::muted);
    colours[ImGuiCol_TextSelectedBg] = ink(Ink::accent, 0.35F);
    colours[ImGuiCol_WindowBg] = ink(Ink::panel);
    colours[ImGuiCol_ChildBg] = ink(Ink::panel, 0.0F);
    colours[ImGuiCol_PopupBg] = ink(Ink::panel);
    colours[ImGuiCol_Border] = ink(Ink::line);
    colours[ImGuiCol_BorderShadow] = ink(Ink::line, 0.0F);
    colours[ImGuiCol_FrameBg] = ink(Ink::ground);
    colours[ImGuiCol_FrameBgHovered] = ink(Ink::raised);
    colours[ImGuiCol_FrameBgActive] = ink(Ink::ground);
    colours[ImGuiCol_ScrollbarBg] = ink(Ink::ground, 0.0F);
    colours[ImGuiCol_ScrollbarGrab] = ink(Ink::line);
    colours[ImGuiCol_ScrollbarGrabHovered] = ink(Ink::muted);
    colours[ImGuiCol_ScrollbarGrabActive] = ink(Ink::accent);
    colours[ImGuiCol_CheckMark] = ink(Ink::accent);
    colours[ImGuiCol_SliderGrab] = ink(Ink::accent);
    colours[ImGuiCol_SliderGrabActive] = ink(Ink::accent);
    colours[ImGuiCol_ButtonActive] = ink(Ink::line, 0.5F);
    colours[ImGuiCol_ButtonHovered] = ink(Ink::line, 0.35F);
    colours[ImGuiCol_HeaderHovered] = ink(Ink::raised);
    colours[ImGuiCol_HeaderActive] = ink(Ink::line, 0.5F);
    colours[ImGuiCol_Separator] = ink(Ink::line, 0.6F);
    colours[ImGuiCol_TableBorderLight] = ink(Ink::line, 0.35F);
    colours[ImGuiCol_TableBorderStrong] = ink(Ink::line, 0.7F);
    colours[ImGuiCol_TableRowBg] = ink(Ink::panel, 0.0F);
    colours[ImGuiCol_TableRowBgAlt] = ink(Ink::raised, 0.35F);
    colours[ImGuiCol_NavHighlight] = ink(Ink::accent);
    colours[ImGuiCol_DragDropTarget] = ink(Ink::accent);
    colours[ImGuiCol_ModalWindowDimBg] = ink(Ink::ground, 0.6F);
}

} // namespace

Rgb ink_of(ThemeName theme, Ink ink) {
    for (const InkPair& pair : inks)
        if (pair.ink == ink) return theme == ThemeName::dark ? pair.dark : pair.paper;
    return {};
}

void set_look(const Look& look) {
    look_in_force = look;
}

const Look& look() {
    return look_in_force;
}

void apply_style(const Look& look) {
    ImGuiStyle& style = ImGui::GetStyle();
    style = ImGuiStyle();
    apply_sizes(style, look);
    apply_colours(style, look.theme);
}

ImVec4 colour(Ink ink) {
    return to_colour(ink_of(look_in_force.theme, ink));
}

std::uint32_t colour_u32(Ink ink, float alpha) {
    return ImGui::GetColorU32(to_colour(ink_of(look_in_force.theme, ink), alpha));
}

float px(float at_scale_1) {
    return at_scale_1 * look_in_force.scale;
}

float row_height() {
    return px(look_in_force.is_touch ? 44.0F : 30.0F);
}

ImFont* font(TextSize size) {
    const Fonts& fonts = look_in_force.fonts;
    switch (size) {
    case TextSize::small: return fonts.small;
    case TextSize::body: return fonts.body;
    case TextSize::name: return fonts.name;
    case TextSize::current: return fonts.current;
    case TextSize::spoken: return fonts.spoken;
    }
    return fonts.body;
}

void push_font(TextSize size) {
    ImGui::PushFont(font(size));
}

void push_numbers(TextSize size) {
    const Fonts& fonts = look_in_force.fonts;
    switch (size) {
    case TextSize::small:
    case TextSize::body: ImGui::PushFont(fonts.numbers); break;
    case TextSize::name:
    case TextSize::current: ImGui::PushFont(fonts.numbers_name); break;
    case TextSize::spoken: ImGui::PushFont(fonts.numbers_large); break;
    }
}

} // namespace widgets
