// The shared vocabulary of all panels: pressed, typed into and read as a person does.
#include "driver.h"
#include "widgets/ui.h"

#include <doctest/doctest.h>

#include <array>
#include <optional>
#include <string>
#include <vector>

using widgets::Ink;

namespace {

// One of everything, and what came of it.
class Sampler : public driver::Screen {
public:
    explicit Sampler(const driver::Settings& settings = {}) : Screen(settings) { frames(3); }

    int pressed = 0;
    int refused = 0;
    int chips = 0;
    bool is_on = false;
    int armor_class = 18;
    std::string note = "mud to the knee";
    std::vector<std::string> committed;
    widgets::TextDraft note_draft;
    widgets::TextDraft area_draft;
    std::string story;
    int hp = 38;
    int hp_max = 52;
    int temp_hp = 5;

protected:
    void draw() override {
        if (widgets::primary_button("Next turn")) pressed += 1;
        if (widgets::button("Delay", "Nobody has the turn.")) refused += 1;
        if (widgets::small_button("Copy")) pressed += 10;
        if (widgets::toggle_button("Half", is_on)) is_on = !is_on;
        if (widgets::chip("frightened 1", Ink::harm, "A status penalty of 1.")) chips += 1;
        if (const auto typed =
                widgets::number_field("##ac", armor_class, 0, 99, widgets::px(80.0F), "AC"))
            armor_class = *typed;
        if (const auto typed = widgets::text_field(
                "##note", note, note_draft, now_seconds(), widgets::px(300.0F)
            )) {
            note = *typed;
            committed.push_back(note);
        }
        if (const auto typed = widgets::text_area(
                "##story",
                story,
                area_draft,
                now_seconds(),
                {widgets::px(300.0F), widgets::px(90.0F)}
            ))
            story = *typed;
        widgets::hp_bar(hp, hp_max, temp_hp, {widgets::px(240.0F), widgets::row_height()});
        widgets::heading("Conditions");
        widgets::empty_state("Every timer of the fight shows here.");
        widgets::text_fitted(Ink::text, long_name, widgets::px(120.0F));
        widgets::complaint("AC is 0 to 99.");
    }

    const std::string long_name = "Ysolde Marr, keeper of the seven ferries";
};

// Buttons that flow over the width of the window.
class Flowing : public driver::Screen {
public:
    explicit Flowing(float width) : Screen({.size = {width, 600.0F}}) { frames(3); }

protected:
    void draw() override {
        widgets::button("Hurt");
        for (const char* verb : {"Heal", "Condition", "Delay", "Ready"}) {
            widgets::same_line_if_fits(widgets::button_width(verb));
            widgets::button(verb);
        }
    }
};

} // namespace

TEST_CASE("ui: a button is pressed once for each press") {
    Sampler ui;
    ui.click("Next turn");
    ui.click("Next turn");
    CHECK(ui.pressed == 2);
    ui.click("Copy");
    CHECK(ui.pressed == 12);
    ui.click("Half");
    CHECK(ui.is_on);
    ui.click("Half");
    CHECK_FALSE(ui.is_on);
    ui.click("frightened 1");
    CHECK(ui.chips == 1);
}

TEST_CASE("ui: what cannot be used now is not pressed and says why") {
    Sampler ui;
    CHECK_FALSE(ui.is_enabled("Delay"));
    ui.click("Delay");
    CHECK(ui.refused == 0);
    ui.hover("Delay");
    CHECK(ui.shows("Nobody has the turn."));
}

TEST_CASE("ui: a chip tells what it does when the pointer rests on it") {
    Sampler ui;
    ui.hover("frightened 1");
    CHECK(ui.shows("A status penalty of 1."));
}

TEST_CASE("ui: every target is 30 px high for the mouse and 44 px for fingers, at any text size") {
    // The driver fails for any target under the minimum; this checks the minimum itself.
    for (const float scale : {0.8F, 1.0F, 2.5F})
        for (const bool is_touch : {false, true}) {
            CAPTURE(scale);
            CAPTURE(is_touch);
            driver::Settings settings;
            settings.scale = scale;
            settings.is_touch = is_touch;
            Sampler ui(settings);
            const float least = (is_touch ? 44.0F : 30.0F) * scale;
            CHECK(ui.item("Next turn").rect.GetHeight() >= least - 0.5F);
            CHECK(ui.item("Half").rect.GetHeight() >= least - 0.5F);
            CHECK(ui.item("##ac").rect.GetHeight() >= least - 0.5F);
            CHECK(ui.item("frightened 1").rect.GetHeight() >= least - 0.5F);
        }
}

TEST_CASE("ui: a number is taken on Enter, and when its field is left") {
    Sampler ui;
    ui.fill("##ac", "21");
    CHECK(ui.armor_class == 21);
    ui.click("##ac");
    ui.key(ImGuiKey_A, ImGuiMod_Ctrl);
    ui.type("23");
    CHECK(ui.armor_class == 21); // still typing
    ui.click("Half");
    CHECK(ui.armor_class == 23);
}

TEST_CASE("ui: nonsense in a number field is refused in one short line, the old value stays") {
    Sampler ui;
    for (const char* nonsense :
         {"1000000000", "99999999999999999999", "-1", "abc", "", "1.5", "NaN"}) {
        CAPTURE(nonsense);
        ui.fill("##ac", nonsense);
        CHECK(ui.armor_class == 18);
        CHECK(ui.seen().find("AC is 0 to 99.") != std::string::npos);
        ui.wait(6.0); // the line goes by itself
        ui.frames(2);
    }
    ui.fill("##ac", "0");
    CHECK(ui.armor_class == 0);
    ui.fill("##ac", "99");
    CHECK(ui.armor_class == 99);
}

TEST_CASE("ui: Escape takes back what was typed into a number field") {
    Sampler ui;
    ui.click("##ac");
    ui.type("7");
    ui.key(ImGuiKey_Escape);
    CHECK(ui.armor_class == 18);
}

TEST_CASE("ui: a text is committed when its field is left") {
    Sampler ui;
    ui.click("##note");
    ui.key(ImGuiKey_End);
    ui.type("!");
    CHECK(ui.committed.empty());
    ui.click("Half");
    REQUIRE(ui.committed.size() == 1);
    CHECK(ui.note == "mud to the knee!");
    ui.click("##note");
    ui.click("Half");
    CHECK(ui.committed.size() == 1); // nothing was changed
}

TEST_CASE("ui: a text is committed a second after typing began, while it is typed on") {
    Sampler ui;
    ui.click("##note");
    ui.key(ImGuiKey_End);
    ui.type("!");
    ui.wait(0.5);
    CHECK(ui.committed.empty());
    ui.wait(0.6);
    REQUIRE(ui.committed.size() == 1);
    CHECK(ui.note == "mud to the knee!");
    ui.type("!");
    ui.wait(1.1);
    CHECK(ui.note == "mud to the knee!!");
    CHECK(ui.note_draft.is_active);
    ui.click("Half");
    CHECK(ui.committed.size() == 2); // all of it was committed already
}

TEST_CASE("ui: a text of any language goes in and comes back") {
    Sampler ui;
    ui.fill("##note", "Zoë — Łódź, Ωμέγα, Борис");
    CHECK(ui.note == "Zoë — Łódź, Ωμέγα, Борис");
}

TEST_CASE("ui: a text that changes elsewhere shows, but not under a hand that types") {
    Sampler ui;
    ui.note = "dry ground";
    ui.frames(2);
    CHECK(ui.seen().find("dry ground") != std::string::npos);
    ui.click("##note");
    ui.key(ImGuiKey_End);
    ui.type("s");
    ui.note = "undone elsewhere";
    ui.frames(2);
    CHECK(ui.seen().find("dry grounds") != std::string::npos);
    ui.click("Half");
    CHECK(ui.note == "dry grounds");
}

TEST_CASE("ui: several lines are kept as lines") {
    Sampler ui;
    // The area has two items of one label (its frame and its inside): the hand goes below the note.
    const ImRect above = ui.item("##note").rect;
    ui.click_at({above.Min.x + 20.0F, above.Max.y + 30.0F});
    ui.type("one");
    ui.key(ImGuiKey_Enter);
    ui.type("two");
    ui.click("Half");
    CHECK(ui.story == "one\ntwo");
}

TEST_CASE("ui: hit points stand as a number beside their bar, temporary ones behind a plus") {
    Sampler ui;
    CHECK(ui.shows("38/52 +5"));
    ui.temp_hp = 0;
    CHECK(ui.shows("38/52"));
    CHECK_FALSE(ui.shows("+5"));
}

TEST_CASE("ui: a bar of hit points bears any numbers") {
    Sampler ui;
    for (const auto& [hp, hp_max, temp] :
         std::vector<std::array<int, 3>>{{0, 0, 0}, {-5, 10, 0}, {900, 10, 50}, {1, 999999, 0}}) {
        ui.hp = hp;
        ui.hp_max = hp_max;
        ui.temp_hp = temp;
        ui.frames(2); // the driver checks that nothing is broken
        CHECK(ui.shows(std::to_string(hp) + "/" + std::to_string(hp_max)));
    }
}

TEST_CASE("ui: a name that is too long is cut, whole in the log of the screen") {
    Sampler ui;
    CHECK(ui.seen().find("seven ferries") == std::string::npos);
    CHECK(ui.seen().find("Ysolde") != std::string::npos);
}

TEST_CASE("ui: headings, empty states and complaints can be read") {
    Sampler ui;
    CHECK(ui.shows("Conditions"));
    CHECK(ui.shows("Every timer of the fight shows here."));
    CHECK(ui.shows("! AC is 0 to 99."));
}

TEST_CASE("ui: buttons go on to a new line when the panel is narrow") {
    Flowing wide(900.0F);
    CHECK(wide.item("Ready").rect.Min.y == wide.item("Hurt").rect.Min.y);
    Flowing narrow(220.0F);
    CHECK(narrow.item("Ready").rect.Min.y > narrow.item("Hurt").rect.Min.y);
    CHECK(narrow.item("Ready").rect.Max.x <= 220.0F);
}

TEST_CASE("ui: of several wishes for a later frame the soonest counts, once") {
    widgets::take_frame_wish();
    CHECK_FALSE(widgets::take_frame_wish().has_value());
    widgets::ask_frame_in(2.0);
    widgets::ask_frame_in(0.5);
    widgets::ask_frame_in(3.0);
    CHECK(widgets::take_frame_wish() == std::optional<double>(0.5));
    CHECK_FALSE(widgets::take_frame_wish().has_value());
}

TEST_CASE("ui: typing asks for the frame in which it is committed") {
    Sampler ui;
    ui.click("##note");
    widgets::take_frame_wish();
    ui.frames(1);
    CHECK_FALSE(widgets::take_frame_wish().has_value()); // a resting cursor asks for nothing
    ui.type("x");
    const auto wish = widgets::take_frame_wish();
    REQUIRE(wish.has_value());
    CHECK(*wish > 0.0);
    CHECK(*wish <= 1.0);
}
