// The Day Book: a page for each in-world day, weeks, months and years with what stands on them, and
// the clock of the world.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

#include <cstdint>
#include <string>

namespace widgets {

enum class DayBookSpan { day, week, month, year };

struct DayBookView {
    std::int64_t day = 1;
    bool follows_today = true; // shows today, whatever day it becomes
    DayBookSpan span = DayBookSpan::day;
    std::string jump; // a date being typed
    std::string jump_complaint;
    std::string search;
    FormDrafts drafts;
    // A timer being made.
    std::string timer_text;
    std::string timer_date; // empty: the day shown
    std::string timer_time;
    std::string timer_complaint;
    // The clock being set.
    std::string clock_date;
    std::string clock_time;
    std::string clock_complaint;
};

extern const PanelInfo day_book_info;

void draw_day_book(const PanelContext& context, DayBookView& view);

} // namespace widgets
