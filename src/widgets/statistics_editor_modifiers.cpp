// Saves, abilities and skills of the form.
#include "game/roster.h"
#include "widgets/read_only.h"
#include "widgets/stat_words.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <utility>

namespace widgets {

using game::Limits;
using game::Modifiers;
using game::Statistics;

using Part = Modifiers Statistics::*;

static int value_or(const Modifiers& modifiers, const std::string& key, int otherwise) {
    const auto found = modifiers.find(key);
    return found == modifiers.end() ? otherwise : found->second;
}

static void draw_modifier_number(
    const StatisticsForm& form, Flow& flow, Part part, const rules::StatName& stat, int value
) {
    const std::string what = part == &Statistics::saves       ? "save "
                             : part == &Statistics::abilities ? "ability "
                                                              : "skill ";
    draw_form_number(
        form,
        flow,
        stat.name,
        "##" + what + stat.key,
        value,
        Limits::modifier_min,
        Limits::modifier_max,
        [part, key = stat.key](Statistics& statistics, int number) {
            (statistics.*part)[key] = number;
        }
    );
}

// Saves that are not on the sheet are rolled with the plain ability: that is what the field shows.
static void draw_saves(const StatisticsForm& form) {
    heading("Saves");
    Flow flow;
    for (const rules::StatName& save : form.context.rulebook.saves) {
        const int plain = value_or(form.statistics.abilities, save.ability, 0);
        const int value = value_or(form.statistics.saves, save.key, plain);
        draw_modifier_number(form, flow, &Statistics::saves, save, value);
    }
}

static void draw_abilities(const StatisticsForm& form) {
    heading("Ability modifiers");
    Flow flow;
    for (const rules::StatName& ability : form.context.rulebook.abilities) {
        const int value = value_or(form.statistics.abilities, ability.key, 0);
        draw_modifier_number(form, flow, &Statistics::abilities, ability, value);
    }
}

static void draw_skill(const StatisticsForm& form, Flow& flow, const std::string& key, int value) {
    const float cross = row_height() + ImGui::GetStyle().ItemInnerSpacing.x;
    const std::string name = stat_words(form.context.rulebook, key);
    const float width = width_of_letters(4);
    flow.field(name, width + cross);
    const auto typed = number_field(
        ("##skill " + key).c_str(), value, Limits::modifier_min, Limits::modifier_max, width, name
    );
    if (typed.has_value())
        form.ask(
            name + " of " + form.owner + ": " + std::to_string(*typed),
            {},
            [key, number = *typed](Statistics& statistics) { statistics.skills[key] = number; }
        );
    ImGui::SameLine(0.0F, ImGui::GetStyle().ItemInnerSpacing.x);
    if (small_button(("x##without " + key).c_str()))
        form.ask("Take " + name + " from " + form.owner, {}, [key](Statistics& statistics) {
            statistics.skills.erase(key);
        });
    Flow::end_field();
}

static void draw_skills(const StatisticsForm& form) {
    heading("Skills");
    const rules::Rulebook& rulebook = form.context.rulebook;
    Flow flow;
    std::vector<std::string> keys;
    std::vector<std::string> names;
    for (const rules::StatName& skill : rulebook.skills) {
        const auto found = form.statistics.skills.find(skill.key);
        if (found != form.statistics.skills.end()) {
            draw_skill(form, flow, skill.key, found->second);
            continue;
        }
        keys.push_back(skill.key);
        names.push_back(skill.name);
    }
    for (const auto& [key, value] : form.statistics.skills) {
        // Those the rulebook does not know, such as lores of their own.
        if (rules::find_stat(rulebook, key) == nullptr) draw_skill(form, flow, key, value);
    }
    if (keys.empty()) return;
    flow.next(button_width("Add a skill"));
    const std::string added = pick_to_add("Add a skill", keys, names);
    if (added.empty()) return;
    const rules::StatName* skill = rules::find_stat(rulebook, added);
    const int plain =
        value_or(form.statistics.abilities, skill == nullptr ? std::string() : skill->ability, 0);
    form.ask(
        "Add " + stat_words(rulebook, added) + " to " + form.owner,
        {},
        [added, plain](Statistics& statistics) { statistics.skills[added] = plain; }
    );
}

void draw_statistics_modifiers(const StatisticsForm& form) {
    draw_saves(form);
    draw_abilities(form);
    draw_skills(form);
}

} // namespace widgets
