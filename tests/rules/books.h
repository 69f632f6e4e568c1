// The shipped rulebooks, for tests of what is computed with them.
#pragma once

#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <string>

inline rules::Rulebook
load_book(rules::Family family, rules::SrdEdition edition = rules::SrdEdition::srd_5_1) {
    auto rulebook =
        store::load_rulebook(std::string(TABLEWICK_SOURCE_DIR) + "/assets", family, edition);
    REQUIRE(rulebook.ok());
    return rulebook.value();
}

inline rules::Rulebook four_degree_book() {
    return load_book(rules::Family::four_degree);
}

inline rules::Rulebook srd_book(rules::SrdEdition edition) {
    return load_book(rules::Family::srd5, edition);
}
