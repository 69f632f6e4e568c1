#include "store/rulebook_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <fstream>
#include <set>
#include <sstream>

namespace store {

namespace {

using base::Error;
using base::ErrorKind;
using nlohmann::json;
using rules::ConditionRule;
using rules::Effect;
using rules::Rulebook;

// The first thing found wrong ends the reading; it carries the pointer to the spot.
struct Wrong {
    std::string pointer;
    std::string expected;
    ErrorKind kind = ErrorKind::wrong_type;
};

// One value of the tables and where it stands.
struct Spot {
    const json& value;
    std::string pointer;

    Spot at(const std::string& key) const {
        if (!value.is_object()) throw Wrong{pointer, "an object"};
        const auto found = value.find(key);
        if (found == value.end())
            throw Wrong{pointer, "a key \"" + key + "\"", ErrorKind::missing_field};
        return {*found, pointer + "/" + key};
    }

    bool has(const std::string& key) const { return value.is_object() && value.contains(key); }

    std::string text() const {
        if (!value.is_string()) throw Wrong{pointer, "a text"};
        return value.get<std::string>();
    }

    int number() const {
        constexpr int limit = 100000;
        if (!value.is_number_integer()) throw Wrong{pointer, "a whole number"};
        const auto wide = value.get<std::int64_t>();
        if (wide < -limit || wide > limit)
            throw Wrong{pointer, "a whole number from -100000 to 100000", ErrorKind::out_of_range};
        return static_cast<int>(wide);
    }

    double fraction() const {
        if (!value.is_number()) throw Wrong{pointer, "a number"};
        return value.get<double>();
    }

    bool truth() const {
        if (!value.is_boolean()) throw Wrong{pointer, "true or false"};
        return value.get<bool>();
    }

    template <class Each>
    void each(Each read_one) const {
        if (!value.is_array()) throw Wrong{pointer, "a list"};
        for (std::size_t index = 0; index < value.size(); ++index) {
            read_one(Spot{value[index], pointer + "/" + std::to_string(index)});
        }
    }

    std::vector<std::string> texts() const {
        std::vector<std::string> list;
        each([&](const Spot& spot) { list.push_back(spot.text()); });
        return list;
    }

    std::vector<int> numbers() const {
        std::vector<int> list;
        each([&](const Spot& spot) { list.push_back(spot.number()); });
        return list;
    }
};

std::string text_or(const Spot& spot, const std::string& key) {
    return spot.has(key) ? spot.at(key).text() : std::string();
}

int number_or(const Spot& spot, const std::string& key, int otherwise) {
    return spot.has(key) ? spot.at(key).number() : otherwise;
}

bool truth_or(const Spot& spot, const std::string& key) {
    return spot.has(key) && spot.at(key).truth();
}

// A closed list of words.
template <class Enum, std::size_t Count>
Enum word_of(const Spot& spot, const std::array<std::pair<const char*, Enum>, Count>& words) {
    const std::string text = spot.text();
    std::string known;
    for (const auto& [word, meaning] : words) {
        if (text == word) return meaning;
        known += (known.empty() ? "" : ", ") + std::string(word);
    }
    throw Wrong{spot.pointer, "one of " + known, ErrorKind::out_of_range};
}

constexpr std::array effect_kinds = {
    std::pair{"modifier", rules::EffectKind::modifier},
    std::pair{"own_rolls", rules::EffectKind::own_rolls},
    std::pair{"rolls_against", rules::EffectKind::rolls_against},
    std::pair{"fails", rules::EffectKind::fails},
    std::pair{"implies", rules::EffectKind::implies},
    std::pair{"overrides", rules::EffectKind::overrides},
    std::pair{"gains_when_set", rules::EffectKind::gains_when_set},
    std::pair{"actions", rules::EffectKind::actions},
    std::pair{"cannot_act", rules::EffectKind::cannot_act},
    std::pair{"cannot_react", rules::EffectKind::cannot_react},
    std::pair{"cannot_delay", rules::EffectKind::cannot_delay},
    std::pair{"speed_becomes", rules::EffectKind::speed_becomes},
    std::pair{"speed_changes", rules::EffectKind::speed_changes},
    std::pair{"speed_factor", rules::EffectKind::speed_factor},
    std::pair{"hp_max_changes", rules::EffectKind::hp_max_changes},
    std::pair{"hp_max_factor", rules::EffectKind::hp_max_factor},
    std::pair{"hp_lost_when_set", rules::EffectKind::hp_lost_when_set},
    std::pair{"death_threshold", rules::EffectKind::death_threshold},
    std::pair{"resists_all", rules::EffectKind::resists_all},
    std::pair{"immune_to", rules::EffectKind::immune_to},
    std::pair{"ends_concentration", rules::EffectKind::ends_concentration},
    std::pair{"dies", rules::EffectKind::dies},
    std::pair{"flat_check", rules::EffectKind::flat_check},
    std::pair{"told", rules::EffectKind::told},
};

constexpr std::array bonus_types = {
    std::pair{"untyped", rules::BonusType::untyped},
    std::pair{"circumstance", rules::BonusType::circumstance},
    std::pair{"item", rules::BonusType::item},
    std::pair{"status", rules::BonusType::status},
};

constexpr std::array roll_modes = {
    std::pair{"normal", rules::RollMode::normal},
    std::pair{"advantage", rules::RollMode::advantage},
    std::pair{"disadvantage", rules::RollMode::disadvantage},
};

constexpr std::array fadings = {
    std::pair{"stays", rules::Fading::stays},
    std::pair{"drops_at_turn_end", rules::Fading::drops_at_turn_end},
    std::pair{"recovery_check", rules::Fading::recovery_check},
    std::pair{"persistent_damage", rules::Fading::persistent_damage},
    std::pair{"lost_with_actions", rules::Fading::lost_with_actions},
};

constexpr std::array families = {
    std::pair{"four_degree", rules::Family::four_degree},
    std::pair{"srd5", rules::Family::srd5},
};

const char* edition_key(rules::SrdEdition edition) {
    return edition == rules::SrdEdition::srd_5_1 ? "srd_5_1" : "srd_5_2_1";
}

// A value that may differ by edition: {"srd_5_1": ..., "srd_5_2_1": ...}.
Spot by_edition(const Spot& spot, rules::SrdEdition edition) {
    return spot.has(edition_key(edition)) ? spot.at(edition_key(edition)) : spot;
}

std::set<std::string> stat_words(const Rulebook& rulebook) {
    std::set<std::string> words = {
        "ac",           "perception",    "skills",           "initiative",     "attack",
        "melee_attack", "ranged_attack", "str_melee_attack", "spell_attack",   "damage",
        "str_damage",   "spell_dc",      "class_dc",         "speed",          "all_saves",
        "all_checks",   "all_dcs",       "mental_dcs",       "ability_checks",
    };
    for (const rules::StatName& ability : rulebook.abilities) {
        for (const char* end : {"_checks", "_dcs", "_saves"})
            words.insert(ability.key + end);
    }
    for (const rules::StatName& save : rulebook.saves)
        words.insert(save.key);
    for (const rules::StatName& skill : rulebook.skills)
        words.insert(skill.key);
    return words;
}

void read_stats(const Spot& spot, std::vector<rules::StatName>& stats) {
    spot.each([&](const Spot& each) {
        stats.push_back(
            {each.at("key").text(),
             each.at("name").text(),
             each.at("brief").text(),
             text_or(each, "ability")}
        );
    });
}

void read_turn(const Spot& spot, rules::TurnRules& turn) {
    turn.actions = spot.at("actions").number();
    turn.reactions = spot.at("reactions").number();
    turn.round_seconds = spot.at("round_seconds").number();
    turn.has_delay = spot.at("has_delay").truth();
    turn.opponents_win_ties = spot.at("opponents_win_ties").truth();
    turn.ties_by_dexterity = spot.at("ties_by_dexterity").truth();
    turn.initiative_stat = spot.at("initiative_stat").text();
    turn.attack_penalty = spot.at("attack_penalty").numbers();
    turn.agile_attack_penalty = spot.at("agile_attack_penalty").numbers();
    if (turn.round_seconds < 1)
        throw Wrong{spot.pointer + "/round_seconds", "1 or more", ErrorKind::out_of_range};
}

void read_dying(const Spot& spot, rules::DyingRules& dying) {
    const auto read = [&](const char* key, int& number) { number = spot.at(key).number(); };
    read("gained", dying.gained);
    read("gained_on_critical", dying.gained_on_critical);
    read("death_at", dying.death_at);
    read("damage_adds", dying.damage_adds);
    read("critical_damage_adds", dying.critical_damage_adds);
    read("recovery_dc_base", dying.recovery_dc_base);
    read("recovery_critical_success", dying.recovery_critical_success);
    read("recovery_success", dying.recovery_success);
    read("recovery_failure", dying.recovery_failure);
    read("recovery_critical_failure", dying.recovery_critical_failure);
    read("wounded_gained", dying.wounded_gained);
    read("massive_damage_factor", dying.massive_damage_factor);
    read("persistent_flat_dc", dying.persistent_flat_dc);
    read("persistent_helped_dc", dying.persistent_helped_dc);
}

void read_death_saves(const Spot& spot, rules::SrdEdition edition, rules::DeathSaveRules& saves) {
    const auto read = [&](const char* key, int& number) {
        number = by_edition(spot.at(key), edition).number();
    };
    read("dc", saves.dc);
    read("successes_to_stable", saves.successes_to_stable);
    read("failures_to_death", saves.failures_to_death);
    read("natural_1_failures", saves.natural_1_failures);
    read("natural_20_hp", saves.natural_20_hp);
    read("damage_failures", saves.damage_failures);
    read("critical_failures", saves.critical_failures);
    read("concentration_dc_min", saves.concentration_dc_min);
    read("concentration_damage_divisor", saves.concentration_damage_divisor);
    read("concentration_dc_max", saves.concentration_dc_max);
    saves.opponents_die_at_zero = spot.at("opponents_die_at_zero").truth();
}

Effect read_effect(const Spot& spot, const std::set<std::string>& words) {
    Effect effect;
    effect.kind = word_of(spot.at("kind"), effect_kinds);
    if (spot.has("applies_to")) {
        spot.at("applies_to").each([&](const Spot& each) {
            if (words.count(each.text()) == 0)
                throw Wrong{each.pointer, "a stat word of the rulebook", ErrorKind::out_of_range};
            effect.applies_to.push_back(each.text());
        });
    }
    const bool needs_target =
        effect.kind == rules::EffectKind::modifier || effect.kind == rules::EffectKind::own_rolls;
    if (needs_target && effect.applies_to.empty())
        throw Wrong{spot.pointer, "a list \"applies_to\"", ErrorKind::missing_field};
    if (spot.has("bonus_type")) effect.bonus_type = word_of(spot.at("bonus_type"), bonus_types);
    if (spot.has("mode")) effect.mode = word_of(spot.at("mode"), roll_modes);
    effect.amount = number_or(spot, "amount", 0);
    effect.amount_per_value = number_or(spot, "amount_per_value", 0);
    if (spot.has("factor")) effect.factor = spot.at("factor").fraction();
    effect.condition = text_or(spot, "condition");
    effect.from_value = number_or(spot, "from_value", 0);
    effect.is_situational = truth_or(spot, "is_situational");
    effect.note = text_or(spot, "note");
    return effect;
}

ConditionRule
read_condition(const Spot& spot, rules::SrdEdition edition, const std::set<std::string>& words) {
    ConditionRule rule;
    rule.key = spot.at("key").text();
    rule.name = spot.at("name").text();
    rule.group = text_or(spot, "group");
    rule.has_value = truth_or(spot, "has_value");
    rule.max_value = number_or(spot, "max_value", 0);
    if (spot.has("fading")) rule.fading = word_of(spot.at("fading"), fadings);
    rule.night_rest = number_or(spot, "night_rest", 0);
    rule.night_rest_ends = truth_or(spot, "night_rest_ends");
    rule.save_lowers_value = truth_or(spot, "save_lowers_value");
    const Spot printed = spot.has("editions") ? spot.at("editions").at(edition_key(edition)) : spot;
    rule.summary = printed.at("summary").text();
    printed.at("effects").each([&](const Spot& each) {
        rule.effects.push_back(read_effect(each, words));
    });
    return rule;
}

// Effects may only name conditions that the rulebook has; immunities may also name damage types and
// traits.
void check_references(const Spot& list, const Rulebook& rulebook) {
    std::set<std::string> keys;
    for (std::size_t at = 0; at < rulebook.conditions.size(); ++at) {
        if (!keys.insert(rulebook.conditions[at].key).second) {
            throw Wrong{
                list.pointer + "/" + std::to_string(at) + "/key",
                "a key that stands once",
                ErrorKind::duplicate};
        }
    }
    for (std::size_t at = 0; at < rulebook.conditions.size(); ++at) {
        for (const Effect& effect : rulebook.conditions[at].effects) {
            const bool names_condition = effect.kind == rules::EffectKind::implies ||
                                         effect.kind == rules::EffectKind::overrides ||
                                         effect.kind == rules::EffectKind::gains_when_set;
            if (!names_condition || keys.count(effect.condition) == 1) continue;
            throw Wrong{
                list.pointer + "/" + std::to_string(at) + "/effects",
                "the key of a condition instead of \"" + effect.condition + "\"",
                ErrorKind::dangling_reference};
        }
    }
}

Rulebook read_all(const Spot& top, rules::SrdEdition edition) {
    Rulebook rulebook;
    if (top.at("format").text() != "tablewick-rulebook") {
        throw Wrong{top.pointer + "/format", "\"tablewick-rulebook\"", ErrorKind::wrong_format};
    }
    rulebook.family = word_of(top.at("family"), families);
    rulebook.edition = edition;
    rulebook.title = top.at("title").text();
    rulebook.licence = top.at("licence").text();
    read_turn(top.at("turn"), rulebook.turn);
    if (rulebook.family == rules::Family::four_degree)
        read_dying(top.at("dying"), rulebook.dying);
    else
        read_death_saves(top.at("death_saves"), edition, rulebook.death_saves);
    rulebook.damage.halves_and_doubles = top.at("damage").at("halves_and_doubles").truth();
    rulebook.damage.types = top.at("damage").at("types").texts();
    read_stats(top.at("abilities"), rulebook.abilities);
    read_stats(top.at("saves"), rulebook.saves);
    read_stats(top.at("skills"), rulebook.skills);
    const std::set<std::string> words = stat_words(rulebook);
    const Spot list = top.at("conditions").at("list");
    list.each([&](const Spot& each) {
        rulebook.conditions.push_back(read_condition(each, edition, words));
    });
    check_references(list, rulebook);
    std::sort(
        rulebook.conditions.begin(),
        rulebook.conditions.end(),
        [](const auto& one, const auto& other) { return one.name < other.name; }
    );
    return rulebook;
}

} // namespace

base::Result<Rulebook>
read_rulebook(const json& tables, const std::string& file_name, rules::SrdEdition edition) {
    try {
        return read_all({tables, {}}, edition);
    } catch (const Wrong& wrong) {
        return Error{
            wrong.kind,
            "The rulebook is not as expected here: " + wrong.expected + " is needed.",
            {file_name, 0, 0, wrong.pointer},
            "Put the original file back."};
    }
}

base::Result<Rulebook> load_rulebook(
    const std::filesystem::path& assets_folder, rules::Family family, rules::SrdEdition edition
) {
    const char* name = family == rules::Family::four_degree ? "four_degree.json" : "srd5.json";
    const std::filesystem::path path = assets_folder / "rules" / name;
    std::ifstream stream(path, std::ios::binary);
    if (!stream) {
        return Error{
            ErrorKind::not_found,
            "The rulebook cannot be read.",
            {path.string(), 0, 0, {}},
            "Install Tablewick again."};
    }
    std::ostringstream text;
    text << stream.rdbuf();
    json tables = json::parse(text.str(), nullptr, false);
    if (tables.is_discarded()) {
        return Error{
            ErrorKind::not_json,
            "The rulebook is not JSON.",
            {path.string(), 0, 0, {}},
            "Put the original file back."};
    }
    base::Result<Rulebook> rulebook = read_rulebook(tables, path.string(), edition);
    if (rulebook.ok() && rulebook.value().family != family) {
        return Error{
            ErrorKind::wrong_format,
            "The rulebook is of another rule family.",
            {path.string(), 0, 0, "/family"},
            "Put the original file back."};
    }
    return rulebook;
}

} // namespace store
