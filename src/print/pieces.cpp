#include "print/pieces.h"

#include <algorithm>
#include <cmath>

namespace print {

namespace {

constexpr double line_step_mm = 8;     // to write on by hand; common practice, no source
constexpr double narrow_step_mm = 6.5; // where many have to share a page
constexpr double pale = 0.55;          // grey of what is written over

double text_indent(const Texts& texts) {
    return texts.size({}) * 1.6;
}

// A square as high as the capitals beside it.
BoxMark square(double x, double line_height, const Texts& texts) {
    const double side = texts.size({}) * 0.85;
    return {x, (line_height - side) / 2, side, side, 1, 0.8, 1};
}

double step(int count) {
    return count * line_step_mm * points_per_mm;
}

constexpr double column_gap = 6;

std::vector<TextLine> tick_lines(const Tick& tick, double width, const Texts& texts) {
    std::vector<TextLine> lines = texts.lines(tick.text, width);
    if (!tick.note.empty())
        for (TextLine& line : texts.lines(tick.note, width, {TextStyle::small}))
            lines.push_back(std::move(line));
    return lines;
}

// As wished, or one column where a text would take half a page of a narrow one.
int tick_columns(const TickList& list, const Room& room, const Texts& texts) {
    constexpr double usual_points = 9; // that the wish is meant for
    const double wished = list.column_mm * points_per_mm * texts.size({}) / usual_points;
    const int columns =
        wished > 0 ? std::max(1, static_cast<int>(std::floor(room.width / wished))) : 1;
    const double width = room.width / columns - text_indent(texts) - column_gap;
    for (const Tick& tick : list.ticks)
        if (columns > 1 && height_of(tick_lines(tick, width, texts)) > room.height / 2) return 1;
    return columns;
}

} // namespace

void add_space(Pieces& pieces, double height) {
    Piece space;
    space.height = height;
    space.is_space = true;
    pieces.push_back(std::move(space));
}

void place_lines(std::vector<Mark>& marks, const std::vector<TextLine>& lines, double x, double y) {
    for (const TextLine& line : lines) {
        marks.emplace_back(TextMark{line, x + line.x, y});
        y += line.height;
    }
}

void add_lines(Pieces& pieces, const std::vector<TextLine>& lines, double x, bool keeps_with_next) {
    for (const TextLine& line : lines) {
        Piece piece;
        piece.height = line.height;
        piece.keeps_with_next = keeps_with_next;
        piece.marks.emplace_back(TextMark{line, x + line.x, 0});
        pieces.push_back(std::move(piece));
    }
}

Mark moved(Mark mark, double x, double y) {
    if (auto* line = std::get_if<LineMark>(&mark)) {
        line->x1 += x;
        line->x2 += x;
        line->y1 += y;
        line->y2 += y;
    } else {
        std::visit(
            [x, y](auto& each) {
                if constexpr (!std::is_same_v<std::decay_t<decltype(each)>, LineMark>) {
                    each.x += x;
                    each.y += y;
                }
            },
            mark
        );
    }
    return mark;
}

void add_ticks(Pieces& pieces, const TickList& list, const Room& room, const Texts& texts) {
    const int columns = tick_columns(list, room, texts);
    const double column = room.width / columns;
    const double indent = text_indent(texts);
    const double width = column - indent - (columns > 1 ? column_gap : 0);
    for (std::size_t first = 0; first < list.ticks.size();
         first += static_cast<std::size_t>(columns)) {
        Piece row;
        Pieces more; // lines of a text that alone is longer than half a page
        for (std::size_t i = first;
             i < std::min(list.ticks.size(), first + static_cast<std::size_t>(columns));
             ++i) {
            const Tick& tick = list.ticks[i];
            const double x = static_cast<double>(i - first) * column;
            std::vector<TextLine> lines = tick_lines(tick, width, texts);
            const BoxMark box = square(x, lines.front().height, texts);
            row.marks.emplace_back(box);
            if (tick.is_ticked) {
                const double foot = box.y + box.height;
                row.marks.emplace_back(LineMark{x + 1.5, box.y + 4, x + 3, foot - 1.5, 1.2, 0});
                row.marks.emplace_back(LineMark{
                    x + 3, foot - 1.5, x + box.width - 0.5, box.y + 1, 1.2, 0});
            }
            if (columns == 1 && height_of(lines) > room.height / 2) {
                row.marks.emplace_back(TextMark{lines.front(), x + indent + lines.front().x, 0});
                row.height = lines.front().height;
                lines.erase(lines.begin());
                add_lines(more, lines, x + indent, false);
            } else {
                place_lines(row.marks, lines, x + indent, 0);
                row.height = std::max(row.height, height_of(lines));
            }
        }
        pieces.push_back(std::move(row));
        for (Piece& piece : more)
            pieces.push_back(std::move(piece));
        add_space(pieces, 3);
    }
}

void add_tally(Pieces& pieces, const Tally& tally, const Room& room, const Texts& texts) {
    const double side = texts.size({});
    const double each = side + 4;
    const int in_row = std::max(1, static_cast<int>(room.width * 0.4 / each));
    const int rows = (tally.squares + in_row - 1) / in_row;
    const double squares_width = std::min(tally.squares, in_row) * each;
    const double width = room.width - squares_width - 6;
    std::vector<TextLine> lines = texts.lines(tally.text, width);
    if (!tally.note.empty())
        for (TextLine& line : texts.lines(tally.note, width, {TextStyle::small}))
            lines.push_back(std::move(line));
    Piece row;
    for (int i = 0; i < tally.squares; ++i) {
        const int across = i % in_row;
        const int down = i / in_row;
        row.marks.emplace_back(BoxMark{
            room.width - squares_width + across * each, 1 + down * each, side, side, 1, 0.8, 1});
    }
    row.height = rows * each + 1;
    if (height_of(lines) > room.height / 2) { // the squares stand beside its first line
        row.marks.emplace_back(TextMark{lines.front(), lines.front().x, 0});
        row.height = std::max(row.height, lines.front().height);
        pieces.push_back(std::move(row));
        lines.erase(lines.begin());
        add_lines(pieces, lines, 0, false);
    } else {
        place_lines(row.marks, lines, 0, 0);
        row.height = std::max(row.height, height_of(lines));
        pieces.push_back(std::move(row));
    }
    add_space(pieces, 3);
}

void add_ruled_lines(
    Pieces& pieces, const RuledLines& lines, const Room& room, const Texts& /*texts*/
) {
    if (lines.count == 0) {
        Piece rest;
        rest.height = step(3);
        rest.is_spare = lines.is_spare;
        rest.fill = [width = room.width](double height) {
            std::vector<Mark> marks;
            for (int i = 1; step(i) <= height + 0.001; ++i)
                marks.emplace_back(LineMark{0, step(i), width, step(i), 0.5, pale});
            return marks;
        };
        pieces.push_back(std::move(rest));
        return;
    }
    if (lines.is_shared) {
        Piece part;
        part.height = lines.count * narrow_step_mm * points_per_mm;
        part.shares_rest = true;
        part.fill = [least = lines.count, width = room.width](double height) {
            const int count = std::max(
                least, static_cast<int>(std::floor(height / (narrow_step_mm * points_per_mm)))
            );
            const double each = height / count;
            std::vector<Mark> marks;
            for (int i = 1; i <= count; ++i)
                marks.emplace_back(LineMark{0, i * each, width, i * each, 0.5, pale});
            return marks;
        };
        pieces.push_back(std::move(part));
        return;
    }
    for (int i = 0; i < lines.count; ++i) {
        Piece line;
        line.height = step(1);
        line.marks.emplace_back(LineMark{0, step(1), room.width, step(1), 0.5, pale});
        pieces.push_back(std::move(line));
    }
}

void add_divider(Pieces& pieces, const Room& room) {
    // Three lozenges between two fading strokes.
    Piece piece;
    piece.height = 16;
    const double middle = room.width / 2;
    for (const double shift : {-10.0, 0.0, 10.0}) {
        const double radius = shift == 0 ? 4.0 : 2.5;
        const double x = middle + shift;
        piece.marks.emplace_back(LineMark{x - radius, 8, x, 8 - radius, 0.8, 0});
        piece.marks.emplace_back(LineMark{x, 8 - radius, x + radius, 8, 0.8, 0});
        piece.marks.emplace_back(LineMark{x + radius, 8, x, 8 + radius, 0.8, 0});
        piece.marks.emplace_back(LineMark{x, 8 + radius, x - radius, 8, 0.8, 0});
    }
    piece.marks.emplace_back(LineMark{room.width * 0.2, 8, middle - 18, 8, 0.8, 0.3});
    piece.marks.emplace_back(LineMark{middle + 18, 8, room.width * 0.8, 8, 0.8, 0.3});
    pieces.push_back(std::move(piece));
}

} // namespace print
