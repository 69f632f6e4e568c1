// The shapes that mark days.
#include "widgets/day_book_parts.h"
#include "widgets/ui.h"

#include <array>

namespace widgets {

using game::DayMarks;

namespace {

struct NamedMark {
    bool DayMarks::*is_set;
    Mark mark;
    const char* words;
};

constexpr std::array<NamedMark, 5> named_marks{
    NamedMark{&DayMarks::has_holiday, Mark::holiday, "holiday"},
    NamedMark{&DayMarks::has_full_moon, Mark::full_moon, "full moon"},
    NamedMark{&DayMarks::has_new_moon, Mark::new_moon, "new moon"},
    NamedMark{&DayMarks::has_text, Mark::text, "something written"},
    NamedMark{&DayMarks::has_due, Mark::due, "something due"}};

} // namespace

float mark_size() {
    return ImGui::GetTextLineHeight();
}

void paint_mark(Mark mark, ImVec2 at, float size) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const ImVec2 c{at.x + size / 2.0F, at.y + size / 2.0F};
    const float r = size * 0.32F;
    switch (mark) {
    case Mark::holiday:
        list->AddQuadFilled(
            {c.x, c.y - r}, {c.x + r, c.y}, {c.x, c.y + r}, {c.x - r, c.y}, colour_u32(Ink::item)
        );
        break;
    case Mark::full_moon:
    case Mark::new_moon:
        // A full moon is light, a new moon dark: a disc of ink on paper is a new moon.
        if ((mark == Mark::full_moon) == (look().theme == ThemeName::dark))
            list->AddCircleFilled(c, r, colour_u32(Ink::text));
        else
            list->AddCircle(c, r, colour_u32(Ink::text), 0, px(1.5F));
        break;
    case Mark::text:
        for (const float y : {-0.7F, 0.0F, 0.7F})
            list->AddLine(
                {c.x - r, c.y + y * r}, {c.x + r, c.y + y * r}, colour_u32(Ink::muted), px(2.0F)
            );
        break;
    case Mark::due:
        list->AddTriangleFilled(
            {c.x - r, c.y + r * 0.8F},
            {c.x + r, c.y + r * 0.8F},
            {c.x, c.y - r},
            colour_u32(Ink::harm)
        );
        break;
    }
}

void paint_today_frame(ImVec2 from, ImVec2 to) {
    ImGui::GetWindowDrawList()->AddRect(from, to, colour_u32(Ink::accent), px(4.0F), 0, px(2.0F));
}

std::vector<Mark> marks_of(const DayMarks& marks) {
    std::vector<Mark> list;
    for (const NamedMark& each : named_marks)
        if (marks.*each.is_set) list.push_back(each.mark);
    return list;
}

float marks_width(const DayMarks& marks) {
    return mark_size() * static_cast<float>(marks_of(marks).size());
}

void draw_day_marks(const DayMarks& marks) {
    ImVec2 at = ImGui::GetCursorScreenPos();
    for (const Mark mark : marks_of(marks)) {
        paint_mark(mark, at, mark_size());
        at.x += mark_size();
    }
}

void draw_marks_legend() {
    push_font(TextSize::small);
    Flow flow;
    for (const NamedMark& each : named_marks) {
        const float width = mark_size() + px(4.0F) + ImGui::CalcTextSize(each.words).x;
        flow.next(width);
        ImGui::BeginGroup();
        paint_mark(each.mark, ImGui::GetCursorScreenPos(), mark_size());
        ImGui::Dummy({mark_size(), mark_size()});
        ImGui::SameLine(0.0F, px(4.0F));
        text(Ink::muted, each.words);
        ImGui::EndGroup();
    }
    ImGui::PopFont();
}

} // namespace widgets
