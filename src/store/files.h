// The one narrow door to the disk. Everything that is saved passes through it, so that tests can
// let every call fail and cut the power at every sync. Errors carry the path and a cause in plain
// words.
#pragma once

#include "base/result.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace store {

using Path = std::filesystem::path;

// What a file looks like from outside; two equal ones are taken for the same content.
struct FileState {
    std::uint64_t size = 0;
    std::int64_t modified_ns = 0;
    std::uint64_t serial = 0; // inode number

    bool operator==(const FileState&) const = default;
};

// An open file to write to. Destroying it closes it without a word; close() reports.
class OpenFile {
public:
    OpenFile() = default;
    virtual ~OpenFile() = default;
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    virtual base::Result<base::Nothing> write(std::string_view text) = 0;
    virtual base::Result<base::Nothing> sync() = 0; // returns when the content is on the disk
    virtual base::Result<base::Nothing> close() = 0;
};

// Held until destroyed, and no longer than the process lives.
class FileLock {
public:
    FileLock() = default;
    virtual ~FileLock() = default;
    FileLock(const FileLock&) = delete;
    FileLock& operator=(const FileLock&) = delete;
};

class Files {
public:
    Files() = default;
    virtual ~Files() = default;
    Files(const Files&) = delete;
    Files& operator=(const Files&) = delete;

    virtual base::Result<std::string> read(const Path& path) = 0; // up to 256 MB
    virtual base::Result<FileState> state(const Path& path) = 0;  // not_found if there is none
    virtual base::Result<std::vector<std::string>> list(const Path& folder) = 0; // names, sorted
    // Empties or makes the file; permissions are those of `like` if it exists.
    virtual base::Result<std::unique_ptr<OpenFile>> create(const Path& path, const Path& like) = 0;
    virtual base::Result<std::unique_ptr<OpenFile>> append(const Path& path) = 0; // must exist
    virtual base::Result<base::Nothing> rename(const Path& from, const Path& to) = 0;
    virtual base::Result<base::Nothing> remove(const Path& path) = 0;
    virtual base::Result<base::Nothing> make_folder(const Path& path) = 0; // fine if it is there
    // Returns when names made, changed or removed in the folder are on the disk.
    virtual base::Result<base::Nothing> sync_folder(const Path& folder) = 0;
    // Error `locked` with the holder's text as message when another process holds it.
    virtual base::Result<std::unique_ptr<FileLock>>
    lock(const Path& path, const std::string& holder) = 0;
};

// The real disk (POSIX).
Files& disk();

// Writes a whole file so that the name always stands for the old or the new content, never for
// anything between: temporary file, sync, rename, sync of the folder.
base::Result<base::Nothing>
write_whole(Files& files, const Path& temporary, const Path& target, std::string_view text);

// The first of these steps alone: a synced file under the temporary name.
base::Result<base::Nothing>
write_synced(Files& files, const Path& temporary, const Path& like, std::string_view text);

base::Error with_path(base::Error error, const Path& path);

} // namespace store
