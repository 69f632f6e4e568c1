#include "store/answer_json.h"

#include <nlohmann/json.hpp>

#include <array>
#include <charconv>
#include <type_traits>
#include <variant>

namespace store {

namespace {

using SortedJson = nlohmann::json; // its objects keep their keys sorted

SortedJson values_json(const game::NamedValues& values);

// 0.35 instead of 0.35000000000000003.
double rounded(double number) {
    constexpr int digits = 12;
    std::array<char, 64> text{};
    const auto written = std::to_chars(
        text.data(), text.data() + text.size(), number, std::chars_format::general, digits
    );
    double read = number;
    std::from_chars(text.data(), written.ptr, read);
    return read;
}

SortedJson quantity_json(const game::Quantity& quantity) {
    SortedJson json{{"decimal", rounded(quantity.decimal)}};
    if (quantity.exact) json["exact"] = rules::to_text(*quantity.exact);
    return json;
}

SortedJson content_json(const game::NamedValue::Content& content) {
    return std::visit(
        [](const auto& value) -> SortedJson {
            using Value = std::decay_t<decltype(value)>;
            if constexpr (std::is_same_v<Value, game::Quantity>) {
                return quantity_json(value);
            } else if constexpr (std::is_same_v<Value, game::NamedValues>) {
                return values_json(value);
            } else if constexpr (std::is_same_v<Value, std::vector<game::NamedValues>>) {
                SortedJson rows = SortedJson::array();
                for (const game::NamedValues& row : value)
                    rows.push_back(values_json(row));
                return rows;
            } else {
                return SortedJson(value);
            }
        },
        content
    );
}

SortedJson values_json(const game::NamedValues& values) {
    SortedJson json = SortedJson::object();
    for (const game::NamedValue& value : values)
        json[value.name] = content_json(value.content);
    return json;
}

} // namespace

std::string answer_json(const game::Answer& answer) {
    const SortedJson json{
        {"format", "tablewick-answer"},
        {"version", 1},
        {"title", answer.title},
        {"lines", game::aligned_lines(answer)},
        {"source", answer.source},
        {"values", values_json(answer.values)}};
    constexpr int indent = 4;
    return json.dump(indent, ' ', false, SortedJson::error_handler_t::replace) + "\n";
}

} // namespace store
