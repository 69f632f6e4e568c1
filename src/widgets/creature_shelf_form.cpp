// The form of one creature, and the popup that drops it into the fight.
#include "game/creature_step.h"
#include "game/reinforcements.h"
#include "game/roster.h"
#include "game/shelf.h"
#include "widgets/creature_shelf_parts.h"
#include "widgets/placing_form.h"
#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/roll_field.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <optional>
#include <utility>

namespace widgets {

using base::Id;
using game::Creature;

namespace {

constexpr int lowest_initiative = -20; // as game::set_initiative takes it
constexpr int highest_initiative = 99;

template <class Change>
void ask_creature(
    const PanelContext& context,
    Id creature,
    std::string label,
    const std::string& typed_in,
    Change change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "shelf/" + std::to_string(creature) + typed_in;
    context.edits.add(
        &game::Campaign::shelf,
        std::move(label),
        [creature, change](game::CreatureShelf& shelf) {
            const Creature* known = game::find_creature(std::as_const(shelf), creature);
            if (known == nullptr) return;
            Creature changed = *known;
            change(changed);
            game::update_creature(shelf, changed);
        },
        merge_key
    );
}

void draw_creature_verbs(
    const PanelContext& context, CreatureShelfView& view, const Creature& creature, Flow& flow
) {
    const char* refusal = read_only_reason(context);
    flow.next(button_width("Drop in"));
    if (primary_button("Drop in##form", refusal)) open_drop_in(view.drop_in, creature.id);
    flow.next(button_width("Copy"));
    if (button("Copy", refusal)) ask_copy(context, view, creature);
    for (const rules::BuildStep step : {rules::BuildStep::weak, rules::BuildStep::elite}) {
        const auto stepped = game::stepped_statistics(context.rulebook, creature.statistics, step);
        if (!stepped.has_value()) continue;
        const char* caption = step == rules::BuildStep::weak ? "Weak copy" : "Elite copy";
        flow.next(button_width(caption));
        if (button(caption, refusal))
            ask_keeping(context, game::stepped_name(creature.name, step), *stepped);
    }
    const char* remove = "Take off the shelf";
    flow.next(button_width(remove));
    if (button(remove, refusal))
        context.edits.add(
            {game::Section::shelf, game::Section::preparation},
            "Take " + creature.name + " off the shelf",
            [id = creature.id](game::Campaign& campaign) {
                game::take_off_shelf(campaign, id);
                return std::string();
            }
        );
}

void draw_creature_head(
    const PanelContext& context, CreatureShelfView& view, const Creature& creature
) {
    push_font(TextSize::name);
    text_fitted(Ink::text, creature.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    Flow flow;
    const float width = px(230.0F);
    flow.field("Name", width);
    if (view.wants_name == creature.id) {
        give_keyboard_to_next_field();
        view.wants_name = base::no_id;
    }
    const auto typed = checked_text(
        "##name", creature.name, view.editor.drafts, context.now_seconds, width, check_name
    );
    Flow::end_field();
    draw_creature_verbs(context, view, creature, flow);
    draw_complaints(view.editor.drafts, "##name");
    if (typed.has_value())
        ask_creature(
            context,
            creature.id,
            creature.name + " is now called " + *typed,
            "##name",
            [words = *typed](Creature& changed) { changed.name = words; }
        );
}

// The typed initiative: none if the field is empty. False if it cannot be read.
bool read_initiative(DropInView& view, std::optional<int>& total) {
    view.complaint.clear();
    total = whole_number(view.initiative);
    const bool is_right =
        view.initiative.empty() ||
        (total.has_value() && *total >= lowest_initiative && *total <= highest_initiative);
    if (!is_right) view.complaint = "Initiative is -20 to 99, or empty to roll it.";
    return is_right;
}

void ask_drop_in(const PanelContext& context, const DropInView& view, std::optional<int> total) {
    const Creature* creature = game::find_creature(context.campaign.shelf, view.creature);
    if (creature == nullptr) return;
    context.edits.add(
        {game::Section::encounter},
        "Drop in " + std::to_string(view.count) + " " + creature->name,
        [id = view.creature,
         count = view.count,
         shares = view.shares_initiative,
         total,
         rulebook = &context.rulebook,
         dice = &context.dice](game::Campaign& campaign) {
            game::drop_in(campaign, *rulebook, id, count, shares, total, *dice);
            return std::string();
        }
    );
}

std::string fight_words(const game::Encounter& encounter) {
    const std::string name = encounter.name.empty() ? "the fight" : encounter.name;
    switch (encounter.phase) {
    case game::Phase::no_fight:
        return "No fight is on: one with the party opens, initiative is asked for there.";
    case game::Phase::gathering: return "It joins " + name + ", which is about to begin.";
    case game::Phase::running:
        return "It joins " + name + " in round " + std::to_string(encounter.round) + ".";
    }
    return {};
}

void draw_drop_in_body(const PanelContext& context, DropInView& view, const Creature& creature) {
    push_font(TextSize::name);
    text(Ink::text, creature.name);
    ImGui::PopFont();
    ImGui::PushTextWrapPos(px(340.0F));
    text(Ink::muted, fight_words(context.campaign.encounter));
    ImGui::PopTextWrapPos();
    Flow count;
    count.field("How many", stepper_width());
    const auto typed = stepper("count", view.count, 1, game::Limits::count_max, "How many");
    if (typed.has_value()) view.count = *typed;
    Flow::end_field();
    if (toggle_button("One initiative for all", view.shares_initiative))
        view.shares_initiative = !view.shares_initiative;
    Flow initiative;
    initiative.field("Initiative", width_of_letters(5));
    ImGui::SetNextItemWidth(width_of_letters(5));
    ImGui::InputTextWithHint("##initiative", "roll", &view.initiative);
    ImGui::SameLine();
    text(Ink::muted, "typed, or empty to roll it");
    Flow::end_field();
    if (!view.complaint.empty()) complaint(view.complaint);
    std::optional<int> total;
    if (primary_button("Drop in##now", read_only_reason(context)) && read_initiative(view, total)) {
        ask_drop_in(context, view, total);
        ImGui::CloseCurrentPopup();
    }
}

} // namespace

void open_drop_in(DropInView& view, Id creature) {
    view.is_wanted = true;
    view.creature = creature;
    view.initiative.clear();
    view.complaint.clear();
}

void draw_drop_in(const PanelContext& context, DropInView& view) {
    const char* popup = "drop in";
    if (std::exchange(view.is_wanted, false)) ImGui::OpenPopup(popup);
    if (!begin_popup(popup)) return;
    const Creature* creature = game::find_creature(context.campaign.shelf, view.creature);
    if (creature == nullptr)
        ImGui::CloseCurrentPopup();
    else
        draw_drop_in_body(context, view, *creature);
    ImGui::EndPopup();
}

void draw_creature_form(
    const PanelContext& context, CreatureShelfView& view, const Creature& creature
) {
    ImGui::PushID(static_cast<int>(creature.id));
    ImGui::BeginDisabled(context.is_read_only);
    draw_creature_head(context, view, creature);
    draw_statistics_editor(
        {context,
         view.editor,
         creature.statistics,
         creature.name,
         true,
         [&](std::string label, const std::string& typed_in, StatisticsForm::Change change) {
             ask_creature(
                 context,
                 creature.id,
                 std::move(label),
                 typed_in,
                 [change = std::move(change)](Creature& changed) { change(changed.statistics); }
             );
         }}
    );
    heading("Notes");
    const auto notes =
        long_text("##notes", creature.notes, view.editor.drafts, context.now_seconds, px(110.0F));
    draw_complaints(view.editor.drafts, "##notes");
    if (notes.has_value())
        ask_creature(
            context,
            creature.id,
            "Notes on " + creature.name,
            "##notes",
            [words = *notes](Creature& changed) { changed.notes = words; }
        );
    ImGui::EndDisabled();
    ImGui::PopID();
}

} // namespace widgets
