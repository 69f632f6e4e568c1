#include "fixtures.h"

#include "game/fights.h"
#include "game/roster.h"
#include "game/turns.h"
#include "store/climate_json.h"
#include "store/prices.h"
#include "store/reference_json.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <utility>
#include <vector>

namespace fixtures {
namespace {

struct Numbers {
    int level;
    int armor_class;
    int hit_points;
    int perception;
    int fortitude; // or con
    int reflex;    // or dex
    int will;      // or wis
};

game::Statistics four_degree_numbers(const Numbers& numbers) {
    game::Statistics statistics;
    statistics.level = numbers.level;
    statistics.armor_class = numbers.armor_class;
    statistics.hit_points = numbers.hit_points;
    statistics.perception = numbers.perception;
    statistics.saves = {
        {"fortitude", numbers.fortitude}, {"reflex", numbers.reflex}, {"will", numbers.will}};
    statistics.skills = {{"stealth", numbers.reflex + 2}};
    statistics.speeds_ft = {{"land", 25}};
    game::Attack attack;
    attack.name = "blade";
    attack.bonus = 12;
    attack.damage = "1d8+4";
    attack.damage_type = "slashing";
    statistics.attacks.push_back(attack);
    return statistics;
}

game::Statistics srd5_numbers(const Numbers& numbers) {
    game::Statistics statistics;
    statistics.level = numbers.level;
    statistics.challenge = 0.5;
    statistics.armor_class = numbers.armor_class;
    statistics.hit_points = numbers.hit_points;
    statistics.perception = numbers.perception;
    statistics.abilities = {
        {"str", 1},
        {"dex", numbers.reflex},
        {"con", numbers.fortitude},
        {"int", 0},
        {"wis", numbers.will},
        {"cha", 0}};
    statistics.saves = statistics.abilities;
    statistics.skills = {{"stealth", numbers.reflex}};
    statistics.speeds_ft = {{"land", 30}};
    return statistics;
}

void add_character(game::Campaign& campaign, const char* name, const game::Statistics& statistics) {
    game::Character character;
    character.name = name;
    character.statistics = statistics;
    game::add_character(campaign, std::move(character));
}

base::Id
add_creature(game::Campaign& campaign, const char* name, const game::Statistics& statistics) {
    game::Creature creature;
    creature.name = name;
    creature.statistics = statistics;
    return game::add_creature(campaign.shelf, std::move(creature));
}

game::PreparedCreatures some(base::Id creature, int count) {
    game::PreparedCreatures prepared;
    prepared.creature = creature;
    prepared.count = count;
    return prepared;
}

rules::Rulebook loaded(rules::Family family) {
    auto book =
        store::load_rulebook(TABLEWICK_SOURCE_DIR "/assets", family, rules::SrdEdition::srd_5_1);
    REQUIRE_MESSAGE(book.ok(), base::to_text(book.error()));
    return book.value();
}

} // namespace

const rules::Rulebook& four_degree() {
    static const rules::Rulebook book = loaded(rules::Family::four_degree);
    return book;
}

const rules::Rulebook& srd5() {
    static const rules::Rulebook book = loaded(rules::Family::srd5);
    return book;
}

const game::Climates& climates() {
    static const store::ClimateReading reading =
        store::load_climates(TABLEWICK_SOURCE_DIR "/assets");
    REQUIRE(reading.problems.empty());
    return reading.climates;
}

namespace {

rules::PriceBook prices(rules::Family family) {
    auto read =
        store::load_prices(TABLEWICK_SOURCE_DIR "/assets", family, rules::SrdEdition::srd_5_2_1);
    REQUIRE_MESSAGE(read.ok(), base::to_text(read.error()));
    return std::move(read).value();
}

} // namespace

const rules::PriceBook& four_degree_prices() {
    static const rules::PriceBook book = prices(rules::Family::four_degree);
    return book;
}

const rules::PriceBook& srd5_prices() {
    static const rules::PriceBook book = prices(rules::Family::srd5);
    return book;
}

const game::Reference& reference() {
    static const base::Result<game::Reference> read = store::load_reference(
        TABLEWICK_SOURCE_DIR "/assets", rules::Family::four_degree, rules::SrdEdition::srd_5_1
    );
    REQUIRE(read.ok());
    return read.value();
}

game::Campaign sluice_campaign() {
    game::Campaign campaign;
    campaign.about.title = "Salt Road Charter";
    add_character(campaign, "Ysolde Marr", four_degree_numbers({4, 22, 52, 10, 11, 8, 9}));
    add_character(campaign, "Orrin Tace", four_degree_numbers({4, 20, 44, 9, 9, 12, 8}));
    add_character(campaign, "Bram Oake", four_degree_numbers({4, 19, 50, 8, 12, 7, 10}));
    add_character(campaign, "Sefa Lunn", four_degree_numbers({4, 18, 38, 11, 8, 9, 12}));
    add_character(campaign, "Tiv Hollow", four_degree_numbers({4, 21, 40, 12, 8, 13, 9}));
    game::Character& ysolde = campaign.party.characters.front();
    game::Reminder reminder;
    reminder.id = campaign.party.next_id++;
    reminder.text = "Second breath";
    ysolde.reminders.push_back(reminder);

    game::Statistics lurker = four_degree_numbers({2, 17, 34, 8, 9, 8, 5});
    lurker.resistances.push_back({"fire", 5, {}});
    game::Statistics mudcaller = four_degree_numbers({4, 20, 60, 10, 8, 9, 13});
    mudcaller.weaknesses.push_back({"cold", 5, {}});
    mudcaller.immunities.emplace_back("poison");
    const base::Id lurkers = add_creature(campaign, "Reed Lurker", lurker);
    const base::Id caller = add_creature(campaign, "Mudcaller", mudcaller);
    add_creature(campaign, "Sluice Wight", four_degree_numbers({3, 18, 45, 9, 11, 6, 8}));

    game::PreparedEncounter ambush;
    ambush.name = "Ambush at the sluice";
    ambush.creatures = {some(lurkers, 3), some(caller, 1)};
    game::add_prepared(campaign.preparation, ambush);
    return campaign;
}

game::Campaign pier_campaign() {
    game::Campaign campaign;
    campaign.about.title = "Lantern Quay";
    campaign.about.rules = rules::Family::srd5;
    add_character(campaign, "Perrin Dask", srd5_numbers({3, 18, 28, 1, 2, 0, 1}));
    add_character(campaign, "Wren Halloway", srd5_numbers({3, 14, 24, 5, 2, 2, 5}));
    add_character(campaign, "Joss Keel", srd5_numbers({3, 15, 21, 3, 1, 4, 1}));
    game::Statistics eater = srd5_numbers({1, 13, 40, 2, 3, 1, 0});
    eater.resistances.push_back({"fire", 0, {}});
    const base::Id rats = add_creature(campaign, "Dock Rat", srd5_numbers({1, 12, 7, 0, 1, 2, 0}));
    const base::Id lamp = add_creature(campaign, "Lamp Eater", eater);
    game::PreparedEncounter pier;
    pier.name = "The dark pier";
    pier.creatures = {some(rats, 2), some(lamp, 1)};
    game::add_prepared(campaign.preparation, pier);
    return campaign;
}

game::Campaign opened(game::Campaign campaign, const rules::Rulebook& rulebook) {
    game::open_fight(campaign, rulebook, campaign.preparation.encounters.front().id);
    return campaign;
}

game::Campaign running(game::Campaign campaign, const rules::Rulebook& rulebook) {
    static const std::map<std::string, int> totals{
        {"Ysolde Marr", 24},
        {"Reed Lurker 2", 21},
        {"Orrin Tace", 19},
        {"Reed Lurker 1", 17},
        {"Sefa Lunn", 15},
        {"Reed Lurker 3", 13},
        {"Mudcaller", 12},
        {"Tiv Hollow", 9},
        {"Bram Oake", 6},
        {"Wren Halloway", 18},
        {"Dock Rat 1", 15},
        {"Perrin Dask", 14},
        {"Lamp Eater", 11},
        {"Joss Keel", 8},
        {"Dock Rat 2", 5}};
    campaign = opened(std::move(campaign), rulebook);
    std::vector<std::pair<base::Id, int>> wanted;
    for (const game::Combatant& combatant : campaign.encounter.combatants) {
        const auto found = totals.find(combatant.name);
        REQUIRE_MESSAGE(found != totals.end(), combatant.name);
        wanted.emplace_back(combatant.id, found->second);
    }
    for (const auto& [id, total] : wanted)
        game::set_initiative(campaign.encounter, rulebook, id, total);
    REQUIRE(game::begin_fight(campaign.encounter, rulebook));
    return campaign;
}

} // namespace fixtures
