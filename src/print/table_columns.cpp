#include "print/table_columns.h"

#include <algorithm>
#include <numeric>

namespace print {

TextWish cell_wish(const Table& table, const Cell& cell, std::size_t column) {
    const TextStyle plain = cell.is_strong ? TextStyle::strong : TextStyle::body;
    return {cell.is_large ? TextStyle::title : plain, table.columns[column].is_right, 1.0};
}

TextWish note_wish(const Table& table, std::size_t column) {
    return {TextStyle::small, table.columns[column].is_right, 1.0};
}

namespace {

constexpr TextWish head_wish{TextStyle::small, false, 1.0};

} // namespace

std::vector<ColumnNeed> column_needs(const Table& table, const Room& room, const Texts& texts) {
    std::vector<ColumnNeed> needs(table.columns.size());
    for (std::size_t column = 0; column < needs.size(); ++column) {
        ColumnNeed& need = needs[column];
        const auto take = [&](const std::string& text, const TextWish& wish) {
            if (text.empty()) return;
            const double natural = texts.natural_width(text, wish);
            if (natural > need.natural) need.natural = natural;
            if (natural > need.least)
                need.least = std::max(need.least, texts.longest_word(text, wish));
        };
        take(table.columns[column].title, head_wish);
        for (const auto& row : table.rows) {
            take(row[column].text, cell_wish(table, row[column], column));
            take(row[column].note, note_wish(table, column));
        }
        // A word as long as a line is broken after all.
        const double least_max = room.width * (column == 0 ? 0.4 : 0.3);
        need.least = std::min(need.least + 1, least_max) + 2 * beside_text;
        need.natural = std::max(need.natural + 1 + 2 * beside_text, need.least);
    }
    return needs;
}

std::vector<std::vector<std::size_t>>
column_groups(const Table& table, const std::vector<ColumnNeed>& needs, const Room& room) {
    std::vector<std::size_t> all(needs.size());
    std::iota(all.begin(), all.end(), 0);
    if (table.is_even || needs.size() < 3) return {all};
    std::vector<std::vector<std::size_t>> groups;
    double used = 0;
    for (std::size_t column = 1; column < needs.size(); ++column) {
        if (groups.empty() || used + needs[column].least > room.width) {
            groups.push_back({0});
            used = needs[0].least;
        }
        groups.back().push_back(column);
        used += needs[column].least;
    }
    return groups;
}

std::vector<double> column_widths(
    const Table& table,
    const std::vector<ColumnNeed>& needs,
    const std::vector<std::size_t>& group,
    const Room& room
) {
    const auto count = static_cast<double>(group.size());
    std::vector<double> widths;
    if (table.is_even) {
        widths.assign(group.size(), room.width / count);
        return widths;
    }
    double least = 0;
    double natural = 0;
    for (const std::size_t column : group) {
        least += needs[column].least;
        natural += needs[column].natural;
    }
    if (natural <= room.width || least > room.width) {
        for (const std::size_t column : group)
            widths.push_back(
                natural <= room.width ? needs[column].natural * room.width / natural
                                      : needs[column].least * room.width / least
            );
        return widths;
    }
    // Short columns keep their texts on one line, as long as the others have what they need.
    std::vector<std::size_t> order(group.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t one, std::size_t other) {
        return needs[group[one]].natural < needs[group[other]].natural;
    });
    widths.assign(group.size(), 0);
    double left = room.width;
    double others = least;
    double others_natural = natural;
    std::size_t next = 0;
    for (; next < order.size(); ++next) {
        const ColumnNeed& need = needs[group[order[next]]];
        const auto fair = left / static_cast<double>(order.size() - next);
        if (need.natural > fair || left - need.natural < others - need.least) break;
        widths[order[next]] = need.natural;
        left -= need.natural;
        others -= need.least;
        others_natural -= need.natural;
    }
    for (; next < order.size(); ++next) {
        const ColumnNeed& need = needs[group[order[next]]];
        widths[order[next]] = need.least + (left - others) * (need.natural - need.least) /
                                               std::max(0.001, others_natural - others);
    }
    return widths;
}

Table folded_table(const Table& table, const Room& room, const Texts& texts) {
    constexpr std::size_t copies_max = 3;
    constexpr std::size_t least_rows = 2;
    constexpr double shortened = 0.8; // a few long texts may take a second line
    const std::string blank = "   ";
    const double gap = texts.natural_width(blank, {}) + 1 + 2 * beside_text;
    double natural = 0;
    for (const ColumnNeed& need : column_needs(table, room, texts))
        natural += need.least + shortened * (need.natural - need.least);
    const auto fitting = static_cast<std::size_t>((room.width + gap) / (natural + gap));
    const std::size_t copies = std::min({copies_max, fitting, table.rows.size() / least_rows});
    if (copies < 2) return table;
    Table wide = table;
    wide.columns.clear();
    wide.rows.clear();
    const std::size_t rows = (table.rows.size() + copies - 1) / copies;
    const double row_height = texts.size({}) * 1.7;
    const bool goes_down = static_cast<double>(rows) * row_height < room.height * 0.6;
    for (std::size_t copy = 0; copy < copies; ++copy) {
        if (copy > 0) wide.columns.push_back({blank});
        wide.columns.insert(wide.columns.end(), table.columns.begin(), table.columns.end());
    }
    for (std::size_t row = 0; row < rows; ++row) {
        std::vector<Cell>& cells = wide.rows.emplace_back();
        for (std::size_t copy = 0; copy < copies; ++copy) {
            if (copy > 0) cells.emplace_back();
            const std::size_t from = goes_down ? copy * rows + row : row * copies + copy;
            if (from < table.rows.size())
                cells.insert(cells.end(), table.rows[from].begin(), table.rows[from].end());
            else
                cells.resize(cells.size() + table.columns.size());
        }
    }
    wide.may_fold = false;
    return wide;
}

} // namespace print
