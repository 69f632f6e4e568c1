// The campaign on the disk, as the program uses it.
//
//   auto opened = CampaignStore::open(path, options);
//   CampaignDocument document(store.take_campaign(), store.revision());
//   document.set_sink([&](const JournalEntry& entry) { store.add(entry); });
//   each frame: store.look_after(document);   at the end: store.save_now(document);
//
// Files, for a campaign NAME.json:
//   NAME.json      the campaign, written whole and atomically now and then, and at the end
//   NAME.journal   every edit since, one checksummed line each, durable within 50 ms
//   NAME.backups/  copies by session and hour, thinned
//   NAME.lock      one writer; others open read-only and say who writes
//   NAME.mine-STAMP.json, NAME.theirs-STAMP.json   the two sides when another program changed the
//                  file; neither is ever written over
//   NAME.journal.aside-STAMP   journal lines that fit no state of the file
#pragma once

#include "store/campaign_open.h"
#include "store/document.h"
#include "store/save_thread.h"

#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace store {

struct StoreOptions {
    Files* files = nullptr;           // none: the disk
    std::function<std::string()> now; // UTC; none: the clock
    std::function<void()> wake;       // called on another thread when something changed
    SaveTimes times{};
};

enum class SaveKind { saved, saving, not_saved, read_only };

struct SaveState {
    SaveKind kind = SaveKind::saved;
    std::string cause; // of not_saved and read_only
    bool is_changed_outside = false;
    std::uint64_t durable_revision = 0;

    bool operator==(const SaveState&) const = default;
};

class CampaignStore {
public:
    static base::Result<std::unique_ptr<CampaignStore>>
    open(const Path& path, StoreOptions options = {});
    ~CampaignStore();
    CampaignStore(const CampaignStore&) = delete;
    CampaignStore& operator=(const CampaignStore&) = delete;

    // What was opened; to be taken once.
    game::Campaign take_campaign() { return std::move(loaded_.campaign); }

    std::uint64_t revision() const { return loaded_.revision; }

    const Path& file() const { return paths_.file; }

    bool is_read_only() const { return saving_ == nullptr; }

    // The document's sink. Read-only: does nothing.
    void add(const JournalEntry& entry);

    // On the render thread, after `wake` or once a frame: hands over a copy of the campaign when
    // one is due. Returns at once.
    void look_after(const CampaignDocument& document);

    SaveState state(std::uint64_t current_revision) const;
    std::uint64_t durable_revision() const;

    // For the person, since the last call; first those of opening.
    std::vector<std::string> take_messages();

    // Another program changed the file: ours goes on (theirs is kept beside), or theirs (ours is).
    void keep_ours();
    base::Result<LoadedCampaign> take_theirs(const CampaignDocument& document);

    // A whole copy elsewhere, when this place cannot be written; a message tells how it went.
    void save_copy_to(const Path& path, const CampaignDocument& document);

    // Waits until all is in the file; at the end of the program.
    base::Result<base::Nothing> save_now(const CampaignDocument& document);

private:
    explicit CampaignStore(StoreOptions options);
    base::Result<base::Nothing> start(const Path& path);

    StoreOptions options_;
    Files& files_;
    StorePaths paths_;
    LoadedCampaign loaded_;
    std::string read_only_cause_;
    std::vector<std::string> messages_;
    std::unique_ptr<SaveThread> saving_; // none when read-only
};

// Writes a new campaign file; refuses to write over one.
base::Result<base::Nothing>
write_new_campaign(Files& files, const Path& path, const game::Campaign& campaign);

} // namespace store
