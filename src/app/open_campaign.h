// The campaign that is open: its document, the rulebook it plays by, and how it stands with the
// file. The shell sees the store through this alone.
#pragma once

#include "base/result.h"
#include "game/climate.h"
#include "game/library_creature.h"
#include "game/name_lists.h"
#include "game/reference.h"
#include "rules/prices.h"
#include "rules/rulebook.h"
#include "store/campaign_store.h"
#include "store/document.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace app {

class OpenCampaign {
public:
    virtual ~OpenCampaign() = default;

    virtual store::CampaignDocument& document() = 0;
    virtual const rules::Rulebook& rulebook() const = 0;
    // Ready creatures of the rulebook; empty where it has none or they cannot be read.
    virtual const std::vector<game::LibraryCreature>& library() const = 0;
    // Prices of the rulebook, house rules laid over; empty where they cannot be read.
    virtual const rules::PriceBook& prices() const = 0;
    // Where it is kept, to be shown.
    virtual const std::string& file_name() const = 0;
    // Reads rulebook and house rules anew, for the GM who changed them in an editor meanwhile.
    virtual void read_rules_again() = 0;
    // Ready lists of names; those that cannot be read are left out.
    virtual const std::vector<game::ReadyNameList>& name_lists() const = 0;
    // Climates of the weather; those that can be read.
    virtual const game::Climates& climates() const = 0;
    // Rules to look up, by the rulebook and its house rules.
    virtual const game::Reference& reference() const = 0;
    // Ready calendars; those that can be read.
    virtual const std::vector<game::Calendar>& calendars() const = 0;
    virtual store::SaveState save_state() const = 0;
    // What the person should know since the last call, one sentence or two each.
    virtual std::vector<std::string> take_messages() = 0;
    // The file was changed by something else; the person chooses which of the two goes on.
    virtual void keep_ours() = 0;
    virtual void take_theirs() = 0;
    // For a place that cannot be written: a whole copy elsewhere; a message tells how it went.
    virtual void save_copy_to(const std::filesystem::path& file) = 0;
    // Writes a text of the campaign under a name the GM gives; a message tells how it went.
    virtual void save_text(const std::string& path, const std::string& text) = 0;
    // Called on the render thread while the program runs; true: something to show has changed.
    virtual bool look_after() = 0;
    // At the end: returns when everything is on the disk, or says why it is not.
    virtual base::Result<base::Nothing> finish() = 0;

    bool is_read_only() const { return save_state().kind == store::SaveKind::read_only; }
};

} // namespace app
