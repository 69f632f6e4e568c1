// Papers and what a page leaves free on them: sizes, margins, binder holes, where pages stand on a
// sheet. Pure geometry in millimetres, from the upper left corner.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace print {

inline constexpr double points_per_mm = 72.0 / 25.4; // PDF, ISO 32000: 72 points an inch

struct SizeMm {
    double width = 0;
    double height = 0;

    bool operator==(const SizeMm&) const = default;
};

// Holes along the inner edge, the pattern centred on the height of the page.
struct Punch {
    int groups = 0;
    int holes_in_group = 0;
    double spacing_mm = 0;   // between the holes of a group
    double gap_mm = 0;       // between the last hole of a group and the first of the next
    double from_edge_mm = 0; // to the centre of a hole
    double diameter_mm = 0;
};

struct Paper {
    std::string_view key;  // "a5"
    std::string_view name; // "A5"
    SizeMm size;
    SizeMm two_up; // of the sheet that carries two of its pages side by side
    Punch punch;
};

// Sources: ISO 216 (A sizes, 1 mm steps), ANSI/ASME Y14.1 (Letter: 8.5 by 11 inches; Half-Letter
// its half), Personal: common practice, no source. Holes: see paper.cpp.
const std::array<Paper, 6>& papers();

// By key; nullptr: there is no such paper.
const Paper* find_paper(std::string_view key);

// What can be cut out as a card.
struct CardSize {
    std::string_view key; // "63x88"
    SizeMm size;
};

// 63 by 88 mm and 4 by 6 inches: common practice, no source; A6: ISO 216.
const std::array<CardSize, 3>& card_sizes();
const CardSize* find_card_size(std::string_view key);

enum class Arrangement {
    one_up,  // a page a sheet
    two_up,  // two pages side by side, to be cut apart
    booklet, // two pages side by side, so that the folded stack reads from front to back
};

// The choices of whoever prints.
struct PrintSetup {
    const Paper* paper = &papers()[0];
    const CardSize* card = &card_sizes()[0];
    Arrangement arrangement = Arrangement::one_up;
    bool has_rings = false;       // a wider inner margin, and marks where the holes come
    bool is_double_sided = false; // the inner margin changes sides from page to page
    bool is_large_type = false;

    bool operator==(const PrintSetup&) const = default;
};

// What becomes of a page.
enum class PageUse {
    bound,   // kept, in a binder or a booklet
    cut_out, // cards: no margin for rings, no holes, and only what printers need at the edges
};

struct BoxMm {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
};

// Where a page may hold something. `page` counts from 0: even ones are right-hand pages, bound at
// their left edge; odd ones are bound at their right edge when both sides are printed (a booklet
// always is). The size is the same for all pages of one use.
BoxMm content_box(const PrintSetup& setup, std::size_t page, PageUse use = PageUse::bound);

// Is the inner edge at the left?
bool is_bound_left(const PrintSetup& setup, std::size_t page);

struct HoleMm {
    double x = 0;
    double y = 0;
    double diameter = 0;
};

// Centres of the holes of a page, from the top; none without rings.
std::vector<HoleMm> holes(const PrintSetup& setup, std::size_t page);

} // namespace print
