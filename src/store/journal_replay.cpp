#include "store/journal_replay.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace store {

namespace {

// The file already holds everything the journal says: it was written and the journal not yet begun
// anew. Its history knows.
bool is_contained(const LoadedCampaign& loaded, const JournalReading& journal) {
    if (journal.entries.empty()) return true;
    const JournalEntry& last = journal.entries.back();
    const auto& lines = loaded.campaign.history.lines;
    return last.revision <= loaded.revision &&
           std::any_of(lines.begin(), lines.end(), [&](const game::HistoryLine& line) {
               return line.revision == last.revision && line.label == last.label &&
                      line.written_at == last.written_at;
           });
}

bool patch(Json& value, const JournalEntry& entry) {
    try {
        value.patch_inplace(Json::parse(entry.patch));
    } catch (const Json::exception&) {
        return false;
    }
    value["revision"] = entry.revision;
    return true;
}

// Replays the first `count` newer lines; fewer if one does not fit. Returns how many.
std::size_t replay_some(
    Json& value, std::uint64_t revision, const std::vector<JournalEntry>& entries, std::size_t count
) {
    std::size_t done = 0;
    for (const JournalEntry& entry : entries) {
        if (entry.revision <= revision) continue;
        if (done == count || !patch(value, entry)) break;
        done += 1;
    }
    return done;
}

// How many newer lines follow each other without a gap.
std::size_t
unbroken(std::uint64_t revision, const std::vector<JournalEntry>& entries, bool& has_gap) {
    std::size_t count = 0;
    for (const JournalEntry& entry : entries) {
        if (entry.revision <= revision) continue;
        if (entry.revision != revision + count + 1) {
            has_gap = true;
            break;
        }
        count += 1;
    }
    return count;
}

} // namespace

Replay replay_journal(LoadedCampaign loaded, const FileMark& file, const JournalReading& journal) {
    Replay replay;
    const auto& bases = journal.bases;
    if (std::find(bases.begin(), bases.end(), file) == bases.end()) {
        replay.end = is_contained(loaded, journal) ? ReplayEnd::complete : ReplayEnd::other_chain;
        replay.loaded = std::move(loaded);
        return replay;
    }
    bool has_gap = false;
    const std::size_t wanted = unbroken(loaded.revision, journal.entries, has_gap);
    if (has_gap) replay.end = ReplayEnd::missing_lines;
    for (std::size_t count = wanted; count > 0;) {
        // From what was read, not from the text: that is what the edits were made on.
        Json value = campaign_value(loaded.campaign, loaded.revision);
        const std::size_t done = replay_some(value, loaded.revision, journal.entries, count);
        CampaignReading reading;
        if (done == count) reading = read_campaign_value(std::move(value), {}, {});
        if (reading.loaded) {
            replay.replayed = done;
            replay.loaded = std::move(*reading.loaded);
            replay.loaded.version = loaded.version;
            return replay;
        }
        replay.end = ReplayEnd::does_not_apply;
        count = done < count ? done : 0;
    }
    replay.loaded = std::move(loaded);
    return replay;
}

} // namespace store
