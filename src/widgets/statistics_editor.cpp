// The main numbers, and the order of the form.
#include "widgets/statistics_editor.h"

#include "game/effects.h"
#include "game/roster.h"
#include "game/sheet.h"
#include "rules/challenge_text.h"
#include "widgets/stat_words.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <array>
#include <utility>

namespace widgets {

using game::Limits;
using game::Statistics;

void draw_form_number(
    const StatisticsForm& form,
    Flow& flow,
    const std::string& name,
    const std::string& label,
    int value,
    int minimum,
    int maximum,
    const std::function<void(Statistics&, int)>& set
) {
    const float width = width_of_letters(4);
    flow.field(name, width);
    const auto typed = number_field(label.c_str(), value, minimum, maximum, width, name);
    Flow::end_field();
    if (!typed.has_value()) return;
    form.ask(
        name + " of " + form.owner + ": " + std::to_string(*typed),
        {},
        [set, number = *typed](Statistics& statistics) { set(statistics, number); }
    );
}

std::string pick_to_add(
    const char* caption, const std::vector<std::string>& keys, const std::vector<std::string>& names
) {
    std::string picked;
    ImGui::PushID(caption);
    if (button(caption)) ImGui::OpenPopup("add");
    ImGui::SetNextWindowSizeConstraints({0.0F, 0.0F}, {px(400.0F), px(420.0F)});
    if (ImGui::BeginPopup("add")) {
        if (ImGui::IsKeyPressed(ImGuiKey_Escape, false)) ImGui::CloseCurrentPopup();
        for (std::size_t place = 0; place < keys.size(); ++place) {
            if (choice_row(names[place], false)) picked = keys[place];
        }
        ImGui::EndPopup();
    }
    ImGui::PopID();
    return picked;
}

static void draw_challenge(const StatisticsForm& form, Flow& flow) {
    // The challenge ratings there are (SRD 5.1, Challenge).
    static constexpr std::array<double, 34> ratings{
        0.0,  0.125, 0.25, 0.5,  1.0,  2.0,  3.0,  4.0,  5.0,  6.0,  7.0,  8.0,
        9.0,  10.0,  11.0, 12.0, 13.0, 14.0, 15.0, 16.0, 17.0, 18.0, 19.0, 20.0,
        21.0, 22.0,  23.0, 24.0, 25.0, 26.0, 27.0, 28.0, 29.0, 30.0};
    const float width = px(90.0F);
    flow.field("CR", width);
    if (begin_choice("##challenge", rules::challenge_text(form.statistics.challenge), width)) {
        for (const double rating : ratings) {
            if (!choice_row(rules::challenge_text(rating), rating == form.statistics.challenge))
                continue;
            form.ask(
                "CR of " + form.owner + ": " + rules::challenge_text(rating),
                {},
                [rating](Statistics& statistics) { statistics.challenge = rating; }
            );
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

// Initiative follows the usual stat unless a number of its own is given.
static void draw_initiative(const StatisticsForm& form, Flow& flow) {
    const auto& own = form.statistics.initiative;
    if (own.has_value()) {
        draw_form_number(
            form,
            flow,
            "Initiative",
            "##initiative",
            *own,
            Limits::modifier_min,
            Limits::modifier_max,
            [](Statistics& statistics, int number) { statistics.initiative = number; }
        );
    }
    const char* caption = "Initiative of its own";
    flow.next(button_width(caption));
    if (!toggle_button(caption, own.has_value())) return;
    game::Combatant plain;
    plain.statistics = form.statistics;
    const int usual = game::effective_check(form.context.rulebook, plain, "initiative").base;
    form.ask(
        (own.has_value() ? "Usual initiative for " : "Initiative of its own for ") + form.owner,
        {},
        [had_own = own.has_value(), usual](Statistics& statistics) {
            if (had_own)
                statistics.initiative.reset();
            else
                statistics.initiative = usual;
        }
    );
}

static void draw_form_text(
    const StatisticsForm& form,
    Flow& flow,
    const std::string& name,
    const std::string& label,
    std::string Statistics::*part,
    float width,
    const TextCheck& check
) {
    flow.field(name, width);
    const auto typed = checked_text(
        label, form.statistics.*part, form.view.drafts, form.context.now_seconds, width, check
    );
    Flow::end_field();
    if (typed.has_value())
        form.ask(name + " of " + form.owner, label, [part, words = *typed](Statistics& each) {
            each.*part = words;
        });
}

// HP are rolled from them where the GM wants.
static void draw_hit_dice_text(const StatisticsForm& form, Flow& flow) {
    const float width = width_of_letters(10);
    draw_form_text(form, flow, "Hit dice", "##hit dice", &Statistics::hit_dice, width, check_dice);
}

// "dragon": found by it in lists.
static void draw_type_text(const StatisticsForm& form, Flow& flow) {
    const float width = px(130.0F);
    draw_form_text(
        form, flow, "Type", "##creature type", &Statistics::creature_type, width, check_text
    );
}

static void draw_main_numbers(const StatisticsForm& form) {
    const Statistics& statistics = form.statistics;
    Flow flow;
    const bool is_srd5 = form.context.rulebook.family == rules::Family::srd5;
    if (form.is_opponent && is_srd5)
        draw_challenge(form, flow);
    else
        draw_form_number(
            form,
            flow,
            "Level",
            "##level",
            statistics.level,
            form.is_opponent ? Limits::level_min : 1,
            Limits::level_max,
            [](Statistics& each, int number) { each.level = number; }
        );
    draw_form_number(
        form,
        flow,
        "AC",
        "##ac",
        statistics.armor_class,
        Limits::armor_class_min,
        Limits::armor_class_max,
        [](Statistics& each, int number) { each.armor_class = number; }
    );
    draw_form_number(
        form,
        flow,
        "HP",
        "##hp",
        statistics.hit_points,
        Limits::hp_min,
        Limits::hp_max,
        [](Statistics& each, int number) { each.hit_points = number; }
    );
    draw_form_number(
        form,
        flow,
        "Perception",
        "##perception",
        statistics.perception,
        Limits::modifier_min,
        Limits::modifier_max,
        [](Statistics& each, int number) { each.perception = number; }
    );
    draw_initiative(form, flow);
    if (!form.is_opponent) return;
    if (is_srd5) draw_hit_dice_text(form, flow);
    if (statistics.hazard != game::Hazard::none)
        draw_form_number(
            form,
            flow,
            "Hardness",
            "##hardness",
            statistics.hardness,
            0,
            Limits::hp_max,
            [](Statistics& each, int number) { each.hardness = number; }
        );
    else
        draw_type_text(form, flow);
    draw_complaints(form.view.drafts, "##hit dice");
    draw_complaints(form.view.drafts, "##creature type");
}

void draw_statistics_editor(const StatisticsForm& form) {
    heading("Numbers");
    draw_main_numbers(form);
    draw_statistics_modifiers(form);
    draw_statistics_attacks(form);
    draw_statistics_difficulty_classes(form);
    draw_statistics_speeds(form);
    draw_statistics_senses(form);
    draw_statistics_defences(form);
}

} // namespace widgets
