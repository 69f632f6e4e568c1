#include "app/fonts.h"

#include <imgui.h>
#include <imgui_freetype.h>

#include <array>
#include <cmath>
#include <filesystem>

namespace app {

namespace {

constexpr const char* words = "/usr/share/fonts/opentype/b612/B612-Regular.otf";
constexpr const char* strong_words = "/usr/share/fonts/opentype/b612/B612-Bold.otf";
constexpr const char* figures = "/usr/share/fonts/opentype/b612/B612Mono-Regular.otf";
constexpr const char* strong_figures = "/usr/share/fonts/opentype/b612/B612Mono-Bold.otf";
constexpr const char* other_scripts = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

// Latin, Greek, Cyrillic, Hebrew and Arabic letters, and the signs that names and notes use. Names
// in the large sizes need letters as well, so all sizes carry the same.
constexpr std::array<ImWchar, 21> letters{0x20,   0x24F,  0x2B0,  0x5F4,  0x1E00, 0x20BF, 0x2150,
                                          0x218F, 0x2190, 0x21FF, 0x2200, 0x22FF, 0x25A0, 0x25FF,
                                          0x2600, 0x266F, 0x2700, 0x27BF, 0xFFFD, 0xFFFD, 0};
// The spoken sizes show names and numbers only.
constexpr std::array<ImWchar, 7> few_letters{0x20, 0x24F, 0x370, 0x52F, 0x2010, 0x2026, 0};

ImFont* add(ImFontAtlas& atlas, const char* file, float size, const ImWchar* ranges) {
    const bool has_face = std::filesystem::exists(file);
    const bool has_others = std::filesystem::exists(other_scripts);
    ImFontConfig config;
    config.OversampleH = 1;
    config.PixelSnapH = true;
    if (!has_face && !has_others) {
        config.SizePixels = size;
        return atlas.AddFontDefault(&config);
    }
    ImFont* font = atlas.AddFontFromFileTTF(has_face ? file : other_scripts, size, &config, ranges);
    if (has_face && has_others) {
        config.MergeMode = true;
        atlas.AddFontFromFileTTF(other_scripts, size, &config, ranges);
    }
    return font;
}

} // namespace

LoadedFonts load_fonts(ImFontAtlas& atlas, float scale) {
    atlas.Clear();
    atlas.FontBuilderFlags = ImGuiFreeTypeBuilderFlags_LightHinting;
    atlas.Flags |= ImFontAtlasFlags_NoPowerOfTwoHeight;
    const auto size = [scale](float at_scale_1) { return std::round(at_scale_1 * scale); };
    LoadedFonts loaded;
    widgets::Fonts& fonts = loaded.fonts;
    fonts.body = add(atlas, words, size(16.0F), letters.data()); // first: the default
    fonts.small = add(atlas, words, size(14.0F), letters.data());
    fonts.strong = add(atlas, strong_words, size(16.0F), letters.data());
    fonts.name = add(atlas, words, size(20.0F), letters.data());
    fonts.current = add(atlas, strong_words, size(28.0F), few_letters.data());
    fonts.spoken = add(atlas, strong_words, size(44.0F), few_letters.data());
    fonts.numbers = add(atlas, figures, size(16.0F), letters.data());
    fonts.numbers_name = add(atlas, figures, size(20.0F), few_letters.data());
    fonts.numbers_large = add(atlas, strong_figures, size(44.0F), few_letters.data());
    if (!std::filesystem::exists(words) || !std::filesystem::exists(figures))
        loaded.complaint = "The typeface B612 is not installed, so another one is used; "
                           "the package fonts-b612 brings it.";
    else if (!std::filesystem::exists(other_scripts))
        loaded.complaint = "The typeface DejaVu Sans is not installed, so letters of some scripts "
                           "are missing; the package fonts-dejavu-core brings it.";
    return loaded;
}

} // namespace app
