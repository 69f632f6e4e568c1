// The strip of messages below the top bar: what went wrong or was mended, until it is dismissed,
// and what the person has to choose now.
#pragma once

#include "app/open_campaign.h"

#include <string>
#include <vector>

namespace app {

struct Messages {
    std::vector<std::string> texts; // newest last
    std::string copy_to;            // draft: where a copy is saved while the own place fails

    // A message that is already there does not come twice.
    void add(std::string text);
};

// Draws into a window of its own at this place and returns the height it takes; 0 without messages.
float draw_messages(Messages& messages, OpenCampaign& campaign, float x, float y, float width);

} // namespace app
