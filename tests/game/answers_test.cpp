// How questions are read, and what is said when they are not understood.
#include "asking.h"
#include "store/campaign_json.h"
#include "store/prices.h"

#include <fstream>
#include <functional>
#include <iterator>
#include <set>

using namespace asking;

namespace {

game::Campaign demo_campaign() {
    std::ifstream stream(std::string(TABLEWICK_SOURCE_DIR) + "/demo_campaign.json");
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    const store::CampaignReading reading = store::read_campaign(text, "demo_campaign.json");
    REQUIRE(reading.loaded.has_value());
    return reading.loaded->campaign;
}

} // namespace

TEST_CASE("ask: what is not understood is answered by what is, in one line") {
    CHECK(
        refusal("lunch") ==
        "\"lunch\" is not understood; ask about: dc, odds, attack, group, dice, budget, encounter, "
        "xp, heal, rest, creature, price, split, condition, party, rule, date, weather, help."
    );
    CHECK(refusal("").find("Nothing is asked; ask about: dc") == 0);
    CHECK(
        refusal("dc level 7 purple") ==
        "\"purple\" does not fit here; ask: dc level 7 [hard] [rare] | dc rank 3 | dc trained | dc "
        "hard"
    );
    CHECK(refusal("odds +9").find("Something is missing; ask: odds +9 dc 20") == 0);
    CHECK(refusal("dice 3d0").find("zero dice") != std::string::npos);
    CHECK(refusal("dice 8d6 at least").find("Something is missing") == 0);
    CHECK(refusal("attack +9 ac 18 2d6 5d0x").find("\"5d0x\" does not fit here") == 0);
    CHECK(refusal("budget").find("Something is missing") == 0);
    CHECK(refusal("party").find("Which party?") == 0);
    // Nonsense of every kind is a refusal in one line, never a crash.
    for (const char* words :
         {"dc level 99999999999999999999",
          "odds +999999 dc 20",
          "odds 1 dc -1",
          "group dc 5",
          "encounter party 0 level 3 vs level 1",
          "encounter party 4 level 3 vs",
          "encounter party 4 level 3 vs 99999 level 3",
          "encounter party 4 level 3 vs complex 3",
          "xp cr 1/0",
          "xp have 1 gain level",
          "heal wizard +3",
          "heal trained",
          "rest",
          "rest con",
          "\xFF\xFE odds",
          "help nothing",
          "attack +9 ac 18 d"}) {
        CAPTURE(words);
        const std::string said = refusal(words);
        CHECK_FALSE(said.empty());
        CHECK(said.find('\n') == std::string::npos);
    }
}

TEST_CASE("ask: case, commas and joined words are read") {
    CHECK(answer("DC Level 7, Hard") == answer("dc level7 hard"));
    CHECK(answer("odds 9 dc20") == answer("odds +9 dc 20"));
    CHECK(answer("group +5, +7, +2 dc 15") == answer("group 5 7 2 dc 15"));
}

TEST_CASE("ask: a rulebook named in front") {
    using rules::Family;
    using rules::SrdEdition;
    std::string words = "srd dc hard";
    CHECK(
        game::take_rulebook_choice(words) == game::RulebookChoice{Family::srd5, SrdEdition::srd_5_1}
    );
    CHECK(words == "dc hard");
    CHECK(
        game::rulebook_choice("srd5.2.1") ==
        game::RulebookChoice{Family::srd5, SrdEdition::srd_5_2_1}
    );
    CHECK(
        game::rulebook_choice("four") ==
        game::RulebookChoice{Family::four_degree, SrdEdition::srd_5_1}
    );
    words = "dc hard";
    CHECK_FALSE(game::take_rulebook_choice(words).has_value());
    CHECK(words == "dc hard");
}

TEST_CASE("ask: help lists every question, and how one is asked") {
    const game::Answer all = answer("help");
    for (const game::AnswerTopicInfo& topic : game::answer_topics()) {
        CAPTURE(topic.word);
        CHECK(says(all, topic.help));
        CHECK(says(answer("help " + topic.word), topic.form));
        CHECK(topic.form.find(topic.word) == 0);
    }
}

TEST_CASE("ask: no value of an answer stands under a name twice") {
    const std::function<void(const game::NamedValues&)> check =
        [&check](const game::NamedValues& values) {
            std::set<std::string> names;
            for (const game::NamedValue& each : values) {
                CAPTURE(each.name);
                CHECK(names.insert(each.name).second);
                if (const auto* group = std::get_if<game::NamedValues>(&each.content))
                    check(*group);
                if (const auto* list = std::get_if<std::vector<game::NamedValues>>(&each.content))
                    for (const game::NamedValues& row : *list)
                        check(row);
            }
        };
    for (const char* words :
         {"dc level 7 hard",
          "odds +9 dc 20",
          "attack +9 ac 18 2d6+4",
          "group +5 +7 dc 15",
          "dice 8d6 at least 30",
          "budget party 4 level 3",
          "encounter party 4 level 3 vs 2 level 3 1 hazard 2",
          "xp level 3 party 3",
          "xp have 1 gain 1 level 1",
          "heal expert +9",
          "rest con 2 level 3",
          "condition dying 1",
          "help"})
        check(answer(words).values);
}

TEST_CASE("ask: a campaign answers for its own party") {
    const game::Campaign demo = demo_campaign();
    const rules::Rulebook& book = four();
    const game::Answer party = answer("party", book, &demo);
    const auto characters = rows(party.values, "characters");
    REQUIRE(characters.size() == 5);
    const game::Character& first = demo.party.characters.front();
    CHECK(text(characters[0], "name") == first.name);
    // Frightened 1 in the demo: a status penalty of 1 to checks and DCs (Player Core (ORC)).
    CHECK(whole(characters[0], "ac") == first.statistics.armor_class - 1);
    CHECK(whole(characters[0], "saves/will") == first.statistics.saves.at("will") - 1);
    CHECK(says(party, "* changed by a condition"));
    const game::Character& second = demo.party.characters[1];
    CHECK(whole(characters[1], "ac") == second.statistics.armor_class);
    const game::Answer will = answer("party will dc 20", book, &demo);
    CHECK(will.title.find("Will: About ") == 0);
    CHECK(rows(will.values, "characters").size() == 5);
    // The same party by its levels.
    std::string levels = "budget levels";
    for (const game::Character& character : demo.party.characters)
        levels += " " + std::to_string(character.statistics.level);
    CHECK(answer("budget", book, &demo) == answer(levels, book, nullptr));
    // Bram has 38 of 42 HP (drained); Constitution +2 at level 4 gives 8: Player Core (ORC), Rest.
    const game::Answer night = answer("rest", book, &demo);
    CHECK(whole(rows(night.values, "characters")[2], "hp_gained") == 4);
    CHECK_FALSE(game::answer({book, nullptr}, "rest").ok());
    game::Campaign nobody;
    CHECK_FALSE(game::answer({book, &nobody}, "party").ok());
    CHECK_FALSE(game::answer({book, &nobody}, "budget").ok());
}

TEST_CASE("ask: cells stand in columns, counted in letters") {
    game::Answer answer;
    answer.lines = {"a line", "Jos\xC3\xA9\t1", "Bo\t22\t3", "after"};
    const std::vector<std::string> wanted = {"a line", "Jos\xC3\xA9  1", "Bo    22  3", "after"};
    CHECK(game::aligned_lines(answer) == wanted);
}

TEST_CASE("ask: a creature of level and kind") {
    // GM Core (ORC), Building Creatures, level 5: moderate AC 21, moderate HP 75, moderate save
    // +12; elite at level 5: AC +2, HP +20 (Monster Core (ORC), Adjusting Creatures).
    const game::Answer plain = answer("creature level 5");
    CHECK(plain.title == "Plain, level 5");
    CHECK(std::get<int>(game::find_value(plain.values, "armor_class")->content) == 21);
    CHECK(std::get<int>(game::find_value(plain.values, "hit_points")->content) == 75);
    const game::Answer elite = answer("creature level 5 guard elite");
    CHECK(elite.title == "Guard, level 6");
    CHECK(refusal("creature level 99").find("level -1 to 24") != std::string::npos);
}

TEST_CASE("ask: money is split in even parts, commas and all") {
    // No prices at hand: the copper piece alone. With them: gold.
    const rules::PriceBook prices = store::load_prices(
                                        std::string(TABLEWICK_SOURCE_DIR) + "/assets",
                                        rules::Family::four_degree,
                                        rules::SrdEdition::srd_5_1
    )
                                        .value();
    const auto ask = [&](const char* words) {
        return game::answer({asking::four(), nullptr, nullptr, &prices}, words);
    };
    CHECK(ask("split 1204 gp 5").value().title == "240 gp 8 sp each");
    CHECK(ask("split 1,204 gp 5").value().title == "240 gp 8 sp each");
    CHECK(ask("split 1 gp among 3").value().lines.back() == "left over\t1 cp");
    CHECK_FALSE(ask("split 1204 gp").ok());
    CHECK_FALSE(ask("split x gp 5").ok());
    CHECK(ask("price rope").value().title.find("ope") != std::string::npos);
    CHECK(ask("price zzzz").error().message == "The price list has nothing called \"zzzz\".");
    CHECK_FALSE(game::answer({asking::four(), nullptr}, "price rope").ok());
}
