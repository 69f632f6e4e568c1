#include "rules/ability_modifier.h"

namespace rules {

int ability_modifier(int score) {
    const int above = score - 10;
    return above >= 0 ? above / 2 : -((1 - above) / 2);
}

} // namespace rules
