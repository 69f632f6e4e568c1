// A popup as all panels use it: never larger than the window, closed by Escape or a press beside
// it.
#pragma once

namespace widgets {

// As ImGui::BeginPopup; ImGui::EndPopup when it returns true.
bool begin_popup(const char* name);

} // namespace widgets
