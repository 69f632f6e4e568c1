// What must hold for the turn order whatever a GM does at the table. Thousands of seeded steps for
// each family; who has had a turn is counted here, apart from the program's own marks.
#include "fight_table.h"

#include <random>
#include <set>

using namespace fight_table; // NOLINT(google-build-using-namespace): a test reads as a story

namespace {

// Counts turns that were ended, and who was disturbed, round by round.
struct RoundBook {
    int round = 1;
    std::set<Id> from_the_start; // in the order when the round began
    std::set<Id> disturbed;      // delayed, fell, went, came, was moved: may miss its turn
    std::map<Id, int> turns;

    void open(const Encounter& encounter) {
        round = encounter.round;
        from_the_start = {encounter.order.begin(), encounter.order.end()};
        disturbed.clear();
        turns.clear();
        for (const Combatant& combatant : encounter.combatants)
            if (combatant.standing == game::Standing::delaying) disturbed.insert(combatant.id);
    }

    void close() const {
        for (const auto& turn : turns) {
            CAPTURE(turn.first);
            CHECK(turn.second <= 1); // nobody has two turns in one round
        }
        for (const Id id : from_the_start) {
            CAPTURE(id);
            CAPTURE(round);
            if (disturbed.count(id) == 0) CHECK(turns.count(id) == 1); // and nobody has none
        }
    }
};

class Hand {
public:
    Hand(rules::Family family, unsigned seed) : table_(family), random_(seed) {
        for (const char* name : {"A", "B", "C", "D"})
            table_.hero(name, 40, 15);
        for (const char* name : {"X", "Y", "Z"})
            table_.foe(name, 25, 15);
        game::roll_missing_initiative(
            table_.encounter(), table_.rulebook, table_.dice, std::nullopt
        );
        REQUIRE(game::begin_fight(table_.encounter(), table_.rulebook));
        book_.open(table_.encounter());
    }

    void step() {
        Encounter& encounter = table_.encounter();
        const std::string upcoming = name_of(game::upcoming(encounter, 1));
        const Id before = encounter.current;
        const bool is_ended = act();
        check_order(encounter);
        check_line();
        if (before != base::no_id && is_ended) book_.turns[before] += 1;
        if (encounter.round != book_.round) {
            CHECK(encounter.round == book_.round + 1);
            CHECK(encounter.elapsed_seconds == (encounter.round - 1) * 6);
            book_.close();
            book_.open(encounter);
        }
        if (is_plain_advance_) CHECK(table_.current() == upcoming);
        if (encounter.order.empty()) revive_all();
    }

    const Table& table() const { return table_; }

private:
    std::size_t pick(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(random_);
    }

    std::string name_of(Id id) const {
        const Combatant* combatant = game::find_combatant(table_.campaign.encounter, id);
        return combatant == nullptr ? "nobody" : combatant->name;
    }

    Id someone() {
        const auto& combatants = table_.encounter().combatants;
        return combatants[pick(combatants.size())].id;
    }

    // True if the turn of the one that was current has been ended by it.
    bool act() {
        is_plain_advance_ = false;
        Encounter& encounter = table_.encounter();
        const rules::Rulebook& rulebook = table_.rulebook;
        const Id who = someone();
        const Id current = encounter.current;
        const auto disturb = [&](Id id) { book_.disturbed.insert(id); };
        switch (pick(16)) {
        case 0:
            if (game::delay_turn(encounter, rulebook)) disturb(current);
            return false;
        case 1: return game::return_from_delay(encounter, rulebook, who);
        case 2: {
            Damage damage;
            damage.amount = static_cast<int>(pick(20));
            damage.type = "fire";
            damage.is_critical = pick(5) == 0;
            const int hp = game::find_combatant(encounter, who)->hp;
            game::hurt(encounter, rulebook, who, damage);
            if (hp > 0 && game::find_combatant(encounter, who)->hp == 0) disturb(who);
            if (game::find_combatant(encounter, who)->standing != game::Standing::in_order)
                disturb(who);
            return false;
        }
        case 3:
            game::heal(encounter, rulebook, who, static_cast<int>(pick(30)));
            disturb(who);
            return false;
        case 4:
            game::set_defeated(encounter, rulebook, who, pick(2) == 0);
            disturb(who);
            return false;
        // Moved by hand, by a new number, into a group: no turn may be lost or won by these.
        case 5: game::move_in_order(encounter, who, someone()); return false;
        case 6:
            game::set_initiative(encounter, rulebook, who, static_cast<int>(pick(30)));
            return false;
        case 7:
            game::make_group(encounter, rulebook, {who, someone()});
            if (pick(2) == 0) game::leave_group(encounter, who);
            return false;
        case 8: answer(); return false;
        case 9: table_.give(name_of(who), "frightened", 2); return false;
        case 10: come_and_go(who); return false;
        default:
            is_plain_advance_ = true;
            game::advance_turn(encounter, rulebook);
            return true;
        }
    }

    void answer() {
        Encounter& encounter = table_.encounter();
        if (encounter.prompts.empty()) return;
        const game::Prompt prompt = encounter.prompts[pick(encounter.prompts.size())];
        game::answer_prompt(
            encounter, table_.rulebook, prompt.id, game::roll_for_prompt(prompt, table_.dice)
        );
        book_.disturbed.insert(prompt.combatant); // it may die of it
    }

    void come_and_go(Id who) {
        Encounter& encounter = table_.encounter();
        const auto foes = static_cast<int>(encounter.combatants.size()) - 4;
        if (foes < 6) {
            const int initiative = static_cast<int>(pick(30));
            book_.disturbed.insert(game::add_stranger(
                encounter, table_.rulebook, "New", game::Side::opponents, 20, 15, initiative
            ));
        } else {
            book_.disturbed.insert(who);
            game::remove_combatant(encounter, table_.rulebook, who);
            game::join_fight(encounter, table_.rulebook, who, 12);
        }
    }

    // Everybody in the line once, those that delay behind somebody who is in it.
    void check_line() const {
        const Encounter& encounter = table_.campaign.encounter;
        for (const Combatant& combatant : encounter.combatants) {
            if (combatant.standing != game::Standing::delaying) continue;
            const Combatant* behind = game::find_combatant(encounter, combatant.delayed_after);
            if (behind == nullptr)
                CHECK(combatant.delayed_after == base::no_id);
            else
                CHECK(
                    (behind->standing == game::Standing::in_order ||
                     behind->standing == game::Standing::delaying)
                );
        }
    }

    void revive_all() {
        std::vector<Id> all;
        for (const Combatant& combatant : table_.encounter().combatants)
            all.push_back(combatant.id);
        for (const Id id : all) {
            game::set_defeated(table_.encounter(), table_.rulebook, id, false);
            game::join_fight(table_.encounter(), table_.rulebook, id, 10);
            Combatant& combatant = *game::find_combatant(table_.encounter(), id);
            combatant.hp = combatant.statistics.hit_points;
            combatant.conditions.clear();
        }
        REQUIRE(!table_.encounter().order.empty());
        book_.open(table_.encounter());
        book_.disturbed.insert(all.begin(), all.end());
    }

    Table table_;
    std::mt19937 random_;
    RoundBook book_;
    bool is_plain_advance_ = false;
};

} // namespace

TEST_CASE("turns: whatever a GM does, everybody acts once a round and the order stays whole") {
    for (const rules::Family family : {rules::Family::four_degree, rules::Family::srd5}) {
        for (unsigned seed = 1; seed <= 8; ++seed) {
            CAPTURE(seed);
            Hand hand(family, seed);
            for (int step = 0; step < 1500; ++step)
                hand.step();
            CHECK(game::find_problems(hand.table().campaign, hand.table().rulebook).empty());
        }
    }
}
