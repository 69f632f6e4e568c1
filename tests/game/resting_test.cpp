// Wounds treated, nights, short and long rests.
#include "game/conditions.h"
#include "game/effects.h"
#include "game/fights.h"
#include "game/resting.h"
#include "game/roster.h"
#include "rules/books.h"

#include <utility>

namespace {

struct Camp {
    rules::Rulebook book;
    game::Campaign campaign;
    rules::Dice dice{5};

    explicit Camp(rules::Rulebook rulebook) : book(std::move(rulebook)) {
        campaign.about.rules = book.family;
        campaign.about.srd_edition = book.edition;
        campaign.clock.day = 12;
        campaign.clock.second_of_day = 20 * 3600;
    }

    base::Id hero(const std::string& name, int hp, int hp_max, int con, int level = 4) {
        game::Character character;
        character.name = name;
        character.statistics.level = level;
        character.statistics.hit_points = hp_max;
        character.statistics.abilities["con"] = con;
        const base::Id id = game::add_character(campaign, character);
        of(id).hp = hp;
        return id;
    }

    game::Combatant& of(base::Id character) {
        for (game::Combatant& combatant : campaign.encounter.combatants)
            if (combatant.character == character) return combatant;
        FAIL("no such character");
        return campaign.encounter.combatants.front();
    }

    void give(base::Id character, const std::string& key, int value) {
        game::ActiveCondition condition;
        condition.key = key;
        condition.value = value;
        REQUIRE(game::add_condition(campaign.encounter, book, of(character).id, condition));
    }

    std::string treat(const std::string& rank, int modifier, std::vector<game::PatientRolls> who) {
        const auto said =
            game::treat_wounds(campaign, book, {rank, modifier, false, std::move(who)}, dice);
        return said.ok() ? said.value() : said.error().message;
    }
};

} // namespace

TEST_CASE("treat wounds: every degree as the book says, with dice from the table") {
    // Player Core (ORC), Treat Wounds, expert DC 20: 2d8+10, 4d8+10 on a critical success, 1d8
    // damage on a critical failure; 10 minutes each, not again within the hour.
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 20, 58, 3);
    const base::Id orrin = camp.hero("Orrin", 20, 58, 3);
    const base::Id bram = camp.hero("Bram", 20, 58, 3);
    const base::Id tiv = camp.hero("Tiv", 20, 58, 3);
    camp.give(ysolde, "wounded", 1);
    camp.give(orrin, "wounded", 1);
    const std::string said =
        camp.treat("expert", 13, {{ysolde, 12, 19}, {orrin, 6, {}}, {bram, 17, 30}, {tiv, 1, 5}});
    CHECK(
        said == "Treat wounds, expert DC 20 with +13: 12, success: Ysolde regains 19, now 39; 6, "
                "failure: Orrin regains nothing; 17, critical success: Bram regains 30, now 50; 1, "
                "critical failure: Tiv loses 5"
    );
    CHECK(camp.of(ysolde).hp == 39);
    CHECK(camp.of(tiv).hp == 15);
    CHECK(game::find_active(camp.of(ysolde), std::string("wounded")) == nullptr);
    CHECK(game::find_active(camp.of(orrin), std::string("wounded")) != nullptr);
    CHECK(camp.campaign.clock.second_of_day == 20 * 3600 + 40 * 60);
    for (const base::Id each : {ysolde, orrin, bram, tiv})
        CHECK(game::is_treated(camp.campaign, each));
    CHECK(
        camp.treat("trained", 13, {{orrin, 12, {}}}) == "Orrin was treated less than an hour ago."
    );
    // Orrin's hour began after Ysolde's ten minutes: 30 minutes are left of it.
    game::let_time_pass(camp.campaign, camp.book, 20 * 60);
    CHECK_FALSE(game::is_treated(camp.campaign, ysolde));
    CHECK(game::is_treated(camp.campaign, orrin));
    game::let_time_pass(camp.campaign, camp.book, 10 * 60);
    CHECK_FALSE(game::is_treated(camp.campaign, orrin));
}

TEST_CASE("treat wounds: a full hour doubles what is restored") {
    // Player Core (ORC), Treat Wounds.
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 5, 58, 3);
    const auto said = game::treat_wounds(
        camp.campaign, camp.book, {"trained", 7, true, {{ysolde, 10, 9}}}, camp.dice
    );
    REQUIRE(said.ok());
    CHECK(camp.of(ysolde).hp == 5 + 18);
    CHECK(camp.campaign.clock.second_of_day == 21 * 3600);
    CHECK_FALSE(game::is_treated(camp.campaign, ysolde)); // the hour is over
}

TEST_CASE("treat wounds: the program rolls what is not typed, and never outside of the dice") {
    Camp camp(four_degree_book());
    for (int round = 0; round < 200; ++round) {
        const base::Id who = camp.hero("Hero", 100, 300, 3);
        camp.treat("expert", 13, {{who, {}, {}}});
        const int change = camp.of(who).hp - 100;
        CHECK(change >= -8);
        CHECK(change <= 42);
        CHECK((change <= 0 || change >= 12));
        game::remove_character(camp.campaign, camp.book, who);
    }
}

TEST_CASE("treat wounds: refused in one sentence, with nothing changed") {
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 20, 58, 3);
    const game::Campaign before = camp.campaign;
    CHECK(camp.treat("expert", 13, {}) == "Nobody is chosen.");
    CHECK(
        camp.treat("wizard", 13, {{ysolde, 12, {}}}) ==
        "Nobody treats wounds with the proficiency \"wizard\"."
    );
    CHECK(camp.treat("expert", 13, {{ysolde, 21, {}}}) == "A d20 shows 1 to 20.");
    CHECK(
        camp.treat("expert", 13, {{ysolde, 12, 27}}) == "Ysolde, success: 2d8+10 gives 12 to 26."
    );
    CHECK(camp.campaign == before);
    game::open_fight(camp.campaign, camp.book, base::no_id);
    CHECK(camp.treat("expert", 13, {{ysolde, 12, {}}}) == "Not while a fight is on.");
    Camp other(srd_book(rules::SrdEdition::srd_5_1));
    CHECK(other.treat("expert", 13, {}) == "This rulebook has no treating of wounds.");
}

TEST_CASE("night's rest: Constitution times level, conditions ease, eight hours pass") {
    // Player Core (ORC), Rest and Daily Preparations: Constitution modifier (at least 1) times
    // level; drained falls by 1, fatigued ends.
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 20, 58, 3);
    const base::Id orrin = camp.hero("Orrin", 55, 58, -1);
    const base::Id bram = camp.hero("Bram", 10, 58, 2);
    camp.give(ysolde, "fatigued", 0);
    camp.give(ysolde, "doomed", 2);
    const auto outlooks =
        game::night_outlooks(camp.campaign, camp.book, {ysolde, orrin}, rules::NightRest::usual);
    REQUIRE(outlooks.size() == 2);
    CHECK(outlooks[0].hp_gained == 12);
    CHECK(outlooks[1].hp_gained == 3); // 4 to gain, 3 to the maximum
    const auto said =
        game::rest_night(camp.campaign, camp.book, {ysolde, orrin}, rules::NightRest::usual);
    REQUIRE(said.ok());
    CHECK(said.value() == "Night's rest: Ysolde +12 HP; Orrin +3 HP");
    CHECK(camp.of(ysolde).hp == 32);
    CHECK(camp.of(bram).hp == 10); // not chosen
    CHECK(game::find_active(camp.of(ysolde), std::string("fatigued")) == nullptr);
    CHECK(game::find_active(camp.of(ysolde), std::string("doomed"))->value == 1);
    CHECK(camp.campaign.clock.day == 13);
    CHECK(camp.campaign.clock.second_of_day == 4 * 3600);
}

TEST_CASE("night's rest: drained eases, and the higher maximum counts at once") {
    // Drained 1 at level 4 lowers the maximum by 4 (Player Core (ORC), Conditions).
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 54, 58, 3);
    camp.give(ysolde, "drained", 1);
    camp.of(ysolde).hp = 54;
    REQUIRE(game::rest_night(camp.campaign, camp.book, {ysolde}, rules::NightRest::usual).ok());
    CHECK(camp.of(ysolde).hp == 58);
}

TEST_CASE("short rest: hit dice are spent, from the table or by the program") {
    // SRD 5.1, Resting: each die adds the Constitution modifier.
    Camp camp(srd_book(rules::SrdEdition::srd_5_1));
    const base::Id wren = camp.hero("Wren", 4, 24, 2, 3);
    camp.campaign.party.characters[0].hit_dice = {{8, 3, 0, {}}};
    const auto said = game::rest_short(camp.campaign, camp.book, {{wren, 8, 2, 9}}, camp.dice);
    REQUIRE(said.ok());
    CHECK(said.value() == "Short rest: Wren regains 13, now 17 (2d8)");
    CHECK(camp.campaign.party.characters[0].hit_dice[0].spent == 2);
    CHECK(camp.campaign.clock.second_of_day == 21 * 3600);
    const auto rolled = game::rest_short(camp.campaign, camp.book, {{wren, 8, 1, {}}}, camp.dice);
    REQUIRE(rolled.ok());
    CHECK(camp.of(wren).hp >= 17 + 3);
    const auto none = game::rest_short(camp.campaign, camp.book, {{wren, 8, 1, {}}}, camp.dice);
    REQUIRE_FALSE(none.ok());
    CHECK(none.error().message == "Wren has 0d8 left.");
    CHECK(game::hit_dice_outlook(camp.campaign, camp.book, {wren, 8, 2, {}}).lowest == 2 + 2 * 2);
}

TEST_CASE("short rest: refused in one sentence, with nothing changed") {
    Camp camp(srd_book(rules::SrdEdition::srd_5_1));
    const base::Id wren = camp.hero("Wren", 4, 24, 2, 3);
    const base::Id joss = camp.hero("Joss", 0, 24, 2, 3);
    for (game::Character& character : camp.campaign.party.characters)
        character.hit_dice = {{8, 3, 0, {}}};
    const game::Campaign before = camp.campaign;
    const auto refusal = [&](std::vector<game::HitDiceSpent> spent) {
        const auto said = game::rest_short(camp.campaign, camp.book, spent, camp.dice);
        return said.ok() ? said.value() : said.error().message;
    };
    CHECK(refusal({}) == "Nobody spends a hit die.");
    CHECK(refusal({{wren, 8, 2, 17}}) == "Wren: 2d8 gives 2 to 16.");
    CHECK(refusal({{wren, 10, 1, {}}}) == "Wren has 0d10 left.");
    CHECK(refusal({{joss, 8, 1, {}}}) == "Joss is at 0 HP and cannot spend hit dice.");
    CHECK(refusal({{wren, 8, 2, {}}, {wren, 8, 2, {}}}) == "The same hit dice are listed twice.");
    CHECK(camp.campaign == before);
}

TEST_CASE("long rest: all hit points, half the hit dice, exhaustion falls") {
    // SRD 5.1, Resting: HP in full, hit dice up to half the total; exhaustion falls by 1.
    Camp camp(srd_book(rules::SrdEdition::srd_5_1));
    const base::Id wren = camp.hero("Wren", 4, 24, 2, 5);
    const base::Id joss = camp.hero("Joss", 0, 24, 2, 5);
    camp.campaign.party.characters[0].hit_dice = {{8, 2, 2, {}}, {10, 3, 2, {}}};
    camp.give(wren, "exhaustion", 2);
    const auto said =
        game::rest_night(camp.campaign, camp.book, {wren, joss}, rules::NightRest::usual);
    REQUIRE(said.ok());
    CHECK(
        said.value() == "Long rest: Wren +20 HP, 2 hit dice; Joss gains nothing (at 0 HP: a long "
                        "rest does nothing)"
    );
    CHECK(camp.of(wren).hp == 24);
    CHECK(camp.of(joss).hp == 0);
    // The largest come back first.
    CHECK(camp.campaign.party.characters[0].hit_dice[1].spent == 0);
    CHECK(camp.campaign.party.characters[0].hit_dice[0].spent == 2);
    CHECK(game::find_active(camp.of(wren), std::string("exhaustion"))->value == 1);
    // SRD 5.2.1 gives all of them back.
    Camp later(srd_book(rules::SrdEdition::srd_5_2_1));
    const base::Id keel = later.hero("Keel", 4, 24, 2, 5);
    later.campaign.party.characters[0].hit_dice = {{8, 5, 4, {}}};
    CHECK(
        game::night_outlooks(later.campaign, later.book, {keel}, rules::NightRest::usual)[0]
            .hit_dice_regained == 4
    );
}

TEST_CASE("rest: what a day may use up is ready again") {
    Camp camp(four_degree_book());
    const base::Id ysolde = camp.hero("Ysolde", 20, 58, 3);
    game::Reminder reminder;
    reminder.text = "Battle prayer";
    reminder.refreshed_by = game::RefreshedBy::rest;
    game::Character changed = camp.campaign.party.characters[0];
    changed.reminders = {reminder};
    game::update_character(camp.campaign, changed);
    const base::Id id = camp.campaign.party.characters[0].reminders[0].id;
    camp.of(ysolde).reminders_used[id] = 1;
    REQUIRE(game::rest_night(camp.campaign, camp.book, {ysolde}, rules::NightRest::usual).ok());
    CHECK(camp.of(ysolde).reminders_used.empty());
}
