#include "widgets/dice_panel.h"

#include "game/answer_words.h"
#include "game/date_text.h"
#include "game/dice_rolls.h"
#include "widgets/far_press.h"
#include "widgets/form.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <vector>

namespace widgets {

const PanelInfo dice_panel_info{
    "dice",
    "Dice",
    "Any dice: what they can add up to, rolled in the open or in secret.",
    "Shift+F11",
    300.0F,
    240.0F};

namespace {

constexpr std::size_t rolls_shown = 30;

// Keeps the distribution up with what is typed. False: it cannot be read, and the complaint says
// why.
bool measure(DicePanelView& view) {
    const auto parsed = rules::parse_dice(view.typed);
    view.complaint = parsed.ok() ? std::string() : parsed.error().message;
    if (!parsed.ok()) return false;
    std::string canonical = rules::to_text(parsed.value());
    if (canonical == view.measured) return true;
    view.totals = rules::distribution_of(parsed.value());
    view.measured = std::move(canonical);
    return true;
}

void roll(const PanelContext& context, DicePanelView& view, const std::string& written) {
    const auto parsed = rules::parse_dice(written);
    if (!parsed.ok() || context.is_read_only) return;
    game::DiceRoll rolled = game::rolled_dice(parsed.value(), context.dice, view.is_secret);
    view.last_roll = context.campaign.table_rolls.next_id;
    const std::string label = game::dice_roll_label(rolled);
    context.edits.add(
        {game::Section::table_rolls},
        label,
        [rolled = std::move(rolled)](game::Campaign& campaign) {
            return game::keep_dice_roll(campaign, rolled);
        }
    );
}

void draw_field(const PanelContext& context, DicePanelView& view) {
    const float roll_width = button_width("Roll");
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const float width =
        std::clamp(ImGui::GetContentRegionAvail().x - roll_width - gap, px(80.0F), px(260.0F));
    ImGui::SetNextItemWidth(width);
    if (view.wants_focus) give_keyboard_to_next_field();
    view.wants_focus = false;
    meet_far_press("##expression");
    const bool is_entered = ImGui::InputTextWithHint(
        "##expression", "2d6+3", &view.typed, ImGuiInputTextFlags_EnterReturnsTrue
    );
    const bool can_roll = measure(view);
    const std::string refusal = can_roll ? read_only_reason(context) : view.complaint;
    same_line_if_fits(roll_width);
    const bool is_pressed = primary_button("Roll", refusal);
    if (can_roll && (is_entered || is_pressed)) roll(context, view, view.typed);
    if (is_entered) view.wants_focus = true;
    same_line_if_fits(button_width("In secret"));
    if (toggle_button("In secret", view.is_secret)) view.is_secret = !view.is_secret;
    if (!can_roll) {
        complaint(view.complaint);
        return;
    }
    const bool is_pinned = game::is_pinned_dice(context.campaign.table_rolls, view.measured);
    const char* pin = is_pinned ? "Unpin###pin" : "Pin###pin";
    same_line_if_fits(button_width(pin));
    if (button(pin, read_only_reason(context)))
        context.edits.add(
            &game::Campaign::table_rolls,
            (is_pinned ? "Unpin " : "Pin ") + view.measured,
            [expression = view.measured](game::TableRolls& rolls) {
                game::toggle_pinned_dice(rolls, expression);
            }
        );
}

// Pinned ones first, then those used last; one press rolls.
void draw_quick_buttons(const PanelContext& context, DicePanelView& view) {
    const game::TableRolls& rolls = context.campaign.table_rolls;
    std::vector<std::string> quick = rolls.pinned_dice;
    for (const std::string& recent : rolls.recent_dice)
        if (!game::is_pinned_dice(rolls, recent)) quick.push_back(recent);
    if (quick.empty()) quick = {"1d20", "1d100", "1d6", "2d6"};
    Flow flow;
    for (const std::string& expression : quick) {
        const std::string label = expression + "##quick";
        flow.next(button_width(label.c_str()));
        if (!button(label.c_str(), read_only_reason(context))) continue;
        view.typed = expression;
        measure(view);
        roll(context, view, expression);
    }
}

void draw_result(const PanelContext& context, const DicePanelView& view) {
    for (const game::DiceRoll& roll : context.campaign.table_rolls.dice_rolls) {
        if (roll.id != view.last_roll) continue;
        push_numbers(TextSize::spoken);
        text(Ink::text, std::to_string(roll.total));
        ImGui::PopFont();
        text_wrapped(
            Ink::muted, (roll.is_secret ? "in secret: " : "") + roll.expression + " = " + roll.faces
        );
        return;
    }
}

// Every total as a bar; neighbours share one where there are more totals than pixels.
void draw_bars(const rules::Distribution& totals, int marked, bool has_mark) {
    const ImVec2 from = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = px(72.0F);
    if (width < px(40.0F)) return;
    ImGui::Dummy({width, height});
    ImDrawList* list = ImGui::GetWindowDrawList();
    const std::size_t count = totals.chances.size();
    const std::size_t bars =
        std::min(count, static_cast<std::size_t>(std::max(1.0F, width / px(3.0F))));
    std::vector<double> shares(bars, 0.0);
    for (std::size_t at = 0; at < count; ++at)
        shares[at * bars / count] += totals.chances[at];
    const double highest = *std::max_element(shares.begin(), shares.end());
    const float step = width / static_cast<float>(bars);
    const float gap = bars > 60 ? 0.0F : std::min(px(2.0F), step / 4.0F);
    for (std::size_t at = 0; at < bars; ++at) {
        const auto share = static_cast<float>(shares[at] / highest);
        const float left = from.x + step * static_cast<float>(at);
        const auto first = static_cast<std::size_t>(std::max(0, marked - totals.lowest));
        const bool is_marked = has_mark && first < count && first * bars / count == at;
        list->AddRectFilled(
            {left, from.y + height - std::max(1.0F, share * (height - px(2.0F)))},
            {left + std::max(1.0F, step - gap), from.y + height},
            colour_u32(is_marked ? Ink::accent : Ink::muted)
        );
    }
    list->AddLine(
        {from.x, from.y + height}, {from.x + width, from.y + height}, colour_u32(Ink::line)
    );
    push_font(TextSize::small);
    const std::string right = std::to_string(rules::highest(totals));
    text(Ink::muted, std::to_string(totals.lowest));
    const float right_width = ImGui::CalcTextSize(right.c_str()).x;
    if (count > 1) {
        ImGui::SameLine(std::max(0.0F, width - right_width));
        text(Ink::muted, right);
    }
    ImGui::PopFont();
}

void draw_distribution(const PanelContext& context, const DicePanelView& view) {
    const game::DiceRoll* last = nullptr;
    for (const game::DiceRoll& roll : context.campaign.table_rolls.dice_rolls)
        if (roll.id == view.last_roll && roll.expression == view.measured) last = &roll;
    draw_bars(view.totals, last == nullptr ? 0 : last->total, last != nullptr);
    constexpr double tenth = 0.1;
    constexpr double half = 0.5;
    constexpr double nine_tenths = 0.9;
    text_wrapped(
        Ink::text,
        "mean " + game::decimal_text(rules::mean(view.totals)) + "; 10 % up to " +
            std::to_string(rules::quantile(view.totals, tenth)) + ", 50 % up to " +
            std::to_string(rules::quantile(view.totals, half)) + ", 90 % up to " +
            std::to_string(rules::quantile(view.totals, nine_tenths))
    );
    if (last == nullptr) return;
    text_wrapped(
        Ink::muted,
        std::to_string(last->total) +
            " or more: " + game::precise_percent(rules::chance_at_least(view.totals, last->total))
    );
}

void draw_kept_rolls(const PanelContext& context) {
    const auto newest = game::newest_dice_rolls(context.campaign.table_rolls, rolls_shown);
    if (newest.empty()) {
        text_wrapped(Ink::muted, "Rolls stay here with their day and time.");
        return;
    }
    heading("Rolled");
    for (const game::DiceRoll* roll : newest) {
        game::Clock time;
        time.day = roll->day;
        time.second_of_day = roll->second_of_day;
        text_wrapped(
            roll->is_secret ? Ink::accent : Ink::text,
            std::to_string(roll->total) + "  " + roll->expression +
                (roll->is_secret ? ", secret" : "") + "  " +
                game::date_time_text(context.campaign.calendar, time)
        );
    }
}

} // namespace

// Dice that were typed elsewhere are rolled at once.
static void take_wanted_dice(const PanelContext& context, DicePanelView& view) {
    const Wanted wanted = take_wanted(context.selection, dice_panel_info);
    if (wanted.key.empty()) return;
    view.typed = wanted.key;
    if (measure(view)) roll(context, view, view.typed);
}

void draw_dice_panel(const PanelContext& context, DicePanelView& view) {
    take_wanted_dice(context, view);
    draw_field(context, view);
    draw_quick_buttons(context, view);
    draw_result(context, view);
    if (view.complaint.empty()) draw_distribution(context, view);
    draw_kept_rolls(context);
}

} // namespace widgets
