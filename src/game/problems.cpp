// What is wrong in a campaign as a whole. Types and ranges of single fields are checked where it is
// read.
#include "game/roster.h"
#include "rules/dice.h"

#include <algorithm>
#include <set>

namespace game {

namespace {

using rules::Rulebook;

// A key as a step of a JSON pointer (RFC 6901).
std::string step(const std::string& key) {
    std::string escaped;
    for (const char letter : key) {
        if (letter == '~')
            escaped += "~0";
        else if (letter == '/')
            escaped += "~1";
        else
            escaped += letter;
    }
    return "/" + escaped;
}

class Finder {
public:
    Finder(const Campaign& campaign, const Rulebook& rulebook)
        : campaign_(campaign), rulebook_(rulebook) {}

    std::vector<Problem> find() {
        check_party();
        check_shelf();
        check_preparation();
        check_encounter();
        return std::move(problems_);
    }

private:
    void tell(const std::string& pointer, const std::string& text) {
        problems_.push_back({pointer, text});
    }

    void check_id(const std::string& pointer, Id id, Id next_id, std::set<Id>& seen) {
        if (id == base::no_id)
            tell(pointer + "/id", "The id must be 1 or more.");
        else if (id >= next_id)
            tell(
                pointer + "/id",
                "The id must be below next_id, which is " + std::to_string(next_id) + "."
            );
        else if (!seen.insert(id).second)
            tell(pointer + "/id", "The id " + std::to_string(id) + " is used twice.");
    }

    void check_name(const std::string& pointer, const std::string& name) {
        if (name.empty()) tell(pointer + "/name", "The name is empty.");
    }

    void check_damage_type(const std::string& pointer, const std::string& type) {
        const std::vector<std::string>& types = rulebook_.damage.types;
        if (type.empty() || type == "all" ||
            std::find(types.begin(), types.end(), type) != types.end())
            return;
        tell(pointer, "\"" + type + "\" is no damage type of the rulebook.");
    }

    void check_dice(const std::string& pointer, const std::string& text) {
        const auto dice = rules::parse_dice(text);
        if (!dice.ok()) tell(pointer, dice.error().message);
    }

    void check_stats(
        const std::string& pointer,
        const Modifiers& modifiers,
        const std::vector<rules::StatName>& known
    ) {
        for (const auto& [key, modifier] : modifiers) {
            const std::string& stat = key;
            const bool is_known = std::any_of(known.begin(), known.end(), [&](const auto& each) {
                return each.key == stat;
            });
            // Lores and the like have names of their own.
            if (!is_known && stat.find("lore") == std::string::npos) {
                tell(pointer + step(stat), "\"" + stat + "\" is not in the rulebook.");
            }
        }
    }

    void check_statistics(const std::string& pointer, const Statistics& statistics) {
        check_stats(pointer + "/abilities", statistics.abilities, rulebook_.abilities);
        check_stats(pointer + "/saves", statistics.saves, rulebook_.saves);
        check_stats(pointer + "/skills", statistics.skills, rulebook_.skills);
        if (!statistics.hit_dice.empty()) check_dice(pointer + "/hit_dice", statistics.hit_dice);
        for (std::size_t at = 0; at < statistics.attacks.size(); ++at) {
            const Attack& attack = statistics.attacks[at];
            const std::string place = pointer + "/attacks/" + std::to_string(at);
            check_name(place, attack.name);
            if (!attack.damage.empty()) check_dice(place + "/damage", attack.damage);
            check_damage_type(place + "/damage_type", attack.damage_type);
        }
        for (std::size_t at = 0; at < statistics.resistances.size(); ++at) {
            check_damage_type(
                pointer + "/resistances/" + std::to_string(at) + "/type",
                statistics.resistances[at].type
            );
        }
        for (std::size_t at = 0; at < statistics.weaknesses.size(); ++at) {
            check_damage_type(
                pointer + "/weaknesses/" + std::to_string(at) + "/type",
                statistics.weaknesses[at].type
            );
        }
        for (std::size_t at = 0; at < statistics.immunities.size(); ++at) {
            const std::string& immunity = statistics.immunities[at];
            if (rules::find_condition(rulebook_, immunity) != nullptr) continue;
            check_damage_type(pointer + "/immunities/" + std::to_string(at), immunity);
        }
    }

    void check_hit_dice(const std::string& pointer, const std::vector<HitDice>& hit_dice) {
        std::set<int> sizes;
        for (std::size_t at = 0; at < hit_dice.size(); ++at) {
            const HitDice& dice = hit_dice[at];
            const std::string place = pointer + "/" + std::to_string(at);
            if (dice.spent > dice.total)
                tell(place + "/spent", "More hit dice are spent than there are.");
            if (!sizes.insert(dice.sides).second)
                tell(
                    place + "/sides",
                    "There are two entries of d" + std::to_string(dice.sides) + "."
                );
        }
    }

    void check_party() {
        std::set<Id> seen;
        const Party& party = campaign_.party;
        for (std::size_t at = 0; at < party.characters.size(); ++at) {
            const Character& character = party.characters[at];
            const std::string pointer = "/party/characters/" + std::to_string(at);
            check_id(pointer, character.id, party.next_id, seen);
            check_name(pointer, character.name);
            check_statistics(pointer + "/statistics", character.statistics);
            check_hit_dice(pointer + "/hit_dice", character.hit_dice);
            for (std::size_t each = 0; each < character.reminders.size(); ++each) {
                check_id(
                    pointer + "/reminders/" + std::to_string(each),
                    character.reminders[each].id,
                    party.next_id,
                    seen
                );
            }
        }
    }

    void check_shelf() {
        std::set<Id> seen;
        for (std::size_t at = 0; at < campaign_.shelf.creatures.size(); ++at) {
            const Creature& creature = campaign_.shelf.creatures[at];
            const std::string pointer = "/shelf/creatures/" + std::to_string(at);
            check_id(pointer, creature.id, campaign_.shelf.next_id, seen);
            check_name(pointer, creature.name);
            check_statistics(pointer + "/statistics", creature.statistics);
        }
    }

    void check_preparation() {
        std::set<Id> seen;
        const Preparation& preparation = campaign_.preparation;
        for (std::size_t at = 0; at < preparation.encounters.size(); ++at) {
            const PreparedEncounter& encounter = preparation.encounters[at];
            const std::string pointer = "/preparation/encounters/" + std::to_string(at);
            check_id(pointer, encounter.id, preparation.next_id, seen);
            check_name(pointer, encounter.name);
            for (std::size_t each = 0; each < encounter.creatures.size(); ++each) {
                const int count = encounter.creatures[each].count;
                if (count < 1 || count > Limits::count_max) {
                    tell(
                        pointer + "/creatures/" + std::to_string(each) + "/count",
                        "The count must be 1 to " + std::to_string(Limits::count_max) + "."
                    );
                }
                if (find_creature(campaign_.shelf, encounter.creatures[each].creature) != nullptr)
                    continue;
                tell(
                    pointer + "/creatures/" + std::to_string(each) + "/creature",
                    "There is no creature " + std::to_string(encounter.creatures[each].creature) +
                        " on the shelf."
                );
            }
        }
    }

    void check_reference(const std::string& pointer, Id id) {
        if (id == base::no_id || find_combatant(campaign_.encounter, id) != nullptr) return;
        tell(pointer, "There is no combatant " + std::to_string(id) + ".");
    }

    void check_condition(const std::string& pointer, const ActiveCondition& active) {
        const rules::ConditionRule* rule = rules::find_condition(rulebook_, active.key);
        if (rule == nullptr && !active.key.empty())
            tell(pointer + "/key", "\"" + active.key + "\" is no condition of the rulebook.");
        if (active.key.empty() && active.name.empty())
            tell(pointer + "/name", "An effect of the GM's own needs a name.");
        const bool is_persistent =
            rule != nullptr && rule->fading == rules::Fading::persistent_damage;
        if (is_persistent || !active.damage.empty()) check_dice(pointer + "/damage", active.damage);
        check_damage_type(pointer + "/damage_type", active.damage_type);
        check_reference(pointer + "/source", active.source);
        check_reference(pointer + "/duration/whose_turn", active.duration.whose_turn);
        const bool is_checked = active.check.has_value() && !active.check->stat.empty();
        if (is_checked && active.check->stat != "perception" &&
            rules::find_stat(rulebook_, active.check->stat) == nullptr) {
            tell(pointer + "/check/stat", "\"" + active.check->stat + "\" is not in the rulebook.");
        }
    }

    void
    check_combatant(const std::string& pointer, const Combatant& combatant, std::set<Id>& seen) {
        const Encounter& encounter = campaign_.encounter;
        check_id(pointer, combatant.id, encounter.next_id, seen);
        check_name(pointer, combatant.name);
        if (combatant.character == base::no_id)
            check_statistics(pointer + "/statistics", combatant.statistics);
        else if (find_character(campaign_.party, combatant.character) == nullptr) {
            tell(
                pointer + "/character",
                "There is no character " + std::to_string(combatant.character) + "."
            );
        } else if (find_party_combatant(encounter, combatant.character) != &combatant) {
            tell(
                pointer + "/character",
                "The character " + std::to_string(combatant.character) + " has two combatants."
            );
        }
        if (combatant.hp < 0) tell(pointer + "/hp", "Hit points are below 0.");
        if (combatant.temp_hp < 0) tell(pointer + "/temp_hp", "Temporary hit points are below 0.");
        // The plain maximum: a drained one may stand above what it has now until it is hurt.
        if (combatant.hp > combatant.statistics.hit_points) {
            tell(
                pointer + "/hp",
                "Hit points are above the maximum of " +
                    std::to_string(combatant.statistics.hit_points) + "."
            );
        }
        for (std::size_t at = 0; at < combatant.conditions.size(); ++at) {
            const std::string place = pointer + "/conditions/" + std::to_string(at);
            check_id(place, combatant.conditions[at].id, encounter.next_id, seen);
            check_condition(place, combatant.conditions[at]);
        }
        if (combatant.group >= encounter.next_id) {
            tell(
                pointer + "/group",
                "The group must be below next_id, which is " + std::to_string(encounter.next_id) +
                    "."
            );
        }
        check_reference(pointer + "/delayed_after", combatant.delayed_after);
    }

    void check_order() {
        const Encounter& encounter = campaign_.encounter;
        std::set<Id> listed;
        for (std::size_t at = 0; at < encounter.order.size(); ++at) {
            const std::string pointer = "/encounter/order/" + std::to_string(at);
            const Combatant* combatant = find_combatant(encounter, encounter.order[at]);
            if (combatant == nullptr)
                tell(pointer, "There is no combatant " + std::to_string(encounter.order[at]) + ".");
            else if (combatant->standing != Standing::in_order)
                tell(pointer, combatant->name + " is not in the order.");
            if (!listed.insert(encounter.order[at]).second) tell(pointer, "Listed twice.");
        }
        for (std::size_t at = 0; at < encounter.combatants.size(); ++at) {
            const Combatant& combatant = encounter.combatants[at];
            if (combatant.standing != Standing::in_order || listed.count(combatant.id) == 1)
                continue;
            if (encounter.phase == Phase::no_fight) continue;
            tell(
                "/encounter/combatants/" + std::to_string(at) + "/standing",
                combatant.name + " is missing in the order."
            );
        }
    }

    void check_encounter() {
        const Encounter& encounter = campaign_.encounter;
        std::set<Id> seen;
        for (std::size_t at = 0; at < encounter.combatants.size(); ++at) {
            check_combatant(
                "/encounter/combatants/" + std::to_string(at), encounter.combatants[at], seen
            );
        }
        check_order();
        for (std::size_t at = 0; at < encounter.prompts.size(); ++at) {
            const std::string pointer = "/encounter/prompts/" + std::to_string(at);
            check_id(pointer, encounter.prompts[at].id, encounter.next_id, seen);
            check_prompt(pointer, encounter.prompts[at]);
        }
        for (std::size_t at = 0; at < encounter.notices.size(); ++at) {
            check_reference(
                "/encounter/notices/" + std::to_string(at) + "/combatant",
                encounter.notices[at].combatant
            );
        }
        for (std::size_t at = 0; at < encounter.called.size(); ++at) {
            check_reference(
                "/encounter/called/" + std::to_string(at) + "/combatant",
                encounter.called[at].combatant
            );
        }
        if (encounter.phase != Phase::running) return;
        if (encounter.round < 1)
            tell("/encounter/round", "A running fight is in round 1 or later.");
        const bool is_listed =
            std::find(encounter.order.begin(), encounter.order.end(), encounter.current) !=
            encounter.order.end();
        if (is_listed != encounter.order.empty()) return; // nobody acts when nobody is left
        tell("/encounter/current", "The current combatant is not in the order.");
    }

    void check_prompt(const std::string& pointer, const Prompt& prompt) {
        const Combatant* combatant = find_combatant(campaign_.encounter, prompt.combatant);
        if (combatant == nullptr) {
            tell(
                pointer + "/combatant",
                "There is no combatant " + std::to_string(prompt.combatant) + "."
            );
        } else if (prompt.condition != base::no_id && find_active(*combatant, prompt.condition) == nullptr) {
            tell(
                pointer + "/condition",
                combatant->name + " has no condition " + std::to_string(prompt.condition) + "."
            );
        }
        if (prompt.kind == PromptKind::persistent_damage)
            check_dice(pointer + "/dice", prompt.dice);
    }

    const Campaign& campaign_;
    const Rulebook& rulebook_;
    std::vector<Problem> problems_;
};

} // namespace

std::vector<Problem> find_problems(const Campaign& campaign, const Rulebook& rulebook) {
    return Finder(campaign, rulebook).find();
}

} // namespace game
