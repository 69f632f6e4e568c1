// Everything pages are made of, as a copy that another thread may read while the campaign goes on.
#pragma once

#include "app/open_campaign.h"
#include "app/print_pages.h"
#include "print/page_kinds.h"

namespace app {

struct PrintValues {
    game::Campaign campaign;
    rules::Rulebook rulebook;
    std::vector<game::ReadyNameList> name_lists;
    std::vector<game::LibraryCreature> library;
    game::Climates climates;
    rules::PriceBook prices;
    print::ReadFile read_file;

    explicit PrintValues(OpenCampaign& from)
        : campaign(from.document().view()), rulebook(from.rulebook()),
          name_lists(from.name_lists()), library(from.library()), climates(from.climates()),
          prices(from.prices()), read_file(picture_reader(from.file_name())) {}

    print::PrintSource source() const {
        return {campaign, rulebook, name_lists, library, climates, prices, read_file};
    }
};

} // namespace app
