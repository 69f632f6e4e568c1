#include "app/typed_order.h"

#include "app/shell.h"
#include "game/conditions.h"
#include "game/typed_condition.h"
#include "rules/dice.h"

namespace app {

namespace {

std::optional<TypedOrder> dice_order(const std::string& typed) {
    if (typed.find_first_of("dD") == std::string::npos) return std::nullopt; // a mere number
    const auto dice = rules::parse_dice(typed);
    if (!dice.ok()) return std::nullopt;
    const std::string written = rules::to_text(dice.value());
    return TypedOrder{"Roll " + written, [written](ShellState& state) {
                          state.selection.wanted_panel = "dice";
                          state.selection.wanted = {"dice", base::no_id, base::no_id, written};
                      }};
}

std::optional<TypedOrder> condition_order(ShellState& state, const std::string& typed) {
    const auto given = game::typed_condition(
        state.campaign.document().view().encounter, state.campaign.rulebook(), typed
    );
    if (!given) return std::nullopt;
    const auto give = [given = *given](ShellState& shell) {
        shell.edits.add(
            &game::Campaign::encounter,
            given.text,
            [given, book = &shell.campaign.rulebook()](game::Encounter& encounter) {
                game::ActiveCondition condition;
                condition.key = given.key;
                condition.value = given.value;
                condition.source = encounter.current;
                const bool is_given =
                    game::add_condition(encounter, *book, given.combatant, condition);
                return is_given ? given.text : given.text + ": immune";
            }
        );
    };
    return TypedOrder{given->text, give, given->says_more};
}

} // namespace

std::optional<TypedOrder> typed_order(ShellState& state, const std::string& typed) {
    if (state.campaign.is_read_only()) return std::nullopt;
    std::optional<TypedOrder> order = dice_order(typed);
    return order ? order : condition_order(state, typed);
}

} // namespace app
