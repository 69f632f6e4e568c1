// Tables: widths of columns by what stands in them, heads repeated on every page, tables that are
// too wide told in several, rows that are too high told in slices.
#include "print/pieces.h"

#include <algorithm>
#include <numeric>

namespace print {

namespace {

constexpr double beside = 3; // blank at both sides of a text
constexpr double above = 2;
constexpr double rule_grey = 0.6;

TextWish wish_of(const Table& table, const Cell& cell, std::size_t column) {
    const TextStyle plain = cell.is_strong ? TextStyle::strong : TextStyle::body;
    return {cell.is_large ? TextStyle::title : plain, table.columns[column].is_right, 1.0};
}

TextWish note_wish(const Table& table, std::size_t column) {
    return {TextStyle::small, table.columns[column].is_right, 1.0};
}

// Set smaller where a word would be broken, but never so small that nobody reads it.
TextWish unbroken(const std::string& text, double width, TextWish wish, const Texts& texts) {
    const double least = wish.style == TextStyle::title ? 0.55 : 0.75;
    constexpr double step = 0.9;
    while (wish.shrink * step >= least && texts.longest_word(text, wish) > width)
        wish.shrink *= step;
    return wish;
}

constexpr TextWish head_wish{TextStyle::small, false, 1.0};

struct Need {
    double least = 0;   // so that no word is broken
    double natural = 0; // on one line
};

std::vector<Need> needs_of(const Table& table, const Room& room, const Texts& texts) {
    std::vector<Need> needs(table.columns.size());
    for (std::size_t column = 0; column < needs.size(); ++column) {
        Need& need = needs[column];
        const auto take = [&](const std::string& text, const TextWish& wish) {
            if (text.empty()) return;
            const double natural = texts.natural_width(text, wish);
            if (natural > need.natural) need.natural = natural;
            if (natural > need.least)
                need.least = std::max(need.least, texts.longest_word(text, wish));
        };
        take(table.columns[column].title, head_wish);
        for (const auto& row : table.rows) {
            take(row[column].text, wish_of(table, row[column], column));
            take(row[column].note, note_wish(table, column));
        }
        // A word as long as a line is broken after all.
        const double least_max = room.width * (column == 0 ? 0.4 : 0.3);
        need.least = std::min(need.least + 1, least_max) + 2 * beside;
        need.natural = std::max(need.natural + 1 + 2 * beside, need.least);
    }
    return needs;
}

// Columns that fit beside each other, the first one in every group.
std::vector<std::vector<std::size_t>>
groups_of(const Table& table, const std::vector<Need>& needs, const Room& room) {
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

std::vector<double> widths_of(
    const Table& table,
    const std::vector<Need>& needs,
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
        const Need& need = needs[group[order[next]]];
        const auto fair = left / static_cast<double>(order.size() - next);
        if (need.natural > fair || left - need.natural < others - need.least) break;
        widths[order[next]] = need.natural;
        left -= need.natural;
        others -= need.least;
        others_natural -= need.natural;
    }
    for (; next < order.size(); ++next) {
        const Need& need = needs[group[order[next]]];
        widths[order[next]] = need.least + (left - others) * (need.natural - need.least) /
                                               std::max(0.001, others_natural - others);
    }
    return widths;
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

    double text_width(std::size_t place) const { return widths_[place] - 2 * beside; }

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
            const TextWish wish{TextStyle::small, column.is_right, 1.0};
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
            lines.push_back(lines_of(cell.text, place, wish_of(table_, cell, column)));
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
            place_lines(piece.marks, lines[place], x + beside, above);
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

// As many copies of its columns beside each other as there is room for, a narrow blank between
// them. Its rows go down and then across where all of it stands on a page, else across.
Table folded(const Table& table, const Room& room, const Texts& texts) {
    constexpr std::size_t copies_max = 3;
    constexpr std::size_t least_rows = 2;
    constexpr double shortened = 0.8; // a few long texts may take a second line
    const std::string blank = "   ";
    const double gap = texts.natural_width(blank, {}) + 1 + 2 * beside;
    double natural = 0;
    for (const Need& need : needs_of(table, room, texts))
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

} // namespace

void add_table(Pieces& pieces, const Table& table, const Room& room, const Texts& texts) {
    if (table.columns.empty()) return;
    if (table.may_fold) {
        const Table wide = folded(table, room, texts);
        if (wide.columns.size() > table.columns.size()) return add_table(pieces, wide, room, texts);
    }
    const std::vector<Need> needs = needs_of(table, room, texts);
    for (const auto& group : groups_of(table, needs, room)) {
        TableWriter(pieces, table, group, widths_of(table, needs, group, room), room, texts)
            .write();
        add_space(pieces, 6);
    }
}

} // namespace print
