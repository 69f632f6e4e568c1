// Pages of a campaign whose texts are of any length and script.
#include "print/page_table.h"

#include <doctest/doctest.h>

using printing::has;
using printing::Table;

TEST_CASE("pages: sixty conditions on one creature all stand on the board") {
    Table table;
    game::Combatant crowd;
    crowd.id = 900;
    crowd.name = "Crowded";
    for (int i = 1; i <= 60; ++i) {
        game::ActiveCondition condition;
        condition.id = 1000U + static_cast<unsigned>(i);
        condition.name = "Hex" + std::to_string(i);
        crowd.conditions.push_back(condition);
    }
    table.campaign.encounter.combatants.push_back(crowd);
    for (const char* paper : {"a5", "a6", "personal"}) {
        const std::string text = table.text("initiative", paper);
        for (int i = 1; i <= 60; ++i)
            CHECK(has(text, "Hex" + std::to_string(i)));
    }
}

TEST_CASE("pages: names in every script stand on cards, boards and sheets uncut") {
    Table table;
    const std::vector<std::string> names{
        "שרה בת־מרים",
        "محمد بن سالم",
        "Ключница Соломея",
        "Ελένη Παπαδοπούλου",
        std::string(300, 'W'),
        "\u202Ebackwards",
        "a\nb\tc"};
    for (std::size_t i = 0; i < table.campaign.party.characters.size(); ++i)
        table.campaign.party.characters[i].name = names[i % names.size()];
    for (const std::string& name : names) {
        table.campaign.shelf.creatures.push_back({700, name, {}, name, {}});
        game::RegisterEntry entry;
        entry.name = name;
        entry.summary = name;
        table.campaign.registered.entries.push_back(entry);
    }
    game::link_party(table.campaign);
    for (const char* page :
         {"creatures",
          "creatures:register",
          "party",
          "initiative",
          "register",
          "reminders",
          "session-plan"})
        for (const char* paper : {"a6", "a5", "letter"}) {
            CAPTURE(page);
            static_cast<void>(table.read(page, paper)); // the check stands in printing::pdf_of
        }
    CHECK(has(table.text("register"), "Соломея"));
}

TEST_CASE("pages: everything is called what nobody should call it, and no page cuts it") {
    // Names of 200 letters, of control signs, from right to left, and of nothing.
    const std::vector<std::string> texts{
        std::string(200, 'W'),
        "Ysolde " + std::string(193, 'm'),
        std::string("a\x01\x02\t\r\n\x1b[31m\x7f\xC2\x85") + "b",
        "שרה בת־מרים בת־מרים בת־מרים בת־מרים בת־מרים בת־מרים בת־מרים בת־מרים",
        "محمد بن سالم بن سالم بن سالم بن سالم بن سالم بن سالم بن سالم",
        "\u202EReed \u202D12",
        "\xFF\xFE\xC3",
        ""};
    for (std::size_t first = 0; first < texts.size(); ++first) {
        std::size_t at = first;
        const auto next = [&] { return texts[at++ % texts.size()]; };
        Table table;
        game::Campaign& campaign = table.campaign;
        campaign.about.title = next();
        for (game::Character& each : campaign.party.characters) {
            each.name = next();
            each.calling = next();
            each.player = next();
            for (game::Reminder& reminder : each.reminders)
                reminder.text = next();
            for (game::Attack& attack : each.statistics.attacks) {
                attack.name = next();
                attack.traits = next();
            }
        }
        for (game::Creature& each : campaign.shelf.creatures) {
            each.name = next();
            each.notes = next();
        }
        for (game::RegisterEntry& each : campaign.registered.entries) {
            each.name = next();
            each.summary = next();
            each.attitude = next();
            each.notes = next();
        }
        for (game::Session& each : campaign.sessions.sessions) {
            each.title = next();
            each.summary = next();
            each.must_know = next();
            for (game::PlanItem& scene : each.scenes)
                scene.text = next();
            for (game::Goal& goal : each.goals)
                goal.text = next();
            for (game::NoteLine& line : each.lines)
                line.text = next();
        }
        for (game::TreasureItem& each : campaign.treasury.items)
            each.name = next();
        for (game::LedgerLine& each : campaign.treasury.lines)
            each.text = next();
        for (game::YearPart& each : campaign.calendar.parts)
            each.name = next();
        for (std::string& each : campaign.calendar.weekdays)
            each = next();
        for (game::Holiday& each : campaign.calendar.holidays)
            each.name = next();
        for (game::Moon& each : campaign.calendar.moons)
            each.name = next();
        for (game::Combatant& each : campaign.encounter.combatants)
            each.name = next();
        for (game::Place& each : campaign.places.places)
            each.name = next();
        game::link_party(campaign);
        const auto source = printing::source(campaign, table.rulebook);
        for (const print::PageKind& kind : print::page_kinds())
            for (const char* paper : {"a6", "a5"}) {
                CAPTURE(first);
                CAPTURE(kind.key);
                print::PrintSetup setup = printing::setup(paper);
                setup.has_rings = true;
                setup.is_large_type = first % 2 == 0;
                const auto blocks = kind.make(source, {});
                if (!blocks.ok()) continue; // it says why; the pages of the demo are all made above
                const auto document = print::Document::lay_out(
                    {{std::string(kind.title), blocks.value()}}, campaign.about.title, setup
                );
                REQUIRE(document.ok());
                printing::check_no_text_is_cut(document.value());
            }
    }
}
