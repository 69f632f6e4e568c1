#include "widgets/recap_page.h"

#include "game/recap.h"
#include "game/session_keeping.h"
#include "widgets/campaign_path.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace widgets {

using game::RecapPage;
using game::Session;

const PanelInfo recap_page_info{
    "recap_page",
    "Recap Page",
    "What the players get of a session: five parts, filled from the notes.",
    "",
    360.0F,
    300.0F};

namespace {

constexpr float part_height = 92.0F;

void ask_filling(const PanelContext& context, RecapPageView& view, const Session& session) {
    view.names.follow(context.campaign.registered);
    RecapPage recap = game::recap_of(context.campaign, session, view.names);
    recap.unknown = session.recap.unknown;
    view.done =
        game::is_empty(recap) ? "The notes hold no deed, discovery, loot or known name yet." : "";
    context.edits.add(
        &game::Campaign::sessions,
        "Fill the recap from the notes",
        [id = session.id, recap](game::Sessions& sessions) {
            if (Session* found = game::find_session(sessions, id)) found->recap = recap;
        }
    );
    view.drafts = {};
}

void draw_part(
    const PanelContext& context,
    RecapPageView& view,
    const Session& session,
    const game::RecapPart& part
) {
    heading(part.title);
    const std::string label = std::string("##") + part.title;
    const auto typed = long_text(
        label, session.recap.*part.part, view.drafts, context.now_seconds, px(part_height)
    );
    if (typed.has_value())
        context.edits.add(
            &game::Campaign::sessions,
            std::string("Recap: ") + part.title,
            [id = session.id, which = part.part, words = *typed](game::Sessions& sessions) {
                if (Session* found = game::find_session(sessions, id)) found->recap.*which = words;
            },
            "recap/" + std::to_string(session.id) + part.title
        );
    draw_complaints(view.drafts, label);
}

// Beside the campaign, by the number of the session.
std::string usual_path(const PanelContext& context, const Session& session) {
    return beside_campaign(context, "-session-" + std::to_string(session.number) + ".md");
}

bool is_markdown(const std::string& path) {
    return path.ends_with(".md");
}

void draw_saving(const PanelContext& context, RecapPageView& view, const Session& session) {
    const std::string why_not =
        game::is_empty(session.recap) ? "There is nothing on the page yet." : "";
    Flow flow;
    flow.next(button_width("Copy as Markdown"));
    if (button("Copy as Markdown", why_not)) {
        ImGui::SetClipboardText(game::recap_markdown(session).c_str());
        view.done = "Copied as Markdown.";
    }
    flow.next(button_width("Copy as text"));
    if (button("Copy as text", why_not)) {
        ImGui::SetClipboardText(game::recap_text(session).c_str());
        view.done = "Copied as text.";
    }
    const std::string usual = usual_path(context, session);
    const float width = std::min(px(320.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##path");
    ImGui::InputTextWithHint("##path", usual.c_str(), &view.path);
    flow.next(button_width("Save"));
    const bool can_save = context.save_text != nullptr && *context.save_text;
    if (button("Save", can_save ? why_not : "Files are out of reach here.")) {
        const std::string path = view.path.empty() ? usual : view.path;
        (*context.save_text
        )(path, is_markdown(path) ? game::recap_markdown(session) : game::recap_text(session));
        view.done.clear();
    }
    if (!view.done.empty()) text_wrapped(Ink::muted, view.done);
}

} // namespace

void draw_recap_page(const PanelContext& context, RecapPageView& view) {
    const game::Sessions& sessions = context.campaign.sessions;
    const Session* session = game::find_session(sessions, view.session);
    if (session == nullptr) session = game::current_session(sessions);
    if (session == nullptr) {
        empty_state("What the players get of a session, in five parts. Begin a session in the "
                    "Session Sheet; its notes fill this page.");
        return;
    }
    Flow flow;
    const float width = std::min(px(260.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    if (begin_choice("##session", game::session_title(*session), width)) {
        for (std::size_t left = sessions.sessions.size(); left > 0; --left) {
            const game::Session& each = sessions.sessions[left - 1];
            const std::string words = game::session_title(each) + "##" + std::to_string(each.id);
            if (!choice_row(words, each.id == session->id)) continue;
            view.session = each.id;
            view.drafts = {};
        }
        ImGui::EndCombo();
    }
    const bool is_empty = game::is_empty(session->recap);
    const char* fill = is_empty ? "Fill from the notes" : "Fill anew from the notes";
    flow.next(button_width(fill));
    if (is_empty ? primary_button(fill, read_only_reason(context))
                 : button(fill, read_only_reason(context)))
        ask_filling(context, view, *session);
    draw_saving(context, view, *session);
    ImGui::PushID(static_cast<int>(session->id));
    if (ImGui::BeginChild("parts", {0.0F, 0.0F})) {
        ImGui::BeginDisabled(context.is_read_only);
        for (const game::RecapPart& part : game::recap_parts())
            draw_part(context, view, *session, part);
        ImGui::EndDisabled();
    }
    ImGui::EndChild();
    ImGui::PopID();
}

} // namespace widgets
