// The running notes: the lines so far, what the history offers, and the field that is always in
// reach.
#include "game/date_text.h"
#include "game/fights.h"
#include "game/loot_notes.h"
#include "game/register_keeping.h"
#include "game/registering.h"
#include "widgets/far_press.h"
#include "widgets/kind_ink.h"
#include "widgets/lit_text.h"
#include "widgets/read_only.h"
#include "widgets/session_sheet_parts.h"

#include <imgui.h>
#include <imgui_internal.h>
#include <imgui_stdlib.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

namespace widgets {

using game::NoteKind;
using game::NoteLine;
using game::Section;

namespace {

constexpr std::array note_kinds{
    NoteKind::note, NoteKind::deed, NoteKind::discovery, NoteKind::loot, NoteKind::next};
constexpr std::size_t offers_shown = 3;

std::string when_text(const game::Calendar& calendar, const NoteLine& line) {
    game::Clock clock;
    clock.day = line.day;
    clock.second_of_day = line.second_of_day;
    std::string words = game::date_time_text(calendar, clock);
    if (line.round > 0) words += ", round " + std::to_string(line.round);
    constexpr std::size_t time_at = 11; // "19:04" of the whole time
    if (line.written_at.size() > time_at + 5)
        words += "  (" + line.written_at.substr(time_at, 5) + " UTC)";
    return words;
}

void draw_line_verbs(const SheetOf& of, const NoteLine& line) {
    const std::string id = std::to_string(line.id);
    const auto typed = checked_text(
        "##line " + id,
        line.text,
        of.view.drafts,
        of.context.now_seconds,
        ImGui::GetContentRegionAvail().x,
        check_text
    );
    if (typed.has_value())
        of.context.edits.add(
            &game::Campaign::sessions,
            "Change a note",
            [session = of.session.id, at = line.id, words = *typed](game::Sessions& sessions) {
                game::change_note(sessions, session, at, words);
            },
            "note/" + id
        );
    Flow flow;
    for (const NoteKind kind : note_kinds) {
        const std::string label = std::string(game::note_kind_word(kind)) + "##kind " + id;
        flow.next(button_width(label.c_str()));
        if (toggle_button(label.c_str(), line.kind == kind) && line.kind != kind)
            of.context.edits.add(
                &game::Campaign::sessions,
                std::string("A note is a ") + game::note_kind_word(kind),
                [session = of.session.id, at = line.id, kind](game::Sessions& sessions) {
                    game::change_note_kind(sessions, session, at, kind);
                }
            );
    }
    const std::string remove = "Strike it##" + id;
    flow.next(button_width(remove.c_str()));
    if (button(remove.c_str()))
        of.context.edits.add(
            &game::Campaign::sessions,
            "Strike the note \"" + line.text + "\"",
            [session = of.session.id, at = line.id](game::Sessions& sessions) {
                game::remove_note(sessions, session, at);
            }
        );
    for (const game::Mention& mention : of.view.names.find(line.text)) {
        const game::RegisterEntry* entry =
            game::find_register_entry(of.context.campaign.registered, mention.entry);
        const std::string label = std::string(game::kind_letter(mention.kind)) + "  " +
                                  entry->name + "##to " + id + "/" + std::to_string(mention.begin);
        flow.next(button_width(label.c_str()));
        if (!chip(label.c_str(), ink_of_kind(mention.kind))) continue;
        of.context.selection.wanted_panel = "register";
        of.context.selection.wanted_entry = mention.entry;
    }
}

constexpr const char* to_ledger = "To the ledger";

// Loot that the Treasure Ledger does not have yet goes there with one press, on the line itself.
bool wants_ledger(const SheetOf& of, const NoteLine& line) {
    return line.kind == NoteKind::loot && !of.context.is_read_only &&
           !game::is_loot_taken(of.context.campaign.treasury, line.id);
}

void take_into_ledger(const SheetOf& of, const NoteLine& line) {
    const auto coins = game::coins_of(of.context.campaign.treasury, of.context.prices);
    of.context.edits.add(
        {Section::treasury},
        "Into the ledger: " + line.text,
        [session = of.session.id, note = line.id, coins](game::Campaign& campaign) {
            const auto taken = game::take_loot(campaign, session, note, coins);
            if (!taken.ok()) throw std::runtime_error(taken.error().message);
            return std::string();
        }
    );
}

void draw_note_line(const SheetOf& of, const NoteLine& line, bool is_open_to_change) {
    ImGui::PushID(static_cast<int>(line.id));
    const bool is_opened = is_open_to_change && of.view.opened_line == line.id;
    const bool has_ledger = is_open_to_change && wants_ledger(of, line);
    const float aside =
        has_ledger ? button_width(to_ledger) + ImGui::GetStyle().ItemSpacing.x : 0.0F;
    const float width = ImGui::GetContentRegionAvail().x - aside;
    const float sign = ImGui::CalcTextSize("m").x + px(8.0F);
    const auto mentions = of.view.names.find(line.text);
    push_font(TextSize::small);
    const float small_line = ImGui::GetTextLineHeight();
    ImGui::PopFont();
    const float text_height = lit_text_height(line.text, mentions, width - sign - px(6.0F));
    const float height = std::max(row_height(), text_height + small_line + px(6.0F));
    const ImVec2 at = ImGui::GetCursorPos();
    const std::string label = "##note " + std::to_string(line.id);
    const bool is_pressed = row_ground(label, width, height, is_opened);
    ImGui::SetCursorPos({at.x + px(4.0F), at.y + px(2.0F)});
    text(Ink::accent, game::note_kind_sign(line.kind));
    ImGui::SetCursorPos({at.x + sign, at.y + px(2.0F)});
    lit_text(Ink::text, line.text, mentions, width - sign - px(6.0F));
    ImGui::SetCursorPos({at.x + sign, at.y + px(2.0F) + text_height});
    push_font(TextSize::small);
    text_fitted(Ink::muted, when_text(of.context.campaign.calendar, line), width - sign);
    ImGui::PopFont();
    if (has_ledger) {
        ImGui::SetCursorPos({at.x + width + ImGui::GetStyle().ItemSpacing.x, at.y});
        if (button(to_ledger)) take_into_ledger(of, line);
    }
    ImGui::SetCursorPos({at.x, at.y + height});
    ImGui::Dummy({0.0F, 0.0F});
    if (of.view.wants_line == line.id) {
        ImGui::SetScrollHereY(1.0F);
        of.view.wants_line = base::no_id;
    }
    if (is_pressed && is_open_to_change) {
        of.view.opened_line = is_opened ? base::no_id : line.id;
        of.view.drafts = {};
    }
    if (is_opened && !of.context.is_read_only) draw_line_verbs(of, line);
    ImGui::PopID();
}

void look_for_offers(const SheetOf& of) {
    const auto& lines = of.context.campaign.history.lines;
    const std::uint64_t revision = lines.empty() ? 0 : lines.back().revision;
    if (of.view.offers_at == revision && of.view.offers_for == of.session.id) return;
    of.view.offers_at = revision;
    of.view.offers_for = of.session.id;
    of.view.offers = game::note_offers(of.context.campaign, of.session, offers_shown);
}

void draw_offers(const SheetOf& of) {
    look_for_offers(of);
    for (const game::NoteOffer& offer : of.view.offers) {
        const std::string id = std::to_string(offer.revision);
        const std::string take = "Note it##" + id;
        const std::string aside = "x##aside " + id;
        const float buttons = button_width(take.c_str()) + button_width(aside.c_str()) +
                              3.0F * ImGui::GetStyle().ItemSpacing.x;
        ImGui::AlignTextToFramePadding();
        text_fitted(Ink::muted, offer.text, ImGui::GetContentRegionAvail().x - buttons);
        ImGui::SameLine(ImGui::GetContentRegionMax().x - buttons);
        if (button(take.c_str()))
            of.context.edits.add(
                {Section::sessions},
                "Note: " + offer.text,
                [session = of.session.id,
                 offer,
                 time = std::string(of.context.real_time)](game::Campaign& campaign) {
                    game::take_offer(campaign, session, offer, time);
                    return std::string();
                }
            );
        ImGui::SameLine();
        if (button(aside.c_str()))
            of.context.edits.add(
                &game::Campaign::sessions,
                "Put an offered note aside",
                [session = of.session.id, offer](game::Sessions& sessions) {
                    game::put_offer_aside(sessions, session, offer);
                }
            );
    }
}

// Empties the field after a line was written: it stays active, so that no letter of the next line
// is lost. And what is selected in it is remembered while a button takes the keyboard from it.
int remember_selection(ImGuiInputTextCallbackData* data) {
    auto* view = static_cast<SessionSheetView*>(data->UserData);
    if (std::exchange(view->is_written, false)) data->DeleteChars(0, data->BufTextLen);
    view->selected_from = std::min(data->SelectionStart, data->SelectionEnd);
    view->selected_to = std::max(data->SelectionStart, data->SelectionEnd);
    return 0;
}

void write_typed(const SheetOf& of) {
    game::TypedNote note = game::typed_note(of.view.typed);
    if (note.text.empty()) return;
    if (note.kind == NoteKind::note) note.kind = of.view.kind;
    of.context.edits.add(
        {Section::sessions},
        "Note: " + note.text,
        [session = of.session.id,
         note,
         time = std::string(of.context.real_time)](game::Campaign& campaign) {
            game::write_note(campaign, session, note.kind, note.text, time);
            return std::string();
        }
    );
    of.view.typed.clear();
    of.view.selected_from = of.view.selected_to = 0;
    of.view.kind = NoteKind::note;
}

std::string selected_words(const SessionSheetView& view) {
    const int size = static_cast<int>(view.typed.size());
    const int from = std::clamp(view.selected_from, 0, size);
    const int to = std::clamp(view.selected_to, from, size);
    std::string words =
        view.typed.substr(static_cast<std::size_t>(from), static_cast<std::size_t>(to - from));
    const std::size_t first = words.find_first_not_of(' ');
    if (first == std::string::npos) return {};
    return words.substr(first, words.find_last_not_of(' ') - first + 1);
}

// The typed line as it will read; with words selected, the way into the Register.
void draw_typed(const SheetOf& of) {
    const std::string selected = selected_words(of.view);
    if (!selected.empty() && check_name(selected).empty() &&
        game::find_registered_name(of.context.campaign.registered, selected) == nullptr) {
        Flow flow;
        const std::string words = "Enter \"" + selected + "\" as";
        flow.next(ImGui::CalcTextSize(words.c_str()).x);
        ImGui::AlignTextToFramePadding();
        text(Ink::muted, words);
        constexpr std::array kinds{
            game::Kind::person,
            game::Kind::place,
            game::Kind::creature,
            game::Kind::item,
            game::Kind::faction};
        for (const game::Kind kind : kinds) {
            const std::string label = std::string(game::kind_word(kind)) + "##selected";
            flow.next(button_width(label.c_str()));
            if (!button(label.c_str(), read_only_reason(of.context))) continue;
            of.context.edits.add(
                {Section::registered},
                "Enter " + selected + " in the Register",
                [selected, kind](game::Campaign& campaign) {
                    game::enter(campaign, selected, kind);
                    return std::string();
                }
            );
            of.view.wants_note = true;
        }
        return;
    }
    const auto mentions = of.view.names.find(of.view.typed);
    if (mentions.empty()) {
        text_fitted(
            Ink::muted,
            "Begin with ! for a deed, * for a discovery, $ for loot, ? for later. Select a name to "
            "enter it.",
            ImGui::GetContentRegionAvail().x
        );
        return;
    }
    lit_text(Ink::muted, of.view.typed, mentions, ImGui::GetContentRegionAvail().x);
}

void draw_note_field(const SheetOf& of) {
    const std::string write = "Write";
    const float width = ImGui::GetContentRegionAvail().x - button_width(write.c_str()) -
                        ImGui::GetStyle().ItemSpacing.x;
    if (of.view.wants_note) {
        give_keyboard_to_next_field();
        of.view.wants_note = false;
    }
    ImGui::SetNextItemWidth(width);
    ImGui::BeginDisabled(of.context.is_read_only);
    bool& keeps_active = ImGui::GetIO().ConfigInputTextEnterKeepActive;
    const bool kept_active = std::exchange(keeps_active, true);
    meet_far_press("##typed note");
    const bool is_entered = ImGui::InputTextWithHint(
        "##typed note",
        "what happens now",
        &of.view.typed,
        ImGuiInputTextFlags_EnterReturnsTrue | ImGuiInputTextFlags_CallbackAlways,
        remember_selection,
        &of.view
    );
    keeps_active = kept_active;
    ImGui::EndDisabled();
    ImGui::SameLine();
    std::string why_not = read_only_reason(of.context);
    if (why_not.empty() && game::typed_note(of.view.typed).text.empty())
        why_not = "Type a line first.";
    const bool is_pressed = button(write.c_str(), why_not);
    if (is_entered && why_not.empty()) of.view.is_written = true;
    if (is_pressed) of.view.wants_note = true;
    if ((is_pressed || is_entered) && why_not.empty()) write_typed(of);
}

void draw_kind_of_next(const SheetOf& of) {
    Flow flow;
    for (const NoteKind kind : note_kinds) {
        const std::string label = std::string(game::note_kind_word(kind)) + "##next";
        flow.next(button_width(label.c_str()));
        if (!toggle_button(label.c_str(), of.view.kind == kind)) continue;
        of.view.kind = kind;
        of.view.wants_note = true;
    }
}

void draw_writing(const SheetOf& of) {
    draw_note_field(of);
    draw_typed(of);
}

} // namespace

void draw_note_lines(const SheetOf& of, const game::Session& session, bool is_open_to_change) {
    if (session.lines.empty()) {
        text_wrapped(Ink::muted, "Nothing is written yet.");
        return;
    }
    for (const NoteLine& line : session.lines)
        draw_note_line(of, line, is_open_to_change);
}

void draw_sheet_notes(const SheetOf& of) {
    look_for_offers(of);
    const ImGuiStyle& style = ImGui::GetStyle();
    const float row = row_height() + style.ItemSpacing.y;
    const float rows = 2.0F + static_cast<float>(of.view.offers.size());
    const float foot = rows * row + 2.0F * ImGui::GetTextLineHeightWithSpacing();
    const float over = ImGui::GetContentRegionAvail().y - foot;
    // Where the panel is low, what is written now comes first: it must never be scrolled to.
    const bool is_low = over < 3.0F * row;
    if (is_low) draw_writing(of);
    const float room = std::max(over, 3.0F * row);
    if (ImGui::BeginChild("lines", {0.0F, room})) {
        draw_note_lines(of, of.session, true);
        ImGui::Dummy({0.0F, 0.0F});
        if (of.view.lines_seen != of.session.lines.size()) {
            ImGui::SetScrollHereY(1.0F);
            of.view.lines_seen = of.session.lines.size();
        }
    }
    ImGui::EndChild();
    ImGui::BeginDisabled(of.context.is_read_only);
    draw_offers(of);
    draw_kind_of_next(of);
    ImGui::EndDisabled();
    if (!is_low) draw_writing(of);
}

} // namespace widgets
