#include "widgets/price_book.h"

#include "game/money.h"
#include "game/treasure.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/form.h"
#include "widgets/house_rule_mark.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <set>

namespace widgets {

const PanelInfo price_book_info{
    "price_book",
    "Price Book",
    "What a thing or a service costs, haggled over and bought.",
    "Shift+F9",
    340.0F,
    280.0F};

namespace {

using game::Coin;
using rules::Price;
using rules::PriceBook;

constexpr int haggled_max = 1000;
constexpr int count_max = 999;

void draw_kind_choice(const PriceBook& book, PriceBookView& view, float width) {
    const rules::PriceKind* now = rules::find_price_kind(book, view.query.kind);
    if (!begin_choice("##kind", now == nullptr ? "all kinds" : now->name, width)) return;
    if (choice_row("all kinds", now == nullptr)) view.query.kind.clear();
    for (const rules::PriceKind& kind : book.kinds)
        if (choice_row(kind.name, &kind == now)) view.query.kind = kind.key;
    ImGui::EndCombo();
}

// Levels, or rarities: what the prices of the chosen kind have.
void draw_level_choice(const PriceBook& book, PriceBookView& view, Flow& flow, float width) {
    std::set<int> levels;
    std::vector<std::string> rarities;
    for (const Price& price : book.prices) {
        if (!view.query.kind.empty() && price.kind != view.query.kind) continue;
        if (price.level >= 0) levels.insert(price.level);
        if (!price.rarity.empty() &&
            std::find(rarities.begin(), rarities.end(), price.rarity) == rarities.end())
            rarities.push_back(price.rarity);
    }
    if (levels.count(view.query.level) == 0) view.query.level = -1;
    if (std::find(rarities.begin(), rarities.end(), view.query.rarity) == rarities.end())
        view.query.rarity.clear();
    if (!levels.empty()) {
        flow.next(width);
        const auto words = [](int level) {
            return level < 0 ? std::string("any level") : "level " + std::to_string(level);
        };
        if (begin_choice("##level", words(view.query.level), width)) {
            if (choice_row(words(-1), view.query.level < 0)) view.query.level = -1;
            for (const int level : levels)
                if (choice_row(words(level), level == view.query.level)) view.query.level = level;
            ImGui::EndCombo();
        }
    }
    if (rarities.empty()) return;
    flow.next(width);
    const bool is_any = view.query.rarity.empty();
    if (begin_choice("##rarity", is_any ? "any rarity" : view.query.rarity, width)) {
        if (choice_row("any rarity", is_any)) view.query.rarity.clear();
        for (const std::string& rarity : rarities)
            if (choice_row(rarity, rarity == view.query.rarity)) view.query.rarity = rarity;
        ImGui::EndCombo();
    }
}

void draw_search(const PriceBook& book, PriceBookView& view) {
    const float room = ImGui::GetContentRegionAvail().x;
    Flow flow;
    const float search = std::min(px(240.0F), room);
    flow.next(search);
    ImGui::SetNextItemWidth(search);
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "what is it called?", &view.query.text);
    const float width = std::min(px(190.0F), room);
    flow.next(width);
    draw_kind_choice(book, view, width);
    draw_level_choice(book, view, flow, std::min(px(140.0F), room));
    flow.field("haggled to %", stepper_width());
    if (const auto percent = stepper("haggled", view.haggled_percent, 0, haggled_max, "Haggling"))
        view.haggled_percent = *percent;
    Flow::end_field();
}

void keep_search_up(const PriceBook& book, PriceBookView& view) {
    const bool is_same = view.searched_in == &book && view.searched_size == book.prices.size() &&
                         view.searched == view.query;
    if (is_same) return;
    view.found = game::search_prices(book, view.query);
    view.searched = view.query;
    view.searched_in = &book;
    view.searched_size = book.prices.size();
}

// The price after haggling.
std::string haggled_text(const Price& price, int percent, const std::vector<Coin>& coins) {
    const auto least = game::money_share(price.worth, percent);
    const auto most = game::money_share(price.worth_max, percent);
    if (!least.ok() || !most.ok()) return "more than can be counted";
    Price haggled = price;
    haggled.worth = least.value();
    haggled.worth_max = most.value();
    return game::price_text(haggled, coins);
}

// Kind, level, weight: what stands below the name.
std::string price_note(const PriceBook& book, const Price& price) {
    const rules::PriceKind* kind = rules::find_price_kind(book, price.kind);
    std::string note = kind == nullptr ? price.kind : kind->name;
    if (price.level >= 0 && price.name.find("level") == std::string::npos)
        note += ", level " + std::to_string(price.level);
    for (const std::string& load :
         {game::weight_text(price.weight_thousandths_lb), game::bulk_text(price.bulk_tenths)})
        if (!load.empty()) note += ", " + load;
    return note;
}

void draw_found(const PriceBook& book, PriceBookView& view, const std::vector<Coin>& coins) {
    if (view.found.empty()) {
        text_wrapped(Ink::muted, "Nothing is called so. Try fewer letters, or all kinds.");
        return;
    }
    push_font(TextSize::small);
    const float note_height = ImGui::GetTextLineHeight();
    ImGui::PopFont();
    const float row = row_height() * 1.6F;
    const float top = (row - ImGui::GetTextLineHeight() - note_height) / 2.0F;
    const float width = ImGui::GetContentRegionAvail().x;
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(view.found.size()), row + ImGui::GetStyle().ItemSpacing.y);
    while (clipper.Step())
        for (int at = clipper.DisplayStart; at < clipper.DisplayEnd; ++at) {
            const Price& price = book.prices[view.found[static_cast<std::size_t>(at)]];
            ImGui::PushID(price.key.c_str());
            const ImVec2 start = ImGui::GetCursorPos();
            const bool is_in = view.basket.count(price.key) > 0;
            const bool is_pressed = row_ground(price.name, width, row, is_in);
            const std::string cost = haggled_text(price, view.haggled_percent, coins);
            push_font(TextSize::name);
            const float cost_width = ImGui::CalcTextSize(cost.c_str()).x;
            ImGui::PopFont();
            const float inner = px(8.0F);
            const float name_width = std::max(px(40.0F), width - cost_width - 3.0F * inner);
            ImGui::SetCursorPos({start.x + inner, start.y + top});
            text_fitted(Ink::text, price.name, name_width);
            ImGui::SetCursorPos({start.x + width - cost_width - inner, start.y + top});
            push_font(TextSize::name);
            text(Ink::accent, cost);
            ImGui::PopFont();
            push_font(TextSize::small);
            ImGui::SetCursorPos({start.x + inner, start.y + row - top - note_height});
            text_fitted(Ink::muted, price_note(book, price), width - 2.0F * inner);
            ImGui::PopFont();
            ImGui::SetCursorPos(start);
            ImGui::Dummy({width, row});
            if (is_pressed) {
                int& count = view.basket[price.key];
                count = std::min(count + 1, count_max);
                view.message.clear();
                view.refusal.clear();
            }
            ImGui::PopID();
        }
}

void charge(const PanelContext& context, const PriceBook& book, PriceBookView& view) {
    // Tried on a copy first: a refusal is one line, and nothing is lost.
    view.message.clear();
    view.refusal.clear();
    game::Campaign tried;
    tried.treasury = context.campaign.treasury;
    const auto cost =
        game::charge_basket(tried, book, view.basket, view.haggled_percent, view.keeps_items);
    if (!cost.ok()) {
        view.refusal = cost.error().message;
        return;
    }
    const std::vector<Coin> coins = game::coins_of(context.campaign.treasury, &book);
    const std::string what = game::basket_text(book, view.basket);
    context.edits.add(
        {game::Section::treasury},
        "Buy " + what + " for " + game::money_text(cost.value(), coins),
        [book, basket = view.basket, percent = view.haggled_percent, keeps = view.keeps_items](
            game::Campaign& campaign
        ) {
            static_cast<void>(game::charge_basket(campaign, book, basket, percent, keeps));
            return std::string();
        }
    );
    view.message = "Bought: " + what + ".";
    view.basket.clear();
}

void draw_basket(const PanelContext& context, const PriceBook& book, PriceBookView& view) {
    const std::vector<Coin> coins = game::coins_of(context.campaign.treasury, &book);
    std::string gone;
    for (auto& [key, count] : view.basket) {
        const Price* price = rules::find_price(book, key);
        ImGui::PushID(key.c_str());
        ImGui::AlignTextToFramePadding();
        text_fitted(
            Ink::text,
            price == nullptr ? key : price->name,
            std::min(px(180.0F), ImGui::GetContentRegionAvail().x)
        );
        same_line_if_fits(stepper_width());
        if (const auto number = stepper("count " + key, count, 1, count_max, "A count"))
            count = *number;
        same_line_if_fits(button_width("Put back"));
        if (button("Put back")) gone = key;
        ImGui::PopID();
    }
    if (!gone.empty()) view.basket.erase(gone);
    if (view.basket.empty()) return;
    const auto cost = game::basket_cost(book, view.basket, view.haggled_percent);
    push_font(TextSize::current);
    text(Ink::text, cost.ok() ? game::money_text(cost.value(), coins) : std::string("?"));
    ImGui::PopFont();
    const auto purse = game::purse_of(context.campaign.treasury);
    if (purse.ok())
        text_wrapped(
            Ink::muted, "of " + game::money_text(purse.value(), coins) + " in the party's purse"
        );
    if (primary_button("Charge to the ledger", read_only_reason(context)))
        charge(context, book, view);
    same_line_if_fits(button_width("Keep the things"));
    if (toggle_button("Keep the things", view.keeps_items)) view.keeps_items = !view.keeps_items;
    same_line_if_fits(button_width("Empty the basket"));
    if (button("Empty the basket")) view.basket.clear();
}

} // namespace

void draw_price_book(const PanelContext& context, PriceBookView& view) {
    if (context.prices == nullptr || context.prices->prices.empty()) {
        empty_state("Prices of goods and services stand here, but the price list cannot be read.");
        return;
    }
    const PriceBook& book = *context.prices;
    const Wanted wanted = take_wanted(context.selection, price_book_info);
    if (const rules::Price* price = rules::find_price(book, wanted.key)) {
        view.query = {};
        view.query.text = price->name;
    }
    draw_search(book, view);
    keep_search_up(book, view);
    draw_house_rule_mark(book.house_ruled);
    draw_basket(context, book, view);
    if (!view.refusal.empty()) complaint(view.refusal);
    if (!view.message.empty()) text_wrapped(Ink::good, view.message);
    if (view.basket.empty() && view.message.empty())
        text_wrapped(Ink::muted, "Press what is bought: it goes into the basket.");
    draw_found(book, view, game::coins_of(context.campaign.treasury, &book));
}

} // namespace widgets
