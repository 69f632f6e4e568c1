// Items and even shares.
#include "game/roster.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/treasure_ledger_parts.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>

namespace widgets {

using game::ItemFate;
using game::TreasureItem;

namespace {

bool weighs_in_pounds(const PanelContext& context) {
    return context.rulebook.family == rules::Family::srd5;
}

std::string carrier_name(const PanelContext& context, base::Id id) {
    const game::Character* character = game::find_character(context.campaign.party, id);
    return character == nullptr ? std::string("the party") : character->name;
}

std::string item_note(const LedgerOf& of, const TreasureItem& item) {
    std::string note = carrier_name(of.context, item.carrier);
    if (item.fate == ItemFate::sold) note = "sold";
    if (item.fate == ItemFate::given_away) note = "given away";
    if (!item.is_identified) note += ", not identified";
    const std::string load = weighs_in_pounds(of.context)
                                 ? game::weight_text(item.weight_thousandths_lb * item.count)
                                 : game::bulk_text(item.bulk_tenths * item.count);
    return load.empty() ? note : note + ", " + load;
}

void draw_item_entry(const LedgerOf& of) {
    TreasureLedgerView& view = of.view;
    const float room = ImGui::GetContentRegionAvail().x;
    Flow flow;
    const float width = std::min(px(200.0F), room);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##item");
    bool is_entered = ImGui::InputTextWithHint(
        "##item", "item: silver reed mask", &view.item, ImGuiInputTextFlags_EnterReturnsTrue
    );
    const float value = std::min(px(120.0F), room);
    flow.next(value);
    ImGui::SetNextItemWidth(value);
    is_entered =
        ImGui::InputTextWithHint(
            "##worth", "worth of one", &view.item_value, ImGuiInputTextFlags_EnterReturnsTrue
        ) ||
        is_entered;
    flow.next(stepper_width());
    if (const auto count = stepper("how many", view.item_count, 1, 999, "A count"))
        view.item_count = *count;
    flow.next(button_width("Add item"));
    const bool is_pressed = primary_button("Add item", read_only_reason(of.context));
    if (!is_pressed && !(is_entered && !of.context.is_read_only)) return;
    TreasureItem item;
    item.name = view.item;
    item.count = view.item_count;
    if (!view.item_value.empty()) {
        const auto worth = game::parse_money(view.item_value, of.coins);
        if (!worth.ok()) {
            view.refusal = worth.error().message;
            return;
        }
        item.value = worth.value();
    }
    if (!ask_treasury(of, "Add " + item.name, [item](game::Campaign& campaign) {
            return game::add_item(campaign, item);
        }))
        return;
    view.item.clear();
    view.item_value.clear();
    view.item_count = 1;
}

// One field of an item that was changed.
template <class Change>
void ask_item(
    const LedgerOf& of, const TreasureItem& item, const std::string& what, Change change
) {
    of.context.edits.add(
        &game::Campaign::treasury,
        what + " of " + item.name,
        [id = item.id, change](game::Treasury& treasury) {
            if (TreasureItem* changed = game::find_item(treasury, id)) change(*changed);
        },
        "treasury/item/" + std::to_string(item.id) + what
    );
}

void draw_item_carrier(const LedgerOf& of, const TreasureItem& item, Flow& flow) {
    const float width = px(160.0F);
    flow.field("carried by", width);
    if (begin_choice("##carrier", carrier_name(of.context, item.carrier), width)) {
        const auto row = [&](base::Id id, const std::string& name) {
            if (choice_row(name, item.carrier == id))
                ask_item(of, item, "Carrier", [id](TreasureItem& changed) {
                    changed.carrier = id;
                });
        };
        row(base::no_id, "the party");
        for (const game::Character& character : of.context.campaign.party.characters)
            row(character.id, character.name);
        ImGui::EndCombo();
    }
    Flow::end_field();
}

void draw_item_fields(const LedgerOf& of, const TreasureItem& item) {
    Flow flow;
    draw_item_carrier(of, item, flow);
    flow.field("worth of one", px(120.0F));
    if (const auto typed = checked_text(
            "##value",
            game::money_text(item.value, of.coins),
            of.view.drafts,
            of.context.now_seconds,
            px(120.0F),
            [&](const std::string& text) {
                const auto worth = game::parse_money(text, of.coins);
                if (!worth.ok()) return worth.error().message;
                return worth.value() < 0 ? std::string("Its worth is 0 or more.") : std::string();
            }
        ))
        ask_item(
            of,
            item,
            "Worth",
            [worth = game::parse_money(*typed, of.coins).value()](TreasureItem& changed) {
                changed.value = worth;
            }
        );
    Flow::end_field();
    flow.field("count", stepper_width());
    if (const auto count = stepper("count", item.count, 1, 9999, "A count"))
        ask_item(of, item, "Count", [count](TreasureItem& changed) { changed.count = *count; });
    Flow::end_field();
    constexpr int thousand = 1000;
    if (weighs_in_pounds(of.context)) {
        const int pounds = static_cast<int>(item.weight_thousandths_lb / thousand);
        flow.field("lb each", stepper_width());
        if (const auto weight = stepper("weight", pounds, 0, 99'999, "A weight"))
            ask_item(of, item, "Weight", [weight](TreasureItem& changed) {
                changed.weight_thousandths_lb = std::int64_t{*weight} * thousand;
            });
    } else {
        flow.field("tenths of Bulk each", stepper_width());
        if (const auto bulk = stepper("bulk", static_cast<int>(item.bulk_tenths), 0, 9999, "Bulk"))
            ask_item(of, item, "Bulk", [bulk](TreasureItem& changed) {
                changed.bulk_tenths = *bulk;
            });
    }
    Flow::end_field();
    flow.next(button_width("Identified"));
    if (toggle_button("Identified", item.is_identified, read_only_reason(of.context)))
        ask_item(of, item, "Identified state", [](TreasureItem& changed) {
            changed.is_identified = !changed.is_identified;
        });
    flow.next(button_width("Sells in full"));
    if (toggle_button("Sells in full", item.sells_in_full, read_only_reason(of.context)))
        ask_item(of, item, "Sale", [](TreasureItem& changed) {
            changed.sells_in_full = !changed.sells_in_full;
        });
    draw_complaints(of.view.drafts, "##");
}

void draw_item_verbs(const LedgerOf& of, const TreasureItem& item) {
    const char* refusal = read_only_reason(of.context);
    const base::Id id = item.id;
    Flow flow;
    if (item.fate == ItemFate::held) {
        const auto sale = [&](int count, const std::string& words) {
            const auto brings = game::sale_worth(item, count, of.context.prices);
            if (!brings.ok()) return;
            const std::string money = game::money_text(brings.value(), of.coins);
            const std::string label = words + " for " + money + "###" + words;
            flow.next(button_width(label.c_str()));
            if (!button(label.c_str(), refusal)) return;
            // The price list may be read anew before the edit runs: it takes its own copy.
            const rules::PriceBook book =
                of.context.prices == nullptr ? rules::PriceBook() : *of.context.prices;
            ask_treasury(
                of,
                "Sell " + item.name + " for " + money,
                [book, id, count](game::Campaign& campaign) {
                    return game::sell_item(campaign, &book, id, count);
                }
            );
        };
        if (item.count > 1) sale(1, "Sell one");
        sale(item.count, item.count > 1 ? "Sell all" : "Sell");
        flow.next(button_width("Give away"));
        if (button("Give away", refusal))
            ask_treasury(
                of,
                "Give away " + item.name,
                [id, count = item.count](game::Campaign& campaign) {
                    return game::give_item_away(campaign, id, count);
                }
            );
    }
    flow.next(button_width("Take out"));
    if (button("Take out", refusal))
        of.context.edits.add(
            {game::Section::treasury},
            "Take " + item.name + " out of the ledger",
            [id](game::Campaign& campaign) {
                game::remove_item(campaign, id);
                return std::string();
            }
        );
}

void draw_loads(const LedgerOf& of) {
    std::string line;
    for (const game::Load& load : game::loads_of(of.context.campaign, of.context.rulebook)) {
        const bool in_pounds = weighs_in_pounds(of.context);
        std::string carried = in_pounds ? game::weight_text(load.weight_thousandths_lb)
                                        : game::bulk_text(load.bulk_tenths);
        if (carried.empty()) continue;
        if (load.capacity_lb > 0)
            carried += " of at least " + std::to_string(load.capacity_lb) + " lb";
        line += (line.empty() ? "" : "; ") + load.name + " " + carried;
    }
    if (!line.empty()) text_wrapped(Ink::muted, "Carried: " + line + ".");
}

} // namespace

void draw_ledger_items(const LedgerOf& of) {
    draw_item_entry(of);
    const game::Treasury& treasury = of.context.campaign.treasury;
    if (treasury.items.empty()) {
        text_wrapped(Ink::muted, "No items yet. Write one above, or buy some in the Price Book.");
        return;
    }
    draw_loads(of);
    const EntryColumns columns = entry_columns(0.0F, 0.0F, 1);
    draw_entry_titles(columns, {"count"});
    for (const bool wants_held : {true, false})
        for (const TreasureItem& item : treasury.items) {
            if ((item.fate == ItemFate::held) != wants_held) continue;
            ImGui::PushID(static_cast<int>(item.id));
            const auto worth = game::money_times(item.value, item.count);
            const bool is_open = of.view.opened == item.id;
            if (draw_entry_row(
                    columns,
                    item.name,
                    item_note(of, item) + ", worth " +
                        (worth.ok() ? game::money_text(worth.value(), of.coins) : "?"),
                    {std::to_string(item.count)},
                    is_open
                )) {
                of.view.opened = is_open ? base::no_id : item.id;
                of.view.drafts = {};
            }
            if (is_open) {
                ImGui::BeginDisabled(of.context.is_read_only);
                if (item.fate == ItemFate::held) draw_item_fields(of, item);
                ImGui::EndDisabled();
                draw_item_verbs(of, item);
            }
            ImGui::PopID();
        }
    ImGui::Dummy({0.0F, 0.0F}); // the list ends here, whatever stands last in it
}

void draw_ledger_split(const LedgerOf& of) {
    const game::Party& party = of.context.campaign.party;
    TreasureLedgerView& view = of.view;
    if (party.characters.empty()) {
        text_wrapped(Ink::muted, "Money is split among the party, and nobody is in it yet.");
        return;
    }
    std::vector<base::Id> chosen;
    Flow flow;
    for (const game::Character& character : party.characters) {
        const bool is_in = view.left_out.count(character.id) == 0;
        const std::string label = character.name + "##gets " + std::to_string(character.id);
        flow.next(button_width(label.c_str()));
        if (toggle_button(label.c_str(), is_in)) {
            if (is_in)
                view.left_out.insert(character.id);
            else
                view.left_out.erase(character.id);
        }
        if (is_in) chosen.push_back(character.id);
    }
    ImGui::SetNextItemWidth(std::min(px(200.0F), ImGui::GetContentRegionAvail().x));
    meet_far_press("##share");
    ImGui::InputTextWithHint("##share", "all of the purse", &view.share);
    const auto amount = view.share.empty() ? game::purse_of(of.context.campaign.treasury)
                                           : game::parse_money(view.share, of.coins);
    const auto split = amount.ok()
                           ? game::plan_split(of.context.campaign.treasury, amount.value(), chosen)
                           : base::Result<game::MoneySplit>(amount.error());
    if (split.ok()) {
        push_font(TextSize::current);
        text_wrapped(Ink::text, game::money_text(split.value().each, of.coins) + " each");
        ImGui::PopFont();
        text_wrapped(
            Ink::muted,
            split.value().remainder == 0
                ? std::string("It comes out even.")
                : game::money_text(split.value().remainder, of.coins) + " stays with the party."
        );
    } else {
        text_wrapped(Ink::muted, split.error().message);
    }
    const std::string why_not = of.context.is_read_only ? std::string(read_only_reason(of.context))
                                : split.ok()            ? std::string()
                                                        : split.error().message;
    if (!primary_button("Hand out the shares", why_not)) return;
    const std::string each = game::money_text(split.value().each, of.coins);
    if (ask_treasury(
            of,
            "Split " + game::money_text(amount.value(), of.coins) + ": " + each + " each",
            [amount = amount.value(), chosen](game::Campaign& campaign) {
                return game::split_purse(campaign, amount, chosen);
            }
        )) {
        view.message = each + " for each of " + std::to_string(chosen.size()) + ".";
        view.share.clear();
    }
}

} // namespace widgets
