// The initiative board, filled or blank.
#include "game/conditions.h"
#include "game/effects.h"
#include "print/pages.h"

#include <algorithm>

namespace print {

namespace {

constexpr double row_mm = 11; // room to write; common practice, no source

std::string conditions_text(const PrintSource& source, const game::Combatant& combatant) {
    std::string text;
    for (const game::ActiveCondition& condition : combatant.conditions)
        text += (text.empty() ? "" : ", ") + game::condition_text(source.rulebook, condition) +
                " (" + game::duration_text(source.campaign.encounter, source.rulebook, condition) +
                ")";
    return text;
}

std::vector<const game::Combatant*> in_order(const game::Encounter& encounter) {
    std::vector<const game::Combatant*> combatants;
    for (const game::Id id : encounter.order)
        if (const auto* combatant = game::find_combatant(encounter, id))
            combatants.push_back(combatant);
    for (const game::Combatant& combatant : encounter.combatants) {
        const bool is_listed =
            std::find(combatants.begin(), combatants.end(), &combatant) != combatants.end();
        if (!is_listed && combatant.standing != game::Standing::absent)
            combatants.push_back(&combatant);
    }
    return combatants;
}

std::string standing_text(const game::Combatant& combatant) {
    if (combatant.standing == game::Standing::delaying) return "delaying";
    if (combatant.standing == game::Standing::defeated) return "defeated";
    return combatant.is_hidden ? "hidden" : "";
}

// Which side, without colour.
const char* side_letter(game::Side side) {
    switch (side) {
    case game::Side::party: return "P";
    case game::Side::opponents: return "O";
    case game::Side::others: return "-";
    }
    return "";
}

} // namespace

base::Result<Blocks> initiative_page(const PrintSource& source, const std::string& detail) {
    const game::Encounter& encounter = source.campaign.encounter;
    Table board{
        {{"Init."}, {""}, {"Name"}, {"AC", true}, {"HP", true}, {"What runs on them"}},
        {},
        row_mm,
        true,
        false};
    std::string subtitle = "Round";
    if (detail != "blank") {
        if (encounter.phase == game::Phase::running)
            subtitle = encounter.name + (encounter.name.empty() ? "Round " : ", round ") +
                       std::to_string(encounter.round);
        for (const game::Combatant* each : in_order(encounter)) {
            const int hp_max = game::effective_hp_max(source.rulebook, *each);
            board.rows.push_back(
                {{each->initiative.has_value() ? std::to_string(*each->initiative) : "", {}, true},
                 {side_letter(each->side)},
                 {each->name, standing_text(*each), true},
                 {std::to_string(game::effective_ac(source.rulebook, *each).total)},
                 {std::to_string(each->hp) + "/" + std::to_string(hp_max)},
                 {conditions_text(source, *each)}}
            );
        }
        if (board.rows.empty()) // the party is here in any case
            for (const game::Character& character : source.campaign.party.characters)
                if (character.is_present)
                    board.rows.push_back(
                        {{""},
                         {"P"},
                         {character.name, {}, true},
                         {std::to_string(character.statistics.armor_class)},
                         {std::to_string(character.statistics.hit_points)},
                         {""}}
                    );
    }
    board.fills_page = true;
    if (board.rows.empty()) { // room for names where there is none yet to make it
        board.columns[2].title = "Name                                  ";
        board.columns[5].title = "What runs on them             ";
    }
    return Blocks{Title{"Initiative", subtitle}, std::move(board)};
}

} // namespace print
