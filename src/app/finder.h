// Keeps the index of Find in step with the campaign: what has changed is copied on the thread that
// draws, one section a frame, and turned into an index on another.
#pragma once

#include "game/campaign.h"
#include "game/finding.h"
#include "game/library_creature.h"
#include "game/reference.h"
#include "rules/prices.h"

#include <cstdint>
#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <thread>
#include <vector>

namespace app {

// Where entries come from.
struct FindContext {
    const game::Campaign& campaign;
    const rules::Rulebook& rulebook;
    const std::vector<game::LibraryCreature>& library;
    const game::Reference& reference;
    const rules::PriceBook& prices;
    std::uint64_t revision = 0; // of the campaign
};

class Finder {
public:
    Finder();
    Finder(const Finder&) = delete;
    Finder& operator=(const Finder&) = delete;

    // Once a frame while something is looked for.
    void follow(const FindContext& context);

    // Rules and creatures may have been read anew without an edit: they are compared again.
    void look_again() { is_behind_ = true; }

    // The newest index there is.
    const game::FindIndex& index() const { return index_; }

    // Counts up with every new index.
    std::uint64_t version() const { return version_; }

    // Something that has changed is not in the index yet.
    bool is_behind() const { return is_behind_; }

private:
    // Makes the entries of a source, on any thread.
    using Work = std::function<std::vector<game::FindEntry>()>;
    // The work that is to be done since the last call; nothing if nothing has changed.
    using Source = std::function<Work(const FindContext&)>;

    template <class Part>
    static Source
    in_section(Part game::Campaign::*part, std::vector<game::FindEntry> (*entries)(const Part&));
    static Source in_values(std::vector<game::FindEntry> (*entries)(const FindContext&));

    void take_built();

    std::vector<Source> sources_; // one for each section of the index
    game::FindIndex index_;
    std::uint64_t version_ = 0;
    bool is_behind_ = true;
    std::uint64_t revision_ = 0; // that the index is in step with
    std::size_t next_ = 0;       // source to be asked next
    std::size_t building_ = 0;
    std::future<std::shared_ptr<const game::FindSection>> built_;
    std::jthread builder_; // last, so that it is waited for while the rest still stands
};

} // namespace app
