#include "widgets/open_creatures.h"

#include "game/builder_reading.h"
#include "game/creature_card.h"
#include "rules/challenge_text.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace widgets {

using game::LibraryCreature;

const PanelInfo open_creatures_info{
    "open_creatures",
    "Open Creatures",
    "Every ready creature of the rulebook: find it, read its card, drop it into the fight.",
    "",
    360.0F,
    300.0F};

static void read_library(const std::vector<LibraryCreature>& library, OpenCreaturesView& view) {
    const bool is_known = view.library == &library && view.library_size == library.size();
    if (!is_known) {
        view.library = &library;
        view.library_size = library.size();
        view.words = game::library_words(library);
    }
    if (is_known && view.answered == view.query) return;
    view.answered = view.query;
    view.found = game::search_creatures(library, view.query);
}

// One of the words, or all of them.
static void draw_word_choice(
    Flow& flow, const char* title, std::string& chosen, const std::vector<std::string>& words
) {
    const float width = px(120.0F);
    flow.field(title, width);
    const std::string label = std::string("##") + title;
    if (begin_choice(label.c_str(), chosen.empty() ? "any" : chosen, width)) {
        if (choice_row("any", chosen.empty())) chosen.clear();
        for (const std::string& word : words)
            if (choice_row(word, word == chosen)) chosen = word;
        ImGui::EndCombo();
    }
    Flow::end_field();
}

static void draw_rating_choice(
    Flow& flow, const char* title, std::optional<double>& chosen, const std::vector<double>& ratings
) {
    const float width = width_of_letters(7);
    flow.field(title, width);
    const std::string label = std::string("##") + title;
    const std::string now = chosen.has_value() ? rules::challenge_text(*chosen) : "any";
    if (begin_choice(label.c_str(), now, width)) {
        if (choice_row("any", !chosen.has_value())) chosen.reset();
        for (const double rating : ratings)
            if (choice_row(rules::challenge_text(rating), chosen == rating)) chosen = rating;
        ImGui::EndCombo();
    }
    Flow::end_field();
}

static void draw_open_creatures_head(OpenCreaturesView& view) {
    Flow flow;
    const float width = px(190.0F);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "find a creature", &view.query.text);
    draw_rating_choice(flow, "CR from", view.query.rating_min, view.words.ratings);
    draw_rating_choice(flow, "to", view.query.rating_max, view.words.ratings);
    draw_word_choice(flow, "type", view.query.type, view.words.types);
    draw_word_choice(flow, "speed", view.query.speed, view.words.speeds);
    draw_word_choice(flow, "damage", view.query.damage_type, view.words.damage_types);
    const std::array<std::pair<game::CreatureOrder, const char*>, 3> orders{
        std::pair{game::CreatureOrder::best_match, "best first"},
        std::pair{game::CreatureOrder::by_name, "name"},
        std::pair{game::CreatureOrder::by_rating, "CR"}};
    const float order_width = px(110.0F);
    flow.field("by", order_width);
    const char* now = orders[static_cast<std::size_t>(view.query.order)].second;
    if (begin_choice("##order", now, order_width)) {
        for (const auto& [order, words] : orders)
            if (choice_row(words, order == view.query.order)) view.query.order = order;
        ImGui::EndCombo();
    }
    Flow::end_field();
    if (view.query == game::CreatureQuery()) return;
    flow.next(button_width("Show all"));
    if (button("Show all")) view.query = {};
}

static void
draw_open_creatures_list(const std::vector<LibraryCreature>& library, OpenCreaturesView& view) {
    const std::vector<std::string> titles{"CR", "AC", "HP", "XP"};
    const EntryColumns columns = entry_columns(0.0F, 0.0F, titles.size());
    draw_entry_titles(columns, titles);
    if (view.found.empty()) text_wrapped(Ink::muted, "No creature answers that.");
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(view.found.size()), columns.row + px(2.0F));
    while (clipper.Step())
        for (int row = clipper.DisplayStart; row < clipper.DisplayEnd; ++row) {
            const LibraryCreature& creature = library[view.found[static_cast<std::size_t>(row)]];
            ImGui::PushID(creature.key.c_str());
            const bool is_pressed = draw_entry_row(
                columns,
                creature.name,
                creature.size + " " + creature.type,
                {rules::challenge_text(creature.statistics.challenge),
                 std::to_string(creature.statistics.armor_class),
                 std::to_string(creature.statistics.hit_points),
                 std::to_string(creature.xp)},
                view.chosen == creature.key
            );
            ImGui::PopID();
            if (!is_pressed) continue;
            view.chosen = creature.key;
            view.done.clear();
        }
    ImGui::Dummy({0.0F, 0.0F});
}

static void draw_open_creatures_verbs(
    const PanelContext& context, OpenCreaturesView& view, const LibraryCreature& creature
) {
    const char* refusal = read_only_reason(context);
    const game::Statistics statistics = game::statistics_of(creature);
    Flow flow;
    draw_placing(flow, view.placing, !statistics.hit_dice.empty());
    flow.next(button_width("Keep on the shelf"));
    if (button("Keep on the shelf", refusal))
        view.done = "Done: " + ask_keeping(context, creature.name, statistics) + ".";
    flow.next(button_width("Into the fight"));
    if (primary_button("Into the fight", refusal))
        view.done = "Done: " + ask_placing(context, creature.name, statistics, view.placing) + ".";
    if (!view.done.empty()) text_wrapped(Ink::muted, view.done);
    text_wrapped(
        Ink::muted,
        game::threat_text(context.campaign, context.rulebook, statistics, view.placing.count)
    );
}

static void draw_creature_card(
    const PanelContext& context, OpenCreaturesView& view, const LibraryCreature& creature
) {
    push_font(TextSize::name);
    text_fitted(Ink::text, creature.name, ImGui::GetContentRegionAvail().x);
    ImGui::PopFont();
    text_wrapped(Ink::muted, game::card_subtitle(creature));
    draw_open_creatures_verbs(context, view, creature);
    for (const game::CardLine& line : game::card_lines(context.rulebook, creature)) {
        text(Ink::muted, line.title);
        ImGui::SameLine();
        text_wrapped(Ink::text, line.text);
    }
}

void draw_open_creatures(const PanelContext& context, OpenCreaturesView& view) {
    if (context.library == nullptr || context.library->empty()) {
        empty_state("This rulebook brings no ready creatures. Make your own in the Creature "
                    "Builder and keep "
                    "them on the shelf.");
        return;
    }
    const std::vector<LibraryCreature>& library = *context.library;
    const Wanted wanted = take_wanted(context.selection, open_creatures_info);
    if (!wanted.key.empty()) view.chosen = wanted.key;
    read_library(library, view);
    const auto chosen =
        std::find_if(library.begin(), library.end(), [&](const LibraryCreature& creature) {
            return creature.key == view.chosen;
        });
    const bool is_open = chosen != library.end();
    const bool is_wide = has_room_for_two();
    if (is_wide || !is_open) {
        const float width = is_wide && is_open ? ImGui::GetContentRegionAvail().x * 0.45F : 0.0F;
        if (ImGui::BeginChild("list", {width, 0.0F})) {
            draw_open_creatures_head(view);
            draw_open_creatures_list(library, view);
        }
        ImGui::EndChild();
    }
    if (!is_open) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the list"))
        view.chosen.clear();
    if (ImGui::BeginChild("card", {0.0F, 0.0F})) draw_creature_card(context, view, *chosen);
    ImGui::EndChild();
}

} // namespace widgets
