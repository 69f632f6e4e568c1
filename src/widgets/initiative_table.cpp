#include "widgets/initiative_table.h"

#include "game/turns.h"
#include "widgets/initiative_stat.h"
#include "widgets/initiative_verbs.h"
#include "widgets/picking.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <map>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

static bool takes_part(const Combatant& combatant) {
    return combatant.standing == game::Standing::in_order;
}

// The party first, then the others, each as they were entered.
static std::vector<const Combatant*> table_rows(const Encounter& encounter) {
    std::vector<const Combatant*> rows;
    for (const Combatant& combatant : encounter.combatants)
        if (takes_part(combatant)) rows.push_back(&combatant);
    std::stable_partition(rows.begin(), rows.end(), [](const Combatant* combatant) {
        return combatant->side == game::Side::party;
    });
    return rows;
}

// Who would act when, from 1; by the same sorting that the fight begins with.
static std::map<Id, int> places(const Encounter& encounter, const rules::Rulebook& rulebook) {
    Encounter sorted = encounter;
    game::sort_order(sorted, rulebook);
    std::map<Id, int> place;
    for (const Id id : sorted.order)
        if (game::find_combatant(encounter, id)->initiative.has_value())
            place.emplace(id, static_cast<int>(place.size()) + 1);
    return place;
}

static void ask_roll(const PanelContext& context, const Combatant& combatant) {
    context.edits.add(
        &game::Campaign::encounter,
        "Roll initiative for " + combatant.name,
        [id = combatant.id, book = &context.rulebook, dice = &context.dice](Encounter& encounter) {
            const int total = game::roll_initiative(encounter, *book, id, *dice);
            game::set_initiative(encounter, *book, id, total);
        }
    );
}

// After one is typed the keyboard goes on to the next that is missing.
static Id next_missing(const std::vector<const Combatant*>& rows, Id after) {
    bool is_past = false;
    for (const Combatant* row : rows) {
        if (is_past && !row->initiative.has_value()) return row->id;
        if (row->id == after) is_past = true;
    }
    return base::no_id;
}

static void draw_initiative_total(
    const PanelContext& context,
    InitiativeTableView& view,
    const Combatant& combatant,
    const std::vector<const Combatant*>& rows
) {
    ImGui::BeginDisabled(context.is_read_only);
    const auto total = roll_field(
        "##total", combatant.initiative, view.totals, combatant.id, -20, 99, px(64.0F), "Initiative"
    );
    ImGui::EndDisabled();
    if (!total.has_value()) return;
    const bool by_enter = ImGui::IsKeyPressed(ImGuiKey_Enter, false) ||
                          ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false);
    if (by_enter) view.totals.focus_next = next_missing(rows, combatant.id);
    context.edits.add(
        &game::Campaign::encounter,
        "Initiative of " + combatant.name + ": " + std::to_string(*total),
        [id = combatant.id, total = *total, book = &context.rulebook](Encounter& encounter) {
            game::set_initiative(encounter, *book, id, total);
        }
    );
}

static std::string row_words(const Encounter& encounter, const Combatant& combatant) {
    std::string words;
    if (combatant.is_hidden) words += "hidden ";
    if (combatant.group != base::no_id) words += group_text(encounter, combatant.group);
    return words;
}

static void draw_initiative_table_row(
    const PanelContext& context,
    InitiativeTableView& view,
    const Combatant& combatant,
    const std::vector<const Combatant*>& rows,
    int place
) {
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    ImGui::AlignTextToFramePadding();
    push_numbers(TextSize::body);
    text(place == 0 ? Ink::muted : Ink::accent, place == 0 ? "-" : std::to_string(place) + ".");
    ImGui::PopFont();
    ImGui::TableNextColumn();
    const bool is_on = is_picked(context.selection, combatant.id);
    if (ImGui::Selectable(combatant.name.c_str(), is_on, 0, {0.0F, row_height()})) {
        std::vector<Id> ids;
        ids.reserve(rows.size());
        for (const Combatant* row : rows)
            ids.push_back(row->id);
        pick(context.selection, ids, combatant.id, pick_by_hand(view.picks_several));
    }
    ImGui::TableNextColumn();
    draw_initiative_stat(context, combatant);
    ImGui::TableNextColumn();
    draw_initiative_total(context, view, combatant, rows);
    ImGui::TableNextColumn();
    if (button("Roll", read_only_reason(context))) ask_roll(context, combatant);
    ImGui::TableNextColumn();
    ImGui::AlignTextToFramePadding();
    const std::string& refused = view.totals.of[combatant.id].complaint;
    if (refused.empty())
        text(Ink::muted, row_words(context.campaign.encounter, combatant));
    else
        text(Ink::harm, refused);
}

void draw_initiative_table(
    const PanelContext& context, InitiativeTableView& view, AddCombatantView& add
) {
    const Encounter& encounter = context.campaign.encounter;
    draw_initiative_header(context, add);
    const std::vector<const Combatant*> rows = table_rows(encounter);
    const std::map<Id, int> place = places(encounter, context.rulebook);
    const float footer =
        row_height() + ImGui::GetTextLineHeight() + 3.0F * ImGui::GetStyle().ItemSpacing.y;
    const ImGuiTableFlags flags =
        ImGuiTableFlags_ScrollY | ImGuiTableFlags_SizingFixedFit | ImGuiTableFlags_RowBg;
    ImGui::PushStyleVar(ImGuiStyleVar_CellPadding, {ImGui::GetStyle().CellPadding.x, px(1.0F)});
    if (ImGui::BeginTable("initiative", 6, flags, {0.0F, -footer})) {
        ImGui::TableSetupColumn("place", ImGuiTableColumnFlags_WidthFixed, px(40.0F));
        ImGui::TableSetupColumn("name", ImGuiTableColumnFlags_WidthFixed, px(190.0F));
        ImGui::TableSetupColumn("stat", ImGuiTableColumnFlags_WidthFixed, px(180.0F));
        ImGui::TableSetupColumn("total");
        ImGui::TableSetupColumn("roll");
        ImGui::TableSetupColumn("words", ImGuiTableColumnFlags_WidthStretch);
        for (const Combatant* row : rows) {
            ImGui::PushID(static_cast<int>(row->id));
            const auto found = place.find(row->id);
            draw_initiative_table_row(
                context, view, *row, rows, found == place.end() ? 0 : found->second
            );
            ImGui::PopID();
        }
        ImGui::EndTable();
    }
    ImGui::PopStyleVar();
    draw_initiative_footer(context, view.picks_several);
}

} // namespace widgets
