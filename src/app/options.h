// The words of the command line, taken apart. Pure: touches no file and no screen.
#pragma once

#include "base/result.h"
#include "print/paper.h"
#include "widgets/ui.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace app {

enum class Task { open, create, picture, pictures, print, verify, rehearse, help, version };

struct Options {
    Task task = Task::open;
    std::string campaign; // empty: the demo
    std::string picture;  // file of one picture, or folder of all of them
    std::string scene;    // key; empty: Fight
    int width = 1280;
    int height = 800;
    std::optional<int> text_scale_percent;
    std::optional<widgets::ThemeName> theme;
    std::optional<bool> is_touch;
    std::string controls;              // file that lists what can be pressed; empty: none
    std::string rules = "four-degree"; // for a new campaign
    int rehearsals = 0;
    std::uint64_t seed = 1;
    std::vector<std::string> pages; // to print: "names", "session-plan:7"
    std::string out;                // file of the printed pages
    print::PrintSetup print_setup;
};

// The arguments without the name of the program. An error is one sentence for the person.
base::Result<Options> read_options(const std::vector<std::string>& arguments);

// What --help prints.
std::string help_text();

} // namespace app
