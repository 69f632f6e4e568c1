// The campaign that is open: its document, the rulebook it plays by, and how it stands with the
// file. The shell sees the store through this alone.
#pragma once

#include "base/result.h"
#include "rules/rulebook.h"
#include "store/document.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace app {

enum class SaveKind { saved, saving, not_saved, read_only, memory_only };

struct SaveState {
    SaveKind kind = SaveKind::saved;
    std::string cause; // of not_saved and read_only

    bool operator==(const SaveState&) const = default;
};

class OpenCampaign {
public:
    virtual ~OpenCampaign() = default;

    virtual store::CampaignDocument& document() = 0;
    virtual const rules::Rulebook& rulebook() const = 0;
    virtual SaveState save_state() const = 0;
    // What the person should know since the last call, one sentence or two each.
    virtual std::vector<std::string> take_messages() = 0;
    // The file was changed by something else; the person chooses which of the two goes on.
    virtual bool is_changed_outside() const = 0;
    virtual void keep_ours() = 0;
    virtual void take_theirs() = 0;
    // Called on the render thread while the program runs; true: something to show has changed.
    virtual bool look_after() = 0;

    bool is_read_only() const { return save_state().kind == SaveKind::read_only; }
};

} // namespace app
