// A text file that the GM names, such as a list of names to take over.
#pragma once

#include "base/result.h"

#include <cstddef>
#include <filesystem>
#include <string>

namespace store {

// More than any list of names that somebody wrote; less than would stop the screen.
inline constexpr std::size_t text_file_bytes_max = 1'000'000;

// The file a GM means: a path that begins with ~/ counts from the home folder.
std::filesystem::path typed_path(const std::string& path);

// The text of the file, in UTF-8 and without a byte order mark; the path is as typed. Errors, one
// sentence each: not_found, cannot_read (a folder, no permission), too_large, bad_text (not UTF-8).
base::Result<std::string> read_text_file(const std::string& path);

// Writes the text whole or not at all; what stood there before is replaced. ~/ as above. Errors
// name the file: cannot_write and what the disk says.
base::Result<base::Nothing> write_text_file(const std::string& path, const std::string& text);

} // namespace store
