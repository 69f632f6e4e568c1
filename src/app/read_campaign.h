// A campaign that is only looked at, for pictures: read once, never written, no lock taken.
#pragma once

#include "app/open_campaign.h"

namespace app {

base::Result<std::unique_ptr<OpenCampaign>>
read_for_pictures(const std::filesystem::path& file, const std::filesystem::path& assets);

} // namespace app
