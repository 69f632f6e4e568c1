// Pages printed from the command line: which are wanted, and the file they go into.
#pragma once

#include "app/open_campaign.h"
#include "app/options.h"
#include "print/page_kinds.h"

#include <string>
#include <vector>

namespace app {

struct WantedPage {
    const print::PageKind* kind = nullptr;
    std::string detail;
};

// From "names:fen_given". Error (not_found): there is no such page; it lists those there are.
base::Result<std::vector<WantedPage>> wanted_pages(const Options& options);

// Writes all of them into one PDF, whole or not at all. Returns one line that says what was
// written. Errors: those of the pages, and cannot_write.
base::Result<std::string>
print_pages(OpenCampaign& campaign, const std::vector<WantedPage>& wanted, const Options& options);

} // namespace app
