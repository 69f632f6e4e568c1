// The plan of a session: what it is called, who comes, what must be known, people and fights.
#include "game/registering.h"
#include "widgets/encounter_preparation_form.h"
#include "widgets/kind_ink.h"
#include "widgets/read_only.h"
#include "widgets/session_sheet_parts.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using game::Session;

namespace {

constexpr float text_height = 84.0F;

void draw_head(const SheetOf& of) {
    Flow flow;
    flow.field("No.", stepper_width());
    const auto number = stepper("number", of.session.number, 0, 1'000'000, "A number");
    Flow::end_field();
    if (number.has_value())
        ask_session(of, "Session " + std::to_string(*number), {}, [n = *number](Session& changed) {
            changed.number = n;
        });
    const std::pair<const char*, std::string Session::*> fields[] = {
        {"Title", &Session::title}, {"Played on", &Session::played_on}};
    for (const auto& [caption, part] : fields) {
        const std::string label = std::string("##") + caption;
        const float width =
            std::min(part == &Session::title ? px(260.0F) : width_of_letters(12), px(260.0F));
        flow.field(caption, width);
        const auto typed = checked_text(
            label, of.session.*part, of.view.drafts, of.context.now_seconds, width, check_text
        );
        Flow::end_field();
        if (typed.has_value())
            ask_session(
                of,
                std::string(caption) + ": " + *typed,
                label,
                [part = part, words = *typed](Session& changed) { changed.*part = words; }
            );
    }
}

void draw_long(
    const SheetOf& of, const char* caption, const char* label, std::string Session::*part
) {
    heading(caption);
    const auto typed =
        long_text(label, of.session.*part, of.view.drafts, of.context.now_seconds, px(text_height));
    if (typed.has_value())
        ask_session(of, caption, label, [part, words = *typed](Session& changed) {
            changed.*part = words;
        });
    draw_complaints(of.view.drafts, label);
}

bool has(const std::vector<base::Id>& ids, base::Id id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

// Takes the id in where it was not, out where it was.
void toggle(std::vector<base::Id>& ids, base::Id id) {
    if (std::erase(ids, id) == 0) ids.push_back(id);
}

void draw_present(const SheetOf& of) {
    heading("Who comes");
    if (of.context.campaign.party.characters.empty()) {
        text_wrapped(Ink::muted, "Nobody is in the party yet.");
        return;
    }
    Flow flow;
    for (const game::Character& character : of.context.campaign.party.characters) {
        const std::string label = character.name + "##present " + std::to_string(character.id);
        flow.next(button_width(label.c_str()));
        const bool comes = has(of.session.present, character.id);
        if (toggle_button(label.c_str(), comes))
            ask_session(
                of,
                character.name + (comes ? " does not come" : " comes"),
                {},
                [id = character.id](Session& changed) { toggle(changed.present, id); }
            );
    }
}

void draw_people(const SheetOf& of) {
    heading("People and places to meet");
    const game::Register& registered = of.context.campaign.registered;
    Flow flow;
    for (const base::Id id : of.session.people) {
        const game::RegisterEntry* entry = game::find_register_entry(registered, id);
        if (entry == nullptr) continue;
        const std::string label = std::string(game::kind_letter(entry->kind)) + "  " + entry->name +
                                  "##person " + std::to_string(id);
        const std::string remove = "x##without " + std::to_string(id);
        flow.next(button_width(label.c_str()) + button_width(remove.c_str()));
        ImGui::BeginGroup();
        if (chip(label.c_str(), ink_of_kind(entry->kind))) {
            of.context.selection.wanted_panel = "register";
            of.context.selection.wanted_entry = id;
        }
        ImGui::SameLine(0.0F, px(2.0F));
        if (small_button(remove.c_str()))
            ask_session(of, "Without " + entry->name, {}, [id](Session& changed) {
                std::erase(changed.people, id);
            });
        ImGui::EndGroup();
    }
    const float width = px(220.0F);
    flow.next(width);
    if (!begin_choice("##add person", "add one of the Register", width)) return;
    for (const game::RegisterEntry& entry : registered.entries) {
        if (has(of.session.people, entry.id)) continue;
        const std::string words = std::string(game::kind_letter(entry.kind)) + "  " + entry.name +
                                  "##" + std::to_string(entry.id);
        if (choice_row(words, false))
            ask_session(of, "Meet " + entry.name, {}, [id = entry.id](Session& changed) {
                changed.people.push_back(id);
            });
    }
    if (registered.entries.empty()) text(Ink::muted, "The Register is empty.");
    ImGui::EndCombo();
}

void draw_encounters(const SheetOf& of) {
    heading("Fights");
    const game::Preparation& preparation = of.context.campaign.preparation;
    for (const base::Id id : of.session.encounters) {
        const game::PreparedEncounter* prepared = game::find_prepared(preparation, id);
        if (prepared == nullptr) continue;
        ImGui::PushID(static_cast<int>(id));
        draw_start(of.context, *prepared, "##planned");
        ImGui::SameLine();
        if (small_button("x##without fight"))
            ask_session(of, "Without " + prepared->name, {}, [id](Session& changed) {
                std::erase(changed.encounters, id);
            });
        ImGui::SameLine();
        ImGui::AlignTextToFramePadding();
        text_fitted(Ink::text, prepared->name, ImGui::GetContentRegionAvail().x);
        ImGui::PopID();
    }
    if (preparation.encounters.empty()) {
        text_wrapped(Ink::muted, "Prepare fights in the Encounter Budget; they can be put here.");
        return;
    }
    const float width = px(220.0F);
    if (!begin_choice("##add fight", "add a prepared fight", width)) return;
    for (const game::PreparedEncounter& prepared : preparation.encounters) {
        if (has(of.session.encounters, prepared.id)) continue;
        if (choice_row(prepared.name + "##" + std::to_string(prepared.id), false))
            ask_session(of, "Plan " + prepared.name, {}, [id = prepared.id](Session& changed) {
                changed.encounters.push_back(id);
            });
    }
    ImGui::EndCombo();
}

void draw_removal(const SheetOf& of) {
    ImGui::Dummy({0.0F, px(8.0F)});
    if (!button("Strike this session")) return;
    of.context.edits.add(
        &game::Campaign::sessions,
        "Strike " + game::session_title(of.session),
        [id = of.session.id](game::Sessions& sessions) { game::remove_session(sessions, id); }
    );
    of.view.session = base::no_id;
}

} // namespace

void draw_sheet_plan(const SheetOf& of) {
    if (ImGui::BeginChild("plan", {0.0F, 0.0F})) {
        ImGui::BeginDisabled(of.context.is_read_only);
        draw_head(of);
        draw_present(of);
        draw_long(of, "What is planned", "##summary", &Session::summary);
        draw_long(of, "Must know", "##must know", &Session::must_know);
        draw_sheet_lists(of);
        draw_people(of);
        draw_encounters(of);
        draw_removal(of);
        ImGui::EndDisabled();
    }
    ImGui::EndChild();
}

} // namespace widgets
