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

    double begin(Face& face, const Card& card, double shrink, bool goes_on) const {
        face.push_back(BoxMark{0, 0, width_, height_, corner, 0.8, 1});
        double y = inside;
        std::vector<TextLine> title = texts_.lines(
            goes_on ? card.title + " (goes on)" : card.title,
            text_width(),
            {TextStyle::heading, false, shrink}
        );
        // A name that fills the card alone leaves half of it to the rest.
        while (title.size() > 1 && height_of(title) > height_ / 2 && goes_on)
            title.pop_back();
        for (const TextLine& line : title)
            y = put(face, line, 0, y);
        if (!goes_on && !card.subtitle.empty())
            for (const TextLine& line :
                 texts_.lines(card.subtitle, text_width(), {TextStyle::small, false, shrink}))
                y = put(face, line, 0, y);
        face.push_back(LineMark{inside, y + 2, width_ - inside, y + 2, 1.2, 0});
        return y + 5;
    }

    static double put(Face& face, const TextLine& line, double x, double y) {
        face.push_back(TextMark{line, inside + x + line.x, y});
        return y + line.height;
    }

    std::vector<Face> write(const Card& card, double shrink) const {
        std::vector<Face> faces(1);
        double y = begin(faces.back(), card, shrink, false);
        const double foot = height_ - inside;
        const auto turn = [&] {
            faces.emplace_back();
            y = begin(faces.back(), card, shrink, true);
        };
        const TextWish strong{TextStyle::strong, false, shrink};
        const TextWish plain{TextStyle::body, false, shrink};
        for (const CardEntry& entry : card.entries) {
            const bool is_labelled = !entry.label.empty();
            const double label_width =
                is_labelled ? texts_.natural_width(entry.label, strong) + 5 : 0;
            const bool is_beside = label_width < text_width() * 0.45;
            const double indent = is_beside ? label_width : 0;
            std::vector<TextLine> labels;
            if (is_labelled) labels = texts_.lines(entry.label, text_width(), strong);
            const std::vector<TextLine> lines =
                texts_.lines(entry.text, text_width() - indent, plain);
            if (is_beside) {
                const double least =
                    std::max(lines.front().height, is_labelled ? labels.front().height : 0.0);
                if (y + least > foot) turn();
                if (is_labelled) put(faces.back(), labels.front(), 0, y);
            } else {
                for (const TextLine& line : labels) {
                    if (y + line.height > foot) turn();
                    y = put(faces.back(), line, 0, y);
                }
            }
            for (const TextLine& line : lines) {
                if (y + line.height > foot) turn();
                y = put(faces.back(), line, indent, y);
            }
            y += 1.5;
        }
        return faces;
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
        marks.push_back(LineMark{at, y - mark_length, at, y - 1, 0.4, 0.2});
        marks.push_back(LineMark{at, y + height + 1, at, y + height + mark_length, 0.4, 0.2});
    }
    for (const double at : top) {
        marks.push_back(LineMark{x - mark_length, at, x - 1, at, 0.4, 0.2});
        marks.push_back(LineMark{x + width + 1, at, x + width + mark_length, at, 0.4, 0.2});
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
            const double x = left + (place % columns) * (width + gap_x);
            const double y = top + (place / columns) * (height + gap_y);
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
