// Keeps a key and the modifiers it was pressed with in one frame. The library may take the press of
// a key and the release of Ctrl from its queue in the same frame; the chord would be lost then, on
// a machine that draws slower than a hand lets go.
#pragma once

#include <imgui.h>
// The queue of input events is not in the public header.
#include <imgui_internal.h>

namespace app {

class Chords {
public:
    // Before ImGui::NewFrame: holds back what follows the press of a key from the first release of
    // a modifier on.
    void before_frame();
    // After it: gives back what was held, for the next frame.
    void after_frame();

private:
    ImVector<ImGuiInputEvent> held_;
};

} // namespace app
