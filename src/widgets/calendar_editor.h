// The calendar of the campaign: chosen ready or made, and every part of it changed.
#pragma once

#include "widgets/form.h"
#include "widgets/panel.h"

#include <string>

namespace widgets {

enum class CalendarSection { year, week, sky, holidays, eras, today, ready };

struct CalendarEditorView {
    CalendarSection section = CalendarSection::year;
    FormDrafts drafts;
    int months = 12; // of a calendar being made
    int days = 30;
    std::string month_names; // typed or pasted
    std::string refusal;     // why the last change was not taken
};

extern const PanelInfo calendar_editor_info;

void draw_calendar_editor(const PanelContext& context, CalendarEditorView& view);

} // namespace widgets
