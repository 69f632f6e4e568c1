#include "game/climate.h"

namespace game {

const Climate* find_climate(const Climates& climates, const std::string& key) {
    for (const Climate& climate : climates.climates)
        if (climate.key == key) return &climate;
    return nullptr;
}

} // namespace game
