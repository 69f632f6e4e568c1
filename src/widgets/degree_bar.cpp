#include "widgets/degree_bar.h"

#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using rules::Degree;

static bool is_success(Degree degree) {
    return degree >= Degree::success;
}

static bool is_critical(Degree degree) {
    return degree == Degree::critical_failure || degree == Degree::critical_success;
}

std::vector<Degree> degrees_of(rules::CheckKind kind) {
    if (kind == rules::CheckKind::four_degree)
        return {
            Degree::critical_failure, Degree::failure, Degree::success, Degree::critical_success};
    return {Degree::failure, Degree::success};
}

const char* degree_title(Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return "crit fail";
    case Degree::failure: return "fail";
    case Degree::success: return "succeed";
    case Degree::critical_success: return "crit";
    }
    return "";
}

int ways_of(const rules::DegreeOdds& odds, Degree degree) {
    switch (degree) {
    case Degree::critical_failure: return odds.critical_failure;
    case Degree::failure: return odds.failure;
    case Degree::success: return odds.success;
    case Degree::critical_success: return odds.critical_success;
    }
    return 0;
}

// Slanted lines, cut at the box; the critical part has them twice as dense.
static void hatch(ImDrawList& list, ImVec2 from, ImVec2 to, float step) {
    list.PushClipRect(from, to, true);
    const float height = to.y - from.y;
    for (float x = from.x - height; x < to.x; x += step)
        list.AddLine({x, to.y}, {x + height, from.y}, colour_u32(Ink::harm), px(1.5F));
    list.PopClipRect();
}

void paint_degree_sign(Degree degree, ImVec2 from, ImVec2 to) {
    constexpr float low_share = 0.55F;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (!is_critical(degree)) from.y = to.y - (to.y - from.y) * low_share;
    if (is_success(degree)) {
        list.AddRectFilled(from, to, colour_u32(Ink::good));
        return;
    }
    const float line = std::max(1.0F, px(1.0F));
    list.AddRectFilled(from, to, colour_u32(Ink::ground));
    hatch(list, from, to, px(is_critical(degree) ? 3.5F : 7.0F));
    list.AddRect(from, to, colour_u32(Ink::harm), 0.0F, 0, line);
}

void paint_degree_bar(const rules::DegreeOdds& odds, ImVec2 from, ImVec2 to) {
    const float width = to.x - from.x;
    int before = 0;
    for (const Degree degree : degrees_of(rules::CheckKind::four_degree)) {
        const int ways = ways_of(odds, degree);
        if (ways == 0) continue;
        const auto at = [&](int counted) {
            return from.x + width * static_cast<float>(counted) / static_cast<float>(odds.of);
        };
        // A hair of ground between the parts, so that two of one fill do not run together.
        const float gap = before == 0 ? 0.0F : px(1.0F);
        paint_degree_sign(degree, {at(before) + gap, from.y}, {at(before + ways), to.y});
        before += ways;
    }
}

} // namespace widgets
