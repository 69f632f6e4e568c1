// Printing from the command line: what it says, and that no half-written file is left.
#include "app/print_pages.h"
#include "app/read_campaign.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

struct Desk {
    fs::path folder = fs::temp_directory_path() / ("tablewick_print_" + std::to_string(getpid()));

    Desk() { fs::create_directories(folder); }

    ~Desk() { fs::remove_all(folder); }

    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    base::Result<std::string> print(const std::string& page, const fs::path& out) const {
        const fs::path source = TABLEWICK_SOURCE_DIR;
        app::Options options;
        options.pages = {page};
        options.out = out.string();
        const auto order = app::print_order(options);
        if (!order.ok()) return order.error();
        auto campaign = app::read_for_pictures(source / "demo_campaign.json", source / "assets");
        REQUIRE(campaign.ok());
        const auto document =
            app::lay_out_pages(order.value(), app::print_source(*campaign.value()));
        if (!document.ok()) return document.error();
        return app::save_pages(document.value(), options.out);
    }

    std::size_t files() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(folder), fs::directory_iterator())
        );
    }
};

} // namespace

TEST_CASE("printing: a file is written whole, under any name") {
    const Desk desk;
    for (const char* name : {"plain.pdf", "odd \"name\" \xC3\xA9 %s.pdf"}) {
        const auto printed = desk.print("recap", desk.folder / name);
        REQUIRE(printed.ok());
        CHECK(printed.value() == (desk.folder / name).string() + ": 1 page");
        CHECK(fs::file_size(desk.folder / name) > 1000);
    }
    CHECK(desk.files() == 2);
}

TEST_CASE("printing: what cannot be done ends in one line and leaves nothing behind") {
    const Desk desk;
    const auto nowhere = desk.print("recap", desk.folder / "missing" / "x.pdf");
    REQUIRE_FALSE(nowhere.ok());
    CHECK(base::to_text(nowhere.error()).find('\n') == std::string::npos);
    CHECK(base::to_text(nowhere.error()).find("x.pdf") != std::string::npos);
    fs::create_directory(desk.folder / "taken.pdf"); // a folder stands under the name
    CHECK_FALSE(desk.print("recap", desk.folder / "taken.pdf").ok());
    CHECK(desk.files() == 1);
    const auto unknown = desk.print("poster", desk.folder / "x.pdf");
    REQUIRE_FALSE(unknown.ok());
    CHECK(unknown.error().message == "There is no page poster.");
    CHECK_FALSE(desk.print("names:Nowhere", desk.folder / "x.pdf").ok());
    CHECK(desk.files() == 1);
}

TEST_CASE("bug: --print help lists every page and is no error") {
    const std::string list = print::list_of_pages();
    for (const print::PageKind& kind : print::page_kinds())
        CHECK(list.find("\n    " + std::string(kind.key)) != std::string::npos);
    const auto options = app::read_options({"--print", "help"});
    REQUIRE(options.ok());
    CHECK(options.value().task == app::Task::print);
}

TEST_CASE("printing: a picture comes from its file, and a missing one is named") {
    const Desk desk;
    const std::string picture =
        std::string(TABLEWICK_SOURCE_DIR) + "/assets/pictures/print_cards_a5.png";
    CHECK(desk.print("handout:" + picture + "|Cards", desk.folder / "h.pdf").ok());
    const auto missing = desk.print("divider:Night|" + picture + "x", desk.folder / "x.pdf");
    REQUIRE_FALSE(missing.ok());
    CHECK(base::to_text(missing.error()) == picture + "x: There is no such file.");
    CHECK(desk.files() == 1);
}
