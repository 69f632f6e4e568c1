// The whole window under the hand and the eye of the panel tests: top bar, messages, tiles with
// every panel, help. The campaign stays in memory and stands with its file as the test says.
#pragma once

#include "app/shell.h"
#include "widgets/driver.h"
#include "widgets/fixtures.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace driver {

// A campaign without a file.
class CampaignInMemory : public app::OpenCampaign {
public:
    CampaignInMemory(game::Campaign campaign, rules::Rulebook book)
        : document_(std::move(campaign)), rulebook_(std::move(book)) {
        document_.set_time_source([] { return std::string("2026-01-31T19:04:05Z"); });
    }

    store::CampaignDocument& document() override { return document_; }

    const rules::Rulebook& rulebook() const override { return rulebook_; }

    const std::vector<game::LibraryCreature>& library() const override { return ready_creatures; }

    const rules::PriceBook& prices() const override { return price_book; }

    const std::string& file_name() const override { return kept_in; }

    void read_rules_again() override { rules_read += 1; }

    const std::vector<game::ReadyNameList>& name_lists() const override { return ready_names; }

    const std::vector<game::Calendar>& calendars() const override { return ready_calendars; }

    const game::Climates& climates() const override { return fixtures::climates(); }

    const game::Reference& reference() const override { return fixtures::reference(); }

    store::SaveState save_state() const override { return state; }

    std::vector<std::string> take_messages() override { return std::exchange(messages, {}); }

    void keep_ours() override { chosen = "ours"; }

    void take_theirs() override { chosen = "theirs"; }

    void save_copy_to(const std::filesystem::path& file) override { copied_to = file.string(); }

    void save_text(const std::string& path, const std::string& text) override {
        saved_texts[path] = text;
    }

    bool look_after() override { return false; }

    base::Result<base::Nothing> finish() override { return base::Nothing{}; }

    store::SaveState state{};
    std::vector<std::string> messages;
    std::string chosen;
    std::string copied_to;
    std::map<std::string, std::string> saved_texts;
    std::string kept_in = "salt_road.json";
    int rules_read = 0;
    // What is read from assets; nothing unless a test brings it.
    std::vector<game::LibraryCreature> ready_creatures;
    rules::PriceBook price_book;
    std::vector<game::ReadyNameList> ready_names;
    std::vector<game::Calendar> ready_calendars;

private:
    store::CampaignDocument document_;
    rules::Rulebook rulebook_;
};

class ShellDriver : public Screen {
public:
    explicit ShellDriver(
        game::Campaign campaign,
        const Settings& settings = {},
        const app::Settings& kept = {},
        const rules::Rulebook& book = fixtures::four_degree()
    )
        : Screen(with_signs(settings)), on_disk(std::move(campaign), book),
          shell(on_disk, kept, 20) {
        frames(4);
    }

    const game::Encounter& encounter() { return on_disk.document().view().encounter; }

    app::ShellState& state() { return shell.state(); }

    app::Tiles& tiles() { return shell.state().tiles(); }

    // Who has the turn.
    std::string current() {
        const game::Encounter& fight = encounter();
        const game::Combatant* combatant = game::find_combatant(fight, fight.current);
        return combatant == nullptr ? std::string() : combatant->name;
    }

    CampaignInMemory on_disk;
    app::Shell shell;

private:
    // The crosses of tiles say in their label what they close; tabs cut their captions where they
    // are many; gaps are as long as their tiles.
    static Settings with_signs(Settings settings) {
        settings.unmeasured = {"###close/", "###tab/", "##splitter"};
        return settings;
    }

protected:
    std::string name() const override { return "behind the shell"; }

    void draw() override {
        shell.draw();
        // The window that the driver opens around a panel lies behind everything here.
        ImGui::BringWindowToDisplayBack(ImGui::FindWindowByName("behind the shell"));
    }
};

// The Sluice campaign with its fight running in round 1; Ysolde Marr has the turn.
inline game::Campaign running_fight() {
    return fixtures::running(fixtures::sluice_campaign(), fixtures::four_degree());
}

} // namespace driver
