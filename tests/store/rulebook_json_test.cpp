#include "store/rulebook_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <set>

namespace {

using nlohmann::json;

std::string assets() {
    return std::string(TABLEWICK_SOURCE_DIR) + "/assets";
}

json tables(const char* name) {
    std::ifstream stream(assets() + "/rules/" + name);
    return json::parse(stream);
}

std::string complaint(json changed) {
    const auto rulebook =
        store::read_rulebook(changed, "four_degree.json", rules::SrdEdition::srd_5_1);
    return rulebook.ok() ? std::string("none") : base::to_text(rulebook.error());
}

} // namespace

TEST_CASE("rulebook: both families and editions load, with every published condition") {
    // Player Core (ORC), conditions: 42 entries; SRD 5.1, Appendix PH-A, and SRD 5.2.1, Rules
    // Glossary: 15.
    const auto four =
        store::load_rulebook(assets(), rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    REQUIRE(four.ok());
    CHECK(four.value().conditions.size() == 42);
    CHECK(four.value().turn.actions == 3);
    CHECK(four.value().dying.persistent_flat_dc == 15);
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const auto srd = store::load_rulebook(assets(), rules::Family::srd5, edition);
        REQUIRE(srd.ok());
        CHECK(srd.value().conditions.size() == 15);
        CHECK(srd.value().saves.size() == 6);
        CHECK(srd.value().skills.size() == 18);
        CHECK(
            srd.value().death_saves.concentration_dc_max ==
            (edition == rules::SrdEdition::srd_5_1 ? 0 : 30)
        );
    }
}

TEST_CASE("rulebook: every condition says in one line what it is, and no table lacks its source") {
    for (const char* name : {"four_degree.json", "srd5.json"}) {
        const json book = tables(name);
        for (const char* table : {"turn", "damage", "conditions"}) {
            CHECK(book.at(table).contains("source"));
            CHECK(book.at(table).contains("verified"));
        }
    }
    for (const auto family : {rules::Family::four_degree, rules::Family::srd5}) {
        const auto book = store::load_rulebook(assets(), family, rules::SrdEdition::srd_5_2_1);
        REQUIRE(book.ok());
        for (const rules::ConditionRule& rule : book.value().conditions) {
            CAPTURE(rule.key);
            CHECK(rule.summary.size() > 10);
            CHECK(rule.summary.size() <= 120);
            CHECK(rule.name.find('_') == std::string::npos);
        }
    }
}

TEST_CASE("rulebook: a wrong table is refused with file, pointer and what was expected") {
    json book = tables("four_degree.json");
    CHECK(complaint(book) == "none");

    json changed = book;
    changed["turn"]["actions"] = "three";
    CHECK(
        complaint(changed) == "four_degree.json (/turn/actions): The rulebook is not as expected "
                              "here: a whole number is needed. Put the original file back."
    );

    changed = book;
    changed["conditions"]["list"][3]["effects"] = json::array({{{"kind", "sparkles"}}});
    CHECK(
        complaint(changed).find("(/conditions/list/3/effects/0/kind): The rulebook is not as "
                                "expected here: one of modifier, own_rolls") != std::string::npos
    );

    changed = book;
    changed["conditions"]["list"][0]["effects"] =
        json::array({{{"kind", "modifier"}, {"applies_to", {"luck"}}}});
    CHECK(
        complaint(changed).find("(/conditions/list/0/effects/0/applies_to/0)") != std::string::npos
    );

    changed = book;
    changed["conditions"]["list"][0]["effects"] =
        json::array({{{"kind", "implies"}, {"condition", "sleepy"}}});
    CHECK(
        complaint(changed).find("the key of a condition instead of \"sleepy\"") != std::string::npos
    );

    changed = book;
    changed["dying"].erase("death_at");
    CHECK(
        complaint(changed).find(
            "(/dying): The rulebook is not as expected here: a key \"death_at\" is needed."
        ) != std::string::npos
    );

    changed = book;
    changed["conditions"]["list"].push_back(changed["conditions"]["list"][0]);
    CHECK(complaint(changed).find("a key that stands once") != std::string::npos);

    CHECK(complaint(json::array()) != "none");
}

TEST_CASE("rulebook: a missing file says so") {
    const auto book =
        store::load_rulebook("/nowhere", rules::Family::srd5, rules::SrdEdition::srd_5_1);
    REQUIRE_FALSE(book.ok());
    CHECK(book.error().kind == base::ErrorKind::not_found);
}
