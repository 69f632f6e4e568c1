// A campaign with its file: every edit goes to the store, and the store's news to the person.
#pragma once

#include "app/open_campaign.h"

namespace app {

// `wake` is called by the thread that saves, when something to show has changed.
base::Result<std::unique_ptr<OpenCampaign>> open_stored(
    const std::filesystem::path& file,
    const std::filesystem::path& assets,
    std::function<void()> wake
);

} // namespace app
