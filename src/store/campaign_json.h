// Campaign <-> the text of a campaign file. The file is meant to be read and edited by hand:
// pretty-printed, sections sorted, values at their default left out, unknown fields kept.
// Never touches a file.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "store/json.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace store {

inline constexpr int file_version = 1;

struct LoadedCampaign {
    game::Campaign campaign;
    std::uint64_t revision = 0;
    int version = file_version; // as written in the file, before migration

    bool operator==(const LoadedCampaign&) const = default;
};

// What came of reading. Without `loaded` the file is unusable and `problems` say why; with it they
// only tell what a person may want to mend.
struct CampaignReading {
    std::optional<LoadedCampaign> loaded;
    std::vector<base::Error> problems;

    // The first problem; only for an unusable file.
    const base::Error& error() const { return problems.front(); }
};

// Reads text and, apart from that, the value of such a text (after replaying a journal).
// The result is mended (campaign_check.h) and linked (game::link_party).
CampaignReading read_campaign(std::string_view text, const std::string& file);
CampaignReading read_campaign_value(Json value, std::string_view text, const std::string& file);

std::string write_campaign(const game::Campaign& campaign, std::uint64_t revision);
Json campaign_value(const game::Campaign& campaign, std::uint64_t revision);

// One step up: changes the value of a file of version `from` into one of version `from` + 1.
struct Migration {
    int from = 0;
    void (*change)(Json& value) = nullptr;
};

// Takes the value from its version to `to`, step by step. Refuses newer files and versions without
// a step.
base::Result<base::Nothing>
migrate(Json& value, int version, int to, std::span<const Migration> steps);

} // namespace store
