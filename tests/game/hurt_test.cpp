#include "fight_table.h"

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

Table running(rules::Family family, rules::SrdEdition edition = rules::SrdEdition::srd_5_1) {
    Table table(family, edition);
    table.hero("Bram", 40, 18);
    table.hero("Ysolde", 50, 20);
    table.foe("Lurker", 30, 18);
    table.initiative("Lurker", 20);
    table.initiative("Bram", 15);
    table.initiative("Ysolde", 10);
    REQUIRE(game::begin_fight(table.encounter(), table.rulebook));
    return table;
}

} // namespace

TEST_CASE("hurt: the pad says beforehand what will really be lost") {
    Table table = running(rules::Family::four_degree);
    table.change("Lurker").statistics.resistances = {{"fire", 5, {}}};
    Damage damage;
    damage.amount = 7;
    damage.type = "fire";
    const game::DamagePreview preview =
        game::preview_damage(table.rulebook, table.who("Lurker"), damage);
    CHECK(preview.text == "7 fire, resists 5: loses 2");
    CHECK(preview.hp_after == 28);
    CHECK(table.hurt("Lurker", 7, "fire") == "Lurker loses 2 fire");
    CHECK(table.who("Lurker").hp == 28);
}

TEST_CASE("hurt: four-degree halves or doubles first, then weakness, then resistance, and immunity "
          "takes all") {
    // Player Core (ORC), Damage: steps of applying immunities, weaknesses and resistances.
    struct Row {
        int amount;
        bool half, twice;
        int weakness, resistance;
        bool immune;
        int taken;
    };

    const std::vector<Row> rows = {
        {9, false, false, 0, 0, false, 9},
        {9, true, false, 0, 0, false, 4},
        {9, false, true, 0, 0, false, 18},
        {9, true, false, 3, 0, false, 7},
        {9, true, false, 0, 5, false, 0},
        {9, false, false, 3, 5, false, 7},
        {9, false, true, 0, 5, false, 13},
        {9, false, false, 3, 0, true, 0},
        {0, false, false, 3, 0, false, 0},
        {1, true, false, 3, 0, false, 0}, // half of 1 is 0: no damage, so no weakness
    };
    for (const Row& row : rows) {
        Table table = running(rules::Family::four_degree);
        game::Statistics& statistics = table.change("Lurker").statistics;
        if (row.weakness > 0) statistics.weaknesses = {{"fire", row.weakness, {}}};
        if (row.resistance > 0) statistics.resistances = {{"fire", row.resistance, {}}};
        if (row.immune) statistics.immunities = {"fire"};
        Damage damage{row.amount, "fire", row.half, row.twice, false, false};
        CAPTURE(row.amount);
        CAPTURE(row.taken);
        CHECK(game::preview_damage(table.rulebook, table.who("Lurker"), damage).taken == row.taken);
        damage.type = "cold"; // nothing of the kind resists cold
        CHECK(
            game::preview_damage(table.rulebook, table.who("Lurker"), damage).taken ==
            (row.half    ? row.amount / 2
             : row.twice ? row.amount * 2
                         : row.amount)
        );
    }
}

TEST_CASE("hurt: only the strongest of several resistances counts, and 'all' is one of them") {
    Table table = running(rules::Family::four_degree);
    table.change("Lurker").statistics.resistances = {{"all", 2, {}}, {"fire", 5, {}}};
    CHECK(table.hurt("Lurker", 10, "fire") == "Lurker loses 5 fire");
    CHECK(table.hurt("Lurker", 10, "cold") == "Lurker loses 8 cold");
    CHECK(table.hurt("Lurker", 10, "") == "Lurker loses 10"); // no type: nothing resists it
}

TEST_CASE("hurt: dying while wounded adds the wounded value") {
    // Worked example: Player Core (ORC), knocked out: dropped by a critical hit while wounded 1 is
    // dying 3.
    Table table = running(rules::Family::four_degree);
    table.give("Bram", "wounded", 1);
    CHECK(table.critical("Bram", 40) == "Bram loses 40 slashing, is dying 3");
    Table second = running(rules::Family::four_degree);
    second.give("Bram", "wounded", 1);
    CHECK(second.hurt("Bram", 40) == "Bram loses 40 slashing, is dying 2");
}

TEST_CASE("hurt: damage while dying raises it by one, a critical hit by two, and four kills") {
    Table table = running(rules::Family::four_degree);
    table.hurt("Bram", 40);
    CHECK(table.hurt("Bram", 1) == "Bram loses 1 slashing, dying 2");
    CHECK(table.critical("Bram", 1) == "Bram loses 1 slashing, dies");
    CHECK(table.who("Bram").is_dead);
    CHECK(table.order() == "Lurker Ysolde");
    CHECK(table.heal("Bram", 10) == "Bram is dead and stays so");
}

TEST_CASE("hurt: the doomed die sooner") {
    Table table = running(rules::Family::four_degree);
    table.give("Bram", "doomed", 1);
    table.critical("Bram", 40);
    CHECK(table.hurt("Bram", 1) == "Bram loses 1 slashing, dies"); // dying 3 kills at doomed 1
    Table second = running(rules::Family::four_degree);
    second.give("Bram", "doomed", 4);
    CHECK(second.who("Bram").is_dead); // the threshold is 0
}

TEST_CASE("hurt: a blow of twice the maximum kills outright") {
    // Player Core (ORC), massive damage, from memory.
    Table table = running(rules::Family::four_degree);
    CHECK(table.hurt("Bram", 79) == "Bram loses 79 slashing, is dying 1");
    Table second = running(rules::Family::four_degree);
    CHECK(second.hurt("Bram", 80) == "Bram loses 80 slashing, dies at once");
}

TEST_CASE("hurt: a nonlethal blow leaves one unconscious and not dying") {
    Table table = running(rules::Family::four_degree);
    Damage damage;
    damage.amount = 60;
    damage.is_nonlethal = true;
    CHECK(
        game::hurt(table.encounter(), table.rulebook, table.id("Bram"), damage) ==
        "Bram loses 60, falls unconscious"
    );
    CHECK(table.state({"Bram"}) == "Bram 0 (unconscious; prone)");
    table.heal("Bram", 3);
    CHECK(table.state({"Bram"}) == "Bram 3 (prone)"); // never dying, so not wounded
}

TEST_CASE("hurt: first aid ends dying, leaves wounded, and the fallen sleeps on") {
    Table table = running(rules::Family::four_degree);
    table.hurt("Bram", 40);
    game::stabilize(table.encounter(), table.rulebook, table.id("Bram"));
    CHECK(table.state({"Bram"}) == "Bram 0 (prone; wounded 1; unconscious)");
    CHECK(table.hurt("Bram", 2) == "Bram loses 2 slashing, is dying 2"); // dying 1 and wounded 1
}

TEST_CASE("hurt: an opponent of weight may fall and die like a hero") {
    Table table = running(rules::Family::four_degree);
    table.change("Lurker").dies_at_zero = false;
    CHECK(table.hurt("Lurker", 30) == "Lurker loses 30 slashing, is dying 1");
    CHECK(table.current() == "Lurker"); // fell in its own turn: it stays where it is
}

TEST_CASE("hurt: srd5 halves and doubles by type, rounding down") {
    // SRD 5.1, Combat / Damage Resistance and Vulnerability: 25 resisted is 12; resistance before
    // vulnerability.
    Table table = running(rules::Family::srd5);
    table.change("Lurker").statistics.hit_points = 100;
    table.change("Lurker").hp = 100;
    table.change("Lurker").statistics.resistances = {{"cold", 0, {}}, {"fire", 0, {}}};
    table.change("Lurker").statistics.weaknesses = {{"fire", 0, {}}, {"radiant", 0, {}}};
    table.change("Lurker").statistics.immunities = {"poison"};
    CHECK(table.hurt("Lurker", 25, "cold") == "Lurker loses 12 cold");
    CHECK(table.hurt("Lurker", 25, "fire") == "Lurker loses 24 fire");
    CHECK(table.hurt("Lurker", 10, "radiant") == "Lurker loses 20 radiant");
    CHECK(table.hurt("Lurker", 10, "poison") == "Lurker takes no poison damage");
    CHECK(table.half("Lurker", 15, "cold") == "Lurker loses 3 cold"); // 15, 7, 3
}

TEST_CASE("hurt: srd5 instant death when what is left over reaches the maximum") {
    // SRD 5.1, Combat / Dropping to 0 Hit Points / Instant Death.
    Table table = running(rules::Family::srd5);
    table.hurt("Bram", 30);                                                       // 10 of 40 left
    CHECK(table.hurt("Bram", 49) == "Bram loses 49 slashing, falls unconscious"); // 39 left over
    CHECK(table.hurt("Bram", 40) == "Bram loses 40 slashing, dies at once");
    Table second = running(rules::Family::srd5);
    second.hurt("Bram", 30);
    CHECK(second.hurt("Bram", 50) == "Bram loses 50 slashing, dies at once"); // 40 left over
}

TEST_CASE("hurt: three failed death saves kill") {
    Table table = running(rules::Family::srd5);
    table.hurt("Bram", 45);
    CHECK(table.hurt("Bram", 1) == "Bram loses 1 slashing, 1 failed death saves");
    CHECK(table.hurt("Bram", 1) == "Bram loses 1 slashing, 2 failed death saves");
    CHECK(table.hurt("Bram", 1) == "Bram loses 1 slashing, dies");
}

TEST_CASE("hurt: the stable start over when they are hurt again") {
    Table table = running(rules::Family::srd5);
    table.hurt("Bram", 45);
    game::stabilize(table.encounter(), table.rulebook, table.id("Bram"));
    table.next();
    CHECK(table.asked().empty()); // the stable make no death saves
    table.hurt("Bram", 1);
    CHECK_FALSE(table.who("Bram").death_saves.is_stable);
    CHECK(table.who("Bram").death_saves.failures == 1);
}

TEST_CASE("hurt: knocking out leaves 0 HP in 5.1 and 1 HP in 5.2.1") {
    Damage damage;
    damage.amount = 60;
    damage.is_nonlethal = true;
    for (const auto& [edition, hp] :
         {std::pair{rules::SrdEdition::srd_5_1, 0}, std::pair{rules::SrdEdition::srd_5_2_1, 1}}) {
        Table table = running(rules::Family::srd5, edition);
        game::hurt(table.encounter(), table.rulebook, table.id("Bram"), damage);
        CHECK(table.who("Bram").hp == hp);
        CHECK(game::has_condition(table.rulebook, table.who("Bram"), "unconscious"));
        CHECK(table.who("Bram").death_saves.is_stable);
    }
}

TEST_CASE("hurt: the concentration DC is 10 or half the damage, capped at 30 in 5.2.1") {
    // SRD 5.1, Spellcasting / Concentration; SRD 5.2.1, Rules Glossary / Concentration.
    const rules::Rulebook& old = rulebook_of(rules::Family::srd5);
    const rules::Rulebook& young = rulebook_of(rules::Family::srd5, rules::SrdEdition::srd_5_2_1);
    const std::vector<std::vector<int>> rows = {
        {1, 10, 10}, {20, 10, 10}, {21, 10, 10}, {22, 11, 11}, {61, 30, 30}, {90, 45, 30}};
    for (const std::vector<int>& row : rows) {
        CHECK(game::concentration_dc(old, row[0]) == row[1]);
        CHECK(game::concentration_dc(young, row[0]) == row[2]);
    }
}

TEST_CASE("hurt: each source of damage asks for its own concentration save") {
    Table table = running(rules::Family::srd5);
    table.change("Bram").concentrating_on = "Mist";
    table.hurt("Bram", 4);
    table.hurt("Bram", 26);
    CHECK(table.encounter().prompts.size() == 2);
    CHECK(table.encounter().prompts[1].dc == 13);
    CHECK(table.answer("Bram", 9) == "Bram's concentration 9 against 10: loses Mist");
    CHECK(table.encounter().prompts.empty()); // nothing left to hold
}

TEST_CASE("heal: never above the maximum, and drained lowers it") {
    Table table = running(rules::Family::four_degree);
    table.hurt("Bram", 30);
    table.give("Bram", "drained", 1); // level 4: loses 4 and the maximum is 36
    CHECK(table.who("Bram").hp == 6);
    CHECK(table.heal("Bram", 100) == "Bram regains 30, now 36");
}

TEST_CASE("heal: temporary hit points do not add up and are lost first") {
    Table table = running(rules::Family::four_degree);
    game::give_temp_hp(table.encounter(), table.id("Bram"), 8);
    game::give_temp_hp(table.encounter(), table.id("Bram"), 5);
    CHECK(table.who("Bram").temp_hp == 8);
    CHECK(table.hurt("Bram", 10) == "Bram loses 10 slashing (8 temporary)");
    CHECK(table.who("Bram").hp == 38);
    CHECK(table.who("Bram").temp_hp == 0);
}

TEST_CASE("hurt: a sleeper with hit points left wakes when it is hurt or healed") {
    // Player Core (ORC), conditions, unconscious (from memory).
    Table table = running(rules::Family::four_degree);
    table.give("Bram", "unconscious");
    CHECK(table.hurt("Bram", 5) == "Bram loses 5 slashing, wakes");
    CHECK(table.state({"Bram"}) == "Bram 35 (prone)");
    table.give("Bram", "unconscious");
    CHECK(table.heal("Bram", 2) == "Bram regains 2, now 37, wakes");
}

TEST_CASE("hurt: stone cannot be poisoned, by damage either") {
    // SRD 5.1, Appendix PH-A / Petrified: immune to poison.
    Table table = running(rules::Family::srd5);
    table.give("Bram", "petrified");
    CHECK(table.hurt("Bram", 12, "poison") == "Bram takes no poison damage");
    CHECK(table.hurt("Bram", 12, "fire") == "Bram loses 6 fire");
}

TEST_CASE("hurt: an opponent that was knocked out dies of the next blow") {
    for (const rules::Family family : {rules::Family::four_degree, rules::Family::srd5}) {
        Table table = running(family);
        Damage blow;
        blow.amount = 40;
        blow.is_nonlethal = true;
        CHECK(
            game::hurt(table.encounter(), table.rulebook, table.id("Lurker"), blow) ==
            "Lurker loses 40, is knocked out"
        );
        CHECK_FALSE(table.who("Lurker").is_dead);
        CHECK(table.hurt("Lurker", 1) == "Lurker loses 1 slashing, is defeated");
        CHECK(table.who("Lurker").is_dead);
    }
}

TEST_CASE("hurt: one who lies unconscious at 0 begins to die again and keeps its place") {
    // Player Core (ORC), Hit Points, Healing, and Dying: only a fall to 0 moves the place.
    Table table = running(rules::Family::four_degree);
    table.hurt("Ysolde", 50);
    game::stabilize(table.encounter(), table.rulebook, table.id("Ysolde"));
    table.next();
    const std::string order = table.order();
    CHECK(table.hurt("Ysolde", 3) == "Ysolde loses 3 slashing, is dying 2"); // wounded 1
    CHECK(table.order() == order);
}

TEST_CASE("hurt: a concentration save at disadvantage says so") {
    // SRD 5.1, Appendix PH-A / Exhaustion: saves at disadvantage from level 3.
    Table table = running(rules::Family::srd5);
    table.change("Bram").concentrating_on = "Mist";
    table.give("Bram", "exhaustion", 3);
    table.hurt("Bram", 4);
    CHECK(table.asked() == "Bram: Constitution save DC 10 keeps Mist, at disadvantage");
    CHECK(table.encounter().prompts[0].mode == rules::RollMode::disadvantage);
}

TEST_CASE("hurt: concentration ends for whoever is incapacitated, asleep or dead") {
    // SRD 5.1, Spellcasting / Concentration.
    for (const char* key : {"incapacitated", "stunned", "paralyzed", "unconscious"}) {
        Table table = running(rules::Family::srd5);
        table.change("Bram").concentrating_on = "Mist";
        table.hurt("Bram", 4);
        table.give("Bram", key);
        CAPTURE(key);
        CHECK(table.who("Bram").concentrating_on.empty());
        CHECK(table.asked().empty());
    }
}

TEST_CASE("heal: a dead hero stays dead until the GM says otherwise, between fights too") {
    Table table = running(rules::Family::four_degree);
    table.hurt("Bram", 80);
    CHECK(table.who("Bram").is_dead);
    game::end_fight(table.campaign, table.rulebook);
    CHECK(table.heal("Bram", 5) == "Bram is dead and stays so");
    game::set_defeated(table.encounter(), table.rulebook, table.id("Bram"), false);
    CHECK_FALSE(table.who("Bram").is_dead);
    CHECK(table.who("Bram").standing == game::Standing::absent);
    CHECK(table.heal("Bram", 5) == "Bram regains 5, now 5, awake");
}
