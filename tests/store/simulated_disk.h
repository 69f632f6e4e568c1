// A disk in memory that can fail on purpose. What was written but not synced is pending: a power
// cut lets each pending write, by a seeded draw, be done, dropped or garbled, and forgets names
// made or changed in a folder since that folder was last synced.
#pragma once

#include "store/files.h"

#include <cstdint>
#include <map>
#include <memory>
#include <mutex>
#include <random>
#include <set>
#include <string>
#include <vector>

namespace simulated {

// Which calls are counted and made to fail.
enum class Call { any, write, sync, rename, create, sync_folder, remove, read };

class Disk : public store::Files {
public:
    // The n-th such call from now fails (counted from 1), as on a full disk; 0: none.
    void fail_at(Call call, int n);

    // All later calls of that kind fail as well, until fail_at is called again.
    void keep_failing();

    // The power goes just before the n-th sync (of a file or a folder); 0: never.
    void cut_power_at_sync(int n) { syncs_to_cut_ = n; }

    bool has_failed() const;

    bool is_power_cut() const { return is_cut_; }

    // What is found when the power is back.
    void restore_power(std::uint64_t seed);

    // The content as running programs see it; empty if there is none.
    std::string content(const store::Path& path) const;
    void put(const store::Path& path, const std::string& content); // by another program; durable
    std::vector<std::string> names() const;

    base::Result<std::string> read(const store::Path& path) override;
    base::Result<store::FileState> state(const store::Path& path) override;
    base::Result<std::vector<std::string>> list(const store::Path& folder) override;
    base::Result<std::unique_ptr<store::OpenFile>>
    create(const store::Path& path, const store::Path& like) override;
    base::Result<std::unique_ptr<store::OpenFile>> append(const store::Path& path) override;
    base::Result<base::Nothing> rename(const store::Path& from, const store::Path& to) override;
    base::Result<base::Nothing> remove(const store::Path& path) override;
    base::Result<base::Nothing> make_folder(const store::Path& path) override;
    base::Result<base::Nothing> sync_folder(const store::Path& folder) override;
    base::Result<std::unique_ptr<store::FileLock>>
    lock(const store::Path& path, const std::string& holder) override;

private:
    struct File {
        std::string durable;
        std::vector<std::string> pending; // appended pieces
        bool is_emptied = false;          // truncated since the last sync
        std::uint64_t serial = 0;
        std::int64_t modified = 0;

        std::string content() const;
    };

    class Handle;
    class Lock;

    // The store works on it with two threads, a test looks on with a third.
    mutable std::recursive_mutex mutex_;
    base::Result<base::Nothing> count(Call call, const store::Path& path);
    base::Result<base::Nothing> count_sync(Call call, const store::Path& path);

    std::map<std::string, std::shared_ptr<File>> names_;         // as programs see it
    std::map<std::string, std::shared_ptr<File>> durable_names_; // as the disk has it
    std::set<std::string> locks_;
    Call failing_ = Call::any;
    int calls_to_fail_ = 0;
    bool keeps_failing_ = false;
    bool has_failed_ = false;
    int syncs_to_cut_ = 0;
    bool is_cut_ = false;
    std::uint64_t next_serial_ = 1;
    std::int64_t clock_ = 0;
};

} // namespace simulated
