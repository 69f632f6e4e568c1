#include "widgets/party_roster.h"

#include "game/roster.h"
#include "game/sheet.h"
#include "game/shelf.h"
#include "widgets/entry_list.h"
#include "widgets/party_roster_form.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <utility>

namespace widgets {

using base::Id;
using game::Section;

const PanelInfo party_roster_info{
    "party_roster",
    "Party",
    "The player characters: defences, skills, speeds, reminders, notes.",
    "F5",
    420.0F,
    320.0F};

void ask_character(
    const PanelContext& context,
    Id character,
    std::string label,
    const std::string& typed_in,
    std::function<void(game::Character&)> change
) {
    const std::string merge_key =
        typed_in.empty() ? std::string() : "party/" + std::to_string(character) + typed_in;
    context.edits.add(
        {Section::party, Section::encounter},
        std::move(label),
        [character, change = std::move(change)](game::Campaign& campaign) {
            const game::Character* known =
                game::find_character(std::as_const(campaign.party), character);
            if (known == nullptr) return std::string();
            game::Character changed = *known;
            change(changed);
            game::update_character(campaign, changed);
            return std::string();
        },
        merge_key
    );
}

static void ask_new_character(const PanelContext& context, PartyRosterView& view) {
    game::Character character;
    character.name = game::free_name(context.campaign.party.characters, "New character");
    character.statistics.speeds_ft["land"] =
        context.rulebook.family == rules::Family::srd5 ? 30 : 25;
    context.edits.add(
        {Section::party, Section::encounter},
        "Add " + character.name + " to the party",
        [character](game::Campaign& campaign) {
            game::add_character(campaign, character);
            return std::string();
        }
    );
    view.edited = context.campaign.party.next_id;
    view.wants_name = view.edited;
    view.editor = {};
}

static std::vector<std::string> titles(const rules::Rulebook& rulebook) {
    std::vector<std::string> words{"AC", "HP"};
    for (const rules::StatName& save : rulebook.saves)
        words.push_back(save.brief);
    words.emplace_back("Perc");
    words.emplace_back("Level");
    return words;
}

// The numbers of the sheet, before any condition: what a game master copies and checks.
static std::vector<std::string>
numbers(const rules::Rulebook& rulebook, const game::Statistics& statistics) {
    game::Combatant plain;
    plain.statistics = statistics;
    std::vector<std::string> words{
        std::to_string(statistics.armor_class), std::to_string(statistics.hit_points)};
    for (const rules::StatName& save : rulebook.saves)
        words.push_back(game::signed_text(game::effective_check(rulebook, plain, save.key).base));
    words.push_back(game::signed_text(statistics.perception));
    words.push_back(std::to_string(statistics.level));
    return words;
}

static void draw_presence(const PanelContext& context, const game::Character& character) {
    const char* label = "Tonight##present";
    if (!toggle_button(label, character.is_present, read_only_reason(context))) return;
    context.edits.add(
        {Section::party},
        character.name + (character.is_present ? " is away tonight" : " plays tonight"),
        [id = character.id, is_present = !character.is_present](game::Campaign& campaign) {
            game::set_present(campaign, id, is_present);
            return std::string();
        }
    );
}

static void draw_party_list(const PanelContext& context, PartyRosterView& view) {
    const auto words = titles(context.rulebook);
    const float toggle = button_width("Tonight##present");
    const EntryColumns columns = entry_columns(toggle + px(8.0F), 0.0F, words.size());
    draw_entry_titles(columns, words);
    for (const game::Character& character : context.campaign.party.characters) {
        ImGui::PushID(static_cast<int>(character.id));
        const ImVec2 at = ImGui::GetCursorPos();
        std::string second = character.calling;
        if (!character.player.empty()) second += (second.empty() ? "" : ", ") + character.player;
        const bool is_pressed = draw_entry_row(
            columns,
            character.name,
            second,
            numbers(context.rulebook, character.statistics),
            view.edited == character.id
        );
        const ImVec2 below = ImGui::GetCursorPos();
        ImGui::SetCursorPos({at.x + px(6.0F), at.y + (columns.row - row_height()) / 2.0F});
        draw_presence(context, character);
        ImGui::SetCursorPos(below);
        ImGui::PopID();
        if (!is_pressed) continue;
        view.edited = character.id;
        view.editor = {};
    }
    ImGui::Dummy({0.0F, 0.0F});
    if (button("Add a player character", read_only_reason(context)))
        ask_new_character(context, view);
}

void draw_party_roster(const PanelContext& context, PartyRosterView& view) {
    if (context.campaign.party.characters.empty()) {
        empty_state("Nobody is in the party yet. Enter the player characters once; every panel "
                    "uses their numbers.");
        if (primary_button("Add a player character", read_only_reason(context)))
            ask_new_character(context, view);
        return;
    }
    std::vector<Id> shown;
    for (const game::Character& character : context.campaign.party.characters)
        shown.push_back(character.id);
    const Id before = view.edited;
    take_wanted_entry(context, party_roster_info, view.edited);
    read_entry_keys(context, shown, view.edited);
    if (view.edited != before) view.editor = {};
    const game::Character* edited = game::find_character(context.campaign.party, view.edited);
    const bool is_wide = has_room_for_two();
    const float list_width =
        is_wide && edited != nullptr ? ImGui::GetContentRegionAvail().x * 0.42F : 0.0F;
    if (is_wide || edited == nullptr) {
        if (ImGui::BeginChild("list", {list_width, 0.0F})) draw_party_list(context, view);
        ImGui::EndChild();
    }
    if (edited == nullptr) return;
    if (is_wide)
        ImGui::SameLine();
    else if (button("Back to the party"))
        view.edited = base::no_id;
    if (ImGui::BeginChild("form", {0.0F, 0.0F})) draw_character_form(context, view, *edited);
    ImGui::EndChild();
}

} // namespace widgets
