#include "game/answers.h"
#include "store/answer_json.h"
#include "store/samples.h"

#include <doctest/doctest.h>

TEST_CASE("answer as JSON: the form is lasting, keys sorted, fractions beside decimals") {
    const auto answer =
        game::answer({samples::rulebook(rules::Family::srd5), nullptr}, "odds +6 dc 20");
    REQUIRE(answer.ok());
    // SRD 5.1, Using Ability Scores: 14 or more on the die, 7 faces of 20.
    CHECK(store::answer_json(answer.value()) == R"({
    "format": "tablewick-answer",
    "lines": [
        "success  35 %  7/20",
        "failure  65 %  13/20",
        "Succeeds from 14 on the die."
    ],
    "source": "",
    "title": "35 % succeed: +6 against DC 20",
    "values": {
        "dc": 20,
        "degrees": {
            "failure": {
                "decimal": 0.65,
                "exact": "13/20"
            },
            "success": {
                "decimal": 0.35,
                "exact": "7/20"
            }
        },
        "modifier": 6,
        "needed_roll": 14,
        "succeeds": {
            "decimal": 0.35,
            "exact": "7/20"
        }
    },
    "version": 1
}
)");
}

TEST_CASE("answer as JSON: rows, flags, texts and bytes that are no UTF-8") {
    game::Answer answer;
    answer.title = "\xFF";
    answer.values = {
        {"rows", std::vector<game::NamedValues>{{{"is_on", true}}, {}}},
        {"words", std::vector<std::string>{"a", "b"}},
        {"mean", game::Quantity(0.1 + 0.2)}};
    const std::string text = store::answer_json(answer);
    CHECK(text.find("\"is_on\": true") != std::string::npos);
    CHECK(text.find("\"decimal\": 0.3\n") != std::string::npos);
    CHECK(text.find("\xEF\xBF\xBD") != std::string::npos);
}
