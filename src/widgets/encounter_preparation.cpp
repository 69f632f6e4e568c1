#include "widgets/encounter_preparation.h"

#include "game/fights.h"
#include "game/reinforcements.h"
#include "game/roster.h"
#include "game/shelf.h"
#include "widgets/encounter_preparation_form.h"
#include "widgets/entry_list.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>
#include <vector>

namespace widgets {

using game::PreparedEncounter;

const PanelInfo encounter_preparation_info{
    "encounter_preparation",
    "Prepared Encounters",
    "Fights made ready beforehand, to start with one press.",
    "F7",
    360.0F,
    240.0F};

static bool is_fight_on(const PanelContext& context) {
    return context.campaign.encounter.phase != game::Phase::no_fight;
}

static const char* start_caption(const PanelContext& context) {
    return is_fight_on(context) ? "Add to the fight" : "Start this fight";
}

float start_width(const PanelContext& context) {
    return button_width(start_caption(context));
}

static void ask_start(const PanelContext& context, const PreparedEncounter& prepared) {
    context.edits.add(
        {game::Section::encounter},
        "Start the fight " + prepared.name,
        [id = prepared.id, rulebook = &context.rulebook](game::Campaign& campaign) {
            game::open_fight(campaign, *rulebook, id);
            return std::string();
        }
    );
}

static void ask_join(const PanelContext& context, const PreparedEncounter& prepared) {
    context.edits.add(
        {game::Section::encounter},
        prepared.name + " joins the fight",
        [id = prepared.id,
         rulebook = &context.rulebook,
         dice = &context.dice](game::Campaign& campaign) {
            game::join_prepared(campaign, *rulebook, id, *dice);
            return std::string();
        }
    );
}

void draw_start(
    const PanelContext& context, const PreparedEncounter& prepared, const char* suffix
) {
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && prepared.creatures.empty()) why_not = "Add creatures to it first.";
    const std::string label = std::string(start_caption(context)) + suffix;
    if (is_fight_on(context)) {
        if (button(label.c_str(), why_not)) ask_join(context, prepared);
    } else if (primary_button(label.c_str(), why_not)) {
        ask_start(context, prepared);
    }
}

base::Id ask_new_prepared(const PanelContext& context) {
    PreparedEncounter prepared;
    prepared.name = game::free_name(context.campaign.preparation.encounters, "New encounter");
    context.edits.add(
        &game::Campaign::preparation,
        "Prepare " + prepared.name,
        [prepared](game::Preparation& preparation) { game::add_prepared(preparation, prepared); }
    );
    return context.campaign.preparation.next_id;
}

static void ask_new(const PanelContext& context, EncounterPreparationView& view) {
    view.edited = ask_new_prepared(context);
    view.wants_name = view.edited;
    view.drafts = {};
}

static void draw_prepared_row(
    const PanelContext& context, EncounterPreparationView& view, const PreparedEncounter& prepared
) {
    ImGui::PushID(static_cast<int>(prepared.id));
    const float start = start_width(context);
    const EntryColumns columns = entry_columns(0.0F, start + px(8.0F), 0);
    std::string second = game::creatures_text(context.campaign.shelf, prepared);
    if (!prepared.note.empty()) second += "; " + prepared.note;
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_on = view.edited == prepared.id;
    if (draw_entry_row(columns, prepared.name, second, {}, is_on)) {
        view.edited = prepared.id;
        view.drafts = {};
    }
    const ImVec2 below = ImGui::GetCursorPos();
    ImGui::SetCursorPos({at.x + columns.width - start, at.y + (columns.row - row_height()) / 2.0F});
    draw_start(context, prepared, "##row");
    ImGui::SetCursorPos(below);
    ImGui::PopID();
}

static void draw_prepared_list(const PanelContext& context, EncounterPreparationView& view) {
    if (button("Prepare an encounter", read_only_reason(context))) ask_new(context, view);
    if (is_fight_on(context)) {
        const std::string& name = context.campaign.encounter.name;
        text_wrapped(
            Ink::accent,
            (name.empty() ? std::string("A fight") : name) +
                " is on. Another cannot start before it ends; creatures can join it."
        );
    }
    for (const PreparedEncounter& prepared : context.campaign.preparation.encounters)
        draw_prepared_row(context, view, prepared);
    ImGui::Dummy({0.0F, 0.0F});
}

void draw_encounter_preparation(const PanelContext& context, EncounterPreparationView& view) {
    const auto& preparation = context.campaign.preparation;
    if (preparation.encounters.empty()) {
        empty_state("No encounter is prepared. Put creatures of the shelf together here, and the "
                    "fight starts with one press.");
        if (primary_button("Prepare an encounter", read_only_reason(context)))
            ask_new(context, view);
        return;
    }
    std::vector<base::Id> shown;
    for (const PreparedEncounter& prepared : preparation.encounters)
        shown.push_back(prepared.id);
    const base::Id before = view.edited;
    take_wanted_entry(context, encounter_preparation_info, view.edited);
    read_entry_keys(context, shown, view.edited);
    if (view.edited != before) view.drafts = {};
    const PreparedEncounter* edited = game::find_prepared(preparation, view.edited);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && edited != nullptr ? ImGui::GetContentRegionAvail().x * 0.42F : 0.0F;
    if (is_wide || edited == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) draw_prepared_list(context, view);
        ImGui::EndChild();
    }
    if (edited == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to all encounters"))
        view.edited = base::no_id;
    if (ImGui::BeginChild("form", {0.0F, 0.0F})) draw_prepared_form(context, view, *edited);
    ImGui::EndChild();
}

} // namespace widgets
