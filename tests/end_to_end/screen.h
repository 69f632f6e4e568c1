// A screen, a mouse and a keyboard for the real program: a virtual X server, the program as a child
// process, and real input events. What can be pressed is read from the file that --controls keeps.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <sys/types.h>
#include <vector>

namespace end_to_end {

// A folder of its own for one test, removed at the end.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

// The virtual X server; its number is chosen by itself.
class Screen {
public:
    Screen();
    ~Screen();
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;

    const std::string& display() const { return display_; }

private:
    pid_t server_ = 0;
    std::string display_;
};

struct Spot {
    int x = 0;
    int y = 0;
};

// Waits until the question is answered with yes; false after half a minute.
bool wait_until(const std::function<bool()>& is_true);

// The real program on that screen, with folders of its own.
class Program {
public:
    Program(const Screen& screen, const Folder& folder, const std::filesystem::path& campaign);

    // With a command line of its own.
    struct CommandLine {
        std::vector<std::string> words;
    };

    Program(const Screen& screen, const Folder& folder, const CommandLine& command_line);
    ~Program();
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    // Presses the control with this label (or the part before "##"), once it is there. `nth` counts
    // from the top.
    void press(const std::string& label, std::size_t nth = 0);
    bool shows(const std::string& label) const;
    bool wait_for(const std::string& label) const;
    // Keys as X names them: "Return", "ctrl+z", "5".
    void key(const std::string& name) const;
    void type(const std::string& text) const;
    // Clicks into a field, writes over what stands there, and leaves it with Enter.
    void fill(const std::string& label, const std::string& text);
    // Ends it as a person does; true when it went with exit code 0.
    bool quit();
    // Pulls the plug.
    void kill_it();
    bool is_running() const;

private:
    std::string said() const; // what it wrote on its terminal
    std::optional<Spot> find(const std::string& label, std::size_t nth) const;
    void tool(const std::vector<std::string>& arguments) const;

    std::string display_;
    std::filesystem::path controls_;
    std::filesystem::path log_;
    pid_t child_ = 0;
};

} // namespace end_to_end
