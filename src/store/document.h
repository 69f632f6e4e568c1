// The one document: the shared in-memory state of the campaign, and the one way to change it.
// An edit runs on the named sections, the difference becomes a JSON Patch (RFC 6902), and that one
// patch serves undo/redo (with its inverse), the journal, and the history. Never touches a file: a
// JournalSink does.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "game/edits.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <string>

namespace store {

// One line of the journal: what changed between two revisions.
struct JournalEntry {
    std::uint64_t revision = 0; // after the change
    std::string label;
    std::string patch; // JSON Patch on the whole campaign document, as JSON text
    std::string written_at;

    bool operator==(const JournalEntry&) const = default;
};

// Where finished edits go. Called on the render thread; must return at once.
using JournalSink = std::function<void(const JournalEntry&)>;

class CampaignDocument {
public:
    // Starts from a loaded campaign at its saved revision.
    explicit CampaignDocument(game::Campaign campaign, std::uint64_t revision = 0);
    ~CampaignDocument();
    CampaignDocument(const CampaignDocument&) = delete;
    CampaignDocument& operator=(const CampaignDocument&) = delete;

    const game::Campaign& view() const;
    std::uint64_t revision() const;

    void set_sink(JournalSink sink);

    // UTC time of now for history lines; replaced in tests.
    void set_time_source(std::function<std::string()> now);

    // Runs the change. An error (kind not_possible, with what the change threw) leaves everything
    // as it was. A change that changes nothing leaves no trace. Returns the label that went into
    // the history.
    base::Result<std::string> edit(const game::Edit& edit);

    bool can_undo() const;
    bool can_redo() const;
    std::string undo_label() const; // of the edit that undo() would take back; empty if none
    std::string redo_label() const;
    void undo(); // does nothing if there is nothing to undo
    void redo();

    // Carries out what panels queued: edits first to last, then undos and redos. The first error is
    // returned.
    base::Result<base::Nothing> carry_out(game::Edits& edits);

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace store
