// A session begun, written in, carried over.
#include "game/experience.h"
#include "game/fights.h"
#include "game/hurt.h"
#include "game/session_keeping.h"
#include "party_table.h"

#include <doctest/doctest.h>

#include <utility>

namespace {

constexpr const char* evening = "2026-01-31T19:04:05Z";

const game::Session& session_of(const game::Campaign& campaign, base::Id id) {
    const game::Session* session = game::find_session(campaign.sessions, id);
    REQUIRE(session != nullptr);
    return *session;
}

void tell(game::Campaign& campaign, const std::string& label) {
    game::HistoryLine line;
    line.revision = campaign.history.lines.size() + 1;
    line.label = label;
    campaign.history.lines.push_back(line);
}

} // namespace

TEST_CASE("sessions: a new one is numbered on, and who plays tonight comes") {
    game::Campaign campaign = party_table::four_degree(); // Bram is away
    const base::Id first = game::begin_session(campaign, "2026-01-31");
    CHECK(session_of(campaign, first).number == 1);
    CHECK(session_of(campaign, first).present.size() == 2);
    CHECK(session_of(campaign, first).played_on == "2026-01-31");
    const base::Id second = game::begin_session(campaign, "2026-02-07");
    CHECK(session_of(campaign, second).number == 2);
    CHECK(campaign.sessions.current == second);
    CHECK(game::session_before(campaign.sessions, second)->id == first);
    CHECK(game::session_before(campaign.sessions, first) == nullptr);
    game::remove_session(campaign.sessions, second);
    CHECK(game::current_session(campaign.sessions)->id == first);
}

TEST_CASE("sessions: unfinished goals and open questions go over to the next sheet") {
    game::Campaign campaign;
    const base::Id first = game::begin_session(campaign, "");
    game::Session& sheet = *game::find_session(campaign.sessions, first);
    sheet.goals = {
        {campaign.sessions.next_id++, "Bring the charter to Harrowmouth"},
        {campaign.sessions.next_id++, "Who rang the bell?", true},
        {campaign.sessions.next_id++, "Cross the reeds", false, true}};
    sheet.scenes = {
        {campaign.sessions.next_id++, "The toll house", true},
        {campaign.sessions.next_id++, "The drowned bell"}};
    const base::Id second = game::begin_session(campaign, "");
    const game::Session& next = session_of(campaign, second);
    REQUIRE(next.goals.size() == 2);
    CHECK(next.goals[0].text == "Bring the charter to Harrowmouth");
    CHECK(next.goals[1].is_question);
    REQUIRE(next.scenes.size() == 1);
    CHECK(next.scenes[0].text == "The drowned bell");
    CHECK(next.goals[0].id != session_of(campaign, first).goals[0].id);
}

TEST_CASE("sessions: a line knows the time at the table, the time in the world and the round") {
    game::Campaign campaign = party_table::four_degree();
    campaign.clock.day = 12;
    campaign.clock.second_of_day = 3600;
    const base::Id session = game::begin_session(campaign, "");
    const auto write = [&](const std::string& text) {
        return game::write_note(campaign, session, game::NoteKind::note, text, evening);
    };
    CHECK(write("   ") == base::no_id);
    REQUIRE(write("  They leave at dawn. ") != base::no_id);
    const game::NoteLine& line = session_of(campaign, session).lines.back();
    CHECK(line.text == "They leave at dawn.");
    CHECK(line.day == 12);
    CHECK(line.second_of_day == 3600);
    CHECK(line.round == 0);
    CHECK(line.written_at == evening);
    campaign.encounter.phase = game::Phase::running;
    campaign.encounter.round = 3;
    campaign.encounter.elapsed_seconds = 12; // six seconds a round
    write("The gate falls.");
    const game::NoteLine& in_fight = session_of(campaign, session).lines.back();
    CHECK(in_fight.round == 3);
    CHECK(in_fight.second_of_day == 3612);
    game::change_note(campaign.sessions, session, in_fight.id, "The gate falls shut.");
    game::change_note(campaign.sessions, session, in_fight.id, " ");
    CHECK(session_of(campaign, session).lines.back().text == "The gate falls shut.");
    game::remove_note(campaign.sessions, session, in_fight.id);
    CHECK(session_of(campaign, session).lines.size() == 1);
}

TEST_CASE("sessions: the first sign of a line says what it is") {
    CHECK(
        game::typed_note("! broke the seal") ==
        game::TypedNote{game::NoteKind::deed, "broke the seal"}
    );
    CHECK(game::typed_note(" ?who rang it").kind == game::NoteKind::next);
    CHECK(game::typed_note("*the bell is hollow").kind == game::NoteKind::discovery);
    CHECK(game::typed_note("$ 12 silver").text == "12 silver");
    CHECK(game::typed_note("they wait").kind == game::NoteKind::note);
    CHECK(game::typed_note("!").text.empty());
}

TEST_CASE("sessions: what the history tells offers itself once, and not when it was undone") {
    game::Campaign campaign;
    tell(campaign, "Award 10 XP to the whole party");
    const base::Id session = game::begin_session(campaign, "");
    CHECK(game::note_offers(campaign, session_of(campaign, session), 9).empty());
    tell(campaign, "Hurt Reed Lurker 1 by 3");
    tell(campaign, "Reed Lurker 1 loses 9, is defeated");
    tell(campaign, "Award 40 XP to the whole party");
    tell(campaign, "Undid: Award 40 XP to the whole party");
    tell(campaign, "Award 80 XP to the whole party");
    auto offers = game::note_offers(campaign, session_of(campaign, session), 9);
    REQUIRE(offers.size() == 2);
    CHECK(offers[0].text == "Award 80 XP to the whole party");
    CHECK(offers[0].kind == game::NoteKind::deed);
    CHECK(offers[1].text == "Reed Lurker 1 loses 9, is defeated");
    game::take_offer(campaign, session, offers[0], evening);
    game::put_offer_aside(campaign.sessions, session, offers[1]);
    CHECK(game::note_offers(campaign, session_of(campaign, session), 9).empty());
    REQUIRE(session_of(campaign, session).lines.size() == 1);
    CHECK(session_of(campaign, session).lines[0].text == "Award 80 XP to the whole party");
}

TEST_CASE("sessions: the words that the rules really write are the words that are looked for") {
    fight_table::Table table(rules::Family::four_degree);
    table.foe("Reed Lurker", 10, 18);
    table.hero("Ysolde", 10, 20);
    game::Damage damage;
    damage.amount = 30;
    const base::Id session = game::begin_session(table.campaign, "");
    tell(
        table.campaign,
        game::hurt(table.encounter(), table.rulebook, table.id("Reed Lurker"), damage)
    );
    const auto award = game::award_xp(
        table.campaign, table.rulebook, game::present_characters(table.campaign.party), 80
    );
    REQUIRE(award.ok());
    tell(table.campaign, award.value());
    tell(table.campaign, game::hurt(table.encounter(), table.rulebook, table.id("Ysolde"), damage));
    CHECK(game::note_offers(table.campaign, session_of(table.campaign, session), 9).size() == 3);
}
