// What forms are put together from: fields that flow over the line with their names, choices,
// steppers, texts that are checked before they are taken, pressable rows. For panels that enter
// data.
#pragma once

#include "widgets/panel.h"
#include "widgets/ui.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace widgets {

// Places items side by side as long as they fit. Call next() before each.
class Flow {
public:
    void next(float width);
    // The next field with its name before it: the name is drawn, the field follows on the line.
    // Needs end_field() after the field, so that both stay together.
    void field(std::string_view name, float field_width);
    static void end_field();

private:
    bool is_first_ = true;
};

// Texts being typed and what was refused, by the label of the field.
struct FormDrafts {
    std::map<std::string, TextDraft> texts;
    std::map<std::string, std::string> complaints;
};

// Why a text is not taken, in one short line; empty when it is.
using TextCheck = std::function<std::string(const std::string&)>;

// The field drawn next takes the keyboard, whichever part of the window had it before.
void give_keyboard_to_next_field();

// A one-line text that is refused if `check` complains: the old value stays.
std::optional<std::string> checked_text(
    const std::string& label,
    std::string_view value,
    FormDrafts& drafts,
    double now_seconds,
    float width,
    const TextCheck& check
);

// The same over several lines; only its length is checked.
std::optional<std::string> long_text(
    const std::string& label,
    std::string_view value,
    FormDrafts& drafts,
    double now_seconds,
    float height
);

// The complaints of fields whose label begins with this, each on a line.
void draw_complaints(const FormDrafts& drafts, std::string_view label_begin);

// Checks that several forms need.
std::string check_name(const std::string& text); // not empty, not too long
std::string check_text(const std::string& text); // not too long
std::string check_dice(const std::string& text); // empty or a dice expression

// Minus, the number, plus. Returns the new value when it changes.
std::optional<int>
stepper(const std::string& label, int value, int minimum, int maximum, std::string_view what);
float stepper_width();

// A drop-down of whole rows: between begin_choice and ImGui::EndCombo stand choice_row calls.
bool begin_choice(const char* label, const std::string& chosen, float width);
bool choice_row(const std::string& words, bool is_chosen, bool stays_open = false);

// The pressable ground of a row: `label` is its name (and its handle in tests). Items drawn over it
// stay pressable. The cursor is back at its upper left corner afterwards.
bool row_ground(const std::string& label, float width, float height, bool is_on);

// The keys are free for the panel: it has the keyboard, nobody types, no popup is open, and the
// keyboard does not stand on a control.
bool keys_are_free(const PanelContext& context);

// A width that holds this many digits or letters at the body size, with the frame around them.
float width_of_letters(int letters);

} // namespace widgets
