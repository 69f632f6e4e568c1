// Between blocks and pages: strips of a page that are never broken. Internal to the layout.
#pragma once

#include "print/layout.h"

#include <functional>
#include <memory>
#include <vector>

namespace print {

struct Piece {
    double height = 0;
    std::vector<Mark> marks; // from the upper left corner of the piece
    bool keeps_with_next = false;
    bool is_space = false;             // falls away at the top of a page
    bool is_spare = false;             // falls away where it does not fit
    bool is_break = false;             // a new page begins
    PageUse use = PageUse::bound;      // cut_out: takes a page of its own
    std::shared_ptr<const Piece> head; // repeated above it where a page begins with it
    std::function<std::vector<Mark>(double height)> fill; // takes what is left of the page
    bool shares_rest = false; // its fill takes an even part of it, where all up to the next break
                              // stand on one page
};

using Pieces = std::vector<Piece>;

struct Room {
    double width = 0;
    double height = 0; // of a whole page
};

void add_space(Pieces& pieces, double height);
// Lines below each other, a piece each; returns their marks in one list instead with `place_lines`.
void add_lines(Pieces& pieces, const std::vector<TextLine>& lines, double x, bool keeps_with_next);
void place_lines(std::vector<Mark>& marks, const std::vector<TextLine>& lines, double x, double y);
Mark moved(Mark mark, double x, double y);

void add_table(Pieces& pieces, const Table& table, const Room& room, const Texts& texts);
void add_ticks(Pieces& pieces, const TickList& list, const Room& room, const Texts& texts);
void add_tally(Pieces& pieces, const Tally& tally, const Room& room, const Texts& texts);
void add_ruled_lines(Pieces& pieces, const RuledLines& lines, const Room& room, const Texts& texts);
void add_ruled_page(Pieces& pieces, const RuledPage& page, const Room& room);
void add_pack(Pieces& pieces, const Pack& pack, const Room& room, const Texts& texts);
void add_divider(Pieces& pieces, const Room& room);
void add_divider_page(
    Pieces& pieces, const DividerPage& page, const Room& room, const Texts& texts
);
void add_staff(Pieces& pieces, const Staff& staff, const Room& room, const Texts& texts);
void add_picture(Pieces& pieces, const Picture& picture, const Room& room, const Texts& texts);
// Within a box of this size at (0, 0), in its middle.
PictureMark
placed_picture(const std::shared_ptr<const Pixels>& pixels, double width, double height);
// Around the middle of a strip of this width at (0, 0); `is_turned`: its foot up.
std::vector<Mark> ornament_marks(Ornament ornament, double width, double height, bool is_turned);
// Cards that stand behind each other in a list are laid out together, edge to edge, upright or on
// their long side, whichever gives more on a page. `room` is that of pages to be cut out.
void add_cards(
    Pieces& pieces,
    const std::vector<const Card*>& cards,
    SizeMm size,
    const Room& room,
    const Texts& texts
);

} // namespace print
