// The rulebook that a campaign is played by: its family and edition, with its house rules laid
// over.
#pragma once

#include "base/result.h"
#include "game/campaign.h"
#include "game/reference.h"
#include "rules/rulebook.h"

#include <filesystem>

namespace store {

// Where the house rules of the campaign stand: a relative name counts from the folder of the
// campaign file. Empty without house rules.
std::filesystem::path
house_rules_path(const game::About& about, const std::filesystem::path& campaign_file);

// As load_rulebook; the errors are its errors.
base::Result<rules::Rulebook> load_campaign_rulebook(
    const std::filesystem::path& assets_folder,
    const game::About& about,
    const std::filesystem::path& campaign_file
);

// The rules to look up, with the same house rules; as load_reference.
base::Result<game::Reference> load_campaign_reference(
    const std::filesystem::path& assets_folder,
    const game::About& about,
    const std::filesystem::path& campaign_file
);

} // namespace store
