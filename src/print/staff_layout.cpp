// Staves of a calendar: what stands left of and above the five lines, bars, and room below.
#include "print/pieces.h"

#include <algorithm>

namespace print {

namespace {

constexpr int lines_of_a_staff = 5;
constexpr double step_mm = 2; // between two lines: as music paper, common practice, no source
constexpr double step_max_mm = 4;
constexpr double pale = 0.5;
constexpr double above = 3; // points between words and lines

// Words that would take half a page stand before the staff instead, as many lines as they need.
void add_bare_staff(Pieces& pieces, const Staff& staff, const Room& room, const Texts& texts) {
    Staff bare;
    const auto add_words = [&](const std::string& words) {
        if (!words.empty()) add_lines(pieces, texts.lines(words, room.width), 0, false);
    };
    add_words(staff.label);
    add_words(staff.number);
    add_words(staff.note);
    for (const StaffBar& bar : staff.bars) {
        add_words(bar.text);
        bare.bars.push_back({bar.share, {}});
    }
    add_staff(pieces, bare, room, texts);
}

} // namespace

void add_staff(Pieces& pieces, const Staff& staff, const Room& room, const Texts& texts) {
    const bool has_label = !staff.label.empty() || !staff.number.empty();
    const double left = has_label ? texts.size({TextStyle::heading}) * 2.6 : 0;
    const double width = room.width - left;
    Piece piece;
    std::vector<Mark>& words = piece.marks;

    double label_foot = 0;
    const auto add_label = [&](const std::string& text, TextStyle style) {
        if (text.empty()) return;
        const std::vector<TextLine> lines = texts.lines(text, left - 4, {style});
        place_lines(words, lines, 0, label_foot);
        label_foot += height_of(lines);
    };
    add_label(staff.label, TextStyle::heading);
    add_label(staff.number, TextStyle::body);

    double top = 0;
    if (!staff.note.empty()) {
        const auto lines = texts.lines(staff.note, width, {TextStyle::small});
        place_lines(words, lines, left, 0);
        top += height_of(lines);
    }
    double bars_height = 0;
    for (std::size_t i = 0; i < staff.bars.size(); ++i) {
        const StaffBar& bar = staff.bars[i];
        if (bar.text.empty()) continue;
        const double from = bar.share * width;
        const double to = i + 1 < staff.bars.size() ? staff.bars[i + 1].share * width : width;
        const auto lines = texts.lines(bar.text, std::max(1.0, to - from - 3), {TextStyle::small});
        place_lines(words, lines, left + from + 1, top);
        bars_height = std::max(bars_height, height_of(lines));
    }
    top += bars_height + above;

    const auto staff_height = [](double step) {
        return (lines_of_a_staff - 1) * step * points_per_mm;
    };
    piece.height = std::max(label_foot, top + staff_height(step_mm)) + 6;
    if (piece.height > room.height / 2) return add_bare_staff(pieces, staff, room, texts);
    piece.shares_rest = true;
    piece.fill = [marks = words, bars = staff.bars, left, width, top, staff_height](double height) {
        std::vector<Mark> all = marks;
        // Half of what is left goes between the lines, half stays free for words below.
        const double free = height - top - staff_height(step_mm) - 6;
        const double step =
            std::min(step_max_mm, step_mm + std::max(0.0, free) / 2 / 4 / points_per_mm);
        const double foot = top + staff_height(step);
        for (int line = 0; line < lines_of_a_staff; ++line) {
            const double y = top + line * step * points_per_mm;
            all.emplace_back(LineMark{left, y, left + width, y, 0.4, pale});
        }
        for (const StaffBar& bar : bars) {
            const double x = left + bar.share * width;
            all.emplace_back(LineMark{x, top, x, foot, 0.7, pale});
        }
        all.emplace_back(LineMark{left + width, top, left + width, foot, 0.7, pale});
        return all;
    };
    pieces.push_back(std::move(piece));
}

} // namespace print
