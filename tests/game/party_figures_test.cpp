#include "game/party_figures.h"
#include "party_table.h"

#include <algorithm>

using game::FigureKind;
using game::PartyFigures;
using rules::Family;

namespace {

const game::PartyFigure&
figure(const PartyFigures& party, const std::string& who, FigureKind kind, const char* key) {
    for (const game::PartyRow& row : party.rows) {
        if (row.name != who) continue;
        for (std::size_t at = 0; at < party.columns.size(); ++at)
            if (party.columns[at].kind == kind && party.columns[at].key == key)
                return row.figures[at];
    }
    FAIL("no " << key << " of " << who);
    static const game::PartyFigure none;
    return none;
}

PartyFigures shown(const game::Campaign& campaign, bool with_absent = false) {
    return game::party_figures(campaign, party_table::book(campaign.about.rules), with_absent);
}

std::string titles(const PartyFigures& party) {
    std::string text;
    for (const game::FigureColumn& column : party.columns)
        text += (text.empty() ? "" : ", ") + column.name;
    return text;
}

} // namespace

TEST_CASE("party_figures: what anybody has stands in a column, for those who play tonight") {
    const PartyFigures party = shown(party_table::four_degree());
    CHECK(
        titles(party) == "AC, Fortitude, Reflex, Will, Perception, Perception DC, Athletics, "
                         "Stealth, Mill lore, Class DC, Fly speed, Speed"
    );
    REQUIRE(party.rows.size() == 2);
    CHECK(party.rows[1].name == "Orrin");
    CHECK(party.rows[1].senses == "low-light vision");
    CHECK(shown(party_table::four_degree(), true).rows.size() == 3);
    CHECK(shown(game::Campaign{}).rows.empty());
}

TEST_CASE("party_figures: a skill that is not on the sheet is the plain ability, and says so") {
    const PartyFigures party = shown(party_table::four_degree());
    const game::PartyFigure& athletics = figure(party, "Orrin", FigureKind::skill, "athletics");
    CHECK(athletics.is_there);
    CHECK_FALSE(athletics.is_on_sheet);
    CHECK(athletics.number.total == 1); // Strength
    // Player Core (ORC), Lore: rests on Intelligence.
    CHECK(figure(party, "Orrin", FigureKind::skill, "mill_lore").number.total == 2);
    CHECK_FALSE(figure(party, "Orrin", FigureKind::dc, "class_dc").is_there);
    CHECK_FALSE(figure(party, "Ysolde", FigureKind::speed, "fly").is_there);
}

TEST_CASE("party_figures: best and worst of each column; none where all are equal or alone") {
    const PartyFigures party = shown(party_table::four_degree(), true);
    CHECK(figure(party, "Ysolde", FigureKind::armor_class, "ac").is_best);
    CHECK(figure(party, "Bram", FigureKind::armor_class, "ac").is_worst);
    CHECK_FALSE(figure(party, "Orrin", FigureKind::armor_class, "ac").is_best);
    CHECK_FALSE(figure(party, "Orrin", FigureKind::armor_class, "ac").is_worst);
    CHECK(figure(party, "Orrin", FigureKind::perception, "perception").is_worst);
    CHECK(figure(party, "Bram", FigureKind::perception, "perception").is_worst);
    for (const char* who : {"Ysolde", "Orrin", "Bram"}) {
        CHECK_FALSE(figure(party, who, FigureKind::save, "will").is_best);
        CHECK_FALSE(figure(party, who, FigureKind::save, "will").is_worst);
    }
    CHECK_FALSE(figure(party, "Ysolde", FigureKind::dc, "class_dc").is_best);
}

TEST_CASE("party_figures: a frightened character's numbers are lower now, and say why") {
    // Player Core (ORC), Conditions: frightened is a status penalty to all checks and DCs.
    game::Campaign campaign = party_table::four_degree();
    const PartyFigures before = shown(campaign);
    party_table::give(campaign, "Ysolde", "frightened", 2);
    const PartyFigures party = shown(campaign);
    const game::PartyFigure& armor = figure(party, "Ysolde", FigureKind::armor_class, "ac");
    CHECK(armor.number.base == 22);
    CHECK(armor.number.total == 20);
    REQUIRE(armor.number.contributions.size() == 1);
    CHECK(armor.number.contributions[0].source == "frightened 2");
    CHECK(figure(party, "Ysolde", FigureKind::save, "fortitude").number.total == 9);
    CHECK(figure(party, "Ysolde", FigureKind::perception, "perception").number.total == 8);
    CHECK(
        figure(party, "Ysolde", FigureKind::passive_perception, "passive_perception")
            .number.total == 18
    );
    CHECK(figure(party, "Ysolde", FigureKind::dc, "class_dc").number.total == 18);
    CHECK(figure(party, "Ysolde", FigureKind::speed, "land").number.total == 25);
    for (std::size_t at = 0; at < party.columns.size(); ++at) {
        CAPTURE(party.columns[at].name);
        CHECK(party.rows[1].figures[at].number == before.rows[1].figures[at].number);
    }
}

TEST_CASE("party_figures: an AC that falls to another's is no longer the best") {
    game::Campaign campaign = party_table::four_degree();
    party_table::give(campaign, "Ysolde", "frightened", 2);
    const PartyFigures party = shown(campaign);
    CHECK_FALSE(figure(party, "Ysolde", FigureKind::armor_class, "ac").is_best);
}

TEST_CASE("party_figures: a lasting condition still counts when the fight is over") {
    // Player Core (ORC), Conditions: drained lowers Fortitude until nights of rest have ended it.
    fight_table::Table table = fight_table::reeds();
    table.give("Ysolde", "drained", 1);
    table.give("Ysolde", "frightened", 1);
    game::end_fight(table.campaign, table.rulebook);
    const PartyFigures party = game::party_figures(table.campaign, table.rulebook, false);
    CHECK(figure(party, "Ysolde", FigureKind::save, "fortitude").number.total == -1);
    CHECK(figure(party, "Bram", FigureKind::save, "fortitude").number.total == 0);
}

TEST_CASE("party_figures: srd5 names saves and passive Perception") {
    const PartyFigures party = shown(party_table::srd5());
    CHECK(
        titles(party) ==
        "AC, Strength save, Dexterity save, Constitution save, Intelligence save, Wisdom save, "
        "Charisma save, Perception, passive Perception, Athletics, Stealth, Speed"
    );
    // SRD 5.1, Using Ability Scores, Passive Checks: 10 + all modifiers.
    CHECK(
        figure(party, "Wren", FigureKind::passive_perception, "passive_perception").number.total ==
        15
    );
}

TEST_CASE("party_figures: disadvantage takes 5 from passive Perception") {
    // SRD 5.1, Passive Checks: 5 less with disadvantage; Conditions: poisoned has it on ability
    // checks, not on saves.
    game::Campaign campaign = party_table::srd5();
    party_table::give(campaign, "Wren", "poisoned", 0);
    const PartyFigures party = shown(campaign);
    CHECK(
        figure(party, "Wren", FigureKind::passive_perception, "passive_perception").number.total ==
        10
    );
    CHECK(
        figure(party, "Wren", FigureKind::perception, "perception").number.mode ==
        rules::RollMode::disadvantage
    );
    CHECK(figure(party, "Wren", FigureKind::save, "wis").number.mode == rules::RollMode::normal);
}

TEST_CASE("party_figures: who fails by a rule is the worst, whatever the modifier") {
    // SRD 5.1, Conditions: the paralyzed fail Strength and Dexterity saves.
    game::Campaign campaign = party_table::srd5();
    party_table::give(campaign, "Wren", "paralyzed", 0);
    const PartyFigures party = shown(campaign);
    CHECK(figure(party, "Wren", FigureKind::save, "dex").number.fails);
    CHECK(figure(party, "Wren", FigureKind::save, "dex").is_worst);
    CHECK(figure(party, "Perrin", FigureKind::save, "dex").is_best);
    const game::PartyFigure& speed = figure(party, "Wren", FigureKind::speed, "land");
    CHECK(speed.number.base == 25);
    CHECK(speed.number.total == 0);
    CHECK_FALSE(speed.number.notes.empty());
}

TEST_CASE("party_figures: what the whole party can roll") {
    const game::Campaign four = party_table::four_degree();
    const auto stats = game::rollable_stats(four.party, party_table::book(Family::four_degree));
    CHECK(stats.front() == game::RollableStat{"perception", "Perception"});
    CHECK(stats[1] == game::RollableStat{"fortitude", "Fortitude"});
    CHECK(stats.back() == game::RollableStat{"mill_lore", "Mill lore"});
    CHECK(std::count_if(stats.begin(), stats.end(), [](const auto& stat) {
              return stat.key == "thievery"; // nobody is trained, everybody may try
          }) == 1);
    const game::Campaign srd = party_table::srd5();
    const auto srd_stats = game::rollable_stats(srd.party, party_table::book(Family::srd5));
    CHECK(srd_stats.back() == game::RollableStat{"cha_check", "Charisma check"});
    CHECK(std::count_if(srd_stats.begin(), srd_stats.end(), [](const auto& stat) {
              return stat.key == "perception";
          }) == 1);
}

TEST_CASE("party_figures: an ability check of srd5 is no save") {
    // SRD 5.1, Using Ability Scores: a check adds the ability modifier; Conditions: the paralyzed
    // fail Dexterity saves, not checks.
    game::Campaign campaign = party_table::srd5();
    party_table::give(campaign, "Wren", "paralyzed", 0);
    const rules::Rulebook& book = party_table::book(Family::srd5);
    const game::Combatant wren = game::combatant_of(campaign, campaign.party.characters[1]);
    CHECK(game::effective_check(book, wren, "dex").base == 4);
    CHECK(game::effective_check(book, wren, "dex").fails);
    CHECK(game::effective_check(book, wren, "dex_check").base == 2);
    CHECK_FALSE(game::effective_check(book, wren, "dex_check").fails);
}
