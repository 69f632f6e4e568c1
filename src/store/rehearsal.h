// `--rehearse N`: works on a campaign without a window, as the program does with one: document,
// store, journal and snapshots. The crash test kills it at any moment and looks at what is left.
#pragma once

#include <cstdint>
#include <filesystem>
#include <iosfwd>

namespace store {

// Makes `count` varied edits and says, one line each, "made REVISION" when an edit is done in
// memory and "durable REVISION" when the store acknowledges it. Returns the exit status of the
// program.
int run_rehearsal(
    const std::filesystem::path& path,
    const std::filesystem::path& assets_folder,
    int count,
    std::uint64_t seed,
    std::ostream& out
);

} // namespace store
