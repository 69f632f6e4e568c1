// The set of coins: the rulebook's, or the GM's own.
#include "widgets/read_only.h"
#include "widgets/treasure_ledger_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <functional>
#include <utility>

namespace widgets {

using game::Coin;

namespace {

void ask_coins(const LedgerOf& of, const std::string& label, std::vector<Coin> changed) {
    of.view.refusal = game::coins_problem(changed);
    if (!of.view.refusal.empty()) return;
    of.context.edits.add(
        &game::Campaign::treasury,
        label,
        [changed = std::move(changed)](game::Treasury& treasury) { treasury.coins = changed; }
    );
}

void change_coin(
    const LedgerOf& of,
    std::size_t at,
    const std::string& label,
    const std::function<void(Coin&)>& change
) {
    std::vector<Coin> changed = of.coins;
    change(changed[at]);
    ask_coins(of, label, std::move(changed));
}

void draw_coin_texts(const LedgerOf& of, std::size_t at, Flow& flow) {
    const Coin& coin = of.coins[at];
    const std::string mark = "##" + std::to_string(at);
    const auto field = [&](const char* name, const std::string& value, float width) {
        flow.next(width);
        return checked_text(
            mark + name, value, of.view.drafts, of.context.now_seconds, width, check_name
        );
    };
    if (const auto typed = field(" short name", coin.abbreviation, px(70.0F)))
        change_coin(of, at, "Call a coin " + *typed, [&](Coin& changed) {
            changed.abbreviation = *typed;
        });
    if (const auto typed = field(" name", coin.name, px(130.0F)))
        change_coin(of, at, "Name a coin " + *typed, [&](Coin& changed) { changed.name = *typed; });
    const float width = px(110.0F);
    flow.field("worth", width);
    if (const auto worth = number_field(
            (mark + " worth").c_str(),
            static_cast<int>(coin.worth),
            1,
            static_cast<int>(game::coin_worth_max),
            width,
            "A coin's worth"
        ))
        change_coin(of, at, "Worth of " + coin.abbreviation, [&](Coin& changed) {
            changed.worth = *worth;
        });
    Flow::end_field();
}

void draw_coin(const LedgerOf& of, std::size_t at) {
    const Coin& coin = of.coins[at];
    const char* refusal = read_only_reason(of.context);
    ImGui::PushID(static_cast<int>(at));
    Flow flow;
    ImGui::BeginDisabled(of.context.is_read_only);
    draw_coin_texts(of, at, flow);
    ImGui::EndDisabled();
    flow.next(button_width("Counted in"));
    if (toggle_button("Counted in", coin.is_counted_in, refusal))
        change_coin(of, at, "Count in " + coin.abbreviation, [](Coin& changed) {
            changed.is_counted_in = !changed.is_counted_in;
        });
    flow.next(button_width("Take out"));
    if (button("Take out", refusal)) {
        std::vector<Coin> changed = of.coins;
        changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(at));
        ask_coins(of, "Take out the coin " + coin.abbreviation, std::move(changed));
    }
    ImGui::PopID();
}

void add_coin(const LedgerOf& of) {
    std::vector<Coin> changed = of.coins;
    std::string name = "coin";
    while (std::any_of(changed.begin(), changed.end(), [&](const Coin& coin) {
        return coin.abbreviation == name;
    }))
        name += "s";
    changed.push_back({name, name, 1, false, {}});
    ask_coins(of, "Add a coin", std::move(changed));
}

} // namespace

void draw_ledger_coins(const LedgerOf& of) {
    const bool is_own = !of.context.campaign.treasury.coins.empty();
    const char* refusal = read_only_reason(of.context);
    text_wrapped(
        Ink::muted,
        is_own ? "Coins of this campaign, each worth so many of the smallest one. Amounts are "
                 "shown in those that are counted in."
               : "The coins of the rulebook. Change one, and the campaign has a set of its own."
    );
    for (std::size_t at = 0; at < of.coins.size(); ++at)
        draw_coin(of, at);
    if (button("Add a coin", refusal)) add_coin(of);
    if (!is_own) return;
    same_line_if_fits(button_width("The rulebook's coins"));
    if (button("The rulebook's coins", refusal))
        of.context.edits.add(
            &game::Campaign::treasury,
            "Take the rulebook's coins",
            [](game::Treasury& treasury) { treasury.coins.clear(); }
        );
}

} // namespace widgets
