// The sheet of one entry of the Register.
#include "game/date_text.h"
#include "game/registering.h"
#include "widgets/kind_ink.h"
#include "widgets/lit_text.h"
#include "widgets/read_only.h"
#include "widgets/register_parts.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <utility>

namespace widgets {

using game::RegisterEntry;
using game::Section;

namespace {

constexpr float notes_height = 110.0F;

template <class Change>
void ask_entry(
    const PanelContext& context,
    const RegisterEntry& entry,
    std::string label,
    const std::string& typed_in,
    Change change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "register/" + std::to_string(entry.id) + typed_in;
    context.edits.add(
        &game::Campaign::registered,
        std::move(label),
        [id = entry.id, change](game::Register& registered) {
            if (RegisterEntry* found = game::find_register_entry(registered, id)) change(*found);
        },
        merge_key
    );
}

// The name is taken when the field is left: it changes wherever the entry is spoken of.
void draw_name(const PanelContext& context, RegisterView& view, const RegisterEntry& entry) {
    if (!view.is_naming) view.name = entry.name;
    const float width = std::min(px(260.0F), ImGui::GetContentRegionAvail().x);
    ImGui::SetNextItemWidth(width);
    ImGui::InputText("##name", &view.name);
    view.is_naming = ImGui::IsItemActive();
    if (!ImGui::IsItemDeactivatedAfterEdit() || view.name == entry.name) return;
    const RegisterEntry* other = game::find_registered_name(context.campaign.registered, view.name);
    std::string& complaint = view.drafts.complaints["##name"];
    complaint = check_name(view.name);
    if (complaint.empty() && other != nullptr && other->id != entry.id)
        complaint = "Another entry has that name; merge the two instead.";
    if (!complaint.empty()) return;
    context.edits.add(
        {Section::registered, Section::sessions, Section::day_book, Section::names},
        entry.name + " is now called " + view.name,
        [id = entry.id, name = view.name](game::Campaign& campaign) {
            game::rename_entry(campaign, id, name);
            return std::string();
        }
    );
}

void draw_line(
    const PanelContext& context,
    RegisterView& view,
    const RegisterEntry& entry,
    const char* caption,
    const std::string& label,
    std::string RegisterEntry::*part
) {
    text(Ink::muted, caption);
    const auto typed = checked_text(
        label,
        entry.*part,
        view.drafts,
        context.now_seconds,
        ImGui::GetContentRegionAvail().x,
        check_text
    );
    if (typed.has_value())
        ask_entry(
            context,
            entry,
            std::string(caption) + ": " + entry.name,
            label,
            [part, words = *typed](RegisterEntry& changed) { changed.*part = words; }
        );
    draw_complaints(view.drafts, label);
}

void draw_place(const PanelContext& context, const RegisterEntry& entry) {
    const game::Register& registered = context.campaign.registered;
    const RegisterEntry* place = game::find_register_entry(registered, entry.place);
    text(Ink::muted, "where");
    const float width = std::min(px(260.0F), ImGui::GetContentRegionAvail().x);
    if (!begin_choice("##place", place == nullptr ? "nowhere yet" : place->name, width)) return;
    const auto choose = [&](base::Id id, const std::string& where) {
        ask_entry(context, entry, entry.name + ": " + where, {}, [id](RegisterEntry& changed) {
            changed.place = id;
        });
    };
    if (choice_row("nowhere yet", place == nullptr)) choose(base::no_id, "nowhere yet");
    for (const RegisterEntry& each : registered.entries) {
        if (each.kind != game::Kind::place || each.id == entry.id) continue;
        if (choice_row(each.name + "##" + std::to_string(each.id), each.id == entry.place))
            choose(each.id, each.name);
    }
    ImGui::EndCombo();
}

void draw_met(const PanelContext& context, const RegisterEntry& entry) {
    const std::string met =
        entry.is_met
            ? "Met on " + game::day_in_words(context.campaign.calendar, entry.first_met_day)
            : std::string("Not met yet");
    const std::string label = met + "##met";
    if (!toggle_button(label.c_str(), entry.is_met)) return;
    ask_entry(
        context,
        entry,
        entry.name + (entry.is_met ? " was not met yet" : " is met"),
        {},
        [is_met = !entry.is_met, day = context.campaign.clock.day](RegisterEntry& changed) {
            changed.is_met = is_met;
            changed.first_met_day = is_met ? day : 0;
        }
    );
}

void draw_merge(const PanelContext& context, RegisterView& view, const RegisterEntry& entry) {
    const float width = px(190.0F);
    if (!begin_choice("##merge", "is the same as ...", width)) return;
    for (const RegisterEntry& each : context.campaign.registered.entries) {
        if (each.id == entry.id || each.kind != entry.kind) continue;
        if (!choice_row(each.name + "##" + std::to_string(each.id), false)) continue;
        context.edits.add(
            {Section::registered, Section::sessions, Section::day_book, Section::names},
            entry.name + " is " + each.name,
            [from = entry.id, into = each.id](game::Campaign& campaign) {
                game::merge_entries(campaign, from, into);
                return std::string();
            }
        );
        view.opened = each.id;
    }
    ImGui::EndCombo();
}

void draw_verbs(const PanelContext& context, RegisterView& view, const RegisterEntry& entry) {
    Flow flow;
    flow.next(px(190.0F));
    draw_merge(context, view, entry);
    flow.next(button_width("Take it out"));
    if (!button("Take it out")) return;
    context.edits.add(
        {Section::registered, Section::sessions, Section::names},
        "Take " + entry.name + " out of the Register",
        [id = entry.id](game::Campaign& campaign) {
            game::remove_entry(campaign, id);
            return std::string();
        }
    );
}

void look_for_mentions(const PanelContext& context, RegisterView& view, base::Id entry) {
    const auto& lines = context.campaign.history.lines;
    const std::uint64_t revision = lines.empty() ? 0 : lines.back().revision;
    if (view.mentions_at == revision && view.mentions_of == entry) return;
    view.mentions_at = revision;
    view.mentions_of = entry;
    view.names.follow(context.campaign.registered);
    view.mentions = game::mentions_of(context.campaign, view.names, entry);
}

void draw_mentions(const PanelContext& context, RegisterView& view, const RegisterEntry& entry) {
    look_for_mentions(context, view, entry.id);
    heading("Spoken of");
    if (view.mentions.empty()) {
        text_wrapped(Ink::muted, "Nowhere yet. Notes that hold the name come here by themselves.");
        return;
    }
    for (const game::MentionSpot& spot : view.mentions) {
        push_font(TextSize::small);
        text(
            Ink::muted,
            spot.title + (spot.day == 0
                              ? std::string()
                              : ", " + game::day_in_words(context.campaign.calendar, spot.day))
        );
        ImGui::PopFont();
        lit_text(
            Ink::text, spot.text, view.names.find(spot.text), ImGui::GetContentRegionAvail().x
        );
    }
}

} // namespace

void draw_register_sheet(
    const PanelContext& context, RegisterView& view, const RegisterEntry& entry
) {
    push_font(TextSize::name);
    text_fitted(ink_of_kind(entry.kind), entry.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    ImGui::BeginDisabled(context.is_read_only);
    draw_name(context, view, entry);
    draw_complaints(view.drafts, "##name");
    Flow flow;
    if (const auto kind = draw_kind_choice(flow, {entry.kind}, "entry"))
        ask_entry(
            context,
            entry,
            entry.name + " is a " + game::kind_word(*kind),
            {},
            [kind = *kind](RegisterEntry& changed) { changed.kind = kind; }
        );
    draw_line(context, view, entry, "in one line", "##summary", &RegisterEntry::summary);
    draw_line(context, view, entry, "towards the party", "##attitude", &RegisterEntry::attitude);
    draw_place(context, entry);
    draw_met(context, entry);
    text(Ink::muted, "notes");
    const auto notes =
        long_text("##notes", entry.notes, view.drafts, context.now_seconds, px(notes_height));
    if (notes.has_value())
        ask_entry(
            context,
            entry,
            "Notes on " + entry.name,
            "##notes",
            [words = *notes](RegisterEntry& changed) { changed.notes = words; }
        );
    draw_complaints(view.drafts, "##notes");
    draw_verbs(context, view, entry);
    ImGui::EndDisabled();
    draw_mentions(context, view, entry);
}

} // namespace widgets
