// Dice for a wanted amount of damage that look as if somebody had chosen them: few dice of one kind
// and a constant near what such attacks usually add.
#pragma once

#include "rules/dice.h"

namespace rules {

// NdM+K with d4 to d12 whose mean is `mean` or up to a half more (averages are printed rounded
// down), and lies in [least, most] if dice allow; K at least 0 and near `usual_constant`. Means
// below 2 give a plain number, at least 1. Means are taken up to 500.
DiceExpression natural_dice(double mean, double least, double most, int usual_constant);

} // namespace rules
