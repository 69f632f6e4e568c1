#include "app/controls.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <utility>

namespace app {

namespace {

bool is_kept = false;
std::vector<Control> noted; // of the frame under way

} // namespace

void ControlList::keep() {
    is_kept = true;
}

void ControlList::note_item(unsigned id, const Box& box, const char* window) {
    if (!is_kept || id == 0 || box.width < 1.0F || box.height < 1.0F) return;
    noted.push_back({id, {}, box, window});
}

void ControlList::note_label(unsigned id, const char* label) {
    if (!is_kept || label == nullptr) return;
    const auto found = std::find_if(noted.rbegin(), noted.rend(), [id](const Control& control) {
        return control.id == id;
    });
    if (found != noted.rend()) found->label = label;
}

std::vector<Control> ControlList::take() {
    std::vector<Control> all = std::exchange(noted, {});
    const auto nameless = [](const Control& control) { return control.label.empty(); };
    all.erase(std::remove_if(all.begin(), all.end(), nameless), all.end());
    return all;
}

std::string to_json(const std::vector<Control>& controls) {
    nlohmann::json list = nlohmann::json::array();
    for (const Control& control : controls)
        list.push_back(
            {{"label", control.label},
             {"x", control.box.x},
             {"y", control.box.y},
             {"width", control.box.width},
             {"height", control.box.height},
             {"window", control.window}}
        );
    // Labels come from people; what is not UTF-8 must not end the program.
    return list.dump(1, ' ', false, nlohmann::json::error_handler_t::replace) + "\n";
}

ControlsFile::ControlsFile(std::string file) : file_(std::move(file)) {
    ControlList::keep();
}

void ControlsFile::after_frame() {
    std::vector<Control> now = ControlList::take();
    if (now == written_) return;
    const std::string half = file_ + ".new";
    std::ofstream stream(half, std::ios::binary | std::ios::trunc);
    stream << to_json(now);
    stream.close();
    if (!stream || std::rename(half.c_str(), file_.c_str()) != 0) return;
    written_ = std::move(now);
}

} // namespace app
