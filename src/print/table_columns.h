// Columns of a table: their widths by what stands in them, which of them stand beside each other,
// and short lists folded. Internal to the layout.
#pragma once

#include "print/pieces.h"

namespace print {

inline constexpr double beside_text = 3; // blank at both sides of a text, in points

TextWish cell_wish(const Table& table, const Cell& cell, std::size_t column);
TextWish note_wish(const Table& table, std::size_t column);

// Widths in points, the blank at both sides included.
struct ColumnNeed {
    double least = 0;   // so that no word is broken
    double natural = 0; // on one line
};

std::vector<ColumnNeed> column_needs(const Table& table, const Room& room, const Texts& texts);

// Columns that fit beside each other, the first one in every group.
std::vector<std::vector<std::size_t>>
column_groups(const Table& table, const std::vector<ColumnNeed>& needs, const Room& room);

// They fill the room.
std::vector<double> column_widths(
    const Table& table,
    const std::vector<ColumnNeed>& needs,
    const std::vector<std::size_t>& group,
    const Room& room
);

// As many copies of its columns beside each other as there is room for, a narrow blank between
// them. Its rows go down and then across where all of it stands on a page, else across.
Table folded_table(const Table& table, const Room& room, const Texts& texts);

} // namespace print
