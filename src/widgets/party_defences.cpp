#include "widgets/party_defences.h"

#include "game/roster.h"
#include "widgets/entry_list.h"
#include "widgets/form.h"
#include "widgets/party_defences_parts.h"
#include "widgets/party_first.h"
#include "widgets/party_question.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

const PanelInfo party_defences_info{
    "party_defences",
    "Party Defences",
    "Everybody's numbers side by side, their chances against a DC, secret rolls for all.",
    "F9",
    360.0F,
    260.0F};

// Up and Down move the DC, Left and Right what is asked, R rolls it in secret.
static void read_defences_keys(const PanelContext& context, const game::PartyOdds& odds) {
    if (!keys_are_free(context)) return;
    int step = 0;
    if (ImGui::IsKeyPressed(ImGuiKey_UpArrow)) step = 1;
    if (ImGui::IsKeyPressed(ImGuiKey_DownArrow)) step = -1;
    if (step != 0)
        context.selection.odds.dc =
            std::clamp(odds.dc + step, game::Limits::dc_min, game::Limits::dc_max);
    if (ImGui::IsKeyPressed(ImGuiKey_RightArrow)) step_stat(context, 1);
    if (ImGui::IsKeyPressed(ImGuiKey_LeftArrow)) step_stat(context, -1);
    const bool can_roll = !context.is_read_only && !odds.members.empty();
    if (can_roll && ImGui::IsKeyPressed(ImGuiKey_R, false)) ask_secret_roll(context);
}

static void
draw_odds(const PanelContext& context, PartyDefencesView& view, const PartyPicture& picture) {
    draw_odds_summary(context, picture.odds);
    if (view.is_turned_round) draw_turned_round(context, view, picture.odds);
    draw_member_odds(context, picture);
    draw_secret_rolls(context, view);
    ImGui::Dummy({0.0F, 0.0F}); // rows set the cursor themselves; an item must end them
}

void draw_party_defences(const PanelContext& context, PartyDefencesView& view) {
    if (context.campaign.party.characters.empty()) {
        empty_state("Nobody is in the party yet. Enter the player characters in the Party panel: "
                    "here stand all their numbers side by side, and their chances against a DC.");
        offer_the_party(context);
        return;
    }
    const PartyPicture picture{
        game::party_figures(context.campaign, context.rulebook, view.with_absent),
        game::party_odds(context.campaign, context.rulebook, context.selection.odds)};
    read_defences_keys(context, picture.odds);
    if (has_room_for_two()) {
        draw_odds_question(context, view, picture.odds);
        const float half = ImGui::GetContentRegionAvail().x * 0.5F;
        if (ImGui::BeginChild("odds", {half, 0.0F})) draw_odds(context, view, picture);
        ImGui::EndChild();
        ImGui::SameLine(0.0F, px(24.0F));
        if (ImGui::BeginChild("grid", {0.0F, 0.0F}))
            draw_party_grid(context, view, picture.figures);
        ImGui::EndChild();
        return;
    }
    if (ImGui::BeginChild("all", {0.0F, 0.0F})) {
        draw_odds_question(context, view, picture.odds);
        draw_odds(context, view, picture);
        draw_party_grid(context, view, picture.figures);
    }
    ImGui::EndChild();
}

} // namespace widgets
