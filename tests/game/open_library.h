// Every ready creature of SRD 5.1, read once from the real assets.
#pragma once

#include "fight_table.h"
#include "game/library_creature.h"
#include "store/creature_library.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace open_library {

inline const std::vector<game::LibraryCreature>& library() {
    static const std::vector<game::LibraryCreature> creatures = [] {
        auto loaded = store::load_creature_library(
            std::string(TABLEWICK_SOURCE_DIR) + "/assets",
            fight_table::rulebook_of(rules::Family::srd5)
        );
        REQUIRE(loaded.ok());
        return std::move(loaded).value();
    }();
    return creatures;
}

} // namespace open_library
