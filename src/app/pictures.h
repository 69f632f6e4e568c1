// Draws scenes into PNG files, without a visible window: for machines without a display, for
// people who judge the looks, and for the documentation.
#pragma once

#include "app/open_campaign.h"
#include "app/options.h"

namespace app {

// The one scene that the options ask for, or every scene in both themes.
base::Result<base::Nothing> draw_pictures(OpenCampaign& campaign, const Options& options);

} // namespace app
