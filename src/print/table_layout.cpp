// Tables: heads repeated on every page, rows that are too high told in slices.
#include "print/table_columns.h"

#include <algorithm>

namespace print {

namespace {

constexpr double above = 2;
constexpr double rule_grey = 0.6;

// Set smaller where a word would be broken, but never so small that nobody reads it.
TextWish unbroken(const std::string& text, double width, TextWish wish, const Texts& texts) {
    const double least = wish.style == TextStyle::title ? 0.55 : 0.75;
    constexpr double step = 0.9;
    while (wish.shrink * step >= least && texts.longest_word(text, wish) > width)
        wish.shrink *= step;
    return wish;
}

// One group of columns, row by row.
class TableWriter {
public:
    TableWriter(
        Pieces& pieces,
        const Table& table,
        const std::vector<std::size_t>& group,
        std::vector<double> widths,
        const Room& room,
        const Texts& texts
    )
        : pieces_(pieces), table_(table), group_(group), widths_(std::move(widths)), room_(room),
          texts_(texts) {}

    void write() {
        write_head();
        for (const auto& row : table_.rows)
            write_row(row);
        if (table_.fills_page) write_empty_rows();
    }

private:
    using CellLines = std::vector<std::vector<TextLine>>;

    double text_width(std::size_t place) const { return widths_[place] - 2 * beside_text; }

    std::vector<TextLine>
    lines_of(const std::string& text, std::size_t place, const TextWish& wish) const {
        const double width = text_width(place);
        return texts_.lines(text, width, unbroken(text, width, wish, texts_));
    }

    void write_head() {
        CellLines lines;
        bool has_title = false;
        for (std::size_t place = 0; place < group_.size(); ++place) {
            const Column& column = table_.columns[group_[place]];
            has_title = has_title || !column.title.empty();
            const TextWish wish = note_wish(table_, group_[place]);
            const bool is_broken = !column.brief.empty() &&
                                   texts_.longest_word(column.title, wish) > text_width(place);
            lines.push_back(lines_of(is_broken ? column.brief : column.title, place, wish));
        }
        if (!has_title) return;
        Piece head = strip(lines, 0);
        if (head.height > room_.height / 3) { // too high to stand on every page
            for (const CellLines& slice : slices_of(lines))
                pieces_.push_back(strip(slice, 0));
            return;
        }
        const double foot = head.height;
        head.marks.emplace_back(LineMark{0, foot, room_.width, foot, 1.0, 0});
        if (table_.has_grid)
            head.marks.emplace_back(LineMark{0, 0, room_.width, 0, 0.5, rule_grey});
        head_ = std::make_shared<Piece>(head);
        head.keeps_with_next = true;
        pieces_.push_back(std::move(head));
    }

    void write_row(const std::vector<Cell>& row) {
        CellLines lines;
        for (std::size_t place = 0; place < group_.size(); ++place) {
            const std::size_t column = group_[place];
            const Cell& cell = row[column];
            lines.push_back(lines_of(cell.text, place, cell_wish(table_, cell, column)));
            if (cell.note.empty()) continue;
            for (TextLine& line : lines_of(cell.note, place, note_wish(table_, column)))
                lines.back().push_back(std::move(line));
        }
        bool is_first = true;
        for (CellLines& slice : slices_of(lines)) {
            const double least_height = std::min(
                room_.height / 3,
                std::max(table_.row_mm * points_per_mm, widths_.front() * table_.row_to_width)
            );
            Piece piece = strip(slice, is_first ? least_height : 0);
            is_first = false;
            piece.marks.emplace_back(LineMark{
                0, piece.height, room_.width, piece.height, 0.5, rule_grey});
            piece.head = head_;
            pieces_.push_back(std::move(piece));
        }
    }

    void write_empty_rows() {
        const double row = std::max(1.0, table_.row_mm) * points_per_mm;
        Piece rest;
        rest.height = row;
        rest.is_spare = true;
        rest.fill = [row, width = room_.width, widths = widths_, has_grid = table_.has_grid](
                        double height
                    ) {
            std::vector<Mark> marks;
            const int rows = static_cast<int>(height / row + 0.001);
            for (int i = 1; i <= rows; ++i)
                marks.emplace_back(LineMark{0, i * row, width, i * row, 0.5, rule_grey});
            double x = 0;
            const double foot = rows * row;
            if (has_grid) marks.emplace_back(LineMark{0, 0, 0, foot, 0.5, rule_grey});
            for (const double each : widths) {
                x += each;
                if (has_grid) marks.emplace_back(LineMark{x, 0, x, foot, 0.5, rule_grey});
            }
            return marks;
        };
        pieces_.push_back(std::move(rest));
    }

    // As they stand, or no higher than half a page each.
    std::vector<CellLines> slices_of(const CellLines& lines) const {
        const double most = room_.height / 2;
        std::vector<CellLines> slices;
        std::vector<std::size_t> next(lines.size(), 0);
        bool is_done = false;
        while (!is_done) {
            is_done = true;
            CellLines slice(lines.size());
            for (std::size_t place = 0; place < lines.size(); ++place) {
                double used = 0;
                while (next[place] < lines[place].size()) {
                    const TextLine& line = lines[place][next[place]];
                    if (used > 0 && used + line.height > most) break;
                    used += line.height;
                    slice[place].push_back(line);
                    next[place] += 1;
                }
                is_done = is_done && next[place] == lines[place].size();
            }
            slices.push_back(std::move(slice));
        }
        return slices;
    }

    Piece strip(const CellLines& lines, double least_height) const {
        Piece piece;
        piece.height = least_height;
        double x = 0;
        for (std::size_t place = 0; place < lines.size(); ++place) {
            place_lines(piece.marks, lines[place], x + beside_text, above);
            piece.height = std::max(piece.height, height_of(lines[place]) + 2 * above);
            x += widths_[place];
        }
        if (!table_.has_grid) return piece;
        x = 0;
        piece.marks.emplace_back(LineMark{0, 0, 0, piece.height, 0.5, rule_grey});
        for (const double width : widths_) {
            x += width;
            piece.marks.emplace_back(LineMark{x, 0, x, piece.height, 0.5, rule_grey});
        }
        return piece;
    }

    Pieces& pieces_;
    const Table& table_;
    const std::vector<std::size_t>& group_;
    std::vector<double> widths_;
    const Room& room_;
    const Texts& texts_;
    std::shared_ptr<const Piece> head_;
};

} // namespace

void add_table(Pieces& pieces, const Table& table, const Room& room, const Texts& texts) {
    if (table.columns.empty()) return;
    if (table.may_fold) {
        const Table wide = folded_table(table, room, texts);
        if (wide.columns.size() > table.columns.size()) return add_table(pieces, wide, room, texts);
    }
    const std::vector<ColumnNeed> needs = column_needs(table, room, texts);
    for (const auto& group : column_groups(table, needs, room)) {
        TableWriter(pieces, table, group, column_widths(table, needs, group, room), room, texts)
            .write();
        add_space(pieces, 6);
    }
}

} // namespace print
