// The text of NAME.journal: JSON Lines, each with a checksum over what stands before it. Two kinds:
//   {"base":{"revision":70,"size":81234,"crc32":"..."},"crc32":"..."}
//   {"revision":71,"label":"...","written_at":"...","patch":[...],"crc32":"..."}
// A base line names a state of the campaign file that the changes can be replayed on. The first
// line is one; another follows whenever the campaign file is about to be written, so that the
// journal fits the file before and after.
#pragma once

#include "store/document.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

// What identifies the content of a campaign file.
struct FileMark {
    std::uint64_t revision = 0;
    std::uint64_t size = 0;
    std::string crc32;

    bool operator==(const FileMark&) const = default;
};

FileMark mark_of(std::string_view text, std::uint64_t revision);

std::string journal_line(const FileMark& base); // with its line break
std::string journal_line(const JournalEntry& entry);

struct JournalReading {
    std::vector<FileMark> bases;
    std::vector<JournalEntry> entries;
    std::size_t good_bytes = 0; // up to the first line that is not as it was written
    bool is_torn = false;       // the very last line is incomplete or spoiled
    bool is_damaged = false;    // a spoiled line with more behind it
};

JournalReading read_journal(std::string_view text);

} // namespace store
