// The difference between two states of a section as a JSON Patch (RFC 6902) on the campaign file.
// Only what differs is turned into JSON: an edit in a fight of forty costs as much as the two
// combatants it touches.
#pragma once

#include "game/campaign.h"
#include "game/edits.h"
#include "store/json_fields.h"

#include <array>
#include <string>
#include <vector>

namespace store {

inline constexpr std::array all_sections = {
    game::Section::about,
    game::Section::party,
    game::Section::shelf,
    game::Section::preparation,
    game::Section::encounter,
    game::Section::clock,
    game::Section::table_rolls,
    game::Section::registered,
    game::Section::names,
    game::Section::calendar,
    game::Section::day_book,
    game::Section::places,
    game::Section::sessions,
    game::Section::treasury,
    game::Section::own_pages};

// Patches in both directions; empty arrays when nothing differs.
struct PatchPair {
    Json forward = Json::array();
    Json backward = Json::array();
};

// Appends the operations that turn `before` into `after`, and back, for one section.
// What changed is also read back; a value that could not be loaded again becomes a problem.
void append_difference(
    game::Section section,
    const game::Campaign& before,
    const game::Campaign& after,
    PatchPair& patches,
    Problems& problems
);

// The sections that operations touch, by their paths.
std::vector<game::Section> sections_of(const Json& patch);

// Brings one section of `to` to the state it has in `from`, copying only what differs of its long
// list. `from` is the same afterwards; it is not const because its list steps aside meanwhile.
void copy_section(game::Section section, game::Campaign& from, game::Campaign& to);

bool is_same(game::Section section, const game::Campaign& a, const game::Campaign& b);

// Applies a patch to these sections of the campaign. False, with nothing changed, if it does not
// fit.
bool apply_patch(
    const Json& patch, const std::vector<game::Section>& sections, game::Campaign& campaign
);

} // namespace store
