// The thread that writes. Edits come in as journal lines and are durable within 50 ms; snapshots
// come in as copies of the campaign, are turned into text on a second thread, so that a large
// campaign does not hold up the lines, and put in place by the first. Failures are kept as a cause
// and tried again. Nothing here waits for the disk on the caller's thread but save_now and the
// destructor.
#pragma once

#include "store/campaign_writer.h"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

namespace store {

struct SaveTimes {
    std::chrono::milliseconds autosave{120'000}; // from the first edit that only the journal has
    std::chrono::milliseconds retry{2'000};
    std::chrono::milliseconds backup{3'600'000};
    std::size_t journal_bytes_max = std::size_t{1} << 20;
};

// How it stands with the disk, apart from the revision.
struct SaveStanding {
    std::string cause; // why edits are not durable; empty: nothing hinders
    bool is_changed_outside = false;

    bool operator==(const SaveStanding&) const = default;
};

class SaveThread {
public:
    SaveThread(
        Files& files,
        std::unique_ptr<CampaignWriter> writer,
        SaveTimes times,
        std::function<std::string()> now,
        std::function<void()> wake
    );
    ~SaveThread(); // waits for the lines that came in; makes no snapshot
    SaveThread(const SaveThread&) = delete;
    SaveThread& operator=(const SaveThread&) = delete;

    void add(const JournalEntry& entry);
    void add_snapshot(const game::Campaign& campaign, std::uint64_t revision);
    void add_copy(const Path& path, const game::Campaign& campaign, std::uint64_t revision);
    void keep_ours();

    // Waits until this state is in the campaign file (or beside it, in a conflict), or why not.
    base::Result<base::Nothing> save_now(const game::Campaign& campaign, std::uint64_t revision);

    std::uint64_t durable_revision() const { return durable_; }

    bool wants_snapshot() const { return wants_snapshot_; }

    SaveStanding standing() const;
    std::vector<std::string> take_messages();

private:
    using Clock = std::chrono::steady_clock;

    struct Snapshot {
        game::Campaign campaign;
        std::uint64_t revision = 0;
    };

    struct Copy {
        Path path;
        Snapshot snapshot;
    };

    struct Work {
        std::vector<JournalEntry> entries;
        std::unique_ptr<base::Result<PreparedFile>> prepared;
        std::deque<Copy> copies;
        bool keeps_ours = false;
    };

    void run();
    bool has_work() const;
    Clock::time_point next_look() const;
    Work take_work();
    void begin_session();
    void write_lines(const std::vector<JournalEntry>& entries);
    bool is_written(std::uint64_t revision) const;
    void start_snapshot();
    void finish_snapshot(base::Result<PreparedFile> prepared);
    void snapshot_failed(const base::Error& error);
    void write_copies(std::deque<Copy>& copies);
    void look_at_clock();
    void publish();
    void tell(std::string message);

    Files& files_;
    std::unique_ptr<CampaignWriter> writer_; // of the writing thread alone
    SaveTimes times_;
    std::function<std::string()> now_;
    std::function<void()> wake_;

    std::atomic<std::uint64_t> durable_;
    std::atomic<bool> wants_snapshot_ = false;

    mutable std::mutex mutex_; // guards what follows, up to the blank line
    std::condition_variable work_came_;
    std::condition_variable snapshot_done_;
    std::vector<JournalEntry> entries_;
    std::unique_ptr<Snapshot> snapshot_;
    std::unique_ptr<base::Result<PreparedFile>> prepared_;
    std::deque<Copy> copies_;
    std::vector<std::string> messages_;
    SaveStanding standing_;
    bool keeps_ours_ = false;
    bool is_preparing_ = false;
    bool is_ending_ = false;
    std::uint64_t snapshots_asked_ = 0;
    std::uint64_t snapshots_done_ = 0;
    std::uint64_t preparing_number_ = 0;
    base::Result<base::Nothing> snapshot_outcome_ = base::Nothing{};

    // Of the writing thread alone.
    std::uint64_t written_revision_;
    std::string lines_cause_;
    std::string snapshot_cause_;
    std::string told_cause_;
    bool has_new_lines_ = false; // that only the journal has
    Clock::time_point oldest_line_{};
    Clock::time_point last_backup_ = Clock::now();
    Clock::time_point retry_at_ = Clock::time_point::max();
    bool retries_snapshot_ = false; // at retry_at_; not at once, or a full disk would keep us busy
    bool told_of_conflict_ = false;

    std::thread preparing_;
    std::thread writing_;
};

} // namespace store
