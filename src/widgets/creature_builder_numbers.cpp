// The numbers of the creature that is being made, and what the kind brings besides.
#include "widgets/creature_builder_parts.h"
#include "widgets/number_offers.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <string>
#include <utility>

namespace widgets {

// Attacks, speeds, senses and what it resists, changed on top of what the kind brings.
static void draw_builder_details(
    const PanelContext& context, CreatureBuilderView& view, const game::BuilderReading& reading
) {
    const StatisticsForm form{
        context,
        view.details_editor,
        reading.statistics,
        view.choice->name,
        true,
        [&view](const std::string& /*label*/, const std::string& typed_in, auto change) {
            view.details.change(typed_in, std::move(change));
            view.done.clear();
        },
        false};
    draw_statistics_attacks(form);
    draw_statistics_speeds(form);
    draw_statistics_senses(form);
    draw_statistics_defences(form);
}

void draw_builder_numbers(
    const PanelContext& context, CreatureBuilderView& view, const game::BuilderReading& reading
) {
    if (draw_number_offers(view.choice->numbers, reading.numbers)) view.done.clear();
    heading("Attacks");
    for (const game::Attack& attack : reading.statistics.attacks)
        text_wrapped(Ink::text, game::built_attack_text(attack));
    if (!reading.statistics.notes.empty()) text_wrapped(Ink::muted, reading.statistics.notes);
    Flow flow;
    const char* details = "Names, speeds, resistances";
    flow.next(button_width(details));
    if (toggle_button(details, view.shows_details)) view.shows_details = !view.shows_details;
    if (!view.details.empty()) {
        flow.next(button_width("As the kind has them"));
        if (button("As the kind has them")) {
            view.details = {};
            view.details_editor = {};
            view.done.clear();
        }
    }
    if (view.shows_details) draw_builder_details(context, view, reading);
}

} // namespace widgets
