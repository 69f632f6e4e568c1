// Brings a campaign from its file up to the last edit that stands in the journal.
#pragma once

#include "store/campaign_json.h"
#include "store/journal_text.h"

#include <string_view>

namespace store {

enum class ReplayEnd {
    complete,       // every newer line was replayed
    other_chain,    // the journal belongs to another state of the file
    missing_lines,  // a revision is missing; what came before it was replayed
    does_not_apply, // a line does not fit; what came before it was replayed
};

struct Replay {
    LoadedCampaign loaded;
    std::size_t replayed = 0; // lines
    ReplayEnd end = ReplayEnd::complete;
};

// `loaded` is the content of the file whose mark is `file`.
Replay replay_journal(LoadedCampaign loaded, const FileMark& file, const JournalReading& journal);

} // namespace store
