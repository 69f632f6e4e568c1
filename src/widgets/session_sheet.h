// Session Sheet: the plan of an evening and its running notes, with the names of the Register lit
// up.
#pragma once

#include "game/mentions.h"
#include "game/session_keeping.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace widgets {

enum class SheetSide { notes, plan, last_time };

struct SessionSheetView {
    base::Id session = base::no_id; // looked at; none: the current one
    SheetSide side = SheetSide::notes;
    std::string typed; // a note, not written yet
    game::NoteKind kind = game::NoteKind::note;
    int selected_from = 0; // bytes of `typed` that were selected last
    int selected_to = 0;
    base::Id opened_line = base::no_id;
    base::Id wants_line = base::no_id; // scrolled to when drawn
    bool wants_note = false;           // the field for notes gets the keyboard
    bool is_written = false;    // what is typed stands in the notes now: the field is emptied
    std::size_t lines_seen = 0; // to show the newest when one was written
    std::string new_item;       // of the plan, by the part that is typed in
    std::string typed_in;
    FormDrafts drafts;
    game::RegisteredNames names;
    // Kept until something happens.
    std::optional<std::uint64_t> offers_at;
    base::Id offers_for = base::no_id;
    std::vector<game::NoteOffer> offers;
};

extern const PanelInfo session_sheet_info;

void draw_session_sheet(const PanelContext& context, SessionSheetView& view);

} // namespace widgets
