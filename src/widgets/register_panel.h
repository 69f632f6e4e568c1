// Register: people, places, creatures, items and factions of the campaign, and where each is
// spoken of.
#pragma once

#include "game/mentions.h"
#include "game/register_keeping.h"
#include "widgets/form.h"
#include "widgets/panel.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace widgets {

struct RegisterView {
    game::RegisterQuery query;
    base::Id opened = base::no_id;
    std::string new_name;
    game::Kind new_kind = game::Kind::person;
    std::string name; // of the opened one while it is typed
    bool is_naming = false;
    FormDrafts drafts;
    game::RegisteredNames names;
    // Kept until the campaign or the question changes.
    std::optional<std::uint64_t> found_at; // revision of the history
    game::RegisterQuery found_for;
    std::vector<std::size_t> found;
    std::optional<std::uint64_t> mentions_at;
    base::Id mentions_of = base::no_id;
    std::vector<game::MentionSpot> mentions;
};

extern const PanelInfo register_info;

void draw_register(const PanelContext& context, RegisterView& view);

} // namespace widgets
