#include "app/stored_campaign.h"

#include "store/creature_library.h"
#include "store/rulebook_json.h"

#include <utility>

namespace app {

namespace {

class StoredCampaign : public OpenCampaign {
public:
    StoredCampaign(std::unique_ptr<store::CampaignStore> store, std::filesystem::path assets)
        : store_(std::move(store)), assets_(std::move(assets)) {
        const std::uint64_t revision = store_->revision();
        start({store_->take_campaign(), revision});
    }

    store::CampaignDocument& document() override { return *document_; }

    const rules::Rulebook& rulebook() const override { return rulebook_; }

    const std::vector<game::LibraryCreature>& library() const override { return library_; }

    store::SaveState save_state() const override { return store_->state(document_->revision()); }

    std::vector<std::string> take_messages() override {
        std::vector<std::string> all = std::exchange(messages_, {});
        for (std::string& message : store_->take_messages())
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

    bool look_after() override {
        store_->look_after(*document_);
        store::SaveState now = save_state();
        // The number of the last durable revision alone is not shown.
        now.durable_revision = 0;
        const bool has_changed = now != shown_;
        shown_ = std::move(now);
        return has_changed;
    }

    base::Result<base::Nothing> finish() override { return store_->save_now(*document_); }

private:
    // A rulebook that cannot be read leaves a campaign that can still be looked at and kept.
    void start(store::LoadedCampaign loaded) {
        const game::About& about = loaded.campaign.about;
        auto book = store::load_rulebook(assets_, about.rules, about.srd_edition);
        if (book.ok()) {
            rulebook_ = std::move(book).value();
        } else {
            rulebook_ = rules::Rulebook();
            rulebook_.family = about.rules;
            messages_.push_back(base::to_text(book.error()));
        }
        auto creatures = store::load_creature_library(assets_, rulebook_);
        library_.clear();
        if (creatures.ok())
            library_ = std::move(creatures).value();
        else
            messages_.push_back(base::to_text(creatures.error()));
        document_ =
            std::make_unique<store::CampaignDocument>(std::move(loaded.campaign), loaded.revision);
        document_->set_sink([this](const store::JournalEntry& entry) { store_->add(entry); });
    }

    std::unique_ptr<store::CampaignStore> store_;
    std::filesystem::path assets_;
    rules::Rulebook rulebook_; // edits that are queued point to it, so it stays at its place
    std::vector<game::LibraryCreature> library_;
    std::unique_ptr<store::CampaignDocument> document_;
    std::vector<std::string> messages_;
    store::SaveState shown_;
};

} // namespace

base::Result<std::unique_ptr<OpenCampaign>> open_stored(
    const std::filesystem::path& file,
    const std::filesystem::path& assets,
    std::function<void()> wake
) {
    store::StoreOptions options;
    options.wake = std::move(wake);
    auto opened = store::CampaignStore::open(file, std::move(options));
    if (!opened.ok()) return opened.error();
    std::unique_ptr<OpenCampaign> campaign =
        std::make_unique<StoredCampaign>(std::move(opened).value(), assets);
    return campaign;
}

} // namespace app
