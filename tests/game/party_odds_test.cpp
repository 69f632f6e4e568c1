#include "game/odds_text.h"
#include "game/party_odds.h"
#include "party_table.h"

using game::OddsQuestion;
using game::PartyOdds;
using game::TurnedRound;
using rules::Family;

namespace {

OddsQuestion ask(const char* stat, int dc) {
    OddsQuestion question;
    question.stat = stat;
    question.dc = dc;
    return question;
}

PartyOdds odds(const game::Campaign& campaign, const OddsQuestion& question) {
    return game::party_odds(campaign, party_table::book(campaign.about.rules), question);
}

} // namespace

TEST_CASE("party_odds: each degree's exact chance, counted by hand") {
    // Player Core (ORC), Checks: ten or more past the DC is critical, a 20 is a degree better and a
    // 1 a degree worse. +10 against DC 20: 20 is critical, 10 to 19 succeed, 2 to 9 fail, 1 fails
    // critically. +5: 20 becomes critical, 15 to 19 succeed, 6 to 14 fail, 1 to 5 fail critically.
    const PartyOdds party = odds(party_table::four_degree(), ask("perception", 20));
    REQUIRE(party.members.size() == 2);
    CHECK(party.members[0].odds == rules::DegreeOdds{1, 8, 10, 1, 20});
    CHECK(party.members[0].needed_roll == 10);
    CHECK(party.members[1].odds == rules::DegreeOdds{5, 9, 5, 1, 20});
    CHECK(party.members[1].needed_roll == 15);
    // 9/20 and 14/20 fail.
    CHECK(party.group.expected_failing == doctest::Approx(23.0 / 20));
    CHECK(party.failing_share == doctest::Approx(23.0 / 40));
    CHECK(party.group.none_succeeds == doctest::Approx(126.0 / 400));
    CHECK(party.at_least_one_succeeds == doctest::Approx(274.0 / 400));
    CHECK(party.group.at_least_half_succeed == doctest::Approx(274.0 / 400));
    CHECK(party.group.all_succeed == doctest::Approx(66.0 / 400));
    REQUIRE(party.best.has_value());
    CHECK(party.members[*party.best].name == "Ysolde");
    CHECK(party.best_chance == doctest::Approx(11.0 / 20));
}

TEST_CASE("party_odds: srd5 knows success and failure only") {
    // SRD 5.1, Using Ability Scores: the total equals or exceeds the DC. +4 against 15: 11 to 20.
    const PartyOdds party = odds(party_table::srd5(), ask("dex", 15));
    REQUIRE(party.members.size() == 2);
    CHECK(party.members[0].odds == rules::DegreeOdds{0, 14, 6, 0, 20});
    CHECK(party.members[1].odds == rules::DegreeOdds{0, 10, 10, 0, 20});
    CHECK(odds(party_table::srd5(), ask("str_check", 15)).members[0].odds.success == 9);
}

TEST_CASE("party_odds: fortune for all, and a character's own disadvantage cancels advantage") {
    // Two dice, the better counts: both 9 or less fail, 81 of 400 ways; both 1 fails critically.
    OddsQuestion question = ask("perception", 20);
    question.mode = rules::RollMode::advantage;
    const PartyOdds party = odds(party_table::four_degree(), question);
    CHECK(party.members[0].odds == rules::DegreeOdds{1, 80, 280, 39, 400});
    // SRD 5.1, Advantage and Disadvantage: with both, one rolls an ordinary d20.
    game::Campaign campaign = party_table::srd5();
    party_table::give(campaign, "Wren", "poisoned", 0);
    question.dc = 15;
    const PartyOdds srd = odds(campaign, question);
    CHECK(srd.members[0].member.mode == rules::RollMode::advantage);
    CHECK(srd.members[1].member.mode == rules::RollMode::normal);
    question.mode = rules::RollMode::disadvantage;
    CHECK(odds(campaign, question).members[1].member.mode == rules::RollMode::disadvantage);
}

TEST_CASE("party_odds: conditions count, and what fails by a rule needs no roll") {
    game::Campaign campaign = party_table::four_degree();
    party_table::give(campaign, "Ysolde", "frightened", 2);
    CHECK(odds(campaign, ask("perception", 20)).members[0].needed_roll == 12);
    game::Campaign srd = party_table::srd5();
    party_table::give(srd, "Wren", "paralyzed", 0);
    const PartyOdds party = odds(srd, ask("dex", 5));
    CHECK(party.members[1].needed_roll == 0);
    CHECK(party.members[1].odds.failure == party.members[1].odds.of);
    CHECK(party.group.all_succeed == 0);
}

TEST_CASE("party_odds: who takes part is whoever plays tonight, until the GM says otherwise") {
    const game::Campaign campaign = party_table::four_degree();
    OddsQuestion question = ask("perception", 20);
    question.takes_part[campaign.party.characters[2].id] = true;
    question.takes_part[campaign.party.characters[0].id] = false;
    const PartyOdds party = odds(campaign, question);
    REQUIRE(party.members.size() == 2);
    CHECK(party.members[0].name == "Orrin");
    CHECK(party.members[1].name == "Bram");
    question.takes_part[campaign.party.characters[1].id] = false;
    question.takes_part[campaign.party.characters[2].id] = false;
    const PartyOdds nobody = odds(campaign, question);
    CHECK(nobody.members.empty());
    CHECK_FALSE(nobody.best.has_value());
    CHECK(nobody.at_least_one_succeeds == 0);
    CHECK(game::useful_dcs(nobody, 20) == game::DcSpan{5, 40});
}

TEST_CASE("party_odds: without a DC the one of the party's level is asked") {
    // GM Core (ORC), table DCs by Level: level 4 (the average of 4 and 3, rounded up) is DC 19.
    const game::Campaign campaign = party_table::four_degree();
    CHECK(game::present_level(campaign.party) == 4);
    CHECK(odds(campaign, OddsQuestion{}).dc == 19);
    // SRD 5.1, Typical Difficulty Classes: medium, 15.
    CHECK(odds(party_table::srd5(), OddsQuestion{}).dc == 15);
    CHECK_FALSE(game::present_level({}).has_value());
    CHECK(game::usual_dc({}, party_table::book(Family::four_degree)) == 15);
}

TEST_CASE("party_odds: the same people at another DC are as if asked anew") {
    const game::Campaign campaign = party_table::four_degree();
    const PartyOdds party = odds(campaign, ask("perception", 20));
    for (const int dc : {0, 11, 25, 99}) {
        const PartyOdds moved = game::odds_at(party, dc);
        const PartyOdds anew = odds(campaign, ask("perception", dc));
        CAPTURE(dc);
        CHECK(moved.dc == dc);
        CHECK(moved.group.exactly == anew.group.exactly);
        CHECK(moved.best_chance == anew.best_chance);
        CHECK(moved.members[1].needed_roll == anew.members[1].needed_roll);
    }
}

TEST_CASE(
    "party_odds: a slider runs from where everybody's modifier is enough to beyond everybody's 20"
) {
    // +5 succeeds on anything up to DC 6; +10 reaches DC 30 with a 20.
    const PartyOdds party = odds(party_table::four_degree(), ask("perception", 20));
    CHECK(game::useful_dcs(party, 20) == game::DcSpan{6, 31});
    CHECK(game::useful_dcs(party, 45) == game::DcSpan{6, 45});
    CHECK(game::useful_dcs(party, 0) == game::DcSpan{1, 31});
}

TEST_CASE("party_odds: turned round, so that members fail two times in five") {
    // +10 fails on DC - 11 faces, +5 on DC - 6: at DC 16 on 5 and 10 of 40 (37.5 %), at DC 17 on 6
    // and 11 (42.5 %). Both are as close; the kinder one is taken.
    const PartyOdds party = odds(party_table::four_degree(), ask("perception", 20));
    const rules::ChosenDc chosen = game::dc_for(party, TurnedRound::members_fail, 40);
    CHECK(chosen.dc == 16);
    CHECK(chosen.failing_share == doctest::Approx(15.0 / 40));
    CHECK(game::odds_at(party, chosen.dc).failing_share == doctest::Approx(chosen.failing_share));
    // One of two fails where 20 faces do: DC 18 has 7 and 12, DC 19 has 8 and 13.
    CHECK(game::dc_for(party, TurnedRound::so_many_fail, 1).dc == 18);
    // The average of +10 and +5 rounds to +8, which fails on 8 faces at DC 17.
    CHECK(party.average_modifier == 8);
    CHECK(game::dc_for(party, TurnedRound::average_roller, 40).dc == 17);
}

TEST_CASE("party_odds: turned round, no DC leaves the field that holds it") {
    game::Campaign campaign = party_table::four_degree();
    campaign.party.characters[0].statistics.perception = 99;
    campaign.party.characters[1].statistics.perception = 99;
    game::link_party(campaign);
    const PartyOdds party = odds(campaign, ask("perception", 20));
    const rules::ChosenDc chosen = game::dc_for(party, TurnedRound::members_fail, 100);
    CHECK(chosen.dc == 99);
    CHECK(chosen.failing_share == doctest::Approx(1.0 / 20)); // the natural 1
}

TEST_CASE("odds_text: chances as a game master reads them") {
    CHECK(game::exact_percent(9, 20) == "45 %");
    CHECK(game::exact_percent(81, 400) == "20.25 %");
    CHECK(game::exact_percent(2, 400) == "0.5 %");
    CHECK(game::exact_percent(0, 20) == "0 %");
    CHECK(game::exact_percent(400, 400) == "100 %");
    CHECK(game::percent_text(0.614) == "61 %");
    CHECK(game::percent_text(0) == "0 %");
    CHECK(game::percent_text(1) == "100 %");
    CHECK(game::percent_text(0.004) == "<1 %");
    CHECK(game::percent_text(0.9961) == ">99 %");
    CHECK(game::count_text(2.34) == "2.3");
    CHECK(game::count_text(2.04) == "2");
    CHECK(game::count_text(0.45 + 0.5 + 0.55 + 0.4 + 0.35) == "2.3"); // 2.25
    CHECK(game::count_text(0.96) == "1");
    CHECK(game::needed_text(0) == "fails");
    CHECK(game::needed_text(1) == "any");
    CHECK(game::needed_text(12) == "12+");
    CHECK(game::needed_text(20) == "20");
    CHECK(game::needed_text(21) == "never");
    CHECK(std::string(game::mode_words(Family::srd5, rules::RollMode::advantage)) == "advantage");
    CHECK(
        std::string(game::mode_words(Family::four_degree, rules::RollMode::disadvantage)) ==
        "misfortune"
    );
}
