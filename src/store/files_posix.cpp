#include "store/files.h"
#include "store/json_text.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace store {

using base::Error;
using base::ErrorKind;
using base::Nothing;
using base::Result;

namespace {

// The cause in words a person can act on; the rest is left to the system's own texts.
std::string cause_of(int code) {
    switch (code) {
    case ENOSPC:
    case EDQUOT: return "The disk is full.";
    case EROFS: return "The disk is read-only.";
    case EACCES:
    case EPERM: return "Writing is not allowed there.";
    case ENOENT:
    case ENOTDIR: return "The file or its folder is gone.";
    case EIO: return "The disk reports an error.";
    case ENAMETOOLONG: return "The name is too long.";
    case EISDIR: return "This is a folder.";
    default: return std::generic_category().message(code) + ".";
    }
}

Error write_error(int code, const Path& path) {
    return with_path({ErrorKind::cannot_write, cause_of(code), {}, {}}, path);
}

Error read_error(int code, const Path& path) {
    const bool is_missing = code == ENOENT || code == ENOTDIR;
    const std::string text = is_missing       ? "There is no such file."
                             : code == EACCES ? "Reading is not allowed there."
                                              : cause_of(code);
    return with_path(
        {is_missing ? ErrorKind::not_found : ErrorKind::cannot_read, text, {}, {}}, path
    );
}

// Calls again when a signal interrupted.
template <class Call>
auto insist(Call call) {
    auto outcome = call();
    while (outcome < 0 && errno == EINTR)
        outcome = call();
    return outcome;
}

class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}

    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }

    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    bool is_open() const { return number_ >= 0; }

    int number() const { return number_; }

    int release() { return std::exchange(number_, -1); }

private:
    int number_;
};

FileState state_of(const struct stat& info) {
    constexpr std::int64_t ns_per_second = 1'000'000'000;
    FileState state;
    state.size = static_cast<std::uint64_t>(info.st_size);
    state.modified_ns = std::int64_t{info.st_mtim.tv_sec} * ns_per_second + info.st_mtim.tv_nsec;
    state.serial = info.st_ino;
    return state;
}

class PosixFile : public OpenFile {
public:
    PosixFile(int descriptor, Path path) : descriptor_(descriptor), path_(std::move(path)) {}

    Result<Nothing> write(std::string_view text) override {
        while (!text.empty()) {
            const ssize_t written =
                insist([&] { return ::write(descriptor_.number(), text.data(), text.size()); });
            if (written < 0) return write_error(errno, path_);
            text.remove_prefix(static_cast<std::size_t>(written));
        }
        return Nothing{};
    }

    // fdatasync: the size is part of what it syncs, only the times are not.
    Result<Nothing> sync() override {
        if (insist([&] { return ::fdatasync(descriptor_.number()); }) != 0)
            return write_error(errno, path_);
        return Nothing{};
    }

    Result<Nothing> close() override {
        const int number = descriptor_.release();
        if (number >= 0 && ::close(number) != 0 && errno != EINTR) return write_error(errno, path_);
        return Nothing{};
    }

private:
    Descriptor descriptor_;
    Path path_;
};

class PosixLock : public FileLock {
public:
    PosixLock(int descriptor, Path path) : descriptor_(descriptor), path_(std::move(path)) {}

    // The name goes while the lock is still held; whoever opened it meanwhile notices that it is no
    // longer the file of that name.
    ~PosixLock() override { ::unlink(path_.c_str()); }

private:
    Descriptor descriptor_;
    Path path_;
};

Result<std::string> read_all(int descriptor, const Path& path) {
    std::string text;
    std::array<char, 1 << 16> block{};
    for (;;) {
        const ssize_t size = insist([&] { return ::read(descriptor, block.data(), block.size()); });
        if (size < 0) return read_error(errno, path);
        if (size == 0) return text;
        text.append(block.data(), static_cast<std::size_t>(size));
        if (const auto fits = check_size(text.size(), path.string()); !fits) return fits.error();
    }
}

class PosixFiles : public Files {
public:
    Result<std::string> read(const Path& path) override {
        const Descriptor file(insist([&] { return ::open(path.c_str(), O_RDONLY | O_CLOEXEC); }));
        if (!file.is_open()) return read_error(errno, path);
        return read_all(file.number(), path);
    }

    Result<FileState> state(const Path& path) override {
        struct stat info {};

        if (::stat(path.c_str(), &info) != 0) return read_error(errno, path);
        return state_of(info);
    }

    Result<std::vector<std::string>> list(const Path& folder) override {
        std::vector<std::string> names;
        std::error_code problem;
        std::filesystem::directory_iterator entry(folder, problem);
        while (!problem && entry != std::filesystem::directory_iterator()) {
            names.push_back(entry->path().filename().string());
            entry.increment(problem);
        }
        if (problem) return read_error(problem.value(), folder);
        std::sort(names.begin(), names.end());
        return names;
    }

    Result<std::unique_ptr<OpenFile>> create(const Path& path, const Path& like) override {
        constexpr mode_t usual_permissions = 0666;
        constexpr mode_t permission_bits = 0777;
        auto opened = open_file(path, O_CREAT | O_TRUNC, usual_permissions);

        struct stat info {};

        // Keeping the permissions is a courtesy; a disk that knows none is no reason to stop.
        if (opened && !like.empty() && ::stat(like.c_str(), &info) == 0)
            static_cast<void>(::chmod(path.c_str(), info.st_mode & permission_bits));
        return opened;
    }

    Result<std::unique_ptr<OpenFile>> append(const Path& path) override {
        return open_file(path, O_APPEND, 0);
    }

    Result<Nothing> rename(const Path& from, const Path& to) override {
        if (::rename(from.c_str(), to.c_str()) != 0) return write_error(errno, to);
        return Nothing{};
    }

    Result<Nothing> remove(const Path& path) override {
        if (::unlink(path.c_str()) != 0 && errno != ENOENT) return write_error(errno, path);
        return Nothing{};
    }

    Result<Nothing> make_folder(const Path& path) override {
        constexpr mode_t permissions = 0777;
        if (::mkdir(path.c_str(), permissions) != 0 && errno != EEXIST)
            return write_error(errno, path);
        return Nothing{};
    }

    Result<Nothing> sync_folder(const Path& folder) override {
        const Path named = folder.empty() ? Path(".") : folder;
        const Descriptor opened(insist([&] {
            return ::open(named.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
        }));
        if (!opened.is_open()) return write_error(errno, named);
        // Some file systems cannot sync a folder and say so with EINVAL; there is nothing better.
        if (insist([&] { return ::fsync(opened.number()); }) != 0 && errno != EINVAL)
            return write_error(errno, named);
        return Nothing{};
    }

    Result<std::unique_ptr<FileLock>> lock(const Path& path, const std::string& holder) override {
        constexpr mode_t permissions = 0666;
        for (;;) {
            Descriptor file(insist([&] {
                return ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, permissions);
            }));
            if (!file.is_open()) return write_error(errno, path);
            if (insist([&] { return ::flock(file.number(), LOCK_EX | LOCK_NB); }) != 0) {
                if (errno != EWOULDBLOCK) return write_error(errno, path);
                const auto text = read_all(file.number(), path);
                return with_path({ErrorKind::locked, text ? text.value() : "", {}, {}}, path);
            }

            struct stat held {};

            struct stat named {};

            const bool is_current = ::fstat(file.number(), &held) == 0 &&
                                    ::stat(path.c_str(), &named) == 0 &&
                                    held.st_ino == named.st_ino;
            if (!is_current) continue; // its last holder removed the name just now
            static_cast<void>(::ftruncate(file.number(), 0));
            static_cast<void>(::write(file.number(), holder.data(), holder.size()));
            return std::unique_ptr<FileLock>(std::make_unique<PosixLock>(file.release(), path));
        }
    }

private:
    static Result<std::unique_ptr<OpenFile>>
    open_file(const Path& path, int flags, mode_t permissions) {
        const int number =
            insist([&] { return ::open(path.c_str(), O_WRONLY | O_CLOEXEC | flags, permissions); });
        if (number < 0) return write_error(errno, path);
        return std::unique_ptr<OpenFile>(std::make_unique<PosixFile>(number, path));
    }
};

} // namespace

Files& disk() {
    static PosixFiles files;
    return files;
}

} // namespace store
