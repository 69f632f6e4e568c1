// Why an effective number is what it is, in words and in colour: what changed it, by how much, and
// what was beaten by something stronger.
#pragma once

#include "game/effects.h"
#include "widgets/ui.h"

#include <string>

namespace widgets {

// "-2", "advantage", "fails"; empty when nothing changes it.
std::string change_words(const game::EffectiveNumber& number);
// The same for a narrow cell: "-2", "adv", "dis", "fails".
std::string brief_change(const game::EffectiveNumber& number);

// Harm or good, by whether the change makes it worse. Never the only sign of it.
Ink change_ink(const game::EffectiveNumber& number);

// One contribution as a line: "frightened 2: -2 status", "sickened 1: -1 status, beaten by a worse
// one".
std::string contribution_words(const game::Contribution& part);

// Every reason on a line of its own; empty when there is none.
std::string reasons_text(const game::EffectiveNumber& number);

// The same, drawn; what does not count is muted.
void draw_reasons(const game::EffectiveNumber& number);

// A line under the last item: it is not what the sheet says.
void underline_item(Ink ink);

} // namespace widgets
