#include "print/paper.h"

namespace print {

namespace {

constexpr double inch = 25.4;

// Six rings: holes 19 mm apart in two groups of three; 70 mm between the groups on A5, 51 mm on the
// smaller sizes. Three holes of Letter 4.25 inches apart, of Half-Letter 2.75. Distances from the
// edge and diameters likewise. All of it common practice, no source. A4: ISO 838, two holes of
// 6 mm, 80 mm apart, 12 mm from the edge.
constexpr Punch six_rings_wide{2, 3, 19, 70, 7, 5.5};
constexpr Punch six_rings{2, 3, 19, 51, 6, 5.5};
constexpr Punch two_holes{2, 1, 0, 80, 12, 6};
constexpr Punch letter_holes{1, 3, 4.25 * inch, 0, 12.7, 7};
constexpr Punch half_letter_holes{1, 3, 2.75 * inch, 0, 9.5, 7};

constexpr std::array<Paper, 6> all_papers{{
    {"a5", "A5", {148, 210}, {297, 210}, six_rings_wide},
    {"a4", "A4", {210, 297}, {420, 297}, two_holes},
    {"a6", "A6", {105, 148}, {210, 148}, six_rings},
    {"letter", "Letter", {8.5 * inch, 11 * inch}, {17 * inch, 11 * inch}, letter_holes},
    {"half-letter",
     "Half-Letter",
     {5.5 * inch, 8.5 * inch},
     {11 * inch, 8.5 * inch},
     half_letter_holes},
    {"personal", "Personal", {95, 171}, {297, 210}, six_rings},
}};

constexpr std::array<CardSize, 3> all_cards{{
    {"63x88", {63, 88}},
    {"4x6in", {4 * inch, 6 * inch}},
    {"a6", {105, 148}},
}};

// Common practice, no source: home printers leave about 5 mm blank.
constexpr double outer_margin = 9;
constexpr double cut_out_margin = 6;
constexpr double beside_holes = 4; // between the edge of a hole and the text

double inner_margin(const PrintSetup& setup) {
    if (!setup.has_rings) return outer_margin;
    const Punch& punch = setup.paper->punch;
    return punch.from_edge_mm + punch.diameter_mm / 2 + beside_holes;
}

} // namespace

const std::array<Paper, 6>& papers() {
    return all_papers;
}

const Paper* find_paper(std::string_view key) {
    for (const Paper& paper : all_papers)
        if (paper.key == key) return &paper;
    return nullptr;
}

const std::array<CardSize, 3>& card_sizes() {
    return all_cards;
}

const CardSize* find_card_size(std::string_view key) {
    for (const CardSize& card : all_cards)
        if (card.key == key) return &card;
    return nullptr;
}

bool is_bound_left(const PrintSetup& setup, std::size_t page) {
    const bool has_backs = setup.is_double_sided || setup.arrangement == Arrangement::booklet;
    return !has_backs || page % 2 == 0;
}

BoxMm content_box(const PrintSetup& setup, std::size_t page, PageUse use) {
    const SizeMm& size = setup.paper->size;
    if (use == PageUse::cut_out)
        return {
            cut_out_margin,
            cut_out_margin,
            size.width - 2 * cut_out_margin,
            size.height - 2 * cut_out_margin};
    const double inner = inner_margin(setup);
    return {
        is_bound_left(setup, page) ? inner : outer_margin,
        outer_margin,
        size.width - inner - outer_margin,
        size.height - 2 * outer_margin};
}

std::vector<HoleMm> holes(const PrintSetup& setup, std::size_t page) {
    std::vector<HoleMm> centres;
    if (!setup.has_rings) return centres;
    const Punch& punch = setup.paper->punch;
    const double group = (punch.holes_in_group - 1) * punch.spacing_mm;
    const double whole = punch.groups * group + (punch.groups - 1) * punch.gap_mm;
    const double x = is_bound_left(setup, page) ? punch.from_edge_mm
                                                : setup.paper->size.width - punch.from_edge_mm;
    double y = (setup.paper->size.height - whole) / 2;
    for (int each = 0; each < punch.groups; ++each) {
        for (int hole = 0; hole < punch.holes_in_group; ++hole)
            centres.push_back({x, y + hole * punch.spacing_mm, punch.diameter_mm});
        y += group + punch.gap_mm;
    }
    return centres;
}

} // namespace print
