// What a player may forget comes up when it is of use, is ticked off, and comes back with the right
// rest. The moments and refreshments are common practice, no source.
#include "fight_table.h"
#include "game/reminding.h"
#include "game/resting.h"

#include <doctest/doctest.h>

namespace {

using fight_table::Table;
using game::ComesUp;
using game::RefreshedBy;

game::Reminder
reminder(const std::string& text, RefreshedBy refreshed_by, ComesUp comes_up, int uses = 1) {
    game::Reminder made;
    made.text = text;
    made.uses = uses;
    made.refreshed_by = refreshed_by;
    made.comes_up = comes_up;
    return made;
}

// Ysolde and Orrin against a lurker; Ysolde acts first.
struct Fight : Table {
    Fight() : Table(rules::Family::srd5) {
        hero("Ysolde", 30, 18);
        hero("Orrin", 20, 14);
        foe("Lurker", 40, 15);
        initiative("Ysolde", 20);
        initiative("Orrin", 15);
        initiative("Lurker", 10);
    }

    void remember(const std::string& name, std::vector<game::Reminder> reminders) {
        for (const game::Character& each : campaign.party.characters) {
            if (each.name != name) continue;
            game::Character changed = each;
            changed.reminders = std::move(reminders);
            game::update_character(campaign, changed);
            return;
        }
    }

    void begin() { REQUIRE(game::begin_fight(encounter(), rulebook)); }

    // "Orrin: uncanny dodge; ..."
    static std::string words(const std::vector<game::ShownReminder>& shown) {
        std::string all;
        for (const game::ShownReminder& each : shown)
            all += (all.empty() ? "" : "; ") + each.combatant->name + ": " + each.reminder->text;
        return all;
    }

    std::string called() { return words(game::called_reminders(encounter())); }

    std::string of_the_moment() { return words(game::reminders_of_the_moment(encounter())); }

    void use(const std::string& name, std::size_t which = 0) {
        game::use_reminder(encounter(), id(name), who(name).reminders.at(which).id, 1);
    }

    int left(const std::string& name, std::size_t which = 0) {
        return game::uses_left(who(name), who(name).reminders.at(which));
    }
};

} // namespace

TEST_CASE("reminders: whoever is hurt is told of the reaction against it, until it is used") {
    Fight fight;
    fight.remember("Orrin", {reminder("uncanny dodge", RefreshedBy::round, ComesUp::hurt)});
    fight.begin();
    CHECK(fight.called().empty());
    fight.hurt("Ysolde", 5);
    CHECK(fight.called().empty()); // it is not about her
    fight.hurt("Orrin", 5);
    CHECK(fight.called() == "Orrin: uncanny dodge");
    fight.hurt("Orrin", 5);
    CHECK(fight.called() == "Orrin: uncanny dodge"); // once, not twice
    fight.use("Orrin");
    CHECK(fight.called().empty());
    fight.hurt("Orrin", 2);
    CHECK(fight.called().empty()); // used up this round
}

TEST_CASE("reminders: what an ally can do for the hurt and the fallen comes up, too") {
    Fight fight;
    fight.remember(
        "Ysolde",
        {reminder("interpose the shield", RefreshedBy::round, ComesUp::ally_hurt),
         reminder("lay hands on the fallen", RefreshedBy::rest, ComesUp::ally_falls)}
    );
    fight.remember("Orrin", {reminder("last stand", RefreshedBy::rest, ComesUp::falls)});
    fight.begin();
    fight.hurt("Lurker", 5);
    CHECK(fight.called().empty()); // no ally of hers
    fight.hurt("Orrin", 5);
    CHECK(fight.called() == "Ysolde: interpose the shield");
    fight.hurt("Orrin", 15);
    CHECK(
        fight.called() ==
        "Ysolde: lay hands on the fallen; Orrin: last stand; Ysolde: interpose the shield"
    );
}

TEST_CASE("reminders: called up ones go when the turn passes, or are set aside before") {
    Fight fight;
    fight.remember(
        "Orrin",
        {reminder("uncanny dodge", RefreshedBy::round, ComesUp::hurt),
         reminder("rebuke", RefreshedBy::rest, ComesUp::hurt)}
    );
    fight.begin();
    fight.hurt("Orrin", 1);
    CHECK(fight.called() == "Orrin: rebuke; Orrin: uncanny dodge");
    game::set_reminder_aside(
        fight.encounter(), fight.id("Orrin"), fight.who("Orrin").reminders[1].id
    );
    CHECK(fight.called() == "Orrin: uncanny dodge");
    fight.next();
    CHECK(fight.called().empty());
}

TEST_CASE("reminders: those who are down are not told what they could do") {
    Fight fight;
    fight.remember("Ysolde", {reminder("interpose", RefreshedBy::round, ComesUp::ally_hurt)});
    fight.begin();
    fight.hurt("Ysolde", 30);
    fight.hurt("Orrin", 5);
    CHECK(fight.called().empty());
}

TEST_CASE("reminders: initiative, the own turn and the road each have their own") {
    Fight fight;
    fight.remember(
        "Ysolde",
        {reminder("raise the shield", RefreshedBy::turn, ComesUp::own_turn),
         reminder("vigil: +2 to initiative", RefreshedBy::fight, ComesUp::initiative, 0),
         reminder("scouts ahead", RefreshedBy::rest, ComesUp::exploring, 0)}
    );
    CHECK(fight.of_the_moment() == "Ysolde: vigil: +2 to initiative");
    fight.begin();
    CHECK(fight.of_the_moment() == "Ysolde: raise the shield");
    fight.next();
    CHECK(fight.of_the_moment().empty()); // Orrin's turn
    game::end_fight(fight.campaign, fight.rulebook);
    CHECK(fight.of_the_moment() == "Ysolde: scouts ahead");
}

TEST_CASE("reminders: once a round comes back with the round, not with the turn") {
    Fight fight;
    fight.remember(
        "Orrin",
        {reminder("each round", RefreshedBy::round, ComesUp::hurt),
         reminder("each turn", RefreshedBy::turn, ComesUp::own_turn)}
    );
    fight.begin();
    fight.use("Orrin", 0);
    fight.use("Orrin", 1);
    fight.next(); // Orrin's turn
    CHECK(fight.left("Orrin", 0) == 0);
    CHECK(fight.left("Orrin", 1) == 1);
    fight.use("Orrin", 1);
    fight.next(); // the lurker
    CHECK(fight.left("Orrin", 0) == 0);
    fight.next(); // round 2, Ysolde
    CHECK(fight.left("Orrin", 0) == 1);
    CHECK(fight.left("Orrin", 1) == 0);
}

TEST_CASE("reminders: each rest gives back what is named for it and what is shorter") {
    const std::vector<RefreshedBy> all{
        RefreshedBy::turn,
        RefreshedBy::round,
        RefreshedBy::fight,
        RefreshedBy::short_rest,
        RefreshedBy::rest,
        RefreshedBy::dawn,
        RefreshedBy::hand};
    const auto given_back = [&](RefreshedBy happened) {
        game::Combatant combatant;
        for (const RefreshedBy each : all) {
            const auto id = static_cast<base::Id>(each) + 1;
            combatant.reminders.push_back(reminder("x", each, ComesUp::own_turn));
            combatant.reminders.back().id = id;
            combatant.reminders_used[id] = 1;
        }
        game::refresh_reminders(combatant, happened);
        std::string words;
        for (const game::Reminder& each : combatant.reminders)
            if (game::uses_left(combatant, each) == 1)
                words += game::refreshed_words(each.refreshed_by) + "; ";
        return words;
    };
    CHECK(given_back(RefreshedBy::turn) == "each turn; ");
    CHECK(given_back(RefreshedBy::round) == "each round; ");
    CHECK(given_back(RefreshedBy::fight) == "each turn; each round; each fight; ");
    CHECK(
        given_back(RefreshedBy::short_rest) ==
        "each turn; each round; each fight; each short rest; "
    );
    CHECK(
        given_back(RefreshedBy::rest) ==
        "each turn; each round; each fight; each short rest; each night's rest; "
    );
    CHECK(given_back(RefreshedBy::dawn) == "each dawn; ");
    CHECK(given_back(RefreshedBy::hand) == "given back by hand; ");
}

TEST_CASE("reminders: what comes back at dawn waits for six in the morning") {
    Fight fight;
    fight.remember("Ysolde", {reminder("sun wand", RefreshedBy::dawn, ComesUp::exploring, 3)});
    fight.encounter().phase = game::Phase::no_fight;
    fight.campaign.clock = {4, 22 * 3600, {}};
    fight.use("Ysolde");
    fight.use("Ysolde");
    game::let_time_pass(fight.campaign, fight.rulebook, std::int64_t{7} * 3600);
    CHECK(fight.left("Ysolde") == 1); // five o'clock
    game::let_time_pass(fight.campaign, fight.rulebook, 3600);
    CHECK(fight.left("Ysolde") == 3);
    fight.use("Ysolde");
    game::let_time_pass(fight.campaign, fight.rulebook, std::int64_t{16} * 3600);
    CHECK(fight.left("Ysolde") == 2); // the same day
}

TEST_CASE("reminders: where the calendar has another dawn, they wait for that") {
    Fight fight;
    fight.remember("Ysolde", {reminder("sun wand", RefreshedBy::dawn, ComesUp::exploring, 3)});
    fight.encounter().phase = game::Phase::no_fight;
    fight.campaign.calendar.dawn_second = 8 * 3600;
    fight.campaign.clock = {4, 22 * 3600, {}};
    fight.use("Ysolde");
    game::let_time_pass(fight.campaign, fight.rulebook, std::int64_t{9} * 3600);
    CHECK(fight.left("Ysolde") == 2); // seven o'clock
    game::let_time_pass(fight.campaign, fight.rulebook, 3600);
    CHECK(fight.left("Ysolde") == 3);
}

TEST_CASE("reminders: the GM gives the party back what a short rest gives") {
    Fight fight;
    fight.remember("Ysolde", {reminder("second wind", RefreshedBy::short_rest, ComesUp::own_turn)});
    fight.remember("Orrin", {reminder("boon", RefreshedBy::hand, ComesUp::own_turn, 2)});
    fight.use("Ysolde");
    fight.use("Orrin");
    fight.use("Orrin");
    CHECK(game::is_used_up(fight.who("Orrin"), fight.who("Orrin").reminders[0]));
    game::refresh_party(fight.encounter(), RefreshedBy::short_rest);
    CHECK(fight.left("Ysolde") == 1);
    CHECK(fight.left("Orrin") == 0);
}
