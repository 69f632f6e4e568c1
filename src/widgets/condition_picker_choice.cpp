// What is chosen about the condition picked: value, damage, own words, source, note.
#include "widgets/combatant_choice.h"
#include "widgets/condition_picker_parts.h"
#include "widgets/form.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <array>

namespace widgets {

namespace {

constexpr int highest_value = 99; // where the rulebook sets no limit

void draw_value(const rules::ConditionRule& rule, ConditionPickerView& view) {
    if (!rule.has_value) return;
    const int most = rule.max_value > 0 ? rule.max_value : highest_value;
    Flow flow;
    flow.field("Value", stepper_width());
    const auto typed = stepper("value", view.choice.value, 1, most, "The value");
    if (typed.has_value()) view.choice.value = *typed;
    Flow::end_field();
}

void draw_damage(const PanelContext& context, ConditionPickerView& view) {
    Flow flow;
    flow.field("Damage each turn", width_of_letters(10));
    ImGui::SetNextItemWidth(width_of_letters(10));
    ImGui::InputText("##damage", &view.choice.damage);
    Flow::end_field();
    flow.next(px(150.0F));
    const std::string& type = view.choice.damage_type;
    const std::string shown = type.empty() ? std::string("no type") : plain_word(type);
    if (begin_choice("##damage type", shown, px(150.0F))) {
        if (choice_row("no type", type.empty())) view.choice.damage_type.clear();
        for (const std::string& each : context.rulebook.damage.types) {
            if (choice_row(plain_word(each), each == type)) view.choice.damage_type = each;
        }
        ImGui::EndCombo();
    }
    const std::string wrong = check_dice(view.choice.damage);
    if (!wrong.empty()) complaint(wrong);
}

// The stat words that a GM's own effect can change.
std::vector<std::string> modifiable(const rules::Rulebook& rulebook) {
    std::vector<std::string> words{
        "ac", "all_saves", "attack", "damage", "all_checks", "skills", "speed", "all_dcs"};
    for (const rules::StatName& save : rulebook.saves)
        words.push_back(save.key);
    words.emplace_back("perception");
    words.emplace_back("initiative");
    for (const rules::StatName& skill : rulebook.skills) {
        if (skill.key != "perception") words.push_back(skill.key);
    }
    return words;
}

void draw_bonus_type(game::Modifier& modifier) {
    static constexpr std::array<rules::BonusType, 4> types{
        rules::BonusType::status,
        rules::BonusType::circumstance,
        rules::BonusType::item,
        rules::BonusType::untyped};
    if (!begin_choice("##bonus type", bonus_type_words(modifier.bonus_type), px(150.0F))) return;
    for (const rules::BonusType type : types) {
        if (choice_row(bonus_type_words(type), type == modifier.bonus_type))
            modifier.bonus_type = type;
    }
    ImGui::EndCombo();
}

// One modifier: amount, what it changes, its type. True when it is to go.
bool draw_modifier(const PanelContext& context, game::Modifier& modifier) {
    constexpr int most = 99;
    Flow flow;
    flow.next(stepper_width());
    ImGui::BeginGroup();
    const auto typed = stepper("amount", modifier.amount, -most, most, "A bonus or penalty");
    if (typed.has_value()) modifier.amount = *typed;
    ImGui::EndGroup();
    flow.field("to", px(160.0F));
    const std::string now = applies_to_words(context.rulebook, modifier.applies_to);
    if (begin_choice("##applies to", now, px(160.0F))) {
        for (const std::string& word : modifiable(context.rulebook)) {
            const bool is_chosen = word == modifier.applies_to;
            if (choice_row(applies_to_words(context.rulebook, word), is_chosen))
                modifier.applies_to = word;
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
    if (context.rulebook.family == rules::Family::four_degree) {
        flow.next(px(150.0F));
        draw_bonus_type(modifier);
    }
    flow.next(row_height());
    return small_button("x##modifier");
}

void draw_source_and_note(const PanelContext& context, ConditionPickerView& view) {
    Flow flow;
    flow.field("Caused by", px(200.0F));
    draw_combatant_choice(context, "##source", view.source, "nobody in particular", px(200.0F));
    Flow::end_field();
    flow.field("Note", px(200.0F));
    ImGui::SetNextItemWidth(px(200.0F));
    ImGui::InputText("##note", &view.note);
    Flow::end_field();
}

} // namespace

void draw_own_effect(const PanelContext& context, ConditionPickerView& view) {
    Flow flow;
    const float width = px(220.0F);
    flow.field("Name", width);
    ImGui::SetNextItemWidth(width);
    ImGui::InputTextWithHint("##name", "Shield raised", &view.choice.name);
    Flow::end_field();
    std::vector<game::Modifier>& modifiers = view.choice.modifiers;
    for (std::size_t place = 0; place < modifiers.size(); ++place) {
        ImGui::PushID(static_cast<int>(place));
        const bool is_to_go = draw_modifier(context, modifiers[place]);
        ImGui::PopID();
        if (!is_to_go) continue;
        modifiers.erase(modifiers.begin() + static_cast<std::ptrdiff_t>(place));
        break;
    }
    if (button(modifiers.empty() ? "Add a bonus or penalty" : "Add another")) {
        const bool is_typed = context.rulebook.family == rules::Family::four_degree;
        game::Modifier modifier;
        modifier.applies_to = "ac";
        modifier.amount = 1;
        modifier.bonus_type = is_typed ? rules::BonusType::circumstance : rules::BonusType::untyped;
        modifiers.push_back(modifier);
    }
}

void draw_condition_choice(const PanelContext& context, ConditionPickerView& view) {
    const rules::ConditionRule* rule = rules::find_condition(context.rulebook, view.key);
    if (rule == nullptr && !view.is_own) {
        text_wrapped(Ink::muted, "Pick a condition on the list.");
        return;
    }
    push_font(TextSize::name);
    text_wrapped(Ink::text, view.is_own ? std::string("In your own words") : rule->name);
    ImGui::PopFont();
    if (rule != nullptr && !rule->summary.empty()) text_wrapped(Ink::text, rule->summary);
    draw_condition_preview(context, view);
    if (view.is_own)
        draw_own_effect(context, view);
    else if (rule->fading == rules::Fading::persistent_damage)
        draw_damage(context, view);
    else
        draw_value(*rule, view);
    heading("How long");
    draw_condition_duration(context, view);
    heading("Where it comes from");
    draw_source_and_note(context, view);
}

} // namespace widgets
