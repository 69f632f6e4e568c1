// Three loops that find their own end: the n-th call fails, the power goes at the n-th sync, and
// the names of files are lost unless their folder was synced. After each, what is opened must be
// one of the states that were recorded, and never older than the last one that was acknowledged.
#include "store/campaign_json.h"
#include "store/campaign_open.h"
#include "store/samples.h"
#include "store/simulated_disk.h"

#include <doctest/doctest.h>

#include <map>
#include <string>
#include <vector>

using simulated::Call;
using simulated::Disk;
using store::CampaignWriter;

namespace {

const store::Path file = "/table/camp.json";

// An evening's edits, recorded once: every loop writes the same ones.
struct Evening {
    std::string first_text;
    std::map<std::uint64_t, game::Campaign> states; // by revision
    std::vector<store::JournalEntry> entries;
};

const Evening& evening() {
    static const Evening recorded = [] {
        Evening made;
        store::CampaignDocument document(samples::demo(), 6);
        made.first_text = store::write_campaign(document.view(), 6);
        made.states[6] = document.view();
        document.set_time_source([] { return "2026-02-03T20:00:00Z"; });
        document.set_sink([&](const store::JournalEntry& entry) { made.entries.push_back(entry); });
        for (std::uint64_t seed = 40; made.entries.size() < 12; ++seed) {
            samples::play(document, 1, seed);
            made.states[document.revision()] = document.view();
        }
        return made;
    }();
    return recorded;
}

std::string told(const store::OpenedCampaign& opened) {
    std::string text;
    for (const std::string& message : opened.messages)
        text += message + "\n";
    return text;
}

store::OpenedCampaign reopened(Disk& disk, const std::string& stamp) {
    auto opened = store::open_campaign(disk, file, "process 2 on lamp", stamp);
    if (!opened) FAIL(base::to_text(opened.error()));
    return std::move(opened).value();
}

// Writes the evening: a line each, a snapshot after every fourth edit, each step tried up to three
// times. Returns the last revision that was acknowledged as durable.
std::uint64_t write_evening(Disk& disk) {
    auto opened = store::open_campaign(disk, file, "process 1 on lamp", "2026-02-03T20-00-00Z");
    if (!opened || !opened.value().start) return 0;
    CampaignWriter writer(disk, opened.value().paths, std::move(*opened.value().start));
    std::uint64_t durable = writer.durable_revision();
    const auto insist = [&](auto step) {
        for (int attempt = 0; attempt < 3 && !disk.is_power_cut(); ++attempt)
            if (step()) break;
        durable = writer.durable_revision();
    };
    static_cast<void>(writer.begin_session("2026-02-03T20-00-00Z").ok());
    for (const store::JournalEntry& entry : evening().entries) {
        bool is_handed_over = false;
        insist([&] {
            const bool is_first = !std::exchange(is_handed_over, true);
            return writer.append(is_first ? std::vector{entry} : std::vector<store::JournalEntry>{})
                .ok();
        });
        if (entry.revision % 4 != 0) continue;
        insist([&] {
            const auto prepared =
                writer.prepare(evening().states.at(entry.revision), entry.revision);
            return prepared.ok() && writer.finish(prepared.value(), "2026-02-03T20-30-00Z").ok();
        });
    }
    return durable;
}

// Opens what is on the disk and holds it against what was recorded; goes on working with it.
void check_disk(Disk& disk, std::uint64_t durable) {
    const store::OpenedCampaign opened = reopened(disk, "2026-02-04T20-00-00Z");
    INFO(told(opened));
    CHECK(opened.read_only_cause == "");
    CHECK(opened.loaded.revision >= durable);
    const auto state = evening().states.find(opened.loaded.revision);
    REQUIRE(state != evening().states.end());
    CHECK(opened.loaded.campaign == state->second);
    CHECK(told(opened).find("another state") == std::string::npos);
}

} // namespace

TEST_CASE("faults: without any failure the last edit is on the disk") {
    Disk disk;
    disk.put(file, evening().first_text);
    const std::uint64_t durable = write_evening(disk);
    CHECK(durable == evening().entries.back().revision);
    check_disk(disk, durable);
}

TEST_CASE("faults: whichever call fails once, everything is saved in the end") {
    for (const Call call :
         {Call::write,
          Call::sync,
          Call::rename,
          Call::create,
          Call::sync_folder,
          Call::remove,
          Call::any}) {
        int n = 1;
        for (bool has_failed = true; has_failed; ++n) {
            CAPTURE(static_cast<int>(call));
            CAPTURE(n);
            Disk disk;
            disk.put(file, evening().first_text);
            disk.fail_at(call, n);
            const std::uint64_t durable = write_evening(disk);
            has_failed = disk.has_failed();
            disk.fail_at(Call::any, 0);
            check_disk(disk, durable);
        }
        CHECK(n > 2);
    }
}

TEST_CASE("faults: when the disk stays full from the n-th call on, what was acknowledged is there"
) {
    for (const Call call :
         {Call::write, Call::sync, Call::rename, Call::create, Call::sync_folder}) {
        int n = 1;
        for (bool has_failed = true; has_failed; ++n) {
            CAPTURE(static_cast<int>(call));
            CAPTURE(n);
            Disk disk;
            disk.put(file, evening().first_text);
            disk.fail_at(call, n);
            disk.keep_failing();
            const std::uint64_t durable = write_evening(disk);
            has_failed = disk.has_failed();
            disk.fail_at(Call::any, 0);
            check_disk(disk, durable);
        }
        CHECK(n > 2);
    }
}

TEST_CASE("faults: the power goes at every sync in turn, and nothing acknowledged is lost") {
    int cuts = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        bool is_cut = true;
        for (int n = 1; is_cut; ++n) {
            CAPTURE(seed);
            CAPTURE(n);
            Disk disk;
            disk.put(file, evening().first_text);
            disk.cut_power_at_sync(n);
            const std::uint64_t durable = write_evening(disk);
            is_cut = disk.is_power_cut();
            disk.restore_power(seed * 1000 + static_cast<std::uint64_t>(n));
            check_disk(disk, durable);
            cuts += is_cut ? 1 : 0;
        }
    }
    CHECK(cuts > 12 * 20);
}

TEST_CASE("faults: the power goes again while the first loss is being mended") {
    for (int first = 5; first < 40; first += 3) {
        for (int second = 1; second < 12; ++second) {
            CAPTURE(first);
            CAPTURE(second);
            Disk disk;
            disk.put(file, evening().first_text);
            disk.cut_power_at_sync(first);
            const std::uint64_t durable = write_evening(disk);
            disk.restore_power(static_cast<std::uint64_t>(first));
            disk.cut_power_at_sync(second);
            auto opened =
                store::open_campaign(disk, file, "process 2 on lamp", "2026-02-04T20-00-00Z");
            if (opened && opened.value().start) {
                const store::LoadedCampaign& loaded = opened.value().loaded;
                CampaignWriter writer(disk, opened.value().paths, std::move(*opened.value().start));
                const auto prepared = writer.prepare(loaded.campaign, loaded.revision);
                if (prepared)
                    static_cast<void>(writer.finish(prepared.value(), "2026-02-04T20-00-01Z").ok());
            }
            disk.restore_power(static_cast<std::uint64_t>(second));
            check_disk(disk, durable);
        }
    }
}
