// The parts of the Session Sheet. Nothing but that panel needs them.
#pragma once

#include "widgets/session_sheet.h"

#include <functional>
#include <string>

namespace widgets {

struct SheetOf {
    const PanelContext& context;
    SessionSheetView& view;
    const game::Session& session;
};

// Asks for a change of the session; `typed_in` names the field when it is text being typed.
void ask_session(
    const SheetOf& of,
    std::string label,
    const std::string& typed_in,
    std::function<void(game::Session&)> change
);

void draw_sheet_plan(const SheetOf& of);  // title, date, who comes, scenes, goals, people ...
void draw_sheet_lists(const SheetOf& of); // scenes, goals, loot: what is checked off
void draw_sheet_notes(const SheetOf& of); // the lines, and the field for the next one
// The lines of a session, to be read; pressing one opens it where `is_open_to_change`.
void draw_note_lines(const SheetOf& of, const game::Session& session, bool is_open_to_change);

} // namespace widgets
