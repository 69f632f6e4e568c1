#include "rules/checks.h"

#include <doctest/doctest.h>

#include <array>
#include <vector>

using rules::Degree;

TEST_CASE("checks: degrees face by face, against worked examples") {
    // Player Core (ORC), degree of success: ten past the DC is critical; natural 20 and 1 shift one
    // degree. Counts of d20 faces: critical failure, failure, success, critical success.
    struct Row {
        int modifier, dc;
        std::array<int, 4> faces;
    };

    const std::vector<Row> rows = {
        {9, 20, {1, 9, 9, 1}},   // even odds
        {5, 30, {15, 4, 1, 0}},  // only a 20 helps: failure becomes success
        {25, 15, {0, 0, 1, 19}}, // a 1 drops a critical success to a success
        {19, 20, {0, 1, 9, 10}}, // a 1 meets the DC yet ends as a failure
        {7, 20, {3, 9, 7, 1}},   // frightened 2 on the first
        // Recovery checks are flat, DC 10 + dying (Player Core (ORC), Recovery Checks).
        {0, 11, {1, 9, 9, 1}}, // dying 1
        {0, 12, {2, 9, 8, 1}}, // dying 2
        {0, 13, {3, 9, 7, 1}}, // dying 3
    };
    for (const Row& row : rows) {
        std::array<int, 4> faces{};
        for (int natural = 1; natural <= 20; ++natural) {
            faces.at(
                static_cast<std::size_t>(rules::four_degree_result(natural, row.modifier, row.dc))
            ) += 1;
        }
        CAPTURE(row.modifier);
        CAPTURE(row.dc);
        CHECK(faces == row.faces);
    }
}

TEST_CASE("checks: srd5 saves and checks know no natural 20 or 1") {
    // SRD 5.1, Using Ability Scores: the total meets or beats the DC.
    CHECK_FALSE(rules::meets_dc(20, 0, 21));
    CHECK(rules::meets_dc(1, 9, 10));
    CHECK(rules::meets_dc(10, 0, 10));
}

TEST_CASE("checks: the margins of ten, exactly, without a natural 20 or 1") {
    // Player Core (ORC), degree of success.
    CHECK(rules::four_degree_result(10, 10, 10) == Degree::critical_success); // DC + 10
    CHECK(rules::four_degree_result(10, 9, 10) == Degree::success);
    CHECK(rules::four_degree_result(10, 0, 10) == Degree::success);
    CHECK(rules::four_degree_result(10, -1, 10) == Degree::failure);
    CHECK(rules::four_degree_result(10, -9, 10) == Degree::failure);
    CHECK(rules::four_degree_result(10, -10, 10) == Degree::critical_failure); // DC - 10
}
