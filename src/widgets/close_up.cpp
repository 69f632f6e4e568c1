#include "widgets/close_up.h"

#include "game/effects.h"
#include "rules/challenge_text.h"
#include "widgets/close_up_parts.h"
#include "widgets/combatant_choice.h"
#include "widgets/party_first.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

namespace widgets {

using base::Id;
using game::Combatant;

const PanelInfo close_up_info{
    "close_up",
    "Close-up",
    "One combatant in full: effective numbers with their reasons, attacks, notes.",
    "F4",
    320.0F,
    240.0F};

// The main one picked, or whose turn it is.
static const Combatant* shown_combatant(const PanelContext& context) {
    const game::Encounter& encounter = context.campaign.encounter;
    const auto& picked = context.selection.combatants;
    const Combatant* main =
        picked.empty() ? nullptr : game::find_combatant(encounter, picked.back());
    return main != nullptr ? main : game::find_combatant(encounter, encounter.current);
}

static void draw_whom(const PanelContext& context, const Combatant* shown) {
    Id chosen = shown == nullptr ? base::no_id : shown->id;
    const Id before = chosen;
    const float width = std::min(px(260.0F), ImGui::GetContentRegionAvail().x);
    draw_combatant_choice(context, "##whom", chosen, "whose turn it is", width);
    if (chosen == before) return;
    if (chosen == base::no_id)
        context.selection.combatants.clear();
    else
        context.selection.combatants = {chosen};
}

// "Level 4, shield fighter, played by Anneke, initiative 24".
static std::string about_words(const PanelContext& context, const Combatant& combatant) {
    const bool is_srd5 = context.rulebook.family == rules::Family::srd5;
    const bool has_challenge = is_srd5 && combatant.character == base::no_id;
    std::string words = has_challenge
                            ? "CR " + rules::challenge_text(combatant.statistics.challenge)
                            : "Level " + std::to_string(combatant.statistics.level);
    const game::Character* character =
        game::find_character(context.campaign.party, combatant.character);
    if (character != nullptr && !character->calling.empty()) words += ", " + character->calling;
    if (character != nullptr && !character->player.empty())
        words += ", played by " + character->player;
    if (combatant.initiative.has_value())
        words += ", initiative " + std::to_string(*combatant.initiative);
    if (combatant.is_dead) words += ", dead";
    return words;
}

static void draw_close_up_head(const PanelContext& context, const Combatant& combatant) {
    push_font(TextSize::current);
    text_fitted(Ink::text, combatant.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    text_wrapped(Ink::muted, about_words(context, combatant));
    const int most = game::effective_hp_max(context.rulebook, combatant);
    const float width = std::min(ImGui::GetContentRegionAvail().x, px(320.0F));
    hp_bar(combatant.hp, most, combatant.temp_hp, {width, row_height()});
    if (most != combatant.statistics.hit_points)
        text_wrapped(
            Ink::harm,
            "HP max " + std::to_string(most) + ", otherwise " +
                std::to_string(combatant.statistics.hit_points)
        );
}

void draw_close_up(const PanelContext& context, CloseUpView& view) {
    const Combatant* combatant = shown_combatant(context);
    if (context.campaign.encounter.combatants.empty()) {
        empty_state("Nobody is at the table yet. Enter the party in the Party panel.");
        offer_the_party(context);
        return;
    }
    draw_whom(context, combatant);
    if (combatant == nullptr) {
        empty_state("Pick somebody: here stand all their numbers, with the reasons.");
    } else {
        if (view.shown != combatant->id) view.drafts = {};
        view.shown = combatant->id;
        if (ImGui::BeginChild("sheet", {0.0F, 0.0F})) {
            ImGui::PushID(static_cast<int>(combatant->id));
            const auto numbers = game::sheet_numbers(context.rulebook, *combatant);
            draw_close_up_head(context, *combatant);
            draw_close_up_defences(context, *combatant, numbers);
            draw_close_up_upkeep(context, view, *combatant);
            draw_close_up_conditions(context, view, *combatant);
            draw_close_up_reasons(numbers);
            draw_close_up_attacks(context, *combatant, numbers);
            draw_close_up_skills(context, *combatant, numbers);
            draw_close_up_traits(context, *combatant);
            draw_close_up_reminders(context, *combatant);
            draw_close_up_notes(context, view, *combatant);
            ImGui::PopID();
        }
        ImGui::EndChild();
    }
    draw_condition_menu(context, view.menu);
    draw_condition_picker(context, view.picker);
}

} // namespace widgets
