// The store with its threads, on the real disk. These tests also run under the thread sanitizer.
#include "store/campaign_json.h"
#include "store/campaign_store.h"
#include "store/samples.h"
#include "store/simulated_disk.h"

#include <doctest/doctest.h>

#include <chrono>
#include <condition_variable>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <sstream>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

// A folder with the demo campaign, gone at the end.
class Table {
public:
    Table() {
        std::string name = (fs::temp_directory_path() / "tablewick-store-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        folder_ = name;
        write(file(), samples::demo_text());
    }

    ~Table() {
        std::error_code ignored;
        fs::permissions(folder_, fs::perms::owner_all, ignored);
        fs::remove_all(folder_, ignored);
    }

    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

    fs::path file() const { return folder_ / "camp.json"; }

    const fs::path& folder() const { return folder_; }

    static void write(const fs::path& path, const std::string& text) {
        std::ofstream(path, std::ios::binary) << text;
    }

    static std::string read(const fs::path& path) {
        std::ostringstream text;
        text << std::ifstream(path, std::ios::binary).rdbuf();
        return text.str();
    }

    // The one file whose name begins and ends like this; empty if there is none.
    fs::path find(const std::string& start, const std::string& end) const {
        for (const auto& entry : fs::directory_iterator(folder_)) {
            const std::string name = entry.path().filename().string();
            if (name.rfind(start, 0) == 0 && name.size() >= end.size() &&
                name.compare(name.size() - end.size(), end.size(), end) == 0)
                return entry.path();
        }
        return {};
    }

private:
    fs::path folder_;
};

// A store with its document and a bell that the writing thread rings.
class Session {
public:
    explicit Session(
        const fs::path& file, store::Files* files = nullptr, store::SaveTimes times = {}
    ) {
        store::StoreOptions options;
        options.files = files;
        options.times = times;
        options.wake = [this] {
            {
                const std::lock_guard guard(mutex_);
                rings_ += 1;
            }
            bell_.notify_all();
        };
        auto opened = store::CampaignStore::open(file, options);
        if (!opened) FAIL(base::to_text(opened.error()));
        store_ = std::move(opened).value();
        document_ =
            std::make_unique<store::CampaignDocument>(store_->take_campaign(), store_->revision());
        document_->set_sink([this](const store::JournalEntry& entry) { store_->add(entry); });
    }

    store::CampaignStore& store() { return *store_; }

    store::CampaignDocument& document() { return *document_; }

    void note(const std::string& text) {
        game::Edits edits;
        edits.add(&game::Campaign::about, "Write the note", [text](game::About& about) {
            about.note = text;
        });
        REQUIRE(document_->carry_out(edits).ok());
    }

    // Until the writing thread has brought that about; the limit only ends a test that fails.
    template <class Condition>
    bool wait_until(Condition condition) {
        const auto limit = std::chrono::steady_clock::now() + std::chrono::seconds(60);
        std::unique_lock lock(mutex_);
        for (;;) {
            const int seen = rings_;
            lock.unlock();
            store_->look_after(*document_);
            const bool is_met = condition();
            lock.lock();
            if (is_met) return true;
            if (!bell_.wait_until(lock, limit, [&] { return rings_ != seen; })) return false;
        }
    }

    bool wait_until_saved() {
        return wait_until([&] { return state().kind == store::SaveKind::saved; });
    }

    store::SaveState state() { return store_->state(document_->revision()); }

    std::string messages() {
        std::string text;
        for (const std::string& message : store_->take_messages())
            text += message + "\n";
        return text;
    }

private:
    std::mutex mutex_;
    std::condition_variable bell_;
    int rings_ = 0;
    std::unique_ptr<store::CampaignStore> store_;
    std::unique_ptr<store::CampaignDocument> document_;
};

} // namespace

TEST_CASE("store: an edit is durable in the journal and in the file after the end") {
    const Table table;
    {
        Session session(table.file());
        CHECK(session.messages() == "");
        session.note("Wet boots");
        CHECK(session.wait_until_saved());
        CHECK(Table::read(table.file()) == samples::demo_text());
        CHECK(Table::read(table.folder() / "camp.journal").find("Wet boots") != std::string::npos);
        CHECK(fs::exists(table.folder() / "camp.lock"));
        REQUIRE(session.store().save_now(session.document()).ok());
    }
    CHECK(Table::read(table.file()).find("Wet boots") != std::string::npos);
    CHECK(!fs::exists(table.folder() / "camp.lock"));
    CHECK(std::distance(fs::directory_iterator(table.folder() / "camp.backups"), {}) == 1);
}

TEST_CASE("store: a session without an edit does not touch the file") {
    const Table table;
    const auto time = fs::last_write_time(table.file());
    {
        Session session(table.file());
        REQUIRE(session.store().save_now(session.document()).ok());
    }
    CHECK(fs::last_write_time(table.file()) == time);
    CHECK(Table::read(table.file()) == samples::demo_text());
}

TEST_CASE("store: what only the journal has is recovered and the person is told") {
    const Table table;
    game::Campaign expected;
    {
        Session session(table.file());
        session.note("one");
        session.note("two");
        CHECK(session.wait_until_saved());
        expected = session.document().view();
    } // ends without a last snapshot, as a killed program does
    Session again(table.file());
    CHECK(again.messages() == "Recovered 2 edits from the journal, up to \"Write the note\".\n");
    CHECK(again.document().view() == expected);
    again.note("three");
    CHECK(again.wait_until_saved());
    CHECK(again.wait_until([&] {
        return Table::read(table.file()).find("\"two\"") != std::string::npos ||
               Table::read(table.file()).find("\"three\"") != std::string::npos;
    }));
}

TEST_CASE("store: many edits while snapshots are written are all there") {
    const Table table;
    game::Campaign expected;
    {
        store::SaveTimes times;
        times.autosave = std::chrono::milliseconds(1);
        Session session(table.file(), nullptr, times);
        for (int round = 0; round < 60; ++round) {
            samples::play(session.document(), 3, static_cast<std::uint64_t>(round));
            session.store().look_after(session.document());
        }
        CHECK(session.wait_until_saved());
        expected = session.document().view();
    }
    Session again(table.file());
    CHECK(again.document().view() == expected);
}

TEST_CASE("store: a second program is read-only and says who holds the campaign") {
    const Table table;
    Session first(table.file());
    Session second(table.file());
    CHECK(second.store().is_read_only());
    const std::string cause = second.state().cause;
    CHECK(cause.find("This campaign is already open: process ") == 0);
    CHECK(cause.find(", since 20") != std::string::npos);
    second.note("mine");
    CHECK(second.state().kind == store::SaveKind::read_only);
    REQUIRE(second.store().save_now(second.document()).ok());
    CHECK(Table::read(table.file()) == samples::demo_text());
}

TEST_CASE("store: the lock of a program that is gone holds nobody up") {
    const Table table;
    Table::write(table.folder() / "camp.lock", "process 1 on lamp, since 2026-01-01T00:00:00Z");
    Session session(table.file());
    CHECK(!session.store().is_read_only());
}

TEST_CASE("store: a file that another program changed is never written over") {
    const Table table;
    Session session(table.file());
    session.note("ours");
    CHECK(session.wait_until_saved());
    std::string theirs = samples::demo_text();
    theirs.replace(theirs.find("Salt Road Charter"), 4, "Silk");
    Table::write(table.file(), theirs);
    REQUIRE(session.store().save_now(session.document()).ok());
    CHECK(session.wait_until([&] { return session.state().is_changed_outside; }));
    CHECK(Table::read(table.file()) == theirs);
    const fs::path mine = table.find("camp.mine-", ".json");
    REQUIRE(!mine.empty());
    CHECK(Table::read(mine).find("\"ours\"") != std::string::npos);
    CHECK(session.messages().find("The campaign file was changed by another program.") == 0);
    SUBCASE("ours goes on") {
        session.store().keep_ours();
        CHECK(session.wait_until([&] { return !session.state().is_changed_outside; }));
        CHECK(Table::read(table.file()).find("\"ours\"") != std::string::npos);
        const fs::path kept = table.find("camp.theirs-", ".json");
        REQUIRE(!kept.empty());
        CHECK(Table::read(kept) == theirs);
    }
    SUBCASE("theirs goes on") {
        session.note("later");
        const auto taken = session.store().take_theirs(session.document());
        REQUIRE(taken.ok());
        CHECK(taken.value().campaign.about.title == "Silk Road Charter");
        CHECK(Table::read(mine).find("\"later\"") != std::string::npos);
        CHECK(Table::read(table.file()) == theirs);
    }
    SUBCASE("edits go on while nobody decides") {
        session.note("more");
        CHECK(session.wait_until_saved());
        REQUIRE(session.store().save_now(session.document()).ok());
        CHECK(Table::read(mine).find("\"more\"") != std::string::npos);
        CHECK(Table::read(table.file()) == theirs);
    }
}

TEST_CASE("store: a file that was only touched is still ours") {
    const Table table;
    Session session(table.file());
    Table::write(table.file(), samples::demo_text());
    session.note("ours");
    REQUIRE(session.store().save_now(session.document()).ok());
    CHECK(!session.state().is_changed_outside);
    CHECK(Table::read(table.file()).find("\"ours\"") != std::string::npos);
}

TEST_CASE("store: a file edited by hand while only the journal had the last edits loses neither") {
    const Table table;
    {
        Session session(table.file());
        session.note("ours");
        CHECK(session.wait_until_saved());
    }
    std::string theirs = samples::demo_text();
    theirs.replace(theirs.find("Salt Road Charter"), 4, "Silk");
    Table::write(table.file(), theirs);
    Session again(table.file());
    CHECK(again.document().view().about.title == "Silk Road Charter");
    CHECK(again.messages().find("Your last 1 edit are kept in camp.mine-") != std::string::npos);
    CHECK(Table::read(table.find("camp.mine-", ".json")).find("\"ours\"") != std::string::npos);
}

TEST_CASE("store: with a full disk the program goes on, says why, tries again and saves elsewhere"
) {
    simulated::Disk disk;
    disk.put("/table/camp.json", samples::demo_text());
    store::SaveTimes times;
    times.retry = std::chrono::milliseconds(5);
    Session session("/table/camp.json", &disk, times);
    session.note("one");
    CHECK(session.wait_until_saved());
    disk.fail_at(simulated::Call::any, 1);
    disk.keep_failing();
    session.note("two");
    CHECK(session.wait_until([&] { return session.state().kind == store::SaveKind::not_saved; }));
    CHECK(session.state().cause == "The disk is full.");
    CHECK(session.document().view().about.note == "two");
    REQUIRE(!session.store().save_now(session.document()).ok());
    CHECK(disk.content("/table/camp.json") == samples::demo_text());
    disk.fail_at(simulated::Call::any, 0);
    CHECK(session.wait_until_saved());
    REQUIRE(session.store().save_now(session.document()).ok());
    CHECK(disk.content("/table/camp.json").find("\"two\"") != std::string::npos);
}

TEST_CASE("store: a read-only folder is said, and the edits can be saved elsewhere") {
    if (::geteuid() == 0) return; // for root every folder can be written
    const Table table;
    fs::permissions(table.folder(), fs::perms::owner_read | fs::perms::owner_exec);
    Session session(table.file());
    session.note("one");
    CHECK(session.wait_until([&] { return session.state().kind == store::SaveKind::not_saved; }));
    CHECK(session.state().cause.find("Writing is not allowed there.") != std::string::npos);
}

TEST_CASE("store: a copy goes to another place and never over another file") {
    const Table table;
    Session session(table.file());
    session.note("one");
    const fs::path copy = table.folder() / "stick.json";
    Table::write(copy, "someone else's");
    session.store().save_copy_to(copy, session.document());
    std::string said;
    CHECK(session.wait_until([&] { return !(said += session.messages()).empty(); }));
    CHECK(Table::read(copy) == "someone else's");
    CHECK(Table::read(table.folder() / "stick-2.json").find("\"one\"") != std::string::npos);
    CHECK(said.find("stick-2.json") != std::string::npos);
}
