#include "driver.h"

#include "driver_hooks.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <filesystem>

namespace driver {
namespace {

const ImWchar glyph_ranges[] = {
    0x20, 0x17F, 0x2010, 0x2026, 0x2190, 0x2193, 0x2212, 0x2212, 0x25A0, 0x25FF, 0x2713, 0x2717, 0};

struct TestFonts {
    ImFontAtlas atlas;
    widgets::Fonts fonts;
};

ImFont* load(ImFontAtlas& atlas, const char* file, float size) {
    if (std::filesystem::exists(file))
        return atlas.AddFontFromFileTTF(file, size, nullptr, glyph_ranges);
    return atlas.AddFontDefault();
}

// Built once: the atlas is the slow part of a context.
TestFonts& test_fonts() {
    static TestFonts shared;
    if (!shared.atlas.IsBuilt()) {
        const char* plain = "/usr/share/fonts/opentype/b612/B612-Regular.otf";
        const char* mono = "/usr/share/fonts/opentype/b612/B612Mono-Regular.otf";
        widgets::Fonts& fonts = shared.fonts;
        fonts.body = load(shared.atlas, plain, 16.0F);
        fonts.small = load(shared.atlas, plain, 14.0F);
        fonts.name = load(shared.atlas, plain, 20.0F);
        fonts.current = load(shared.atlas, plain, 28.0F);
        fonts.spoken = load(shared.atlas, plain, 44.0F);
        fonts.strong = fonts.body;
        fonts.numbers = load(shared.atlas, mono, 16.0F);
        fonts.numbers_name = load(shared.atlas, mono, 20.0F);
        fonts.numbers_large = load(shared.atlas, mono, 44.0F);
        shared.atlas.Build();
        shared.atlas.SetTexID(reinterpret_cast<ImTextureID>(1));
    }
    return shared;
}

std::string_view visible_part(std::string_view label) {
    return label.substr(0, label.find("##"));
}

// By the whole label, by what is visible of it, or by the id it makes: "###hp" is "HP 38/52###hp",
// and a combo box, which reports no label, is known by its id alone.
bool fits_label(const Item& item, std::string_view wanted) {
    if (wanted.empty()) return false;
    return item.label == wanted || visible_part(item.label) == wanted ||
           item.id == ImHashStr(wanted.data(), wanted.size(), item.seed);
}

// "Reed Lurker 2" names the row "Reed Lurker 2###row", but not "Reed Lurker 21".
bool names_row(std::string_view label, std::string_view row) {
    if (label.substr(0, row.size()) != row) return false;
    const std::string_view rest = label.substr(row.size());
    return rest.empty() || std::isalnum(static_cast<unsigned char>(rest.front())) == 0;
}

// Letters and digits also send their key, as a keyboard does.
ImGuiKey key_of(char letter) {
    const auto code = static_cast<unsigned char>(letter);
    if (std::isdigit(code) != 0) return static_cast<ImGuiKey>(ImGuiKey_0 + (letter - '0'));
    if (std::isalpha(code) != 0)
        return static_cast<ImGuiKey>(ImGuiKey_A + (std::tolower(code) - 'a'));
    if (letter == ' ') return ImGuiKey_Space;
    return ImGuiKey_None;
}

// A C function with variable arguments, as ImGui asks for one.
void complain(void* /*data*/, const char* format, ...) { // NOLINT(cert-dcl50-cpp)
    FAIL_CHECK("unbalanced push or pop: " << format);
}

} // namespace

Where near(std::string row) {
    return {std::move(row), {}};
}

Where inside(std::string window) {
    return {{}, std::move(window)};
}

Screen::Screen(const Settings& settings) : settings_(settings) {
    TestFonts& fonts = test_fonts();
    context_ = ImGui::CreateContext(&fonts.atlas);
    ImGui::SetCurrentContext(context_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.LogFilename = nullptr;
    io.DisplaySize = settings.size;
    io.DeltaTime = 1.0F / 60.0F;
    io.ConfigMacOSXBehaviors = false;
    io.ConfigInputTrickleEventQueue = true;
    io.BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
    io.FontDefault = fonts.fonts.body;
    io.FontGlobalScale = settings.scale;
    io.ClipboardUserData = this;
    io.GetClipboardTextFn = &Screen::get_clipboard;
    io.SetClipboardTextFn = &Screen::set_clipboard;
    widgets::Look look;
    look.theme = settings.theme;
    look.scale = settings.scale;
    look.is_touch = settings.is_touch;
    look.fonts = fonts.fonts;
    widgets::set_look(look);
    widgets::apply_style(look);
    context_->TestEngineHookItems = true;
}

Screen::~Screen() {
    ImGui::SetCurrentContext(context_);
    ImGui::DestroyContext(context_);
}

const char* Screen::get_clipboard(void* self) {
    return static_cast<Screen*>(self)->clipboard_.c_str();
}

// ImGui's own log arrives here too, in pieces: one for each window that is not a child.
void Screen::set_clipboard(void* self, const char* text) {
    auto* screen = static_cast<Screen*>(self);
    (screen->is_logging_ ? screen->log_ : screen->clipboard_) += text;
}

double Screen::now_seconds() const {
    return now_;
}

void Screen::one_frame(bool is_logging) {
    ImGui::SetCurrentContext(context_);
    now_ += 1.0 / 60.0;
    Recorder::begin(*this);
    ImGui::NewFrame();
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize(settings_.size);
    const ImGuiWindowFlags flags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                   ImGuiWindowFlags_NoSavedSettings |
                                   ImGuiWindowFlags_NoBringToFrontOnFocus;
    ImGui::Begin(name().c_str(), nullptr, flags);
    is_logging_ = is_logging;
    if (is_logging) ImGui::LogToClipboard(0);
    draw();
    if (is_logging) ImGui::LogFinish();
    is_logging_ = false;
    ImGui::End();
    ImGui::ErrorCheckEndFrameRecover(&complain);
    ImGui::EndFrame();
    Recorder::end();
    check_frame();
    ImGui::Render();
    collect_seen();
    after_frame();
}

void Screen::frames(int count) {
    for (int i = 0; i < count; ++i)
        one_frame(false);
}

void Screen::wait(double seconds) {
    now_ += seconds;
    frames(1);
}

void Screen::check_frame() const {
    const float minimum = widgets::row_height() - 0.5F;
    for (const Item& item : items_) {
        const bool is_whole = std::isfinite(item.rect.Min.x) && std::isfinite(item.rect.Min.y) &&
                              std::isfinite(item.rect.Max.x) && std::isfinite(item.rect.Max.y);
        if (!is_whole) FAIL_CHECK("broken rectangle: " << item.label);
        const auto holds = [&](const std::string& part) {
            return item.label.find(part) != std::string::npos;
        };
        const auto& unmeasured = settings_.unmeasured;
        if (item.is_window || item.label.empty() ||
            std::any_of(unmeasured.begin(), unmeasured.end(), holds))
            continue;
        if (item.rect.GetWidth() < minimum || item.rect.GetHeight() < minimum)
            FAIL_CHECK(
                "target too small: '" << item.label << "' " << item.rect.GetWidth() << " x "
                                      << item.rect.GetHeight() << " px, at least "
                                      << widgets::row_height()
            );
        if (!item.is_field && item.caption_width > item.rect.GetWidth() + 0.5F)
            FAIL_CHECK("caption wider than its target: '" << item.label << "'");
    }
    for (std::size_t i = 0; i < items_.size(); ++i) {
        if (items_[i].is_window) continue;
        for (std::size_t k = i + 1; k < items_.size(); ++k) {
            if (items_[k].id != items_[i].id || items_[k].is_window) continue;
            const ImRect& one = items_[i].rect;
            const ImRect& two = items_[k].rect;
            const bool is_same_place = one.Min.x == two.Min.x && one.Min.y == two.Min.y;
            if (!is_same_place)
                FAIL_CHECK("id twice: '" << items_[i].label << "' and '" << items_[k].label << "'");
        }
    }
}

std::vector<const Item*> Screen::matches(std::string_view label, const Where& where) const {
    std::vector<const Item*> found;
    for (const Item& item : items_) {
        if (item.is_window || !fits_label(item, label)) continue;
        // A field of several lines reports itself and its inner window under one id.
        const bool is_known = std::any_of(found.begin(), found.end(), [&item](const Item* other) {
            return other->id == item.id;
        });
        if (is_known) continue;
        if (!where.window.empty() && item.window.find(where.window) == std::string::npos) continue;
        if (!where.row.empty()) {
            const float middle = (item.rect.Min.y + item.rect.Max.y) / 2.0F;
            const bool is_on_line =
                std::any_of(items_.begin(), items_.end(), [&](const Item& other) {
                    return !other.is_window && other.window == item.window &&
                           names_row(other.label, where.row) && other.rect.Min.y <= middle &&
                           middle <= other.rect.Max.y;
                });
            if (!is_on_line) continue;
        }
        found.push_back(&item);
    }
    return found;
}

std::vector<std::string> Screen::labels() const {
    std::vector<std::string> all;
    for (const Item& item : items_)
        if (!item.is_window && !item.label.empty()) all.push_back(item.label);
    return all;
}

Item Screen::find(std::string_view label, const Where& where) {
    one_frame(false);
    std::vector<const Item*> found = matches(label, where);
    const bool is_seen =
        found.size() == 1 && found[0]->seen.GetWidth() > 4.0F && found[0]->seen.GetHeight() > 4.0F;
    if (found.size() < 2 && !is_seen) {
        scroll_to(label, where);
        found = matches(label, where);
    }
    if (found.size() != 1) {
        std::string all;
        for (const std::string& each : labels())
            all += "\n  '" + each + "'";
        FAIL(
            "'" << std::string(label) << "' is on the screen " << found.size() << " times (row '"
                << where.row << "', window '" << where.window << "'). There are:" << all
        );
    }
    return *found[0];
}

// Turns the wheel over the window that holds the item until the item is in sight.
void Screen::scroll_to(std::string_view label, const Where& where) {
    for (int turn = 0; turn < 200; ++turn) {
        one_frame(true);
        const std::vector<const Item*> found = matches(label, where);
        if (found.size() != 1) return;
        const Item wanted = *found[0];
        const ImGuiWindow* window = ImGui::FindWindowByName(wanted.window.c_str());
        if (window == nullptr) return;
        const ImRect view = window->InnerClipRect;
        const float middle = (wanted.rect.Min.y + wanted.rect.Max.y) / 2.0F;
        if (view.Contains(ImVec2(view.GetCenter().x, middle))) break;
        ImGuiIO& io = ImGui::GetIO();
        io.AddMousePosEvent(view.GetCenter().x, view.GetCenter().y);
        one_frame(false);
        io.AddMouseWheelEvent(0.0F, middle < view.Min.y ? 1.0F : -1.0F);
        frames(2);
    }
    frames(1);
}

Item Screen::item(std::string_view label, const Where& where) {
    return find(label, where);
}

bool Screen::has(std::string_view label, const Where& where) {
    one_frame(true);
    return !matches(label, where).empty();
}

bool Screen::is_enabled(std::string_view label, const Where& where) {
    return !find(label, where).is_disabled;
}

// A hand presses a row where no other target lies on it: the middle if that is free.
ImVec2 Screen::free_point(const Item& wanted) const {
    const ImRect& rect = wanted.seen;
    const auto is_free = [&](ImVec2 point) {
        return std::none_of(items_.begin(), items_.end(), [&](const Item& other) {
            return other.id != wanted.id && !other.is_window && !other.label.empty() &&
                   other.window == wanted.window && other.rect.Contains(point) &&
                   other.rect.GetWidth() < wanted.rect.GetWidth();
        });
    };
    for (const float down : {0.5F, 0.25F, 0.75F})
        for (const float along : {0.5F, 0.1F, 0.3F, 0.7F, 0.9F, 0.02F, 0.2F, 0.4F, 0.6F, 0.8F}) {
            const ImVec2 point{
                rect.Min.x + rect.GetWidth() * along, rect.Min.y + rect.GetHeight() * down};
            if (is_free(point)) return point;
        }
    return rect.GetCenter();
}

void Screen::point_at(const Item& wanted) {
    const ImVec2 point = free_point(wanted);
    ImGui::GetIO().AddMousePosEvent(point.x, point.y);
    frames(2);
    if (!wanted.is_disabled && context_->HoveredId != wanted.id && context_->HoveredId != 0)
        FAIL_CHECK("'" << wanted.label << "' is covered by something else");
}

void Screen::press(ImGuiMouseButton button) {
    ImGuiIO& io = ImGui::GetIO();
    io.AddMouseButtonEvent(button, true);
    frames(1);
    io.AddMouseButtonEvent(button, false);
    frames(3);
}

void Screen::click(std::string_view label, const Where& where) {
    point_at(find(label, where));
    press(ImGuiMouseButton_Left);
    now_ += 0.5; // the next click is not taken for a double click
    ImGui::GetIO().MouseDoubleClickTime = 0.0F;
}

void Screen::double_click(std::string_view label, const Where& where) {
    point_at(find(label, where));
    ImGui::GetIO().MouseDoubleClickTime = 0.3F;
    press(ImGuiMouseButton_Left);
    press(ImGuiMouseButton_Left);
}

void Screen::right_click(std::string_view label, const Where& where) {
    point_at(find(label, where));
    press(ImGuiMouseButton_Right);
}

void Screen::click_with(ImGuiKey modifier, std::string_view label, const Where& where) {
    ImGuiIO& io = ImGui::GetIO();
    const Item wanted = find(label, where);
    io.AddKeyEvent(modifier, true);
    frames(1);
    point_at(wanted);
    press(ImGuiMouseButton_Left);
    io.AddKeyEvent(modifier, false);
    frames(1);
}

void Screen::click_at(ImVec2 position) {
    ImGui::GetIO().AddMousePosEvent(position.x, position.y);
    frames(2);
    press(ImGuiMouseButton_Left);
}

void Screen::hover(std::string_view label, const Where& where) {
    point_at(find(label, where));
    frames(40); // longer than the delay of a tooltip
}

void Screen::drag(std::string_view label, ImVec2 by, const Where& where) {
    ImGuiIO& io = ImGui::GetIO();
    const Item wanted = find(label, where);
    point_at(wanted);
    const ImVec2 from = io.MousePos;
    io.AddMouseButtonEvent(ImGuiMouseButton_Left, true);
    frames(1);
    for (int step = 1; step <= 10; ++step) {
        const float part = static_cast<float>(step) / 10.0F;
        io.AddMousePosEvent(from.x + by.x * part, from.y + by.y * part);
        frames(1);
    }
    io.AddMouseButtonEvent(ImGuiMouseButton_Left, false);
    frames(3);
}

void Screen::type(std::string_view text) {
    ImGuiIO& io = ImGui::GetIO();
    const char* at = text.data();
    const char* end = at + text.size();
    while (at < end) {
        unsigned codepoint = 0;
        const int bytes = ImTextCharFromUtf8(&codepoint, at, end);
        const ImGuiKey pressed = bytes == 1 ? key_of(*at) : ImGuiKey_None;
        if (pressed != ImGuiKey_None) io.AddKeyEvent(pressed, true);
        io.AddInputCharacter(codepoint);
        frames(2);
        if (pressed != ImGuiKey_None) io.AddKeyEvent(pressed, false);
        frames(1);
        at += bytes;
    }
    frames(1);
}

void Screen::key(ImGuiKey key, ImGuiKey modifier) {
    ImGuiIO& io = ImGui::GetIO();
    if (modifier != ImGuiKey_None) io.AddKeyEvent(modifier, true);
    frames(1);
    io.AddKeyEvent(key, true);
    frames(2);
    io.AddKeyEvent(key, false);
    if (modifier != ImGuiKey_None) io.AddKeyEvent(modifier, false);
    frames(3);
}

void Screen::scroll(float lines) {
    ImGui::GetIO().AddMouseWheelEvent(0.0F, lines);
    frames(2);
}

void Screen::fill(std::string_view label, std::string_view text, const Where& where) {
    click(label, where);
    key(ImGuiKey_A, ImGuiMod_Ctrl);
    key(ImGuiKey_Delete);
    type(text);
    key(ImGuiKey_Enter);
}

std::string Screen::text() {
    log_.clear();
    one_frame(true);
    return log_;
}

bool Screen::shows(std::string_view wording) {
    return text().find(wording) != std::string::npos || seen_.find(wording) != std::string::npos;
}

} // namespace driver
