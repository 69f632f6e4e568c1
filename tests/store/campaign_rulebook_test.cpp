// The rulebook a campaign is played by, and a campaign that is only looked at.
#include "rules/difficulty.h"
#include "store/campaign_rulebook.h"
#include "store/campaign_store.h"
#include "store/latest_campaign.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

struct Folder {
    fs::path path = fs::temp_directory_path() / ("tablewick_rules_" + std::to_string(getpid()));

    Folder() { fs::create_directories(path); }

    ~Folder() { fs::remove_all(path); }

    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
};

std::string assets() {
    return std::string(TABLEWICK_SOURCE_DIR) + "/assets";
}

} // namespace

TEST_CASE("campaign rulebook: house rules lie beside the campaign or where their name says") {
    game::About about;
    CHECK(store::house_rules_path(about, "/games/ford.json").empty());
    about.house_rules = "our_rules.json";
    CHECK(store::house_rules_path(about, "/games/ford.json") == "/games/our_rules.json");
    about.house_rules = "/table/our_rules.json";
    CHECK(store::house_rules_path(about, "/games/ford.json") == "/table/our_rules.json");
}

TEST_CASE("campaign rulebook: the house rules of the campaign count") {
    const Folder folder;
    std::ofstream(folder.path / "ours.json")
        << R"({"format": "tablewick-house-rules", "family": "four_degree",)"
        << R"( "replace": {"/dc_by_level/rows/7/dc": 24}})";
    game::About about;
    about.house_rules = "ours.json";
    const auto book = store::load_campaign_rulebook(assets(), about, folder.path / "ford.json");
    REQUIRE(book.ok());
    CHECK(rules::dc_for_level(book.value(), 7).value() == 24);
    about.house_rules = "gone.json";
    const auto missing = store::load_campaign_rulebook(assets(), about, folder.path / "ford.json");
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.error().place.file == (folder.path / "gone.json").string());
}

TEST_CASE("latest campaign: what stands only in the journal is read too, nothing is touched") {
    const Folder folder;
    const fs::path file = folder.path / "ford.json";
    game::Campaign campaign;
    campaign.about.title = "Before";
    REQUIRE(store::write_new_campaign(store::disk(), file, campaign).ok());
    store::StoreOptions options;
    auto opened = store::CampaignStore::open(file, options);
    REQUIRE(opened.ok());
    store::CampaignStore& keeper = *opened.value();
    store::CampaignDocument document(keeper.take_campaign(), keeper.revision());
    document.set_sink([&keeper](const store::JournalEntry& entry) { keeper.add(entry); });
    game::Edit edit;
    edit.sections = {game::Section::about};
    edit.label = "Name it";
    edit.change = [](game::Campaign& changed) {
        changed.about.title = "After";
        return std::string();
    };
    REQUIRE(document.edit(edit).ok());
    for (int wait = 0; wait < 200; ++wait) {
        const auto now = store::read_latest(file);
        REQUIRE(now.ok());
        if (now.value().campaign.about.title == "After") break;
        usleep(10'000); // the journal's line is written within 50 ms
    }
    CHECK(store::read_latest(file).value().campaign.about.title == "After");
    CHECK(store::read_latest(folder.path / "none.json").ok() == false);
}
