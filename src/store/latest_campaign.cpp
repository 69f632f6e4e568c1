#include "store/latest_campaign.h"

#include "store/journal_replay.h"
#include "store/store_paths.h"

namespace store {

base::Result<LoadedCampaign> read_latest(const std::filesystem::path& file) {
    Files& files = disk();
    const StorePaths paths = store_paths(file);
    const auto text = files.read(paths.file);
    if (!text.ok()) return text.error();
    CampaignReading reading = read_campaign(text.value(), file.string());
    if (!reading.loaded) return reading.error();
    const auto journal = files.read(paths.journal);
    if (!journal.ok()) return std::move(*reading.loaded);
    const FileMark mark = mark_of(text.value(), reading.loaded->revision);
    return replay_journal(std::move(*reading.loaded), mark, read_journal(journal.value())).loaded;
}

} // namespace store
