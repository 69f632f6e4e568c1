#include "store/campaign_open.h"

#include "store/backups.h"
#include "store/journal_replay.h"

#include <algorithm>
#include <array>
#include <unistd.h>

namespace store {

using base::Error;
using base::ErrorKind;
using base::Nothing;
using base::Result;

namespace {

std::string name_of(const Path& path) {
    return path.filename().string();
}

std::string lines_text(std::size_t count) {
    return count == 1 ? "1 edit" : std::to_string(count) + " edits";
}

// The campaign file with everything about it that a session needs.
struct ReadFile {
    std::string text;
    FileState state;
    LoadedCampaign loaded;
    std::vector<Error> problems;
};

Result<ReadFile> read_file(Files& files, const Path& path) {
    const auto state = files.state(path);
    if (!state) return state.error();
    auto text = files.read(path);
    if (!text) return text.error();
    CampaignReading reading = read_campaign(text.value(), path.string());
    if (!reading.loaded) return reading.error();
    return ReadFile{
        std::move(text).value(),
        state.value(),
        std::move(*reading.loaded),
        std::move(reading.problems)};
}

// The file is unusable: the newest good backup, to be read only.
Result<OpenedCampaign> open_backup(Files& files, const StorePaths& paths, const Error& problem) {
    auto backup = newest_good_backup(files, paths);
    if (!backup) return problem;
    OpenedCampaign opened;
    opened.paths = paths;
    opened.loaded = std::move(backup->loaded);
    opened.read_only_cause = "This is the backup " + name_of(backup->path) +
                             "; the campaign file itself cannot be read.";
    opened.messages.push_back(base::to_text(problem));
    opened.messages.push_back(
        "The file was left untouched. The backup " + name_of(backup->path) +
        " was opened read-only; mend the file, or put the backup in its place."
    );
    return opened;
}

// A state of the campaign that the journal fits, among our copies and backups.
std::optional<Replay>
replay_elsewhere(Files& files, const StorePaths& paths, const JournalReading& journal) {
    std::vector<Path> candidates;
    for (const Path& folder : {paths.file.parent_path(), paths.backups}) {
        const auto names = files.list(folder);
        if (!names) continue;
        const std::string start =
            folder == paths.backups ? "" : paths.file.stem().string() + ".mine-";
        for (const std::string& name : names.value())
            if (name.compare(0, start.size(), start) == 0) candidates.push_back(folder / name);
    }
    std::reverse(candidates.begin(), candidates.end()); // the newest first
    for (const Path& path : candidates) {
        const auto state = files.state(path);
        const bool may_fit =
            state.ok() &&
            std::any_of(journal.bases.begin(), journal.bases.end(), [&](const FileMark& base) {
                return base.size == state.value().size;
            });
        if (!may_fit) continue;
        auto file = read_file(files, path);
        if (!file) continue;
        const FileMark mark = mark_of(file.value().text, file.value().loaded.revision);
        Replay replay = replay_journal(std::move(file).value().loaded, mark, journal);
        if (replay.end == ReplayEnd::complete && replay.replayed > 0) return replay;
    }
    return std::nullopt;
}

// What the journal made of the file, and what must be kept of it.
class Recovery {
public:
    Recovery(Files& files, OpenedCampaign& opened, bool may_write, std::string stamp)
        : files_(files), opened_(opened), may_write_(may_write), stamp_(std::move(stamp)) {}

    // Replays the journal onto the campaign. An error: it could not be kept, so it must not be
    // written over.
    Result<Nothing> recover(const FileMark& mark) {
        auto text = files_.read(opened_.paths.journal);
        if (!text) {
            if (text.error().kind == ErrorKind::not_found) return Nothing{};
            return text.error();
        }
        const JournalReading journal = read_journal(text.value());
        Replay replay = replay_journal(std::move(opened_.loaded), mark, journal);
        opened_.loaded = std::move(replay.loaded);
        replayed_ = replay.replayed;
        if (replayed_ > 0)
            tell(
                "Recovered " + lines_text(replayed_) + " from the journal, up to \"" +
                last_label() + "\"."
            );
        if (journal.is_torn) tell("The last line of the journal was incomplete and is left out.");
        if (replay.end == ReplayEnd::other_chain) return keep_other_chain(text.value(), journal);
        if (journal.is_damaged)
            return keep_aside(text.value(), "A line of the journal is spoiled.");
        if (replay.end == ReplayEnd::missing_lines)
            return keep_aside(text.value(), "A line of the journal is missing.");
        if (replay.end == ReplayEnd::does_not_apply)
            return keep_aside(text.value(), "A line of the journal does not fit the campaign.");
        return Nothing{};
    }

    std::size_t replayed() const { return replayed_; }

private:
    void tell(std::string message) { opened_.messages.push_back(std::move(message)); }

    std::string last_label() const {
        const auto& lines = opened_.loaded.campaign.history.lines;
        return lines.empty() ? std::string() : lines.back().label;
    }

    Result<Nothing> keep_aside(const std::string& text, const std::string& what) {
        if (!may_write_) {
            tell(what + " What follows it is left out.");
            return Nothing{};
        }
        const Path aside = unused(files_, opened_.paths.aside(stamp_));
        auto kept = write_whole(files_, opened_.paths.temporary_journal, aside, text);
        if (!kept) return kept;
        tell(what + " The whole journal is kept as " + name_of(aside) + ".");
        return Nothing{};
    }

    // The file was changed while the program was not running, or replaced by another.
    Result<Nothing> keep_other_chain(const std::string& text, const JournalReading& journal) {
        auto found = replay_elsewhere(files_, opened_.paths, journal);
        if (found && may_write_) {
            const Path mine = unused(files_, opened_.paths.beside("mine", stamp_));
            auto kept = write_whole(
                files_,
                opened_.paths.temporary,
                mine,
                write_campaign(found->loaded.campaign, found->loaded.revision)
            );
            if (!kept) return kept;
            tell(
                "The file was changed by another program. Your last " +
                lines_text(found->replayed) + " are kept in " + name_of(mine) + "."
            );
            return Nothing{};
        }
        return keep_aside(text, "The journal belongs to another state of the file.");
    }

    Files& files_;
    OpenedCampaign& opened_;
    bool may_write_;
    std::string stamp_;
    std::size_t replayed_ = 0;
};

// A copy of ours that the person was never asked about.
void tell_of_copies(Files& files, OpenedCampaign& opened) {
    const auto names = files.list(opened.paths.file.parent_path());
    if (!names) return;
    const std::string start = opened.paths.file.stem().string() + ".mine-";
    for (const std::string& name : names.value())
        if (name.compare(0, start.size(), start) == 0)
            opened.messages.push_back(
                "Your version from a time when another program changed the file is kept in " +
                name + "; move it away once you have looked at it."
            );
}

std::string lock_cause(const Error& error) {
    const std::string holder = error.message.empty() ? "another program" : error.message;
    return "This campaign is already open: " + holder + " holds it.";
}

} // namespace

std::string holder_text(const std::string& now) {
    std::array<char, 256> host{};
    if (::gethostname(host.data(), host.size() - 1) != 0) host[0] = '\0';
    const std::string name = host[0] == '\0' ? "this computer" : host.data();
    return "process " + std::to_string(::getpid()) + " on " + name + ", since " + now;
}

Result<OpenedCampaign>
open_campaign(Files& files, const Path& path, const std::string& holder, const std::string& stamp) {
    OpenedCampaign opened;
    opened.paths = store_paths(path);
    auto lock = files.lock(opened.paths.lock, holder);
    const bool is_locked_by_other = !lock && lock.error().kind == ErrorKind::locked;
    auto file = read_file(files, opened.paths.file);
    if (!file) return open_backup(files, opened.paths, file.error());
    ReadFile& read = file.value();
    for (const Error& problem : read.problems)
        opened.messages.push_back(base::to_text(problem));
    opened.loaded = std::move(read.loaded);
    const int version = opened.loaded.version;
    const FileMark mark = mark_of(read.text, opened.loaded.revision);

    const auto journal_state = files.state(opened.paths.journal);
    Recovery recovery(files, opened, lock.ok(), stamp);
    const auto recovered = recovery.recover(mark);
    tell_of_copies(files, opened);
    if (is_locked_by_other) {
        opened.read_only_cause = lock_cause(lock.error());
        return opened;
    }
    if (!recovered) {
        opened.read_only_cause =
            "The journal could not be kept: " + base::to_text(recovered.error());
        return opened;
    }
    WriterStart start;
    start.mark = mark;
    start.state = read.state;
    start.version = version;
    start.text = std::move(read.text);
    start.must_rewrite = recovery.replayed() > 0 || version != file_version;
    start.holder = holder;
    if (journal_state) start.journal = journal_state.value();
    if (lock) {
        start.lock = std::move(lock).value();
        for (const Path& left_over : {opened.paths.temporary, opened.paths.temporary_journal})
            static_cast<void>(files.remove(left_over).ok());
    }
    opened.start = std::move(start);
    return opened;
}

} // namespace store
