#include "app/look_keeper.h"

#include "app/fonts.h"

#include <imgui.h>
#include <imgui_impl_opengl3.h>

namespace app {

void LookKeeper::update(const Preferences& preferences, float display_scale, Messages& messages) {
    const float scale = static_cast<float>(preferences.text_scale_percent) / 100.0F * display_scale;
    if (scale != scale_) {
        LoadedFonts loaded = load_fonts(*ImGui::GetIO().Fonts, scale);
        ImGui_ImplOpenGL3_DestroyFontsTexture();
        ImGui_ImplOpenGL3_CreateFontsTexture();
        ImGui::GetIO().FontDefault = loaded.fonts.body;
        fonts_ = loaded.fonts;
        scale_ = scale;
        if (!loaded.complaint.empty()) messages.add(std::move(loaded.complaint));
    }
    widgets::Look look;
    look.theme = preferences.theme;
    look.scale = scale;
    look.is_touch = preferences.is_touch;
    look.fonts = fonts_;
    widgets::set_look(look);
    widgets::apply_style(look);
}

} // namespace app
