#include "store/rulebook_json.h"

#include "store/creature_building_json.h"
#include "store/rulebook_conditions.h"
#include "store/rulebook_spot.h"
#include "store/rulebook_tables.h"

#include <algorithm>
#include <set>

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

Rulebook read_all(const Spot& top, rules::SrdEdition edition) {
    Rulebook rulebook;
    if (top.at("format").text() != "tablewick-rulebook")
        throw top.at("format").wrong("\"tablewick-rulebook\"", ErrorKind::wrong_format);
    rulebook.family = top.at("family").word(families);
    rulebook.edition = edition;
    rulebook.title = top.at("title").text();
    rulebook.licence = top.at("licence").text();
    read_turn_tables(top, rulebook);
    read_difficulty_tables(top, rulebook);
    read_encounter_tables(top, rulebook);
    read_advancement_tables(top, rulebook);
    read_wealth_tables(top, rulebook);
    read_stats(top.at("abilities"), rulebook.abilities, nullptr);
    read_stats(top.at("saves"), rulebook.saves, &rulebook.abilities);
    read_stats(top.at("skills"), rulebook.skills, &rulebook.abilities);
    const std::string& initiative = rulebook.turn.initiative_stat;
    if (initiative != "perception" && rules::find_stat(rulebook, initiative) == nullptr)
        throw top.at("turn")
            .at("initiative_stat")
            .wrong("perception or the key of a skill or ability", ErrorKind::dangling_reference);
    read_conditions(top.at("conditions"), rulebook);
    read_recovery_tables(top, rulebook);
    read_creature_building(top, rulebook);
    return rulebook;
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

} // namespace store
