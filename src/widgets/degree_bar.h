// Chances of degrees as a bar. Fill tells failure (hatched) from success (solid), height tells the
// critical ones (whole) from the plain ones (low); colour only says the same again.
#pragma once

#include "rules/odds.h"

#include <string>
#include <vector>

struct ImVec2;

namespace widgets {

// The degrees that this reading of a check knows, worst first.
std::vector<rules::Degree> degrees_of(rules::CheckKind kind);

// "crit fail", "fail", "succeed", "crit".
const char* degree_title(rules::Degree degree);

// Ways of this degree, out of DegreeOdds::of.
int ways_of(const rules::DegreeOdds& odds, rules::Degree degree);

// Painted between two corners on the screen; no item, so text stands beside it.
void paint_degree_bar(const rules::DegreeOdds& odds, ImVec2 from, ImVec2 to);

// One part of the bar, as a sign for its degree.
void paint_degree_sign(rules::Degree degree, ImVec2 from, ImVec2 to);

} // namespace widgets
