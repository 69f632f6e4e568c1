#include "widgets/encounter_preparation_form.h"

#include "game/roster.h"
#include "widgets/read_only.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <cstddef>
#include <utility>

namespace widgets {

using game::PreparedCreatures;
using game::PreparedEncounter;

void ask_prepared(
    const PanelContext& context,
    const PreparedEncounter& prepared,
    std::string label,
    const std::string& typed_in,
    std::function<void(PreparedEncounter&)> change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "preparation/" + std::to_string(prepared.id) + typed_in;
    context.edits.add(
        &game::Campaign::preparation,
        std::move(label),
        [id = prepared.id, change = std::move(change)](game::Preparation& preparation) {
            const PreparedEncounter* known = game::find_prepared(std::as_const(preparation), id);
            if (known == nullptr) return;
            PreparedEncounter changed = *known;
            change(changed);
            game::update_prepared(preparation, changed);
        },
        merge_key
    );
}

namespace {

struct PartOf {
    const PanelContext& context;
    const PreparedEncounter& prepared;
    std::size_t place;
    const PreparedCreatures& part;
    std::string creature; // its name
};

template <class Change>
void ask_part(const PartOf& of, const std::string& what, Change change) {
    ask_prepared(
        of.context,
        of.prepared,
        of.prepared.name + ": " + what,
        {},
        [change, place = of.place](PreparedEncounter& changed) {
            if (place < changed.creatures.size()) change(changed.creatures[place]);
        }
    );
}

void draw_part_flags(const PartOf& of, Flow& flow) {
    const std::string place = std::to_string(of.place);
    const std::string shares = "One initiative##" + place;
    flow.next(button_width(shares.c_str()));
    if (toggle_button(shares.c_str(), of.part.shares_initiative))
        ask_part(
            of,
            of.creature + (of.part.shares_initiative ? " act one by one" : " share one initiative"),
            [is_on = !of.part.shares_initiative](PreparedCreatures& part) {
                part.shares_initiative = is_on;
            }
        );
    const std::string hidden = "Hidden##" + place;
    flow.next(button_width(hidden.c_str()));
    if (toggle_button(hidden.c_str(), of.part.is_hidden))
        ask_part(
            of,
            of.creature + (of.part.is_hidden ? " in sight" : " hidden"),
            [is_on = !of.part.is_hidden](PreparedCreatures& part) { part.is_hidden = is_on; }
        );
}

void draw_part(const PartOf& of) {
    const std::string place = std::to_string(of.place);
    Flow flow;
    flow.next(stepper_width());
    ImGui::BeginGroup();
    const auto count =
        stepper("count " + place, of.part.count, 1, game::Limits::count_max, "How many");
    ImGui::EndGroup();
    if (count.has_value())
        ask_part(
            of,
            std::to_string(*count) + " " + of.creature,
            [number = *count](PreparedCreatures& part) { part.count = number; }
        );
    const float width = std::min(px(190.0F), ImGui::GetContentRegionAvail().x);
    flow.next(width);
    ImGui::BeginGroup();
    ImGui::AlignTextToFramePadding();
    text_fitted(Ink::text, of.creature, width);
    ImGui::EndGroup();
    draw_part_flags(of, flow);
    const std::string remove = "Remove##" + place;
    flow.next(button_width(remove.c_str()));
    if (small_button(remove.c_str()))
        ask_prepared(
            of.context,
            of.prepared,
            of.prepared.name + ": without " + of.creature,
            {},
            [at = of.place](PreparedEncounter& changed) {
                if (at < changed.creatures.size())
                    changed.creatures.erase(
                        changed.creatures.begin() + static_cast<std::ptrdiff_t>(at)
                    );
            }
        );
}

void draw_parts(const PanelContext& context, const PreparedEncounter& prepared) {
    heading("Creatures");
    for (std::size_t place = 0; place < prepared.creatures.size(); ++place) {
        const PreparedCreatures& part = prepared.creatures[place];
        const game::Creature* creature = game::find_creature(context.campaign.shelf, part.creature);
        draw_part(
            {context,
             prepared,
             place,
             part,
             creature == nullptr ? std::string("unknown creature") : creature->name}
        );
    }
    std::vector<std::string> keys;
    std::vector<std::string> names;
    for (const game::Creature& creature : context.campaign.shelf.creatures) {
        keys.push_back(std::to_string(creature.id));
        names.push_back(creature.name + "##" + keys.back());
    }
    if (keys.empty()) {
        text_wrapped(Ink::muted, "The Creature Shelf is empty: enter creatures there first.");
        return;
    }
    const std::string added = pick_to_add("Add creatures", keys, names);
    for (const game::Creature& creature : context.campaign.shelf.creatures) {
        if (added.empty() || std::to_string(creature.id) != added) continue;
        ask_prepared(
            context,
            prepared,
            prepared.name + ": 1 " + creature.name,
            {},
            [id = creature.id](PreparedEncounter& changed) {
                PreparedCreatures part;
                part.creature = id;
                changed.creatures.push_back(part);
            }
        );
    }
}

void draw_head(
    const PanelContext& context, EncounterPreparationView& view, const PreparedEncounter& prepared
) {
    Flow flow;
    const float width = px(240.0F);
    flow.field("Name", width);
    if (view.wants_name == prepared.id) {
        give_keyboard_to_next_field();
        view.wants_name = base::no_id;
    }
    const auto typed =
        checked_text("##name", prepared.name, view.drafts, context.now_seconds, width, check_name);
    Flow::end_field();
    flow.next(start_width(context));
    draw_start(context, prepared, "##form");
    const char* remove = "Remove the encounter";
    flow.next(button_width(remove));
    if (button(remove, read_only_reason(context)))
        context.edits.add(
            &game::Campaign::preparation,
            "Remove " + prepared.name,
            [id = prepared.id](game::Preparation& preparation) {
                game::remove_prepared(preparation, id);
            }
        );
    draw_complaints(view.drafts, "##name");
    if (typed.has_value())
        ask_prepared(
            context,
            prepared,
            prepared.name + " is now called " + *typed,
            "##name",
            [words = *typed](PreparedEncounter& changed) { changed.name = words; }
        );
}

} // namespace

void draw_prepared_form(
    const PanelContext& context, EncounterPreparationView& view, const PreparedEncounter& prepared
) {
    ImGui::PushID(static_cast<int>(prepared.id));
    ImGui::BeginDisabled(context.is_read_only);
    draw_head(context, view, prepared);
    draw_parts(context, prepared);
    heading("Note");
    const auto note =
        long_text("##note", prepared.note, view.drafts, context.now_seconds, px(90.0F));
    draw_complaints(view.drafts, "##note");
    if (note.has_value())
        ask_prepared(
            context,
            prepared,
            "Note on " + prepared.name,
            "##note",
            [words = *note](PreparedEncounter& changed) { changed.note = words; }
        );
    ImGui::EndDisabled();
    ImGui::PopID();
}

} // namespace widgets
