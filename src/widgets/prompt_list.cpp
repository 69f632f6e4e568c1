#include "widgets/prompt_list.h"

#include "game/prompts.h"
#include "widgets/read_only.h"
#include "widgets/reminder_tick.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>

namespace widgets {

using base::Id;

static constexpr int lines_shown = 2;
static constexpr float cramped_rows = 12.0F; // fewer below the list: the turn order needs the room
static constexpr int largest_damage_roll = 999;

float prompt_list_height(bool is_due) {
    const float spacing = ImGui::GetStyle().ItemSpacing.y;
    const float whole = static_cast<float>(lines_shown) * (row_height() + spacing) + spacing;
    const bool is_cramped = ImGui::GetContentRegionAvail().y < whole + cramped_rows * row_height();
    if (is_due || !is_cramped) return whole;
    return ImGui::GetTextLineHeight() + spacing;
}

static std::string name_of(const game::Encounter& encounter, Id combatant) {
    const game::Combatant* found = game::find_combatant(encounter, combatant);
    return found == nullptr ? std::string("Somebody") : found->name;
}

static void ask_answer(const PanelContext& context, const game::Prompt& prompt, int rolled) {
    const rules::Rulebook* rulebook = &context.rulebook;
    context.edits.add(
        &game::Campaign::encounter,
        "Answer " + prompt.text,
        [id = prompt.id, rolled, rulebook](game::Encounter& encounter) {
            return game::answer_prompt(encounter, *rulebook, id, rolled);
        }
    );
}

// Rolls inside the edit, one after another: an answer may take others away or bring a new one, as
// persistent damage brings its flat check.
static std::string
roll_all(game::Encounter& encounter, const rules::Rulebook& rulebook, rules::Dice& dice) {
    std::string lines;
    for (int most = 1000; most > 0 && !encounter.prompts.empty(); --most) {
        const game::Prompt prompt = encounter.prompts.front();
        const int rolled = game::roll_for_prompt(prompt, dice);
        if (!lines.empty()) lines += "; ";
        lines += game::answer_prompt(encounter, rulebook, prompt.id, rolled);
        game::set_prompt_aside(encounter, prompt.id);
    }
    return lines;
}

static void ask_roll_all(const PanelContext& context) {
    context.edits.add(
        &game::Campaign::encounter,
        "Roll all that is due",
        [rulebook = &context.rulebook, dice = &context.dice](game::Encounter& encounter) {
            return roll_all(encounter, *rulebook, *dice);
        }
    );
}

// Persistent damage, and the flat check that ends it, get easier when somebody helps.
static bool can_be_helped(const PanelContext& context, const game::Prompt& prompt) {
    if (prompt.kind == game::PromptKind::persistent_damage) return true;
    const game::Combatant* combatant =
        game::find_combatant(context.campaign.encounter, prompt.combatant);
    const game::ActiveCondition* active =
        combatant == nullptr ? nullptr : game::find_active(*combatant, prompt.condition);
    const rules::ConditionRule* rule =
        active == nullptr ? nullptr : rules::find_condition(context.rulebook, active->key);
    return rule != nullptr && rule->fading == rules::Fading::persistent_damage;
}

static void draw_prompt_list_row(
    const PanelContext& context, PromptListView& view, const game::Prompt& prompt
) {
    const bool is_damage = prompt.kind == game::PromptKind::persistent_damage;
    const std::string why_not = read_only_reason(context);
    ImGui::PushID(static_cast<int>(prompt.id));
    if (button("Roll", why_not))
        ask_answer(context, prompt, game::roll_for_prompt(prompt, context.dice));
    ImGui::SameLine();
    ImGui::BeginDisabled(context.is_read_only);
    const std::optional<int> typed = roll_field(
        "##rolled",
        std::nullopt,
        view.drafts,
        prompt.id,
        is_damage ? 0 : 1,
        is_damage ? largest_damage_roll : 20,
        px(56.0F),
        is_damage ? "Rolled damage" : "A d20"
    );
    ImGui::EndDisabled();
    if (typed.has_value()) ask_answer(context, prompt, *typed);
    ImGui::SameLine();
    if (button("Set aside", why_not))
        context.edits.add(
            &game::Campaign::encounter,
            "Set aside: " + prompt.text,
            [id = prompt.id](game::Encounter& encounter) { game::set_prompt_aside(encounter, id); }
        );
    if (can_be_helped(context, prompt)) {
        ImGui::SameLine();
        if (button("Helped", why_not))
            context.edits.add(
                &game::Campaign::encounter,
                "Help " + name_of(context.campaign.encounter, prompt.combatant),
                [id = prompt.id, rulebook = &context.rulebook](game::Encounter& encounter) {
                    game::help_prompt(encounter, *rulebook, id);
                }
            );
        ImGui::SetItemTooltip("Somebody helps: the flat check that ends it gets easier");
    }
    ImGui::SameLine();
    ImGui::AlignTextToFramePadding();
    const std::string refused = view.drafts.of[prompt.id].complaint;
    const std::string asked =
        name_of(context.campaign.encounter, prompt.combatant) + ": " + prompt.text;
    if (refused.empty())
        text_fitted(Ink::text, asked, ImGui::GetContentRegionAvail().x);
    else
        text_fitted(Ink::harm, refused, ImGui::GetContentRegionAvail().x);
    ImGui::PopID();
}

// "Ysolde Marr: frightened drops to 1", the latest first, and what the last edit did.
static void draw_prompt_list_notices(const PanelContext& context) {
    const game::Encounter& encounter = context.campaign.encounter;
    const auto& history = context.campaign.history.lines;
    if (!history.empty())
        text_fitted(
            Ink::muted, "Just now: " + history.back().label, ImGui::GetContentRegionAvail().x
        );
    for (const game::Notice& notice : encounter.notices) {
        const std::string who =
            notice.combatant == base::no_id ? "" : name_of(encounter, notice.combatant) + ": ";
        text_fitted(Ink::text, who + notice.text, ImGui::GetContentRegionAvail().x);
    }
    if (encounter.prompts.empty() && encounter.notices.empty() && history.empty())
        text(Ink::muted, "Nothing is due. Checks that the rules ask for appear here.");
}

void draw_prompt_list(const PanelContext& context, PromptListView& view) {
    const auto& prompts = context.campaign.encounter.prompts;
    const auto called = game::called_reminders(context.campaign.encounter);
    const bool is_due = !prompts.empty() || !called.empty();
    ImGui::PushStyleColor(ImGuiCol_ChildBg, colour(is_due ? Ink::raised : Ink::panel));
    ImGui::BeginChild("due", {0.0F, prompt_list_height(is_due)}, ImGuiChildFlags_None);
    const float inset = px(6.0F);
    ImGui::SetCursorPos({inset, inset / 2.0F});
    if (!prompts.empty()) {
        ImGui::BeginGroup();
        const std::string count = "Due now: " + std::to_string(prompts.size());
        ImGui::AlignTextToFramePadding();
        text(Ink::accent, count);
        if (primary_button("Roll all due", read_only_reason(context))) ask_roll_all(context);
        ImGui::EndGroup();
        ImGui::SameLine();
    }
    ImGui::BeginChild("due rows", {0.0F, 0.0F}, ImGuiChildFlags_None);
    for (const game::Prompt& prompt : prompts)
        draw_prompt_list_row(context, view, prompt);
    for (const game::ShownReminder& shown : called)
        draw_called_reminder(context, shown);
    push_font(TextSize::small);
    draw_prompt_list_notices(context);
    ImGui::PopFont();
    ImGui::EndChild();
    ImGui::EndChild();
    ImGui::PopStyleColor();
}

} // namespace widgets
