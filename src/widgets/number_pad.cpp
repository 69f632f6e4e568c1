#include "widgets/number_pad.h"

#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/turn_order_select.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace widgets {

using base::Id;

static constexpr std::size_t most_digits = 4; // 9999, the largest number of hit points

void open_number_pad(
    NumberPadView& view, PadVerb verb, std::vector<Id> targets, std::string_view digits
) {
    view.is_wanted = true;
    view.verb = verb;
    view.digits = digits;
    view.targets = std::move(targets);
    view.portions.clear();
    view.is_critical = false;
    view.is_nonlethal = false;
}

static void add_digit(NumberPadView& view, char digit) {
    if (view.digits == "0") view.digits.clear();
    if (view.digits.size() < most_digits) view.digits += digit;
}

// Digits are read as characters, so that every keyboard layout and its number block work.
static void read_keys(const PanelContext& context, NumberPadView& view) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.WantTextInput) return;
    for (const ImWchar typed : io.InputQueueCharacters) {
        if (typed >= '0' && typed <= '9') add_digit(view, static_cast<char>(typed));
        if (typed == 'h' || typed == 'H') apply_pad(context, view, PadVerb::hurt);
        if (typed == 'g' || typed == 'G') apply_pad(context, view, PadVerb::heal);
        if (typed == 't' || typed == 'T') apply_pad(context, view, PadVerb::temp_hp);
        if (typed == 'c' || typed == 'C') view.is_critical = !view.is_critical;
    }
    if (ImGui::IsKeyPressed(ImGuiKey_Backspace) && !view.digits.empty()) view.digits.pop_back();
    if (io.NavVisible) return; // Enter belongs to the button that the keyboard stands on
    if (ImGui::IsKeyPressed(ImGuiKey_Enter, false) ||
        ImGui::IsKeyPressed(ImGuiKey_KeypadEnter, false))
        apply_pad(context, view, view.verb);
}

static const char* verb_caption(PadVerb verb) {
    switch (verb) {
    case PadVerb::hurt: return "Hurt";
    case PadVerb::heal: return "Heal";
    case PadVerb::temp_hp: return "Temp HP";
    }
    return "";
}

static void draw_number_pad_digits(const PanelContext& context, NumberPadView& view) {
    push_numbers(TextSize::spoken);
    text(Ink::accent, view.digits.empty() ? "0" : view.digits);
    ImGui::PopFont();
    static constexpr std::array<const char*, 12> keys{
        "7", "8", "9", "4", "5", "6", "1", "2", "3", "C", "0", "Back"};
    const ImVec2 size{std::max(px(58.0F), row_height()), std::max(px(44.0F), row_height())};
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (i % 3 != 0) ImGui::SameLine();
        ImGui::PushID(static_cast<int>(i));
        if (ImGui::Button(keys[i], size)) {
            if (keys[i][0] == 'C')
                view.digits.clear();
            else if (keys[i][0] == 'B') {
                if (!view.digits.empty()) view.digits.pop_back();
            } else
                add_digit(view, keys[i][0]);
        }
        ImGui::PopID();
    }
    std::string why_not = read_only_reason(context);
    if (why_not.empty() && view.digits.empty()) why_not = "Type a number first.";
    for (const PadVerb verb : {PadVerb::hurt, PadVerb::heal, PadVerb::temp_hp}) {
        if (verb != PadVerb::hurt) ImGui::SameLine();
        const bool is_pressed = verb == view.verb ? primary_button(verb_caption(verb), why_not)
                                                  : button(verb_caption(verb), why_not);
        if (is_pressed) apply_pad(context, view, verb);
    }
    text(Ink::muted, "Keys: H hurt, G heal, T temp HP");
}

// Last used first, then as the rulebook lists them.
static std::vector<std::string>
types_offered(const rules::Rulebook& rulebook, const NumberPadView& view) {
    std::vector<std::string> types;
    const auto offer = [&](const std::string& type) {
        if (std::find(types.begin(), types.end(), type) == types.end()) types.push_back(type);
    };
    for (const std::string& type : view.recent_types)
        if (types.size() < 4) offer(type);
    for (const std::string& type : rulebook.damage.types)
        offer(type);
    return types;
}

// "cold iron": the key as people write it.
static std::string type_caption(std::string type) {
    std::replace(type.begin(), type.end(), '_', ' ');
    return type;
}

static void draw_number_pad_types(const PanelContext& context, NumberPadView& view, float right) {
    text(Ink::muted, "Damage type");
    const auto place = [&](const char* label) {
        const float width = button_width(label);
        const float end = ImGui::GetItemRectMax().x + ImGui::GetStyle().ItemSpacing.x + width;
        if (end <= right) ImGui::SameLine();
    };
    if (toggle_button("no type", view.damage_type.empty())) view.damage_type.clear();
    for (const std::string& type : types_offered(context.rulebook, view)) {
        const std::string caption = type_caption(type);
        place(caption.c_str());
        const bool is_on = view.damage_type == type;
        if (toggle_button(caption.c_str(), is_on)) view.damage_type = is_on ? std::string() : type;
    }
    if (toggle_button("Critical hit", view.is_critical)) view.is_critical = !view.is_critical;
    place("Nonlethal");
    if (toggle_button("Nonlethal", view.is_nonlethal)) view.is_nonlethal = !view.is_nonlethal;
}

struct PortionChoice {
    Portion portion;
    const char* caption;
    const char* caption_for_all;
};

static constexpr std::array<PortionChoice, 3> portion_choices{
    PortionChoice{Portion::full, "Full", "All full"},
    PortionChoice{Portion::half, "Half", "All half"},
    PortionChoice{Portion::doubled, "Double", "All double"}};

static bool has_portion(const NumberPadView& view, Id id, Portion portion) {
    const auto found = view.portions.find(id);
    return (found == view.portions.end() ? Portion::full : found->second) == portion;
}

static void draw_portions(NumberPadView& view, const std::vector<Id>& of) {
    for (const PortionChoice& choice : portion_choices) {
        const bool is_on = std::all_of(of.begin(), of.end(), [&](Id id) {
            return has_portion(view, id, choice.portion);
        });
        if (choice.portion != Portion::full) ImGui::SameLine();
        if (!toggle_button(of.size() > 1 ? choice.caption_for_all : choice.caption, is_on))
            continue;
        for (const Id id : of)
            view.portions[id] = choice.portion;
    }
}

// One target: its name (a press leaves it out), how much of the damage it takes, what that does.
static bool
draw_number_pad_target(const PanelContext& context, NumberPadView& view, Id id, float name_width) {
    const game::Combatant* combatant = game::find_combatant(context.campaign.encounter, id);
    if (combatant == nullptr) return false;
    ImGui::PushID(static_cast<int>(id));
    bool leaves = false;
    if (view.targets.size() > 1) {
        leaves = ImGui::Button(combatant->name.c_str(), {name_width, row_height()});
        ImGui::SetItemTooltip("Press to leave %s out", combatant->name.c_str());
        ImGui::SameLine();
    }
    draw_portions(view, {id});
    if (!view.digits.empty()) {
        const game::DamagePreview preview =
            game::preview_damage(context.rulebook, *combatant, pad_damage(view, id));
        ImGui::SameLine();
        ImGui::AlignTextToFramePadding();
        text(preview.drops ? Ink::harm : Ink::text, preview.text);
    }
    ImGui::PopID();
    return leaves;
}

// Wide enough for the longest preview, and never narrower while digits are typed.
static float
target_width(const PanelContext& context, const NumberPadView& view, float name_width) {
    float previews = px(180.0F);
    for (const Id id : view.targets)
        if (const auto* combatant = game::find_combatant(context.campaign.encounter, id)) {
            const auto preview =
                game::preview_damage(context.rulebook, *combatant, pad_damage(view, id));
            previews = std::max(previews, ImGui::CalcTextSize(preview.text.c_str()).x);
        }
    float buttons = view.targets.size() > 1 ? name_width : 0.0F;
    for (const PortionChoice& choice : portion_choices)
        buttons += button_width(choice.caption) + ImGui::GetStyle().ItemSpacing.x;
    return buttons + previews + ImGui::GetStyle().ScrollbarSize + px(16.0F);
}

static void draw_number_pad_targets(const PanelContext& context, NumberPadView& view) {
    float name_width = row_height();
    for (const Id id : view.targets)
        if (const auto* combatant = game::find_combatant(context.campaign.encounter, id))
            name_width = std::max(name_width, button_width(combatant->name.c_str()));
    if (view.targets.size() > 1) {
        draw_portions(view, view.targets);
    }
    Id left_out = base::no_id;
    const float line = row_height() + ImGui::GetStyle().ItemSpacing.y;
    const auto lines = static_cast<float>(std::min<std::size_t>(view.targets.size(), 6));
    ImGui::BeginChild("targets", {target_width(context, view, name_width), lines * line});
    for (const Id id : view.targets)
        if (draw_number_pad_target(context, view, id, name_width)) left_out = id;
    ImGui::EndChild();
    if (left_out != base::no_id)
        view.targets.erase(std::find(view.targets.begin(), view.targets.end(), left_out));
}

static void draw_number_pad_title(const PanelContext& context, const NumberPadView& view) {
    push_font(TextSize::name);
    std::string title = names_text(context.campaign.encounter, view.targets);
    if (view.targets.size() == 1)
        if (const auto* one =
                game::find_combatant(context.campaign.encounter, view.targets.front())) {
            title += "  " + std::to_string(one->hp) + " HP";
            if (one->temp_hp > 0) title += " +" + std::to_string(one->temp_hp) + " temp";
        }
    text(Ink::text, title);
    ImGui::PopFont();
}

void draw_number_pad(const PanelContext& context, NumberPadView& view) {
    const char* popup = "number pad";
    if (view.is_wanted) {
        ImGui::OpenPopup(popup);
        view.is_open = true;
    }
    if (!begin_popup(popup)) {
        view.is_open = false;
        return;
    }
    if (!view.is_wanted) read_keys(context, view); // the digit that opened it is already in
    view.is_wanted = false;
    draw_number_pad_title(context, view);
    ImGui::BeginGroup();
    draw_number_pad_digits(context, view);
    ImGui::EndGroup();
    ImGui::SameLine(0.0F, px(16.0F));
    ImGui::BeginGroup();
    const float right = ImGui::GetCursorScreenPos().x + px(420.0F);
    draw_number_pad_types(context, view, right);
    draw_number_pad_targets(context, view);
    ImGui::EndGroup();
    if (!view.is_open) ImGui::CloseCurrentPopup();
    ImGui::EndPopup();
}

} // namespace widgets
