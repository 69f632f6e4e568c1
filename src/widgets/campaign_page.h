// The campaign itself: its title, the rules it is played by, the house rules laid over them.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

#include <string>

namespace widgets {

struct CampaignPageView {
    FormDrafts drafts;
    std::string house_rules; // the name of the file while it is typed
    bool is_naming_file = false;
};

extern const PanelInfo campaign_page_info;

void draw_campaign_page(const PanelContext& context, CampaignPageView& view);

} // namespace widgets
