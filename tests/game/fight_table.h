// A table to play a fight on in tests: the real rulebook, a party and opponents of our own
// invention, short names, and the whole state in one readable line.
#pragma once

#include "game/campaign.h"
#include "game/conditions.h"
#include "game/effects.h"
#include "game/fights.h"
#include "game/hurt.h"
#include "game/prompts.h"
#include "game/roster.h"
#include "game/turns.h"
#include "rules/dice.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <vector>

namespace fight_table {

using base::Id;
using game::ActiveCondition;
using game::Combatant;
using game::Damage;
using game::Duration;
using game::DurationKind;
using game::Encounter;
using game::TurnEdge;

inline const rules::Rulebook&
rulebook_of(rules::Family family, rules::SrdEdition edition = rules::SrdEdition::srd_5_1) {
    static std::map<std::pair<rules::Family, rules::SrdEdition>, rules::Rulebook> loaded;
    const auto key = std::pair(family, edition);
    if (loaded.count(key) == 0) {
        auto rulebook =
            store::load_rulebook(std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, edition);
        REQUIRE_MESSAGE(
            rulebook.ok(), (rulebook.ok() ? std::string() : base::to_text(rulebook.error()))
        );
        loaded[key] = rulebook.value();
    }
    return loaded[key];
}

struct Table {
    explicit Table(rules::Family family, rules::SrdEdition edition = rules::SrdEdition::srd_5_1)
        : rulebook(rulebook_of(family, edition)) {
        campaign.about.rules = family;
        campaign.about.srd_edition = edition;
        campaign.encounter.phase = game::Phase::gathering;
    }

    // A party member in the fight; `name` is also its short name.
    Combatant& hero(const std::string& name, int hp, int armor_class) {
        game::Character character;
        character.name = name;
        character.statistics.level = 4;
        character.statistics.hit_points = hp;
        character.statistics.armor_class = armor_class;
        const Id id = game::add_character(campaign, character);
        Combatant* combatant = nullptr;
        for (Combatant& each : campaign.encounter.combatants) {
            if (each.character == id) combatant = &each;
        }
        combatant->standing = game::Standing::in_order;
        campaign.encounter.order.push_back(combatant->id);
        return *combatant;
    }

    Combatant& foe(const std::string& name, int hp, int armor_class) {
        const Id id = game::add_stranger(
            campaign.encounter, rulebook, name, game::Side::opponents, hp, armor_class, std::nullopt
        );
        return *game::find_combatant(campaign.encounter, id);
    }

    Encounter& encounter() { return campaign.encounter; }

    Id id(const std::string& name) const {
        for (const Combatant& combatant : campaign.encounter.combatants) {
            if (combatant.name == name) return combatant.id;
        }
        FAIL("nobody is called " << name);
        return base::no_id;
    }

    const Combatant& who(const std::string& name) const {
        return *game::find_combatant(campaign.encounter, id(name));
    }

    Combatant& change(const std::string& name) {
        return *game::find_combatant(campaign.encounter, id(name));
    }

    void initiative(const std::string& name, int total) {
        game::set_initiative(encounter(), rulebook, id(name), total);
    }

    std::string hurt(const std::string& name, int amount, const std::string& type = "slashing") {
        Damage damage;
        damage.amount = amount;
        damage.type = type;
        return game::hurt(encounter(), rulebook, id(name), damage);
    }

    std::string
    critical(const std::string& name, int amount, const std::string& type = "slashing") {
        Damage damage;
        damage.amount = amount;
        damage.type = type;
        damage.is_critical = true;
        return game::hurt(encounter(), rulebook, id(name), damage);
    }

    std::string half(const std::string& name, int amount, const std::string& type) {
        Damage damage;
        damage.amount = amount;
        damage.type = type;
        damage.is_half = true;
        return game::hurt(encounter(), rulebook, id(name), damage);
    }

    std::string heal(const std::string& name, int amount) {
        return game::heal(encounter(), rulebook, id(name), amount);
    }

    bool give(
        const std::string& name,
        const std::string& key,
        int value = 0,
        const Duration& duration = {}
    ) {
        ActiveCondition condition;
        condition.key = key;
        condition.value = value;
        condition.duration = duration;
        return game::add_condition(encounter(), rulebook, id(name), condition);
    }

    void end(const std::string& name, const std::string& key) {
        const ActiveCondition* active = game::find_active(who(name), key);
        REQUIRE(active != nullptr);
        game::end_condition(encounter(), rulebook, id(name), active->id);
    }

    // "n rounds, counted at the start or end of that one's turn".
    Duration rounds(int count, const std::string& whose, TurnEdge edge) const {
        return {DurationKind::rounds, id(whose), edge, count, 0};
    }

    Duration until(const std::string& whose, TurnEdge edge) const {
        return {DurationKind::until_turn, id(whose), edge, 0, 0};
    }

    std::string next() { return game::advance_turn(encounter(), rulebook); }

    std::string current() const {
        const Combatant* combatant =
            game::find_combatant(campaign.encounter, campaign.encounter.current);
        return combatant == nullptr ? "nobody" : combatant->name;
    }

    // Answers the only prompt there is for this one.
    std::string answer(const std::string& name, int rolled) {
        for (const game::Prompt& prompt : campaign.encounter.prompts) {
            if (prompt.combatant == id(name))
                return game::answer_prompt(encounter(), rulebook, prompt.id, rolled);
        }
        FAIL("nothing is asked of " << name);
        return {};
    }

    std::string asked() const {
        std::string text;
        for (const game::Prompt& prompt : campaign.encounter.prompts) {
            if (!text.empty()) text += "; ";
            text += game::find_combatant(campaign.encounter, prompt.combatant)->name + ": " +
                    prompt.text;
        }
        return text;
    }

    std::string order() const {
        std::string text;
        for (const Id each : campaign.encounter.order) {
            text +=
                (text.empty() ? "" : " ") + game::find_combatant(campaign.encounter, each)->name;
        }
        return text;
    }

    // "Ysolde 51/58 (frightened 1)": HP, temporary HP and stored conditions, name by name.
    std::string state(const std::vector<std::string>& names) const {
        std::string text;
        for (const std::string& name : names) {
            const Combatant& combatant = who(name);
            if (!text.empty()) text += ", ";
            text += name + " " + std::to_string(combatant.hp);
            if (combatant.temp_hp > 0) text += "+" + std::to_string(combatant.temp_hp);
            std::string conditions;
            for (const ActiveCondition& active : combatant.conditions) {
                conditions +=
                    (conditions.empty() ? "" : "; ") + game::condition_text(rulebook, active);
            }
            if (!conditions.empty()) text += " (" + conditions + ")";
            if (combatant.is_dead) text += " dead";
        }
        return text;
    }

    std::string notices() const {
        std::string text;
        for (const game::Notice& notice : campaign.encounter.notices) {
            text += (text.empty() ? "" : "; ") + notice.text;
        }
        return text;
    }

    int ac(const std::string& name) const { return game::effective_ac(rulebook, who(name)).total; }

    const rules::Rulebook& rulebook;
    game::Campaign campaign;
    rules::Dice dice{1};
};

// Ysolde on 20, the Lurker on 15, Bram on 10, and the fight begun: it is Ysolde's turn.
inline Table
reeds(rules::Family family = rules::Family::four_degree, const std::string& second = "Bram") {
    Table table(family);
    table.hero("Ysolde", 50, 20);
    table.hero(second, 40, 18);
    table.foe("Lurker", 30, 18);
    table.initiative("Ysolde", 20);
    table.initiative("Lurker", 15);
    table.initiative(second, 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    return table;
}

inline Table three(rules::Family family = rules::Family::four_degree) {
    return reeds(family, "Orrin");
}

inline ActiveCondition burning(const std::string& damage, const std::string& type = "fire") {
    ActiveCondition condition;
    condition.key = "persistent_damage";
    condition.damage = damage;
    condition.damage_type = type;
    return condition;
}

// Every opponent dead or away and every invariant of the order kept.
inline void check_order(const Encounter& encounter) {
    std::map<Id, int> listed;
    for (const Id id : encounter.order)
        listed[id] += 1;
    for (const Combatant& combatant : encounter.combatants) {
        CAPTURE(combatant.name);
        CHECK(listed[combatant.id] == (combatant.standing == game::Standing::in_order ? 1 : 0));
    }
    if (encounter.phase != game::Phase::running) return;
    CHECK(encounter.round >= 1);
    if (!encounter.order.empty()) CHECK(listed[encounter.current] == 1);
}

} // namespace fight_table
