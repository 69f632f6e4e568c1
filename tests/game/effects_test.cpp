// Effective numbers, condition by condition, against the published condition entries:
// four-degree: Player Core (ORC), conditions; srd5: SRD 5.1, Appendix PH-A, and SRD 5.2.1, Rules
// Glossary.
#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

Combatant sheet() {
    Combatant combatant;
    combatant.statistics.level = 4;
    combatant.statistics.armor_class = 20;
    combatant.statistics.hit_points = 50;
    combatant.statistics.perception = 10;
    combatant.statistics.abilities = {
        {"str", 4}, {"dex", 3}, {"con", 2}, {"int", 1}, {"wis", 2}, {"cha", 0}};
    combatant.statistics.saves = {
        {"fortitude", 10}, {"reflex", 10}, {"will", 10}, {"dex", 5}, {"str", 5}, {"con", 5}};
    combatant.statistics.skills = {
        {"athletics", 10}, {"stealth", 10}, {"arcana", 10}, {"religion", 10}, {"diplomacy", 10}};
    combatant.statistics.difficulty_classes = {{"spell_dc", 20}, {"class_dc", 20}};
    combatant.statistics.speeds_ft = {{"land", 30}};
    combatant.hp = 50;
    return combatant;
}

const game::Attack sword{"sword", 10, "1d8+4", "slashing", false, false, "", {}};
const game::Attack dagger{"dagger", 10, "1d4+4", "piercing", false, true, "finesse, agile", {}};
const game::Attack bow{"bow", 10, "1d8", "piercing", true, false, "", {}};
const game::Attack bolt{"bolt", 10, "2d8", "cold", true, false, "spell attack", {}};

Combatant with(const std::vector<std::pair<std::string, int>>& conditions) {
    Combatant combatant = sheet();
    Id id = 1;
    for (const auto& [key, value] : conditions) {
        ActiveCondition condition;
        condition.id = id++;
        condition.key = key;
        condition.value = value;
        combatant.conditions.push_back(condition);
    }
    return combatant;
}

struct Row {
    std::string key;
    int value;
    int ac, fortitude, reflex, will, perception, athletics, stealth, arcana, religion, diplomacy,
        melee, finesse, ranged, spell, spell_dc, class_dc;
};

} // namespace

TEST_CASE("effects: every four-degree condition that changes numbers, against its published entry"
) {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    // Changes against the sheet. Columns: AC; saves; Perception; Str, Dex, Int, Wis, Cha skill;
    // Strength melee, finesse melee, ranged, spell attack; spell DC, class DC.
    const std::vector<Row> rows = {
        //                 ac for ref wil per ath ste arc rel dip mel fin ran spe sdc cdc
        {"frightened", 2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2, -2},
        {"sickened", 1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1, -1},
        {"clumsy", 2, -2, 0, -2, 0, 0, 0, -2, 0, 0, 0, 0, -2, -2, 0, 0, 0},
        {"enfeebled", 2, 0, 0, 0, 0, 0, -2, 0, 0, 0, 0, -2, 0, 0, 0, 0, 0},
        {"drained", 1, 0, -1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"stupefied", 1, 0, 0, 0, -1, -1, 0, 0, -1, -1, -1, 0, 0, 0, -1, -1, 0},
        {"off_guard", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"fatigued", 0, -1, -1, -1, -1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"fascinated", 0, 0, 0, 0, 0, -2, -2, -2, -2, -2, -2, 0, 0, 0, 0, 0, 0},
        {"blinded", 0, 0, 0, 0, 0, -4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"prone", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, -2, -2, -2, -2, 0, 0},
        {"grabbed", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"restrained", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"paralyzed", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"confused", 0, -2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"encumbered", 0, -1, 0, -1, 0, 0, 0, -1, 0, 0, 0, 0, -1, -1, 0, 0, 0},
        {"unconscious", 0, -6, 0, -4, 0, -4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"dying", 1, -6, 0, -4, 0, -4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"wounded", 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
        {"quickened", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
    };
    for (const Row& row : rows) {
        CAPTURE(row.key);
        const Combatant combatant = with({{row.key, row.value}});
        const auto check = [&](const char* stat) {
            return game::effective_check(rulebook, combatant, stat).total - 10;
        };
        const auto attack = [&](const game::Attack& each) {
            return game::effective_attack(rulebook, combatant, each).total - 10;
        };
        CHECK(game::effective_ac(rulebook, combatant).total - 20 == row.ac);
        CHECK(check("fortitude") == row.fortitude);
        CHECK(check("reflex") == row.reflex);
        CHECK(check("will") == row.will);
        CHECK(check("perception") == row.perception);
        CHECK(check("athletics") == row.athletics);
        CHECK(check("stealth") == row.stealth);
        CHECK(check("arcana") == row.arcana);
        CHECK(check("religion") == row.religion);
        CHECK(check("diplomacy") == row.diplomacy);
        CHECK(attack(sword) == row.melee);
        CHECK(attack(dagger) == row.finesse);
        CHECK(attack(bow) == row.ranged);
        CHECK(attack(bolt) == row.spell);
        CHECK(game::effective_dc(rulebook, combatant, "spell_dc").total - 20 == row.spell_dc);
        CHECK(game::effective_dc(rulebook, combatant, "class_dc").total - 20 == row.class_dc);
    }
}

TEST_CASE("effects: penalties of one type do not add up, different types do") {
    // Player Core (ORC), bonuses and penalties.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    const Combatant combatant =
        with({{"frightened", 2}, {"sickened", 1}, {"fatigued", 0}, {"prone", 0}, {"grabbed", 0}});
    const game::EffectiveNumber ac = game::effective_ac(rulebook, combatant);
    CHECK(ac.total == 16); // the worst status penalty (2) and one circumstance penalty (2)
    int counted = 0;
    for (const game::Contribution& contribution : ac.contributions)
        counted += contribution.counts ? 1 : 0;
    CHECK(ac.contributions.size() == 4); // frightened, sickened, fatigued, off-guard
    CHECK(counted == 2);
}

TEST_CASE("effects: the highest bonus of a type counts and meets the worst penalty of that type") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    Combatant combatant = with({{"frightened", 1}});
    ActiveCondition bless;
    bless.name = "Bless";
    bless.modifiers = {
        {"attack", 1, rules::BonusType::status, {}}, {"attack", 2, rules::BonusType::status, {}}};
    ActiveCondition song;
    song.name = "Song";
    song.modifiers = {
        {"attack", 1, rules::BonusType::untyped, {}}, {"attack", 1, rules::BonusType::untyped, {}}};
    combatant.conditions.push_back(bless);
    combatant.conditions.push_back(song);
    CHECK(game::effective_attack(rulebook, combatant, sword).total == 10 - 1 + 2 + 2);
}

TEST_CASE("effects: the second and third attack of a turn suffer, agile ones less") {
    // Player Core (ORC), Multiple Attack Penalty: -5 and -10; agile -4 and -8.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    const std::vector<std::vector<int>> rows = {
        {0, 10, 10}, {1, 5, 6}, {2, 0, 2}, {3, 0, 2}, {9, 0, 2}};
    for (const std::vector<int>& row : rows) {
        Combatant combatant = sheet();
        combatant.attacks_made = row[0];
        CAPTURE(row[0]);
        CHECK(game::effective_attack(rulebook, combatant, sword).total == row[1]);
        CHECK(game::effective_attack(rulebook, combatant, dagger).total == row[2]);
    }
}

TEST_CASE("effects: drained costs maximum hit points by level, speed never falls below five feet") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    CHECK(game::effective_hp_max(rulebook, with({{"drained", 2}})) == 50 - 2 * 4);
    CHECK(game::effective_speed_ft(rulebook, with({{"encumbered", 0}}), "land") == 20);
    Combatant slow = with({{"encumbered", 0}});
    slow.statistics.speeds_ft = {{"land", 10}};
    CHECK(game::effective_speed_ft(rulebook, slow, "land") == 5);
    CHECK(game::effective_speed_ft(rulebook, slow, "fly") == 0); // it has none
}

TEST_CASE("effects: doomed lowers the dying value that kills") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    CHECK(game::death_threshold(rulebook, sheet()) == 4);
    CHECK(game::death_threshold(rulebook, with({{"doomed", 1}})) == 3);
    CHECK(game::death_threshold(rulebook, with({{"doomed", 9}})) == 0);
}

TEST_CASE("effects: restrained stands in for grabbed, stunned for slowed, dazzled goes with blinded"
) {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    CHECK_FALSE(game::has_condition(rulebook, with({{"restrained", 0}, {"grabbed", 0}}), "grabbed")
    );
    CHECK_FALSE(game::has_condition(rulebook, with({{"stunned", 1}, {"slowed", 1}}), "slowed"));
    CHECK_FALSE(game::has_condition(rulebook, with({{"blinded", 0}, {"dazzled", 0}}), "dazzled"));
    CHECK(game::has_condition(rulebook, with({{"dying", 1}}), "off_guard")
    ); // by way of unconscious
    CHECK(game::condition_value(rulebook, with({{"encumbered", 0}, {"clumsy", 3}}), "clumsy") == 3);
}

TEST_CASE("effects: srd5 conditions in both editions, against their published entries") {
    using rules::RollMode;
    using rules::SrdEdition;

    struct SrdRow {
        std::string key;
        SrdEdition edition;
        RollMode attack, against, ability, initiative;
        bool fails_dexterity_saves;
        int speed;
        int actions;
    };

    const auto normal = RollMode::normal;
    const auto good = RollMode::advantage;
    const auto bad = RollMode::disadvantage;
    const auto old = SrdEdition::srd_5_1;
    const auto young = SrdEdition::srd_5_2_1;
    const std::vector<SrdRow> rows = {
        {"blinded", old, bad, good, normal, normal, false, 30, 1},
        {"charmed", old, normal, normal, normal, normal, false, 30, 1},
        {"deafened", young, normal, normal, normal, normal, false, 30, 1},
        {"frightened", old, bad, normal, bad, bad, false, 30, 1},
        {"grappled", old, normal, normal, normal, normal, false, 0, 1},
        {"grappled", young, bad, normal, normal, normal, false, 0, 1},
        {"incapacitated", old, normal, normal, normal, normal, false, 30, 0},
        {"incapacitated", young, normal, normal, normal, bad, false, 30, 0},
        {"invisible", old, good, bad, normal, normal, false, 30, 1},
        {"invisible", young, good, bad, normal, good, false, 30, 1},
        {"paralyzed", old, normal, good, normal, normal, true, 0, 0},
        {"petrified", old, normal, good, normal, normal, true, 0, 0},
        {"poisoned", young, bad, normal, bad, bad, false, 30, 1},
        {"prone", old, bad, normal, normal, normal, false, 30, 1}, // attackers: it depends on the
                                                                   // distance
        {"restrained", young, bad, good, normal, normal, false, 0, 1},
        {"stunned", old, normal, good, normal, normal, true, 0, 0},
        {"stunned", young, normal, good, normal, bad, true, 30, 0},
        {"unconscious", old, normal, good, normal, normal, true, 0, 0},
    };
    for (const SrdRow& row : rows) {
        CAPTURE(row.key);
        CAPTURE(static_cast<int>(row.edition));
        const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5, row.edition);
        const Combatant combatant = with({{row.key, 0}});
        CHECK(game::effective_attack(rulebook, combatant, sword).mode == row.attack);
        CHECK(game::attacks_against(rulebook, combatant).mode == row.against);
        CHECK(game::effective_check(rulebook, combatant, "arcana").mode == row.ability);
        CHECK(game::effective_check(rulebook, combatant, "initiative").mode == row.initiative);
        CHECK(game::effective_check(rulebook, combatant, "dex").fails == row.fails_dexterity_saves);
        CHECK(game::effective_speed_ft(rulebook, combatant, "land") == row.speed);
        CHECK(game::actions_at_turn_start(rulebook, combatant) == row.actions);
        CHECK(game::effective_ac(rulebook, combatant).total == 20);
    }
}

TEST_CASE("effects: exhaustion level by level, SRD 5.1 and 5.2.1") {
    const rules::Rulebook& old = rulebook_of(rules::Family::srd5);
    const rules::Rulebook& young = rulebook_of(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    for (int level = 1; level <= 5; ++level) {
        CAPTURE(level);
        const Combatant tired = with({{"exhaustion", level}});
        const auto bad = rules::RollMode::disadvantage;
        CHECK((game::effective_check(old, tired, "arcana").mode == bad) == (level >= 1));
        CHECK((game::effective_attack(old, tired, sword).mode == bad) == (level >= 3));
        CHECK((game::effective_check(old, tired, "con").mode == bad) == (level >= 3));
        CHECK(game::effective_hp_max(old, tired) == (level >= 4 ? 25 : 50));
        CHECK(
            game::effective_speed_ft(old, tired, "land") == (level >= 5   ? 0
                                                             : level >= 2 ? 15
                                                                          : 30)
        );
        CHECK(game::effective_attack(young, tired, sword).total == 10 - 2 * level);
        CHECK(game::effective_check(young, tired, "con").total == 5 - 2 * level);
        CHECK(game::effective_speed_ft(young, tired, "land") == 30 - 5 * level);
        CHECK(game::effective_ac(young, tired).total == 20);
    }
}

TEST_CASE("effects: initiative of srd5 is a Dexterity check, not a Dexterity save") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5);
    CHECK(
        game::effective_check(rulebook, sheet(), "initiative").total == 3
    ); // the ability, not the save of 5
    CHECK(
        game::effective_check(rulebook, with({{"restrained", 0}}), "initiative").mode ==
        rules::RollMode::normal
    );
    CHECK(
        game::effective_check(rulebook, with({{"restrained", 0}}), "dex").mode ==
        rules::RollMode::disadvantage
    );
    Combatant keen = sheet();
    keen.statistics.initiative = 8; // the sheet says otherwise
    CHECK(game::effective_check(rulebook, keen, "initiative").total == 8);
}
