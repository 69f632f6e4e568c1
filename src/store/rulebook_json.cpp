#include "store/rulebook_json.h"

#include "store/json_place.h"
#include "store/json_text.h"
#include "store/rulebook_conditions.h"
#include "store/rulebook_spot.h"

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

namespace store {

namespace {

using base::Error;
using base::ErrorKind;
using nlohmann::json;
using rules::Rulebook;

constexpr const char* remedy = "Correct it there, or put the original file back.";

constexpr std::array families = {
    std::pair{std::string_view("four_degree"), rules::Family::four_degree},
    std::pair{std::string_view("srd5"), rules::Family::srd5},
};

// A value that may differ by edition: {"srd_5_1": ..., "srd_5_2_1": ...}.
Spot by_edition(const Spot& spot, rules::SrdEdition edition) {
    return spot.value.is_object() ? spot.at(edition_key(edition)) : spot;
}

void read_stats(
    const Spot& spot,
    std::vector<rules::StatName>& stats,
    const std::vector<rules::StatName>* abilities
) {
    constexpr std::size_t brief_max = 5; // letters of a column head
    std::set<std::string> keys;
    spot.each([&](const Spot& each) {
        each.allow_only({"key", "name", "brief", "ability"});
        rules::StatName stat{
            each.at("key").key(), each.at("name").text(), each.at("brief").text(), {}};
        if (stat.brief.size() > brief_max) throw each.at("brief").wrong("at most five letters");
        if (!keys.insert(stat.key).second)
            throw each.at("key").wrong("a key that stands once", ErrorKind::duplicate);
        if (abilities != nullptr) {
            stat.ability = each.at("ability").key();
            const bool is_known = std::any_of(
                abilities->begin(),
                abilities->end(),
                [&](const rules::StatName& ability) { return ability.key == stat.ability; }
            );
            if (!is_known)
                throw each.at("ability").wrong(
                    "the key of an ability", ErrorKind::dangling_reference
                );
        }
        stats.push_back(stat);
    });
    if (stats.empty()) throw spot.wrong("at least one entry");
}

std::vector<int> read_penalties(const Spot& spot) {
    constexpr int worst = -100;
    std::vector<int> penalties;
    spot.each([&](const Spot& each) { penalties.push_back(each.number(worst, 0)); });
    return penalties;
}

void read_turn(const Spot& spot, rules::TurnRules& turn) {
    constexpr int most_actions = 9;
    constexpr int most_seconds = 3600;
    turn.actions = spot.at("actions").number(1, most_actions);
    turn.reactions = spot.at("reactions").number(0, most_actions);
    turn.round_seconds = spot.at("round_seconds").number(1, most_seconds);
    turn.has_delay = spot.at("has_delay").truth();
    turn.opponents_win_ties = spot.at("opponents_win_ties").truth();
    turn.ties_by_dexterity = spot.at("ties_by_dexterity").truth();
    turn.initiative_stat = spot.at("initiative_stat").key();
    turn.attack_penalty = read_penalties(spot.at("attack_penalty"));
    turn.agile_attack_penalty = read_penalties(spot.at("agile_attack_penalty"));
}

constexpr int figure_max = 100; // far beyond every figure of these tables

void read_dying(const Spot& spot, rules::DyingRules& dying) {
    const auto read = [&](const char* key, int& number, int least) {
        number = spot.at(key).number(least, figure_max);
    };
    read("gained", dying.gained, 1);
    read("gained_on_critical", dying.gained_on_critical, 1);
    read("death_at", dying.death_at, 1);
    read("damage_adds", dying.damage_adds, 0);
    read("critical_damage_adds", dying.critical_damage_adds, 0);
    read("recovery_dc_base", dying.recovery_dc_base, 0);
    read("recovery_critical_success", dying.recovery_critical_success, -figure_max);
    read("recovery_success", dying.recovery_success, -figure_max);
    read("recovery_failure", dying.recovery_failure, -figure_max);
    read("recovery_critical_failure", dying.recovery_critical_failure, -figure_max);
    read("wounded_gained", dying.wounded_gained, 0);
    read("massive_damage_factor", dying.massive_damage_factor, 1);
    read("persistent_flat_dc", dying.persistent_flat_dc, 1);
    read("persistent_helped_dc", dying.persistent_helped_dc, 1);
}

void read_death_saves(const Spot& spot, rules::SrdEdition edition, rules::DeathSaveRules& saves) {
    const auto read = [&](const char* key, int& number, int least) {
        number = by_edition(spot.at(key), edition).number(least, figure_max);
    };
    read("dc", saves.dc, 1);
    read("successes_to_stable", saves.successes_to_stable, 1);
    read("failures_to_death", saves.failures_to_death, 1);
    read("natural_1_failures", saves.natural_1_failures, 0);
    read("natural_20_hp", saves.natural_20_hp, 0);
    read("damage_failures", saves.damage_failures, 0);
    read("critical_failures", saves.critical_failures, 0);
    read("concentration_dc_min", saves.concentration_dc_min, 0);
    read("concentration_damage_divisor", saves.concentration_damage_divisor, 1);
    read("concentration_dc_max", saves.concentration_dc_max, 0);
    saves.opponents_die_at_zero = spot.at("opponents_die_at_zero").truth();
}

void read_damage(const Spot& spot, rules::DamageRules& damage) {
    damage.halves_and_doubles = spot.at("halves_and_doubles").truth();
    std::set<std::string> keys;
    spot.at("types").each([&](const Spot& each) {
        if (!keys.insert(each.key()).second)
            throw each.wrong("a type that stands once", ErrorKind::duplicate);
        damage.types.push_back(each.key());
    });
}

Rulebook read_all(const Spot& top, rules::SrdEdition edition) {
    Rulebook rulebook;
    if (top.at("format").text() != "tablewick-rulebook")
        throw top.at("format").wrong("\"tablewick-rulebook\"", ErrorKind::wrong_format);
    rulebook.family = top.at("family").word(families);
    rulebook.edition = edition;
    rulebook.title = top.at("title").text();
    rulebook.licence = top.at("licence").text();
    read_turn(top.at("turn"), rulebook.turn);
    if (rulebook.family == rules::Family::four_degree)
        read_dying(top.at("dying"), rulebook.dying);
    else
        read_death_saves(top.at("death_saves"), edition, rulebook.death_saves);
    read_damage(top.at("damage"), rulebook.damage);
    read_stats(top.at("abilities"), rulebook.abilities, nullptr);
    read_stats(top.at("saves"), rulebook.saves, &rulebook.abilities);
    read_stats(top.at("skills"), rulebook.skills, &rulebook.abilities);
    const std::string& initiative = rulebook.turn.initiative_stat;
    if (initiative != "perception" && rules::find_stat(rulebook, initiative) == nullptr)
        throw top.at("turn")
            .at("initiative_stat")
            .wrong("perception or the key of a skill or ability", ErrorKind::dangling_reference);
    read_conditions(top.at("conditions"), rulebook);
    return rulebook;
}

// The text of a file; empty when it cannot be opened.
std::optional<std::string> read_file(const std::filesystem::path& path) {
    std::ifstream stream(path, std::ios::binary);
    if (!stream) return {};
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

} // namespace

base::Result<Rulebook>
read_rulebook(const json& tables, const std::string& file_name, rules::SrdEdition edition) {
    try {
        return read_all({tables, {}}, edition);
    } catch (const Wrong& wrong) {
        const std::string found = wrong.found.empty() ? "" : ", not " + wrong.found;
        return Error{
            wrong.kind,
            "The rulebook is not as expected here: " + wrong.expected + " is needed" + found + ".",
            {file_name, 0, 0, wrong.pointer},
            remedy};
    }
}

base::Result<Rulebook> load_rulebook(
    const std::filesystem::path& assets_folder, rules::Family family, rules::SrdEdition edition
) {
    const char* name = family == rules::Family::four_degree ? "four_degree.json" : "srd5.json";
    const std::filesystem::path path = assets_folder / "rules" / name;
    const std::optional<std::string> text = read_file(path);
    if (!text) {
        return Error{
            ErrorKind::not_found,
            "The rulebook cannot be read.",
            {path.string(), 0, 0, {}},
            "Install Tablewick again."};
    }
    const base::Result<Json> parsed = parse_json(*text, path.string());
    if (!parsed.ok()) {
        Error error = parsed.error();
        error.remedy = remedy;
        return error;
    }
    base::Result<Rulebook> rulebook = read_rulebook(json(parsed.value()), path.string(), edition);
    if (rulebook.ok() && rulebook.value().family != family) {
        rulebook = Error{
            ErrorKind::wrong_format,
            "The rulebook is of another rule family.",
            {path.string(), 0, 0, "/family"},
            "Put the original file back."};
    }
    if (!rulebook.ok()) { // people look for lines, not for pointers
        Error error = rulebook.error();
        const base::Place place = place_of_pointer(*text, error.place.pointer);
        error.place.line = place.line;
        error.place.column = place.column;
        return error;
    }
    return rulebook;
}

} // namespace store
