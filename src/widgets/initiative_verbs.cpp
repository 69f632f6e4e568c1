#include "widgets/initiative_verbs.h"

#include "game/fights.h"
#include "game/turns.h"
#include "widgets/picking.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <functional>
#include <optional>
#include <utility>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

std::string why_not_begin(const Encounter& encounter) {
    int taking_part = 0;
    int missing = 0;
    std::string names;
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.standing != game::Standing::in_order) continue;
        taking_part += 1;
        if (combatant.initiative.has_value()) continue;
        missing += 1;
        if (missing <= 3) names += (names.empty() ? "" : ", ") + combatant.name;
    }
    if (taking_part == 0) return "Nobody takes part yet: add somebody first.";
    if (missing == 0) return {};
    if (missing > 3) names += " and " + std::to_string(missing - 3) + " more";
    return "Initiative is missing for " + names + ".";
}

static void
ask_roll_missing(const PanelContext& context, const char* label, std::optional<game::Side> only) {
    context.edits.add(
        &game::Campaign::encounter,
        label,
        [only, book = &context.rulebook, dice = &context.dice](Encounter& encounter) {
            game::roll_missing_initiative(encounter, *book, *dice, only);
        }
    );
}

void draw_initiative_header(const PanelContext& context, AddCombatantView& add) {
    const Encounter& encounter = context.campaign.encounter;
    const char* begin = "Begin the fight";
    push_font(TextSize::name);
    ImGui::AlignTextToFramePadding();
    const std::string title = encounter.name.empty() ? "A fight" : encounter.name;
    text_fitted(
        Ink::text, title, ImGui::GetContentRegionAvail().x - button_width(begin) - px(24.0F)
    );
    ImGui::PopFont();
    ImGui::SameLine(ImGui::GetContentRegionMax().x - button_width(begin));
    std::string why_not = read_only_reason(context);
    const std::string missing = why_not_begin(encounter);
    if (why_not.empty()) why_not = missing;
    if (primary_button(begin, why_not))
        context.edits.add(
            &game::Campaign::encounter,
            "Begin the fight",
            [book = &context.rulebook](Encounter& changed) { game::begin_fight(changed, *book); }
        );
    text(Ink::muted, missing.empty() ? "Everybody's initiative is set." : missing);
    const char* refusal = read_only_reason(context);
    if (button("Roll for opponents", refusal))
        ask_roll_missing(context, "Roll initiative for the opponents", game::Side::opponents);
    same_line_if_fits(button_width("Roll all that are missing"));
    if (button("Roll all that are missing", refusal))
        ask_roll_missing(context, "Roll all missing initiative", std::nullopt);
    same_line_if_fits(button_width("Add"));
    if (button("Add", refusal)) add.is_wanted = true;
    same_line_if_fits(button_width("Call it off"));
    if (button("Call it off", refusal))
        context.edits.add(
            {game::Section::encounter, game::Section::clock},
            "Call the fight off",
            [book = &context.rulebook](game::Campaign& campaign) {
                game::end_fight(campaign, *book);
                return std::string();
            }
        );
}

static void
ask(const PanelContext& context, std::string label, std::function<void(Encounter&)> change) {
    context.edits.add(
        &game::Campaign::encounter,
        std::move(label),
        [change = std::move(change)](Encounter& encounter) { change(encounter); }
    );
}

static void
draw_hide(const PanelContext& context, const std::vector<Id>& who, const std::string& why_not) {
    const Encounter& encounter = context.campaign.encounter;
    const bool is_hidden = std::any_of(who.begin(), who.end(), [&](Id id) {
        const Combatant* combatant = game::find_combatant(encounter, id);
        return combatant != nullptr && combatant->is_hidden;
    });
    if (!button(is_hidden ? "Show" : "Hide", why_not)) return;
    ask(context,
        (is_hidden ? "Show " : "Hide ") + names_text(encounter, who),
        [who, is_hidden](Encounter& changed) {
            for (const Id id : who)
                game::set_hidden(changed, id, !is_hidden);
        });
}

void draw_initiative_footer(const PanelContext& context, bool& picks_several) {
    const std::vector<Id> who = context.selection.combatants;
    const std::string none =
        who.empty() ? "Pick rows first: one press each, several with Several, Ctrl or Shift." : "";
    const std::string names = names_text(context.campaign.encounter, who);
    std::string why_not = read_only_reason(context);
    if (why_not.empty()) why_not = none;
    const std::string whom = who.empty() ? none : "For " + names + ":";
    text_fitted(Ink::muted, whom, ImGui::GetContentRegionAvail().x);
    draw_several(picks_several);
    ImGui::SameLine();
    draw_hide(context, who, why_not);
    ImGui::SameLine();
    std::string why_not_group = why_not;
    if (why_not_group.empty() && who.size() < 2) why_not_group = "Pick two or more rows.";
    const rules::Rulebook* book = &context.rulebook;
    if (button("Group", why_not_group))
        ask(context, "Group " + names, [who, book](Encounter& changed) {
            game::make_group(changed, *book, who);
        });
    ImGui::SameLine();
    if (button("Ungroup", why_not))
        ask(context, names + " each on their own", [who](Encounter& changed) {
            for (const Id id : who)
                game::leave_group(changed, id);
        });
    ImGui::SameLine();
    if (button("Remove", why_not))
        ask(context, "Remove " + names + " from the fight", [who, book](Encounter& changed) {
            for (const Id id : who)
                game::remove_combatant(changed, *book, id);
        });
}

} // namespace widgets
