#include "store/rulebook_rows.h"

namespace store {

rules::DiceExpression read_dice(const Spot& spot) {
    const auto dice = rules::parse_dice(spot.text());
    if (!dice.ok()) throw spot.wrong("dice such as 2d8+10", base::ErrorKind::bad_text);
    return dice.value();
}

} // namespace store
