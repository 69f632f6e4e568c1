// What was chosen in the Print panel, as JSON text.
#pragma once

#include "widgets/print_desk.h"

#include <string>
#include <string_view>
#include <vector>

namespace app {

struct ReadPrintChoices {
    widgets::PrintChoices choices;
    std::vector<std::string> complaints; // one sentence each; what is wrong keeps its default
};

std::string to_json(const widgets::PrintChoices& choices);
ReadPrintChoices print_choices_from_json(std::string_view json);

} // namespace app
