// What a character gains over the evenings: experience, and the hit dice of srd5.
#include "game/experience.h"
#include "game/resting.h"
#include "game/roster.h"
#include "widgets/party_roster_form.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cstddef>

namespace widgets {

using game::Character;
using game::HitDice;

namespace {

void draw_experience(const PanelContext& context, const Character& character) {
    heading("Experience");
    const float width = width_of_letters(9);
    Flow flow;
    flow.field("XP", width);
    const auto typed = number_field(
        "##experience", character.experience, 0, game::Limits::experience_max, width, "XP"
    );
    Flow::end_field();
    if (typed.has_value())
        ask_character(
            context,
            character.id,
            character.name + " has " + std::to_string(*typed) + " XP",
            {},
            [xp = *typed](Character& changed) { changed.experience = xp; }
        );
    const std::string words = game::experience_text(
        context.rulebook, character, game::pace_of(context.campaign.about, context.rulebook)
    );
    flow.next(ImGui::CalcTextSize(words.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, words);
}

template <class Change>
void ask_dice(
    const PanelContext& context, const Character& character, std::size_t place, Change change
) {
    ask_character(
        context,
        character.id,
        "Hit dice of " + character.name,
        {},
        [place, change](Character& changed) {
            if (place < changed.hit_dice.size()) change(changed.hit_dice[place]);
        }
    );
}

// Sizes are those of the classes of SRD 5.1; no size stands twice.
constexpr std::array<int, 4> sizes{6, 8, 10, 12};

bool has_size(const Character& character, int sides) {
    return std::any_of(
        character.hit_dice.begin(),
        character.hit_dice.end(),
        [sides](const HitDice& dice) { return dice.sides == sides; }
    );
}

void draw_size(const PanelContext& context, const Character& character, std::size_t place) {
    const HitDice& dice = character.hit_dice[place];
    const std::string label = "##hit die " + std::to_string(place);
    const std::string now = "d" + std::to_string(dice.sides);
    if (!begin_choice(label.c_str(), now, px(90.0F))) return;
    for (const int sides : sizes) {
        const bool is_now = sides == dice.sides;
        if (!is_now && has_size(character, sides)) continue;
        if (choice_row("d" + std::to_string(sides), is_now))
            ask_dice(context, character, place, [sides](HitDice& changed) {
                changed.sides = sides;
            });
    }
    ImGui::EndCombo();
}

void draw_dice(const PanelContext& context, const Character& character, std::size_t place) {
    const HitDice& dice = character.hit_dice[place];
    const std::string number = std::to_string(place);
    Flow flow;
    flow.next(px(90.0F));
    ImGui::BeginGroup();
    draw_size(context, character, place);
    ImGui::EndGroup();
    flow.field("in all", stepper_width());
    const auto total =
        stepper("hit dice " + number, dice.total, 1, game::Limits::hit_dice_max, "Hit dice");
    Flow::end_field();
    if (total.has_value())
        ask_dice(context, character, place, [count = *total](HitDice& changed) {
            changed.total = count;
            changed.spent = std::min(changed.spent, count);
        });
    flow.field("spent", stepper_width());
    const auto spent = stepper("hit dice spent " + number, dice.spent, 0, dice.total, "Spent ones");
    Flow::end_field();
    if (spent.has_value())
        ask_dice(context, character, place, [count = *spent](HitDice& changed) {
            changed.spent = std::min(count, changed.total);
        });
    const std::string remove = "Remove##hit dice " + number;
    flow.next(button_width(remove.c_str()));
    if (small_button(remove.c_str()))
        ask_character(
            context,
            character.id,
            "Remove hit dice of " + character.name,
            {},
            [place](Character& changed) {
                if (place < changed.hit_dice.size())
                    changed.hit_dice.erase(
                        changed.hit_dice.begin() + static_cast<std::ptrdiff_t>(place)
                    );
            }
        );
}

void draw_hit_dice(const PanelContext& context, const Character& character) {
    heading("Hit dice");
    for (std::size_t place = 0; place < character.hit_dice.size(); ++place)
        draw_dice(context, character, place);
    const auto free = std::find_if(sizes.begin(), sizes.end(), [&character](int sides) {
        return !has_size(character, sides);
    });
    if (free == sizes.end() || !button("Add hit dice")) return;
    constexpr int usual_sides = 8;
    const HitDice dice =
        game::usual_hit_dice(character, has_size(character, usual_sides) ? *free : usual_sides);
    ask_character(
        context,
        character.id,
        "Add hit dice to " + character.name,
        {},
        [dice](Character& changed) { changed.hit_dice.push_back(dice); }
    );
}

} // namespace

void draw_growth_form(const PanelContext& context, const Character& character) {
    draw_experience(context, character);
    if (context.rulebook.family == rules::Family::srd5) draw_hit_dice(context, character);
}

} // namespace widgets
