// The parts the Day Book is drawn from. Nobody else needs them.
#pragma once

#include "game/day_book_keeping.h"
#include "widgets/day_book.h"

#include <imgui.h>

#include <vector>

namespace widgets {

struct DayBookFrame {
    const PanelContext& context;
    DayBookView& view;
    std::int64_t today = 1;
    game::BookFacts facts{}; // asked once a frame
};

void show_day(DayBookView& view, std::int64_t day, DayBookSpan span);

// Reads a date typed into a field, seen from `from`. A refusal goes into `complaint`.
bool read_typed_date(
    const PanelContext& context,
    const std::string& text,
    std::int64_t from,
    std::int64_t& day,
    std::string& complaint
);

// The head of a day's page: holidays, weather, moons.
void draw_sky_of_day(const DayBookFrame& frame);
void draw_day_page(DayBookFrame& frame);
void draw_week(DayBookFrame& frame);
void draw_month(DayBookFrame& frame);
void draw_year(DayBookFrame& frame);

// The clock of the world: stretches of time, dawn and dusk, a date.
void draw_clock_verbs(DayBookFrame& frame);

// Shapes, not colours alone, tell the marks of a day apart: diamond, disc, ring, lines, triangle.
enum class Mark { holiday, full_moon, new_moon, text, due };

std::vector<Mark> marks_of(const game::DayMarks& marks);
float mark_size(); // of a line of text
void paint_mark(Mark mark, ImVec2 at, float size);
void paint_today_frame(ImVec2 from, ImVec2 to);

// Shapes of what a day carries, from left to right; each is as wide as a line is high.
float marks_width(const game::DayMarks& marks);
void draw_day_marks(const game::DayMarks& marks);
// What the shapes mean.
void draw_marks_legend();

} // namespace widgets
