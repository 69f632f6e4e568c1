#include "rules/prices.h"

namespace rules {

namespace {

template <class Row>
const Row* keyed(const std::vector<Row>& rows, const std::string& key) {
    for (const Row& row : rows)
        if (row.key == key) return &row;
    return nullptr;
}

} // namespace

const PriceKind* find_price_kind(const PriceBook& book, const std::string& key) {
    return keyed(book.kinds, key);
}

const Price* find_price(const PriceBook& book, const std::string& key) {
    return keyed(book.prices, key);
}

} // namespace rules
