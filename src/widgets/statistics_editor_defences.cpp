// Resistances, weaknesses and immunities of the form.
#include "game/roster.h"
#include "widgets/stat_words.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <cstddef>
#include <utility>

namespace widgets {

using game::DamageTrait;
using game::Statistics;

namespace {

using Traits = std::vector<DamageTrait> Statistics::*;

struct TraitList {
    const StatisticsForm& form;
    Traits part;
    std::string name; // "resistance"
    bool has_amount;  // srd5 halves and doubles instead
};

std::string trait_words(const DamageTrait& trait) {
    return trait.type == "all" ? std::string("all damage") : plain_word(trait.type);
}

void draw_trait(const TraitList& list, Flow& flow, std::size_t place, const DamageTrait& trait) {
    constexpr int most = 999;
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    const float width = list.has_amount ? width_of_letters(4) + gap : 0.0F;
    const std::string id = list.name + " " + trait.type;
    flow.field(trait_words(trait), width + row_height());
    if (list.has_amount) {
        const auto typed =
            number_field(("##" + id).c_str(), trait.amount, 0, most, width, "A " + list.name);
        if (typed.has_value())
            list.form.ask(
                opening_word(list.name) + " of " + list.form.owner + ": " + trait_words(trait) +
                    " " + std::to_string(*typed),
                {},
                [part = list.part, place, amount = *typed](Statistics& statistics) {
                    if (place < (statistics.*part).size())
                        (statistics.*part)[place].amount = amount;
                }
            );
        ImGui::SameLine(0.0F, gap);
    }
    if (small_button(("x##" + id).c_str()))
        list.form.ask(
            "Take " + list.name + " to " + trait_words(trait) + " from " + list.form.owner,
            {},
            [part = list.part, type = trait.type](Statistics& statistics) {
                std::erase_if(statistics.*part, [&](const DamageTrait& each) {
                    return each.type == type;
                });
            }
        );
    Flow::end_field();
}

void draw_traits(const TraitList& list, const char* caption) {
    constexpr int usual_amount = 5;
    const auto& traits = list.form.statistics.*list.part;
    Flow flow;
    for (std::size_t place = 0; place < traits.size(); ++place)
        draw_trait(list, flow, place, traits[place]);
    std::vector<std::string> keys{"all"};
    std::vector<std::string> names{"all damage"};
    for (const std::string& type : list.form.context.rulebook.damage.types) {
        keys.push_back(type);
        names.push_back(plain_word(type));
    }
    for (const DamageTrait& trait : traits) {
        const auto found = std::find(keys.begin(), keys.end(), trait.type);
        if (found == keys.end()) continue;
        names.erase(names.begin() + (found - keys.begin()));
        keys.erase(found);
    }
    flow.next(button_width(caption));
    const std::string added = pick_to_add(caption, keys, names);
    if (added.empty()) return;
    list.form.ask(
        "Add " + list.name + " to " + plain_word(added) + ": " + list.form.owner,
        {},
        [part = list.part,
         added,
         amount = list.has_amount ? usual_amount : 0](Statistics& statistics) {
            DamageTrait trait;
            trait.type = added;
            trait.amount = amount;
            (statistics.*part).push_back(trait);
        }
    );
}

std::string immunity_words(const rules::Rulebook& rulebook, const std::string& key) {
    const rules::ConditionRule* rule = rules::find_condition(rulebook, key);
    return rule == nullptr ? plain_word(key) : rule->name;
}

void draw_immunities(const StatisticsForm& form) {
    const rules::Rulebook& rulebook = form.context.rulebook;
    const auto& immunities = form.statistics.immunities;
    Flow flow;
    for (const std::string& key : immunities) {
        const std::string label = immunity_words(rulebook, key) + " x##immunity " + key;
        flow.next(button_width(label.c_str()));
        if (chip(label.c_str(), Ink::text, "Press to take it away"))
            form.ask(
                "Take immunity to " + immunity_words(rulebook, key) + " from " + form.owner,
                {},
                [key](Statistics& statistics) { std::erase(statistics.immunities, key); }
            );
    }
    std::vector<std::string> keys;
    std::vector<std::string> names;
    const auto offer = [&](const std::string& key) {
        if (std::find(immunities.begin(), immunities.end(), key) != immunities.end()) return;
        if (std::find(keys.begin(), keys.end(), key) != keys.end()) return;
        keys.push_back(key);
        names.push_back(immunity_words(rulebook, key));
    };
    for (const std::string& type : rulebook.damage.types)
        offer(type);
    for (const rules::ConditionRule& rule : rulebook.conditions)
        offer(rule.key);
    flow.next(button_width("Add an immunity"));
    const std::string added = pick_to_add("Add an immunity", keys, names);
    if (!added.empty())
        form.ask(
            "Add immunity to " + immunity_words(rulebook, added) + ": " + form.owner,
            {},
            [added](Statistics& statistics) { statistics.immunities.push_back(added); }
        );
}

} // namespace

void draw_statistics_defences(const StatisticsForm& form) {
    const bool is_halving = form.context.rulebook.damage.halves_and_doubles;
    heading("Resistances");
    draw_traits({form, &Statistics::resistances, "resistance", !is_halving}, "Add a resistance");
    const char* weak = is_halving ? "Vulnerabilities" : "Weaknesses";
    heading(weak);
    draw_traits(
        {form, &Statistics::weaknesses, is_halving ? "vulnerability" : "weakness", !is_halving},
        is_halving ? "Add a vulnerability" : "Add a weakness"
    );
    heading("Immunities");
    draw_immunities(form);
}

} // namespace widgets
