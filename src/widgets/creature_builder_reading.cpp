// What stands beside the numbers.
#include "game/odds_text.h"
#include "widgets/creature_builder_parts.h"
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

} // namespace widgets
