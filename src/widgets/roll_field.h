// A small field for a number from the dice on the table. It stands blank until the GM types, keeps
// what is typed when it is refused, and says in one short line why.
#pragma once

#include "base/id.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace widgets {

struct RollDrafts {
    struct Draft {
        std::string text;
        std::string complaint; // shown as a tooltip; callers with room show it as a line
        std::optional<int> shown;
    };

    std::map<base::Id, Draft> of;      // by what the number is for
    base::Id focus_next = base::no_id; // this field takes the keyboard when it is drawn next
};

// `shown` is the value in force, none while there is none yet. Returns a number in range when the
// field is left or Enter is pressed and it differs from `shown`.
std::optional<int> roll_field(
    const char* label,
    std::optional<int> shown,
    RollDrafts& drafts,
    base::Id key,
    int minimum,
    int maximum,
    float width,
    std::string_view what
);

// Reads a whole number, with a sign if there is one; none if it is not one.
std::optional<int> whole_number(std::string_view text);

} // namespace widgets
