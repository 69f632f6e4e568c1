// tablewick ask: a question in words, answered on the terminal.
#pragma once

#include "base/result.h"
#include "game/answers.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace app {

struct AskOptions {
    std::string words;    // the question
    std::string campaign; // file; empty: none
    std::optional<game::RulebookChoice> rulebook;
    bool as_json = false;
};

// The arguments behind "ask". Words beginning with one "-" belong to the question ("-1"). An error
// is one sentence for the person.
base::Result<AskOptions> read_ask_options(const std::vector<std::string>& arguments);

// The whole answer as it is printed. A campaign brings its own rulebook, and is only read, as it
// was last saved.
base::Result<std::string> ask(const AskOptions& options, const std::filesystem::path& assets);

} // namespace app
