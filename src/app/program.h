// The program in its window: the event-driven loop from the first frame to the last.
#pragma once

#include "app/open_campaign.h"
#include "app/options.h"

namespace app {

// Opens the campaign once the window stands. `wake` may be called by any thread: it makes the loop
// look after the campaign and draw.
using CampaignOpener =
    std::function<base::Result<std::unique_ptr<OpenCampaign>>(std::function<void()> wake)>;

// Until the person closes the window.
base::Result<base::Nothing> run_program(const CampaignOpener& open, const Options& options);

} // namespace app
