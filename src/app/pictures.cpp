#include "app/pictures.h"

#include "app/canvas.h"
#include "app/look_keeper.h"
#include "app/page_texture.h"
#include "app/shell.h"
#include "app/window.h"

#include <imgui.h>
#include <imgui_impl_opengl3.h>

#include <filesystem>

namespace app {

namespace {

constexpr int frames_to_settle = 6; // auto-sized windows need two, scrolling to a row two more
constexpr std::uint64_t picture_dice = 20;

struct Picture {
    std::string file;
    std::string scene;
    widgets::ThemeName theme = widgets::ThemeName::dark;
};

class Studio {
public:
    explicit Studio(const Options& options)
        : options_(options), canvas_(options.width, options.height) {
        ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.LogFilename = nullptr;
        io.DisplaySize = {static_cast<float>(options.width), static_cast<float>(options.height)};
        io.DeltaTime = 1.0F / 60.0F;
        ImGui_ImplOpenGL3_Init("#version 330 core");
    }

    ~Studio() {
        ImGui_ImplOpenGL3_Shutdown();
        ImGui::DestroyContext();
    }

    Studio(const Studio&) = delete;
    Studio& operator=(const Studio&) = delete;

    base::Result<base::Nothing> draw(OpenCampaign& campaign, const Picture& picture) {
        Settings settings;
        settings.scenes.current = picture.scene;
        settings.preferences.theme = picture.theme;
        settings.preferences.text_scale_percent = options_.text_scale_percent.value_or(100);
        settings.preferences.is_touch = options_.is_touch.value_or(false);
        Shell shell(campaign, settings, picture_dice, {{}, show_page_image});
        for (int frame = 0; frame < frames_to_settle; ++frame) {
            keeper_.update(settings.preferences, 1.0F, shell.state().messages);
            ImGui_ImplOpenGL3_NewFrame();
            ImGui::NewFrame();
            shell.draw();
            ImGui::Render();
            shell.settle();
        }
        canvas_.draw(ImGui::GetDrawData());
        return canvas_.write_png(picture.file);
    }

private:
    const Options& options_;
    Canvas canvas_;
    LookKeeper keeper_;
};

std::vector<Picture> wanted_pictures(const Options& options) {
    if (options.task == Task::picture)
        return {
            {options.picture,
             options.scene.empty() ? "fight" : options.scene,
             options.theme.value_or(widgets::ThemeName::dark)}};
    std::vector<Picture> pictures;
    for (const SceneInfo& scene : scene_infos)
        for (const auto theme : {widgets::ThemeName::dark, widgets::ThemeName::paper}) {
            const char* word = theme == widgets::ThemeName::dark ? "dark" : "paper";
            const std::string name = std::string(scene.key) + "-" + word + ".png";
            pictures.push_back(
                {(std::filesystem::path(options.picture) / name).string(), scene.key, theme}
            );
        }
    return pictures;
}

} // namespace

base::Result<base::Nothing> draw_pictures(OpenCampaign& campaign, const Options& options) {
    if (options.task == Task::pictures) {
        std::error_code error;
        std::filesystem::create_directories(options.picture, error);
    }
    Window::Wish wish;
    wish.width = 64;
    wish.height = 64;
    wish.is_visible = false;
    auto window = Window::open(wish);
    if (!window.ok()) return window.error();
    Studio studio(options);
    for (const Picture& picture : wanted_pictures(options)) {
        auto drawn = studio.draw(campaign, picture);
        if (!drawn.ok()) return drawn;
    }
    return base::Nothing{};
}

} // namespace app
