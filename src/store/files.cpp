#include "store/files.h"

namespace store {

base::Error with_path(base::Error error, const Path& path) {
    if (error.place.file.empty()) error.place.file = path.string();
    return error;
}

base::Result<base::Nothing>
write_synced(Files& files, const Path& temporary, const Path& like, std::string_view text) {
    auto file = files.create(temporary, like);
    if (!file) return file.error();
    OpenFile& open = *file.value();
    if (auto written = open.write(text); !written) return written;
    if (auto synced = open.sync(); !synced) return synced;
    return open.close();
}

base::Result<base::Nothing>
write_whole(Files& files, const Path& temporary, const Path& target, std::string_view text) {
    auto done = write_synced(files, temporary, target, text);
    if (done) done = files.rename(temporary, target);
    if (!done) {
        // A half-written temporary file only takes room; if it cannot be removed, the next start
        // does it.
        static_cast<void>(files.remove(temporary).ok());
        return done;
    }
    return files.sync_folder(target.parent_path());
}

} // namespace store
