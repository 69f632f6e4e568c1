// Numbers of the Close-up: what they are now, and why. A changed one is underlined, carries the
// change with its sign, and takes the colour of harm or good: never colour alone.
#include "game/effects.h"
#include "widgets/close_up_parts.h"
#include "widgets/reason_words.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using game::Combatant;
using game::SheetNumber;
using game::SheetPart;

namespace {

bool is_plain_number(SheetPart part) {
    return part == SheetPart::armor_class || part == SheetPart::difficulty_class;
}

std::string number_words(const SheetNumber& of) {
    return is_plain_number(of.part) ? std::to_string(of.number.total)
                                    : game::signed_text(of.number.total);
}

float cell_width(const SheetNumber& of) {
    push_numbers(TextSize::name);
    const float number = ImGui::CalcTextSize(number_words(of).c_str()).x;
    ImGui::PopFont();
    const std::string change = change_words(of.number);
    const float with_change =
        change.empty() ? number : number + px(6.0F) + ImGui::CalcTextSize(change.c_str()).x;
    return std::max({with_change, ImGui::CalcTextSize(of.brief.c_str()).x, px(64.0F)});
}

// A cell: the name in small print, the number large below it.
void draw_cell(Flow& flow, const SheetNumber& of) {
    const float width = cell_width(of);
    flow.next(width);
    ImGui::BeginGroup();
    push_font(TextSize::small);
    text(Ink::muted, of.brief);
    ImGui::PopFont();
    const std::string change = change_words(of.number);
    const Ink ink = change.empty() ? Ink::text : change_ink(of.number);
    push_numbers(TextSize::name);
    text(ink, number_words(of));
    ImGui::PopFont();
    if (!change.empty()) {
        underline_item(ink);
        ImGui::SameLine(0.0F, px(6.0F));
        ImGui::PushFont(look().fonts.strong);
        text(ink, change);
        ImGui::PopFont();
    }
    ImGui::Dummy({width, px(2.0F)});
    ImGui::EndGroup();
}

// "Athletics +12", or "Athletics +10 -2" underlined when something changes it.
void draw_inline_number(Flow& flow, const SheetNumber& of) {
    const std::string change = change_words(of.number);
    const std::string words =
        of.name + " " + number_words(of) + (change.empty() ? "" : " (" + change + ")");
    const bool is_changed = !change.empty();
    if (is_changed) ImGui::PushFont(look().fonts.strong);
    flow.next(ImGui::CalcTextSize(words.c_str()).x);
    text(is_changed ? change_ink(of.number) : Ink::text, words);
    if (is_changed) underline_item(change_ink(of.number));
    if (is_changed) ImGui::PopFont();
}

void draw_inline_part(const std::vector<SheetNumber>& numbers, SheetPart part, const char* title) {
    const bool has_any = std::any_of(numbers.begin(), numbers.end(), [part](const auto& each) {
        return each.part == part;
    });
    if (!has_any) return;
    heading(title);
    Flow flow;
    for (const SheetNumber& of : numbers) {
        if (of.part == part) draw_inline_number(flow, of);
    }
}

void draw_speeds(const PanelContext& context, const Combatant& combatant) {
    if (combatant.statistics.speeds_ft.empty()) return;
    heading("Speed");
    Flow flow;
    for (const auto& [kind, usual] : combatant.statistics.speeds_ft) {
        const int now = game::effective_speed_ft(context.rulebook, combatant, kind);
        const bool is_changed = now != usual;
        std::string words = opening_word(speed_words(kind)) + " " + std::to_string(now) + " ft";
        if (is_changed) words += " (" + game::signed_text(now - usual) + ")";
        flow.next(ImGui::CalcTextSize(words.c_str()).x);
        const Ink ink = !is_changed ? Ink::text : now < usual ? Ink::harm : Ink::good;
        text(ink, words);
        if (is_changed) underline_item(ink);
    }
}

void draw_turn_words(const PanelContext& context, const Combatant& combatant) {
    const rules::Rulebook& rulebook = context.rulebook;
    const int actions = game::actions_at_turn_start(rulebook, combatant);
    std::string words;
    if (actions != rulebook.turn.actions)
        words = "Gets " + std::to_string(actions) + (actions == 1 ? " action" : " actions") +
                " at the start of its turn, otherwise " + std::to_string(rulebook.turn.actions);
    if (!words.empty()) text_wrapped(Ink::harm, words);
    if (!game::can_react(rulebook, combatant)) text_wrapped(Ink::harm, "Cannot use reactions");
    const game::EffectiveNumber against = game::attacks_against(rulebook, combatant);
    const std::string mode = change_words(against);
    if (!mode.empty()) text_wrapped(Ink::harm, "Attacks against it: " + mode);
    for (const std::string& note : against.notes)
        text_wrapped(Ink::muted, note);
}

struct Reason {
    std::string whose; // "AC, Fort, Ref"
    const game::EffectiveNumber* number;
};

} // namespace

void draw_close_up_defences(
    const PanelContext& context, const Combatant& combatant, const std::vector<SheetNumber>& numbers
) {
    heading("Defences");
    Flow flow;
    for (const SheetNumber& of : numbers) {
        const bool is_cell = of.part == SheetPart::armor_class || of.part == SheetPart::save ||
                             of.part == SheetPart::perception;
        if (is_cell) draw_cell(flow, of);
    }
    draw_turn_words(context, combatant);
}

void draw_close_up_skills(
    const PanelContext& context, const Combatant& combatant, const std::vector<SheetNumber>& numbers
) {
    draw_inline_part(numbers, SheetPart::difficulty_class, "Difficulty classes");
    draw_inline_part(numbers, SheetPart::skill, "Skills");
    draw_speeds(context, combatant);
}

void draw_close_up_reasons(const std::vector<SheetNumber>& numbers) {
    std::vector<Reason> reasons;
    for (const SheetNumber& of : numbers) {
        if (of.number.contributions.empty() && of.number.notes.empty()) continue;
        const auto same = std::find_if(reasons.begin(), reasons.end(), [&](const Reason& each) {
            return each.number->contributions == of.number.contributions &&
                   each.number->notes == of.number.notes;
        });
        const std::string& name = of.part == SheetPart::skill ? of.name : of.brief;
        if (same == reasons.end())
            reasons.push_back({name, &of.number});
        else
            same->whose += ", " + name;
    }
    if (reasons.empty()) return;
    heading("Why");
    for (const Reason& reason : reasons) {
        ImGui::PushFont(look().fonts.strong);
        text_wrapped(Ink::text, reason.whose);
        ImGui::PopFont();
        ImGui::Indent(px(12.0F));
        draw_reasons(*reason.number);
        ImGui::Unindent(px(12.0F));
    }
}

// "+14, then +9, +4; 2d8+4 slashing; versatile": the attacks of a turn, then what a hit does.
static std::string attack_words(
    const rules::Rulebook& rulebook, const Combatant& combatant, const game::Attack& attack
) {
    const std::vector<int> series = game::attack_series(rulebook, combatant, attack);
    std::string words = series.size() > 1 ? "in a turn " : "";
    for (std::size_t place = 0; place < series.size() && series.size() > 1; ++place)
        words += (place == 0 ? "" : ", ") + game::signed_text(series[place]);
    const auto add = [&words](const std::string& more) {
        if (!more.empty()) words += (words.empty() ? "" : "; ") + more;
    };
    std::string damage = attack.damage;
    if (!attack.damage_type.empty())
        damage += (damage.empty() ? "" : " ") + plain_word(attack.damage_type);
    add(damage);
    if (attack.is_ranged) add("ranged");
    if (attack.is_agile) add("agile");
    add(attack.traits);
    return words;
}

void draw_close_up_attacks(
    const PanelContext& context, const Combatant& combatant, const std::vector<SheetNumber>& numbers
) {
    const std::vector<game::Attack>& attacks = combatant.statistics.attacks;
    if (attacks.empty()) return;
    heading("Attacks");
    for (const SheetNumber& of : numbers) {
        if (of.part != SheetPart::attack) continue;
        Flow flow;
        draw_inline_number(flow, of);
        const game::Attack& attack = attacks[static_cast<std::size_t>(std::stoul(of.key))];
        push_font(TextSize::small);
        text_wrapped(Ink::muted, attack_words(context.rulebook, combatant, attack));
        ImGui::PopFont();
    }
}

} // namespace widgets
