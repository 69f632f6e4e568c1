// A pack drawn by us: a flap with its buckle, the body with lines for what is in it, two pouches at
// its sides and a roll on top.
#include "print/pieces.h"

#include <algorithm>

namespace print {

namespace {

constexpr double inset = 6;
constexpr double pale = 0.6;

void add_title(
    std::vector<Mark>& marks, const Texts& texts, const std::string& text, const BoxMark& box
) {
    const auto lines = texts.lines(text, box.width - 2 * inset, {TextStyle::small});
    if (lines.size() == 1) place_lines(marks, lines, box.x + inset, box.y + 3);
}

// Lines to write on.
void fill_box(std::vector<Mark>& marks, const Texts& texts, const BoxMark& box) {
    const double step = std::max(6 * points_per_mm, texts.size({}) * 1.7);
    const double head = 14 + texts.size({TextStyle::small}) * 0.6;
    for (double y = box.y + head + step; y < box.y + box.height - 4; y += step)
        marks.emplace_back(LineMark{box.x + inset, y, box.x + box.width - inset, y, 0.5, pale});
}

std::vector<Mark> drawing(double width, double height, const Texts& texts) {
    std::vector<Mark> marks;
    const double roll_height = std::min(26.0, height * 0.12);
    const double side = width * 0.22;
    const BoxMark roll{side * 0.8, 0, width - side * 1.6, roll_height, roll_height / 2, 1.0, 1};
    const BoxMark body{
        side + 4, roll_height + 4, width - 2 * side - 8, height - roll_height - 6, 16, 1.4, 1};
    const double pouch_top = body.y + body.height * 0.38;
    const BoxMark left{0, pouch_top, side, body.y + body.height - pouch_top, 12, 1.2, 1};
    const BoxMark right{width - side, left.y, side, left.height, 12, 1.2, 1};
    for (const BoxMark& each : {roll, body, left, right})
        marks.emplace_back(each);
    add_title(marks, texts, "bedroll", roll);
    add_title(marks, texts, "pouch", left);
    add_title(marks, texts, "pouch", right);
    add_title(marks, texts, "pack", body);
    // Straps of the roll, buckles of the pouches.
    for (const double share : {0.3, 0.7}) {
        const double x = roll.x + roll.width * share;
        marks.emplace_back(LineMark{x, 0, x, roll_height, 2.0, 0.4});
    }
    for (const BoxMark* pouch : {&left, &right})
        marks.emplace_back(BoxMark{
            pouch->x + pouch->width / 2 - 4, pouch->y - 4, 8, 7, 2, 1.0, 0.85});
    for (const BoxMark* box : {&body, &left, &right})
        fill_box(marks, texts, *box);
    return marks;
}

} // namespace

void add_pack(Pieces& pieces, const Pack& /*pack*/, const Room& room, const Texts& texts) {
    Piece piece;
    piece.height = room.height / 2;
    piece.fill = [width = room.width, &texts](double height) {
        return drawing(width, height, texts);
    };
    pieces.push_back(std::move(piece));
}

} // namespace print
