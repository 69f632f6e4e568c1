// The parts that rows are put together from: words of state, HP, AC, condition chips.
#include "game/conditions.h"
#include "game/effects.h"
#include "widgets/turn_order_rows.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using base::Id;
using game::Combatant;

RowLayout row_layout(float width) {
    RowLayout layout;
    layout.width = width;
    layout.is_narrow = width < px(600.0F);
    layout.initiative = px(44.0F);
    layout.name = layout.is_narrow ? width - px(44.0F) - px(300.0F) : width * 0.30F;
    layout.hp = px(180.0F);
    layout.armor_class = px(104.0F);
    layout.line = row_height() + px(4.0F);
    return layout;
}

static void add_word(std::string& words, const std::string& word) {
    if (!words.empty()) words += ", ";
    words += word;
}

// Death saves so far, as the person at the table counts them.
static std::string death_save_words(const rules::Rulebook& rulebook, const Combatant& combatant) {
    if (rulebook.family != rules::Family::srd5 || combatant.hp > 0 || combatant.is_dead) return {};
    if (combatant.death_saves.is_stable) return "stable";
    if (combatant.dies_at_zero) return {};
    return "death saves " + std::to_string(combatant.death_saves.successes) + " made, " +
           std::to_string(combatant.death_saves.failures) + " failed";
}

std::string state_words(const PanelContext& context, const Combatant& combatant, Id next) {
    const game::Encounter& encounter = context.campaign.encounter;
    std::string words;
    if (combatant.id == encounter.current)
        add_word(words, "now");
    else if (combatant.id == next)
        add_word(words, "next");
    else if (combatant.has_acted)
        add_word(words, "done");
    if (combatant.standing == game::Standing::delaying) add_word(words, "delays");
    if (combatant.is_dead) add_word(words, "dead");
    const std::string saves = death_save_words(context.rulebook, combatant);
    if (!saves.empty()) add_word(words, saves);
    if (combatant.is_hidden) add_word(words, "hidden");
    if (!combatant.readied.empty()) add_word(words, "readied: " + combatant.readied);
    if (!combatant.concentrating_on.empty())
        add_word(words, "concentrates on " + combatant.concentrating_on);
    if (combatant.reaction_used) add_word(words, "reaction used");
    if (combatant.group != base::no_id) add_word(words, group_text(encounter, combatant.group));
    return words;
}

void draw_row_hp(
    const PanelContext& context, const Combatant& combatant, const RowPopups& popups, float width
) {
    const int most = game::effective_hp_max(context.rulebook, combatant);
    const ImVec2 at = ImGui::GetCursorPos();
    const std::string label =
        "HP " + std::to_string(combatant.hp) + "/" + std::to_string(most) + "###hp";
    ImGui::SetNextItemAllowOverlap();
    if (ImGui::InvisibleButton(label.c_str(), {width, row_height()})) {
        if (!is_picked(context.selection, combatant.id))
            context.selection.combatants = {combatant.id};
        open_number_pad(popups.pad, PadVerb::hurt, context.selection.combatants);
    }
    if (ImGui::IsItemHovered()) {
        ImGui::SetMouseCursor(ImGuiMouseCursor_Hand);
        ImGui::SetItemTooltip("Press for the number pad, or type a number");
    }
    ImGui::SetCursorPos(at);
    hp_bar(combatant.hp, most, combatant.temp_hp, {width, row_height()});
}

static std::string signed_text(int number) {
    return (number < 0 ? "" : "+") + std::to_string(number);
}

static const char* type_word(rules::BonusType type) {
    switch (type) {
    case rules::BonusType::untyped: return "";
    case rules::BonusType::circumstance: return " circumstance";
    case rules::BonusType::item: return " item";
    case rules::BonusType::status: return " status";
    }
    return "";
}

static std::string reasons(const game::EffectiveNumber& number) {
    std::string lines = "AC " + std::to_string(number.base) + " before conditions";
    for (const game::Contribution& part : number.contributions) {
        lines += "\n" + part.source + ": " + signed_text(part.amount) + type_word(part.bonus_type);
        if (!part.note.empty()) lines += " (" + part.note + ")";
        if (!part.counts) lines += ", a stronger one counts";
    }
    for (const std::string& note : number.notes)
        lines += "\n" + note;
    return lines;
}

// "AC 19", or "AC 17 (-2)" when conditions change it; the tooltip says why.
void draw_row_armor_class(const PanelContext& context, const Combatant& combatant) {
    const game::EffectiveNumber number = game::effective_ac(context.rulebook, combatant);
    std::string words = "AC " + std::to_string(number.total);
    const bool is_changed = number.total != number.base;
    if (is_changed) words += " (" + signed_text(number.total - number.base) + ")";
    const Ink ink = !is_changed ? Ink::text : number.total < number.base ? Ink::harm : Ink::good;
    push_numbers(TextSize::body);
    text(ink, words);
    ImGui::PopFont();
    if (is_changed || !number.notes.empty()) ImGui::SetItemTooltip("%s", reasons(number).c_str());
}

// "frightened 2, end of turn"; those that only the GM ends stand alone: "prone".
static std::string chip_text(const PanelContext& context, const game::ActiveCondition& condition) {
    std::string words = game::condition_text(context.rulebook, condition);
    const bool is_open_ended = condition.duration.kind == game::DurationKind::until_removed &&
                               !condition.check.has_value();
    const rules::ConditionRule* rule = rules::find_condition(context.rulebook, condition.key);
    const bool fades = rule != nullptr && rule->fading == rules::Fading::drops_at_turn_end;
    if (condition.is_paused)
        words += ", paused";
    else if (is_open_ended && fades)
        words += ", end of turn"; // its value drops then
    else if (!is_open_ended)
        words +=
            ", " + game::duration_text(context.campaign.encounter, context.rulebook, condition);
    return words;
}

void draw_row_chips(
    const PanelContext& context, const Combatant& combatant, const RowPopups& popups, float width
) {
    const float spacing = ImGui::GetStyle().ItemSpacing.x;
    const std::size_t count = combatant.conditions.size();
    float left = width;
    for (std::size_t i = 0; i < count; ++i) {
        const game::ActiveCondition& condition = combatant.conditions[i];
        std::string words = chip_text(context, condition);
        const std::string rest = "+" + std::to_string(count - i);
        const float reserve = i + 1 < count ? button_width(rest.c_str()) + spacing : 0.0F;
        // Without its countdown rather than not at all.
        if (button_width(words.c_str()) + reserve > left)
            words = game::condition_text(context.rulebook, condition);
        const float needed = button_width(words.c_str());
        if (i > 0) ImGui::SameLine();
        if (needed + reserve > left) {
            if (chip((rest + "###rest").c_str(), Ink::muted, "More conditions"))
                open_condition_menu(popups.condition, combatant.id, base::no_id);
            return;
        }
        left -= needed + spacing;
        ImGui::PushID(static_cast<int>(condition.id));
        const rules::ConditionRule* rule = rules::find_condition(context.rulebook, condition.key);
        const std::string tooltip = rule == nullptr ? condition.note : rule->summary;
        if (chip((words + "###chip").c_str(), Ink::accent, tooltip))
            open_condition_menu(popups.condition, combatant.id, condition.id);
        ImGui::PopID();
    }
}

} // namespace widgets
