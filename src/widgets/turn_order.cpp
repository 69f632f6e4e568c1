#include "widgets/turn_order.h"

#include "game/fights.h"
#include "game/turns.h"
#include "widgets/party_first.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_keys.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>
#include <utility>

namespace widgets {

using base::Id;
using game::Encounter;

const PanelInfo turn_order_info{
    "turn_order",
    "Turn Order",
    "Whose turn it is, who is next, and everything done to them.",
    "F2",
    560.0F,
    320.0F};

static void ask_open(const PanelContext& context, Id prepared, const std::string& name) {
    context.edits.add(
        {game::Section::encounter},
        "Open the fight " + name,
        [prepared, book = &context.rulebook](game::Campaign& campaign) {
            game::open_fight(campaign, *book, prepared);
            return std::string();
        }
    );
}

// "3 Reed Lurker, 1 Mudcaller"
static std::string
creatures_text(const game::CreatureShelf& shelf, const game::PreparedEncounter& prepared) {
    std::string words;
    for (const game::PreparedCreatures& part : prepared.creatures) {
        const game::Creature* creature = game::find_creature(shelf, part.creature);
        if (!words.empty()) words += ", ";
        words += std::to_string(part.count) + " ";
        words += creature == nullptr ? std::string("unknown") : creature->name;
    }
    return words.empty() ? "no creatures yet" : words;
}

static void draw_turn_order_no_fight(const PanelContext& context) {
    empty_state("No fight is on. When one starts, the turns run here.");
    const char* refusal = read_only_reason(context);
    const auto& encounters = context.campaign.preparation.encounters;
    if (!encounters.empty()) heading("Prepared fights");
    for (const game::PreparedEncounter& prepared : encounters) {
        ImGui::PushID(static_cast<int>(prepared.id));
        const std::string name = prepared.name.empty() ? "Unnamed fight" : prepared.name;
        if (primary_button(("Open " + name).c_str(), refusal)) ask_open(context, prepared.id, name);
        text_fitted(
            Ink::muted,
            creatures_text(context.campaign.shelf, prepared),
            ImGui::GetContentRegionAvail().x
        );
        ImGui::PopID();
    }
    ImGui::Spacing();
    const bool has_party = !context.campaign.party.characters.empty();
    std::string why_not = refusal;
    if (why_not.empty() && !has_party) why_not = "Enter the party first, in the Party panel.";
    if (button("Open a fight with the party only", why_not))
        ask_open(context, base::no_id, "with the party only");
    text(Ink::muted, "Opponents can be added while it gathers and while it runs.");
    if (!has_party) offer_the_party(context);
}

// "0:18" since the fight began.
static std::string elapsed_text(int seconds) {
    const int rest = seconds % 60;
    return std::to_string(seconds / 60) + (rest < 10 ? ":0" : ":") + std::to_string(rest);
}

static std::string upcoming_text(const Encounter& encounter) {
    std::string words;
    for (const int steps : {1, 2}) {
        const game::Combatant* who =
            game::find_combatant(encounter, game::upcoming(encounter, steps));
        if (who == nullptr || who->id == encounter.current) continue;
        words += (steps == 1 ? "Next: " : ", then ") + who->name;
    }
    return words;
}

static void draw_turn_order_header(const PanelContext& context) {
    const Encounter& encounter = context.campaign.encounter;
    const char* next = "Next turn";
    const char* end = "End fight";
    const float buttons = button_width(next) + button_width(end) + ImGui::GetStyle().ItemSpacing.x;
    const float room = ImGui::GetContentRegionAvail().x - buttons - px(16.0F);
    ImGui::AlignTextToFramePadding();
    std::string words = "Round " + std::to_string(encounter.round) + "   " +
                        elapsed_text(encounter.elapsed_seconds) + "   " + upcoming_text(encounter);
    text_fitted(Ink::text, words, room);
    ImGui::SameLine(ImGui::GetContentRegionMax().x - buttons);
    if (button(end, read_only_reason(context)))
        context.edits.add(
            {game::Section::encounter, game::Section::clock},
            "End the fight" + (encounter.name.empty() ? "" : " " + encounter.name),
            [book = &context.rulebook](game::Campaign& campaign) {
                game::end_fight(campaign, *book);
                return std::string();
            }
        );
    ImGui::SameLine();
    if (primary_button(next, read_only_reason(context))) ask_next_turn(context);
}

static void draw_turn_order_running(const PanelContext& context, TurnOrderView& view) {
    draw_turn_order_header(context);
    draw_prompt_list(context, view.prompts);
    view.rows.picks_several = view.actions.picks_several;
    draw_turn_order_rows(
        context, view.rows, {view.pad, view.condition}, turn_order_actions_height(view.actions)
    );
    draw_turn_order_actions(context, view.actions, view.pad, view.add);
}

static void draw_turn_order_all_popups(const PanelContext& context, TurnOrderView& view) {
    if (std::exchange(view.rows.wants_more, false)) view.actions.wants_more = true;
    if (std::exchange(view.actions.wants_condition, false))
        open_condition_picker(view.picker, targets(context.campaign.encounter, context.selection));
    draw_number_pad(context, view.pad);
    draw_condition_picker(context, view.picker);
    draw_condition_menu(context, view.condition);
    draw_add_combatant(context, view.add);
    draw_turn_order_popups(context, view.actions);
}

void draw_turn_order(const PanelContext& context, TurnOrderView& view) {
    forget_gone(context.selection, context.campaign.encounter);
    switch (context.campaign.encounter.phase) {
    case game::Phase::no_fight: draw_turn_order_no_fight(context); break;
    case game::Phase::gathering: draw_initiative_table(context, view.initiative, view.add); break;
    case game::Phase::running:
        read_turn_order_keys(context, view);
        draw_turn_order_running(context, view);
        break;
    }
    draw_turn_order_all_popups(context, view);
}

} // namespace widgets
