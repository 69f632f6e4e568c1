// What is checked off in the plan of a session: scenes, goals and open questions, loot.
#include "widgets/far_press.h"
#include "widgets/session_sheet_parts.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <utility>

namespace widgets {

using game::Goal;
using game::PlanItem;
using game::Session;

namespace {

template <class Item>
using Items = std::vector<Item> Session::*;

template <class Item, class Change>
void ask_item(
    const SheetOf& of,
    Items<Item> part,
    base::Id item,
    std::string label,
    const std::string& typed_in,
    Change change
) {
    ask_session(of, std::move(label), typed_in, [part, item, change](Session& session) {
        for (Item& each : session.*part)
            if (each.id == item) change(each);
    });
}

template <class Item>
void draw_item(const SheetOf& of, Items<Item> part, const Item& item, const char* done) {
    const std::string id = std::to_string(item.id);
    const std::string check = std::string(done) + "##done " + id;
    if (toggle_button(check.c_str(), item.is_done))
        ask_item<Item>(
            of,
            part,
            item.id,
            item.text + (item.is_done ? " is open again" : std::string(": ") + done),
            {},
            [is_done = !item.is_done](Item& each) { each.is_done = is_done; }
        );
    ImGui::SameLine();
    const std::string remove = "x##strike " + id;
    const float width = ImGui::GetContentRegionAvail().x - button_width(remove.c_str()) -
                        ImGui::GetStyle().ItemSpacing.x;
    const std::string label = "##item " + id;
    const auto typed = checked_text(
        label,
        item.text,
        of.view.drafts,
        of.context.now_seconds,
        std::max(width, px(60.0F)),
        check_name
    );
    if (typed.has_value())
        ask_item<Item>(of, part, item.id, *typed, label, [words = *typed](Item& each) {
            each.text = words;
        });
    ImGui::SameLine();
    if (small_button(remove.c_str()))
        ask_session(of, "Strike " + item.text, {}, [part, at = item.id](Session& session) {
            std::erase_if(session.*part, [at](const Item& each) { return each.id == at; });
        });
    draw_complaints(of.view.drafts, label);
}

// A field in which Enter adds one more; the id comes from the section as the edit runs.
template <class Item>
void draw_new_item(
    const SheetOf& of, Items<Item> part, const char* label, const char* hint, Item item
) {
    std::string& typed = of.view.new_item;
    const bool is_here = of.view.typed_in == label;
    std::string shown = is_here ? typed : std::string();
    ImGui::SetNextItemWidth(std::min(px(420.0F), ImGui::GetContentRegionAvail().x));
    meet_far_press(label);
    const bool is_entered =
        ImGui::InputTextWithHint(label, hint, &shown, ImGuiInputTextFlags_EnterReturnsTrue);
    if (ImGui::IsItemActive()) {
        of.view.typed_in = label;
        typed = shown;
    }
    if (!is_entered || !check_name(shown).empty()) return;
    item.text = shown;
    of.context.edits.add(
        {game::Section::sessions},
        "Plan: " + shown,
        [part, item, session = of.session.id](game::Campaign& campaign) {
            if (Session* found = game::find_session(campaign.sessions, session)) {
                Item made = item;
                made.id = campaign.sessions.next_id++;
                (found->*part).push_back(std::move(made));
            }
            return std::string();
        }
    );
    typed.clear();
}

} // namespace

void draw_sheet_lists(const SheetOf& of) {
    heading("Scenes");
    for (const PlanItem& scene : of.session.scenes)
        draw_item<PlanItem>(of, &Session::scenes, scene, "played");
    draw_new_item<PlanItem>(of, &Session::scenes, "##new scene", "one more scene", {});
    heading("Goals and open questions");
    for (const Goal& goal : of.session.goals)
        draw_item<Goal>(of, &Session::goals, goal, goal.is_question ? "answered" : "reached");
    draw_new_item<Goal>(of, &Session::goals, "##new goal", "one more goal", {});
    Goal question;
    question.is_question = true;
    draw_new_item<Goal>(of, &Session::goals, "##new question", "one more open question", question);
    text_wrapped(Ink::muted, "What is not done goes over to the next session.");
    heading("Loot");
    for (const PlanItem& loot : of.session.loot)
        draw_item<PlanItem>(of, &Session::loot, loot, "given");
    draw_new_item<PlanItem>(of, &Session::loot, "##new loot", "one more thing to find", {});
}

} // namespace widgets
