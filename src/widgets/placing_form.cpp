#include "widgets/placing_form.h"

#include "game/roster.h"
#include "widgets/ui.h"

namespace widgets {

static void draw_toggle(Flow& flow, const char* label, bool& is_on, const char* why_not) {
    flow.next(button_width(label));
    if (toggle_button(label, is_on, why_not)) is_on = !is_on;
}

void draw_placing(Flow& flow, game::Placing& placing, bool has_hit_dice) {
    flow.field("How many", stepper_width());
    const auto typed = stepper("count", placing.count, 1, game::Limits::count_max, "How many");
    if (typed.has_value()) placing.count = *typed;
    Flow::end_field();
    draw_toggle(
        flow,
        "One initiative",
        placing.shares_initiative,
        placing.count > 1 ? "" : "There is only one of it."
    );
    draw_toggle(flow, "Hidden", placing.is_hidden, "");
    if (!has_hit_dice) return;
    bool is_rolled = placing.hit_points == game::HitPointsBy::rolled;
    draw_toggle(flow, "Roll its HP", is_rolled, "");
    placing.hit_points = is_rolled ? game::HitPointsBy::rolled : game::HitPointsBy::average;
}

std::string ask_placing(
    const PanelContext& context,
    const std::string& name,
    const game::Statistics& statistics,
    const game::Placing& placing
) {
    std::string label = "Drop in " + std::to_string(placing.count) + " " + name;
    context.edits.add(
        {game::Section::encounter},
        label,
        [name, statistics, placing, rulebook = &context.rulebook, dice = &context.dice](
            game::Campaign& campaign
        ) {
            game::place_creature(campaign, *rulebook, name, statistics, placing, *dice);
            return std::string();
        }
    );
    return label;
}

std::string ask_keeping(
    const PanelContext& context, const std::string& name, const game::Statistics& statistics
) {
    std::string label = "Put " + name + " on the shelf";
    context.edits
        .add(&game::Campaign::shelf, label, [name, statistics](game::CreatureShelf& shelf) {
            game::keep_on_shelf(shelf, name, statistics);
        });
    return label;
}

} // namespace widgets
