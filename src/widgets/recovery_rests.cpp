// Nights, short and long rests in the Recovery panel.
#include "game/recovery_words.h"
#include "widgets/form.h"
#include "widgets/recovery_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace widgets {

using game::Character;
using game::HitDiceSpent;

namespace {

constexpr std::array<game::Section, 3> changed_by_rest{
    game::Section::party, game::Section::encounter, game::Section::clock};

void ask_night(
    const PanelContext& context, const std::vector<base::Id>& characters, rules::NightRest kind
) {
    context.edits.add(
        {changed_by_rest.begin(), changed_by_rest.end()},
        "Rest",
        [characters, kind, rulebook = &context.rulebook](game::Campaign& campaign) {
            const auto said = game::rest_night(campaign, *rulebook, characters, kind);
            if (!said.ok()) throw std::runtime_error(said.error().message);
            return said.value();
        }
    );
}

void draw_night_kinds(RecoveryView& view) {
    struct Kind {
        rules::NightRest kind;
        const char* name;
    };

    static constexpr std::array<Kind, 3> kinds{
        Kind{rules::NightRest::usual, "A night"},
        Kind{rules::NightRest::rough, "Without comfort"},
        Kind{rules::NightRest::full_day, "A day and a night"}};
    Flow flow;
    for (const Kind& each : kinds) {
        flow.next(button_width(each.name));
        if (toggle_button(each.name, view.night == each.kind)) view.night = each.kind;
    }
}

void draw_rest_words(const game::RestOutlook& outlook) {
    const std::string words = game::rest_text(outlook);
    same_line_if_fits(ImGui::CalcTextSize(words.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text_wrapped(outlook.why_not.empty() ? Ink::text : Ink::harm, words);
}

void ask_short_rest(const PanelContext& context, const std::vector<HitDiceSpent>& spent) {
    context.edits.add(
        {changed_by_rest.begin(), changed_by_rest.end()},
        "Short rest",
        [spent, rulebook = &context.rulebook, dice = &context.dice](game::Campaign& campaign) {
            const auto said = game::rest_short(campaign, *rulebook, spent, *dice);
            if (!said.ok()) throw std::runtime_error(said.error().message);
            return said.value();
        }
    );
}

// A key for the drafts of one size of one character.
base::Id draft_key(std::size_t character, std::size_t place) {
    constexpr std::size_t sizes_max = 100;
    return static_cast<base::Id>(character * sizes_max + place + 1);
}

std::string why_no_dice(const PanelContext& context, const Character& character) {
    const game::Combatant* combatant = combatant_of(context, character);
    if (combatant == nullptr || combatant->is_dead) return "Dead.";
    return combatant->hp < 1 ? "At 0 HP: cannot spend hit dice." : "";
}

bool spends(const PanelContext& context, const RecoveryView& view, const Character& character) {
    return why_no_dice(context, character).empty() &&
           is_chosen(view, character.id, character.is_present);
}

// What the view says of one size, never more than is left.
HitDiceSpent
spent_of(const RecoveryView& view, const Character& character, const game::HitDice& dice) {
    const std::pair<base::Id, int> of{character.id, dice.sides};
    HitDiceSpent spent{character.id, dice.sides, 0, {}};
    const auto count = view.spent.find(of);
    if (count != view.spent.end())
        spent.count = std::min(count->second, game::hit_dice_left(character, dice.sides));
    const auto rolled = view.dice.find(of);
    if (rolled != view.dice.end() && spent.count > 0) spent.rolled = rolled->second;
    return spent;
}

// Of everybody, what is not nothing.
std::vector<HitDiceSpent> spent_by_all(const PanelContext& context, const RecoveryView& view) {
    std::vector<HitDiceSpent> all;
    for (const Character& character : context.campaign.party.characters) {
        if (!spends(context, view, character)) continue;
        for (const game::HitDice& dice : character.hit_dice) {
            const HitDiceSpent spent = spent_of(view, character, dice);
            if (spent.count > 0) all.push_back(spent);
        }
    }
    return all;
}

// One size: how many to spend, what to expect, and the dice as they fell.
void draw_hit_dice(
    const PanelContext& context,
    RecoveryView& view,
    const Character& character,
    const game::HitDice& dice,
    base::Id key
) {
    const std::pair<base::Id, int> of{character.id, dice.sides};
    const int left = game::hit_dice_left(character, dice.sides);
    const std::string id = std::to_string(character.id) + " d" + std::to_string(dice.sides);
    const HitDiceSpent spent = spent_of(view, character, dice);
    const std::string name =
        std::to_string(left) + "d" + std::to_string(dice.sides) + " left, spend";
    const float inner = ImGui::GetStyle().ItemInnerSpacing.x;
    same_line_if_fits(ImGui::CalcTextSize(name.c_str()).x + inner + stepper_width());
    Flow flow;
    flow.field(name, stepper_width());
    const auto count = stepper("spend " + id, spent.count, 0, left, "Hit dice");
    Flow::end_field();
    if (count.has_value()) {
        view.spent[of] = *count;
        view.dice.erase(of); // rolled with another number of dice
    }
    if (spent.count == 0) return;
    const float width = width_of_letters(4);
    flow.field("rolled", width);
    const auto rolled = roll_field(
        ("##dice " + id).c_str(),
        spent.rolled,
        view.rolled_drafts,
        key,
        spent.count,
        spent.count * dice.sides,
        width,
        "The dice"
    );
    Flow::end_field();
    if (rolled.has_value()) view.dice[of] = *rolled;
    const std::string words =
        game::hp_text(game::hit_dice_outlook(context.campaign, context.rulebook, spent));
    flow.next(ImGui::CalcTextSize(words.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, words);
    const std::string& refused = view.rolled_drafts.of[key].complaint;
    if (!refused.empty()) complaint(refused);
}

} // namespace

void draw_night(const PanelContext& context, RecoveryView& view) {
    const bool is_srd5 = context.rulebook.family == rules::Family::srd5;
    if (!is_srd5) draw_night_kinds(view);
    std::vector<base::Id> resting;
    for (const Character& character : context.campaign.party.characters)
        if (is_chosen(view, character.id, character.is_present)) resting.push_back(character.id);
    const std::string rest =
        (is_srd5 ? "Long rest for " : "Rest for ") + std::to_string(resting.size()) + "###rest";
    const bool is_pressed =
        primary_button(rest.c_str(), why_no_recovery(context, !resting.empty()));
    for (const Character& character : context.campaign.party.characters) {
        draw_member(context, view, character, character.is_present, {});
        if (!is_chosen(view, character.id, character.is_present)) continue;
        const auto outlooks =
            game::night_outlooks(context.campaign, context.rulebook, {character.id}, view.night);
        for (const game::RestOutlook& outlook : outlooks)
            draw_rest_words(outlook);
    }
    if (!is_pressed) return;
    ask_night(context, resting, view.night);
    forget_rolls(view);
}

void draw_short_rest(const PanelContext& context, RecoveryView& view) {
    const std::vector<HitDiceSpent> all = spent_by_all(context, view);
    std::string why_not = why_no_recovery(context, true);
    if (why_not.empty() && all.empty()) why_not = "Nobody spends a hit die.";
    const bool is_pressed = primary_button("Short rest now", why_not);
    const char* hint = "Blank fields are rolled by the program.";
    same_line_if_fits(ImGui::CalcTextSize(hint).x);
    ImGui::AlignTextToFramePadding();
    text_wrapped(Ink::muted, hint);
    const auto& characters = context.campaign.party.characters;
    for (std::size_t at = 0; at < characters.size(); ++at) {
        const Character& character = characters[at];
        const std::string why_no_member = why_no_dice(context, character);
        draw_member(context, view, character, character.is_present, why_no_member);
        if (!spends(context, view, character)) continue;
        if (character.hit_dice.empty())
            text_wrapped(Ink::muted, "No hit dice are entered: the Party panel keeps them.");
        for (std::size_t place = 0; place < character.hit_dice.size(); ++place)
            draw_hit_dice(
                context, view, character, character.hit_dice[place], draft_key(at, place)
            );
    }
    if (!is_pressed) return;
    ask_short_rest(context, all);
    forget_rolls(view);
}

} // namespace widgets
