// The pages of a campaign, read back: what stands on each, and what it says where nothing is there.
#include "game/party_figures.h"
#include "print/page_table.h"
#include "rules/difficulty.h"

#include <doctest/doctest.h>

using printing::behind;
using printing::has;
using printing::Table;

TEST_CASE("pages: every page can be made of the demo on every paper, nothing cut or overlapping") {
    Table table;
    for (const print::PageKind& kind : print::page_kinds()) {
        CAPTURE(kind.key);
        for (const print::Paper& paper : print::papers()) {
            CAPTURE(paper.key);
            const auto read = table.read(std::string(kind.key), std::string(paper.key));
            CHECK_FALSE(read.sides.empty());
            CHECK(read.all_embedded);
        }
        CHECK(print::find_page_kind(kind.key) == &kind);
    }
}

TEST_CASE("pages: names in play are not offered, the others all are, once each") {
    Table table;
    table.campaign.names.lists = {
        {1, "Mine", game::Kind::person, {"Addelquin", "Borovarn", "Cestrim"}, {}}};
    table.campaign.names.used = {{2, "Borovarn", "Mine", "smith", "the sluice", 11, 0, {}}};
    const std::string text = table.text("names:Mine");
    CHECK(has(text, "Addelquin"));
    CHECK(has(text, "Cestrim"));
    CHECK(has(text, "smith"));
    CHECK(text.find("Borovarn") == text.rfind("Borovarn")); // among those given alone
    CHECK(has(table.refusal("names:Nowhere"), "There is no list of names Nowhere."));
}

TEST_CASE("pages: the session plan holds what is planned, done things ticked") {
    Table table;
    game::Session session;
    session.id = 90;
    session.number = 41;
    session.title = "The long dike";
    session.summary = "Over the water";
    session.must_know = "The bridge is out";
    session.scenes = {{91, "Ferry at dusk", true, {}}, {92, "Toll house", false, {}}};
    session.goals = {{93, "Reach the port", false, false, {}}, {94, "Who lied", true, false, {}}};
    table.campaign.sessions.sessions.push_back(session);
    const std::string text = table.text("session-plan:41");
    for (const char* part :
         {"Session 41: The long dike",
          "Over the water",
          "The bridge is out",
          "Ferry at dusk",
          "Toll house",
          "Reach the port",
          "Who lied",
          "Open questions"})
        CHECK(has(text, part));
    CHECK(has(table.refusal("session-plan:42"), "There is no session 42."));
    CHECK(has(table.refusal("notes:soon"), "soon is not the number of a session."));
    table.campaign.sessions = {};
    CHECK(has(table.refusal("recap"), "There is no session yet."));
    CHECK(has(table.text("recap:blank"), "Last time"));
    CHECK(has(table.text("notes:blank"), "Notes"));
}

TEST_CASE("pages: the party's numbers are those on screen") {
    Table table;
    const auto party = game::party_figures(table.campaign, table.rulebook, false);
    const auto read = table.read("party");
    REQUIRE(party.columns[1].kind == game::FigureKind::save);
    auto numbers = behind(read.sides[0], party.columns[1].name);
    std::string printed;
    for (const std::string& each : numbers)
        printed += each + " ";
    for (const game::PartyRow& row : party.rows) {
        const int total = row.figures[1].number.total;
        CHECK(has(printed, (total >= 0 ? "+" : "") + std::to_string(total)));
        CHECK(has(read.sides[0].text, row.name.substr(0, row.name.find(' '))));
    }
    for (game::Character& character : table.campaign.party.characters)
        character.is_present = false;
    CHECK(has(table.text("party"), "Nobody of the party is present tonight."));
}

TEST_CASE("pages: nobody stands on the initiative board twice, and the blank one is all rows") {
    Table table;
    std::size_t rows = 0;
    for (const printing::Side& side : table.read("initiative").sides)
        for (const printing::Word& word : side.words)
            rows += word.text == "Ysolde" ? 1 : 0;
    CHECK(rows == 1);
    const std::string blank = table.text("initiative:blank");
    CHECK_FALSE(has(blank, "Ysolde"));
    CHECK(has(blank, "Name"));
    for (const print::Paper& paper : print::papers())
        CHECK(table.read("initiative:blank", std::string(paper.key)).sides.size() == 1);
}

TEST_CASE("bug: a number on a character's sheet is never broken in two") {
    Table table;
    game::Character& character = table.campaign.party.characters.front();
    character.statistics.hit_points = 188;
    for (auto& [key, modifier] : character.statistics.saves)
        modifier = 28;
    game::link_party(table.campaign);
    const auto blocks =
        print::find_page_kind("characters")
            ->make(printing::source(table.campaign, table.rulebook), character.name);
    for (const char* paper : {"a6", "personal", "a5"}) {
        print::PrintSetup setup = printing::setup(paper);
        setup.has_rings = true;
        setup.is_large_type = true;
        const auto document = print::Document::lay_out({{"", blocks.value()}}, "", setup);
        const auto read = printing::read(document.value().pdf().value());
        std::size_t saves = 0;
        for (const printing::Word& word : read.sides[0].words)
            saves += word.text == "+28" ? 1 : 0;
        CHECK(saves == 3);
        CHECK(has(read.sides[0].text, "188"));
    }
}

TEST_CASE("pages: the DCs by level are those of GM Core, table DCs by Level") {
    Table table;
    REQUIRE(table.rulebook.family == rules::Family::four_degree);
    const auto read = table.read("difficulty", "a4");
    // GM Core (ORC), table DCs by Level: level 0 DC 14, level 5 DC 20, level 25 DC 50.
    CHECK(has(read.sides[0].text, "level 0"));
    const auto row = behind(read.sides[0], "level");
    REQUIRE(row.size() >= 2);
    CHECK(row[0] == "0");
    CHECK(row[1] == "14");
    CHECK(has(read.sides[0].text, "50"));
    CHECK(has(read.sides[0].text, "GM Core"));
}

TEST_CASE("pages: the encounter budget is that of GM Core, table Encounter Budget") {
    Table table;
    const auto read = table.read("encounters");
    // Moderate: 80 XP, 20 for each character more or less.
    CHECK(behind(read.sides[0], "moderate") == std::vector<std::string>{"80", "20"});
    CHECK(behind(read.sides[0], "extreme") == std::vector<std::string>{"160", "40"});
}

TEST_CASE("pages: the difficulty and encounter pages of srd5") {
    Table table;
    table.campaign.about.rules = rules::Family::srd5;
    const print::PrintSource source =
        printing::source(table.campaign, samples::rulebook(rules::Family::srd5));
    const auto read = printing::read(printing::pdf_of(source, "encounters", printing::setup("a5")));
    std::string text;
    for (const auto& side : read.sides)
        text += side.text;
    // SRD 5.1, Monsters / Experience Points: CR 1/8 25 XP, CR 30 155,000 XP.
    CHECK(has(text, "1/8"));
    CHECK(has(text, "155000"));
    const std::string dcs =
        printing::read(printing::pdf_of(source, "difficulty", printing::setup("a5"))).sides[0].text;
    CHECK(has(dcs, "very hard")); // SRD 5.1, Typical Difficulty Classes: 25
    CHECK(has(dcs, "25"));
}

TEST_CASE("pages: a card holds the numbers of its creature") {
    Table table;
    game::Creature creature;
    creature.name = "Mudwarden";
    creature.statistics.armor_class = 27;
    creature.statistics.hit_points = 143;
    creature.statistics.attacks = {
        {"pole", 15, "2d10+9", "piercing", false, false, "reach", 0, {}}};
    creature.statistics.resistances = {{"cold", 5, {}}};
    table.campaign.shelf.creatures = {creature};
    const auto read = table.read("creatures");
    REQUIRE(read.sides.size() == 1);
    for (const char* part : {"Mudwarden", "AC 27", "HP 143", "pole +15, 2d10+9", "cold 5"})
        CHECK(has(read.sides[0].text, part));
    table.campaign.shelf.creatures.clear();
    CHECK(has(table.refusal("creatures"), "There are no creatures to make cards of."));
    CHECK(has(table.refusal("creatures:Nobody"), "There is no creature Nobody."));
}

TEST_CASE("pages: an open creature's card holds every figure of it") {
    Table table;
    table.campaign.about.rules = rules::Family::srd5;
    const print::PrintSource source =
        printing::source(table.campaign, samples::rulebook(rules::Family::srd5));
    const auto read = printing::read(
        printing::pdf_of(source, "creatures:adult black dragon", printing::setup("a5"))
    );
    REQUIRE(read.sides.size() == 1);
    std::string text = read.sides[0].text;
    std::replace(text.begin(), text.end(), '\n', ' ');
    // SRD 5.1 (CC-BY-4.0), Monsters, Adult Black Dragon
    for (const char* part : {"Adult Black Dragon", "CR 14",
                             "11500 XP",           "AC 19",
                             "HP 195 (17d12+85)",  "fly 80 ft",
                             "swim 40 ft",         "Dexterity +7",
                             "Stealth +7",         "acid",
                             "blindsight 60 ft",   "Perception 21",
                             "1 Bite, 2 Claw",     "2d10+6 piercing",
                             "1d8 acid",           "2d6+6 slashing",
                             "2d8+6 bludgeoning",  "Frightful Presence",
                             "Wis DC 16",          "Acid Breath",
                             "Dex DC 18",          "12d8 acid",
                             "recharge 5-6",       "Wing Attack",
                             "3 a round",          "legendary resistance 3 a day"}) {
        CAPTURE(part);
        CHECK(has(text, part));
    }
    CHECK(has(text, "23 (+6)")); // Strength
}

TEST_CASE("pages: condition cards are of what is in play, or of all") {
    Table table;
    for (game::Combatant& each : table.campaign.encounter.combatants)
        each.conditions.clear();
    CHECK(has(table.refusal("conditions"), "No condition is in play."));
    game::ActiveCondition frightened;
    frightened.id = 800;
    frightened.key = "frightened";
    frightened.value = 2;
    table.campaign.encounter.combatants.front().conditions = {frightened};
    CHECK(has(table.text("conditions"), "frightened"));
    CHECK_FALSE(has(table.text("conditions"), "prone"));
    CHECK(has(table.text("conditions:all"), "prone"));
}

TEST_CASE("pages: blank paper says which there are") {
    Table table;
    CHECK(has(table.refusal("paper:waves"), "Paper: squares, hexes, dots, lines, staves."));
    for (const char* page :
         {"paper:squares", "paper:hexes", "paper:dots", "paper:lines", "paper:staves"})
        CHECK(table.read(page).sides.size() == 1);
}

TEST_CASE("pages: a character's sheet holds its numbers, and its pack what it carries") {
    Table table;
    const game::Character& character = table.campaign.party.characters.front();
    game::TreasureItem item;
    item.id = 4000;
    item.name = "Glass lantern";
    item.count = 2;
    item.carrier = character.id;
    table.campaign.treasury.items.push_back(item);
    const auto read = table.read("characters:" + character.name);
    REQUIRE(read.sides.size() == 2);
    CHECK(has(read.sides[0].text, character.name));
    CHECK(has(read.sides[0].text, std::to_string(character.statistics.armor_class)));
    CHECK(has(read.sides[1].text, "2 Glass lantern"));
    CHECK(has(read.sides[1].text, "pouch"));
    CHECK(has(table.refusal("characters:Nobody"), "There is no character Nobody."));
}

TEST_CASE("pages: treasure, prices and weather") {
    Table table;
    game::TreasureItem item;
    item.id = 4000;
    item.name = "Glass lantern";
    item.is_identified = false;
    table.campaign.treasury.items = {item};
    CHECK(has(table.text("treasure"), "Glass lantern"));
    CHECK(has(table.text("treasure"), "not identified"));
    CHECK(has(table.refusal("prices:dragons"), "There are no prices of dragons."));
    table.campaign.places.current = base::no_id;
    table.campaign.places.places.clear();
    CHECK(has(table.refusal("weather"), "The party is at no place."));
}
