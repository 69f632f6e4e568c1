// The popups "Ready" and "More" of the turn order: what is needed less often than every turn.
#include "game/hurt.h"
#include "game/turns.h"
#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_actions.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <functional>
#include <utility>

namespace widgets {

using base::Id;
using game::Combatant;
using game::Encounter;

namespace {

void ask(
    const PanelContext& context,
    std::string label,
    std::function<void(Encounter&)> change,
    std::string merge_key = {}
) {
    context.edits.add(
        &game::Campaign::encounter,
        std::move(label),
        [change = std::move(change)](Encounter& encounter) { change(encounter); },
        std::move(merge_key)
    );
}

void draw_ready_popup(const PanelContext& context, TurnOrderActionsView& view) {
    const char* popup = "ready";
    if (std::exchange(view.wants_ready, false)) {
        view.readied.clear();
        ImGui::OpenPopup(popup);
    }
    if (!begin_popup(popup)) return;
    const Encounter& encounter = context.campaign.encounter;
    const std::vector<Id> who = targets(encounter, context.selection);
    const Combatant* main = who.empty() ? nullptr : game::find_combatant(encounter, who.back());
    if (main == nullptr) {
        ImGui::CloseCurrentPopup();
    } else {
        text(Ink::text, main->name + " readies an action:");
        if (ImGui::IsWindowAppearing()) ImGui::SetKeyboardFocusHere();
        ImGui::SetNextItemWidth(px(360.0F));
        const bool is_entered = ImGui::InputTextWithHint(
            "##readied",
            "what sets it off: what it does",
            &view.readied,
            ImGuiInputTextFlags_EnterReturnsTrue
        );
        const char* why_not = view.readied.empty() ? "Say first what is readied." : "";
        const bool is_pressed = primary_button("Ready it", why_not);
        if ((is_entered || is_pressed) && !view.readied.empty()) {
            ask(context,
                main->name + " readies: " + view.readied,
                [id = main->id, readied = view.readied](Encounter& changed) {
                    game::ready_action(changed, id, readied);
                });
            ImGui::CloseCurrentPopup();
        }
    }
    ImGui::EndPopup();
}

// The neighbour in the order to stand before when moving up or down; false at the ends.
bool place_to_move(const Encounter& encounter, Id who, bool is_up, Id& before) {
    const auto& order = encounter.order;
    const auto found = std::find(order.begin(), order.end(), who);
    if (found == order.end()) return false;
    if (is_up) {
        if (found == order.begin()) return false;
        before = *(found - 1);
        return true;
    }
    if (found + 1 == order.end()) return false;
    before = found + 2 == order.end() ? base::no_id : *(found + 2);
    return true;
}

void draw_more_place(const PanelContext& context, const Combatant& main) {
    const Encounter& encounter = context.campaign.encounter;
    for (const bool is_up : {true, false}) {
        Id before = base::no_id;
        const bool can_move = place_to_move(encounter, main.id, is_up, before);
        std::string why_not = read_only_reason(context);
        if (why_not.empty() && !can_move) why_not = "It cannot go further that way.";
        if (!is_up) ImGui::SameLine();
        if (button(is_up ? "Move up" : "Move down", why_not))
            ask(context,
                "Move " + main.name + (is_up ? " up" : " down"),
                [id = main.id, before](Encounter& changed) {
                    game::move_in_order(changed, id, before);
                });
    }
}

void draw_more_name(
    const PanelContext& context, TurnOrderActionsView& view, const Combatant& main
) {
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, "Name");
    ImGui::SameLine(px(96.0F));
    const auto name = text_field("##name", main.name, view.name, context.now_seconds, px(240.0F));
    if (name.has_value() && !name->empty())
        ask(
            context,
            "Rename " + main.name,
            [id = main.id, name = *name](Encounter& changed) {
                game::rename_combatant(changed, id, name);
            },
            "name of combatant " + std::to_string(main.id)
        );
}

void draw_more_one(const PanelContext& context, TurnOrderActionsView& view, const Combatant& main) {
    ImGui::BeginDisabled(context.is_read_only);
    const auto label = [](const char* words) {
        ImGui::AlignTextToFramePadding();
        text(Ink::muted, words);
        ImGui::SameLine(px(96.0F));
    };
    label("Initiative");
    const auto total = roll_field(
        "##initiative", main.initiative, view.initiative, main.id, -20, 99, px(72.0F), "Initiative"
    );
    if (total.has_value())
        ask(context,
            "Initiative of " + main.name + " becomes " + std::to_string(*total),
            [id = main.id, total = *total, book = &context.rulebook](Encounter& changed) {
                game::set_initiative(changed, *book, id, total);
            });
    if (!view.initiative.of[main.id].complaint.empty())
        complaint(view.initiative.of[main.id].complaint);
    if (main.character == base::no_id) // a character's name is changed in the Party panel
        draw_more_name(context, view, main);
    label("Note");
    const auto note = text_field("##note", main.note, view.note, context.now_seconds, px(240.0F));
    if (note.has_value())
        ask(
            context,
            "Note on " + main.name,
            [id = main.id, note = *note](Encounter& changed) { game::set_note(changed, id, note); },
            "note on combatant " + std::to_string(main.id)
        );
    ImGui::EndDisabled();
    draw_more_place(context, main);
    if (main.readied.empty()) return;
    if (button("Drop what is readied", read_only_reason(context)))
        ask(context, main.name + " drops what was readied", [id = main.id](Encounter& changed) {
            game::ready_action(changed, id, "");
        });
}

void draw_more_group(const PanelContext& context, const std::vector<Id>& who) {
    const Encounter& encounter = context.campaign.encounter;
    const bool is_grouped = std::any_of(who.begin(), who.end(), [&](Id id) {
        const Combatant* combatant = game::find_combatant(encounter, id);
        return combatant != nullptr && combatant->group != base::no_id;
    });
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && who.size() < 2) why_not = "Pick two or more rows first.";
    if (button("Group", why_not))
        ask(context,
            "Group " + names_text(encounter, who),
            [who, book = &context.rulebook](Encounter& changed) {
                game::make_group(changed, *book, who);
            });
    if (!is_grouped) return;
    ImGui::SameLine();
    if (button("Leave the group", read_only_reason(context)))
        ask(context, names_text(encounter, who) + " leaves the group", [who](Encounter& changed) {
            for (const Id id : who)
                game::leave_group(changed, id);
        });
}

void draw_more_out(const PanelContext& context, const std::vector<Id>& who, const Combatant& main) {
    const Encounter& encounter = context.campaign.encounter;
    const std::string names = names_text(encounter, who);
    const bool is_back = main.standing == game::Standing::defeated;
    if (button(is_back ? "Back into the fight" : "Defeated", read_only_reason(context))) {
        ask(context,
            is_back ? names + " is back in the fight" : names + " is defeated",
            [who, is_back, &rulebook = context.rulebook](Encounter& changed) {
                for (const Id id : who)
                    game::set_defeated(changed, rulebook, id, !is_back);
            });
        ImGui::CloseCurrentPopup();
    }
    ImGui::SameLine();
    const bool is_down = main.hp == 0 && !main.is_dead && !is_back;
    if (is_down && button("Stabilize", read_only_reason(context)))
        ask(context, "Stabilize " + names, [who, book = &context.rulebook](Encounter& changed) {
            for (const Id id : who)
                game::stabilize(changed, *book, id);
        });
    if (is_down) ImGui::SameLine();
    if (button("Remove", read_only_reason(context))) {
        ask(context,
            "Remove " + names + " from the fight",
            [who, book = &context.rulebook](Encounter& changed) {
                for (const Id id : who)
                    game::remove_combatant(changed, *book, id);
            });
        ImGui::CloseCurrentPopup();
    }
    ImGui::SetItemTooltip("Out of this fight; Undo brings it back");
}

void draw_more_popup(const PanelContext& context, TurnOrderActionsView& view) {
    const char* popup = "more";
    if (std::exchange(view.wants_more, false)) ImGui::OpenPopup(popup);
    if (!begin_popup(popup)) return;
    const Encounter& encounter = context.campaign.encounter;
    const std::vector<Id> who = targets(encounter, context.selection);
    const Combatant* main = who.empty() ? nullptr : game::find_combatant(encounter, who.back());
    if (main == nullptr) {
        ImGui::CloseCurrentPopup();
    } else {
        heading(names_text(encounter, who));
        if (who.size() == 1) {
            if (view.more_of != main->id) {
                view.name = {};
                view.note = {};
                view.more_of = main->id;
            }
            draw_more_one(context, view, *main);
        }
        draw_more_group(context, who);
        draw_more_out(context, who, *main);
    }
    ImGui::EndPopup();
}

} // namespace

void draw_turn_order_popups(const PanelContext& context, TurnOrderActionsView& view) {
    draw_ready_popup(context, view);
    draw_more_popup(context, view);
}

} // namespace widgets
