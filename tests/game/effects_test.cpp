// Effective numbers, condition by condition, against the published condition entries:
// four-degree: Player Core (ORC), conditions; srd5: SRD 5.1, Appendix PH-A, and SRD 5.2.1, Rules
// Glossary.
#include "condition_table.h"

#include <algorithm>

using namespace condition_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

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
    };
    // All the others change other things than these numbers.
    std::vector<Row> all = rows;
    for (const rules::ConditionRule& rule : rulebook.conditions) {
        const bool is_listed = std::any_of(rows.begin(), rows.end(), [&](const Row& row) {
            return row.key == rule.key;
        });
        if (!is_listed)
            all.push_back({rule.key, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
    }
    CHECK(all.size() == 42);
    for (const Row& row : all) {
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

TEST_CASE("effects: deafened slows the initiative of Perception, not of Stealth") {
    // Player Core (ORC), conditions, deafened.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    Combatant deaf = with({{"deafened", 0}});
    CHECK(game::effective_check(rulebook, deaf, "initiative").total == 8);
    CHECK(game::effective_check(rulebook, deaf, "perception").total == 10);
    deaf.initiative_stat = "stealth";
    CHECK(game::effective_check(rulebook, deaf, "initiative").total == 10);
}

TEST_CASE("effects: enfeebled weakens Strength damage, thrown included, and no other") {
    // Player Core (ORC), conditions, enfeebled; damage rolls.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    const game::Attack spear{"spear", 10, "1d6+4", "piercing", true, false, "Thrown 20 feet", {}};
    const game::Attack breath{"breath", 10, "many", "fire", true, false, "", {}};
    const Combatant weak = with({{"enfeebled", 2}});
    CHECK(game::effective_damage_text(rulebook, weak, sword) == "1d8+2");
    CHECK(game::effective_damage_text(rulebook, weak, dagger) == "1d4+2");
    CHECK(game::effective_damage_text(rulebook, weak, spear) == "1d6+2");
    CHECK(game::effective_damage_text(rulebook, weak, bow) == "1d8");
    CHECK(game::effective_damage_text(rulebook, weak, bolt) == "2d8");
    CHECK(game::effective_damage_text(rulebook, weak, breath) == "many"); // left as written
    CHECK(game::effective_damage_text(rulebook, with({{"enfeebled", 4}}), sword) == "1d8");
    CHECK(game::effective_damage_text(rulebook, sheet(), sword) == "1d8+4");
    Combatant inspired = sheet();
    ActiveCondition song;
    song.name = "Song";
    song.modifiers = {{"damage", 1, rules::BonusType::status, {}}};
    inspired.conditions.push_back(song);
    CHECK(game::effective_damage_text(rulebook, inspired, bow) == "1d8+1");
    CHECK(game::effective_damage(rulebook, inspired, sword).contributions.size() == 1);
}

TEST_CASE("effects: a lore has its own modifier and suffers what clouds the mind") {
    // Player Core (ORC), Lore: rests on Intelligence.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    Combatant scholar = with({{"stupefied", 2}});
    scholar.statistics.skills["river_lore"] = 9;
    CHECK(game::effective_check(rulebook, scholar, "river_lore").base == 9);
    CHECK(game::effective_check(rulebook, scholar, "river_lore").total == 7);
    // Player Core (ORC), Skills: an untrained check is the plain attribute modifier (from memory).
    CHECK(scholar.statistics.abilities["int"] == 1);
    CHECK(game::effective_check(rulebook, scholar, "sky_lore").base == 1); // not on this sheet
    CHECK(game::effective_check(rulebook, scholar, "sky_lore").total == -1);
}

TEST_CASE("effects: traits are read in any case") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    const game::Attack rapier{
        "rapier", 10, "1d6", "piercing", false, false, "Finesse, Deadly d8", {}};
    CHECK(game::effective_attack(rulebook, with({{"enfeebled", 2}}), rapier).total == 10);
    CHECK(game::effective_attack(rulebook, with({{"clumsy", 2}}), rapier).total == 8);
}

TEST_CASE("effects: speed under conditions and worded bonuses") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::four_degree);
    const auto speed = [&](const Combatant& combatant) {
        return game::effective_speed_ft(rulebook, combatant, "land");
    };
    CHECK(speed(with({{"encumbered", 0}})) == 20);
    Combatant slow = with({{"encumbered", 0}});
    slow.statistics.speeds_ft = {{"land", 10}};
    const game::EffectiveNumber why = game::effective_speed(rulebook, slow, "land");
    CHECK(why.base == 10);
    REQUIRE(why.contributions.size() == 1);
    CHECK(why.contributions[0].source == "encumbered");
    CHECK(speed(slow) == 5); // a penalty leaves five feet: Player Core (ORC), Speed
    CHECK(game::effective_speed_ft(rulebook, slow, "fly") == 0); // it has none
    // Two status bonuses do not add up; a status and an item bonus do.
    Combatant swift = sheet();
    ActiveCondition haste;
    haste.name = "Haste";
    haste.modifiers = {
        {"speed", 10, rules::BonusType::status, {}},
        {"speed", 5, rules::BonusType::status, {}},
        {"speed", 5, rules::BonusType::item, {}}};
    swift.conditions.push_back(haste);
    CHECK(speed(swift) == 45);
    // srd5: a bonus is halved with the rest (common practice, no source), and helps no one whose
    // speed is 0 (SRD 5.1, Appendix PH-A, grappled).
    const rules::Rulebook& srd = rulebook_of(rules::Family::srd5);
    ActiveCondition stride;
    stride.name = "Stride";
    stride.modifiers = {{"speed", 10, rules::BonusType::untyped, {}}};
    Combatant tired = with({{"exhaustion", 2}});
    tired.conditions.push_back(stride);
    CHECK(game::effective_speed_ft(srd, tired, "land") == 20);
    Combatant held = with({{"grappled", 0}});
    held.conditions.push_back(stride);
    CHECK(game::effective_speed_ft(srd, held, "land") == 0);
}

TEST_CASE("effects: advantage and disadvantage cancel, however many there are of each") {
    // SRD 5.1, Using Ability Scores, Advantage and Disadvantage.
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5);
    const Combatant unseen =
        with({{"invisible", 0}, {"prone", 0}, {"poisoned", 0}, {"restrained", 0}});
    CHECK(game::effective_attack(rulebook, unseen, sword).mode == rules::RollMode::normal);
    CHECK(game::attacks_against(rulebook, unseen).mode == rules::RollMode::normal);
    CHECK(
        game::effective_attack(rulebook, with({{"prone", 0}, {"poisoned", 0}}), sword).mode ==
        rules::RollMode::disadvantage
    );
}

TEST_CASE("effects: what depends on the situation is told with its reason") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5);
    const std::vector<std::string> prone = {
        "prone: advantage from within 5 feet", "prone: disadvantage from further away"};
    CHECK(game::attacks_against(rulebook, with({{"prone", 0}})).notes == prone);
    CHECK(
        game::effective_attack(rulebook, with({{"poisoned", 0}}), sword).notes ==
        std::vector<std::string>{"poisoned: disadvantage"}
    );
    CHECK(
        game::effective_check(rulebook, with({{"stunned", 0}}), "dex").notes ==
        std::vector<std::string>{"stunned: fails"}
    );
}

TEST_CASE("effects: in srd5 a bonus to Strength checks reaches neither attacks nor saves") {
    const rules::Rulebook& rulebook = rulebook_of(rules::Family::srd5);
    Combatant strong = sheet();
    ActiveCondition gift;
    gift.name = "Gift";
    gift.modifiers = {{"str_checks", 2, rules::BonusType::untyped, {}}};
    strong.conditions.push_back(gift);
    CHECK(game::effective_attack(rulebook, strong, sword).total == 10);
    CHECK(game::effective_check(rulebook, strong, "str").total == 5);
    CHECK(game::effective_check(rulebook, strong, "athletics").total == 12);
}
