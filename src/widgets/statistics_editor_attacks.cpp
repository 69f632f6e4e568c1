// The attacks of the form: one after the other, each with its own fields.
#include "game/roster.h"
#include "widgets/stat_words.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <cstddef>
#include <utility>

namespace widgets {

using game::Attack;
using game::Limits;
using game::Statistics;

namespace {

struct AttackForm {
    const StatisticsForm& form;
    std::size_t place;
    const Attack& attack;

    std::string label(const char* field) const {
        return std::string("##attack ") + field + " " + std::to_string(place);
    }

    template <class Set>
    void ask(const std::string& what, Set set, const std::string& typed_in = {}) const {
        form.ask(
            what + " of " + attack.name + ", " + form.owner,
            typed_in,
            [set, at = place](Statistics& statistics) {
                if (at < statistics.attacks.size()) set(statistics.attacks[at]);
            }
        );
    }
};

void draw_attack_text(
    const AttackForm& of,
    Flow& flow,
    const char* caption,
    const char* field,
    std::string Attack::*part,
    float width,
    const TextCheck& check
) {
    flow.field(caption, width);
    const auto typed = checked_text(
        of.label(field),
        of.attack.*part,
        of.form.view.drafts,
        of.form.context.now_seconds,
        width,
        check
    );
    Flow::end_field();
    if (typed.has_value())
        of.ask(
            caption,
            [part, words = *typed](Attack& attack) { attack.*part = words; },
            of.label(field)
        );
}

void draw_attack_type(const AttackForm& of, Flow& flow) {
    const float width = px(150.0F);
    flow.next(width);
    const std::string& type = of.attack.damage_type;
    const std::string shown = type.empty() ? std::string("no type") : plain_word(type);
    if (!begin_choice(of.label("type").c_str(), shown, width)) return;
    const auto choose = [&](const std::string& chosen) {
        of.ask("Damage type", [chosen](Attack& attack) { attack.damage_type = chosen; });
    };
    if (choice_row("no type", type.empty())) choose({});
    for (const std::string& each : of.form.context.rulebook.damage.types) {
        if (choice_row(plain_word(each), each == type)) choose(each);
    }
    ImGui::EndCombo();
}

void draw_attack_flags(const AttackForm& of, Flow& flow) {
    const std::string place = std::to_string(of.place);
    const std::string ranged = "ranged##attack " + place;
    flow.next(button_width(ranged.c_str()));
    if (toggle_button(ranged.c_str(), of.attack.is_ranged))
        of.ask("Range", [is_on = !of.attack.is_ranged](Attack& attack) {
            attack.is_ranged = is_on;
        });
    if (of.form.context.rulebook.turn.agile_attack_penalty.empty()) return;
    const std::string agile = "agile##attack " + place;
    flow.next(button_width(agile.c_str()));
    if (toggle_button(agile.c_str(), of.attack.is_agile))
        of.ask("Agile", [is_on = !of.attack.is_agile](Attack& attack) { attack.is_agile = is_on; });
}

void draw_attack_bonus(const AttackForm& of, Flow& flow) {
    const float width = width_of_letters(4);
    flow.field("bonus", width);
    const auto typed = number_field(
        of.label("bonus").c_str(),
        of.attack.bonus,
        Limits::modifier_min,
        Limits::modifier_max,
        width,
        "An attack bonus"
    );
    Flow::end_field();
    if (typed.has_value())
        of.ask("Bonus " + std::to_string(*typed), [number = *typed](Attack& attack) {
            attack.bonus = number;
        });
}

// srd5: how often it stands in the usual attacks of one turn.
void draw_attack_per_turn(const AttackForm& of, Flow& flow) {
    if (of.form.context.rulebook.family != rules::Family::srd5 || !of.form.is_opponent) return;
    const float width = width_of_letters(3);
    flow.field("a turn", width);
    const auto typed = number_field(
        of.label("per turn").c_str(),
        of.attack.per_turn,
        0,
        Limits::per_turn_max,
        width,
        "Attacks a turn"
    );
    Flow::end_field();
    if (typed.has_value())
        of.ask("Attacks a turn", [number = *typed](Attack& attack) { attack.per_turn = number; });
}

void draw_attack(const AttackForm& of) {
    if (of.place > 0) ImGui::Dummy({0.0F, px(4.0F)});
    Flow flow;
    draw_attack_text(of, flow, "Attack", "name", &Attack::name, px(150.0F), check_name);
    if (of.form.has_attack_numbers) {
        draw_attack_bonus(of, flow);
        draw_attack_text(
            of, flow, "damage", "damage", &Attack::damage, width_of_letters(10), check_dice
        );
        draw_attack_per_turn(of, flow);
    }
    draw_attack_type(of, flow);
    draw_attack_flags(of, flow);
    draw_attack_text(of, flow, "traits", "traits", &Attack::traits, px(190.0F), check_text);
    const std::string remove = "Remove##attack " + std::to_string(of.place);
    flow.next(button_width(remove.c_str()));
    if (small_button(remove.c_str())) {
        of.form.ask(
            "Take " + of.attack.name + " from " + of.form.owner,
            {},
            [at = of.place](Statistics& statistics) {
                if (at < statistics.attacks.size())
                    statistics.attacks.erase(
                        statistics.attacks.begin() + static_cast<std::ptrdiff_t>(at)
                    );
            }
        );
        // The drafts below belong to other attacks from now on.
        of.form.view.drafts = {};
        return;
    }
    for (const char* field : {"name", "damage", "traits"})
        draw_complaints(of.form.view.drafts, of.label(field));
}

} // namespace

void draw_statistics_attacks(const StatisticsForm& form) {
    heading("Attacks");
    for (std::size_t place = 0; place < form.statistics.attacks.size(); ++place)
        draw_attack({form, place, form.statistics.attacks[place]});
    if (form.has_attack_numbers && button("Add an attack"))
        form.ask("Add an attack to " + form.owner, {}, [](Statistics& statistics) {
            Attack attack;
            attack.name = "attack " + std::to_string(statistics.attacks.size() + 1);
            statistics.attacks.push_back(attack);
        });
}

} // namespace widgets
