// The grid of Party Defences. A full lamp and strong figures mark the best of a column, an empty
// lamp the worst; a line under a number says that it is not what the sheet says.
#include "game/sheet.h"
#include "widgets/form.h"
#include "widgets/party_defences_parts.h"
#include "widgets/reason_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace widgets {

using game::FigureColumn;
using game::FigureKind;
using game::PartyFigure;
using game::PartyFigures;
using game::PartyRow;

namespace {

std::string figure_words(const FigureColumn& column, const PartyFigure& figure) {
    if (!figure.is_there) return {};
    return game::is_rolled(column.kind) ? game::signed_text(figure.number.total)
                                        : std::to_string(figure.number.total);
}

std::string base_words(const FigureColumn& column, const PartyFigure& figure) {
    return game::is_rolled(column.kind) ? game::signed_text(figure.number.base)
                                        : std::to_string(figure.number.base);
}

float lamp_width() {
    return px(14.0F);
}

void paint_lamp(ImVec2 middle, bool is_lit) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const float radius = px(4.0F);
    if (is_lit)
        list->AddCircleFilled(middle, radius, colour_u32(Ink::accent));
    else
        list->AddCircle(middle, radius, colour_u32(Ink::text), 0, px(1.5F));
}

// The columns that stand side by side, with their widths.
struct Band {
    std::vector<std::size_t> columns;
    std::vector<float> widths;
};

float column_width(const PartyFigures& figures, std::size_t at) {
    push_font(TextSize::small);
    float width = ImGui::CalcTextSize(figures.columns[at].brief.c_str()).x;
    float change = 0.0F;
    for (const PartyRow& row : figures.rows) {
        const std::string words = brief_change(row.figures[at].number);
        change = std::max(change, ImGui::CalcTextSize(words.c_str()).x);
    }
    ImGui::PopFont();
    float number = 0.0F;
    push_numbers(TextSize::body);
    for (const PartyRow& row : figures.rows) {
        const std::string words = figure_words(figures.columns[at], row.figures[at]);
        number = std::max(number, ImGui::CalcTextSize(words.c_str()).x);
    }
    ImGui::PopFont();
    if (change > 0.0F) number += change + px(4.0F);
    return std::max(std::max(width, lamp_width() + number) + px(6.0F), row_height());
}

float name_width(const PartyFigures& figures) {
    float width = 0.0F;
    ImGui::PushFont(look().fonts.strong);
    for (const PartyRow& row : figures.rows)
        width = std::max(width, ImGui::CalcTextSize(row.name.c_str()).x);
    ImGui::PopFont();
    return std::min(width + px(14.0F), ImGui::GetContentRegionAvail().x * 0.34F);
}

template <class IsWanted>
std::vector<Band> bands_of(const PartyFigures& figures, float name, IsWanted is_wanted) {
    std::vector<Band> bands;
    const float room = ImGui::GetContentRegionAvail().x - name;
    float used = room;
    for (std::size_t at = 0; at < figures.columns.size(); ++at) {
        if (!is_wanted(figures.columns[at].kind)) continue;
        const float width = column_width(figures, at);
        if (bands.empty() || used + width > room) {
            bands.emplace_back();
            used = 0.0F;
        }
        bands.back().columns.push_back(at);
        bands.back().widths.push_back(width);
        used += width;
    }
    return bands;
}

// The number at the right edge, what changes it raised behind it, a lamp before it.
void draw_cell_number(
    const FigureColumn& column, const PartyFigure& figure, ImVec2 at, ImVec2 size
) {
    const std::string change = brief_change(figure.number);
    push_font(TextSize::small);
    const float change_width =
        change.empty() ? 0.0F : ImGui::CalcTextSize(change.c_str()).x + px(4.0F);
    const float change_top = at.y + (size.y - ImGui::GetTextLineHeight()) / 2.0F - px(5.0F);
    ImGui::PopFont();
    const float right = at.x + size.x - px(5.0F) - change_width;
    if (figure.is_best)
        ImGui::PushFont(look().fonts.strong);
    else
        push_numbers(TextSize::body);
    const std::string words = figure_words(column, figure);
    const ImVec2 measured = ImGui::CalcTextSize(words.c_str());
    ImGui::SetCursorPos({right - measured.x, at.y + (size.y - measured.y) / 2.0F});
    const Ink ink = !change.empty()      ? change_ink(figure.number)
                    : figure.is_on_sheet ? Ink::text
                                         : Ink::muted;
    text(ink, words);
    ImGui::PopFont();
    const ImVec2 from = ImGui::GetItemRectMin();
    const ImVec2 to = ImGui::GetItemRectMax();
    if (figure.is_best || figure.is_worst)
        paint_lamp({from.x - px(8.0F), (from.y + to.y) / 2.0F}, figure.is_best);
    if (change.empty()) return;
    underline_item(ink);
    push_font(TextSize::small);
    ImGui::SetCursorPos({right + px(4.0F), change_top});
    text(ink, change);
    ImGui::PopFont();
}

void choose(const PanelContext& context, const FigureColumn& column) {
    if (game::is_rolled(column.kind)) context.selection.odds.stat = column.key;
}

bool is_asked(const PanelContext& context, const FigureColumn& column) {
    return game::is_rolled(column.kind) && context.selection.odds.stat == column.key;
}

void draw_cell(
    const PanelContext& context,
    PartyDefencesView& view,
    const PartyRow& row,
    const FigureColumn& column,
    const PartyFigure& figure,
    ImVec2 size
) {
    if (!figure.is_there) return;
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_open = view.why_character == row.character && view.why_column == column.key;
    const std::string label = "##" + row.name + ", " + column.name;
    if (row_ground(label, size.x, size.y, is_open)) {
        choose(context, column);
        view.why_character = is_open ? base::no_id : row.character;
        view.why_column = is_open ? std::string() : column.key;
    }
    const std::string reasons = reasons_text(figure.number);
    if (!reasons.empty()) ImGui::SetItemTooltip("%s", reasons.c_str());
    draw_cell_number(column, figure, at, size);
}

void draw_column_title(const PanelContext& context, const FigureColumn& column, float width) {
    const ImVec2 at = ImGui::GetCursorPos();
    const bool is_on = is_asked(context, column);
    if (game::is_rolled(column.kind)) {
        if (row_ground("##ask " + column.name, width, row_height(), false)) choose(context, column);
        ImGui::SetItemTooltip("%s against the DC", column.name.c_str());
    } else {
        ImGui::Dummy({width, row_height()});
        ImGui::SetItemTooltip("%s", column.name.c_str());
    }
    const ImVec2 from = ImGui::GetItemRectMin();
    const ImVec2 to = ImGui::GetItemRectMax();
    if (is_on)
        ImGui::GetWindowDrawList()->AddRectFilled(
            {from.x + px(3.0F), to.y - px(4.0F)},
            {to.x - px(3.0F), to.y - px(1.0F)},
            colour_u32(Ink::accent)
        );
    push_font(TextSize::small);
    ImGui::SetCursorPos({at.x, at.y + (row_height() - ImGui::GetTextLineHeight()) / 2.0F});
    text_right_aligned(is_on ? Ink::accent : Ink::muted, column.brief, width - px(5.0F));
    ImGui::PopFont();
}

// Why the chosen cell is what it is, below the band that holds it.
void draw_why(const PartyDefencesView& view, const PartyFigures& figures, const Band& band) {
    for (const std::size_t at : band.columns) {
        if (figures.columns[at].key != view.why_column) continue;
        for (const PartyRow& row : figures.rows) {
            if (row.character != view.why_character || !row.figures[at].is_there) continue;
            const FigureColumn& column = figures.columns[at];
            const PartyFigure& figure = row.figures[at];
            const std::string change = change_words(figure.number);
            std::string words = row.name + ", " + column.name + " " + figure_words(column, figure);
            if (figure.number.total != figure.number.base)
                words += ", otherwise " + base_words(column, figure);
            else if (change.empty())
                words += figure.is_on_sheet ? ", as on the sheet"
                                            : ", not on the sheet: the plain ability";
            else
                words += ", " + change;
            ImGui::PushFont(look().fonts.strong);
            text_wrapped(Ink::text, words);
            ImGui::PopFont();
            ImGui::Indent(px(12.0F));
            draw_reasons(figure.number);
            ImGui::Unindent(px(12.0F));
        }
    }
}

void draw_band(
    const PanelContext& context,
    PartyDefencesView& view,
    const PartyFigures& figures,
    const Band& band,
    float name
) {
    ImVec2 at = ImGui::GetCursorPos();
    float x = at.x + name;
    for (std::size_t place = 0; place < band.columns.size(); ++place) {
        ImGui::SetCursorPos({x, at.y});
        draw_column_title(context, figures.columns[band.columns[place]], band.widths[place]);
        x += band.widths[place];
    }
    at.y += row_height();
    for (const PartyRow& row : figures.rows) {
        ImGui::PushID(static_cast<int>(row.character));
        ImGui::SetCursorPos({at.x, at.y + (row_height() - ImGui::GetTextLineHeight()) / 2.0F});
        ImGui::PushFont(look().fonts.strong);
        text_fitted(row.is_present ? Ink::text : Ink::muted, row.name, name - px(8.0F));
        ImGui::PopFont();
        x = at.x + name;
        for (std::size_t place = 0; place < band.columns.size(); ++place) {
            const std::size_t column = band.columns[place];
            ImGui::SetCursorPos({x, at.y});
            draw_cell(
                context,
                view,
                row,
                figures.columns[column],
                row.figures[column],
                {band.widths[place], row_height()}
            );
            x += band.widths[place];
        }
        ImGui::PopID();
        at.y += row_height();
    }
    ImGui::SetCursorPos(at);
    ImGui::Dummy({0.0F, px(2.0F)});
    draw_why(view, figures, band);
}

template <class IsWanted>
void draw_group(
    const PanelContext& context,
    PartyDefencesView& view,
    const PartyFigures& figures,
    const char* title,
    IsWanted is_wanted
) {
    const float name = name_width(figures);
    const std::vector<Band> bands = bands_of(figures, name, is_wanted);
    if (bands.empty()) return;
    heading(title);
    for (const Band& band : bands)
        draw_band(context, view, figures, band, name);
}

void draw_senses(const PartyFigures& figures) {
    const bool has_any = std::any_of(figures.rows.begin(), figures.rows.end(), [](const auto& row) {
        return !row.senses.empty();
    });
    if (!has_any) return;
    heading("Senses");
    for (const PartyRow& row : figures.rows)
        if (!row.senses.empty()) text_wrapped(Ink::text, row.name + ": " + row.senses);
}

// What the marks mean, in the marks themselves.
void draw_legend(Flow& flow) {
    push_font(TextSize::small);
    const auto entry = [&flow](const char* words, bool is_lit) {
        flow.next(lamp_width() + ImGui::CalcTextSize(words).x);
        ImGui::BeginGroup();
        const ImVec2 at = ImGui::GetCursorScreenPos();
        paint_lamp({at.x + px(5.0F), at.y + row_height() / 2.0F}, is_lit);
        ImGui::Dummy({lamp_width() - px(2.0F), row_height()});
        ImGui::SameLine(0.0F, px(2.0F));
        ImGui::SetCursorPosY(
            ImGui::GetCursorPosY() + (row_height() - ImGui::GetTextLineHeight()) / 2.0F
        );
        text(Ink::muted, words);
        ImGui::EndGroup();
    };
    entry("best", true);
    entry("worst", false);
    ImGui::PopFont();
}

void draw_grid_header(PartyDefencesView& view) {
    Flow flow;
    const auto toggle = [&flow](const char* label, bool& is_on) {
        flow.next(button_width(label));
        if (toggle_button(label, is_on)) is_on = !is_on;
    };
    toggle("Skills", view.has_skills);
    toggle("DCs, speeds, senses", view.has_others);
    toggle("Absent too", view.with_absent);
    draw_legend(flow);
}

} // namespace

void draw_party_grid(
    const PanelContext& context, PartyDefencesView& view, const PartyFigures& figures
) {
    ImGui::Dummy({0.0F, px(2.0F)});
    draw_grid_header(view);
    if (figures.rows.empty()) {
        text_wrapped(Ink::muted, "Nobody plays tonight. \"Absent too\" shows the others.");
        return;
    }
    draw_group(context, view, figures, "Defences", [](FigureKind kind) {
        return kind == FigureKind::armor_class || kind == FigureKind::save ||
               kind == FigureKind::perception || kind == FigureKind::passive_perception;
    });
    if (view.has_skills)
        draw_group(context, view, figures, "Skills", [](FigureKind kind) {
            return kind == FigureKind::skill;
        });
    if (!view.has_others) return;
    draw_group(context, view, figures, "DCs and speeds", [](FigureKind kind) {
        return kind == FigureKind::dc || kind == FigureKind::speed;
    });
    draw_senses(figures);
}

} // namespace widgets
