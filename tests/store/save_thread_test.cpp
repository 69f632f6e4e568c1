#include "store/campaign_json.h"
#include "store/campaign_open.h"
#include "store/samples.h"
#include "store/save_thread.h"
#include "store/simulated_disk.h"
#include "store/time_text.h"

#include <doctest/doctest.h>

#include <atomic>

namespace {

const store::Path file = "/table/camp.json";

// Looks at every campaign file in the moment it takes its name.
class WatchedDisk : public simulated::Disk {
public:
    base::Result<base::Nothing> rename(const store::Path& from, const store::Path& to) override {
        if (to == file) {
            renames += 1;
            const auto reading = store::read_campaign(content(from), to.string());
            if (!reading.loaded) spoiled += 1;
        }
        return Disk::rename(from, to);
    }

    std::atomic<int> renames = 0;
    std::atomic<int> spoiled = 0;
};

struct Started {
    game::Campaign campaign;
    std::uint64_t revision = 0;
    std::unique_ptr<store::SaveThread> thread;
};

Started start(simulated::Disk& disk) {
    auto opened = store::open_campaign(disk, file, "process 1 on lamp", "2026-02-03T20-00-00Z");
    REQUIRE(opened.ok());
    REQUIRE(opened.value().start.has_value());
    Started started;
    started.campaign = opened.value().loaded.campaign;
    started.revision = opened.value().loaded.revision;
    started.thread = std::make_unique<store::SaveThread>(
        disk,
        std::make_unique<store::CampaignWriter>(
            disk, opened.value().paths, std::move(*opened.value().start)
        ),
        store::SaveTimes{},
        store::utc_now,
        nullptr
    );
    return started;
}

} // namespace

TEST_CASE("bug: a snapshot that came while another waited for its place spoiled the file") {
    WatchedDisk disk;
    disk.put(file, samples::demo_text());
    game::Campaign expected;
    {
        Started started = start(disk);
        store::CampaignDocument document(started.campaign, started.revision);
        document.set_sink([&](const store::JournalEntry& entry) { started.thread->add(entry); });
        for (std::uint64_t round = 0; round < 150; ++round) {
            samples::play(document, 1, round);
            started.thread->add_snapshot(document.view(), document.revision());
        }
        REQUIRE(started.thread->save_now(document.view(), document.revision()).ok());
        CHECK(started.thread->durable_revision() == document.revision());
        CHECK(!started.thread->standing().is_changed_outside);
        expected = document.view();
    }
    CHECK(disk.renames > 0);
    CHECK(disk.spoiled == 0);
    const auto reading = store::read_campaign(disk.content(file), file.string());
    REQUIRE(reading.loaded.has_value());
    CHECK(reading.loaded->campaign == expected);
}

TEST_CASE("save thread: lines that came before the end are on the disk without a snapshot") {
    simulated::Disk disk;
    disk.put(file, samples::demo_text());
    game::Campaign expected;
    {
        Started started = start(disk);
        store::CampaignDocument document(started.campaign, started.revision);
        document.set_sink([&](const store::JournalEntry& entry) { started.thread->add(entry); });
        samples::play(document, 20, 5);
        expected = document.view();
    }
    disk.restore_power(1);
    const auto opened =
        store::open_campaign(disk, file, "process 2 on lamp", "2026-02-03T21-00-00Z");
    REQUIRE(opened.ok());
    CHECK(opened.value().loaded.campaign == expected);
}
