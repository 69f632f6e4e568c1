// A campaign to be looked at only: the file with what its journal has newer. Takes no lock and
// writes nothing, so it may be read while it is open elsewhere.
#pragma once

#include "store/campaign_json.h"

#include <filesystem>

namespace store {

// Errors: the file cannot be read, or is no campaign (the first problem of it). A journal that is
// torn or belongs to another state of the file counts as far as it fits.
base::Result<LoadedCampaign> read_latest(const std::filesystem::path& file);

} // namespace store
