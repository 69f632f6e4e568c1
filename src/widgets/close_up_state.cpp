// What runs on the combatant shown, what it keeps count of, and what is written about it.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/ending_text.h"
#include "game/roster.h"
#include "game/turns.h"
#include "game/upkeep.h"
#include "widgets/close_up_parts.h"
#include "widgets/read_only.h"
#include "widgets/reminder_tick.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <utility>

namespace widgets {

using game::Combatant;
using game::Encounter;

namespace {

std::string rule_summary(const PanelContext& context, const std::string& key) {
    const rules::ConditionRule* rule = rules::find_condition(context.rulebook, key);
    return rule == nullptr ? std::string() : rule->summary;
}

void draw_condition(
    const PanelContext& context,
    CloseUpView& view,
    const Combatant& combatant,
    const game::ActiveCondition& active
) {
    ImGui::PushID(static_cast<int>(active.id));
    const std::string label = game::condition_text(context.rulebook, active) + "###condition";
    Flow flow;
    flow.next(button_width(label.c_str()));
    if (chip(label.c_str(), active.is_paused ? Ink::muted : Ink::accent, "Press to change it"))
        open_condition_menu(view.menu, combatant.id, active.id);
    const std::string how_long =
        game::ending_text(context.campaign.encounter, context.rulebook, active);
    flow.next(ImGui::CalcTextSize(how_long.c_str()).x);
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, how_long);
    std::string words = rule_summary(context, active.key);
    for (const game::Modifier& modifier : active.modifiers)
        words += (words.empty() ? "" : ", ") + game::signed_text(modifier.amount) + " to " +
                 applies_to_words(context.rulebook, modifier.applies_to);
    if (!active.note.empty()) words += (words.empty() ? "" : " ") + active.note;
    push_font(TextSize::small);
    if (!words.empty()) text_wrapped(Ink::text, words);
    ImGui::PopFont();
    ImGui::PopID();
}

void draw_implied(const PanelContext& context, const Combatant& combatant) {
    for (const game::HoldingCondition& holding :
         game::holding_conditions(context.rulebook, combatant)) {
        if (holding.because.empty()) continue;
        push_font(TextSize::small);
        text_wrapped(
            Ink::muted,
            "also " + holding.rule->name + ", by " + holding.because + ": " + holding.rule->summary
        );
        ImGui::PopFont();
    }
}

void draw_death_saves(const PanelContext& context, const Combatant& combatant) {
    const rules::DeathSaveRules& rule = context.rulebook.death_saves;
    const game::DeathSaves& saves = combatant.death_saves;
    const auto draw_pips = [&](const char* caption, int now, int most, bool is_success) {
        Flow flow;
        flow.field(caption, row_height() * static_cast<float>(most));
        for (int number = 1; number <= most; ++number) {
            if (number > 1) ImGui::SameLine();
            const std::string label = std::to_string(number) + "##" + caption;
            if (!toggle_button(label.c_str(), number <= now, read_only_reason(context))) continue;
            const int changed = number <= now ? number - 1 : number;
            const int successes = is_success ? changed : saves.successes;
            const int failures = is_success ? saves.failures : changed;
            context.edits.add(
                &game::Campaign::encounter,
                "Death saves of " + combatant.name + ": " + std::to_string(successes) + " made, " +
                    std::to_string(failures) + " failed",
                [successes, failures, id = combatant.id, rulebook = &context.rulebook](
                    Encounter& encounter
                ) { game::set_death_saves(encounter, *rulebook, id, successes, failures); }
            );
        }
        Flow::end_field();
    };
    heading("Death saves");
    if (saves.is_stable) text(Ink::good, "stable");
    draw_pips("made", saves.successes, rule.successes_to_stable, true);
    draw_pips("failed", saves.failures, rule.failures_to_death, false);
}

void draw_concentration(
    const PanelContext& context, CloseUpView& view, const Combatant& combatant
) {
    heading("Concentrates on");
    const auto ask = [&](const std::string& on_what) {
        context.edits.add(
            &game::Campaign::encounter,
            on_what.empty() ? combatant.name + " no longer concentrates"
                            : combatant.name + " concentrates on " + on_what,
            [id = combatant.id, on_what](Encounter& encounter) {
                game::set_concentration(encounter, id, on_what);
            },
            on_what.empty() ? std::string() : "concentration/" + std::to_string(combatant.id)
        );
    };
    ImGui::BeginDisabled(context.is_read_only);
    Flow flow;
    const float width = std::min(px(240.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    const auto typed = checked_text(
        "##concentration",
        combatant.concentrating_on,
        view.drafts,
        context.now_seconds,
        width,
        check_text
    );
    if (typed.has_value()) ask(*typed);
    const char* ends = "Ends##concentration";
    if (!combatant.concentrating_on.empty()) {
        flow.next(button_width(ends));
        if (button(ends)) ask({});
    }
    ImGui::EndDisabled();
}

} // namespace

void draw_close_up_conditions(
    const PanelContext& context, CloseUpView& view, const Combatant& combatant
) {
    heading("Conditions");
    for (const game::ActiveCondition& active : combatant.conditions)
        draw_condition(context, view, combatant, active);
    draw_implied(context, combatant);
    if (button("Add a condition", read_only_reason(context)))
        open_condition_picker(view.picker, {combatant.id});
}

void draw_close_up_upkeep(
    const PanelContext& context, CloseUpView& view, const Combatant& combatant
) {
    if (context.rulebook.family != rules::Family::srd5) return;
    if (combatant.hp == 0 && !combatant.dies_at_zero && !combatant.is_dead)
        draw_death_saves(context, combatant);
    draw_concentration(context, view, combatant);
}

void draw_close_up_reminders(const PanelContext& context, const Combatant& combatant) {
    if (combatant.reminders.empty()) return;
    heading("Reminders");
    for (const game::Reminder& reminder : combatant.reminders)
        draw_reminder_row(context, combatant, reminder);
}

// "fire 5, cold 5", "fire" where the rulebook halves.
static std::string trait_words(const std::vector<game::DamageTrait>& traits) {
    std::string words;
    for (const game::DamageTrait& trait : traits) {
        words += (words.empty() ? "" : ", ") +
                 (trait.type == "all" ? std::string("all damage") : plain_word(trait.type));
        if (trait.amount > 0) words += " " + std::to_string(trait.amount);
    }
    return words;
}

void draw_close_up_traits(const PanelContext& context, const Combatant& combatant) {
    const game::Statistics& statistics = combatant.statistics;
    std::string immunities;
    for (const std::string& key : statistics.immunities) {
        const rules::ConditionRule* rule = rules::find_condition(context.rulebook, key);
        immunities +=
            (immunities.empty() ? "" : ", ") + (rule == nullptr ? plain_word(key) : rule->name);
    }
    const auto line = [](const char* title, const std::string& words) {
        if (words.empty()) return;
        heading(title);
        text_wrapped(Ink::text, words);
    };
    const bool is_halving = context.rulebook.damage.halves_and_doubles;
    line("Senses", statistics.senses);
    line("Resists", trait_words(statistics.resistances));
    line(is_halving ? "Vulnerable to" : "Weak to", trait_words(statistics.weaknesses));
    line("Immune to", immunities);
}

void draw_close_up_notes(
    const PanelContext& context, CloseUpView& view, const Combatant& combatant
) {
    ImGui::BeginDisabled(context.is_read_only);
    heading("Note for this fight");
    const auto note =
        long_text("##fight note", combatant.note, view.drafts, context.now_seconds, px(60.0F));
    if (note.has_value())
        context.edits.add(
            &game::Campaign::encounter,
            "Note on " + combatant.name,
            [id = combatant.id, words = *note](Encounter& encounter) {
                game::set_note(encounter, id, words);
            },
            "note/" + std::to_string(combatant.id)
        );
    const game::Character* character =
        game::find_character(context.campaign.party, combatant.character);
    if (character != nullptr) {
        heading("Notes of the character");
        const auto notes =
            long_text("##notes", character->notes, view.drafts, context.now_seconds, px(90.0F));
        if (notes.has_value())
            context.edits.add(
                {game::Section::party, game::Section::encounter},
                "Notes on " + character->name,
                [id = character->id, words = *notes](game::Campaign& campaign) {
                    const game::Character* known =
                        game::find_character(std::as_const(campaign.party), id);
                    if (known == nullptr) return std::string();
                    game::Character changed = *known;
                    changed.notes = words;
                    game::update_character(campaign, changed);
                    return std::string();
                },
                "party/" + std::to_string(character->id) + "##notes"
            );
    } else if (const game::Creature* creature =
                   game::find_creature(context.campaign.shelf, combatant.creature);
               creature != nullptr && !creature->notes.empty()) {
        heading("Notes of the creature");
        text_wrapped(Ink::text, creature->notes);
    }
    draw_complaints(view.drafts, "##");
    ImGui::EndDisabled();
}

} // namespace widgets
