// A campaign that is only looked at, for pictures and questions: read once with what its journal
// has newer, never written, no lock taken.
#pragma once

#include "app/open_campaign.h"

namespace app {

base::Result<std::unique_ptr<OpenCampaign>>
read_for_pictures(const std::filesystem::path& file, const std::filesystem::path& assets);

} // namespace app
