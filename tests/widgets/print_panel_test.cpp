// Print: pages chosen, put in order, shown and saved, over a desk that only notes what is asked.
#include "driver.h"
#include "fixtures.h"
#include "widgets/print_desk.h"
#include "widgets/print_panel.h"

#include <doctest/doctest.h>

namespace {

class NotedDesk : public widgets::PrintDesk {
public:
    widgets::PrintChoices& choices() override { return chosen; }

    const widgets::PrintState& state() const override { return shown; }

    void show(std::size_t side, int width) override {
        asked_side = side;
        asked_width = width;
    }

    void save(const std::string& path) override { saved = path; }

    void stop() override { stops += 1; }

    widgets::PrintChoices chosen;
    widgets::PrintState shown;
    std::size_t asked_side = 99;
    int asked_width = -1;
    std::string saved;
    int stops = 0;
};

using Driver = driver::PanelDriver<widgets::PrintPanelView>;

struct Table {
    NotedDesk desk;
    Driver ui;

    explicit Table(const driver::Settings& settings = {})
        : ui(fixtures::sluice_campaign(),
             fixtures::four_degree(),
             widgets::draw_print_panel,
             settings) {
        ui.print_desk = &desk;
        ui.climates = &fixtures::climates();
        ui.prices = fixtures::four_degree_prices();
        ui.frames(3);
    }

    void want(std::vector<print::WantedPage> pages) {
        desk.chosen.order.pages = std::move(pages);
        desk.shown.sides = desk.chosen.order.pages.size();
        desk.shown.pages = desk.shown.sides;
        for (std::size_t i = 0; i < desk.shown.sides; ++i)
            desk.shown.wanted.push_back({i, {}});
        ui.frames(3);
    }

    const std::vector<print::WantedPage>& pages() const { return desk.chosen.order.pages; }
};

} // namespace

TEST_CASE("print: nothing chosen says what it is for and offers the set for an evening") {
    Table table;
    CHECK(table.ui.shows("Real pages for the table"));
    CHECK_FALSE(table.ui.has("Save PDF"));
    table.ui.click("Set for an evening");
    table.ui.frames(3);
    CHECK(table.pages().size() > 4);
    CHECK(table.ui.has("Save PDF"));
}

TEST_CASE("print: without a desk the panel says that there is no printing") {
    Driver ui(fixtures::sluice_campaign(), fixtures::four_degree(), widgets::draw_print_panel);
    CHECK(ui.shows("There is no printing here."));
}

TEST_CASE("print: a page is added from the list and is open to say what it is of") {
    Table table;
    table.ui.click("##add");
    table.ui.click("Initiative board: the fight as it stands, with room to write");
    REQUIRE(table.pages().size() == 1);
    CHECK(table.pages()[0].key == "initiative");
    table.ui.key(ImGuiKey_Escape);
    table.ui.frames(2);
    table.ui.click("##detail");
    table.ui.click("blank, to write on");
    CHECK(table.pages()[0].detail == "blank");
}

TEST_CASE("print: a week takes a date that is typed") {
    Table table;
    table.want({{"week"}});
    table.ui.click("Week");
    table.ui.fill("##typed", "12 Reedmonth");
    CHECK(table.pages()[0].detail == "12 Reedmonth");
}

TEST_CASE("print: a divider has a field each for its title, ornament and picture") {
    Table table;
    table.want({{"divider"}});
    table.ui.click("Divider");
    table.ui.fill("##Title", "The long dike");
    CHECK(table.pages()[0].detail == "The long dike");
    table.ui.click("##Ornament");
    table.ui.click("stars");
    CHECK(table.pages()[0].detail == "The long dike|stars");
    table.ui.fill("##Picture", "dike.jpg");
    CHECK(table.pages()[0].detail == "The long dike|stars|dike.jpg");
}

TEST_CASE("print: pages change places and go away") {
    Table table;
    table.want({{"party"}, {"difficulty"}, {"recap"}});
    table.ui.click("Difficulty");
    CHECK(table.desk.asked_side == 1); // its first side is shown
    table.ui.click("Up");
    CHECK(table.pages()[0].key == "difficulty");
    CHECK_FALSE(table.ui.is_enabled("Up"));
    table.ui.click("Down");
    table.ui.click("Down");
    CHECK(table.pages()[2].key == "difficulty");
    CHECK_FALSE(table.ui.is_enabled("Down"));
    table.ui.click("Remove");
    CHECK(table.pages().size() == 2);
    table.ui.click("Remove all");
    CHECK(table.pages().empty());
    table.ui.frames(2);
    CHECK(table.ui.shows("Real pages for the table"));
}

TEST_CASE("print: paper, sheets, holes and letters are chosen") {
    Table table;
    table.want({{"party"}});
    print::PrintSetup& setup = table.desk.chosen.order.setup;
    table.ui.click("##paper");
    table.ui.click("Letter, 216 x 279 mm");
    CHECK(setup.paper->key == "letter");
    table.ui.click("Booklet to fold");
    CHECK(setup.arrangement == print::Arrangement::booklet);
    table.ui.click("Two to cut apart");
    CHECK(setup.arrangement == print::Arrangement::two_up);
    table.ui.click("Binder holes");
    table.ui.click("Both sides");
    table.ui.click("Large letters");
    CHECK(setup.has_rings);
    CHECK(setup.is_double_sided);
    CHECK(setup.is_large_type);
    table.ui.click("Large letters");
    CHECK_FALSE(setup.is_large_type);
}

TEST_CASE("print: the size of cards is asked where there are cards") {
    Table table;
    table.want({{"party"}});
    CHECK_FALSE(table.ui.has("Cards a6"));
    table.want({{"creatures"}});
    table.ui.click("Cards a6");
    CHECK(table.desk.chosen.order.setup.card->key == "a6");
}

TEST_CASE("print: sides are turned by buttons and by keys, and not beyond the last") {
    Table table;
    table.want({{"party"}, {"difficulty"}});
    CHECK(table.ui.shows("Side 1 of 2"));
    CHECK_FALSE(table.ui.is_enabled("Before"));
    table.ui.click("Next");
    CHECK(table.desk.asked_side == 1);
    CHECK_FALSE(table.ui.is_enabled("Next"));
    table.ui.click_at({5.0F, 795.0F}); // beside every control
    table.ui.key(ImGuiKey_PageUp);
    table.ui.frames(2);
    CHECK(table.desk.asked_side == 0);
    table.ui.key(ImGuiKey_PageDown);
    table.ui.frames(2);
    CHECK(table.desk.asked_side == 1);
    table.ui.key(ImGuiKey_PageDown);
    table.ui.frames(2);
    CHECK(table.desk.asked_side == 1);
}

TEST_CASE("print: the preview fits the panel, and is wider when asked for") {
    Table table;
    table.want({{"party"}});
    const int fitting = table.desk.asked_width;
    CHECK(fitting > 100);
    table.ui.click("Larger");
    table.ui.frames(2);
    CHECK(table.desk.asked_width >= 3 * fitting / 2);
}

TEST_CASE("print: saved beside the campaign, or under a name of its own that ends in .pdf") {
    Table table;
    table.want({{"party"}});
    table.ui.click("Save PDF");
    CHECK(table.desk.saved == "-pages.pdf"); // the campaign of the test has no file
    table.ui.fill("##path", "evening.txt");
    table.ui.frames(2);
    CHECK_FALSE(table.ui.is_enabled("Save PDF"));
    CHECK(table.ui.shows("The name of the file ends in .pdf."));
    table.ui.fill("##path", "evening.pdf");
    table.ui.frames(2);
    table.ui.click("Save PDF");
    CHECK(table.desk.saved == "evening.pdf");
    table.ui.click("Open it afterwards");
    CHECK_FALSE(table.desk.chosen.opens_afterwards);
}

TEST_CASE("print: what goes on is shown and can be stopped") {
    Table table;
    table.want({{"party"}});
    CHECK_FALSE(table.ui.has("Stop"));
    table.desk.shown.doing = "Saving";
    table.desk.shown.done = 3;
    table.desk.shown.all = 12;
    table.ui.frames(2);
    CHECK(table.ui.shows("Saving: 3 of 12"));
    table.ui.click("Stop");
    CHECK(table.desk.stops == 1);
}

TEST_CASE("print: a page that cannot be made says why below its row") {
    Table table;
    table.want({{"handout", "gone.png"}, {"party"}});
    table.desk.shown.wanted[0].problem = "There is no picture gone.png.";
    table.ui.frames(2);
    CHECK(table.ui.shows("There is no picture gone.png."));
    table.desk.shown.problem = "Printing was stopped.";
    table.ui.frames(2);
    CHECK(table.ui.shows("Printing was stopped."));
}

TEST_CASE("print: where there is no room for both, choices and preview take turns") {
    driver::Settings narrow;
    narrow.size = {420.0F, 700.0F};
    Table table(narrow);
    table.want({{"party"}});
    CHECK(table.desk.asked_width == 0); // laid out all the same
    table.ui.click("Preview");
    table.ui.frames(2);
    CHECK(table.ui.has("Larger"));
    CHECK_FALSE(table.ui.has("Save PDF"));
    CHECK(table.desk.asked_width > 100);
    table.ui.click("Choices");
    table.ui.frames(2);
    CHECK(table.ui.has("Save PDF"));
}

TEST_CASE("print: stands in every size, scale and density") {
    for (const float scale : {0.8F, 1.0F, 1.5F, 2.0F, 2.5F})
        for (const bool is_touch : {false, true}) {
            CAPTURE(scale);
            driver::Settings settings;
            settings.scale = scale;
            settings.is_touch = is_touch;
            settings.size = {1280.0F, 800.0F};
            Table table(settings);
            table.want({{"handout"}, {"divider"}, {"week"}, {"creatures"}});
            table.ui.click("Divider");
            table.ui.frames(3);
            CHECK(table.ui.has("##Ornament"));
        }
}
