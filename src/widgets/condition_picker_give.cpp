// From what was chosen to what is given, and what it will do shown before.
#include "game/conditions.h"
#include "widgets/condition_picker_parts.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using base::Id;
using game::DurationKind;

static bool is_persistent(const PanelContext& context, const ConditionPickerView& view) {
    const rules::ConditionRule* rule = rules::find_condition(context.rulebook, view.key);
    return rule != nullptr && rule->fading == rules::Fading::persistent_damage;
}

game::ConditionGift chosen_gift(const PanelContext& context, const ConditionPickerView& view) {
    const ConditionChoice& choice = view.choice;
    const rules::ConditionRule* rule = rules::find_condition(context.rulebook, view.key);
    game::ConditionGift gift;
    game::ActiveCondition& condition = gift.condition;
    condition.key = view.is_own ? std::string() : view.key;
    if (view.is_own) {
        condition.name = choice.name;
        condition.modifiers = choice.modifiers;
    }
    if (rule != nullptr && rule->has_value) condition.value = choice.value;
    if (is_persistent(context, view)) {
        condition.value = 0;
        condition.damage = choice.damage;
        condition.damage_type = choice.damage_type;
    }
    condition.duration = choice.duration;
    const DurationKind kind = choice.duration.kind;
    const bool counts_turns = kind == DurationKind::until_turn || kind == DurationKind::rounds;
    condition.duration.whose_turn = base::no_id;
    if (counts_turns && choice.turn_of == TurnOf::current)
        condition.duration.whose_turn = context.campaign.encounter.current;
    if (counts_turns && choice.turn_of == TurnOf::somebody)
        condition.duration.whose_turn = choice.duration.whose_turn;
    gift.counts_on_own_turn = counts_turns && condition.duration.whose_turn == base::no_id;
    const bool has_check = kind == DurationKind::until_check ||
                           (choice.has_check && kind != DurationKind::until_removed);
    if (has_check) condition.check = choice.check;
    condition.source = view.source;
    condition.note = view.note;
    return gift;
}

std::string why_not_give(const PanelContext& context, const ConditionPickerView& view) {
    if (context.is_read_only) return read_only_reason(context);
    if (view.targets.empty()) return "Choose who gets it first.";
    if (view.key.empty() && !view.is_own) return "Pick a condition first.";
    if (view.is_own) {
        const std::string wrong = check_name(view.choice.name);
        if (!wrong.empty()) return "Name the effect first.";
    }
    if (is_persistent(context, view)) {
        if (view.choice.damage.empty()) return "Type the damage first, such as 1d6.";
        std::string wrong = check_dice(view.choice.damage);
        if (!wrong.empty()) return wrong;
    }
    const game::ConditionGift gift = chosen_gift(context, view);
    std::string refusals;
    for (const Id target : view.targets) {
        const auto preview =
            game::preview_condition(context.campaign.encounter, context.rulebook, target, gift);
        if (preview.refusal.empty()) return {};
        refusals = names_text(context.campaign.encounter, {target}) + " " + preview.refusal + ".";
    }
    return view.targets.size() == 1 ? refusals : std::string("None of them can get it.");
}

// "AC 19 -> 17, Fort +9 -> +7" of one target; who cannot get it is named with the reason.
static void
draw_preview_line(const PanelContext& context, const game::ConditionGift& gift, Id target) {
    const game::Encounter& encounter = context.campaign.encounter;
    const game::ConditionPreview preview =
        game::preview_condition(encounter, context.rulebook, target, gift);
    const std::string name = names_text(encounter, {target});
    if (!preview.refusal.empty()) {
        text_wrapped(Ink::harm, "! " + name + " " + preview.refusal);
        return;
    }
    std::string words;
    for (const std::string& change : preview.changes)
        words += (words.empty() ? "" : ", ") + change;
    if (words.empty()) words = "no number changes";
    text_wrapped(Ink::accent, name + ": " + words);
}

void draw_condition_preview(const PanelContext& context, const ConditionPickerView& view) {
    constexpr std::size_t most_lines = 8;
    if (view.targets.empty()) return;
    const game::ConditionGift gift = chosen_gift(context, view);
    if (view.is_own && view.choice.name.empty()) return;
    for (std::size_t place = 0; place < std::min(view.targets.size(), most_lines); ++place)
        draw_preview_line(context, gift, view.targets[place]);
    if (view.targets.size() > most_lines)
        text(Ink::muted, "and " + std::to_string(view.targets.size() - most_lines) + " more");
}

static void remember(ConditionPickerView& view) {
    constexpr std::size_t most_recent = 8;
    view.last_choices[view.key] = view.choice;
    if (view.is_own) return;
    std::erase(view.recent, view.key);
    view.recent.insert(view.recent.begin(), view.key);
    if (view.recent.size() > most_recent) view.recent.resize(most_recent);
}

void give_chosen(const PanelContext& context, ConditionPickerView& view) {
    const game::ConditionGift gift = chosen_gift(context, view);
    context.edits.add(
        &game::Campaign::encounter,
        "Give " + game::condition_text(context.rulebook, gift.condition) + " to " +
            names_text(context.campaign.encounter, view.targets),
        [gift, targets = view.targets, rulebook = &context.rulebook](game::Encounter& encounter) {
            return game::give_condition(encounter, *rulebook, targets, gift);
        }
    );
    remember(view);
    view.search.clear();
    ImGui::CloseCurrentPopup();
}

} // namespace widgets
