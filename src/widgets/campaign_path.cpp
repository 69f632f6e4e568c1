#include "widgets/campaign_path.h"

namespace widgets {

std::string beside_campaign(const PanelContext& context, const std::string& ending) {
    std::string path(context.campaign_file);
    const std::string campaign_ending = ".json";
    if (path.ends_with(campaign_ending)) path.resize(path.size() - campaign_ending.size());
    return path + ending;
}

} // namespace widgets
