#include "widgets/difficulty.h"

#include "game/odds_text.h"
#include "game/party_odds.h"
#include "game/sheet.h"
#include "rules/difficulty.h"
#include "rules/hazard_building.h"
#include "widgets/form.h"
#include "widgets/party_question.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace widgets {

using game::PartyOdds;

const PanelInfo difficulty_info{
    "difficulty",
    "Difficulty",
    "The DCs of the rulebook, each with the party's chances beside it.",
    "F10",
    320.0F,
    220.0F};

namespace {

// The columns right of the DC, from the right edge; a narrow panel leaves out the first ones.
struct Columns {
    float width = 0.0F;
    float dc = 0.0F;   // width of the DC, at the left edge
    float cell = 0.0F; // width of one
    std::size_t first = 0;
    std::vector<std::string> titles;

    std::size_t shown() const { return titles.size() - first; }
};

Columns columns_of() {
    Columns columns;
    columns.width = ImGui::GetContentRegionAvail().x - ImGui::GetStyle().ScrollbarSize;
    columns.titles = {"best one", "succeed", "at least one"};
    push_numbers(TextSize::name);
    columns.dc = ImGui::CalcTextSize("00").x + px(22.0F);
    ImGui::PopFont();
    push_font(TextSize::small);
    columns.cell = ImGui::CalcTextSize("at least one").x;
    ImGui::PopFont();
    push_numbers(TextSize::body);
    columns.cell = std::max(columns.cell, ImGui::CalcTextSize("4.9 of 5").x) + px(16.0F);
    ImGui::PopFont();
    const float least_name = px(96.0F);
    while (columns.shown() > 1 && columns.width - columns.dc - least_name <
                                      columns.cell * static_cast<float>(columns.shown()))
        columns.first += 1;
    return columns;
}

// What each column says, in their order.
std::vector<std::string> chances(const PartyOdds& odds) {
    if (odds.members.empty()) return {"", "", ""};
    return {
        game::percent_text(odds.best_chance),
        game::count_text(odds.group.expected_succeeding) + " of " +
            std::to_string(odds.members.size()),
        game::percent_text(odds.at_least_one_succeeds)};
}

void draw_titles(const Columns& columns) {
    const ImVec2 at = ImGui::GetCursorPos();
    push_font(TextSize::small);
    ImGui::SetCursorPosX(at.x);
    text_right_aligned(Ink::muted, "DC", columns.dc - px(10.0F));
    for (std::size_t place = columns.first; place < columns.titles.size(); ++place) {
        const auto left = static_cast<float>(columns.titles.size() - place);
        ImGui::SetCursorPos({at.x + columns.width - columns.cell * left, at.y});
        text_right_aligned(Ink::muted, columns.titles[place], columns.cell - px(6.0F));
    }
    ImGui::SetCursorPos({at.x, at.y + ImGui::GetTextLineHeight() + px(2.0F)});
    ImGui::PopFont();
}

struct DcRow {
    const rules::NamedDc& dc;
    bool is_party_level = false;
    bool is_house_ruled = false;
};

std::string row_name(const DcRow& row) {
    std::string name = row.dc.name;
    if (row.is_party_level) name += ", the party's";
    if (row.is_house_ruled) name += " (house rule)";
    return name;
}

// The DC large at the left, its name, the chances; a press asks it of the party.
void draw_dc_row(
    const PanelContext& context, const Columns& columns, const PartyOdds& party, const DcRow& row
) {
    const ImVec2 at = ImGui::GetCursorPos();
    const ImVec2 screen = ImGui::GetCursorScreenPos();
    const float height = row_height();
    const bool is_on = party.dc == row.dc.dc;
    if (row_ground(row.dc.name, columns.width, height, is_on))
        context.selection.odds.dc = row.dc.dc;
    if (row.is_party_level)
        ImGui::GetWindowDrawList()->AddRect(
            screen,
            {screen.x + columns.width, screen.y + height},
            colour_u32(Ink::accent),
            px(4.0F),
            0,
            px(1.5F)
        );
    push_numbers(TextSize::name);
    ImGui::SetCursorPos({at.x, at.y + (height - ImGui::GetTextLineHeight()) / 2.0F});
    text_right_aligned(
        row.is_party_level ? Ink::accent : Ink::text,
        std::to_string(row.dc.dc),
        columns.dc - px(10.0F)
    );
    ImGui::PopFont();
    const float cells = columns.cell * static_cast<float>(columns.shown());
    ImGui::SetCursorPos({at.x + columns.dc, at.y + (height - ImGui::GetTextLineHeight()) / 2.0F});
    if (row.is_party_level) ImGui::PushFont(look().fonts.strong);
    text_fitted(
        row.is_house_ruled ? Ink::item : Ink::text,
        row_name(row),
        columns.width - columns.dc - cells - px(6.0F)
    );
    if (row.is_party_level) ImGui::PopFont();
    const std::vector<std::string> words = chances(game::odds_at(party, row.dc.dc));
    push_numbers(TextSize::body);
    for (std::size_t place = columns.first; place < words.size(); ++place) {
        const auto left = static_cast<float>(words.size() - place);
        ImGui::SetCursorPos(
            {at.x + columns.width - columns.cell * left,
             at.y + (height - ImGui::GetTextLineHeight()) / 2.0F}
        );
        text_right_aligned(Ink::text, words[place], columns.cell - px(6.0F));
    }
    ImGui::PopFont();
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPos({at.x, at.y + height + px(2.0F)});
}

void draw_list(
    const PanelContext& context,
    DifficultyView& view,
    const Columns& columns,
    const PartyOdds& party,
    const rules::DcList& list
) {
    heading(list.title);
    ImGui::SetItemTooltip("%s", list.source.c_str());
    const std::optional<int> level = game::present_level(context.campaign.party);
    for (std::size_t at = 0; at < list.rows.size(); ++at) {
        DcRow row{list.rows[at]};
        row.is_party_level =
            list.is_by_level && level.has_value() && row.dc.key == std::to_string(*level);
        row.is_house_ruled = rules::is_house_ruled(context.rulebook, list.pointers[at]);
        if (row.is_party_level && view.scrolled_to != level) {
            ImGui::SetScrollHereY(0.35F);
            view.scrolled_to = level;
        }
        draw_dc_row(context, columns, party, row);
    }
}

void draw_adjustments(
    const PanelContext& context,
    Flow& flow,
    const std::vector<rules::DcAdjustment>& adjustments,
    std::string& chosen
) {
    for (const rules::DcAdjustment& each : adjustments) {
        if (each.amount == 0) continue; // what holds while nothing is chosen
        std::string label = opening_word(each.name) + " " + game::signed_text(each.amount);
        if (rules::is_house_ruled_adjustment(context.rulebook, each.key)) label += " (house rule)";
        flow.next(button_width(label.c_str()));
        const bool is_on = chosen == each.key;
        if (toggle_button(label.c_str(), is_on)) chosen = is_on ? std::string() : each.key;
    }
}

int adjustment_of(const rules::Rulebook& rulebook, const DifficultyView& view) {
    std::vector<std::string> keys;
    for (const std::string* key : {&view.step, &view.rarity})
        if (!key->empty()) keys.push_back(*key);
    const auto total = rules::dc_adjustment(rulebook, keys);
    return total.ok() ? total.value() : 0; // keys of another rulebook
}

// Attack and damage of traps, one line a band of levels; the party's stands out.
void draw_trap_table(const PanelContext& context) {
    const rules::TrapTables& traps = context.rulebook.difficulty.traps;
    if (traps.dangers.empty()) return;
    heading("Traps: attack and damage");
    ImGui::SetItemTooltip("%s", traps.source.c_str());
    const float first = ImGui::CalcTextSize("level 17 to 20").x + px(16.0F);
    const float room = ImGui::GetContentRegionAvail().x - first;
    const float cell = std::min(
        px(110.0F), room / static_cast<float>(std::max<std::size_t>(traps.dangers.size(), 1))
    );
    const auto line = [&](Ink ink, const std::string& name, const auto& words_of) {
        const ImVec2 at = ImGui::GetCursorPos();
        text_fitted(ink, name, first - px(8.0F));
        for (std::size_t place = 0; place < traps.dangers.size(); ++place) {
            ImGui::SetCursorPos({at.x + first + cell * static_cast<float>(place), at.y});
            text_fitted(ink, words_of(place), cell - px(4.0F));
        }
    };
    line(Ink::muted, "", [&](std::size_t place) { return traps.dangers[place].name; });
    line(Ink::text, "attack", [&](std::size_t place) {
        const rules::TrapDanger& danger = traps.dangers[place];
        return game::signed_text(danger.attack_min) + " to " + game::signed_text(danger.attack_max);
    });
    const std::optional<int> level = game::present_level(context.campaign.party);
    const rules::TrapDamage* ours =
        level.has_value() ? rules::trap_damage(context.rulebook, *level) : nullptr;
    for (const rules::TrapDamage& row : traps.damage) {
        const bool is_ours = &row == ours;
        if (is_ours) ImGui::PushFont(look().fonts.strong);
        line(
            is_ours ? Ink::accent : Ink::text,
            "level " + std::to_string(row.level_min) + " to " + std::to_string(row.level_max),
            [&](std::size_t place) { return rules::to_text(row.damage[place]); }
        );
        if (is_ours) ImGui::PopFont();
    }
}

void draw_difficulty_header(const PanelContext& context, DifficultyView& view) {
    Flow flow;
    const float width = std::min(px(190.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    draw_stat_choice(context, "##asked", width);
    draw_adjustments(context, flow, context.rulebook.difficulty.steps, view.step);
    draw_adjustments(context, flow, context.rulebook.difficulty.rarities, view.rarity);
}

} // namespace

void draw_difficulty(const PanelContext& context, DifficultyView& view) {
    draw_difficulty_header(context, view);
    const PartyOdds party =
        game::party_odds(context.campaign, context.rulebook, context.selection.odds);
    if (party.members.empty())
        text_wrapped(Ink::muted, "Nobody takes part, so the DCs stand alone.");
    const Columns columns = columns_of();
    draw_titles(columns);
    if (ImGui::BeginChild("lists", {0.0F, 0.0F})) {
        const int adjustment = adjustment_of(context.rulebook, view);
        for (const rules::DcList& list : rules::dc_lists(context.rulebook, adjustment)) {
            ImGui::PushID(list.title.c_str());
            draw_list(context, view, columns, party, list);
            ImGui::PopID();
        }
        const int level = game::present_level(context.campaign.party).value_or(1);
        for (const rules::DcList& list : rules::hazard_dcs(context.rulebook, level, adjustment)) {
            ImGui::PushID(list.title.c_str());
            draw_list(context, view, columns, party, list);
            ImGui::PopID();
        }
        draw_trap_table(context);
        ImGui::Dummy({0.0F, 0.0F}); // rows set the cursor themselves; an item must end them
    }
    ImGui::EndChild();
}

} // namespace widgets
