// Files shown by whatever program the system has for them.
#pragma once

#include "base/result.h"

#include <string>

namespace app {

// Asks the desktop to show the file and does not wait for it. Error (not_possible): nothing here
// shows such files; the sentence names the file, which is where it was.
base::Result<base::Nothing> open_with_system(const std::string& file);

} // namespace app
