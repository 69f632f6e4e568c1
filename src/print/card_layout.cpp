// Cards to be cut out: as many beside and below each other as a page holds, cut marks at their
// corners.
#include "print/pieces.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace print {

namespace {

constexpr double inside = 7; // blank within the border
constexpr double corner = 5; // radius
constexpr double mark_length = 5;
constexpr double head_share = 0.4; // of the height, at most, for the name
constexpr std::array<double, 4> shrinks{1.0, 0.9, 0.8, 0.72}; // 9 points down to 6.5

// The marks of one card.
using Face = std::vector<Mark>;

class CardWriter {
public:
    CardWriter(double width, double height, const Texts& texts)
        : width_(width), height_(height), texts_(texts) {}

    // One face, or as many as the text takes.
    std::vector<Face> write(const Card& card) const {
        for (const double shrink : shrinks) {
            std::vector<Face> faces = write(card, shrink);
            if (faces.size() == 1) return faces;
        }
        return write(card, shrinks.back());
    }

private:
    double text_width() const { return width_ - 2 * inside; }

    struct Writing {
        std::vector<Face> faces;
        double y = 0; // where the next line goes on the last face
    };

    double foot() const { return height_ - inside; }

    static void put(Writing& writing, const TextLine& line, double indent) {
        writing.faces.back().emplace_back(TextMark{line, inside + indent + line.x, writing.y});
    }

    // A new face under the name of the card; what of the name is too long for its head is returned.
    std::vector<TextLine> begin(Writing& writing, const Card& card, double shrink) const {
        const bool goes_on = !writing.faces.empty();
        Face& face = writing.faces.emplace_back();
        face.emplace_back(BoxMark{0, 0, width_, height_, corner, 0.8, 1});
        writing.y = inside;
        std::vector<TextLine> rest;
        const auto add = [&](const std::string& text, TextStyle style) {
            for (TextLine& line : texts_.lines(text, text_width(), {style, false, shrink})) {
                if (!rest.empty() || writing.y + line.height > height_ * head_share) {
                    rest.push_back(std::move(line));
                    continue;
                }
                put(writing, line, 0);
                writing.y += line.height;
            }
        };
        add(goes_on ? card.title + " (goes on)" : card.title, TextStyle::heading);
        if (!goes_on && !card.subtitle.empty()) add(card.subtitle, TextStyle::small);
        face.emplace_back(LineMark{inside, writing.y + 2, width_ - inside, writing.y + 2, 1.2, 0});
        writing.y += 5;
        if (goes_on) rest.clear(); // it was told on the first face
        return rest;
    }

    void add_lines(
        Writing& writing,
        const Card& card,
        double shrink,
        const std::vector<TextLine>& lines,
        double indent
    ) const {
        for (const TextLine& line : lines) {
            if (writing.y + line.height > foot()) begin(writing, card, shrink);
            put(writing, line, indent);
            writing.y += line.height;
        }
    }

    // The label beside the text where it is short, else above it.
    void
    add_entry(Writing& writing, const Card& card, double shrink, const CardEntry& entry) const {
        const TextWish strong{TextStyle::strong, false, shrink};
        const TextWish plain{TextStyle::body, false, shrink};
        if (entry.label.empty()) {
            add_lines(writing, card, shrink, texts_.lines(entry.text, text_width(), plain), 0);
            return;
        }
        const double label_width = texts_.natural_width(entry.label, strong) + 1;
        const std::vector<TextLine> beside = texts_.lines(entry.label, label_width, strong);
        if (label_width > text_width() * 0.45 || beside.size() > 1) {
            add_lines(writing, card, shrink, texts_.lines(entry.label, text_width(), strong), 0);
            add_lines(writing, card, shrink, texts_.lines(entry.text, text_width(), plain), 0);
            return;
        }
        const double indent = label_width + 4;
        std::vector<TextLine> lines = texts_.lines(entry.text, text_width() - indent, plain);
        const double first = std::max(lines.front().height, beside.front().height);
        if (writing.y + first > foot()) begin(writing, card, shrink);
        put(writing, beside.front(), 0);
        put(writing, lines.front(), indent);
        writing.y += first;
        lines.erase(lines.begin());
        add_lines(writing, card, shrink, lines, indent);
    }

    std::vector<Face> write(const Card& card, double shrink) const {
        Writing writing;
        const std::vector<TextLine> rest = begin(writing, card, shrink);
        add_lines(writing, card, shrink, rest, 0);
        for (const CardEntry& entry : card.entries) {
            add_entry(writing, card, shrink, entry);
            writing.y += 1.5;
        }
        return std::move(writing.faces);
    }

    double width_;
    double height_;
    const Texts& texts_;
};

// How many cards fit along a length, at least one.
int count_along(double length, double card) {
    return std::max(1, static_cast<int>(std::floor(length / card + 0.001)));
}

void add_cut_marks(std::vector<Mark>& marks, double x, double y, double width, double height) {
    const double left[] = {x, x + width};
    const double top[] = {y, y + height};
    for (const double at : left) {
        marks.emplace_back(LineMark{at, y - mark_length, at, y - 1, 0.4, 0.2});
        marks.emplace_back(LineMark{at, y + height + 1, at, y + height + mark_length, 0.4, 0.2});
    }
    for (const double at : top) {
        marks.emplace_back(LineMark{x - mark_length, at, x - 1, at, 0.4, 0.2});
        marks.emplace_back(LineMark{x + width + 1, at, x + width + mark_length, at, 0.4, 0.2});
    }
}

} // namespace

void add_cards(
    Pieces& pieces,
    const std::vector<const Card*>& cards,
    SizeMm size,
    const Room& room,
    const Texts& texts
) {
    const double margin = mark_length + 1;
    // A card turned on its side where more fit so is not tried: text would stand across.
    const double width = std::min(size.width * points_per_mm, room.width);
    const double height = std::min(size.height * points_per_mm, room.height);
    const int columns = count_along(room.width, width);
    const int rows = count_along(room.height, height);
    const double gap_x = std::min(margin, (room.width - columns * width) / columns);
    const double gap_y = std::min(margin, (room.height - rows * height) / rows);
    const double left = (room.width - columns * width - (columns - 1) * gap_x) / 2;
    const double top = (room.height - rows * height - (rows - 1) * gap_y) / 2;
    const CardWriter writer(width, height, texts);
    int place = 0;
    const auto begin_page = [&] {
        Piece end;
        end.is_break = true;
        pieces.push_back(end);
        Piece page;
        page.height = room.height;
        pieces.push_back(std::move(page));
    };
    for (const Card* card : cards) {
        for (const Face& face : writer.write(*card)) {
            if (place == 0) begin_page();
            const int row = place / columns;
            const double x = left + (place % columns) * (width + gap_x);
            const double y = top + row * (height + gap_y);
            std::vector<Mark>& marks = pieces.back().marks;
            for (const Mark& mark : face)
                marks.push_back(moved(mark, x, y));
            add_cut_marks(marks, x, y, width, height);
            place = (place + 1) % (columns * rows);
        }
    }
    Piece end;
    end.is_break = true;
    pieces.push_back(end);
}

} // namespace print
