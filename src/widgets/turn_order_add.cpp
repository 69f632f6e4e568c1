#include "widgets/turn_order_add.h"

#include "game/fights.h"
#include "game/roster.h"
#include "game/turns.h"
#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <array>
#include <optional>
#include <utility>

namespace widgets {

using base::Id;

static constexpr int lowest_initiative = -20; // as game::set_initiative takes it
static constexpr int highest_initiative = 99;

// The typed initiative: none if the field is empty. False if it cannot be read.
static bool read_initiative(AddCombatantView& view, std::optional<int>& total) {
    view.complaint.clear();
    total = whole_number(view.initiative);
    const bool is_right =
        view.initiative.empty() ||
        (total.has_value() && *total >= lowest_initiative && *total <= highest_initiative);
    if (!is_right) view.complaint = "Initiative is -20 to 99, or empty to roll it.";
    return is_right;
}

// In a running fight nobody stands in the order without an initiative: it is rolled.
static void roll_if_missing(
    game::Encounter& encounter, const rules::Rulebook& rulebook, Id combatant, rules::Dice& dice
) {
    const game::Combatant* entered = game::find_combatant(encounter, combatant);
    if (entered == nullptr || entered->initiative.has_value()) return;
    if (encounter.phase != game::Phase::running) return;
    const int total = game::roll_initiative(encounter, rulebook, combatant, dice);
    game::set_initiative(encounter, rulebook, combatant, total);
}

static void
ask_creatures(const PanelContext& context, const AddCombatantView& view, std::optional<int> total) {
    const game::Creature* creature = game::find_creature(context.campaign.shelf, view.creature);
    if (creature == nullptr) return;
    context.edits.add(
        {game::Section::encounter},
        "Add " + std::to_string(view.count) + " " + creature->name,
        [id = view.creature,
         count = view.count,
         shares = view.shares_initiative,
         total,
         rulebook = &context.rulebook,
         dice = &context.dice](game::Campaign& campaign) {
            game::add_creatures(campaign, *rulebook, id, count, shares, total, *dice);
            return std::string();
        }
    );
}

static void
ask_stranger(const PanelContext& context, const AddCombatantView& view, std::optional<int> total) {
    context.edits.add(
        &game::Campaign::encounter,
        "Add " + view.name,
        [name = view.name,
         side = view.side,
         hp = view.hp,
         armor_class = view.armor_class,
         total,
         rulebook = &context.rulebook,
         dice = &context.dice](game::Encounter& encounter) {
            const Id id =
                game::add_stranger(encounter, *rulebook, name, side, hp, armor_class, total);
            roll_if_missing(encounter, *rulebook, id, *dice);
        }
    );
}

static void
ask_join(const PanelContext& context, const game::Combatant& member, std::optional<int> total) {
    context.edits.add(
        &game::Campaign::encounter,
        member.name + " joins the fight",
        [id = member.id, total, rulebook = &context.rulebook, dice = &context.dice](
            game::Encounter& encounter
        ) {
            game::join_fight(encounter, *rulebook, id, total);
            roll_if_missing(encounter, *rulebook, id, *dice);
        }
    );
}

static void draw_add_count(AddCombatantView& view) {
    if (button("-##count") && view.count > 1) view.count -= 1;
    ImGui::SameLine();
    const auto typed =
        number_field("##count", view.count, 1, game::Limits::count_max, px(56.0F), "How many");
    if (typed.has_value()) view.count = *typed;
    ImGui::SameLine();
    if (button("+##count") && view.count < game::Limits::count_max) view.count += 1;
}

static void draw_add_creature(const PanelContext& context, AddCombatantView& view) {
    heading("From the Creature Shelf");
    const auto& creatures = context.campaign.shelf.creatures;
    if (creatures.empty()) {
        text(Ink::muted, "The shelf is empty: enter creatures in the Creature Shelf panel.");
        return;
    }
    if (game::find_creature(context.campaign.shelf, view.creature) == nullptr)
        view.creature = creatures.front().id;
    const game::Creature* chosen = game::find_creature(context.campaign.shelf, view.creature);
    ImGui::SetNextItemWidth(px(200.0F));
    if (ImGui::BeginCombo("##creature", chosen->name.c_str())) {
        for (const game::Creature& creature : creatures) {
            ImGui::PushID(static_cast<int>(creature.id));
            if (ImGui::Selectable(
                    creature.name.c_str(),
                    creature.id == view.creature,
                    ImGuiSelectableFlags_None,
                    {0.0F, row_height()}
                ))
                view.creature = creature.id;
            ImGui::PopID();
        }
        ImGui::EndCombo();
    }
    ImGui::SameLine();
    draw_add_count(view);
    ImGui::SameLine();
    if (toggle_button("One initiative for all", view.shares_initiative))
        view.shares_initiative = !view.shares_initiative;
    ImGui::SameLine();
    std::optional<int> total;
    if (primary_button("Drop in", read_only_reason(context)) && read_initiative(view, total)) {
        ask_creatures(context, view, total);
        ImGui::CloseCurrentPopup();
    }
}

static void draw_add_member(const PanelContext& context, AddCombatantView& view) {
    bool has_heading = false;
    for (const game::Combatant& member : context.campaign.encounter.combatants) {
        if (member.standing != game::Standing::absent) continue;
        if (!has_heading) heading("Of the party");
        has_heading = true;
        ImGui::PushID(static_cast<int>(member.id));
        std::optional<int> total;
        if (button((member.name + " joins").c_str(), read_only_reason(context)) &&
            read_initiative(view, total)) {
            ask_join(context, member, total);
            ImGui::CloseCurrentPopup();
        }
        ImGui::PopID();
    }
}

static void draw_add_stranger_numbers(AddCombatantView& view) {
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, "HP");
    ImGui::SameLine();
    const auto hp =
        number_field("##hp", view.hp, game::Limits::hp_min, game::Limits::hp_max, px(72.0F), "HP");
    if (hp.has_value()) view.hp = *hp;
    ImGui::SameLine();
    text(Ink::muted, "AC");
    ImGui::SameLine();
    const auto armor_class = number_field(
        "##ac",
        view.armor_class,
        game::Limits::armor_class_min,
        game::Limits::armor_class_max,
        px(56.0F),
        "AC"
    );
    if (armor_class.has_value()) view.armor_class = *armor_class;
}

static void draw_add_stranger(const PanelContext& context, AddCombatantView& view) {
    heading("A stranger, without a stat entry");
    ImGui::SetNextItemWidth(px(200.0F));
    ImGui::InputTextWithHint("##name", "Name", &view.name);
    static constexpr std::array<std::pair<game::Side, const char*>, 3> sides{
        std::pair{game::Side::opponents, "Opponent"},
        std::pair{game::Side::party, "With the party"},
        std::pair{game::Side::others, "Neither"}};
    for (const auto& [side, caption] : sides) {
        ImGui::SameLine();
        if (toggle_button(caption, view.side == side)) view.side = side;
    }
    draw_add_stranger_numbers(view);
    ImGui::SameLine();
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && view.name.empty()) why_not = "Type a name first.";
    if (view.name.size() > game::Limits::name_bytes_max) why_not = "The name is too long.";
    std::optional<int> total;
    if (button("Add the stranger", why_not) && read_initiative(view, total)) {
        ask_stranger(context, view, total);
        view.name.clear();
        ImGui::CloseCurrentPopup();
    }
}

void draw_add_combatant(const PanelContext& context, AddCombatantView& view) {
    const char* popup = "add combatant";
    if (std::exchange(view.is_wanted, false)) {
        ImGui::OpenPopup(popup);
        view.initiative.clear();
        view.complaint.clear();
    }
    if (!begin_popup(popup)) return;
    ImGui::AlignTextToFramePadding();
    text(Ink::text, "Initiative");
    ImGui::SameLine();
    ImGui::SetNextItemWidth(px(72.0F));
    ImGui::InputTextWithHint("##initiative", "roll", &view.initiative);
    ImGui::SameLine();
    text(Ink::muted, "typed, or left empty to roll it");
    if (!view.complaint.empty()) complaint(view.complaint);
    draw_add_creature(context, view);
    draw_add_member(context, view);
    draw_add_stranger(context, view);
    ImGui::EndPopup();
}

} // namespace widgets
