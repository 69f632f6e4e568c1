// Rows of a rulebook's tables: lists whose rows run without a gap, rise, or are found by a key.
// Throws Wrong like Spot.
#pragma once

#include "rules/dice.h"
#include "store/rulebook_spot.h"

#include <set>
#include <string>

namespace store {

constexpr int table_dc_max = 200;         // far beyond every printed DC
constexpr int table_xp_max = 100'000'000; // beyond every printed figure, and safe to multiply
constexpr int table_bonus_max = 100;      // of a figure that moves another one
constexpr int table_minutes_max = 24 * 60;

// Which rows a table must have, by the whole number that each names.
struct RowRange {
    const char* key; // "level"
    int first;
    int last;
};

// Reads table["rows"], one row for each number of the range, in that order.
template <class Each>
void each_row(const Spot& table, const RowRange& range, Each read_one) {
    const Spot rows = table.at("rows");
    // Appended, not added: g++ 12 sees a copy out of bounds in a sum of temporary strings.
    std::string whole = "rows of ";
    whole.append(range.key).append(" ").append(std::to_string(range.first));
    whole.append(" to ").append(std::to_string(range.last));
    whole.append(" in order and without a gap");
    int next = range.first;
    rows.each([&](const Spot& row) {
        const Spot number = row.at(range.key);
        if (next > range.last || number.number(-table_bonus_max, table_bonus_max) != next)
            throw number.wrong(whole);
        read_one(row, next);
        next += 1;
    });
    if (next <= range.last) throw rows.wrong(whole, base::ErrorKind::missing_field);
}

// Reads a list of rows with "key" and "name"; at least one, no key twice. `keys` may hold keys that
// other lists of the same table use already.
template <class Each>
void each_named(const Spot& rows, std::set<std::string>& keys, Each read_one) {
    bool is_empty = true;
    rows.each([&](const Spot& row) {
        if (!keys.insert(row.at("key").key()).second)
            throw row.at("key").wrong("a key that stands once", base::ErrorKind::duplicate);
        read_one(row, row.at("key").key(), row.at("name").text());
        is_empty = false;
    });
    if (is_empty) throw rows.wrong("at least one entry");
}

template <class Each>
void each_named(const Spot& rows, Each read_one) {
    std::set<std::string> keys;
    each_named(rows, keys, read_one);
}

// Dice such as "2d8+10".
rules::DiceExpression read_dice(const Spot& spot);

} // namespace store
