#include "widgets/treasure_ledger.h"

#include "game/answer_words.h"
#include "game/date_text.h"
#include "game/session_keeping.h"
#include "widgets/far_press.h"
#include "widgets/house_rule_mark.h"
#include "widgets/read_only.h"
#include "widgets/treasure_ledger_parts.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <utility>

namespace widgets {

using game::LedgerKind;

const PanelInfo treasure_ledger_info{
    "treasure_ledger",
    "Treasure Ledger",
    "Money and things: found, given, sold, spent, split, and who carries what.",
    "Shift+F8",
    360.0F,
    300.0F};

namespace {

constexpr std::array typed_kinds{
    LedgerKind::found, LedgerKind::given, LedgerKind::sold, LedgerKind::spent};

void draw_expectation(const LedgerOf& of, const game::Wealth& wealth) {
    const game::WealthExpectation expected =
        game::expected_wealth(of.context.campaign, of.context.rulebook, of.coins);
    push_font(TextSize::small);
    if (!expected.is_known) {
        text_wrapped(Ink::muted, expected.why_not);
    } else {
        const std::string level = std::to_string(expected.level);
        text_wrapped(
            Ink::muted,
            "Over level " + level + " they find " +
                game::money_text(expected.over_level, of.coins) + ", " +
                game::money_text(expected.of_it_money, of.coins) +
                " of it money. All they own is " + game::money_text(wealth.total, of.coins) + "; " +
                game::counted(expected.characters, "new character") + " of that level would own " +
                game::money_text(expected.made_new, of.coins) + "."
        );
    }
    ImGui::PopFont();
    draw_house_rule_mark(of.context, {"/party_treasure_by_level", "/new_character_wealth"});
}

void draw_head(const LedgerOf& of) {
    const auto wealth = game::wealth_of(of.context.campaign.treasury);
    if (!wealth.ok()) {
        text_wrapped(Ink::harm, wealth.error().message);
        return;
    }
    push_font(TextSize::current);
    text_wrapped(
        wealth.value().purse < 0 ? Ink::harm : Ink::text,
        game::money_text(wealth.value().purse, of.coins)
    );
    ImGui::PopFont();
    std::string note =
        "in the purse; items worth " + game::money_text(wealth.value().items, of.coins);
    if (wealth.value().handed_out != 0)
        note += "; handed out " + game::money_text(wealth.value().handed_out, of.coins);
    text_wrapped(Ink::muted, note);
    draw_expectation(of, wealth.value());
}

void draw_pages(TreasureLedgerView& view) {
    constexpr std::array pages{
        std::pair{"Money", LedgerPage::lines},
        std::pair{"Items", LedgerPage::items},
        std::pair{"Split", LedgerPage::split},
        std::pair{"Coins", LedgerPage::coins}};
    Flow flow;
    for (const auto& [label, page] : pages) {
        flow.next(button_width(label));
        if (!toggle_button(label, view.page == page)) continue;
        view.page = page;
        view.message.clear();
        view.refusal.clear();
    }
}

void add_line(const LedgerOf& of) {
    TreasureLedgerView& view = of.view;
    const auto amount = game::parse_money(view.amount, of.coins);
    if (!amount.ok()) {
        view.refusal = amount.error().message;
        view.message.clear();
        return;
    }
    const std::string money = game::money_text(amount.value(), of.coins);
    const std::string label = std::string("Note ") + money + " " + ledger_kind_word(view.kind) +
                              (view.what.empty() ? "" : ": " + view.what);
    const bool is_added = ask_treasury(
        of,
        label,
        [kind = view.kind, what = view.what, amount = amount.value()](game::Campaign& campaign) {
            return game::add_ledger_line(campaign, kind, what, amount);
        }
    );
    if (!is_added) return;
    view.message = money + " " + ledger_kind_word(view.kind) + ".";
    view.what.clear();
    view.amount.clear();
    view.wants_focus = true;
}

void draw_line_form(const LedgerOf& of) {
    TreasureLedgerView& view = of.view;
    const float room = ImGui::GetContentRegionAvail().x;
    Flow flow;
    const float what = std::min(px(220.0F), room);
    flow.next(what);
    ImGui::SetNextItemWidth(what);
    if (view.wants_focus) give_keyboard_to_next_field();
    view.wants_focus = false;
    meet_far_press("##what");
    bool is_entered = ImGui::InputTextWithHint(
        "##what", "what: chest under the sluice", &view.what, ImGuiInputTextFlags_EnterReturnsTrue
    );
    const float amount = std::min(px(130.0F), room);
    flow.next(amount);
    ImGui::SetNextItemWidth(amount);
    is_entered = ImGui::InputTextWithHint(
                     "##amount", "12 gp 3 sp", &view.amount, ImGuiInputTextFlags_EnterReturnsTrue
                 ) ||
                 is_entered;
    for (const LedgerKind kind : typed_kinds) {
        const std::string word = ledger_kind_word(kind);
        flow.next(button_width(word.c_str()));
        if (toggle_button(word.c_str(), view.kind == kind)) view.kind = kind;
    }
    flow.next(button_width("Note it"));
    const bool is_pressed = primary_button("Note it", read_only_reason(of.context));
    if ((is_entered && !of.context.is_read_only) || is_pressed) add_line(of);
}

// "found, 12 Reedmonth 1204 AE, session 3: the sluice chest".
std::string line_words(const game::Campaign& campaign, const game::LedgerLine& line) {
    std::string words = ledger_kind_word(line.kind);
    words += ", " + game::day_in_words(campaign.calendar, line.day);
    const game::Session* session = game::find_session(campaign.sessions, line.session);
    if (session != nullptr) words += ", session " + std::to_string(session->number);
    if (!line.text.empty()) words += ": " + line.text;
    return words;
}

void draw_line(const LedgerOf& of, const game::LedgerLine& line) {
    ImGui::PushID(static_cast<int>(line.id));
    const float remove = button_width("Strike");
    const float width = ImGui::GetContentRegionAvail().x;
    const std::string money = game::money_text(line.amount, of.coins);
    const float amount =
        std::max(ImGui::CalcTextSize(money.c_str()).x, std::min(px(150.0F), width / 4.0F));
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const ImVec2 start = ImGui::GetCursorPos();
    ImGui::AlignTextToFramePadding();
    text_right_aligned(line.amount < 0 ? Ink::harm : Ink::good, money, amount);
    ImGui::SameLine();
    text_fitted(
        Ink::text,
        line_words(of.context.campaign, line),
        std::max(px(40.0F), width - amount - remove - 2.0F * gap)
    );
    ImGui::SameLine(start.x + std::max(0.0F, width - remove));
    const bool is_struck = button("Strike", read_only_reason(of.context));
    ImGui::SetCursorPos(start);
    ImGui::Dummy({width, row_height()}); // exactly as high as the clipper takes it for
    ImGui::PopID();
    if (!is_struck) return;
    of.context.edits.add(
        {game::Section::treasury},
        "Strike " + money + " from the ledger",
        [id = line.id](game::Campaign& campaign) {
            game::remove_ledger_line(campaign, id);
            return std::string();
        }
    );
}

void draw_lines(const LedgerOf& of) {
    draw_line_form(of);
    const game::Treasury& treasury = of.context.campaign.treasury;
    if (treasury.lines.empty()) {
        text_wrapped(
            Ink::muted, "Nothing came or went yet. Write what the party found, and how much."
        );
        return;
    }
    // The newest on top.
    ImGuiListClipper clipper;
    const int count = static_cast<int>(treasury.lines.size());
    clipper.Begin(count, row_height() + ImGui::GetStyle().ItemSpacing.y);
    while (clipper.Step())
        for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row)
            draw_line(of, treasury.lines[static_cast<std::size_t>(count - 1 - row)]);
}

// Something that was looked for: an item opens, of a line the page is shown.
void take_wanted_item(const PanelContext& context, TreasureLedgerView& view) {
    const Wanted wanted = take_wanted(context.selection, treasure_ledger_info);
    if (wanted.panel.empty()) return;
    const auto& items = context.campaign.treasury.items;
    const bool is_item = std::any_of(items.begin(), items.end(), [&](const auto& item) {
        return item.id == wanted.id;
    });
    view.page = is_item ? LedgerPage::items : LedgerPage::lines;
    if (is_item) view.opened = wanted.id;
}

} // namespace

void draw_treasure_ledger(const PanelContext& context, TreasureLedgerView& view) {
    const std::vector<game::Coin> coins = game::coins_of(context.campaign.treasury, context.prices);
    const LedgerOf of{context, view, coins};
    take_wanted_item(context, view);
    draw_head(of);
    draw_pages(view);
    if (!view.refusal.empty()) complaint(view.refusal);
    if (!view.message.empty()) text_wrapped(Ink::good, view.message);
    switch (view.page) {
    case LedgerPage::lines: draw_lines(of); break;
    case LedgerPage::items: draw_ledger_items(of); break;
    case LedgerPage::split: draw_ledger_split(of); break;
    case LedgerPage::coins: draw_ledger_coins(of); break;
    }
}

} // namespace widgets
