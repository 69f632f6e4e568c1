// What a press in the Name Picker does.
#include "base/unicode.h"
#include "game/fights.h"
#include "game/name_growing.h"
#include "game/name_keeping.h"
#include "game/name_sound.h"
#include "widgets/name_picker_parts.h"
#include "widgets/read_only.h"

#include <imgui.h>

#include <algorithm>

namespace widgets {

using game::NameClash;
using game::NameSource;
using game::Section;

static constexpr std::size_t row_length = 5; // the name and four more

static game::NameWishes wishes_of(const NamePickerView& view) {
    game::NameWishes wishes;
    for (const auto& [initial, shown] : view.barred)
        wishes.barred.insert(initial);
    wishes.allows_similar = view.allows_similar;
    wishes.passed = view.passed;
    return wishes;
}

static void
count_left(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    const std::int64_t today = game::now(context.campaign).day;
    view.left = game::names_left(
        *source.names,
        view.in_play,
        game::recent_initials(context.campaign.names, today),
        wishes_of(view)
    );
}

const NameSource* chosen_source(const std::vector<NameSource>& sources, NamePickerView& view) {
    const auto found = std::find_if(sources.begin(), sources.end(), [&](const NameSource& source) {
        return source.key == view.list;
    });
    if (found != sources.end()) return &*found;
    if (sources.empty()) return nullptr;
    view.list = sources.front().key;
    view.row.clear();
    view.is_stale = true;
    return &sources.front();
}

// A name in the row is not good any more when it came into play, or when its letter was left out. A
// name that the GM typed stays, whatever it is like.
static bool is_spoilt(const NamePickerView& view, const std::string& name) {
    const NameClash clash = view.in_play.check(name).clash;
    if (clash == NameClash::same) return true;
    if (name == view.typed) return false;
    return (clash != NameClash::none && !view.allows_similar) ||
           view.barred.count(game::initial_of(name)) > 0;
}

static void fill(const PanelContext& context, NamePickerView& view) {
    if (view.row.size() >= row_length) return;
    for (std::string& name :
         game::draw_names(view.left, row_length - view.row.size(), view.row, context.dice))
        view.row.push_back(std::move(name));
}

void refill_row(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    const bool has_changed = view.in_play.follow(context.campaign);
    if (!has_changed && !view.is_stale) return;
    view.is_stale = false;
    view.searched = "\n"; // no search holds it: look again
    std::erase_if(view.row, [&](const std::string& name) { return is_spoilt(view, name); });
    count_left(context, view, source);
    fill(context, view);
}

void next_name(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    view.message.clear();
    if (!view.row.empty()) {
        view.passed.insert(base::folded(view.row.front()));
        view.row.erase(view.row.begin());
    }
    count_left(context, view, source);
    if (view.left.size() == 0 && view.left.passed > 0 && view.row.empty()) {
        for (const std::string& name : *source.names)
            view.passed.erase(base::folded(name));
        view.message = "The list begins again: every name that is left has passed by.";
        count_left(context, view, source);
    }
    fill(context, view);
}

void like_this_name(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    if (view.row.empty()) return;
    view.message.clear();
    const std::string name = view.row.front();
    std::vector<std::string> like =
        game::draw_names_like(view.left, name, row_length, context.dice);
    if (like.empty()) {
        view.message = "Nothing else is left in " + source.title + " that is like " + name + ".";
        return;
    }
    view.message = "Like " + name + ".";
    view.passed.insert(base::folded(name));
    view.row = std::move(like);
}

void bar_initial(NamePickerView& view) {
    if (view.row.empty()) return;
    const std::string& name = view.row.front();
    const std::u32string initial = game::initial_of(name);
    if (initial.empty()) return;
    view.barred[initial] = game::shown_initial(name);
    view.typed.clear();
    view.message.clear();
    view.is_stale = true;
}

void grow_a_row(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    auto grown = game::grow_names(
        *source.names, view.in_play, view.grown, wishes_of(view).barred, row_length, context.dice
    );
    if (!grown.ok()) {
        view.message = grown.error().message;
        return;
    }
    view.row = std::move(grown).value();
    for (const std::string& name : view.row)
        view.grown.insert(base::folded(name));
    view.message = "Grown from " + source.title + ".";
}

void ask_use(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    if (view.row.empty() || context.is_read_only) return;
    const game::NameGiven given{view.row.front(), source.key, source.kind, view.who, view.where};
    context.edits.add(
        {Section::names, Section::registered},
        "Use the name " + given.name + (given.who.empty() ? "" : " for " + given.who),
        [given](game::Campaign& campaign) {
            game::use_name(campaign, given);
            return std::string();
        }
    );
    view.last_used = context.campaign.names.next_id;
    view.message.clear();
    view.who.clear(); // where stays: the next one is often met at the same place
    view.typed.clear();
}

void ask_unuse(const PanelContext& context, const game::UsedName& used) {
    context.edits.add(
        {Section::names, Section::registered},
        "Take back the name " + used.name,
        [id = used.id](game::Campaign& campaign) {
            game::unuse_name(campaign, id);
            return std::string();
        }
    );
}

void ask_favourite(const PanelContext& context, const std::string& name, const std::string& list) {
    const bool is_kept = game::is_favourite_name(context.campaign.names, name);
    context.edits.add(
        &game::Campaign::names,
        is_kept ? "Let go of the name " + name : "Keep the name " + name,
        [name, list](game::NameBook& book) { game::toggle_favourite_name(book, name, list); }
    );
}

void read_name_keys(const PanelContext& context, NamePickerView& view, const NameSource& source) {
    if (!keys_are_free(context)) return;
    const auto pressed = [](ImGuiKey key) { return ImGui::IsKeyPressed(key, false); };
    if (pressed(ImGuiKey_Enter) || pressed(ImGuiKey_KeypadEnter) || pressed(ImGuiKey_Space) ||
        pressed(ImGuiKey_N))
        next_name(context, view, source);
    if (pressed(ImGuiKey_U)) ask_use(context, view, source);
    if (pressed(ImGuiKey_L)) like_this_name(context, view, source);
    if (pressed(ImGuiKey_B)) bar_initial(view);
    if (pressed(ImGuiKey_G)) grow_a_row(context, view, source);
    if (pressed(ImGuiKey_K) && !view.row.empty() && !context.is_read_only)
        ask_favourite(context, view.row.front(), source.key);
}

} // namespace widgets
