#include "store/rehearsal.h"

#include "store/campaign_store.h"
#include "store/rehearsal_edits.h"
#include "store/rulebook_json.h"

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <ostream>

namespace store {

namespace {

// Lets the loop below wait for news from the writing thread, as the program's loop waits for
// events.
class Bell {
public:
    void ring() {
        {
            const std::lock_guard guard(mutex_);
            has_rung_ = true;
        }
        rung_.notify_all();
    }

    void wait() {
        std::unique_lock lock(mutex_);
        rung_.wait_for(lock, std::chrono::milliseconds(50), [&] { return has_rung_; });
        has_rung_ = false;
    }

private:
    std::mutex mutex_;
    std::condition_variable rung_;
    bool has_rung_ = false;
};

class Rehearsal {
public:
    Rehearsal(
        CampaignStore& store,
        const rules::Rulebook& rulebook,
        game::Campaign campaign,
        std::uint64_t seed,
        std::ostream& out
    )
        : store_(store), document_(std::move(campaign), store.revision()), edits_(rulebook, seed),
          pace_(seed), out_(out) {
        document_.set_sink([this](const JournalEntry& entry) { store_.add(entry); });
    }

    bool run(int count, Bell& bell) {
        for (int i = 0; i < count; ++i) {
            if (!make_edit()) return false;
            say("made", document_.revision(), said_made_);
            store_.look_after(document_);
            // Mostly hand in hand with the disk, sometimes far ahead of it.
            if (pace_() % 3 != 0) bell.wait();
            say("durable", store_.durable_revision(), said_durable_);
            if (pace_() % 20 == 0 && !save()) return false;
        }
        return save();
    }

private:
    bool make_edit() {
        const auto done = rehearse_step(document_, edits_);
        if (!done) out_ << base::to_text(done.error()) << std::endl;
        return done.ok();
    }

    bool save() {
        const auto saved = store_.save_now(document_);
        if (!saved) out_ << base::to_text(saved.error()) << std::endl;
        say("durable", store_.durable_revision(), said_durable_);
        return saved.ok();
    }

    // Flushed, because what was said before the kill is what the test relies on.
    void say(const char* word, std::uint64_t revision, std::uint64_t& said) {
        if (revision == said) return;
        said = revision;
        out_ << word << ' ' << revision << std::endl;
    }

    CampaignStore& store_;
    CampaignDocument document_;
    RehearsalEdits edits_;
    std::mt19937_64 pace_; // apart from the edits, which a test repeats
    std::ostream& out_;
    std::uint64_t said_made_ = 0;
    std::uint64_t said_durable_ = 0;
};

} // namespace

int run_rehearsal(
    const std::filesystem::path& path,
    const std::filesystem::path& assets_folder,
    int count,
    std::uint64_t seed,
    std::ostream& out
) {
    Bell bell;
    StoreOptions options;
    options.wake = [&bell] { bell.ring(); };
    auto opened = CampaignStore::open(path, options);
    if (!opened) {
        out << base::to_text(opened.error()) << std::endl;
        return 1;
    }
    CampaignStore& store = *opened.value();
    for (const std::string& message : store.take_messages())
        out << message << std::endl;
    if (store.is_read_only()) {
        out << store.state(0).cause << std::endl;
        return 1;
    }
    game::Campaign campaign = store.take_campaign();
    const auto rulebook =
        load_rulebook(assets_folder, campaign.about.rules, campaign.about.srd_edition);
    if (!rulebook) {
        out << base::to_text(rulebook.error()) << std::endl;
        return 1;
    }
    out << "opened " << store.revision() << std::endl;
    Rehearsal rehearsal(store, rulebook.value(), std::move(campaign), seed, out);
    return rehearsal.run(count, bell) ? 0 : 1;
}

} // namespace store
