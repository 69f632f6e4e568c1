// Find: one box over everything. What is typed is looked for in the whole campaign, the rules and
// the program's own actions, and answered where it is a question.
#pragma once

#include "app/finder.h"
#include "app/typed_order.h"
#include "game/answer.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace app {

struct ShellState;

struct FindBox {
    bool wants_open = false;
    bool is_open = false;
    bool wants_keyboard = false; // the field, when it is drawn next
    std::string typed;
    std::size_t chosen = 0; // among the hits
    Finder finder{};
    // Kept until something else is typed or the index changes.
    std::string found_for;
    std::uint64_t found_in = 0;
    std::vector<game::FindHit> hits;
    std::optional<game::Answer> answer;
    std::optional<TypedOrder> order; // can be done at once
    std::string hint; // how a question that is begun is asked, or why it has no answer
};

// Opens the box when it is wanted, and draws it while it is open. Within a window.
void draw_find_box(ShellState& state);

} // namespace app
