#include "app/stored_campaign.h"

#include "store/calendars.h"
#include "store/campaign_rulebook.h"
#include "store/climate_json.h"
#include "store/creature_library.h"
#include "store/name_lists.h"
#include "store/prices.h"
#include "store/text_file.h"

#include <chrono>
#include <future>
#include <mutex>
#include <thread>
#include <utility>

namespace app {

namespace {

// What a campaign is played by. What cannot be read is left out, and a message says so: a campaign
// can still be looked at and kept.
struct PlayedBy {
    rules::Rulebook rulebook;
    std::vector<game::LibraryCreature> library;
    rules::PriceBook prices;
    game::Reference reference;
    std::vector<std::string> messages;
};

PlayedBy read_rules(
    const std::filesystem::path& assets, game::About about, const std::filesystem::path& campaign
) {
    PlayedBy read;
    auto book = store::load_campaign_rulebook(assets, about, campaign);
    if (!book.ok()) {
        read.messages.push_back(base::to_text(book.error()));
        if (!about.house_rules.empty()) {
            read.messages.emplace_back("The game goes on without house rules.");
            about.house_rules.clear();
            book = store::load_campaign_rulebook(assets, about, campaign);
        }
    }
    if (book.ok())
        read.rulebook = std::move(book).value();
    else
        read.rulebook.family = about.rules;
    auto creatures = store::load_creature_library(assets, read.rulebook);
    if (creatures.ok())
        read.library = std::move(creatures).value();
    else
        read.messages.push_back(base::to_text(creatures.error()));
    const auto read_prices = [&] {
        return store::load_prices(
            assets, about.rules, about.srd_edition, store::house_rules_path(about, campaign)
        );
    };
    auto prices = read_prices();
    if (!prices.ok()) {
        read.messages.push_back(base::to_text(prices.error()));
        about.house_rules.clear();
        prices = read_prices();
    }
    if (prices.ok()) read.prices = std::move(prices).value();
    auto reference = store::load_campaign_reference(assets, about, campaign);
    if (reference.ok())
        read.reference = std::move(reference).value();
    else
        read.messages.push_back(base::to_text(reference.error()));
    return read;
}

bool plays_by_the_same(const game::About& one, const game::About& other) {
    return one.rules == other.rules && one.srd_edition == other.srd_edition &&
           one.house_rules == other.house_rules;
}

class StoredCampaign : public OpenCampaign {
public:
    StoredCampaign(
        std::unique_ptr<store::CampaignStore> store,
        const std::filesystem::path& file,
        std::filesystem::path assets,
        std::function<void()> wake
    )
        : store_(std::move(store)), file_(file.string()), assets_(std::move(assets)),
          wake_(std::move(wake)) {
        store::ClimateReading climates = store::load_climates(assets_);
        climates_ = std::move(climates.climates);
        for (const base::Error& problem : climates.problems)
            messages_.push_back(base::to_text(problem));
        const std::uint64_t revision = store_->revision();
        store::NameListReading lists = store::load_name_lists(assets_);
        name_lists_ = std::move(lists.lists);
        for (const base::Error& problem : lists.problems)
            messages_.push_back(base::to_text(problem));
        store::ReadyCalendars ready = store::load_calendars(assets_);
        calendars_ = std::move(ready.calendars);
        for (const base::Error& problem : ready.errors)
            messages_.push_back(base::to_text(problem));
        start({store_->take_campaign(), revision});
    }

    store::CampaignDocument& document() override { return *document_; }

    const rules::Rulebook& rulebook() const override { return rulebook_; }

    const std::vector<game::LibraryCreature>& library() const override { return library_; }

    const rules::PriceBook& prices() const override { return prices_; }

    const std::string& file_name() const override { return file_; }

    void read_rules_again() override { wants_rules_ = true; }

    const std::vector<game::ReadyNameList>& name_lists() const override { return name_lists_; }

    const std::vector<game::Calendar>& calendars() const override { return calendars_; }

    const game::Climates& climates() const override { return climates_; }

    const game::Reference& reference() const override { return reference_; }

    store::SaveState save_state() const override { return store_->state(document_->revision()); }

    std::vector<std::string> take_messages() override {
        std::vector<std::string> all = std::exchange(messages_, {});
        for (std::string& message : store_->take_messages())
            all.push_back(std::move(message));
        const std::lock_guard lock(saved_mutex_);
        for (std::string& message : std::exchange(saved_messages_, {}))
            all.push_back(std::move(message));
        return all;
    }

    void keep_ours() override { store_->keep_ours(); }

    void take_theirs() override {
        auto theirs = store_->take_theirs(*document_);
        if (theirs.ok())
            start(std::move(theirs).value());
        else
            messages_.push_back(base::to_text(theirs.error()));
    }

    void save_copy_to(const std::filesystem::path& file) override {
        store_->save_copy_to(file, *document_);
    }

    void save_text(const std::string& path, const std::string& text) override {
        saver_ = std::jthread([this, path, text] {
            const auto saved = store::write_text_file(path, text);
            std::string message =
                saved.ok() ? "Saved as " + path + "." : base::to_text(saved.error());
            {
                const std::lock_guard lock(saved_mutex_);
                saved_messages_.push_back(std::move(message));
            }
            if (wake_) wake_();
        });
    }

    bool look_after() override {
        store_->look_after(*document_);
        store::SaveState now = save_state();
        // The number of the last durable revision alone is not shown.
        now.durable_revision = 0;
        bool has_changed = now != shown_;
        shown_ = std::move(now);
        has_changed |= look_after_rules();
        return has_changed;
    }

    base::Result<base::Nothing> finish() override { return store_->save_now(*document_); }

private:
    void start(store::LoadedCampaign loaded) {
        played_by_ = loaded.campaign.about;
        take(read_rules(assets_, played_by_, file_));
        document_ =
            std::make_unique<store::CampaignDocument>(std::move(loaded.campaign), loaded.revision);
        document_->set_sink([this](const store::JournalEntry& entry) { store_->add(entry); });
    }

    void take(PlayedBy read) {
        rulebook_ = std::move(read.rulebook);
        library_ = std::move(read.library);
        prices_ = std::move(read.prices);
        reference_ = std::move(read.reference);
        for (std::string& message : read.messages)
            messages_.push_back(std::move(message));
    }

    // Other rules are read on a thread of their own: what draws never waits for the disk.
    bool look_after_rules() {
        using std::chrono::seconds;
        if (reading_.valid()) {
            if (reading_.wait_for(seconds(0)) != std::future_status::ready) return false;
            take(reading_.get());
            return true;
        }
        const game::About& about = document_->view().about;
        if (!wants_rules_ && plays_by_the_same(about, played_by_)) return false;
        wants_rules_ = false;
        played_by_ = about;
        std::promise<PlayedBy> promise;
        reading_ = promise.get_future();
        reader_ = std::jthread([this, about, promise = std::move(promise)]() mutable {
            promise.set_value(read_rules(assets_, about, file_));
            if (wake_) wake_();
        });
        return false;
    }

    std::unique_ptr<store::CampaignStore> store_;
    std::string file_;
    std::filesystem::path assets_;
    std::function<void()> wake_;
    rules::Rulebook rulebook_; // edits that are queued point to it, so it stays at its place
    std::vector<game::LibraryCreature> library_;
    rules::PriceBook prices_;
    std::vector<game::ReadyNameList> name_lists_;
    game::Climates climates_;
    game::Reference reference_;
    std::vector<game::Calendar> calendars_;
    std::unique_ptr<store::CampaignDocument> document_;
    std::vector<std::string> messages_;
    store::SaveState shown_;
    game::About played_by_;
    bool wants_rules_ = false;
    std::future<PlayedBy> reading_;
    std::mutex saved_mutex_;
    std::vector<std::string> saved_messages_; // written by the saver
    std::jthread saver_;
    std::jthread reader_; // last, so that they are waited for while the rest still stands
};

} // namespace

base::Result<std::unique_ptr<OpenCampaign>> open_stored(
    const std::filesystem::path& file,
    const std::filesystem::path& assets,
    std::function<void()> wake
) {
    store::StoreOptions options;
    options.wake = wake;
    auto opened = store::CampaignStore::open(file, std::move(options));
    if (!opened.ok()) return opened.error();
    std::unique_ptr<OpenCampaign> campaign =
        std::make_unique<StoredCampaign>(std::move(opened).value(), file, assets, std::move(wake));
    return campaign;
}

} // namespace app
