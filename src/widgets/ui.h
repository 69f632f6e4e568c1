// The small vocabulary that panels are written in: colours by meaning, sizes, and the few composed
// controls that all panels share. Panels take every colour, spacing and target size from here.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

struct ImFont;
struct ImVec2;
struct ImVec4;

namespace widgets {

enum class ThemeName { dark, paper };

// Colours by what they mean; the theme decides what they look like.
enum class Ink {
    ground,
    panel,
    raised,
    text,
    muted,
    accent, // current, focus
    harm,
    good,
    person,
    place,
    creature,
    item,
    faction,
    line, // separators and frames of controls (3:1 on panel)
};

struct Rgb {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;

    bool operator==(const Rgb&) const = default;
};

// The colour table of a theme, for the style and for the contrast tests.
Rgb ink_of(ThemeName theme, Ink ink);

// Text sizes at scale 1: small 14 px, body 16, row name 20, current name 28, spoken number 44.
enum class TextSize { small, body, name, current, spoken };

struct Fonts {
    ImFont* small = nullptr;
    ImFont* body = nullptr;
    ImFont* name = nullptr;
    ImFont* current = nullptr;
    ImFont* spoken = nullptr;
    ImFont* strong = nullptr;        // bold, body size
    ImFont* numbers = nullptr;       // tabular figures, body size
    ImFont* numbers_name = nullptr;  // tabular figures, row name size
    ImFont* numbers_large = nullptr; // tabular figures, spoken size
};

struct Look {
    ThemeName theme = ThemeName::dark;
    float scale = 1.0F;    // text scale x display scale
    bool is_touch = false; // 44 px targets instead of 30
    Fonts fonts{};
};

// The look in force; set once a frame by the host (and by the test driver). Fonts may be null: the
// default is used.
void set_look(const Look& look);
const Look& look();
// Writes colours, spacing and rounding of the look into ImGui's style.
void apply_style(const Look& look);

ImVec4 colour(Ink ink);
std::uint32_t colour_u32(Ink ink, float alpha = 1.0F);

float px(float at_scale_1); // pixels for a length at scale 1
float row_height();         // smallest target: 30 px compact, 44 px touch, times scale
ImFont* font(TextSize size);
void push_font(TextSize size); // pop with ImGui::PopFont
void push_numbers(TextSize size);

// Text in a colour. All of them appear in the log (ImGui::LogText), so tests can read them.
void text(Ink ink, std::string_view text);
void text_wrapped(Ink ink, std::string_view text);
void text_right_aligned(Ink ink, std::string_view text, float width);
// Text cut with an ellipsis when wider than `width`, the whole text in a tooltip.
void text_fitted(Ink ink, std::string_view text, float width);

// A heading row within a panel.
void heading(std::string_view text);

// What an empty panel says: what it is for. The first step (a button) follows by the caller.
void empty_state(std::string_view what_it_is_for);

// Buttons: full target height. `why_not` non-empty disables it and shows the reason as a tooltip.
bool button(const char* label, std::string_view why_not = {});
bool primary_button(const char* label, std::string_view why_not = {}); // accent: the one next step
bool small_button(const char* label, std::string_view why_not = {});
bool toggle_button(const char* label, bool is_on, std::string_view why_not = {});
// Stays on the line if the next item of this width fits, otherwise starts a new one.
void same_line_if_fits(float width);
float button_width(const char* label);

// A chip: a word in a rounded frame, such as a condition; returns true when pressed.
bool chip(const char* label, Ink ink, std::string_view tooltip = {});

// A bar with its number written beside it: "38/52" and "+5" for temporary HP. Shape and number
// carry the meaning.
void hp_bar(int hp, int hp_max, int temp_hp, ImVec2 size);

// A whole number typed by the GM. Returns the new value when it is committed (Enter, or the field
// is left) and lies in range; otherwise the old value stays and one short line says why ("AC is 0
// to 99.").
std::optional<int> number_field(
    const char* label, int value, int minimum, int maximum, float width, std::string_view what
);

// A one-line text, committed when left, and every second while typing. `draft` belongs to the view.
struct TextDraft {
    std::string text;
    bool is_active = false;
    double changed_at = 0.0;
    std::string committed; // the last text handed out
};

// Returns the text to commit, if any. `is_final` tells that the field was left. `complaint`
// non-empty refuses: shown below.
std::optional<std::string> text_field(
    const char* label, std::string_view value, TextDraft& draft, double now_seconds, float width
);
std::optional<std::string> text_area(
    const char* label, std::string_view value, TextDraft& draft, double now_seconds, ImVec2 size
);

// One short line under a refused field.
void complaint(std::string_view text);

// Frames are drawn only after events. What changes by itself (a mark that fades, typing that is due
// to be committed) asks for one that many seconds from now; the soonest wish counts.
void ask_frame_in(double seconds);
// The soonest wish since the last call, or nothing.
std::optional<double> take_frame_wish();

} // namespace widgets
