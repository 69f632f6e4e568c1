// The sheet of a combatant with conditions counted.
#include "fight_table.h"
#include "game/sheet.h"

#include <doctest/doctest.h>

using fight_table::Table;

TEST_CASE("sheet: three attacks of a turn, agile and not") {
    // Player Core (ORC), Multiple Attack Penalty: -5 and -10; agile -4 and -8.
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 52, 22);
    game::Attack blade;
    blade.name = "blade";
    blade.bonus = 14;
    game::Attack knife = blade;
    knife.is_agile = true;
    CHECK(
        game::attack_series(table.rulebook, table.who("Ysolde"), blade) ==
        std::vector<int>{14, 9, 4}
    );
    CHECK(
        game::attack_series(table.rulebook, table.who("Ysolde"), knife) ==
        std::vector<int>{14, 10, 6}
    );
}

TEST_CASE("sheet: srd5 has no penalty for further attacks") {
    Table table(rules::Family::srd5);
    table.hero("Wren", 24, 14);
    game::Attack bow;
    bow.bonus = 5;
    CHECK(game::attack_series(table.rulebook, table.who("Wren"), bow) == std::vector<int>{5});
}

TEST_CASE("sheet: AC first, then saves, perception, skills, attacks, DCs, all counted") {
    Table table(rules::Family::four_degree);
    table.hero("Ysolde", 52, 22);
    game::Statistics& sheet = table.campaign.party.characters[0].statistics;
    sheet.perception = 10;
    sheet.saves = {{"fortitude", 11}, {"reflex", 8}, {"will", 9}};
    sheet.skills = {{"athletics", 12}};
    sheet.difficulty_classes = {{"class_dc", 20}};
    game::Attack blade;
    blade.name = "blade";
    blade.bonus = 14;
    sheet.attacks = {blade};
    game::link_party(table.campaign);
    table.give("Ysolde", "frightened", 1);
    const auto numbers = game::sheet_numbers(table.rulebook, table.who("Ysolde"));
    std::string text;
    for (const game::SheetNumber& of : numbers)
        text += of.name + " " + std::to_string(of.number.total) + "; ";
    CHECK(
        text == "AC 21; Fortitude 10; Reflex 7; Will 8; Perception 9; Athletics 11; blade 13; "
                "class DC 19; "
    );
}

TEST_CASE("sheet: words for DCs and signs") {
    CHECK(game::dc_name("spell_dc") == "spell DC");
    CHECK(game::dc_name("odd") == "odd");
    CHECK(game::signed_text(3) == "+3");
    CHECK(game::signed_text(0) == "+0");
    CHECK(game::signed_text(-3) == "-3");
}
