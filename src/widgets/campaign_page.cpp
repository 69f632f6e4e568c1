#include "widgets/campaign_page.h"

#include "game/campaign_rules.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <string>
#include <utility>
#include <vector>

namespace widgets {

using game::About;

const PanelInfo campaign_page_info{
    "campaign", "Campaign", "The campaign itself: title, rules, house rules.", "", 380.0F, 300.0F};

namespace {

constexpr float note_height = 120.0F;

template <class Change>
void ask_about(const PanelContext& context, std::string label, Change change) {
    context.edits.add(&game::Campaign::about, std::move(label), change);
}

float field_width() {
    return ImGui::GetContentRegionAvail().x;
}

void draw_title(const PanelContext& context, CampaignPageView& view) {
    heading("Title");
    const auto title = checked_text(
        "##title",
        context.campaign.about.title,
        view.drafts,
        context.now_seconds,
        field_width(),
        check_name
    );
    if (title.has_value())
        context.edits.add(
            &game::Campaign::about,
            "Call the campaign " + *title,
            [title = *title](About& about) { about.title = title; },
            "campaign/title"
        );
    draw_complaints(view.drafts, "##title");
    if (!context.campaign_file.empty())
        text_wrapped(Ink::muted, "Kept in " + std::string(context.campaign_file));
}

void draw_family(const PanelContext& context) {
    const About& about = context.campaign.about;
    const std::string why_not =
        context.is_read_only ? read_only_reason(context) : game::why_family_stays(context.campaign);
    const std::pair<const char*, rules::Family> families[] = {
        {"four-degree", rules::Family::four_degree}, {"srd5", rules::Family::srd5}};
    Flow flow;
    for (const auto& [name, family] : families) {
        flow.next(button_width(name));
        const bool is_on = about.rules == family;
        if (toggle_button(name, is_on, is_on ? std::string() : why_not) && !is_on)
            ask_about(context, std::string("Play by ") + name, [family = family](About& changed) {
                changed.rules = family;
            });
    }
}

void draw_edition(const PanelContext& context) {
    const std::pair<const char*, rules::SrdEdition> editions[] = {
        {"SRD 5.1", rules::SrdEdition::srd_5_1}, {"SRD 5.2.1", rules::SrdEdition::srd_5_2_1}};
    Flow flow;
    for (const auto& [name, edition] : editions) {
        flow.next(button_width(name));
        const bool is_on = context.campaign.about.srd_edition == edition;
        if (toggle_button(name, is_on, read_only_reason(context)) && !is_on)
            ask_about(context, std::string("Play by ") + name, [edition = edition](About& changed) {
                changed.srd_edition = edition;
            });
    }
}

// four-degree: how many XP a level takes.
void draw_pace(const PanelContext& context) {
    const auto& paces = context.rulebook.advancement.paces;
    if (paces.size() < 2) return;
    heading("Experience for a level");
    Flow flow;
    for (const rules::AdvancementPace& pace : paces) {
        const bool is_usual = &pace == &paces.front();
        const std::string key = is_usual ? std::string() : pace.key;
        const std::string label =
            pace.name + ", " + std::to_string(pace.xp) + " XP##pace/" + pace.key;
        flow.next(button_width(label.c_str()));
        const bool is_on = context.campaign.about.pace == key;
        if (toggle_button(label.c_str(), is_on, read_only_reason(context)) && !is_on)
            ask_about(context, "A level takes " + std::to_string(pace.xp) + " XP", [key](About& a) {
                a.pace = key;
            });
    }
}

void draw_house_rule(const rules::HouseRule& rule) {
    text_wrapped(Ink::item, rule.pointer + ": " + rule.is_now + " instead of " + rule.was);
}

void draw_house_rules(const PanelContext& context, CampaignPageView& view) {
    heading("House rules");
    const std::string again = "Read again";
    const float width =
        field_width() - button_width(again.c_str()) - ImGui::GetStyle().ItemSpacing.x;
    // Taken when the field is left, not while a name is half typed: each one is read from the disk.
    const std::string& chosen = context.campaign.about.house_rules;
    if (!view.is_naming_file) view.house_rules = chosen;
    ImGui::SetNextItemWidth(width);
    meet_far_press("##house rules");
    ImGui::InputText("##house rules", &view.house_rules);
    view.is_naming_file = ImGui::IsItemActive();
    if (ImGui::IsItemDeactivatedAfterEdit() && view.house_rules != chosen)
        ask_about(
            context,
            view.house_rules.empty() ? std::string("Play without house rules")
                                     : "Take house rules from " + view.house_rules,
            [file = view.house_rules](About& about) { about.house_rules = file; }
        );
    ImGui::SameLine();
    const bool has_file = !chosen.empty();
    if (button(again.c_str(), has_file ? "" : "No file is named.") &&
        context.reads_rules_again != nullptr)
        *context.reads_rules_again = true;
    std::vector<rules::HouseRule> rules_now = context.rulebook.house_ruled;
    if (context.prices != nullptr)
        rules_now.insert(
            rules_now.end(), context.prices->house_ruled.begin(), context.prices->house_ruled.end()
        );
    if (rules_now.empty()) {
        text_wrapped(
            Ink::muted,
            has_file ? "No value of the rulebook is replaced by this file."
                     : "The name of a file that replaces single values of the rulebook, beside the "
                       "campaign or with its folder. The guide shows how one is written."
        );
        return;
    }
    for (const rules::HouseRule& rule : rules_now)
        draw_house_rule(rule);
}

void draw_note(const PanelContext& context, CampaignPageView& view) {
    heading("Note");
    const auto note = long_text(
        "##note", context.campaign.about.note, view.drafts, context.now_seconds, px(note_height)
    );
    if (note.has_value())
        context.edits.add(
            &game::Campaign::about,
            "Write the campaign's note",
            [note = *note](About& about) { about.note = note; },
            "campaign/note"
        );
    draw_complaints(view.drafts, "##note");
}

} // namespace

void draw_campaign_page(const PanelContext& context, CampaignPageView& view) {
    if (context.is_read_only) ImGui::BeginDisabled();
    draw_title(context, view);
    if (context.is_read_only) ImGui::EndDisabled();
    heading("Rules");
    draw_family(context);
    if (context.campaign.about.rules == rules::Family::srd5) draw_edition(context);
    draw_pace(context);
    if (context.is_read_only) ImGui::BeginDisabled();
    draw_house_rules(context, view);
    draw_note(context, view);
    if (context.is_read_only) ImGui::EndDisabled();
}

} // namespace widgets
