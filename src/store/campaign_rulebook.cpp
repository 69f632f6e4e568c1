#include "store/campaign_rulebook.h"

#include "store/reference_json.h"
#include "store/rulebook_json.h"

namespace store {

std::filesystem::path
house_rules_path(const game::About& about, const std::filesystem::path& campaign_file) {
    if (about.house_rules.empty()) return {};
    return campaign_file.parent_path() / about.house_rules; // an absolute name replaces the folder
}

base::Result<rules::Rulebook> load_campaign_rulebook(
    const std::filesystem::path& assets_folder,
    const game::About& about,
    const std::filesystem::path& campaign_file
) {
    return load_rulebook(
        assets_folder, about.rules, about.srd_edition, house_rules_path(about, campaign_file)
    );
}

base::Result<game::Reference> load_campaign_reference(
    const std::filesystem::path& assets_folder,
    const game::About& about,
    const std::filesystem::path& campaign_file
) {
    return load_reference(
        assets_folder, about.rules, about.srd_edition, house_rules_path(about, campaign_file)
    );
}

} // namespace store
