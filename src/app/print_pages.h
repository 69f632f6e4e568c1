// Pages of a campaign laid out and saved as a PDF, for the command line and the Print panel.
#pragma once

#include "app/open_campaign.h"
#include "app/options.h"
#include "print/order.h"

#include <string>

namespace app {

// What the command line asks for. Error (not_found): there is no such page.
base::Result<print::PrintOrder> print_order(const Options& options);

// For print::PrintSource: the GM's own pictures, looked for beside the campaign first. Waits for
// the disk.
print::ReadFile picture_reader(const std::string& campaign_file);

// Everything pages are made of, for as long as the campaign stands still.
print::PrintSource print_source(OpenCampaign& campaign);

// Errors: those of the pages; not_possible - `progress` stopped it.
base::Result<print::Document> lay_out_pages(
    const print::PrintOrder& order,
    const print::PrintSource& source,
    const print::Progress& progress = {}
);

// Writes one PDF, whole or not at all. Returns one line that says what was written. Errors:
// not_possible - stopped; cannot_write.
base::Result<std::string> save_pages(
    const print::Document& document, const std::string& out, const print::Progress& progress = {}
);

} // namespace app
