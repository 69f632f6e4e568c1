// New names in the manner of a list.
#include "base/unicode.h"
#include "game/name_growing.h"
#include "store/name_lists.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <map>

namespace {

using Counts = std::map<char32_t, int>;

std::vector<std::string>
grown_from(const std::vector<std::string>& names, std::size_t count, std::uint64_t seed) {
    rules::Dice dice(seed);
    const auto grown = game::grow_names(names, game::NamesInPlay(), {}, {}, count, dice);
    if (!grown.ok()) FAIL(grown.error().message);
    return grown.value();
}

std::string refusal(const std::vector<std::string>& names) {
    rules::Dice dice(1);
    const auto grown = game::grow_names(names, game::NamesInPlay(), {}, {}, 3, dice);
    return grown.ok() ? std::string("none") : grown.error().message;
}

} // namespace

TEST_CASE("names: how often which letter follows, counted by hand") {
    // ana: a, a->n, an->a, na->end. Anna: a, a->n, an->n, nn->a, na->end. (0 ends a name.)
    const game::NameChain chain = game::name_chain({"ana", "Anna"}, 2);
    CHECK(chain.follows.size() == 5);
    CHECK(chain.follows.at(U"") == Counts{{U'a', 2}});
    CHECK(chain.follows.at(U"a") == Counts{{U'n', 2}});
    CHECK(chain.follows.at(U"an") == Counts{{U'a', 1}, {U'n', 1}});
    CHECK(chain.follows.at(U"nn") == Counts{{U'a', 1}});
    CHECK(chain.follows.at(U"na") == Counts{{0, 2}});
    CHECK(chain.shortest == 3);
    CHECK(chain.longest == 4);
}

TEST_CASE("names: three letters back, counted by hand; a letter with its mark is one") {
    const game::NameChain chain = game::name_chain({"E\u0301va"}, 3);
    CHECK(chain.follows.at(U"") == Counts{{U'\u00E9', 1}});
    CHECK(chain.follows.at(U"\u00E9v") == Counts{{U'a', 1}});
    CHECK(chain.follows.at(U"\u00E9va") == Counts{{0, 1}});
}

TEST_CASE("names: a walk takes each letter as often as the list does") {
    // After a: b once, c twice, d three times.
    const game::NameChain chain = game::name_chain({"ab", "ac", "ac", "ad", "ad", "ad"}, 2);
    rules::Dice dice(4);
    std::map<std::u32string, int> counts;
    constexpr int walks = 12000;
    for (int i = 0; i < walks; ++i)
        counts[game::walk(chain, dice)] += 1;
    REQUIRE(counts.size() == 3);
    double sum = 0;
    for (const auto& [name, share] :
         std::map<std::u32string, double>{{U"ab", 1.0 / 6}, {U"ac", 2.0 / 6}, {U"ad", 3.0 / 6}})
        sum += (counts[name] - walks * share) * (counts[name] - walks * share) / (walks * share);
    // Boost.Math: the value that chance alone exceeds once in a thousand runs.
    CHECK(sum < boost::math::quantile(boost::math::chi_squared(2.0), 0.999));
}

TEST_CASE("names: grown names are new, of the list's letters and lengths, and none comes twice") {
    for (const game::ReadyNameList& list :
         store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists) {
        CAPTURE(list.key);
        std::size_t shortest = 1000;
        std::size_t longest = 0;
        std::u32string letters;
        std::set<std::string> known;
        for (const std::string& name : list.names) {
            shortest = std::min(shortest, base::letters_only(name).size());
            longest = std::max(longest, base::letters_only(name).size());
            letters += base::letters_only(name);
            known.insert(base::folded(name));
        }
        const std::vector<std::string> grown = grown_from(list.names, 40, 9);
        CHECK(grown.size() == 40);
        for (const std::string& name : grown) {
            CAPTURE(name);
            CHECK(known.insert(base::folded(name)).second);
            const bool is_phrase = name.find(' ') != std::string::npos;
            const std::u32string own = base::letters_only(name);
            CHECK(own.size() <= longest + (is_phrase ? longest : 0));
            CHECK((is_phrase || own.size() >= shortest));
            CHECK(own.find_first_not_of(letters) == std::u32string::npos);
        }
    }
}

TEST_CASE("names: grown names keep away from those in play, grown before and barred") {
    const auto lists = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
    const std::vector<std::string>& names = lists.front().names;
    game::Campaign campaign;
    const std::vector<std::string> first = grown_from(names, 10, 21);
    for (const std::string& name : first) {
        campaign.names.used.push_back({});
        campaign.names.used.back().name = name;
    }
    game::NamesInPlay in_play;
    in_play.follow(campaign);
    rules::Dice dice(21); // the same dice would grow the same names
    const auto again = game::grow_names(names, in_play, {}, {U"a"}, 10, dice);
    REQUIRE(again.ok());
    for (const std::string& name : again.value()) {
        CHECK(in_play.check(name).clash == game::NameClash::none);
        CHECK(base::letters_only(name).front() != U'a');
    }
    rules::Dice same(21);
    const std::set<std::string> before{base::folded(first[0]), base::folded(first[1])};
    const auto others = game::grow_names(names, game::NamesInPlay(), before, {}, 10, same);
    REQUIRE(others.ok());
    for (const std::string& name : others.value())
        CHECK(before.count(base::folded(name)) == 0);
}

TEST_CASE("names: a list too small or too much alike says so at once") {
    CHECK(refusal({}) == "This list is too small to grow names from; it needs 8 names.");
    CHECK(
        refusal({"Ada", "Ben"}) == "This list is too small to grow names from; it needs 8 names."
    );
    CHECK(
        refusal({"ab", "cd", "ef", "gh", "ij", "kl", "mn", "op"}) ==
        "Nothing new grows from this list any more; its names are too much alike or too few."
    );
}
