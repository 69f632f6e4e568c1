// Treating wounds in the Recovery panel (four-degree).
#include "game/effects.h"
#include "game/recovery_words.h"
#include "game/sheet.h"
#include "widgets/form.h"
#include "widgets/recovery_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <stdexcept>

namespace widgets {

using game::Character;
using rules::TreatWoundsOutlook;

namespace {

constexpr int modifier_min = -9;
constexpr int modifier_max = 60;

// Who heals, and with which modifier.
struct Healing {
    std::vector<game::Healer> healers;
    const game::Healer* healer = nullptr;
    int modifier = 0;
};

Healing healing_of(const PanelContext& context, const RecoveryView& view) {
    Healing healing;
    healing.healers = game::healers(context.campaign, context.rulebook);
    for (const game::Healer& each : healing.healers)
        if (each.character == view.healer) healing.healer = &each;
    if (healing.healer == nullptr && !healing.healers.empty())
        healing.healer = &healing.healers.front();
    const int own = healing.healer == nullptr ? 0 : healing.healer->modifier;
    healing.modifier = view.modifier.value_or(own);
    return healing;
}

std::string healer_words(const game::Healer& healer) {
    return healer.name + ", Medicine " + game::signed_text(healer.modifier);
}

void draw_healer(const Healing& healing, RecoveryView& view, Flow& flow) {
    if (healing.healer == nullptr) return;
    const float width = std::min(px(250.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    if (!begin_choice("##healer", healer_words(*healing.healer), width)) return;
    for (const game::Healer& each : healing.healers) {
        if (!choice_row(healer_words(each), &each == healing.healer)) continue;
        view.healer = each.character;
        view.modifier.reset();
    }
    ImGui::EndCombo();
}

void draw_skill(const PanelContext& context, RecoveryView& view, const Healing& healing) {
    Flow flow;
    draw_healer(healing, view, flow);
    const float width = width_of_letters(5);
    flow.field("modifier", width);
    const auto typed = number_field(
        "##modifier", healing.modifier, modifier_min, modifier_max, width, "A modifier"
    );
    Flow::end_field();
    if (typed.has_value()) view.modifier = *typed;
    const auto& ranks = context.rulebook.recovery.treat_wounds.ranks;
    const auto own = std::find_if(ranks.begin(), ranks.end(), [&view](const auto& rank) {
        return rank.key == view.proficiency;
    });
    const float choice = px(140.0F);
    flow.field("proficiency", choice);
    if (begin_choice("##proficiency", own == ranks.end() ? "" : own->name, choice)) {
        for (const rules::TreatWoundsRank& rank : ranks) {
            if (!choice_row(rank.name, rank.key == view.proficiency)) continue;
            view.proficiency = rank.key;
            view.rank.clear();
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
    const std::string hour =
        std::to_string(context.rulebook.recovery.treat_wounds.full_minutes) + " min each";
    flow.next(button_width(hour.c_str()));
    if (toggle_button(hour.c_str(), view.takes_full_hour))
        view.takes_full_hour = !view.takes_full_hour;
}

// The DCs that may be chosen; the one in force is returned.
const TreatWoundsOutlook&
draw_choices(RecoveryView& view, const std::vector<TreatWoundsOutlook>& choices) {
    const std::size_t best = rules::best_choice(choices);
    const TreatWoundsOutlook* now = &choices[best];
    for (const TreatWoundsOutlook& each : choices)
        if (each.rank == view.rank) now = &each;
    for (std::size_t at = 0; at < choices.size(); ++at) {
        const TreatWoundsOutlook& each = choices[at];
        const std::string dc = each.name + ", DC " + std::to_string(each.dc);
        const ImVec2 place = ImGui::GetCursorPos();
        const float width = ImGui::GetContentRegionAvail().x;
        if (row_ground(dc + "##dc", width, row_height(), &each == now)) view.rank = each.rank;
        const float inset = px(10.0F);
        const float middle = (row_height() - ImGui::GetTextLineHeight()) / 2.0F;
        ImGui::SetCursorPos({place.x + inset, place.y + middle});
        const std::string words = dc + ": " + game::outlook_text(each) +
                                  (choices.size() > 1 && at == best ? ", best" : "");
        text_fitted(Ink::text, words, width - 2.0F * inset);
        ImGui::SetCursorPos({place.x, place.y + row_height() + px(2.0F)});
        ImGui::Dummy({0.0F, 0.0F});
    }
    push_font(TextSize::small);
    text_wrapped(Ink::muted, game::degrees_text(now->odds));
    ImGui::PopFont();
    return *now;
}

bool is_hurt(const PanelContext& context, const Character& character) {
    const game::Combatant* combatant = combatant_of(context, character);
    return combatant != nullptr && !combatant->is_dead &&
           combatant->hp < game::effective_hp_max(context.rulebook, *combatant);
}

std::string why_no_patient(const PanelContext& context, const Character& character) {
    const game::Combatant* combatant = combatant_of(context, character);
    if (combatant == nullptr || combatant->is_dead) return "Dead.";
    if (game::is_treated(context.campaign, character.id))
        return "Was treated less than an hour ago.";
    return {};
}

bool is_usual_patient(const PanelContext& context, const Character& character) {
    return character.is_present && is_hurt(context, character);
}

std::optional<int> typed_roll(const std::map<base::Id, int>& rolls, base::Id character) {
    const auto found = rolls.find(character);
    if (found == rolls.end()) return std::nullopt;
    return found->second;
}

// What the dice of the last degree may show at the most: the field takes no more.
int highest_healing(const PanelContext& context, const std::string& rank) {
    return game::treatment_range(context.rulebook, rank, rules::Degree::critical_success).highest;
}

void draw_rolls(RecoveryView& view, const Character& character, int highest) {
    constexpr int faces = 20;
    const std::string id = std::to_string(character.id);
    const float width = width_of_letters(4);
    const float names = ImGui::CalcTextSize("d20HP dice").x;
    same_line_if_fits(2.0F * width + names + 4.0F * ImGui::GetStyle().ItemSpacing.x);
    ImGui::BeginGroup();
    Flow flow;
    flow.field("d20", width);
    const auto natural = roll_field(
        ("##natural " + id).c_str(),
        typed_roll(view.natural, character.id),
        view.natural_drafts,
        character.id,
        1,
        faces,
        width,
        "A d20"
    );
    Flow::end_field();
    if (natural.has_value()) view.natural[character.id] = *natural;
    flow.field("HP dice", width);
    const auto rolled = roll_field(
        ("##healing " + id).c_str(),
        typed_roll(view.rolled, character.id),
        view.rolled_drafts,
        character.id,
        1,
        highest,
        width,
        "The dice"
    );
    Flow::end_field();
    if (rolled.has_value()) view.rolled[character.id] = *rolled;
    ImGui::EndGroup();
    for (RollDrafts* drafts : {&view.natural_drafts, &view.rolled_drafts})
        if (!drafts->of[character.id].complaint.empty())
            complaint(drafts->of[character.id].complaint);
}

std::vector<game::PatientRolls>
chosen_patients(const PanelContext& context, const RecoveryView& view) {
    std::vector<game::PatientRolls> patients;
    for (const Character& character : context.campaign.party.characters) {
        const bool is_usual = is_usual_patient(context, character);
        const bool can_be = why_no_patient(context, character).empty();
        if (can_be && is_chosen(view, character.id, is_usual))
            patients.push_back(
                {character.id,
                 typed_roll(view.natural, character.id),
                 typed_roll(view.rolled, character.id)}
            );
    }
    return patients;
}

void draw_patients(const PanelContext& context, RecoveryView& view, const std::string& rank) {
    for (const Character& character : context.campaign.party.characters) {
        const bool is_usual = is_usual_patient(context, character);
        const std::string why_not = why_no_patient(context, character);
        draw_member(context, view, character, is_usual, why_not);
        if (why_not.empty() && is_chosen(view, character.id, is_usual))
            draw_rolls(view, character, highest_healing(context, rank));
    }
}

void ask_treatment(const PanelContext& context, const game::WoundTreatment& treatment) {
    context.edits.add(
        {game::Section::encounter, game::Section::clock},
        "Treat wounds",
        [treatment, rulebook = &context.rulebook, dice = &context.dice](game::Campaign& campaign) {
            const auto said = game::treat_wounds(campaign, *rulebook, treatment, *dice);
            if (!said.ok()) throw std::runtime_error(said.error().message);
            return said.value();
        }
    );
}

} // namespace

void draw_treat_wounds(const PanelContext& context, RecoveryView& view) {
    const Healing healing = healing_of(context, view);
    draw_skill(context, view, healing);
    const auto choices = rules::treat_wounds_choices(
        context.rulebook, view.proficiency, healing.modifier, view.takes_full_hour
    );
    if (!choices.ok()) {
        text_wrapped(Ink::harm, choices.error().message);
        return;
    }
    const TreatWoundsOutlook& now = draw_choices(view, choices.value());

    game::WoundTreatment treatment;
    treatment.rank = now.rank;
    treatment.modifier = healing.modifier;
    treatment.takes_full_hour = view.takes_full_hour;
    treatment.patients = chosen_patients(context, view);
    const std::size_t patients = treatment.patients.size();
    const std::string treat = "Treat " + std::to_string(patients) +
                              (patients == 1 ? " patient" : " patients") + "###treat";
    const bool is_pressed = primary_button(treat.c_str(), why_no_recovery(context, patients > 0));
    const char* hint = "Blank fields are rolled by the program.";
    same_line_if_fits(ImGui::CalcTextSize(hint).x);
    ImGui::AlignTextToFramePadding();
    text_wrapped(Ink::muted, hint);
    if (!view.refusal.empty()) complaint(view.refusal);
    draw_patients(context, view, now.rank);
    if (!is_pressed) return;
    // Tried on a copy first: what was typed stays when the dice cannot show it.
    game::Campaign copy = context.campaign;
    rules::Dice dice = context.dice;
    const auto tried = game::treat_wounds(copy, context.rulebook, treatment, dice);
    view.refusal = tried.ok() ? std::string() : tried.error().message;
    if (!tried.ok()) return;
    ask_treatment(context, treatment);
    forget_rolls(view);
}

} // namespace widgets
