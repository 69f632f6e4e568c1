// Brings edits and snapshots onto the disk, in an order that leaves a good state at every moment:
//   an edit     one line appended to the journal and synced
//   a snapshot  the new file under a temporary name, synced; a base line for it in the journal,
//               synced; rename; sync of the folder; a new journal with the lines that are newer
// Whatever happens in between, file and journal together give the last edit that was acknowledged.
// After a failure nothing on disk is trusted: the journal is written anew from memory.
// No threads here; see save_thread.h.
#pragma once

#include "game/campaign.h"
#include "store/journal_text.h"
#include "store/store_paths.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace store {

// The next content of the campaign file, synced under a temporary name.
struct PreparedFile {
    std::string text;
    FileMark mark;
};

// The state of the disk that a session starts from.
struct WriterStart {
    FileMark mark;                    // of NAME.json as it was read
    FileState state{};                // likewise
    int version = 0;                  // of the file format, before migration
    std::string text;                 // its content, for the backup of the session start
    bool must_rewrite = false;        // the file must be written before any journal line
    std::unique_ptr<FileLock> lock;   // none: to be taken before the first write
    std::string holder;               // text for the lock
    std::optional<FileState> journal; // as it was when it was read
};

class CampaignWriter {
public:
    CampaignWriter(Files& files, StorePaths paths, WriterStart start);

    // Once, before anything else is written; again until it succeeds.
    base::Result<base::Nothing> begin_session(const std::string& stamp);

    // Lines are kept until they are durable; an error means: not yet, call again (with none).
    base::Result<base::Nothing> append(const std::vector<JournalEntry>& entries);

    std::uint64_t durable_revision() const { return durable_revision_; }

    bool must_rewrite() const { return must_rewrite_; }

    std::size_t journal_bytes() const;

    // Writes and syncs the temporary file. Touches nothing of this object, so it may run beside it.
    base::Result<PreparedFile>
    prepare(const game::Campaign& campaign, std::uint64_t revision) const;

    // Puts it in its place. When the file was changed by someone else meanwhile, it goes beside it
    // and `conflict_copy` names where; so do all that follow, until the person decides.
    base::Result<base::Nothing> finish(const PreparedFile& prepared, const std::string& stamp);

    const std::optional<Path>& conflict_copy() const { return conflict_copy_; }

    // The next snapshot takes the place of the other file, which is copied beside first.
    void keep_ours() { keeps_ours_ = true; }

    bool keeps_ours() const { return keeps_ours_; }

    // Where it was copied to.
    const std::optional<Path>& theirs_copy() const { return theirs_copy_; }

    base::Result<base::Nothing> backup(std::string_view text, const std::string& stamp);

    const StorePaths& paths() const { return paths_; }

private:
    struct Line {
        std::uint64_t revision = 0;
        std::string text;
    };

    base::Result<base::Nothing> ensure_lock();
    base::Result<base::Nothing> ensure_journal();
    base::Result<base::Nothing> write_to_journal(const std::string& text);
    base::Result<bool> is_changed_outside();
    base::Result<base::Nothing> settle_conflict(const std::string& stamp);
    base::Result<base::Nothing> put_in_place(const PreparedFile& prepared, const Path& target);

    Files& files_;
    StorePaths paths_;
    std::unique_ptr<FileLock> lock_;
    std::string holder_;
    std::string start_text_; // until its backup is made
    int start_version_;
    bool is_session_begun_ = false;
    bool must_rewrite_;
    std::vector<FileMark> bases_;    // states of the file that the journal's lines fit
    std::optional<FileState> known_; // how NAME.json looks when only we wrote it; none: not there
    FileMark known_mark_;
    std::optional<FileState> journal_at_start_;
    std::optional<Path> conflict_copy_;
    std::optional<Path> theirs_copy_;
    bool keeps_ours_ = false;
    std::vector<Line> lines_; // newer than the oldest of bases_
    std::size_t lines_bytes_ = 0;
    std::uint64_t durable_revision_;
    std::unique_ptr<OpenFile> journal_; // open only while what is on disk is known to be good
};

} // namespace store
