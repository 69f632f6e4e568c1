// The rulebooks that creatures are built with in tests, loaded once.
#pragma once

#include "rules/creature_building.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <string>

namespace building_table {

inline rules::Rulebook loaded(rules::Family family) {
    auto rulebook = store::load_rulebook(
        std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, rules::SrdEdition::srd_5_1
    );
    REQUIRE_MESSAGE(
        rulebook.ok(), (rulebook.ok() ? std::string() : base::to_text(rulebook.error()))
    );
    return std::move(rulebook).value();
}

inline const rules::Rulebook& four_degree() {
    static const rules::Rulebook rulebook = loaded(rules::Family::four_degree);
    return rulebook;
}

inline const rules::Rulebook& srd5() {
    static const rules::Rulebook rulebook = loaded(rules::Family::srd5);
    return rulebook;
}

} // namespace building_table
