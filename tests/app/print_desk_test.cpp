// The printing behind the Print panel: on its own thread, in step with the campaign, stoppable, and
// with whole files or none.
#include "app/opening.h"
#include "app/print_choices.h"
#include "app/print_desk.h"
#include "app/read_campaign.h"
#include "app/settings_file.h"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <thread>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

struct Desk {
    fs::path folder =
        fs::temp_directory_path() / ("tablewick_print_desk_" + std::to_string(getpid()));
    std::unique_ptr<app::OpenCampaign> campaign;
    widgets::PrintChoices choices;
    std::vector<app::SideImage> images;
    std::vector<std::string> messages;
    std::unique_ptr<app::PrintDesk> desk;

    Desk() {
        fs::create_directories(folder);
        const fs::path source = TABLEWICK_SOURCE_DIR;
        auto read = app::read_for_pictures(source / "demo_campaign.json", source / "assets");
        REQUIRE(read.ok());
        campaign = std::move(read).value();
        choices.opens_afterwards = false;
        desk = std::make_unique<app::PrintDesk>(
            *campaign,
            choices,
            [] {},
            [this](const app::SideImage& image, std::uint64_t former) {
                images.push_back(image);
                return former == 0 ? 7U : former;
            }
        );
    }

    ~Desk() {
        desk.reset();
        fs::remove_all(folder);
    }

    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    void settle() {
        desk->wait_until_idle();
        for (std::string& message : desk->look_after())
            messages.push_back(std::move(message));
    }

    void show(std::size_t side, int width) {
        desk->show(side, width);
        settle();
    }

    std::size_t files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder), fs::directory_iterator())
        );
    }
};

// How many pixels are darker than a pencil.
std::size_t dark_pixels(const app::SideImage& image) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < image.pixels.size(); i += 4)
        if (image.pixels[i] < 100) count += 1;
    return count;
}

} // namespace

TEST_CASE("print desk: a side is drawn as wide as asked for, in the shape of its sheet") {
    Desk table;
    table.choices.order.pages = {{"party"}};
    table.show(0, 296);
    REQUIRE(table.images.size() == 1);
    const app::SideImage& image = table.images.front();
    CHECK(image.width == 296);
    CHECK(image.height == 420); // A5, ISO 216: 148 x 210 mm
    CHECK(image.pixels.size() == 296U * 420U * 4U);
    CHECK(dark_pixels(image) > 500);
    CHECK(table.desk->state().pages == 1);
    CHECK(table.desk->state().picture.texture == 7);
    CHECK(table.desk->state().picture.height == 420);
}

TEST_CASE("print desk: nothing is done again while nothing has changed") {
    Desk table;
    table.choices.order.pages = {{"party"}};
    table.show(0, 200);
    table.show(0, 200);
    CHECK(table.images.size() == 1);
    table.show(0, 300);
    CHECK(table.images.size() == 2);
}

TEST_CASE("print desk: a change of the campaign is seen on the page") {
    Desk table;
    table.choices.order.pages = {{"party"}};
    table.show(0, 300);
    game::Edits edits;
    edits.add(&game::Campaign::party, "Nobody is left", [](game::Party& party) {
        party.characters.resize(1);
    });
    REQUIRE(table.campaign->document().carry_out(edits).ok());
    table.show(0, 300);
    REQUIRE(table.images.size() == 2);
    CHECK(dark_pixels(table.images[1]) < dark_pixels(table.images[0]));
}

TEST_CASE("print desk: the sheet with two pages is drawn with both") {
    Desk table;
    table.choices.order.pages = {{"party"}, {"difficulty"}};
    table.choices.order.setup.arrangement = print::Arrangement::two_up;
    table.show(0, 420);
    REQUIRE(table.images.size() == 1);
    CHECK(table.images[0].height == 297); // A4 across
    CHECK(table.desk->state().wanted.size() == 2);
}

TEST_CASE("print desk: a page that cannot be made says why and leaves the others") {
    Desk table;
    table.choices.order.pages = {{"handout", "/nowhere/map.png"}, {"party"}};
    table.show(0, 200);
    REQUIRE(table.desk->state().wanted.size() == 2);
    CHECK(table.desk->state().wanted[0].problem.find("map.png") != std::string::npos);
    CHECK(table.desk->state().wanted[1].problem.empty());
    CHECK(table.desk->state().pages == 1);
}

TEST_CASE("print desk: a picture is looked for beside the campaign") {
    Desk table; // whose campaign stands beside the folder of assets
    table.choices.order.pages = {{"handout", "assets/pictures/print_cards_a5.png"}};
    table.show(0, 200);
    REQUIRE(table.desk->state().wanted.size() == 1);
    CHECK(table.desk->state().wanted[0].problem.empty());
    CHECK(table.desk->state().pages == 1);
}

TEST_CASE("print desk: saving writes one whole file and says where") {
    Desk table;
    table.choices.order.pages = {{"party"}};
    const fs::path file = table.folder / "evening.pdf";
    table.desk->save(file.string());
    table.settle();
    REQUIRE(table.messages.size() == 1);
    CHECK(table.messages[0] == "Saved as " + file.string() + ": 1 page.");
    std::ifstream stream(file, std::ios::binary);
    std::string head(5, ' ');
    stream.read(head.data(), 5);
    CHECK(head == "%PDF-");
    CHECK(table.files() == 1);
}

TEST_CASE("print desk: what is being saved when the program ends is saved whole") {
    Desk table;
    table.choices.order.pages.assign(20, {"prices"});
    const fs::path file = table.folder / "evening.pdf";
    table.desk->show(0, 200);
    table.desk->save(file.string());
    table.desk.reset();
    CHECK(fs::file_size(file) > 10'000);
    CHECK(table.files() == 1);
}

TEST_CASE("print desk: what cannot be saved ends in one line and leaves no file") {
    Desk table;
    table.choices.order.pages = {{"party"}};
    table.desk->save((table.folder / "missing" / "x.pdf").string());
    table.settle();
    table.choices.order.pages = {{"party"}, {"handout", "/nowhere/map.png"}};
    table.desk->save((table.folder / "x.pdf").string());
    table.settle();
    REQUIRE(table.messages.size() == 2);
    for (const std::string& message : table.messages)
        CHECK(message.find('\n') == std::string::npos);
    CHECK(table.messages[0].find("x.pdf") != std::string::npos);
    CHECK(table.messages[1].find("map.png") != std::string::npos);
    CHECK(table.files() == 0);
}

TEST_CASE("print desk: a long job tells how far it is, stops when asked, and leaves no file") {
    Desk table;
    table.choices.order.pages.assign(400, {"prices"});
    table.desk->save((table.folder / "long.pdf").string());
    bool has_told = false;
    for (int i = 0; i < 6000 && !has_told; ++i) {
        std::this_thread::sleep_for(std::chrono::milliseconds(5));
        table.desk->look_after();
        has_told = table.desk->state().doing == "Saving" && table.desk->state().all == 800;
    }
    CHECK(has_told);
    table.desk->stop();
    table.settle();
    CHECK(table.desk->state().doing.empty());
    REQUIRE(table.messages.size() == 1);
    CHECK(table.messages[0] == "Printing was stopped.");
    CHECK(table.files() == 0);
}

TEST_CASE("print desk: after a stop, the next change lays out again") {
    Desk table;
    table.choices.order.pages.assign(400, {"prices"});
    table.desk->show(0, 100);
    table.desk->stop();
    table.settle();
    table.choices.order.pages = {{"party"}};
    table.show(0, 100);
    CHECK(table.desk->state().pages == 1);
    CHECK(table.desk->state().problem.empty());
}

TEST_CASE("opening: the system's program gets the file, whatever its name") {
    const fs::path folder =
        fs::temp_directory_path() / ("tablewick_opening_" + std::to_string(getpid()));
    fs::create_directories(folder);
    const fs::path noted = folder / "noted";
    {
        std::ofstream viewer(folder / "xdg-open");
        viewer << "#!/bin/sh\nprintf %s \"$1\" > '" << noted.string() << "'\n";
    }
    fs::permissions(folder / "xdg-open", fs::perms::owner_all);
    const std::string path_before = std::getenv("PATH"); // NOLINT(concurrency-mt-unsafe)
    setenv("PATH", (folder.string() + ":" + path_before).c_str(), 1);
    const std::string file = "/tmp/odd \"name\"; $(true) 'x'.pdf";
    CHECK(app::open_with_system(file).ok());
    std::string seen;
    for (int i = 0; i < 400 && seen != file; ++i) {
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
        std::ifstream stream(noted);
        std::getline(stream, seen);
    }
    CHECK(seen == file);
    fs::create_directories(folder / "bare");
    fs::create_symlink("/bin/sh", folder / "bare" / "sh");
    setenv("PATH", (folder / "bare").c_str(), 1);
    const auto refused = app::open_with_system("/tmp/x.pdf");
    setenv("PATH", path_before.c_str(), 1);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.error().message.find("/tmp/x.pdf") != std::string::npos);
    fs::remove_all(folder);
}

TEST_CASE("print choices: kept from evening to evening") {
    widgets::PrintChoices choices;
    choices.order.pages = {{"party"}, {"divider", "A \"long\" dike|waves"}};
    choices.order.setup.paper = print::find_paper("letter");
    choices.order.setup.card = print::find_card_size("a6");
    choices.order.setup.arrangement = print::Arrangement::booklet;
    choices.order.setup.has_rings = true;
    choices.order.setup.is_double_sided = true;
    choices.order.setup.is_large_type = true;
    choices.opens_afterwards = false;
    const app::ReadPrintChoices read = app::print_choices_from_json(app::to_json(choices));
    CHECK(read.choices == choices);
    CHECK(read.complaints.empty());
}

TEST_CASE("print choices: what is wrong is said and keeps its usual value") {
    const app::ReadPrintChoices broken = app::print_choices_from_json("[");
    CHECK(broken.choices == widgets::PrintChoices());
    CHECK(broken.complaints.size() == 1);
    const app::ReadPrintChoices read = app::print_choices_from_json(
        R"({"paper": "a0", "card": 5, "sheets": "three up", "rings": "yes",
            "pages": ["party", "poster", 7]})"
    );
    CHECK(read.complaints.size() == 5);
    CHECK(read.choices.order.pages == std::vector<print::WantedPage>{{"party"}});
    CHECK(read.choices.order.setup == print::PrintSetup());
}

TEST_CASE("print choices: stand in the settings, and are there at the next start") {
    const fs::path folder =
        fs::temp_directory_path() / ("tablewick_print_kept_" + std::to_string(getpid()));
    app::Settings settings;
    {
        app::SettingsWriter writer(folder, settings);
        settings.printing.order.pages = {{"names"}};
        writer.keep(settings);
    }
    CHECK(app::read_settings(folder).settings.printing == settings.printing);
    fs::remove_all(folder);
}
