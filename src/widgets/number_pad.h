// The number pad: the number that is typed, large, and what is done with it to everybody picked.
// Keyboard and fingers use the same keys. Computes nothing: what is really lost comes from game.
#pragma once

#include "game/hurt.h"
#include "widgets/panel.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace widgets {

enum class PadVerb { hurt, heal, temp_hp };

// What of the damage reaches one target: saved against an area, or critically failed.
enum class Portion { full, half, doubled };

struct NumberPadView {
    bool is_wanted = false; // opens when drawn next
    bool is_open = false;
    PadVerb verb = PadVerb::hurt; // what Enter does
    std::string digits;
    std::vector<base::Id> targets; // taken when it opens; a press on a name leaves it out
    std::map<base::Id, Portion> portions;
    bool is_critical = false;
    bool is_nonlethal = false;
    std::string damage_type;               // remembered
    std::vector<std::string> recent_types; // last used first
};

// Opens it for these; `digits` is what was typed so far.
void open_number_pad(
    NumberPadView& view, PadVerb verb, std::vector<base::Id> targets, std::string_view digits = {}
);

// The popup, if it is open. Call every frame at the root of the panel.
void draw_number_pad(const PanelContext& context, NumberPadView& view);

// The damage that the pad would do to this target now.
game::Damage pad_damage(const NumberPadView& view, base::Id target);

// Asks for the edit and remembers the damage type. Nothing happens without a number.
void apply_pad(const PanelContext& context, NumberPadView& view, PadVerb verb);

} // namespace widgets
