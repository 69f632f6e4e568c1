// Which names could be taken for each other.
#include "base/unicode.h"
#include "game/name_distance.h"
#include "game/name_sound.h"
#include "game/names_in_play.h"
#include "rules/dice.h"

#include <doctest/doctest.h>

#include <algorithm>

using game::NameClash;

namespace {

game::Campaign with_used(const std::vector<std::string>& names) {
    game::Campaign campaign;
    for (const std::string& name : names) {
        game::UsedName used;
        used.id = campaign.names.next_id++;
        used.name = name;
        campaign.names.used.push_back(used);
    }
    return campaign;
}

NameClash clash_with(const std::string& in_play, const std::string& name) {
    game::NamesInPlay names;
    names.follow(with_used({in_play}));
    return names.check(name).clash;
}

// Short names of few letters, so that many are alike.
std::string scrawled(rules::Dice& dice) {
    constexpr std::string_view letters = "abdelrs";
    std::string name;
    for (int left = dice.roll(9); left > 0; --left)
        name += letters[static_cast<std::size_t>(dice.roll(static_cast<int>(letters.size())) - 1)];
    return name;
}

bool is_alike(const std::string& one, const std::string& other) {
    const std::u32string first = base::letters_only(one);
    const std::u32string second = base::letters_only(other);
    const bool is_heard =
        first.size() >= game::letters_for_a_slip && game::sound_of(first) == game::sound_of(second);
    return one == other || is_heard || game::look_alike(first, second);
}

bool is_alike_to_any(const std::vector<std::string>& names, const std::string& name) {
    return std::any_of(names.begin(), names.end(), [&](const std::string& other) {
        return is_alike(name, other);
    });
}

} // namespace

TEST_CASE("names: slips of the pen between two names, published values") {
    // M. P. J. van der Loo, The stringdist Package for Approximate String Matching, R Journal 6/1
    // (2014): "ba" and "acb" are 3 apart under optimal string alignment (2 under the unrestricted
    // distance). From memory.
    CHECK(game::edit_distance(U"ba", U"acb") == 3);
    CHECK(game::edit_distance(U"ca", U"abc") == 3);
    // The usual textbook example of Levenshtein's distance; common practice, no source.
    CHECK(game::edit_distance(U"kitten", U"sitting") == 3);
    CHECK(game::edit_distance(U"saturday", U"sunday") == 3);
    // F. J. Damerau, CACM 7/3 (1964): one letter missing, one extra, one wrong, or two swapped are
    // one slip each. From memory.
    CHECK(game::edit_distance(U"orin", U"orrin") == 1);
    CHECK(game::edit_distance(U"orrin", U"orrn") == 1);
    CHECK(game::edit_distance(U"orrin", U"orran") == 1);
    CHECK(game::edit_distance(U"orrin", U"orirn") == 1);
    CHECK(game::edit_distance(U"", U"orrin") == 5);
    CHECK(game::edit_distance(U"orrin", U"orrin") == 0);
}

TEST_CASE("names: the fast question for a few slips agrees with the distance") {
    rules::Dice dice(12);
    for (int i = 0; i < 5000; ++i) {
        const std::u32string one = base::letters_only(scrawled(dice));
        const std::u32string other = base::letters_only(scrawled(dice));
        for (const std::size_t slips : {0U, 1U, 2U, 3U})
            CHECK(
                game::are_within_slips(one, other, slips) ==
                (game::edit_distance(one, other) <= slips)
            );
    }
}

TEST_CASE("names: what sounds alike across the table has one key") {
    const auto sound = [](const std::string& name) {
        return game::sound_of(base::letters_only(name));
    };
    CHECK(sound("Marek") == U"MaR-K");
    CHECK(sound("Mharrik") == sound("Marek"));
    CHECK(sound("Carol") == sound("Karel"));
    CHECK(sound("Phenna") == sound("Fenna"));
    CHECK(sound("\u00C9va") == sound("Eva"));
    CHECK(sound("Tavin") == sound("Dafin"));
    CHECK(sound("Mara") != sound("Mera")); // the stressed vowel is heard
    CHECK(sound("Mara") != sound("Nara"));
    CHECK(sound("Mar") != sound("Mara")); // a beat more
    CHECK(
        sound("\u0410\u0432\u0435\u043B\u044C\u044F") !=
        sound("\u0410\u0441\u0432\u0435\u043B\u0430")
    );
    CHECK(sound("").empty());
}

TEST_CASE("names: the initial is the letter, whatever mark or article it bears") {
    CHECK(game::initial_of("\u00C9va") == U"e");
    CHECK(game::initial_of("e\u0301va") == U"e");
    CHECK(game::shown_initial("\u00C9va") == "\u00C9");
    CHECK(game::initial_of("The Muddy Queen") == U"m");
    CHECK(game::initial_of("Thelma") == U"t");
    CHECK(game::initial_of("'Ab") == U"a");
    CHECK(game::initial_of("12").empty());
}

TEST_CASE("names: too like one in play") {
    CHECK(clash_with("Ysolde", "ysolde") == NameClash::same);
    CHECK(clash_with("E\u0301va", "\u00C9va") == NameClash::same);
    CHECK(clash_with("Marek", "Mharrik") == NameClash::sounds_like);
    CHECK(clash_with("Tollick", "Tallick") == NameClash::looks_like); // one slip
    CHECK(clash_with("Tollick", "Tollimb") == NameClash::looks_like); // two, one initial
    CHECK(clash_with("Tollick", "Rallick") == NameClash::none);       // two, another initial
    CHECK(clash_with("Tolli", "Tubli") == NameClash::none);           // two of five letters
    CHECK(clash_with("Tollick", "Follick") == NameClash::looks_like);
    CHECK(clash_with("Tollick", "Ollick") == NameClash::looks_like);
    CHECK(clash_with("Ollick", "Tollick") == NameClash::looks_like);
    CHECK(clash_with("Ordun", "Rodun") == NameClash::looks_like); // swapped at the front
    CHECK(clash_with("Al", "El") == NameClash::none);             // too short to judge
}

TEST_CASE("names: a word of a name in play counts, and so do the Register, the party and the fight"
) {
    game::Campaign campaign;
    campaign.party.characters.push_back({});
    campaign.party.characters.back().name = "Ysolde Marr";
    campaign.registered.entries.push_back({});
    campaign.registered.entries.back().name = "Harrowmouth";
    campaign.encounter.combatants.push_back({});
    campaign.encounter.combatants.back().name = "Mudcaller 2";
    game::NamesInPlay names;
    names.follow(campaign);
    CHECK(names.check("Ysolda").with == "Ysolde Marr");
    CHECK(names.check("Marr").clash != NameClash::none);
    CHECK(names.check("Harrowmoth").clash == NameClash::sounds_like);
    CHECK(names.check("Harrowmill").clash == NameClash::none);
    CHECK(names.check("Mudcaller").clash != NameClash::none);
    CHECK(names.check("Quilla").clash == NameClash::none);
    CHECK(game::clash_text(names.check("Ysolda")) == "sounds like Ysolde Marr");
}

TEST_CASE("names: the index finds exactly what comparing with every name finds") {
    rules::Dice dice(5);
    std::vector<std::string> in_play;
    for (int i = 0; i < 60; ++i)
        in_play.push_back(scrawled(dice));
    game::NamesInPlay names;
    names.follow(with_used(in_play));
    int alike = 0;
    int apart = 0;
    for (int i = 0; i < 3000; ++i) {
        const std::string name = scrawled(dice);
        CAPTURE(name);
        const bool expected = is_alike_to_any(in_play, name);
        CHECK((names.check(name).clash != NameClash::none) == expected);
        (expected ? alike : apart) += 1;
    }
    CHECK(alike > 300);
    CHECK(apart > 300);
}

TEST_CASE("names: what comes and goes is followed one by one") {
    rules::Dice dice(6);
    game::Campaign campaign = with_used({});
    game::NamesInPlay names;
    CHECK(names.follow(campaign));
    CHECK_FALSE(names.follow(campaign));
    std::vector<std::string> asked; // again and again: earlier answers must not grow stale
    asked.reserve(40);
    for (int i = 0; i < 40; ++i)
        asked.push_back(scrawled(dice));
    for (int step = 0; step < 300; ++step) {
        auto& used = campaign.names.used;
        if (dice.roll(3) > 1 || used.empty()) {
            used.push_back({});
            used.back().name = scrawled(dice);
        } else {
            used.erase(used.begin() + dice.roll(static_cast<int>(used.size())) - 1);
        }
        CHECK(names.follow(campaign));
        game::NamesInPlay fresh;
        fresh.follow(campaign);
        CHECK(names.size() == fresh.size());
        for (const std::string& name : asked) {
            CHECK(
                (names.check(name).clash == NameClash::none) ==
                (fresh.check(name).clash == NameClash::none)
            );
            CHECK(
                (names.check(name).clash == NameClash::same) ==
                (fresh.check(name).clash == NameClash::same)
            );
        }
    }
    campaign.names.used.clear();
    names.follow(campaign);
    CHECK(names.size() == 0);
}
