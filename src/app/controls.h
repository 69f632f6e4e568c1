// The list of everything on the screen that has a label, for tests and assistive scripts: written
// as JSON into a file whenever it has changed. Off unless asked for on the command line.
#pragma once

#include "app/tiles_layout.h"

#include <string>
#include <vector>

namespace app {

struct Control {
    unsigned id = 0;
    std::string label;
    Box box; // the part in sight, in pixels of the window
    std::string window;

    bool operator==(const Control&) const = default;
};

class ControlList {
public:
    // From now on the list is kept; without it the calls below cost one branch.
    static void keep();
    static void note_item(unsigned id, const Box& box, const char* window);
    static void note_label(unsigned id, const char* label);
    // What the frame that ends now showed.
    static std::vector<Control> take();
};

std::string to_json(const std::vector<Control>& controls);

// Keeps a file in step with the list; errors are ignored, the next change tries again.
class ControlsFile {
public:
    explicit ControlsFile(std::string file);
    void after_frame();

private:
    std::string file_;
    std::vector<Control> written_;
};

} // namespace app
