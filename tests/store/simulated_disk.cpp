#include "store/simulated_disk.h"

namespace simulated {

using base::Error;
using base::ErrorKind;
using base::Nothing;
using base::Result;
using store::Path;

namespace {

using Guard = std::lock_guard<std::recursive_mutex>;

Error failure(const Path& path, const std::string& text) {
    return store::with_path({ErrorKind::cannot_write, text, {}, {}}, path);
}

Error missing(const Path& path) {
    return store::with_path({ErrorKind::not_found, "There is no such file.", {}, {}}, path);
}

} // namespace

class Disk::Handle : public store::OpenFile {
public:
    Handle(Disk& disk, std::shared_ptr<File> file, Path path)
        : disk_(disk), file_(std::move(file)), path_(std::move(path)) {}

    // A failing write leaves half of the text behind, as a full disk does.
    Result<Nothing> write(std::string_view text) override {
        const Guard guard(disk_.mutex_);
        auto counted = disk_.count(Call::write, path_);
        const std::string_view part = counted ? text : text.substr(0, text.size() / 2);
        if (!disk_.is_cut_) file_->pending.emplace_back(part);
        file_->modified = ++disk_.clock_;
        return counted;
    }

    Result<Nothing> sync() override {
        const Guard guard(disk_.mutex_);
        auto counted = disk_.count_sync(Call::sync, path_);
        if (!counted) return counted;
        file_->durable = file_->content();
        file_->pending.clear();
        file_->is_emptied = false;
        return Nothing{};
    }

    Result<Nothing> close() override { return Nothing{}; }

private:
    Disk& disk_;
    std::shared_ptr<File> file_;
    Path path_;
};

class Disk::Lock : public store::FileLock {
public:
    Lock(Disk& disk, std::string name) : disk_(disk), name_(std::move(name)) {}

    ~Lock() override {
        const Guard guard(disk_.mutex_);
        disk_.locks_.erase(name_);
    }

private:
    Disk& disk_;
    std::string name_;
};

std::string Disk::File::content() const {
    std::string text = is_emptied ? std::string() : durable;
    for (const std::string& piece : pending)
        text += piece;
    return text;
}

void Disk::fail_at(Call call, int n) {
    const Guard guard(mutex_);
    failing_ = call;
    calls_to_fail_ = n;
    keeps_failing_ = false;
    has_failed_ = false;
}

void Disk::keep_failing() {
    const Guard guard(mutex_);
    keeps_failing_ = true;
}

bool Disk::has_failed() const {
    const Guard guard(mutex_);
    return has_failed_;
}

Result<Nothing> Disk::count(Call call, const Path& path) {
    if (is_cut_) return failure(path, "The power is off.");
    const bool is_meant = failing_ == Call::any || failing_ == call;
    if (!is_meant || calls_to_fail_ == 0) return Nothing{};
    if (calls_to_fail_ == 1) {
        has_failed_ = true;
        if (!keeps_failing_) calls_to_fail_ = 0;
        return failure(path, "The disk is full.");
    }
    calls_to_fail_ -= 1;
    return Nothing{};
}

Result<Nothing> Disk::count_sync(Call call, const Path& path) {
    if (auto counted = count(call, path); !counted) return counted;
    if (syncs_to_cut_ > 0 && --syncs_to_cut_ == 0) {
        is_cut_ = true;
        return failure(path, "The power is off.");
    }
    return Nothing{};
}

void Disk::restore_power(std::uint64_t seed) {
    const Guard guard(mutex_);
    std::mt19937_64 random(seed);
    names_ = durable_names_;
    for (auto& [name, file] : names_) {
        std::string text = file->durable;
        if (file->is_emptied && random() % 2 == 0) text.clear();
        for (std::string piece : file->pending) {
            switch (random() % 4) {
            case 0: text += piece; break;
            case 1: break;
            case 2: text += piece.substr(0, random() % (piece.size() + 1)); break;
            default:
                for (char& byte : piece)
                    if (random() % 8 == 0) byte = static_cast<char>(random());
                text += piece;
            }
        }
        *file = {text, {}, false, file->serial, file->modified};
    }
    locks_.clear();
    is_cut_ = false;
    syncs_to_cut_ = 0;
}

std::string Disk::content(const Path& path) const {
    const Guard guard(mutex_);
    const auto found = names_.find(path.string());
    return found == names_.end() ? std::string() : found->second->content();
}

void Disk::put(const Path& path, const std::string& content) {
    const Guard guard(mutex_);
    auto file = std::make_shared<File>();
    file->durable = content;
    file->serial = next_serial_++;
    file->modified = ++clock_;
    names_[path.string()] = file;
    durable_names_[path.string()] = file;
}

std::vector<std::string> Disk::names() const {
    const Guard guard(mutex_);
    std::vector<std::string> all;
    for (const auto& [name, file] : names_)
        all.push_back(name);
    return all;
}

Result<std::string> Disk::read(const Path& path) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::read, path); !counted) return counted.error();
    const auto found = names_.find(path.string());
    if (found == names_.end()) return missing(path);
    return found->second->content();
}

Result<store::FileState> Disk::state(const Path& path) {
    const Guard guard(mutex_);
    if (is_cut_) return failure(path, "The power is off.");
    const auto found = names_.find(path.string());
    if (found == names_.end()) return missing(path);
    const File& file = *found->second;
    return store::FileState{file.content().size(), file.modified, file.serial};
}

Result<std::vector<std::string>> Disk::list(const Path& folder) {
    const Guard guard(mutex_);
    if (is_cut_) return failure(folder, "The power is off.");
    std::vector<std::string> all;
    for (const auto& [name, file] : names_)
        if (Path(name).parent_path() == folder) all.push_back(Path(name).filename().string());
    return all;
}

Result<std::unique_ptr<store::OpenFile>> Disk::create(const Path& path, const Path& /*like*/) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::create, path); !counted) return counted.error();
    auto& file = names_[path.string()];
    if (file == nullptr) {
        file = std::make_shared<File>();
        file->serial = next_serial_++;
    }
    file->pending.clear();
    file->is_emptied = true;
    file->modified = ++clock_;
    return std::unique_ptr<store::OpenFile>(std::make_unique<Handle>(*this, file, path));
}

Result<std::unique_ptr<store::OpenFile>> Disk::append(const Path& path) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::create, path); !counted) return counted.error();
    const auto found = names_.find(path.string());
    if (found == names_.end()) return missing(path);
    return std::unique_ptr<store::OpenFile>(std::make_unique<Handle>(*this, found->second, path));
}

Result<Nothing> Disk::rename(const Path& from, const Path& to) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::rename, to); !counted) return counted;
    const auto found = names_.find(from.string());
    if (found == names_.end()) return missing(from);
    names_[to.string()] = found->second;
    names_.erase(from.string());
    return Nothing{};
}

Result<Nothing> Disk::remove(const Path& path) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::remove, path); !counted) return counted;
    names_.erase(path.string());
    return Nothing{};
}

Result<Nothing> Disk::make_folder(const Path& path) {
    const Guard guard(mutex_);
    return count(Call::create, path);
}

Result<Nothing> Disk::sync_folder(const Path& folder) {
    const Guard guard(mutex_);
    if (auto counted = count_sync(Call::sync_folder, folder); !counted) return counted;
    const auto is_inside = [&](const auto& entry) {
        return Path(entry.first).parent_path() == folder;
    };
    std::erase_if(durable_names_, is_inside);
    for (const auto& entry : names_)
        if (is_inside(entry)) durable_names_.insert(entry);
    return Nothing{};
}

Result<std::unique_ptr<store::FileLock>>
Disk::lock(const Path& path, const std::string& /*holder*/) {
    const Guard guard(mutex_);
    if (auto counted = count(Call::create, path); !counted) return counted.error();
    if (!locks_.insert(path.string()).second)
        return Error{ErrorKind::locked, "process 1 on lamp", {}, {}};
    return std::unique_ptr<store::FileLock>(std::make_unique<Lock>(*this, path.string()));
}

} // namespace simulated
