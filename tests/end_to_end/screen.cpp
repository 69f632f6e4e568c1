#include "end_to_end/screen.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <fstream>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace end_to_end {

namespace {

using Environment = std::vector<std::pair<std::string, std::string>>;

// Starts a program; its output goes to `output` when that is not -1.
pid_t start(
    const std::vector<std::string>& words, const Environment& environment, const std::string& log
) {
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child > 0) return child;
    for (const auto& [name, value] : environment)
        setenv(name.c_str(), value.c_str(), 1);
    const int output = open(log.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0644);
    dup2(output, STDOUT_FILENO);
    dup2(output, STDERR_FILENO);
    std::vector<char*> arguments;
    arguments.reserve(words.size() + 1);
    for (const std::string& word : words)
        arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    execvp(arguments[0], arguments.data());
    _exit(127);
}

std::optional<int> ended(pid_t child) {
    int status = 0;
    if (waitpid(child, &status, WNOHANG) != child) return std::nullopt;
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128;
}

std::string visible_part(const std::string& label) {
    return label.substr(0, label.find("##"));
}

} // namespace

bool wait_until(const std::function<bool()>& is_true) {
    using clock = std::chrono::steady_clock;
    const auto deadline = clock::now() + std::chrono::seconds(30);
    while (clock::now() < deadline) {
        if (is_true()) return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return false;
}

Folder::Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "tablewick-XXXXXX").string();
    REQUIRE(mkdtemp(pattern.data()) != nullptr);
    path_ = pattern;
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

Screen::Screen() {
    std::array<int, 2> ends{};
    REQUIRE(pipe(ends.data()) == 0);
    server_ = fork();
    REQUIRE(server_ >= 0);
    if (server_ == 0) {
        close(ends[0]);
        const std::string number = std::to_string(ends[1]);
        const int nowhere = open("/dev/null", O_RDWR);
        dup2(nowhere, STDOUT_FILENO);
        dup2(nowhere, STDERR_FILENO);
        execlp(
            "Xvfb",
            "Xvfb",
            "-displayfd",
            number.c_str(),
            "-screen",
            "0",
            "1280x800x24",
            "-nolisten",
            "tcp",
            nullptr
        );
        _exit(127);
    }
    close(ends[1]);
    char letter = 0;
    while (read(ends[0], &letter, 1) == 1 && letter != '\n')
        display_ += letter;
    close(ends[0]);
    REQUIRE_MESSAGE(!display_.empty(), "Xvfb did not start");
    display_ = ":" + display_;
}

Screen::~Screen() {
    kill(server_, SIGTERM);
    waitpid(server_, nullptr, 0);
}

Program::Program(const Screen& screen, const Folder& folder, const std::filesystem::path& campaign)
    : Program(screen, folder, campaign.empty() ? CommandLine{} : CommandLine{{campaign.string()}}) {
}

Program::Program(const Screen& screen, const Folder& folder, const CommandLine& command_line)
    : display_(screen.display()), controls_(folder.path() / "controls.json"),
      log_(folder.path() / "program.log") {
    std::filesystem::remove(controls_);
    const Environment environment = {
        {"DISPLAY", display_},
        {"WAYLAND_DISPLAY", ""},
        {"LIBGL_ALWAYS_SOFTWARE", "1"},
        // The graphics driver keeps memory and is unloaded before leaks are looked for, so that its
        // leaks have no name to leave them out by. The panel and shell tests look for ours.
        {"ASAN_OPTIONS", "detect_leaks=0"},
        {"XDG_CONFIG_HOME", (folder.path() / "config").string()},
        {"XDG_DATA_HOME", (folder.path() / "data").string()},
    };
    std::vector<std::string> words = {TABLEWICK_BINARY};
    words.insert(words.end(), command_line.words.begin(), command_line.words.end());
    words.insert(words.end(), {"--controls", controls_.string()});
    child_ = start(words, environment, log_.string());
    const bool is_there =
        wait_until([&] { return !is_running() || std::filesystem::exists(controls_); });
    REQUIRE_MESSAGE(is_there, said());
    REQUIRE_MESSAGE(is_running(), said());
}

Program::~Program() {
    kill_it();
}

bool Program::is_running() const {
    if (child_ <= 0) return false;
    siginfo_t news{};
    // Looks without taking the exit code away.
    const int outcome =
        waitid(P_PID, static_cast<id_t>(child_), &news, WEXITED | WNOHANG | WNOWAIT);
    return outcome == 0 && news.si_pid == 0;
}

std::optional<Spot> Program::find(const std::string& label, std::size_t nth) const {
    std::ifstream stream(controls_);
    const nlohmann::json list = nlohmann::json::parse(stream, nullptr, false);
    if (!list.is_array()) return std::nullopt;
    std::vector<Spot> found;
    for (const nlohmann::json& control : list) {
        const std::string name = control.value("label", "");
        const double width = control.value("width", 0.0);
        const double height = control.value("height", 0.0);
        if ((name != label && visible_part(name) != label) || width < 2.0 || height < 2.0) continue;
        found.push_back(
            {static_cast<int>(control.value("x", 0.0) + width / 2),
             static_cast<int>(control.value("y", 0.0) + height / 2)}
        );
    }
    std::stable_sort(found.begin(), found.end(), [](const Spot& one, const Spot& other) {
        return one.y < other.y;
    });
    if (nth >= found.size()) return std::nullopt;
    return found[nth];
}

bool Program::shows(const std::string& label) const {
    return find(label, 0).has_value();
}

bool Program::wait_for(const std::string& label) const {
    return wait_until([&] { return shows(label); });
}

void Program::tool(const std::vector<std::string>& arguments) const {
    std::vector<std::string> words = {"xdotool"};
    words.insert(words.end(), arguments.begin(), arguments.end());
    const pid_t child = start(words, {{"DISPLAY", display_}}, "/dev/null");
    int status = 0;
    waitpid(child, &status, 0);
    REQUIRE(WIFEXITED(status));
    REQUIRE(WEXITSTATUS(status) == 0);
}

void Program::press(const std::string& label, std::size_t nth) {
    // The place must hold still for a moment: what has just opened may still be settling.
    std::optional<Spot> spot;
    const bool is_found = wait_until([&] {
        const std::optional<Spot> now = find(label, nth);
        const bool holds_still = now && spot && now->x == spot->x && now->y == spot->y;
        spot = now;
        return holds_still;
    });
    REQUIRE_MESSAGE(is_found, "nothing on the screen is called " << label);
    tool({"mousemove", std::to_string(spot->x), std::to_string(spot->y)});
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
    tool({"mousedown", "1"});
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
    tool({"mouseup", "1"});
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
}

void Program::key(const std::string& name) const {
    tool({"key", "--delay", "40", name});
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
}

void Program::type(const std::string& text) const {
    tool({"type", "--delay", "40", text});
    std::this_thread::sleep_for(std::chrono::milliseconds(60));
}

void Program::fill(const std::string& label, const std::string& text) {
    press(label);
    key("ctrl+a");
    type(text);
    key("Return");
}

std::string Program::said() const {
    std::ifstream log(log_);
    return {(std::istreambuf_iterator<char>(log)), std::istreambuf_iterator<char>()};
}

bool Program::quit() {
    key("ctrl+q");
    std::optional<int> code;
    wait_until([&] {
        code = ended(child_);
        return code.has_value();
    });
    if (!code) return false;
    child_ = 0;
    CHECK_MESSAGE(*code == 0, said());
    return *code == 0;
}

void Program::kill_it() {
    if (child_ <= 0) return;
    kill(child_, SIGKILL);
    waitpid(child_, nullptr, 0);
    child_ = 0;
}

} // namespace end_to_end
