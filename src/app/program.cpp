#include "app/program.h"

#include "app/chords.h"
#include "app/controls.h"
#include "app/frame_pacing.h"
#include "app/look_keeper.h"
#include "app/page_texture.h"
#include "app/paths.h"
#include "app/settings_file.h"
#include "app/shell.h"
#include "app/window.h"

#include <glad/gl.h>
#define GLFW_INCLUDE_NONE
#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_impl_glfw.h>
#include <imgui_impl_opengl3.h>
#include <imgui_internal.h>

#include <optional>
#include <random>
#include <utility>

namespace app {

namespace {

// ImGui with its window and its renderer, for as long as the window stands.
class Interface {
public:
    explicit Interface(GLFWwindow* window) {
        ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.LogFilename = nullptr;
        io.ConfigInputTextCursorBlink = false; // a blinking cursor would draw frames for ever
        ImGui_ImplGlfw_InitForOpenGL(window, true);
        ImGui_ImplOpenGL3_Init("#version 330 core");
    }

    ~Interface() {
        ImGui_ImplOpenGL3_Shutdown();
        ImGui_ImplGlfw_Shutdown();
        ImGui::DestroyContext();
    }

    Interface(const Interface&) = delete;
    Interface& operator=(const Interface&) = delete;
};

// What the command line says goes before what was kept.
Settings with_options(Settings settings, const Options& options) {
    Preferences& preferences = settings.preferences;
    preferences.text_scale_percent =
        options.text_scale_percent.value_or(preferences.text_scale_percent);
    preferences.theme = options.theme.value_or(preferences.theme);
    preferences.is_touch = options.is_touch.value_or(preferences.is_touch);
    if (find_scene(options.scene) != nullptr) settings.scenes.current = options.scene;
    return settings;
}

struct Running {
    Window& window;
    Shell& shell;
    LookKeeper& keeper;
    SettingsWriter& writer;
    ControlsFile* controls = nullptr;
    Chords chords{};
    std::string title{};
};

void show_title(Running& running) {
    std::string title = window_title(running.shell.state().campaign.document().view());
    if (title == running.title) return;
    glfwSetWindowTitle(running.window.handle(), title.c_str());
    running.title = std::move(title);
}

void keep_settings(Running& running) {
    Settings& settings = running.shell.state().settings;
    GLFWwindow* handle = running.window.handle();
    const bool is_plain = glfwGetWindowAttrib(handle, GLFW_MAXIMIZED) == GLFW_FALSE &&
                          glfwGetWindowAttrib(handle, GLFW_ICONIFIED) == GLFW_FALSE;
    int width = 0;
    int height = 0;
    glfwGetWindowSize(handle, &width, &height);
    if (is_plain && width >= 320 && height >= 320) {
        settings.preferences.width = width;
        settings.preferences.height = height;
    }
    running.writer.keep(settings);
    std::string complaint = running.writer.take_complaint();
    if (!complaint.empty()) running.shell.state().messages.add(std::move(complaint));
}

void draw_frame(Running& running) {
    ShellState& state = running.shell.state();
    GLFWwindow* handle = running.window.handle();
    // On displays that count in points, the library scales by itself: only the rest is ours.
    int pixels = 0;
    int points = 0;
    glfwGetFramebufferSize(handle, &pixels, nullptr);
    glfwGetWindowSize(handle, &points, nullptr);
    const float inner =
        points > 0 && pixels > 0 ? static_cast<float>(pixels) / static_cast<float>(points) : 1.0F;
    running.keeper.update(
        state.settings.preferences, running.window.display_scale() / inner, state.messages
    );
    ImGui_ImplOpenGL3_NewFrame();
    ImGui_ImplGlfw_NewFrame();
    running.chords.before_frame();
    ImGui::NewFrame();
    running.chords.after_frame();
    running.shell.draw();
    ImGui::Render();
    int height = 0;
    glfwGetFramebufferSize(handle, &pixels, &height);
    glViewport(0, 0, pixels, height);
    glClearColor(0.0F, 0.0F, 0.0F, 1.0F);
    glClear(GL_COLOR_BUFFER_BIT);
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    glfwSwapBuffers(handle);
    if (running.controls != nullptr) running.controls->after_frame();
    show_title(running);
    keep_settings(running);
}

void loop(Running& running) {
    FramePacing pacing;
    GLFWwindow* handle = running.window.handle();
    while (glfwWindowShouldClose(handle) == GLFW_FALSE && !running.shell.state().wants_to_quit) {
        const double before = glfwGetTime();
        const std::optional<double> wait = pacing.wait(before);
        if (!wait.has_value())
            glfwWaitEvents();
        else if (*wait > 0.0)
            glfwWaitEventsTimeout(*wait);
        else
            glfwPollEvents();
        const double now = glfwGetTime();
        // Waking before the time was up means that something happened.
        const bool has_woken = !wait.has_value() || (*wait > 0.0 && now - before < *wait);
        const bool has_input = ImGui::GetCurrentContext()->InputEventsQueue.Size > 0;
        const bool has_news = running.shell.state().campaign.look_after();
        if (has_woken || has_input || has_news) pacing.note_event(now);
        if (!pacing.is_due(now)) continue;
        draw_frame(running);
        pacing.note_frame(glfwGetTime(), widgets::take_frame_wish());
    }
    // A field that is still being typed in is left first, so that its text is kept.
    ImGui::ClearActiveID();
    draw_frame(running);
}

std::uint64_t fresh_seed() {
    std::random_device source;
    return (static_cast<std::uint64_t>(source()) << 32U) ^ source();
}

} // namespace

base::Result<base::Nothing> run_program(const CampaignOpener& open, const Options& options) {
    ReadSettings read = read_settings(config_folder());
    Window::Wish wish;
    wish.width = read.settings.preferences.width;
    wish.height = read.settings.preferences.height;
    auto window = Window::open(wish);
    if (!window.ok()) return window.error();
    auto campaign = open([] { glfwPostEmptyEvent(); });
    if (!campaign.ok()) return campaign.error();
    const Interface interface(window.value()->handle());
    Shell shell(
        *campaign.value(),
        with_options(read.settings, options),
        fresh_seed(),
        {[] { glfwPostEmptyEvent(); }, show_page_image}
    );
    for (std::string& complaint : read.complaints)
        shell.state().messages.add(std::move(complaint));
    SettingsWriter writer(config_folder(), shell.state().settings);
    LookKeeper keeper;
    std::optional<ControlsFile> controls;
    if (!options.controls.empty()) {
        controls.emplace(options.controls);
        ImGui::GetCurrentContext()->TestEngineHookItems = true;
    }
    Running running{
        *window.value(), shell, keeper, writer, controls.has_value() ? &*controls : nullptr};
    loop(running);
    return campaign.value()->finish();
}

} // namespace app
