// The creatures and hazards of the Encounter Budget, with their XP.
#include "game/roster.h"
#include "widgets/encounter_budget_parts.h"
#include "widgets/encounter_preparation_form.h"
#include "widgets/read_only.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <cstddef>

namespace widgets {

using game::PlannedPart;
using game::PreparedEncounter;
using game::PreparedHazards;

namespace {

std::string each_words(const PlannedPart& part) {
    return part.rating + ", " +
           (part.xp_each ? std::to_string(*part.xp_each) + " XP each" : std::string("not rated"));
}

// The name, what one is worth below it in small print, and the sum at the right edge.
void draw_part_words(const PlannedPart& part, float width) {
    const ImVec2 at = ImGui::GetCursorPos();
    const std::string sum = part.xp_each ? std::to_string(part.xp) : std::string("--");
    ImGui::BeginGroup();
    draw_line_with_end(part.name, sum, width);
    ImGui::SetCursorPosX(at.x);
    push_font(TextSize::small);
    text_fitted(part.xp_each ? Ink::muted : Ink::harm, each_words(part), width);
    ImGui::PopFont();
    ImGui::EndGroup();
}

float two_lines() {
    push_font(TextSize::small);
    const float small_line = ImGui::GetTextLineHeight();
    ImGui::PopFont();
    return ImGui::GetTextLineHeight() + small_line + ImGui::GetStyle().ItemSpacing.y;
}

void draw_creature(const BudgetOf& of, std::size_t place) {
    const PlannedPart& part = of.plan.creatures[place];
    const ImVec2 at = ImGui::GetCursorPos();
    const float whole = ImGui::GetContentRegionAvail().x;
    const float height = std::max(row_height(), two_lines());
    ImGui::SetCursorPosY(at.y + (height - row_height()) / 2.0F);
    const auto count = stepper(
        "budget count " + std::to_string(place), part.count, 0, game::Limits::count_max, "How many"
    );
    const float left = stepper_width() + px(12.0F);
    ImGui::SetCursorPos({at.x + left, at.y + (height - two_lines()) / 2.0F});
    draw_part_words(part, std::max(whole - left, px(60.0F)));
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    if (!count.has_value()) return;
    const std::string what =
        *count == 0 ? "without " + part.name : std::to_string(*count) + " " + part.name;
    ask_prepared(
        of.context,
        of.prepared,
        of.prepared.name + ": " + what,
        {},
        [place, number = *count](PreparedEncounter& changed) {
            if (place >= changed.creatures.size()) return;
            if (number > 0)
                changed.creatures[place].count = number;
            else
                changed.creatures.erase(
                    changed.creatures.begin() + static_cast<std::ptrdiff_t>(place)
                );
        }
    );
}

void draw_add_creature(const BudgetOf& of) {
    const game::CreatureShelf& shelf = of.context.campaign.shelf;
    if (shelf.creatures.empty()) {
        text_wrapped(Ink::muted, "The Creature Shelf is empty: enter creatures there first.");
        return;
    }
    std::vector<std::string> keys;
    std::vector<std::string> names;
    for (const game::Creature& creature : shelf.creatures) {
        keys.push_back(std::to_string(creature.id));
        names.push_back(creature.name + "##" + keys.back());
    }
    const std::string added = pick_to_add("Add a creature", keys, names);
    for (const game::Creature& creature : shelf.creatures) {
        if (added.empty() || std::to_string(creature.id) != added) continue;
        ask_prepared(
            of.context,
            of.prepared,
            of.prepared.name + ": 1 more " + creature.name,
            {},
            [id = creature.id](PreparedEncounter& changed) { game::change_count(changed, id, 1); }
        );
    }
}

template <class Change>
void ask_hazard(const BudgetOf& of, std::size_t place, const std::string& typed_in, Change change) {
    ask_prepared(
        of.context,
        of.prepared,
        of.prepared.name + ": hazards",
        typed_in,
        [place, change](PreparedEncounter& changed) {
            if (place < changed.hazards.size()) change(changed.hazards[place]);
        }
    );
}

void draw_hazard_fields(const BudgetOf& of, std::size_t place, Flow& flow) {
    using L = game::Limits;
    const PreparedHazards& hazards = of.prepared.hazards[place];
    const std::string number = std::to_string(place);
    flow.field("level", stepper_width());
    const auto level =
        stepper("hazard level " + number, hazards.level, L::level_min, L::level_max, "A level");
    Flow::end_field();
    if (level.has_value())
        ask_hazard(of, place, {}, [value = *level](PreparedHazards& changed) {
            changed.level = value;
        });
    const std::string complex = "Complex##" + number;
    flow.next(button_width(complex.c_str()));
    if (toggle_button(complex.c_str(), hazards.is_complex, read_only_reason(of.context)))
        ask_hazard(of, place, {}, [is_on = !hazards.is_complex](PreparedHazards& changed) {
            changed.is_complex = is_on;
        });
    const std::string label = "##hazard name " + number;
    const float width = px(160.0F);
    flow.field("name", width);
    const auto name = checked_text(
        label, hazards.name, of.view.drafts, of.context.now_seconds, width, check_text
    );
    Flow::end_field();
    if (name.has_value())
        ask_hazard(of, place, label, [words = *name](PreparedHazards& changed) {
            changed.name = words;
        });
}

void draw_hazard(const BudgetOf& of, std::size_t place) {
    const PlannedPart& part = of.plan.hazards[place];
    draw_part_words(part, ImGui::GetContentRegionAvail().x);
    Flow flow;
    flow.next(stepper_width());
    ImGui::BeginGroup();
    const auto count = stepper(
        "hazard count " + std::to_string(place), part.count, 0, game::Limits::count_max, "How many"
    );
    ImGui::EndGroup();
    draw_hazard_fields(of, place, flow);
    if (!count.has_value()) return;
    if (*count > 0) {
        ask_hazard(of, place, {}, [number = *count](PreparedHazards& changed) {
            changed.count = number;
        });
        return;
    }
    ask_prepared(
        of.context,
        of.prepared,
        of.prepared.name + ": without " + part.name,
        {},
        [place](PreparedEncounter& changed) {
            if (place < changed.hazards.size())
                changed.hazards.erase(changed.hazards.begin() + static_cast<std::ptrdiff_t>(place));
        }
    );
}

} // namespace

void draw_budget_parts(const BudgetOf& of) {
    heading("Creatures");
    ImGui::BeginDisabled(of.context.is_read_only);
    for (std::size_t place = 0; place < of.plan.creatures.size(); ++place)
        draw_creature(of, place);
    draw_add_creature(of);
    // Hazards have XP in four-degree alone; those that a file brings are shown anyway.
    const bool has_hazard_xp = of.context.rulebook.family == rules::Family::four_degree;
    if (has_hazard_xp || !of.prepared.hazards.empty()) {
        heading("Hazards");
        for (std::size_t place = 0; place < of.plan.hazards.size(); ++place)
            draw_hazard(of, place);
        if (has_hazard_xp && button("Add a hazard"))
            ask_prepared(
                of.context,
                of.prepared,
                of.prepared.name + ": 1 more hazard",
                {},
                [level = of.plan.rating.party_level](PreparedEncounter& changed) {
                    PreparedHazards hazards;
                    hazards.level = level;
                    changed.hazards.push_back(hazards);
                }
            );
    }
    ImGui::EndDisabled();
}

} // namespace widgets
