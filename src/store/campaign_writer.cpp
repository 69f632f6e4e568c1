#include "store/campaign_writer.h"

#include "store/backups.h"
#include "store/campaign_json.h"
#include "store/checksum.h"

#include <algorithm>

namespace store {

using base::Error;
using base::ErrorKind;
using base::Nothing;
using base::Result;

CampaignWriter::CampaignWriter(Files& files, StorePaths paths, WriterStart start)
    : files_(files), paths_(std::move(paths)), lock_(std::move(start.lock)),
      holder_(std::move(start.holder)), start_text_(std::move(start.text)),
      start_version_(start.version), must_rewrite_(start.must_rewrite), bases_({start.mark}),
      known_(start.state), known_mark_(start.mark), journal_at_start_(start.journal),
      durable_revision_(start.mark.revision) {}

std::size_t CampaignWriter::journal_bytes() const {
    return lines_bytes_;
}

// A lock taken late (the folder could not be written at the start) only counts if nobody wrote a
// journal meanwhile: ours would take its place.
Result<Nothing> CampaignWriter::ensure_lock() {
    if (lock_ != nullptr) return Nothing{};
    auto locked = files_.lock(paths_.lock, holder_);
    if (!locked) {
        Error error = locked.error();
        if (error.kind == ErrorKind::locked)
            error.message = "Another program holds this campaign (" + error.message + ").";
        return error;
    }
    const auto journal = files_.state(paths_.journal);
    const auto now = journal ? std::optional(journal.value()) : std::nullopt;
    if (now != journal_at_start_)
        return Error{
            ErrorKind::changed_outside,
            "Another program worked on this campaign meanwhile.",
            {},
            "Save a copy to another place."};
    lock_ = std::move(locked).value();
    return Nothing{};
}

Result<Nothing> CampaignWriter::begin_session(const std::string& stamp) {
    if (is_session_begun_) return Nothing{};
    if (auto locked = ensure_lock(); !locked) return locked;
    if (start_version_ != file_version) {
        auto kept = keep_original(files_, paths_, start_text_, start_version_, stamp);
        if (!kept) return kept;
    } else if (auto kept = add_backup(files_, paths_, start_text_, stamp); !kept) {
        return kept;
    }
    start_text_.clear();
    start_text_.shrink_to_fit();
    is_session_begun_ = true;
    return Nothing{};
}

// Writes the whole journal anew: its base and every line since.
Result<Nothing> CampaignWriter::ensure_journal() {
    if (journal_ != nullptr) return Nothing{};
    std::string text;
    for (const FileMark& base : bases_)
        text += journal_line(base);
    for (const Line& line : lines_)
        text += line.text;
    auto written = write_whole(files_, paths_.temporary_journal, paths_.journal, text);
    if (!written) return written;
    auto opened = files_.append(paths_.journal);
    if (!opened) return opened.error();
    journal_ = std::move(opened).value();
    if (!lines_.empty()) durable_revision_ = lines_.back().revision;
    return Nothing{};
}

Result<Nothing> CampaignWriter::write_to_journal(const std::string& text) {
    auto written = journal_->write(text);
    if (written) written = journal_->sync();
    // What stands on the disk now is anybody's guess: it is written anew before it is used again.
    if (!written) journal_.reset();
    return written;
}

Result<Nothing> CampaignWriter::append(const std::vector<JournalEntry>& entries) {
    std::string text;
    for (const JournalEntry& entry : entries) {
        lines_.push_back({entry.revision, journal_line(entry)});
        lines_bytes_ += lines_.back().text.size();
        text += lines_.back().text;
    }
    if (auto locked = ensure_lock(); !locked) return locked;
    if (must_rewrite_)
        return Error{ErrorKind::cannot_write, "The campaign file is yet to be written.", {}, {}};
    if (journal_ == nullptr) return ensure_journal();
    if (text.empty()) return Nothing{};
    if (auto written = write_to_journal(text); !written) return written;
    durable_revision_ = lines_.back().revision;
    return Nothing{};
}

Result<PreparedFile>
CampaignWriter::prepare(const game::Campaign& campaign, std::uint64_t revision) const {
    PreparedFile prepared;
    prepared.text = write_campaign(campaign, revision);
    prepared.mark = mark_of(prepared.text, revision);
    auto written = write_synced(files_, paths_.temporary, paths_.file, prepared.text);
    if (!written) {
        static_cast<void>(files_.remove(paths_.temporary).ok());
        return written.error();
    }
    return prepared;
}

// A file with another time but the same content was only touched.
Result<bool> CampaignWriter::is_changed_outside() {
    const auto state = files_.state(paths_.file);
    if (!state) {
        if (state.error().kind == ErrorKind::not_found) return false; // nothing to overwrite
        return state.error();
    }
    if (known_ && *known_ == state.value()) return false;
    const auto text = files_.read(paths_.file);
    if (!text) return text.error();
    const bool is_same = known_ && text.value().size() == known_mark_.size &&
                         crc32_text(text.value()) == known_mark_.crc32;
    if (is_same) known_ = state.value();
    return !is_same;
}

// Finds out whether the file is still ours, and where the snapshot goes.
Result<Nothing> CampaignWriter::settle_conflict(const std::string& stamp) {
    if (conflict_copy_ && !keeps_ours_) return Nothing{};
    const auto changed = is_changed_outside();
    if (!changed) return changed.error();
    if (changed.value() && !keeps_ours_) {
        conflict_copy_ = unused(files_, paths_.beside("mine", stamp));
        return Nothing{};
    }
    if (changed.value()) {
        const auto theirs = files_.read(paths_.file);
        if (!theirs) return theirs.error();
        const Path copy = unused(files_, paths_.beside("theirs", stamp));
        auto kept = write_whole(files_, copy.string() + ".writing", copy, theirs.value());
        if (!kept) return kept;
        theirs_copy_ = copy;
        const auto state = files_.state(paths_.file);
        known_ = state ? std::optional(state.value()) : std::nullopt;
        known_mark_ = mark_of(theirs.value(), 0);
    }
    conflict_copy_.reset();
    keeps_ours_ = false;
    return Nothing{};
}

// From the base line on, the journal fits the file as it is and as it will be.
Result<Nothing> CampaignWriter::put_in_place(const PreparedFile& prepared, const Path& target) {
    bases_.push_back(prepared.mark);
    Result<Nothing> placed = Nothing{};
    if (!must_rewrite_) {
        placed = ensure_journal();
        if (placed) placed = write_to_journal(journal_line(prepared.mark));
    }
    if (placed) placed = files_.rename(paths_.temporary, target);
    if (!placed) {
        bases_.pop_back();
        return placed;
    }
    if (!conflict_copy_) {
        const auto state = files_.state(paths_.file);
        known_ = state ? std::optional(state.value()) : std::nullopt;
        known_mark_ = prepared.mark;
    }
    return Nothing{};
}

Result<Nothing> CampaignWriter::finish(const PreparedFile& prepared, const std::string& stamp) {
    if (auto locked = ensure_lock(); !locked) return locked;
    // The original of a migrated file is kept before the file is written; a session's backup that
    // fails is no reason not to save.
    const bool must_keep_original = !is_session_begun_ && start_version_ != file_version;
    if (auto begun = begin_session(stamp); !begun && must_keep_original) return begun;
    if (auto settled = settle_conflict(stamp); !settled) return settled;
    const Path target = conflict_copy_ ? *conflict_copy_ : paths_.file;
    if (auto placed = put_in_place(prepared, target); !placed) return placed;
    if (auto synced = files_.sync_folder(target.parent_path()); !synced) return synced;
    must_rewrite_ = false;
    bases_ = {prepared.mark};
    durable_revision_ = std::max(durable_revision_, prepared.mark.revision);
    std::erase_if(lines_, [&](const Line& line) {
        return line.revision <= prepared.mark.revision;
    });
    lines_bytes_ = 0;
    for (const Line& line : lines_)
        lines_bytes_ += line.text.size();
    journal_.reset();
    return ensure_journal();
}

Result<Nothing> CampaignWriter::backup(std::string_view text, const std::string& stamp) {
    return add_backup(files_, paths_, text, stamp);
}

} // namespace store
