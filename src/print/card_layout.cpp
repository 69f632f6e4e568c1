// Cards to be cut out: as many beside and below each other as a page holds, cut marks at their
// corners.
#include "print/pieces.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace print {

namespace {

constexpr double inside = 7; // blank within the border
constexpr double corner = 5; // radius
constexpr double mark_length = 5;
constexpr double cut_mark_thickness = 0.4;
constexpr double head_share = 0.4; // of the height, at most, for the name
constexpr std::array<double, 6> scales{1.3, 1.15, 1.0, 0.9, 0.8, 0.72}; // 12 points to 6.5

// "Will +5" stays on one line: a number is never parted from what it is of.
std::string with_numbers_kept(const std::string& text) {
    constexpr std::string_view blank_that_holds = "\u00A0";
    std::string kept;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool is_before_sign = text[i] == ' ' && i + 2 < text.size() &&
                                    (text[i + 1] == '+' || text[i + 1] == '-') &&
                                    text[i + 2] >= '0' && text[i + 2] <= '9';
        if (is_before_sign)
            kept += blank_that_holds;
        else
            kept += text[i];
    }
    return kept;
}

// The marks of one card.
using Face = std::vector<Mark>;

class CardWriter {
public:
    CardWriter(double width, double height, const Texts& texts)
        : width_(width), height_(height), texts_(texts) {}

    // One face, or as many as the text takes.
    std::vector<Face> write(const Card& card) const {
        std::vector<Face> faces;
        for (const double scale : scales) {
            faces = write(card, scale);
            if (faces.size() == 1) break;
        }
        return faces;
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
        const std::string text = with_numbers_kept(entry.text);
        const TextWish strong{TextStyle::strong, false, shrink};
        const TextWish plain{TextStyle::body, false, shrink};
        if (entry.label.empty()) {
            add_lines(writing, card, shrink, texts_.lines(text, text_width(), plain), 0);
            return;
        }
        const double label_width = texts_.natural_width(entry.label, strong) + 1;
        const std::vector<TextLine> beside = texts_.lines(entry.label, label_width, strong);
        if (label_width > text_width() * 0.45 || beside.size() > 1) {
            add_lines(writing, card, shrink, texts_.lines(entry.label, text_width(), strong), 0);
            add_lines(writing, card, shrink, texts_.lines(text, text_width(), plain), 0);
            return;
        }
        const double indent = label_width + 4;
        std::vector<TextLine> lines = texts_.lines(text, text_width() - indent, plain);
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

// How many cards stand beside and below each other.
struct Grid {
    double width = 0; // of a card
    double height = 0;
    int columns = 1;
    int rows = 1;
    double left = 0;
    double top = 0;

    int places() const { return columns * rows; }
};

// None where a card is larger than the room.
Grid grid_of(double width, double height, const Room& room) {
    const auto along = [](double length, double card) {
        return static_cast<int>(std::floor(length / card + 0.001));
    };
    return {width, height, along(room.width, width), along(room.height, height)};
}

// Room for cut marks stays above the foot line.
Grid best_grid(SizeMm size, const Room& page) {
    const Room room{page.width, page.height - mark_length};
    const double width = size.width * points_per_mm;
    const double height = size.height * points_per_mm;
    Grid grid = grid_of(width, height, room);
    const Grid turned = grid_of(height, width, room);
    if (turned.places() > grid.places()) grid = turned;
    if (grid.places() == 0) // a card larger than the page is as large as the page
        grid = {std::min(width, room.width), std::min(height, room.height)};
    grid.left = (room.width - grid.columns * grid.width) / 2;
    const double all = grid.rows * grid.height;
    grid.top = std::min((page.height - all) / 2, room.height - all);
    return grid;
}

// At the edges of all cards together: one cut parts two of them.
void add_cut_marks(std::vector<Mark>& marks, const Grid& grid, int cards) {
    const int columns = std::min(cards, grid.columns);
    const int rows = (cards + grid.columns - 1) / grid.columns;
    const double right = grid.left + columns * grid.width;
    const double foot = grid.top + rows * grid.height;
    const auto add = [&marks](double x1, double y1, double x2, double y2) {
        marks.emplace_back(LineMark{x1, y1, x2, y2, cut_mark_thickness, 0.2});
    };
    for (int column = 0; column <= columns; ++column) {
        const double x = grid.left + column * grid.width;
        add(x, grid.top - mark_length, x, grid.top - 1);
        add(x, foot + 1, x, foot + mark_length);
    }
    for (int row = 0; row <= rows; ++row) {
        const double y = grid.top + row * grid.height;
        add(grid.left - mark_length, y, grid.left - 1, y);
        add(right + 1, y, right + mark_length, y);
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
    const Grid grid = best_grid(size, room);
    const CardWriter writer(grid.width, grid.height, texts);
    int on_page = 0;
    const auto end_page = [&] {
        if (on_page > 0) add_cut_marks(pieces.back().marks, grid, on_page);
        on_page = 0;
        Piece end;
        end.is_break = true;
        pieces.push_back(std::move(end));
    };
    end_page(); // of what stands before
    for (const Card* card : cards)
        for (const Face& face : writer.write(*card)) {
            if (on_page == grid.places()) end_page();
            if (on_page == 0) {
                Piece page;
                page.height = room.height;
                page.use = PageUse::cut_out;
                pieces.push_back(std::move(page));
            }
            const int column = on_page % grid.columns;
            const int row = on_page / grid.columns;
            const double x = grid.left + column * grid.width;
            const double y = grid.top + row * grid.height;
            for (const Mark& mark : face)
                pieces.back().marks.push_back(moved(mark, x, y));
            on_page += 1;
        }
    end_page();
}

} // namespace print
