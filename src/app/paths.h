// Where things live: configuration and data of the person (XDG Base Directory Specification), and
// the assets of the program.
#pragma once

#include "base/result.h"

#include <filesystem>

namespace app {

// $XDG_CONFIG_HOME/tablewick, default ~/.config/tablewick; not created.
std::filesystem::path config_folder();
// $XDG_DATA_HOME/tablewick, default ~/.local/share/tablewick; not created.
std::filesystem::path data_folder();
// The assets of the source tree the program was built from, or those installed beside it.
std::filesystem::path assets_folder();

// The person's own writable copy of the demo campaign; made now if it is not there yet.
base::Result<std::filesystem::path> own_demo();

} // namespace app
