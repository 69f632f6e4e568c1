// The sign that house rules count in what a panel shows.
#pragma once

#include "widgets/panel.h"

#include <initializer_list>
#include <vector>

namespace widgets {

// A short line when the GM replaced anything below one of these tables of the rulebook ("/rest");
// what is replaced, and by what, stands in its tooltip. Nothing otherwise.
void draw_house_rule_mark(const PanelContext& context, std::initializer_list<const char*> tables);
// The same for all of these replacements.
void draw_house_rule_mark(const std::vector<rules::HouseRule>& replaced);

} // namespace widgets
