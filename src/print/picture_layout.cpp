// Pictures on a page, and pages that begin a part of a binder.
#include "print/pieces.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace print {

namespace {

constexpr double dots_an_inch =
    300; // finer than that no home printer shows; common practice, no source
constexpr double points_an_inch = 72;
constexpr double gap = 6;

void add_centred(std::vector<Mark>& marks, const TextLine& line, double width, double y) {
    marks.emplace_back(TextMark{line, std::max(0.0, (width - line.width) / 2), y});
}

// The title as large as a third of the page allows.
std::vector<TextLine>
large_title(const std::string& title, double width, double height, const Texts& texts) {
    constexpr std::array<double, 6> sizes{2.0, 1.6, 1.3, 1.0, 0.75, 0.5};
    std::vector<TextLine> lines;
    for (const double size : sizes) {
        const TextWish wish{TextStyle::title, false, size};
        lines = texts.lines(title, width, wish);
        // A word that would be broken is better set smaller.
        const bool is_whole = texts.longest_word(title, wish) <= width || size == sizes.back();
        if (is_whole && height_of(lines) <= height) break;
    }
    return lines;
}

} // namespace

PictureMark
placed_picture(const std::shared_ptr<const Pixels>& pixels, double width, double height) {
    const double scale = std::min(width / pixels->width, height / pixels->height);
    PictureMark mark;
    mark.width = pixels->width * scale;
    mark.height = pixels->height * scale;
    mark.x = (width - mark.width) / 2;
    mark.y = (height - mark.height) / 2;
    const auto dots = [](double points) {
        return static_cast<int>(std::ceil(points * dots_an_inch / points_an_inch));
    };
    mark.pixels = scaled_down(pixels, dots(width), dots(height));
    return mark;
}

void add_picture(Pieces& pieces, const Picture& picture, const Room& room, const Texts& texts) {
    std::vector<TextLine> caption;
    if (!picture.caption.empty())
        caption = texts.lines(picture.caption, room.width, {TextStyle::large});
    std::vector<TextLine> below; // with the picture; a very long text goes on on the next page
    double caption_height = 0;
    while (below.size() < caption.size() &&
           caption_height + caption[below.size()].height < room.height / 3) {
        caption_height += caption[below.size()].height;
        below.push_back(caption[below.size()]);
    }
    if (!below.empty()) caption_height += gap;
    Piece piece;
    piece.height = room.height / 2;
    piece.fill = [pixels = picture.pixels, below, caption_height, width = room.width](double height
                 ) {
        std::vector<Mark> marks;
        const PictureMark placed = placed_picture(pixels, width, height - caption_height);
        marks.emplace_back(placed);
        double y = placed.y + placed.height + gap;
        for (const TextLine& line : below) {
            add_centred(marks, line, width, y);
            y += line.height;
        }
        return marks;
    };
    pieces.push_back(std::move(piece));
    add_lines(
        pieces,
        {caption.begin() + static_cast<std::ptrdiff_t>(below.size()), caption.end()},
        0,
        false
    );
}

void add_divider_page(
    Pieces& pieces, const DividerPage& page, const Room& room, const Texts& texts
) {
    Piece piece;
    piece.height = room.height;
    std::vector<Mark>& marks = piece.marks;
    const double band = std::min(room.height * 0.2, 150.0);
    const double title_max = room.height / 3;
    std::vector<TextLine> title;
    if (!page.title.empty()) title = large_title(page.title, room.width, title_max, texts);
    std::size_t fitting = 0;
    double title_height = 0;
    while (fitting < title.size() && title_height + title[fitting].height <= title_max + 0.001)
        title_height += title[fitting++].height;
    const auto put = [&](const std::vector<Mark>& what, double y) {
        for (const Mark& mark : what)
            marks.push_back(moved(mark, 0, y));
    };
    // Above the middle, where the eye looks first; a picture takes all that is left below.
    const bool has_picture = page.picture != nullptr;
    const double space = band * 0.35;
    const double all = 2 * band + 2 * space + title_height;
    double y = has_picture ? 0 : (room.height - all) * 0.42;
    put(ornament_marks(page.ornament, room.width, band, false), y);
    y += band + space;
    for (std::size_t i = 0; i < fitting; ++i) {
        add_centred(marks, title[i], room.width, y);
        y += title[i].height;
    }
    y += space;
    if (has_picture)
        marks.push_back(moved(placed_picture(page.picture, room.width, room.height - y), 0, y));
    else
        put(ornament_marks(page.ornament, room.width, band, true), y);
    pieces.push_back(std::move(piece));
    add_lines(
        pieces, {title.begin() + static_cast<std::ptrdiff_t>(fitting), title.end()}, 0, false
    );
}

} // namespace print
