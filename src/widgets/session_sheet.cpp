#include "widgets/session_sheet.h"

#include "widgets/read_only.h"
#include "widgets/session_sheet_parts.h"

#include <imgui.h>

#include <utility>

namespace widgets {

using game::Section;
using game::Session;

const PanelInfo session_sheet_info{
    "session_sheet",
    "Session Sheet",
    "The plan of the evening, and what happened, line by line.",
    "Shift+F7",
    320.0F,
    200.0F};

void ask_session(
    const SheetOf& of,
    std::string label,
    const std::string& typed_in,
    std::function<void(Session&)> change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "session/" + std::to_string(of.session.id) + typed_in;
    of.context.edits.add(
        &game::Campaign::sessions,
        std::move(label),
        [id = of.session.id, change = std::move(change)](game::Sessions& sessions) {
            if (Session* session = game::find_session(sessions, id)) change(*session);
        },
        merge_key
    );
}

static void ask_new_session(const PanelContext& context, SessionSheetView& view) {
    constexpr std::size_t date_letters = 10; // "2026-01-31" of the whole time
    const std::string date(context.real_time.substr(0, date_letters));
    context.edits.add({Section::sessions}, "Begin a session", [date](game::Campaign& campaign) {
        const base::Id id = game::begin_session(campaign, date);
        return "Begin " + game::session_title(*game::find_session(campaign.sessions, id));
    });
    view.session = base::no_id;
    view.side = SheetSide::plan;
    view.drafts = {};
}

static void draw_session_choice(const SheetOf& of, float width) {
    const std::string now = game::session_title(of.session);
    if (!begin_choice("##session", now, width)) return;
    const auto& all = of.context.campaign.sessions.sessions;
    for (std::size_t left = all.size(); left > 0; --left) { // the latest first
        const Session& session = all[left - 1];
        std::string words = game::session_title(session);
        if (!session.played_on.empty()) words += "  " + session.played_on;
        words += "##" + std::to_string(session.id);
        if (!choice_row(words, session.id == of.session.id)) continue;
        of.view.session = session.id;
        of.view.drafts = {};
        of.view.opened_line = base::no_id;
    }
    ImGui::EndCombo();
}

static void draw_sheet_header(const SheetOf& of) {
    Flow flow;
    const float width = std::min(px(260.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    draw_session_choice(of, width);
    const std::pair<const char*, SheetSide> sides[] = {
        {"Notes", SheetSide::notes},
        {"Plan", SheetSide::plan},
        {"Last time", SheetSide::last_time}};
    for (const auto& [words, side] : sides) {
        flow.next(button_width(words));
        if (toggle_button(words, of.view.side == side)) of.view.side = side;
    }
    flow.next(button_width("Begin another"));
    if (button("Begin another", read_only_reason(of.context))) ask_new_session(of.context, of.view);
}

static void draw_last_time(const SheetOf& of) {
    const Session* before = game::session_before(of.context.campaign.sessions, of.session.id);
    if (before == nullptr) {
        text_wrapped(Ink::muted, "This is the first session.");
        return;
    }
    heading(game::session_title(*before));
    if (!before->played_on.empty()) text(Ink::muted, before->played_on);
    draw_note_lines(of, *before, false);
}

// Another panel asks for a session, or for a line of its notes.
static void take_wanted_line(const PanelContext& context, SessionSheetView& view) {
    const Wanted wanted = take_wanted(context.selection, session_sheet_info);
    const Session* session = game::find_session(context.campaign.sessions, wanted.id);
    if (session == nullptr) return;
    view.session = session->id;
    view.side = wanted.line == base::no_id ? SheetSide::plan : SheetSide::notes;
    view.drafts = {};
    view.opened_line = wanted.line;
    view.wants_line = wanted.line;
    view.lines_seen = session->lines.size();
}

void draw_session_sheet(const PanelContext& context, SessionSheetView& view) {
    if (std::exchange(context.selection.wants_note, false)) {
        view.wants_note = true;
        view.side = SheetSide::notes;
        view.session = base::no_id;
    }
    take_wanted_line(context, view);
    const game::Sessions& sessions = context.campaign.sessions;
    const Session* session = game::find_session(sessions, view.session);
    if (session == nullptr) session = game::current_session(sessions);
    if (session == nullptr) {
        empty_state("The plan of an evening and what happened, line by line. Names of the Register "
                    "light up as you write.");
        if (primary_button("Begin the first session", read_only_reason(context)))
            ask_new_session(context, view);
        return;
    }
    view.names.follow(context.campaign.registered);
    const SheetOf of{context, view, *session};
    draw_sheet_header(of);
    ImGui::PushID(static_cast<int>(session->id));
    switch (view.side) {
    case SheetSide::notes: draw_sheet_notes(of); break;
    case SheetSide::plan: draw_sheet_plan(of); break;
    case SheetSide::last_time:
        if (ImGui::BeginChild("last time", {0.0F, 0.0F})) draw_last_time(of);
        ImGui::EndChild();
        break;
    }
    ImGui::PopID();
}

} // namespace widgets
