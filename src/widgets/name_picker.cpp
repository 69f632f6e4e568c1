#include "widgets/name_picker.h"

#include "base/unicode.h"
#include "game/fights.h"
#include "game/name_keeping.h"
#include "game/name_sound.h"
#include "game/registering.h"
#include "widgets/far_press.h"
#include "widgets/kind_ink.h"
#include "widgets/name_picker_parts.h"
#include "widgets/popup.h"
#include "widgets/read_only.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>

namespace widgets {

using game::NameSource;

const PanelInfo name_picker_info{
    "name_picker",
    "Name Picker",
    "The next good name, like none in play, and who got it.",
    "Shift+F2",
    360.0F,
    300.0F};

namespace {

constexpr std::array kinds{
    game::Kind::person,
    game::Kind::place,
    game::Kind::creature,
    game::Kind::item,
    game::Kind::faction};

// Own lists first, then the ready ones under the kind they are for.
void draw_list_choice(
    const std::vector<NameSource>& sources, const NameSource& chosen, NamePickerView& view
) {
    const auto row = [&](const NameSource& source) {
        ImGui::PushID(source.own == base::no_id ? source.key.c_str() : "own");
        ImGui::PushID(static_cast<int>(source.own));
        if (choice_row(source.title, &source == &chosen)) {
            view.list = source.key;
            view.row.clear();
            view.typed.clear();
            view.message.clear();
            view.is_stale = true;
        }
        ImGui::PopID();
        ImGui::PopID();
    };
    const float width = std::min(px(300.0F), ImGui::GetContentRegionAvail().x);
    if (!begin_choice("##list", chosen.title, width)) return;
    for (const NameSource& source : sources)
        if (source.own != base::no_id) row(source);
    for (const game::Kind kind : kinds) {
        bool has_heading = false;
        for (const NameSource& source : sources) {
            if (source.own != base::no_id || source.kind != kind) continue;
            if (!has_heading) {
                push_font(TextSize::small);
                text(ink_of_kind(kind), game::kind_word(kind));
                ImGui::PopFont();
                has_heading = true;
            }
            row(source);
        }
    }
    ImGui::EndCombo();
}

bool has_all_letters(const ImFont* face, const std::string& name) {
    if (face == nullptr) return true;
    const std::u32string letters = base::code_points(name);
    return std::all_of(letters.begin(), letters.end(), [face](char32_t letter) {
        return face->FindGlyphNoFallback(static_cast<ImWchar>(letter)) != nullptr;
    });
}

// As large as the panel allows; a name is never cut.
void draw_large_name(const std::string& name) {
    const float room = ImGui::GetContentRegionAvail().x;
    for (const TextSize size : {TextSize::spoken, TextSize::current, TextSize::name}) {
        if (!has_all_letters(font(size), name)) continue;
        push_font(size);
        const bool fits = ImGui::CalcTextSize(name.c_str()).x <= room;
        if (fits || size == TextSize::name) {
            text_wrapped(Ink::text, name);
            ImGui::PopFont();
            return;
        }
        ImGui::PopFont();
    }
    text_wrapped(Ink::text, name);
}

// Whose name it is and what stands against it.
std::string name_note(const NamePickerView& view, const NameSource& source) {
    const std::string& name = view.row.front();
    const std::string clash = game::clash_text(view.in_play.check(name));
    std::string note = game::kind_word(source.kind);
    if (view.grown.count(base::folded(name)) > 0) note += ", grown";
    if (name == view.typed) note += ", yours";
    if (!clash.empty()) return note + "; " + clash;
    return note + "; " + std::to_string(view.left.size()) + " of " +
           std::to_string(source.names->size()) + " left";
}

void draw_name_verbs(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    const std::string refusal = read_only_reason(context);
    const std::string name = view.row.empty() ? std::string() : view.row.front();
    Flow flow;
    const auto verb = [&flow](const std::string& label, std::string_view why_not) {
        flow.next(button_width(label.c_str()));
        return button(label.c_str(), why_not);
    };
    flow.next(button_width("Next name"));
    if (primary_button("Next name")) next_name(context, view, source);
    if (name.empty()) return;
    if (verb("Use it", refusal)) ask_use(context, view, source);
    if (verb("Like this one", {})) like_this_name(context, view, source);
    if (const std::string initial = game::shown_initial(name); !initial.empty())
        if (verb("Not " + initial + "###bar", {})) bar_initial(view);
    const bool is_kept = game::is_favourite_name(context.campaign.names, name);
    if (verb(is_kept ? "Let go###keep" : "Keep###keep", refusal))
        ask_favourite(context, name, source.key);
}

// Grow, letters left out, similar ones, a name of the GM's own.
void draw_wishes(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    Flow flow;
    flow.next(button_width("Grow new ones"));
    if (button("Grow new ones")) grow_a_row(context, view, source);
    const char* similar = "Similar ones too";
    flow.next(button_width(similar));
    if (toggle_button(similar, view.allows_similar)) {
        view.allows_similar = !view.allows_similar;
        view.is_stale = true;
    }
    flow.next(button_width("Letters"));
    if (button("Letters")) ImGui::OpenPopup("letters left out");
    std::u32string back;
    for (const auto& [initial, shown] : view.barred) {
        std::string label = "not ";
        label.append(shown).append("###not ").append(shown);
        flow.next(button_width(label.c_str()));
        if (chip(label.c_str(), Ink::harm, "Press to take names with this letter again."))
            back = initial;
    }
    if (!back.empty()) {
        view.barred.erase(back);
        view.is_stale = true;
    }
    const float width = px(190.0F);
    flow.next(width);
    ImGui::SetNextItemWidth(width);
    meet_far_press("##own name");
    const bool is_entered = ImGui::InputTextWithHint(
        "##own name", "or type one of your own", &view.typed, ImGuiInputTextFlags_EnterReturnsTrue
    );
    if (is_entered && !base::letters_only(view.typed).empty()) {
        view.typed = base::composed(view.typed);
        view.row.insert(view.row.begin(), view.typed);
        view.message.clear();
    }
}

// Every letter that begins a name of the list; those left out are lit.
void draw_letters_popup(NamePickerView& view, const NameSource& source) {
    if (!begin_popup("letters left out")) return;
    text(Ink::muted, "No names that begin with:");
    std::map<std::u32string, std::string> letters = view.barred;
    for (const std::string& name : *source.names)
        if (const std::u32string initial = game::initial_of(name); !initial.empty())
            letters.emplace(initial, game::shown_initial(name));
    constexpr int in_a_row = 7;
    int at = 0;
    for (const auto& [initial, shown] : letters) {
        if (at++ % in_a_row != 0) ImGui::SameLine();
        const bool is_out = view.barred.count(initial) > 0;
        if (!toggle_button((shown + "##letter").c_str(), is_out)) continue;
        if (is_out)
            view.barred.erase(initial);
        else
            view.barred[initial] = shown;
        view.is_stale = true;
    }
    ImGui::EndPopup();
}

void draw_candidates(NamePickerView& view, const NameSource& source) {
    if (view.row.size() < 2) return;
    ImGui::AlignTextToFramePadding();
    text(Ink::muted, "or");
    std::size_t taken = 0;
    for (std::size_t at = 1; at < view.row.size(); ++at) {
        const std::string label = view.row[at] + "##candidate";
        same_line_if_fits(button_width(label.c_str()));
        if (chip(label.c_str(), ink_of_kind(source.kind))) taken = at;
    }
    if (taken > 0) std::swap(view.row[0], view.row[taken]);
}

void draw_who_and_where(NamePickerView& view) {
    const float gap = ImGui::GetStyle().ItemSpacing.x;
    const float room = ImGui::GetContentRegionAvail().x;
    const bool is_wide = room >= px(360.0F);
    const float width = is_wide ? (room - gap) / 2.0F : room;
    ImGui::SetNextItemWidth(width);
    ImGui::InputTextWithHint("##who", "who: ferrywoman with one eye", &view.who);
    if (is_wide) ImGui::SameLine();
    ImGui::SetNextItemWidth(width);
    ImGui::InputTextWithHint("##where", "where", &view.where);
}

// The name that was given last, and the way back.
void draw_last_used(const PanelContext& context, NamePickerView& view) {
    const game::UsedName* used = game::find_used_name(context.campaign.names, view.last_used);
    if (used == nullptr) return;
    ImGui::AlignTextToFramePadding();
    text_wrapped(
        Ink::good,
        used->name + (used->who.empty() ? "" : ", " + used->who) + ": used, and in the Register."
    );
    same_line_if_fits(button_width("Take back"));
    if (button("Take back", read_only_reason(context))) ask_unuse(context, *used);
}

} // namespace

// A used name that was looked for elsewhere is found among the used ones, with its who and where.
static void take_wanted_name(const PanelContext& context, NamePickerView& view) {
    const Wanted wanted = take_wanted(context.selection, name_picker_info);
    const game::UsedName* used = game::find_used_name(context.campaign.names, wanted.id);
    if (used == nullptr) return;
    view.section = NameSection::used;
    view.search = used->name;
    view.opened = used->id;
}

void draw_name_picker(const PanelContext& context, NamePickerView& view) {
    static const std::vector<game::ReadyNameList> none;
    const auto& ready = context.name_lists == nullptr ? none : *context.name_lists;
    const std::vector<NameSource> sources = game::name_sources(ready, context.campaign.names.lists);
    const NameSource* source = chosen_source(sources, view);
    if (source == nullptr) {
        empty_state("Names come from lists, and there is none. Write one of your own or paste one."
        );
        if (primary_button("New list", read_only_reason(context))) ask_new_list(context, view);
        return;
    }
    take_wanted_name(context, view);
    refill_row(context, view, *source);
    read_name_keys(context, view, *source);
    draw_list_choice(sources, *source, view);
    push_font(TextSize::small);
    text_wrapped(Ink::muted, source->about);
    ImGui::PopFont();
    if (view.row.empty()) {
        text_wrapped(Ink::text, game::nothing_left_text(view.left));
        text_wrapped(Ink::muted, "Grow new ones from it, or let similar ones pass too.");
    } else {
        draw_large_name(view.row.front());
        text_wrapped(Ink::muted, name_note(view, *source));
    }
    draw_name_verbs(context, view, *source);
    draw_candidates(view, *source);
    draw_who_and_where(view);
    if (!view.message.empty()) text_wrapped(Ink::muted, view.message);
    draw_last_used(context, view);
    draw_wishes(context, view, *source);
    draw_letters_popup(view, *source);
    draw_name_sections(context, view);
}

} // namespace widgets
