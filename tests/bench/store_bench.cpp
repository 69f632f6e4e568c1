// Times of the document and the store, by hand: build/PRESET/tests/store_bench [FOLDER ON THE DISK
// TO MEASURE]. Budgets: an edit 0.2 ms on the render thread, durable within 50 ms. Never fails.
#include "game/conditions.h"
#include "game/fights.h"
#include "game/hurt.h"
#include "game/turns.h"
#include "store/campaign_json.h"
#include "store/campaign_store.h"
#include "store/rulebook_json.h"

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <sstream>

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

class Times {
public:
    template <class Work>
    void take(Work work) {
        const Clock::time_point from = Clock::now();
        work();
        add(Clock::now() - from);
    }

    void add(Clock::duration time) {
        taken_.push_back(std::chrono::duration<double, std::milli>(time).count());
    }

    void print(const char* what) {
        std::sort(taken_.begin(), taken_.end());
        const auto part = [&](std::size_t percent) {
            return taken_[std::min(taken_.size() - 1, taken_.size() * percent / 100)];
        };
        std::printf("%-44s median %8.3f ms   95 %% %8.3f ms\n", what, part(50), part(95));
    }

private:
    std::vector<double> taken_;
};

std::string read(const fs::path& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

// The demo's party and so many opponents, in round 1, everybody frightened; a full history.
game::Campaign crowd(const rules::Rulebook& rulebook, int combatants) {
    const std::string text = read(fs::path(TABLEWICK_SOURCE_DIR) / "demo_campaign.json");
    game::Campaign campaign = store::read_campaign(text, "demo").loaded->campaign;
    rules::Dice dice(7);
    game::open_fight(campaign, rulebook, base::no_id);
    const game::Id creature = campaign.shelf.creatures.front().id;
    const int more = combatants - static_cast<int>(campaign.party.characters.size());
    game::add_creatures(campaign, rulebook, creature, more, false, std::nullopt, dice);
    game::roll_missing_initiative(campaign.encounter, rulebook, dice, std::nullopt);
    game::begin_fight(campaign.encounter, rulebook);
    for (const game::Id id : std::vector<game::Id>(campaign.encounter.order)) {
        game::ActiveCondition condition;
        condition.key = "frightened";
        condition.value = 2;
        game::add_condition(campaign.encounter, rulebook, id, condition);
    }
    campaign.history.lines.assign(5000, campaign.history.lines.front());
    return campaign;
}

void carry_out_turns(
    store::CampaignDocument& document, const rules::Rulebook& rulebook, Times& hurts, Times& turns
) {
    for (std::size_t i = 0; i < 400; ++i) {
        const auto& combatants = document.view().encounter.combatants;
        const game::Id id = combatants[i * 7 % combatants.size()].id;
        game::Edits edits;
        if (i % 2 == 0)
            edits.add(&game::Campaign::encounter, "Hurt", [&, id](game::Encounter& encounter) {
                game::Damage damage;
                damage.amount = 1;
                return game::hurt(encounter, rulebook, id, damage);
            });
        else
            edits.add(&game::Campaign::encounter, "Next turn", [&](game::Encounter& encounter) {
                return game::advance_turn(encounter, rulebook);
            });
        (i % 2 == 0 ? hurts : turns).take([&] {
            static_cast<void>(document.carry_out(edits).ok());
        });
    }
}

void measure_document(const rules::Rulebook& rulebook) {
    const game::Campaign campaign = crowd(rulebook, 40);
    store::CampaignDocument document(campaign, 1);
    document.set_sink([](const store::JournalEntry& /*entry*/) {});
    Times hurts;
    Times turns;
    carry_out_turns(document, rulebook, hurts, turns);
    hurts.print("hurt one of 40");
    turns.print("next turn with 40");
    Times undos;
    for (int i = 0; i < 100; ++i)
        undos.take([&] { document.undo(); });
    undos.print("undo with 40");
    Times copies;
    for (int i = 0; i < 20; ++i)
        copies.take([&] { const game::Campaign copy = document.view(); });
    copies.print("copy for a snapshot");
    Times writes;
    std::string text;
    for (int i = 0; i < 20; ++i)
        writes.take([&] { text = store::write_campaign(document.view(), 1); });
    writes.print("campaign to text (writing thread)");
    Times reads;
    for (int i = 0; i < 20; ++i)
        reads.take([&] {
            static_cast<void>(store::read_campaign(text, "bench").loaded.has_value());
        });
    reads.print("text to campaign");
}

// From the edit to the acknowledgement.
void measure_durability(const rules::Rulebook& rulebook, const fs::path& folder) {
    const fs::path file = folder / "tablewick-bench.json";
    std::ofstream(file) << store::write_campaign(crowd(rulebook, 40), 1);
    std::mutex mutex;
    std::condition_variable bell;
    store::StoreOptions options;
    options.wake = [&] {
        const std::lock_guard guard(mutex);
        bell.notify_all();
    };
    {
        auto opened = store::CampaignStore::open(file, options);
        if (!opened) return;
        store::CampaignStore& store = *opened.value();
        store::CampaignDocument document(store.take_campaign(), store.revision());
        document.set_sink([&](const store::JournalEntry& entry) { store.add(entry); });
        Times durable;
        for (int i = 0; i < 100; ++i) {
            game::Edits edits;
            edits.add(&game::Campaign::encounter, "Next turn", [&](game::Encounter& encounter) {
                return game::advance_turn(encounter, rulebook);
            });
            durable.take([&] {
                static_cast<void>(document.carry_out(edits).ok());
                std::unique_lock lock(mutex);
                bell.wait_for(lock, std::chrono::seconds(5), [&] {
                    return store.durable_revision() >= document.revision();
                });
            });
        }
        durable.print("edit until durable");
    }
    std::error_code ignored;
    fs::remove_all(folder / "tablewick-bench.backups", ignored);
    for (const char* ending : {".json", ".journal", ".lock"})
        fs::remove(folder / (std::string("tablewick-bench") + ending), ignored);
}

} // namespace

int main(int argc, char** argv) {
    const auto rulebook = store::load_rulebook(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets",
        rules::Family::four_degree,
        rules::SrdEdition::srd_5_1
    );
    if (!rulebook) {
        std::puts(base::to_text(rulebook.error()).c_str());
        return 1;
    }
    measure_document(rulebook.value());
    measure_durability(rulebook.value(), argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path());
    return 0;
}
