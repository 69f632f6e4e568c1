#include "store/samples.h"

#include "game/conditions.h"
#include "game/fights.h"
#include "game/turns.h"
#include "store/campaign_json.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <sstream>

namespace samples {

const rules::Rulebook& rulebook(rules::Family family) {
    static std::map<rules::Family, rules::Rulebook> loaded;
    const auto found = loaded.find(family);
    if (found != loaded.end()) return found->second;
    auto result = store::load_rulebook(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, rules::SrdEdition::srd_5_1
    );
    if (!result) FAIL(base::to_text(result.error()));
    return loaded.emplace(family, std::move(result).value()).first->second;
}

std::string demo_text() {
    std::ifstream stream(std::string(TABLEWICK_SOURCE_DIR) + "/demo_campaign.json");
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

game::Campaign demo() {
    const store::CampaignReading reading = store::read_campaign(demo_text(), "demo_campaign.json");
    if (!reading.loaded) FAIL(base::to_text(reading.error()));
    return reading.loaded->campaign;
}

game::Campaign everything() {
    const base::UnknownFields unknown = {
        {"from_elsewhere", R"({"a":[1,2.5,null]})"}, {"x/y~z", "true"}};
    game::Statistics statistics{
        3,
        0.125,
        17,
        33,
        "6d8+6",
        -4,
        6,
        {{"str", -1}},
        {{"will", 8}},
        {{"stealth", 9}},
        {{"class_dc", 19}},
        {{"fly", 40}},
        "scent",
        "beast",
        game::Hazard::complex,
        4,
        {{"claw", 7, "1d6+2", "slashing", true, true, "agile", 2, unknown}},
        {{"fire", 5, unknown}},
        {{"cold", 3, unknown}},
        {"poison"},
        "notes",
        unknown};
    const game::Reminder reminder{
        7, "Raise the shield", 2, game::RefreshedBy::rest, game::ComesUp::ally_hurt, unknown};
    game::Campaign campaign;
    campaign.about = {
        "Title",
        rules::Family::srd5,
        rules::SrdEdition::srd_5_2_1,
        "ours.json",
        "fast",
        "note",
        unknown};
    campaign.party = {
        {{4,
          "Ysolde \xE7\x81\xAF",
          "A",
          "b",
          false,
          statistics,
          {reminder},
          "n",
          640,
          {{10, 4, 1, unknown}},
          unknown}},
        9,
        unknown};
    campaign.shelf = {{{3, "Lurker", statistics, "notes", unknown}}, 5, unknown};
    campaign.preparation = {
        {{2,
          "Sluice",
          {{3, 4, true, true, unknown}},
          "wet",
          {{"Loose planks", 2, 3, true, unknown}},
          unknown}},
        6,
        unknown};
    campaign.clock = {12, 4321, unknown};
    campaign.calendar = {
        "Count",
        {{1, "Reedmonth", 28, false, false, unknown}},
        {{2, 1, 2, {{4, unknown}, {100, unknown}}, -3, unknown}},
        {"Firstday", "Secondday"},
        1,
        {{3, "Thaw", {1, 5, unknown}, unknown}},
        {{4, "Lamp", 31.25, {-12, 1, 9, unknown}, 60, unknown}},
        {{5, "Fair", game::HolidayRule::nth_weekday, 1, 3, 1, -1, "stalls", unknown}},
        {{6, "After", "AE", 12, true, unknown}},
        {1, 7, unknown},
        100,
        200,
        {1204, 1, 12, unknown},
        7,
        unknown};
    campaign.day_book = {
        {{1, -4, "rained", unknown}}, {{2, "fish spoils", 13, 3600, true, unknown}}, 3, unknown};
    campaign.table_rolls = {
        {{6,
          "stealth",
          18,
          rules::RollMode::disadvantage,
          11,
          4000,
          {{4, "Ysolde \xE7\x81\xAF", 12, -3, rules::Degree::critical_failure, unknown}},
          unknown}},
        {{7, "2d6-9", "4 + 2 - 9", -3, true, 11, 4001, unknown}},
        {"2d6-9"},
        {"d20"},
        8,
        unknown};
    campaign.registered = {
        {{3, "Wrack Ferry", game::Kind::place, "s", "n", base::no_id, "", 0, false, unknown},
         {5, "Selbra", game::Kind::person, "s", "n", 3, "kind", 11, true, unknown}},
        8,
        unknown};
    campaign.sessions = {
        {{21,
          7,
          "The bell",
          "2026-01-31",
          "summary",
          "must know",
          {4},
          {{22, "scene", true, unknown}},
          {{23, "who?", true, true, unknown}},
          {31},
          {2},
          {{24, "ring", true, unknown}},
          {{25, game::NoteKind::discovery, "hollow", "2026-01-31T19:04:05Z", 12, 3600, 3, unknown}},
          5,
          {5},
          {"places", "deeds", "people", "discoveries", "next", unknown},
          unknown}},
        21,
        26,
        unknown};
    campaign.names = {
        {{2, "Selbra", "fen_given", "ferrywoman", "Wrack Ferry", 11, 5, unknown}},
        {{4, "Mine", game::Kind::creature, {"Addel", "\xC3\x89va"}, unknown}},
        {{"Quilla", "fen_given", unknown}},
        9,
        unknown};
    campaign.treasury = {
        {{"cp", "copper", 1, true, unknown}, {"mk", "mark", 250, false, unknown}},
        {{3, game::LedgerKind::split, "Toll money", -480, 11, 2, {4}, 6, unknown}},
        {{5,
          "Reed mask",
          2,
          1250,
          250,
          1,
          4,
          false,
          true,
          game::ItemFate::given_away,
          11,
          2,
          6,
          unknown}},
        7,
        unknown};
    campaign.history = {{{5, "Hurt", 2, 12, 4322, "2026-01-31T19:04:05Z", unknown}}, unknown};
    const game::ActiveCondition condition{
        11,
        "sickened",
        "",
        2,
        {game::DurationKind::timed, 2, game::TurnEdge::start, 3, 60, unknown},
        game::EndCheck{"fortitude", 18, game::TurnEdge::start, unknown},
        "1d6",
        "fire",
        {{"ac", -2, rules::BonusType::status, unknown}},
        2,
        true,
        "marsh",
        unknown};
    game::Combatant opponent;
    opponent.id = 2;
    opponent.name = "Lurker 1";
    opponent.side = game::Side::others;
    opponent.creature = 3;
    opponent.statistics = statistics;
    opponent.hp = 20;
    opponent.temp_hp = 4;
    opponent.standing = game::Standing::delaying;
    opponent.is_dead = true;
    opponent.dies_at_zero = false;
    opponent.initiative = 0;
    opponent.initiative_stat = "stealth";
    opponent.group = 12;
    opponent.is_hidden = opponent.has_acted = opponent.reaction_used = true;
    opponent.actions_left = 2;
    opponent.actions_total = 3;
    opponent.attacks_made = 1;
    opponent.readied = "door opens: shoot";
    opponent.concentrating_on = "fog";
    opponent.death_saves = {1, 2, true, unknown};
    opponent.conditions = {condition};
    opponent.reminders = {reminder};
    opponent.reminders_used = {{7, 1}};
    opponent.delayed_after = 1;
    opponent.is_delay_counted = true;
    opponent.note = "has the ledger";
    opponent.unknown = unknown;
    game::Combatant member;
    member.id = 1;
    member.side = game::Side::party;
    member.character = 4;
    member.standing = game::Standing::in_order;
    campaign.encounter = {
        game::Phase::running,
        "Sluice",
        3,
        12,
        1,
        {1},
        {member, opponent},
        {{13,
          game::PromptKind::persistent_damage,
          2,
          11,
          15,
          8,
          rules::RollMode::advantage,
          "1d6",
          "burning",
          unknown}},
        {{2, "Frightened drops to 1", unknown}},
        {{2, 7, unknown}},
        20,
        unknown};
    campaign.places = {
        {{2,
          "Salt Ferry",
          "temperate_coast",
          "one inn",
          -4,
          base::no_id,
          {{-3, game::Sky::heavy_snow, -7, game::WindStrength::gale, "sent by the hag", unknown}},
          unknown},
         {3, "Sluice", "", "", 0, 2, {}, unknown}},
        2,
        77,
        true,
        5,
        unknown};
    campaign.own_pages = {
        {{3, "Tolls of the Salt Road", "Two coppers a mule,\na silver a wagon.", unknown}},
        4,
        unknown};
    campaign.unknown = unknown;
    game::link_party(campaign);
    return campaign;
}

game::Campaign crowded_fight(int combatants) {
    game::Campaign campaign = demo();
    rules::Dice dice(7);
    game::open_fight(campaign, rulebook(), base::no_id);
    const int wanted = combatants - static_cast<int>(campaign.encounter.combatants.size());
    game::add_creatures(
        campaign, rulebook(), campaign.shelf.creatures.front().id, wanted, false, std::nullopt, dice
    );
    game::roll_missing_initiative(campaign.encounter, rulebook(), dice, std::nullopt);
    REQUIRE(game::begin_fight(campaign.encounter, rulebook()));
    for (const game::Id id : std::vector<game::Id>(campaign.encounter.order)) {
        game::ActiveCondition condition;
        condition.key = "frightened";
        condition.value = 2;
        game::add_condition(campaign.encounter, rulebook(), id, condition);
    }
    return campaign;
}

void play(store::CampaignDocument& document, int count, std::uint64_t seed) {
    store::RehearsalEdits edits(rulebook(document.view().about.rules), seed);
    for (int i = 0; i < count; ++i)
        if (const auto done = store::rehearse_step(document, edits); !done)
            FAIL(base::to_text(done.error()));
}

} // namespace samples
