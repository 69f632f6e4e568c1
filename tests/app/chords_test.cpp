#include "app/chords.h"

#include <doctest/doctest.h>

namespace {

// A context without a window; drawing needs no more than its fonts.
class Context {
public:
    Context() {
        ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.DisplaySize = {640.0F, 480.0F};
        io.Fonts->Build();
    }

    ~Context() { ImGui::DestroyContext(); }

    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;

    // One frame; was Ctrl+Q pressed in it?
    bool frame() {
        chords_.before_frame();
        ImGui::NewFrame();
        chords_.after_frame();
        const bool is_chord = ImGui::GetIO().KeyCtrl && ImGui::IsKeyPressed(ImGuiKey_Q, false);
        ImGui::EndFrame();
        return is_chord;
    }

private:
    app::Chords chords_;
};

void press(ImGuiKey key, bool is_down) {
    ImGui::GetIO().AddKeyEvent(key, is_down);
}

} // namespace

TEST_CASE("bug: Ctrl+Q was lost when Ctrl was let go within the frame that saw the Q") {
    Context context;
    press(ImGuiKey_LeftCtrl, true);
    press(ImGuiMod_Ctrl, true);
    CHECK_FALSE(context.frame());
    press(ImGuiKey_Q, true);
    press(ImGuiKey_LeftCtrl, false);
    press(ImGuiMod_Ctrl, false);
    press(ImGuiKey_Q, false);
    CHECK(context.frame());
    CHECK_FALSE(context.frame());
    CHECK_FALSE(ImGui::GetIO().KeyCtrl);
    context.frame();
    CHECK_FALSE(ImGui::IsKeyDown(ImGuiKey_Q));
}

TEST_CASE("chords: a key that follows the release of Ctrl is no chord") {
    Context context;
    press(ImGuiKey_LeftCtrl, true);
    press(ImGuiMod_Ctrl, true);
    context.frame();
    press(ImGuiKey_LeftCtrl, false);
    press(ImGuiMod_Ctrl, false);
    press(ImGuiKey_Q, true);
    CHECK_FALSE(context.frame());
    CHECK(ImGui::IsKeyDown(ImGuiKey_Q));
}
