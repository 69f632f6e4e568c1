#include "store/campaign_store.h"

#include "store/campaign_json.h"
#include "store/time_text.h"

#include <algorithm>
#include <utility>

namespace store {

using base::Error;
using base::ErrorKind;
using base::Nothing;
using base::Result;

CampaignStore::CampaignStore(StoreOptions options)
    : options_(std::move(options)), files_(options_.files != nullptr ? *options_.files : disk()) {
    if (!options_.now) options_.now = utc_now;
}

CampaignStore::~CampaignStore() = default;

Result<std::unique_ptr<CampaignStore>> CampaignStore::open(const Path& path, StoreOptions options) {
    std::unique_ptr<CampaignStore> store(new CampaignStore(std::move(options)));
    if (auto started = store->start(path); !started) return started.error();
    return store;
}

Result<Nothing> CampaignStore::start(const Path& path) {
    const std::string now = options_.now();
    auto result = open_campaign(files_, path, holder_text(now), file_stamp(now));
    if (!result) return result.error();
    OpenedCampaign& opened = result.value();
    paths_ = opened.paths;
    loaded_ = std::move(opened.loaded);
    read_only_cause_ = opened.read_only_cause;
    messages_.insert(messages_.end(), opened.messages.begin(), opened.messages.end());
    if (!opened.start) return Nothing{};
    saving_ = std::make_unique<SaveThread>(
        files_,
        std::make_unique<CampaignWriter>(files_, paths_, std::move(*opened.start)),
        options_.times,
        options_.now,
        options_.wake
    );
    return Nothing{};
}

void CampaignStore::add(const JournalEntry& entry) {
    if (saving_ != nullptr) saving_->add(entry);
}

void CampaignStore::look_after(const CampaignDocument& document) {
    if (saving_ != nullptr && saving_->wants_snapshot())
        saving_->add_snapshot(document.view(), document.revision());
}

std::uint64_t CampaignStore::durable_revision() const {
    return saving_ != nullptr ? saving_->durable_revision() : loaded_.revision;
}

SaveState CampaignStore::state(std::uint64_t current_revision) const {
    SaveState state;
    state.durable_revision = durable_revision();
    if (saving_ == nullptr) {
        state.kind = SaveKind::read_only;
        state.cause = read_only_cause_;
        return state;
    }
    const SaveStanding standing = saving_->standing();
    state.is_changed_outside = standing.is_changed_outside;
    if (state.durable_revision >= current_revision) return state;
    state.kind = standing.cause.empty() ? SaveKind::saving : SaveKind::not_saved;
    state.cause = standing.cause;
    return state;
}

std::vector<std::string> CampaignStore::take_messages() {
    std::vector<std::string> messages = std::exchange(messages_, {});
    if (saving_ != nullptr)
        for (std::string& message : saving_->take_messages())
            messages.push_back(std::move(message));
    return messages;
}

void CampaignStore::keep_ours() {
    if (saving_ != nullptr) saving_->keep_ours();
}

Result<LoadedCampaign> CampaignStore::take_theirs(const CampaignDocument& document) {
    if (auto saved = save_now(document); !saved) return saved.error();
    for (std::string& message : take_messages())
        messages_.push_back(std::move(message));
    saving_.reset();
    if (auto started = start(paths_.file); !started) {
        read_only_cause_ = base::to_text(started.error());
        return started.error();
    }
    return LoadedCampaign{std::exchange(loaded_.campaign, {}), loaded_.revision, loaded_.version};
}

void CampaignStore::save_copy_to(const Path& path, const CampaignDocument& document) {
    if (saving_ != nullptr) {
        saving_->add_copy(path, document.view(), document.revision());
        return;
    }
    const auto written = write_new_campaign(files_, path, document.view());
    messages_.push_back(
        written ? "A copy was saved as " + path.string() + "."
                : "The copy was not saved. " + base::to_text(written.error())
    );
}

Result<Nothing> CampaignStore::save_now(const CampaignDocument& document) {
    if (saving_ == nullptr) return Nothing{};
    return saving_->save_now(document.view(), document.revision());
}

Result<Nothing> write_new_campaign(Files& files, const Path& path, const game::Campaign& campaign) {
    if (files.state(path).ok())
        return with_path(
            {ErrorKind::cannot_write, "There is a file of that name already.", {}, {}}, path
        );
    return write_whole(files, path.string() + ".writing", path, write_campaign(campaign, 0));
}

} // namespace store
