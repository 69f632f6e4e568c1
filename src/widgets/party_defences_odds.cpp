// A row for everybody in Party Defences: who takes part, the needed roll, the chance of each degree
// as a number and as a bar; and what was rolled in secret.
#include "game/date_text.h"
#include "game/odds_text.h"
#include "game/secret_roll.h"
#include "game/sheet.h"
#include "widgets/degree_bar.h"
#include "widgets/form.h"
#include "widgets/party_defences_parts.h"
#include "widgets/reason_words.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace widgets {

using game::MemberOdds;
using game::PartyOdds;

namespace {

// Where the parts of a row stand, from its left edge. A narrow panel puts the chances below.
struct OddsPlaces {
    std::vector<rules::Degree> degrees;
    float width = 0.0F;
    float tick = 0.0F;
    float name = 0.0F;    // width
    float number = 0.0F;  // right edge
    float needs = 0.0F;   // right edge
    float degree = 0.0F;  // width of each
    float chances = 0.0F; // left edge of the first
    float line = 0.0F;    // height
    bool is_narrow = false;

    float height() const { return line * (is_narrow ? 2.0F : 1.0F) + px(14.0F); }
};

float widest_chance(const PartyOdds& odds) {
    float widest = 0.0F;
    push_numbers(TextSize::body);
    for (const MemberOdds& one : odds.members)
        for (const rules::Degree degree : degrees_of(odds.kind)) {
            const std::string words = game::exact_percent(ways_of(one.odds, degree), one.odds.of);
            widest = std::max(widest, ImGui::CalcTextSize(words.c_str()).x);
        }
    ImGui::PopFont();
    push_font(TextSize::small);
    for (const rules::Degree degree : degrees_of(odds.kind))
        widest = std::max(widest, ImGui::CalcTextSize(degree_title(degree)).x + px(16.0F));
    ImGui::PopFont();
    return widest;
}

OddsPlaces odds_places(const PartyOdds& odds) {
    OddsPlaces places;
    places.degrees = degrees_of(odds.kind);
    places.width = ImGui::GetContentRegionAvail().x;
    places.tick = row_height() + px(6.0F);
    places.degree = widest_chance(odds) + px(10.0F);
    places.line = row_height();
    push_numbers(TextSize::body);
    const float number = ImGui::CalcTextSize("+99").x + px(12.0F);
    const float needs = ImGui::CalcTextSize("never").x + px(12.0F);
    ImGui::PopFont();
    const float chances = places.degree * static_cast<float>(places.degrees.size());
    const float least_name = px(96.0F);
    places.is_narrow = places.width < places.tick + least_name + number + needs + chances;
    const float right = places.is_narrow ? places.width : places.width - chances;
    places.needs = right;
    places.number = right - needs;
    places.name = std::max(px(40.0F), places.number - number - places.tick);
    places.chances = std::max(places.width - chances, 0.0F);
    return places;
}

void draw_odds_titles(const OddsPlaces& places) {
    const ImVec2 at = ImGui::GetCursorPos();
    push_font(TextSize::small);
    const float line = ImGui::GetTextLineHeight();
    const auto title = [&](float right, float width, float y, const char* words) {
        ImGui::SetCursorPos({at.x + right - width, at.y + y});
        text_right_aligned(Ink::muted, words, width);
    };
    title(places.needs, px(60.0F), 0.0F, "needs");
    const float y = places.is_narrow ? line + px(2.0F) : 0.0F;
    for (std::size_t place = 0; place < places.degrees.size(); ++place) {
        const float right = places.chances + places.degree * static_cast<float>(place + 1);
        const char* words = degree_title(places.degrees[place]);
        title(right, places.degree, y, words);
        const ImVec2 word = ImGui::GetItemRectMin();
        const float sign = px(9.0F);
        paint_degree_sign(
            places.degrees[place],
            {word.x - sign - px(4.0F), word.y + px(2.0F)},
            {word.x - px(4.0F), word.y + line - px(2.0F)}
        );
    }
    ImGui::PopFont();
    ImGui::SetCursorPos({at.x, at.y + y + line + px(4.0F)});
}

void draw_tick(const PanelContext& context, const game::PartyRow& row, bool takes_part) {
    bool is_on = takes_part;
    if (!ImGui::Checkbox(("##" + row.name + " takes part").c_str(), &is_on)) return;
    context.selection.odds.takes_part[row.character] = is_on;
}

void draw_chances(const OddsPlaces& places, const MemberOdds& one, ImVec2 at) {
    push_numbers(TextSize::body);
    const float down = (places.line - ImGui::GetTextLineHeight()) / 2.0F;
    ImGui::SetCursorPos({at.x + places.number - px(80.0F), at.y + down});
    const std::string change = brief_change(one.number);
    const Ink ink = change.empty() ? Ink::text : change_ink(one.number);
    text_right_aligned(ink, game::signed_text(one.member.modifier), px(80.0F));
    if (!change.empty()) underline_item(ink);
    ImGui::SetCursorPos({at.x + places.needs - px(80.0F), at.y + down});
    text_right_aligned(Ink::text, game::needed_text(one.needed_roll), px(80.0F));
    const float y = at.y + (places.is_narrow ? places.line : 0.0F);
    for (std::size_t place = 0; place < places.degrees.size(); ++place) {
        const int ways = ways_of(one.odds, places.degrees[place]);
        ImGui::SetCursorPos(
            {at.x + places.chances + places.degree * static_cast<float>(place), y + down}
        );
        text_right_aligned(
            ways == 0 ? Ink::muted : Ink::text,
            game::exact_percent(ways, one.odds.of),
            places.degree
        );
    }
    ImGui::PopFont();
}

void draw_odds_row(
    const PanelContext& context,
    const OddsPlaces& places,
    const game::PartyRow& row,
    const MemberOdds* one
) {
    const ImVec2 at = ImGui::GetCursorPos();
    const ImVec2 screen = ImGui::GetCursorScreenPos();
    ImGui::PushID(static_cast<int>(row.character));
    draw_tick(context, row, one != nullptr);
    ImGui::SetCursorPos({at.x + places.tick, at.y});
    const bool is_on = is_picked(context.selection, row.combatant);
    if (row_ground(row.name + "###row", places.width - places.tick, places.height(), is_on))
        context.selection.combatants = {row.combatant};
    const float down = (places.line - ImGui::GetTextLineHeight()) / 2.0F;
    ImGui::SetCursorPos({at.x + places.tick + px(8.0F), at.y + down});
    ImGui::PushFont(look().fonts.strong);
    const float name = one != nullptr ? places.name - px(8.0F) : places.name * 0.5F;
    text_fitted(one != nullptr ? Ink::text : Ink::muted, row.name, name);
    ImGui::PopFont();
    if (one != nullptr) {
        draw_chances(places, *one, at);
        const float bottom = screen.y + places.height() - px(4.0F);
        paint_degree_bar(
            one->odds,
            {screen.x + places.tick + px(8.0F), bottom - px(10.0F)},
            {screen.x + places.width, bottom}
        );
    } else {
        ImGui::SetCursorPos({at.x + places.tick + px(16.0F) + name, at.y + down});
        text_fitted(
            Ink::muted,
            row.is_present ? "takes no part" : "away tonight",
            places.width - places.tick - name - px(16.0F)
        );
    }
    ImGui::PopID();
    ImGui::SetCursorPos({at.x, at.y + places.height() + px(4.0F)});
    ImGui::Dummy({0.0F, 0.0F});
    ImGui::SetCursorPos({at.x, at.y + places.height() + px(4.0F)});
}

const MemberOdds* odds_of(const PartyOdds& odds, base::Id character) {
    for (const MemberOdds& one : odds.members)
        if (one.character == character) return &one;
    return nullptr;
}

void draw_results(const game::TableRoll& roll) {
    Flow flow;
    const float sign = px(10.0F);
    for (const game::RolledCheck& result : roll.results) {
        const std::string words = result.name + " " + game::result_text(result);
        flow.next(sign + px(6.0F) + ImGui::CalcTextSize(words.c_str()).x);
        ImGui::BeginGroup();
        const ImVec2 at = ImGui::GetCursorScreenPos();
        const float line = ImGui::GetTextLineHeight();
        paint_degree_sign(
            result.degree, {at.x, at.y + px(2.0F)}, {at.x + sign, at.y + line - px(2.0F)}
        );
        ImGui::Dummy({sign, line});
        ImGui::SameLine(0.0F, px(6.0F));
        text(result.degree >= rules::Degree::success ? Ink::good : Ink::harm, words);
        ImGui::EndGroup();
    }
}

} // namespace

void draw_member_odds(const PanelContext& context, const PartyPicture& picture) {
    const OddsPlaces places = odds_places(picture.odds);
    draw_odds_titles(places);
    for (const game::PartyRow& row : picture.figures.rows)
        draw_odds_row(context, places, row, odds_of(picture.odds, row.character));
}

void draw_secret_rolls(const PanelContext& context, PartyDefencesView& view) {
    constexpr std::size_t shown = 10;
    const auto rolls = game::newest_rolls(context.campaign.table_rolls, shown);
    if (rolls.empty()) return;
    const game::TableRoll& newest = *rolls.front();
    game::Clock time;
    time.day = newest.day;
    time.second_of_day = newest.second_of_day;
    heading(
        "Rolled in secret: " + game::rollable_name(context.rulebook, newest.stat) + ", DC " +
        std::to_string(newest.dc)
    );
    push_font(TextSize::small);
    text_wrapped(Ink::muted, game::date_time_text(context.campaign.calendar, time));
    ImGui::PopFont();
    draw_results(newest);
    if (rolls.size() == 1) return;
    if (toggle_button("Earlier rolls", view.has_earlier_rolls))
        view.has_earlier_rolls = !view.has_earlier_rolls;
    if (!view.has_earlier_rolls) return;
    for (std::size_t at = 1; at < rolls.size(); ++at)
        text_wrapped(Ink::muted, game::roll_text(context.rulebook, *rolls[at]));
}

} // namespace widgets
