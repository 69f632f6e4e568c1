#include "store/rehearsal_edits.h"

#include "game/conditions.h"
#include "game/fights.h"
#include "game/hurt.h"
#include "game/roster.h"
#include "game/turns.h"

#include <memory>

namespace store {

using game::Campaign;
using game::Edit;
using game::Encounter;
using game::Id;
using game::Section;

namespace {

constexpr std::size_t combatants_max = 24;

// Notes in several scripts, with what JSON must escape.
constexpr const char* note_texts[] = {
    "has the ledger",
    "owes Tamsin \"two\" favours",
    "na\xC3\xAFve, tired\nand wet",
    "\xE7\x81\xAF\xE5\x8F\xB0 keeper \\ smith",
    "",
};

Edit encounter_edit(std::string label, std::function<std::string(Encounter&)> change) {
    return {
        {Section::encounter},
        std::move(label),
        [change = std::move(change)](Campaign& campaign) { return change(campaign.encounter); },
        {}};
}

} // namespace

RehearsalEdits::RehearsalEdits(const rules::Rulebook& rulebook, std::uint64_t seed)
    : rulebook_(rulebook), random_(seed) {}

int RehearsalEdits::draw(int count) {
    return static_cast<int>(random_() % static_cast<std::uint64_t>(count));
}

Id RehearsalEdits::any_combatant(const Campaign& campaign) {
    const auto& combatants = campaign.encounter.combatants;
    if (combatants.empty()) return base::no_id;
    return combatants[static_cast<std::size_t>(draw(static_cast<int>(combatants.size())))].id;
}

Edit RehearsalEdits::next(const Campaign& campaign) {
    const rules::Rulebook& rulebook = rulebook_;
    if (campaign.encounter.phase == game::Phase::no_fight) {
        const auto& prepared = campaign.preparation.encounters;
        const Id id = prepared.empty() ? base::no_id : prepared.front().id;
        return {
            {Section::encounter},
            "Open the fight",
            [&rulebook, id](Campaign& target) {
                game::open_fight(target, rulebook, id);
                return std::string();
            },
            {}};
    }
    if (campaign.encounter.phase == game::Phase::gathering) {
        const auto seed = static_cast<std::uint64_t>(draw(1'000'000));
        return encounter_edit("Begin the fight", [&rulebook, seed](Encounter& encounter) {
            rules::Dice dice(seed);
            game::roll_missing_initiative(encounter, rulebook, dice, std::nullopt);
            game::begin_fight(encounter, rulebook);
            return std::string();
        });
    }
    return draw(8) == 0 ? roster_edit(campaign) : fight_edit(campaign);
}

Edit RehearsalEdits::fight_edit(const Campaign& campaign) {
    const rules::Rulebook& rulebook = rulebook_;
    const Id id = any_combatant(campaign);
    const int amount = 1 + draw(12);
    switch (draw(9)) {
    case 0:
    case 1:
        return encounter_edit("Hurt", [&rulebook, id, amount](Encounter& encounter) {
            game::Damage damage;
            damage.amount = amount;
            return game::hurt(encounter, rulebook, id, damage);
        });
    case 2:
        return encounter_edit("Heal", [&rulebook, id, amount](Encounter& encounter) {
            return game::heal(encounter, rulebook, id, amount);
        });
    case 3: {
        game::ActiveCondition condition;
        const auto kinds = static_cast<int>(rulebook.conditions.size());
        const auto& rule = rulebook.conditions[static_cast<std::size_t>(draw(kinds))];
        condition.key = rule.key;
        condition.value = rule.has_value ? 1 + draw(3) : 0;
        condition.duration.kind = game::DurationKind::rounds;
        condition.duration.rounds_left = 1 + draw(3);
        condition.note = note_texts[static_cast<std::size_t>(draw(5))];
        return encounter_edit(
            "Give " + rule.name,
            [&rulebook, id, condition](Encounter& encounter) {
                game::add_condition(encounter, rulebook, id, condition);
                return std::string();
            }
        );
    }
    case 4:
        return encounter_edit("End a condition", [&rulebook, id](Encounter& encounter) {
            const game::Combatant* combatant = game::find_combatant(std::as_const(encounter), id);
            if (combatant != nullptr && !combatant->conditions.empty())
                game::end_condition(encounter, rulebook, id, combatant->conditions.front().id);
            return std::string();
        });
    case 5: {
        const std::string note = note_texts[static_cast<std::size_t>(draw(5))];
        Edit edit = encounter_edit("Write a note", [id, note](Encounter& encounter) {
            game::set_note(encounter, id, note);
            return std::string();
        });
        edit.merge_key = draw(2) == 0 ? "note" + std::to_string(id) : "";
        return edit;
    }
    default:
        return encounter_edit("Next turn", [&rulebook](Encounter& encounter) {
            return game::advance_turn(encounter, rulebook);
        });
    }
}

Edit RehearsalEdits::roster_edit(const Campaign& campaign) {
    const rules::Rulebook& rulebook = rulebook_;
    const bool is_crowded = campaign.encounter.combatants.size() > combatants_max;
    const int kind = is_crowded ? 3 : draw(4);
    const auto& characters = campaign.party.characters;
    if (kind < 2 && !characters.empty()) {
        game::Character character =
            characters[static_cast<std::size_t>(draw(static_cast<int>(characters.size())))];
        notes_ += 1;
        character.notes = note_texts[static_cast<std::size_t>(draw(5))] + std::to_string(notes_);
        character.statistics.armor_class = 10 + draw(20);
        return {
            {Section::party, Section::encounter},
            "Change " + character.name,
            [character](Campaign& target) {
                game::update_character(target, character);
                return std::string();
            },
            {}};
    }
    if (kind == 3 || campaign.shelf.creatures.empty())
        return {
            {Section::encounter, Section::clock},
            "End the fight",
            [&rulebook](Campaign& target) {
                game::end_fight(target, rulebook);
                return std::string();
            },
            {}};
    const Id creature = campaign.shelf.creatures.front().id;
    const auto seed = static_cast<std::uint64_t>(draw(1'000'000));
    return {
        {Section::encounter},
        "A late arrival",
        [&rulebook, creature, seed](Campaign& target) {
            rules::Dice dice(seed);
            game::add_creatures(target, rulebook, creature, 1, false, std::nullopt, dice);
            return std::string();
        },
        {}};
}

base::Result<base::Nothing> rehearse_step(CampaignDocument& document, RehearsalEdits& edits) {
    switch (edits.draw(12)) {
    case 0: document.undo(); break;
    case 1: document.redo(); break;
    default:
        if (const auto done = document.edit(edits.next(document.view())); !done)
            return done.error();
    }
    return base::Nothing{};
}

} // namespace store
