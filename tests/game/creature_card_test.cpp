#include "fight_table.h"
#include "game/creature_card.h"
#include "open_library.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

const game::LibraryCreature& creature(const std::string& key) {
    const std::vector<game::LibraryCreature>& library = open_library::library();
    const auto found = std::find_if(library.begin(), library.end(), [&](const auto& each) {
        return each.key == key;
    });
    REQUIRE(found != library.end());
    return *found;
}

std::string line(const std::string& key, const std::string& title) {
    const auto lines =
        game::card_lines(fight_table::rulebook_of(rules::Family::srd5), creature(key));
    for (const game::CardLine& each : lines)
        if (each.title == title) return each.text;
    return "none";
}

} // namespace

TEST_CASE("creature card: the aboleth reads as the document prints its figures") {
    // SRD 5.1 (CC-BY-4.0), Monsters, Aboleth
    CHECK(game::card_subtitle(creature("aboleth")) == "large aberration, CR 10, 5900 XP");
    CHECK(line("aboleth", "AC") == "17");
    CHECK(line("aboleth", "HP") == "135 (18d10+36)");
    CHECK(line("aboleth", "Speed") == "land 10 ft, swim 40 ft");
    CHECK(line("aboleth", "Senses") == "darkvision 120 ft, passive Perception 20");
    CHECK(line("aboleth", "Skills") == "History +12, Perception +10");
    CHECK(line("aboleth", "A turn") == "3 Tentacle");
    CHECK(line("aboleth", "Tail") == "+9, reach 10 ft, 3d6+5 bludgeoning");
    CHECK(line("aboleth", "Legendary actions") == "3 a round");
    CHECK(line("aboleth", "Resists") == "none");
}

TEST_CASE("bug: a creature card tells ability scores, what recharges and who hovers") {
    // SRD 5.1 (CC-BY-4.0), Monsters: Aboleth, Ettercap, Ghost
    CHECK(
        line("aboleth", "Abilities") ==
        "Strength 21 (+5), Dexterity 9 (-1), Constitution 15 (+2), Intelligence 18 (+4), "
        "Wisdom 15 (+2), Charisma 18 (+4)"
    );
    CHECK(line("ettercap", "Web").find("recharge 5-6") != std::string::npos);
    CHECK(line("ghost", "Speed").find("hovers") != std::string::npos);
}

TEST_CASE("creature card: what a creature has nothing of is left out") {
    const auto lines =
        game::card_lines(fight_table::rulebook_of(rules::Family::srd5), creature("commoner"));
    for (const game::CardLine& each : lines)
        CHECK_FALSE(each.text.empty());
    CHECK(line("commoner", "Legendary actions") == "none");
}
