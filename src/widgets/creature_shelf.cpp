#include "widgets/creature_shelf.h"

#include "game/effects.h"
#include "game/roster.h"
#include "game/sheet.h"
#include "game/shelf.h"
#include "rules/challenge_text.h"
#include "widgets/creature_shelf_parts.h"
#include "widgets/entry_list.h"
#include "widgets/far_press.h"
#include "widgets/read_only.h"
#include "widgets/stat_words.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace widgets {

using game::Creature;

const PanelInfo creature_shelf_info{
    "creature_shelf",
    "Creature Shelf",
    "Ready creatures: enter one, keep it, drop it into the fight.",
    "F6",
    420.0F,
    320.0F};

static bool is_srd5(const PanelContext& context) {
    return context.rulebook.family == rules::Family::srd5;
}

static void ask_new_creature(const PanelContext& context, CreatureShelfView& view) {
    Creature creature;
    creature.name = game::free_name(context.campaign.shelf.creatures, "New creature");
    creature.statistics.speeds_ft["land"] = is_srd5(context) ? 30 : 25;
    context.edits.add(
        &game::Campaign::shelf,
        "Put " + creature.name + " on the shelf",
        [creature](game::CreatureShelf& shelf) { game::add_creature(shelf, creature); }
    );
    view.edited = context.campaign.shelf.next_id;
    view.wants_name = view.edited;
    view.editor = {};
    view.search.clear();
}

void ask_copy(const PanelContext& context, CreatureShelfView& view, const Creature& creature) {
    context.edits.add(
        &game::Campaign::shelf,
        "Copy " + creature.name,
        [id = creature.id](game::CreatureShelf& shelf) { game::copy_creature(shelf, id); }
    );
    view.edited = context.campaign.shelf.next_id;
    view.wants_name = view.edited;
    view.editor = {};
    view.search.clear();
}

static std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    return text;
}

static std::vector<const Creature*>
shown_creatures(const PanelContext& context, const CreatureShelfView& view) {
    std::vector<const Creature*> shown;
    const std::string search = lower(view.search);
    for (const Creature& creature : context.campaign.shelf.creatures) {
        const bool is_found = lower(creature.name).find(search) != std::string::npos ||
                              lower(creature.notes).find(search) != std::string::npos;
        if (is_found) shown.push_back(&creature);
    }
    const auto rank = [&](const Creature& creature) {
        const game::Statistics& statistics = creature.statistics;
        switch (view.sort) {
        case ShelfSort::name: return 0.0;
        case ShelfSort::level:
            return is_srd5(context) ? statistics.challenge : static_cast<double>(statistics.level);
        case ShelfSort::armor_class: return static_cast<double>(statistics.armor_class);
        case ShelfSort::hit_points: return static_cast<double>(statistics.hit_points);
        }
        return 0.0;
    };
    std::stable_sort(shown.begin(), shown.end(), [&](const Creature* one, const Creature* other) {
        const double rank_one = rank(*one);
        const double rank_other = rank(*other);
        if (rank_one != rank_other) return rank_one < rank_other;
        return lower(one->name) < lower(other->name);
    });
    return shown;
}

static void draw_shelf_header(const PanelContext& context, CreatureShelfView& view) {
    Flow flow;
    flow.next(button_width("New creature"));
    if (button("New creature", read_only_reason(context))) ask_new_creature(context, view);
    const float width = px(170.0F);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##search");
    ImGui::InputTextWithHint("##search", "find a creature", &view.search);
    const std::array<std::pair<ShelfSort, const char*>, 4> sorts{
        std::pair{ShelfSort::name, "name"},
        std::pair{ShelfSort::level, is_srd5(context) ? "CR" : "level"},
        std::pair{ShelfSort::armor_class, "AC"},
        std::pair{ShelfSort::hit_points, "HP"}};
    const float choice = px(96.0F);
    flow.field("by", choice);
    const char* now = sorts[static_cast<std::size_t>(view.sort)].second;
    if (begin_choice("##sort", now, choice)) {
        for (const auto& [sort, words] : sorts) {
            if (choice_row(words, sort == view.sort)) view.sort = sort;
        }
        ImGui::EndCombo();
    }
    Flow::end_field();
}

static std::vector<std::string> numbers(const PanelContext& context, const Creature& creature) {
    const game::Statistics& statistics = creature.statistics;
    game::Combatant plain;
    plain.statistics = statistics;
    std::vector<std::string> words{
        std::to_string(statistics.armor_class),
        std::to_string(statistics.hit_points),
        is_srd5(context) ? rules::challenge_text(statistics.challenge)
                         : std::to_string(statistics.level)};
    for (const rules::StatName& save : context.rulebook.saves)
        words.push_back(
            game::signed_text(game::effective_check(context.rulebook, plain, save.key).base)
        );
    words.push_back(game::signed_text(statistics.perception));
    return words;
}

static std::string attack_words(const Creature& creature) {
    std::string words;
    for (const game::Attack& attack : creature.statistics.attacks) {
        words += (words.empty() ? "" : "; ") + attack.name + " " + game::signed_text(attack.bonus) +
                 (attack.damage.empty() ? "" : " (" + attack.damage + ")");
    }
    return words;
}

static void draw_shelf_rows(const PanelContext& context, CreatureShelfView& view) {
    std::vector<std::string> titles{"AC", "HP", is_srd5(context) ? "CR" : "Level"};
    for (const rules::StatName& save : context.rulebook.saves)
        titles.push_back(save.brief);
    titles.emplace_back("Perc");
    const float drop_in = button_width("Drop in");
    const EntryColumns columns = entry_columns(0.0F, drop_in + px(8.0F), titles.size());
    draw_entry_titles(columns, titles);
    const auto shown = shown_creatures(context, view);
    if (shown.empty()) text_wrapped(Ink::muted, "No creature on the shelf fits that.");
    for (const Creature* creature : shown) {
        ImGui::PushID(static_cast<int>(creature->id));
        const ImVec2 at = ImGui::GetCursorPos();
        const bool is_pressed = draw_entry_row(
            columns,
            creature->name,
            attack_words(*creature),
            numbers(context, *creature),
            view.edited == creature->id
        );
        const ImVec2 below = ImGui::GetCursorPos();
        ImGui::SetCursorPos(
            {at.x + columns.width - drop_in, at.y + (columns.row - row_height()) / 2.0F}
        );
        if (button("Drop in", read_only_reason(context))) open_drop_in(view.drop_in, creature->id);
        ImGui::SetCursorPos(below);
        ImGui::PopID();
        if (!is_pressed) continue;
        view.edited = creature->id;
        view.editor = {};
    }
    ImGui::Dummy({0.0F, 0.0F});
}

static void draw_shelf_content(const PanelContext& context, CreatureShelfView& view) {
    std::vector<base::Id> shown;
    for (const Creature* creature : shown_creatures(context, view))
        shown.push_back(creature->id);
    const base::Id before = view.edited;
    take_wanted_entry(context, creature_shelf_info, view.edited);
    read_entry_keys(context, shown, view.edited);
    if (view.edited != before) view.editor = {};
    const Creature* edited = game::find_creature(context.campaign.shelf, view.edited);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && edited != nullptr ? ImGui::GetContentRegionAvail().x * 0.42F : 0.0F;
    if (is_wide || edited == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) {
            draw_shelf_header(context, view);
            draw_shelf_rows(context, view);
        }
        ImGui::EndChild();
    }
    if (edited == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the shelf"))
        view.edited = base::no_id;
    if (ImGui::BeginChild("form", {0.0F, 0.0F})) draw_creature_form(context, view, *edited);
    ImGui::EndChild();
}

void draw_creature_shelf(const PanelContext& context, CreatureShelfView& view) {
    if (context.campaign.shelf.creatures.empty()) {
        empty_state("The shelf is empty. Enter a creature once, and drop it into any fight.");
        if (primary_button("New creature", read_only_reason(context)))
            ask_new_creature(context, view);
    } else {
        draw_shelf_content(context, view);
    }
    draw_drop_in(context, view.drop_in);
}

} // namespace widgets
