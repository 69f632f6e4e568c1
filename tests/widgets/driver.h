// A hand and an eye for panel tests: a Dear ImGui context without window or renderer, input only
// through its event queue, items found by their label as ImGui's own test hooks report them.
// Screen is the hand and the eye; PanelDriver puts one panel and a real campaign document under it.
// After every frame it checks: no id twice, no target under the minimum size, no caption wider than
// its button, no broken rectangle, pushes and pops balanced.
#pragma once

#include "game/campaign.h"
#include "rules/dice.h"
#include "rules/rulebook.h"
#include "store/document.h"
#include "widgets/panel.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace driver {

// One item as drawn in the last frame.
struct Item {
    ImGuiID id = 0;
    ImGuiID seed = 0; // of the id stack: with a label it makes the id
    ImRect rect;
    ImRect seen; // the part inside the clip rectangle of its window
    std::string label;
    std::string window;
    bool is_window = false;
    bool is_disabled = false;
    bool is_checked = false;
    bool is_field = false;      // text is typed into it
    float caption_width = 0.0F; // of the visible part of the label, in the font in force
};

// Narrows a label that stands on the screen more than once: on the same line as an item whose label
// begins with `row`, in a window whose name contains `window`.
struct Where {
    std::string row;
    std::string window;
};

Where near(std::string row);
Where inside(std::string window);

struct Settings {
    ImVec2 size{1280.0F, 800.0F};
    float scale = 1.0F;
    bool is_touch = false;
    widgets::ThemeName theme = widgets::ThemeName::dark;
    // Items whose label holds one of these are not measured: signs without a caption, captions cut
    // on purpose, gaps that are dragged.
    std::vector<std::string> unmeasured{};
};

class Screen {
public:
    explicit Screen(const Settings& settings);
    virtual ~Screen();
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;

    // What a hand does. A label that is not on the screen exactly once fails the test and prints
    // the labels that are. Items scrolled out of sight are scrolled to with the wheel first.
    void click(std::string_view label, const Where& where = {});
    void double_click(std::string_view label, const Where& where = {});
    void right_click(std::string_view label, const Where& where = {});
    void click_with(ImGuiKey modifier, std::string_view label, const Where& where = {});
    void hover(std::string_view label, const Where& where = {});
    void drag(std::string_view label, ImVec2 by, const Where& where = {});
    void click_at(ImVec2 position);
    void type(std::string_view text); // as a keyboard does: keys and characters
    void key(ImGuiKey key, ImGuiKey modifier = ImGuiKey_None);
    void scroll(float lines); // under the pointer; positive: up
    // Click into a field, replace what stands there, leave it with Enter.
    void fill(std::string_view label, std::string_view text, const Where& where = {});
    void frames(int count);
    void wait(double seconds); // one frame that this much time has passed before

    // What an eye sees.
    std::string text();                   // everything in the panel, scrolled away or not
    std::string seen();                   // the glyphs painted in the last frame, line by line
    bool shows(std::string_view wording); // in text() or seen()
    bool has(std::string_view label, const Where& where = {});
    bool is_enabled(std::string_view label, const Where& where = {});
    Item item(std::string_view label, const Where& where = {});
    std::vector<std::string> labels() const;
    double now_seconds() const;

protected:
    virtual void draw() = 0; // one panel, inside a window that fills the display

    virtual void after_frame() {} // edits are carried out here

    virtual std::string name() const { return "panel"; }

private:
    friend struct Recorder;
    void one_frame(bool is_logging);
    void check_frame() const;
    std::vector<const Item*> matches(std::string_view label, const Where& where) const;
    Item find(std::string_view label, const Where& where);
    void scroll_to(std::string_view label, const Where& where);
    ImVec2 free_point(const Item& item) const;
    void point_at(const Item& item);
    void press(ImGuiMouseButton button);
    void collect_seen();

    ImGuiContext* context_ = nullptr;
    Settings settings_;
    std::vector<Item> items_;
    std::string log_;
    std::string clipboard_;
    std::string seen_;
    bool is_logging_ = false;
    double now_ = 0.0;

    static const char* get_clipboard(void* self);
    static void set_clipboard(void* self, const char* text);
};

// One panel over a real document. The view, the selection and the dice are open to the test; game
// state changes through the screen only.
template <class View>
class PanelDriver : public Screen {
public:
    using Draw = void (*)(const widgets::PanelContext&, View&);

    PanelDriver(
        game::Campaign campaign,
        rules::Rulebook book,
        Draw draw_panel,
        const Settings& settings = {}
    )
        : Screen(settings), document(std::move(campaign)), rulebook(std::move(book)),
          draw_panel_(draw_panel) {
        document.set_time_source([] { return std::string("2026-01-31T19:04:05Z"); });
        frames(3);
    }

    const game::Campaign& campaign() const { return document.view(); }

    const game::Encounter& encounter() const { return document.view().encounter; }

    const game::Combatant& combatant(std::string_view wanted) const {
        static const game::Combatant nobody{};
        for (const game::Combatant& combatant : encounter().combatants)
            if (combatant.name == wanted) return combatant;
        return nobody; // its id is base::no_id
    }

    void undo() {
        document.undo();
        frames(2);
    }

    void redo() {
        document.redo();
        frames(2);
    }

    // The label of the last edit, as the GM reads it in the history; empty before the first.
    std::string last_edit() const { return document.undo_label(); }

    store::CampaignDocument document;
    rules::Rulebook rulebook;
    rules::Dice dice{20};
    widgets::Selection selection;
    View view{};
    bool is_read_only = false;
    bool has_keyboard = true;
    std::vector<game::LibraryCreature> library; // ready creatures of the rulebook
    rules::PriceBook prices;
    std::vector<game::ReadyNameList> name_lists;                            // ready lists of names
    std::function<base::Result<std::string>(const std::string&)> read_text; // files within reach
    const game::Climates* climates = nullptr;
    const game::Reference* reference = nullptr;
    std::vector<game::Calendar> calendars; // ready ones
    widgets::PrintDesk* print_desk = nullptr;
    std::string last_error; // of an edit that was refused

protected:
    void draw() override {
        const widgets::PanelContext panel{
            .campaign = document.view(),
            .rulebook = rulebook,
            .dice = dice,
            .selection = selection,
            .edits = edits_,
            .now_seconds = now_seconds(),
            .is_read_only = is_read_only,
            .has_keyboard = has_keyboard,
            .library = &library,
            .real_time = "2026-01-31T19:04:05Z",
            .name_lists = &name_lists,
            .read_text = read_text ? &read_text : nullptr,
            .climates = climates,
            .prices = &prices,
            .reference = reference,
            .calendars = &calendars,
            .print_desk = print_desk};
        draw_panel_(panel, view);
    }

    void after_frame() override {
        const base::Result<base::Nothing> result = document.carry_out(edits_);
        if (!result.ok()) last_error = result.error().message;
    }

private:
    game::Edits edits_;
    Draw draw_panel_;
};

} // namespace driver
