// What stands beside the numbers, and where the creature goes.
#include "game/odds_text.h"
#include "widgets/creature_builder_parts.h"
#include "widgets/read_only.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>

namespace widgets {

void draw_builder_reading(const PanelContext& context, const game::BuilderReading& reading) {
    heading("In this fight");
    text_wrapped(Ink::text, reading.threat_text);
    const game::PartyReading& party = reading.party;
    if (party.members.empty()) {
        text_wrapped(Ink::muted, "With a party, everybody's chances against it stand here.");
        return;
    }
    text_wrapped(
        Ink::text,
        "It " + game::rounds_text(party) + "; it deals " +
            game::count_text(party.damage_on_member) + " a round to whom it attacks."
    );
    heading("The party against it");
    for (const game::MemberReading& member : party.members) {
        text(Ink::text, member.name);
        text_wrapped(Ink::muted, "it " + game::attack_text(member.by_creature));
        text_wrapped(Ink::muted, member.name + " " + game::attack_text(member.on_creature));
    }
    heading("Its saves");
    for (const game::SaveReading& save : party.saves)
        text_wrapped(
            Ink::text, stat_words(context.rulebook, save.save) + " " + game::save_text(save)
        );
}

float builder_verbs_height() {
    const ImGuiStyle& style = ImGui::GetStyle();
    return 2.0F * (row_height() + style.ItemSpacing.y) + ImGui::GetTextLineHeightWithSpacing();
}

void draw_builder_verbs(
    const PanelContext& context, CreatureBuilderView& view, const game::BuilderReading& reading
) {
    const std::string& name = view.choice->name;
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && name.empty()) why_not = "Give it a name first.";
    std::string line = view.done.empty() ? why_not : view.done;
    if (line.empty()) line = reading.threat_text;
    text_fitted(Ink::muted, line, ImGui::GetContentRegionAvail().x);
    Flow flow;
    draw_placing(flow, view.placing, !reading.statistics.hit_dice.empty());
    flow.next(button_width("Keep on the shelf"));
    if (button("Keep on the shelf", why_not))
        view.done = "Done: " + ask_keeping(context, name, reading.statistics) + ".";
    flow.next(button_width("Into the fight"));
    if (primary_button("Into the fight", why_not))
        view.done = "Done: " + ask_placing(context, name, reading.statistics, view.placing) + ".";
}

} // namespace widgets
