// What stands on a printed page, as plain values: a list of blocks, top to bottom. The layout
// measures them, breaks them over pages and never cuts a text; a page kind never draws.
#pragma once

#include "print/paper.h"
#include "print/pictures.h"

#include <memory>
#include <string>
#include <variant>
#include <vector>

namespace print {

// The name of the page, with what it is of: "Session plan", "Session 7, 12 Reedmonth".
struct Title {
    std::string text;
    std::string subtitle{};
};

struct Heading { // stays with what follows
    std::string text;
};

enum class TextStyle { body, strong, small, large, heading, title };

struct Paragraph {
    std::string text;
    TextStyle style = TextStyle::body;
};

// A square to tick, or a ticked one, and what it stands for.
struct Tick {
    std::string text;
    std::string note{}; // smaller, below
    bool is_ticked = false;
};

// Side by side in as many columns of this width as there is room for, row by row.
struct TickList {
    std::vector<Tick> ticks;
    double column_mm = 0; // 0: one column
};

// A row of small squares behind each text: uses to tick off.
struct Tally {
    std::string text;
    std::string note{};
    int squares = 1; // 0: none
};

// Lines to write on. A count of 0 fills the page to its foot, at least three lines.
struct RuledLines {
    int count = 0;
    bool is_spare = false;  // falls away where the page has no room left for it
    bool is_shared = false; // such lines share what their page leaves: `count` is the least
};

struct Column {
    std::string title;
    bool is_right = false; // numbers
    std::string brief{};   // instead of a title that would be broken within a word
};

struct Cell {
    std::string text;
    std::string note{}; // smaller, below
    bool is_strong = false;
    bool is_large = false; // to be read at a glance
};

struct Table {
    std::vector<Column> columns; // without any title: no head. The first one names the row and is
                                 // repeated where the table is wider than the page.
    std::vector<std::vector<Cell>> rows; // as many cells as columns
    double row_mm = 0;                   // least height of a row, for what is written by hand
    bool has_grid = false;               // lines between columns too
    bool is_even = false;                // all columns are of one width
    double row_to_width = 0; // even ones: least height of a row, as a share of a column's width
    bool may_fold = false;   // short rows may stand beside each other where there is room
    bool fills_page = false; // empty rows of row_mm to the foot of the page
};

struct Divider {}; // a small ornament of our own

struct PageBreak {};

enum class Ruling { squares, hexagons, dots, lines, staves };

// Fills the page to its foot.
struct RuledPage {
    Ruling ruling = Ruling::squares;
    double step_mm = 5;
};

struct Pack {}; // a pack with pouches to write in, drawn by us; takes what is left of the page, at
                // least half

struct CardEntry {
    std::string label; // strong: "Speed"; may be empty
    std::string text;
};

// To be cut out; as many as fit on a page. Its text is as large as the card allows, within reason;
// what is too long even when set small goes on on another card.
struct Card {
    std::string title;
    std::string subtitle{};
    std::vector<CardEntry> entries;
};

enum class Ornament { reeds, waves, branch, stars, knot, spirals };

// A page that begins a part of a binder: a large title between ornaments of our own, and a picture.
struct DividerPage {
    std::string title;
    Ornament ornament = Ornament::reeds;
    std::shared_ptr<const Pixels> picture{}; // may be none
};

// As large as what is left of the page allows, at least half of it; its shape is kept. In its own
// colours.
struct Picture {
    std::shared_ptr<const Pixels> pixels; // not none
    std::string caption{};                // below
};

struct StaffBar {
    double share = 0; // of the width of the staff, 0 its left end
    std::string text{};
};

// Five thin lines to draw along, with bars; staves share what their page leaves.
struct Staff {
    std::string label{};  // left of it, strong
    std::string number{}; // below that
    std::string note{};   // above
    std::vector<StaffBar> bars{};
};

using Block = std::variant<
    Title,
    Heading,
    Paragraph,
    TickList,
    Tally,
    RuledLines,
    Table,
    Divider,
    PageBreak,
    RuledPage,
    Pack,
    Card,
    DividerPage,
    Picture,
    Staff>;

using Blocks = std::vector<Block>;

} // namespace print
