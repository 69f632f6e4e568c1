// The next good name.
#include "base/unicode.h"
#include "game/name_distance.h"
#include "game/name_drawing.h"
#include "game/name_growing.h"
#include "game/name_keeping.h"
#include "game/name_sound.h"
#include "store/name_lists.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <map>

namespace {

const std::vector<game::ReadyNameList>& ready_lists() {
    static const std::vector<game::ReadyNameList> lists =
        store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
    return lists;
}

const std::vector<std::string>& names_of(const std::string& key) {
    for (const game::ReadyNameList& list : ready_lists())
        if (list.key == key) return list.names;
    FAIL("no list " << key);
    return ready_lists().front().names;
}

// The largest value that chance alone exceeds once in a thousand runs (Boost.Math).
double chi_square_limit(std::size_t outcomes) {
    const boost::math::chi_squared spread(static_cast<double>(outcomes - 1));
    return boost::math::quantile(spread, 0.999);
}

double chi_square(const std::vector<double>& expected, const std::vector<int>& counts) {
    double sum = 0;
    for (std::size_t at = 0; at < counts.size(); ++at)
        sum += (counts[at] - expected[at]) * (counts[at] - expected[at]) / expected[at];
    return sum;
}

game::NamesLeft left_of(
    const std::vector<std::string>& names,
    const game::Campaign& campaign,
    const game::NameWishes& wishes = {}
) {
    game::NamesInPlay in_play;
    in_play.follow(campaign);
    return game::names_left(
        names, in_play, game::recent_initials(campaign.names, campaign.clock.day), wishes
    );
}

void use(game::Campaign& campaign, const std::string& name) {
    game::use_name(campaign, {name, "fen_given", game::Kind::person, "", ""});
}

bool has(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

} // namespace

TEST_CASE("names: every name of a list is drawn equally often") {
    const std::vector<std::string> names{"Addel", "Bodwin", "Corra", "Dunna", "Elwick", "Fenna"};
    const game::NamesLeft left = left_of(names, {});
    rules::Dice dice(11);
    std::vector<int> counts(names.size());
    for (int i = 0; i < 12000; ++i) {
        const std::string drawn = game::draw_names(left, 1, {}, dice).at(0);
        counts.at(
            static_cast<std::size_t>(std::find(names.begin(), names.end(), drawn) - names.begin())
        ) += 1;
    }
    const std::vector<double> expected(names.size(), 2000.0);
    CHECK(chi_square(expected, counts) < chi_square_limit(names.size()));
}

TEST_CASE("names: the same dice give the same names") {
    const game::NamesLeft left = left_of(names_of("fen_given"), {});
    rules::Dice one(3);
    rules::Dice other(3);
    CHECK(game::draw_names(left, 5, {}, one) == game::draw_names(left, 5, {}, other));
}

TEST_CASE("names: used, barred, passed by and too similar names are left out and counted") {
    game::Campaign campaign;
    use(campaign, "Tollick");
    const std::vector<std::string> names{
        "Tollick", "Tallick", "Korra", "Kedrick", "Wabra", "Obrick"};
    game::NameWishes wishes;
    wishes.barred.insert(U"k");
    wishes.passed.insert("wabra");
    game::NamesLeft left = left_of(names, campaign, wishes);
    CHECK(left.fresh == std::vector<std::string>{"Obrick"});
    CHECK(left.used == 1);
    CHECK(left.similar == 1);
    CHECK(left.barred == 2);
    CHECK(left.passed == 1);
    wishes.allows_similar = true;
    left = left_of(names, campaign, wishes);
    CHECK(left.similar == 0);
    CHECK(left.echoing == std::vector<std::string>{"Tallick"}); // T was just given
}

TEST_CASE("names: nothing left says why") {
    game::Campaign campaign;
    use(campaign, "Tollick");
    const game::NamesLeft left = left_of({"Tollick", "Tallick"}, campaign);
    rules::Dice dice(1);
    CHECK(game::draw_names(left, 3, {}, dice).empty());
    CHECK(
        game::nothing_left_text(left) == "No good name is left in this list: 1 in play, 1 too "
                                         "like a name in play."
    );
}

TEST_CASE("names: an initial of the last twelve or of today comes last") {
    game::Campaign campaign;
    campaign.clock.day = 3;
    use(campaign, "Quilla"); // day 3, more than twelve names ago
    for (const char* name :
         {"Addel",
          "Bodwin",
          "Corra",
          "Dunna",
          "Elwick",
          "Fenna",
          "Gorrel",
          "Hallow",
          "Idrick",
          "Juddel",
          "Kedrick",
          "Lissick"})
        use(campaign, name);
    CHECK(game::recent_initials(campaign.names, 3).last.size() == 12);
    CHECK(game::recent_initials(campaign.names, 3).today.count(U"q") == 1);
    CHECK(game::recent_initials(campaign.names, 4).today.empty());
    const game::NamesLeft left = left_of({"Queddick", "Amsel", "Mulla"}, campaign);
    CHECK(left.fresh == std::vector<std::string>{"Mulla"});
    CHECK(left.repeating == std::vector<std::string>{"Queddick"});
    CHECK(left.echoing == std::vector<std::string>{"Amsel"});
    rules::Dice dice(1);
    CHECK(
        game::draw_names(left, 3, {}, dice) ==
        std::vector<std::string>{"Mulla", "Queddick", "Amsel"}
    );
}

TEST_CASE("names: those that stand beside each other do not begin or sound alike") {
    rules::Dice dice(8);
    const game::NamesLeft left = left_of(names_of("hill_given"), {});
    for (int i = 0; i < 50; ++i) {
        const std::vector<std::string> row = game::draw_names(left, 5, {}, dice);
        std::set<std::u32string> initials;
        for (const std::string& name : row)
            initials.insert(game::initial_of(name));
        CHECK(initials.size() == 5);
    }
    // With too few to choose from, they still come.
    CHECK(game::draw_names(left_of({"Addel", "Adda"}, {}), 2, {}, dice).size() == 2);
}

TEST_CASE("names: something like this one rhymes or shares its letters") {
    CHECK(game::manner_shared("Tollick", "Gollick") > game::manner_shared("Tollick", "Amra"));
    CHECK(game::manner_shared("Amra", "Amra") == doctest::Approx(1.0));
    CHECK(game::manner_shared("A", "Amra") == 0.0);
    rules::Dice dice(8);
    const game::NamesLeft left = left_of(names_of("fen_given"), {});
    const std::vector<std::string> like = game::draw_names_like(left, "Tollick", 5, dice);
    CHECK(like.size() == 5);
    CHECK_FALSE(has(like, "Tollick"));
    for (const std::string& name : like)
        CHECK(name.substr(name.size() - 3) == "ick");
}

TEST_CASE("names: 300 names of one evening, none to be taken for another") {
    game::Campaign campaign;
    campaign.clock.day = 5;
    game::NamesInPlay in_play;
    std::set<std::string> grown;
    rules::Dice dice(300);
    std::vector<std::string> given;
    int echoes = 0;
    for (std::size_t turn = 0; given.size() < 300; ++turn) {
        REQUIRE(turn < 2000);
        const game::ReadyNameList& list = ready_lists()[turn % ready_lists().size()];
        in_play.follow(campaign);
        const game::NamesLeft left =
            game::names_left(list.names, in_play, game::recent_initials(campaign.names, 5), {});
        std::vector<std::string> drawn = game::draw_names(left, 1, {}, dice);
        const bool has_other_initial = !left.fresh.empty() || !left.repeating.empty();
        if (drawn.empty()) {
            auto more = game::grow_names(list.names, in_play, grown, {}, 1, dice);
            if (!more.ok()) continue;
            drawn = more.value();
            grown.insert(base::folded(drawn.front()));
        } else if (has_other_initial) {
            const std::size_t first = given.size() > 12 ? given.size() - 12 : 0;
            for (std::size_t at = first; at < given.size(); ++at)
                CHECK(game::initial_of(given[at]) != game::initial_of(drawn.front()));
        } else {
            echoes += 1;
        }
        const std::u32string letters = base::letters_only(drawn.front());
        for (const std::string& earlier : given) {
            CAPTURE(earlier);
            CAPTURE(drawn.front());
            CHECK(game::edit_distance(letters, base::letters_only(earlier)) > 1);
        }
        given.push_back(drawn.front());
        game::use_name(campaign, {given.back(), list.key, list.kind, "", ""});
    }
    CHECK(echoes < 15); // lists allow another initial nearly always
    CHECK(campaign.names.used.size() == 300);
    CHECK(campaign.registered.entries.size() == 300);
}
