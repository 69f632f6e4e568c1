// The words of the command line, taken apart. Pure: touches no file and no screen.
#pragma once

#include "base/result.h"
#include "widgets/ui.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace app {

enum class Task { open, create, picture, pictures, verify, rehearse, help, version };

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
};

// The arguments without the name of the program. An error is one sentence for the person.
base::Result<Options> read_options(const std::vector<std::string>& arguments);

// What --help prints.
std::string help_text();

} // namespace app
