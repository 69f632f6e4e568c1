#include "store/save_thread.h"

#include "store/campaign_json.h"
#include "store/time_text.h"

#include <algorithm>
#include <utility>

namespace store {

using base::Error;
using base::Nothing;
using base::Result;

namespace {

// Short, for the status bar; which of the files it was helps nobody there.
std::string cause_of(const Error& error) {
    return error.remedy.empty() ? error.message : error.message + " " + error.remedy;
}

} // namespace

SaveThread::SaveThread(
    Files& files,
    std::unique_ptr<CampaignWriter> writer,
    SaveTimes times,
    std::function<std::string()> now,
    std::function<void()> wake
)
    : files_(files), writer_(std::move(writer)), times_(times), now_(std::move(now)),
      wake_(std::move(wake)), durable_(writer_->durable_revision()),
      wants_snapshot_(writer_->must_rewrite()), written_revision_(writer_->durable_revision()) {
    writing_ = std::thread([this] { run(); });
}

SaveThread::~SaveThread() {
    {
        const std::lock_guard guard(mutex_);
        is_ending_ = true;
    }
    work_came_.notify_all();
    writing_.join();
    if (preparing_.joinable()) preparing_.join();
}

void SaveThread::add(const JournalEntry& entry) {
    {
        const std::lock_guard guard(mutex_);
        entries_.push_back(entry);
    }
    work_came_.notify_all();
}

void SaveThread::add_snapshot(const game::Campaign& campaign, std::uint64_t revision) {
    auto snapshot = std::make_unique<Snapshot>(Snapshot{campaign, revision});
    wants_snapshot_ = false;
    {
        const std::lock_guard guard(mutex_);
        snapshot_ = std::move(snapshot); // a newer one takes the place of one not begun
        snapshots_asked_ += 1;
    }
    work_came_.notify_all();
}

void SaveThread::add_copy(
    const Path& path, const game::Campaign& campaign, std::uint64_t revision
) {
    {
        const std::lock_guard guard(mutex_);
        copies_.push_back({path, {campaign, revision}});
    }
    work_came_.notify_all();
}

void SaveThread::keep_ours() {
    {
        const std::lock_guard guard(mutex_);
        keeps_ours_ = true;
    }
    work_came_.notify_all();
}

Result<Nothing> SaveThread::save_now(const game::Campaign& campaign, std::uint64_t revision) {
    add_snapshot(campaign, revision);
    std::unique_lock lock(mutex_);
    const std::uint64_t number = snapshots_asked_;
    snapshot_done_.wait(lock, [&] { return snapshots_done_ >= number; });
    return snapshot_outcome_;
}

SaveStanding SaveThread::standing() const {
    const std::lock_guard guard(mutex_);
    return standing_;
}

std::vector<std::string> SaveThread::take_messages() {
    const std::lock_guard guard(mutex_);
    return std::exchange(messages_, {});
}

void SaveThread::tell(std::string message) {
    const std::lock_guard guard(mutex_);
    messages_.push_back(std::move(message));
}

bool SaveThread::has_work() const {
    return !entries_.empty() || prepared_ != nullptr || !copies_.empty() || keeps_ours_ ||
           (snapshot_ != nullptr && !is_preparing_);
}

SaveThread::Clock::time_point SaveThread::next_look() const {
    Clock::time_point next = retry_at_;
    if (has_new_lines_ && !wants_snapshot_) next = std::min(next, oldest_line_ + times_.autosave);
    // A wait for "never" overflows in some libraries.
    return std::min(next, Clock::now() + std::chrono::hours(1));
}

SaveThread::Work SaveThread::take_work() {
    Work work;
    work.entries = std::exchange(entries_, {});
    work.prepared = std::move(prepared_);
    work.copies = std::exchange(copies_, {});
    work.keeps_ours = std::exchange(keeps_ours_, false);
    return work;
}

void SaveThread::run() {
    begin_session();
    for (;;) {
        Work work;
        {
            std::unique_lock lock(mutex_);
            work_came_.wait_until(lock, next_look(), [&] {
                return has_work() || (is_ending_ && !is_preparing_);
            });
            if (is_ending_ && !has_work() && !is_preparing_) return;
            work = take_work();
        }
        const bool is_retry = Clock::now() >= retry_at_;
        if (is_retry) retry_at_ = Clock::time_point::max();
        if (is_retry && std::exchange(retries_snapshot_, false)) wants_snapshot_ = true;
        if (is_retry || !work.entries.empty()) write_lines(work.entries);
        if (work.keeps_ours) {
            writer_->keep_ours();
            wants_snapshot_ = true;
        }
        if (work.prepared != nullptr) finish_snapshot(std::move(*work.prepared));
        start_snapshot();
        write_copies(work.copies);
        look_at_clock();
        publish();
    }
}

void SaveThread::begin_session() {
    const auto begun = writer_->begin_session(file_stamp(now_()));
    if (!begun) tell("No backup of the session's start: " + base::to_text(begun.error()));
    publish();
}

void SaveThread::write_lines(const std::vector<JournalEntry>& entries) {
    const auto appended = writer_->append(entries);
    if (!entries.empty() && !has_new_lines_) {
        has_new_lines_ = true;
        oldest_line_ = Clock::now();
    }
    durable_ = writer_->durable_revision();
    lines_cause_.clear();
    if (appended) return;
    // Before the first snapshot of a recovered campaign lines only wait; that is no failure.
    if (!writer_->must_rewrite()) lines_cause_ = cause_of(appended.error());
    retry_at_ = std::min(retry_at_, Clock::now() + times_.retry);
}

// A file without a new edit is not touched.
bool SaveThread::is_written(std::uint64_t revision) const {
    return revision == written_revision_ && !writer_->must_rewrite() && !writer_->keeps_ours();
}

void SaveThread::start_snapshot() {
    std::unique_ptr<Snapshot> snapshot;
    {
        const std::lock_guard guard(mutex_);
        // One that is prepared but not yet in its place still needs the temporary file.
        if (is_preparing_ || prepared_ != nullptr || snapshot_ == nullptr) return;
        snapshot = std::move(snapshot_);
        preparing_number_ = snapshots_asked_;
        is_preparing_ = !is_written(snapshot->revision);
        if (!is_preparing_) {
            snapshots_done_ = preparing_number_;
            snapshot_outcome_ = Nothing{};
            snapshot_done_.notify_all();
            return;
        }
    }
    if (preparing_.joinable()) preparing_.join();
    preparing_ = std::thread([this, taken = std::move(snapshot)] {
        auto prepared = std::make_unique<Result<PreparedFile>>(
            writer_->prepare(taken->campaign, taken->revision)
        );
        {
            const std::lock_guard guard(mutex_);
            prepared_ = std::move(prepared);
            is_preparing_ = false;
        }
        work_came_.notify_all();
    });
}

void SaveThread::snapshot_failed(const Error& error) {
    snapshot_cause_ = cause_of(error);
    retries_snapshot_ = true;
    retry_at_ = std::min(retry_at_, Clock::now() + times_.retry);
}

void SaveThread::finish_snapshot(Result<PreparedFile> prepared) {
    Result<Nothing> outcome = Nothing{};
    if (!prepared)
        outcome = prepared.error();
    else
        outcome = writer_->finish(prepared.value(), file_stamp(now_()));
    durable_ = writer_->durable_revision();
    if (outcome) {
        snapshot_cause_.clear();
        lines_cause_.clear();
        written_revision_ = prepared.value().mark.revision;
        has_new_lines_ = writer_->journal_bytes() > 0;
        oldest_line_ = Clock::now();
        if (Clock::now() - last_backup_ >= times_.backup) {
            last_backup_ = Clock::now();
            const auto kept = writer_->backup(prepared.value().text, file_stamp(now_()));
            if (!kept) tell("No backup of this hour: " + base::to_text(kept.error()));
        }
    } else {
        snapshot_failed(outcome.error());
    }
    {
        const std::lock_guard guard(mutex_);
        snapshots_done_ = preparing_number_;
        snapshot_outcome_ = outcome;
    }
    snapshot_done_.notify_all();
}

void SaveThread::write_copies(std::deque<Copy>& copies) {
    for (const Copy& copy : copies) {
        const Path path = unused(files_, copy.path);
        const std::string text = write_campaign(copy.snapshot.campaign, copy.snapshot.revision);
        const auto written = write_whole(files_, path.string() + ".writing", path, text);
        tell(
            written ? "A copy was saved as " + path.string() + "."
                    : "The copy was not saved. " + base::to_text(written.error())
        );
    }
}

void SaveThread::look_at_clock() {
    const bool is_due = has_new_lines_ && (Clock::now() - oldest_line_ >= times_.autosave ||
                                           writer_->journal_bytes() > times_.journal_bytes_max);
    if (is_due) wants_snapshot_ = true;
}

void SaveThread::publish() {
    SaveStanding now;
    now.is_changed_outside = writer_->conflict_copy().has_value();
    now.cause = lines_cause_;
    if (now.cause.empty() && writer_->must_rewrite()) now.cause = snapshot_cause_;
    if (!snapshot_cause_.empty() && now.cause.empty() && snapshot_cause_ != told_cause_)
        tell(
            "The campaign file could not be written; every edit is safe in the journal. " +
            snapshot_cause_
        );
    told_cause_ = snapshot_cause_;
    if (now.is_changed_outside && !told_of_conflict_)
        tell(
            "The campaign file was changed by another program. Yours is kept as " +
            writer_->conflict_copy()->filename().string() + "; choose which one goes on."
        );
    if (!now.is_changed_outside && told_of_conflict_ && writer_->theirs_copy())
        tell(
            "Yours goes on. The other version is kept as " +
            writer_->theirs_copy()->filename().string() + "."
        );
    told_of_conflict_ = now.is_changed_outside;
    {
        const std::lock_guard guard(mutex_);
        standing_ = std::move(now);
    }
    if (wake_) wake_();
}

} // namespace store
