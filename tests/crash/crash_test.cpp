// Kills the real program (SIGKILL) at random moments while it makes edits, again and again on the
// same campaign, and holds what is found afterwards against what it had acknowledged.
// TABLEWICK_CRASHES: how often (100). TABLEWICK_BINARY: another program to kill.
#include "store/campaign_open.h"
#include "store/document.h"
#include "store/rehearsal_edits.h"
#include "store/rulebook_json.h"

#include <doctest/doctest.h>

#include <array>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <poll.h>
#include <random>
#include <sstream>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

const std::string assets = std::string(TABLEWICK_SOURCE_DIR) + "/assets";

std::string program() {
    const char* other = std::getenv("TABLEWICK_BINARY");
    return other != nullptr ? other : TABLEWICK_BINARY;
}

int crashes_wanted() {
    const char* wanted = std::getenv("TABLEWICK_CRASHES");
    return wanted != nullptr ? std::max(1, std::atoi(wanted)) : 100;
}

// A folder of its own that is gone at the end.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "tablewick-crash-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }

    ~Folder() {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }

    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

// What a run said before it was killed.
struct Said {
    std::uint64_t opened = 0;
    std::uint64_t made = 0;
    std::uint64_t durable = 0;
    std::string text;
};

Said read_words(const std::string& text) {
    Said said;
    said.text = text;
    std::istringstream lines(text);
    std::string line;
    while (std::getline(lines, line)) {
        if (lines.eof()) break; // not finished: it does not count as said
        std::istringstream words(line);
        std::string word;
        std::uint64_t revision = 0;
        if (!(words >> word >> revision)) continue;
        if (word == "opened") said.opened = revision;
        if (word == "made") said.made = revision;
        if (word == "durable") said.durable = revision;
    }
    return said;
}

// When a run is killed: that long after it said that many edits are durable, or after its start.
struct Doom {
    int durable_first = 0; // 0: the time counts from the start
    std::chrono::microseconds lifetime{0};
};

// Half of the kills fall anywhere from the start on, so that opening is hit too; the other half
// fall into the work however slow the machine is.
Doom random_doom(std::mt19937_64& random, int crash) {
    if (crash % 2 == 0) return {0, std::chrono::microseconds(random() % 500'000)};
    return {1 + static_cast<int>(random() % 8), std::chrono::microseconds(random() % 60'000)};
}

int lines_that_begin(const std::string& text, const std::string& word) {
    int count = 0;
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
        count += at == 0 || text[at - 1] == '\n' ? 1 : 0;
    return count;
}

// Runs the program on the campaign and kills it when its time has come.
Said run_and_kill(const fs::path& file, std::uint64_t seed, const Doom& doom) {
    std::array<int, 2> ends{};
    REQUIRE(::pipe2(ends.data(), O_CLOEXEC) == 0);
    const std::string binary = program();
    const std::string name = file.string();
    const std::string seed_text = std::to_string(seed);
    const std::array<const char*, 7> arguments = {
        binary.c_str(),
        name.c_str(),
        "--rehearse",
        "1000000",
        "--seed",
        seed_text.c_str(),
        nullptr};
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::execv(binary.c_str(), const_cast<char* const*>(arguments.data()));
        ::_exit(127);
    }
    ::close(ends[1]);
    std::string text;
    std::array<char, 4096> block{};
    // A run that never says what it is waited for is a failure, not a test that hangs.
    constexpr std::chrono::seconds patience(60);
    bool is_counting = doom.durable_first == 0;
    Clock::time_point end =
        Clock::now() + (is_counting ? Clock::duration(doom.lifetime) : Clock::duration(patience));
    bool is_killed = false;
    for (;;) {
        const auto left = std::chrono::duration_cast<std::chrono::microseconds>(end - Clock::now());
        if (!is_killed && left.count() <= 0) {
            CHECK(is_counting);
            ::kill(child, SIGKILL);
            is_killed = true;
        }
        pollfd ready{ends[0], POLLIN, 0};
        const timespec wait{left.count() / 1'000'000, (left.count() % 1'000'000) * 1000};
        ::ppoll(&ready, 1, is_killed ? nullptr : &wait, nullptr);
        if (ready.revents == 0) continue;
        const ssize_t size = ::read(ends[0], block.data(), block.size());
        if (size <= 0) break;
        text.append(block.data(), static_cast<std::size_t>(size));
        if (is_counting || lines_that_begin(text, "durable") < doom.durable_first) continue;
        is_counting = true;
        end = Clock::now() + doom.lifetime;
    }
    if (!is_killed) ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    ::close(ends[0]);
    INFO(text);
    CHECK((WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL));
    return read_words(text);
}

game::Campaign without_times(game::Campaign campaign) {
    for (game::HistoryLine& line : campaign.history.lines)
        line.written_at.clear();
    return campaign;
}

// Makes the same edits as the killed program did, up to a revision.
game::Campaign repeated(
    const store::LoadedCampaign& start,
    const rules::Rulebook& rulebook,
    std::uint64_t seed,
    std::uint64_t revision
) {
    store::CampaignDocument document(start.campaign, start.revision);
    store::RehearsalEdits edits(rulebook, seed);
    while (document.revision() < revision)
        REQUIRE(store::rehearse_step(document, edits).ok());
    return document.view();
}

store::LoadedCampaign opened_after_crash(const fs::path& file) {
    auto opened =
        store::open_campaign(store::disk(), file, "the crash test", "2026-02-03T20-00-00Z");
    if (!opened) FAIL(base::to_text(opened.error()));
    std::string messages;
    for (const std::string& message : opened.value().messages)
        messages += message + "\n";
    INFO(messages);
    CHECK(opened.value().read_only_cause == "");
    CHECK(messages.find("kept") == std::string::npos);
    return std::move(opened).value().loaded;
}

} // namespace

TEST_CASE("crash: what was acknowledged is there after every kill, and the file always opens") {
    const Folder folder;
    const fs::path file = folder.path() / "camp.json";
    fs::copy_file(std::string(TABLEWICK_SOURCE_DIR) + "/demo_campaign.json", file);
    std::mt19937_64 random(20260203);
    store::LoadedCampaign before = opened_after_crash(file);
    const auto rulebook = store::load_rulebook(
        assets, before.campaign.about.rules, before.campaign.about.srd_edition
    );
    REQUIRE(rulebook.ok());
    const int crashes = crashes_wanted();
    int in_the_middle = 0;
    for (int crash = 1; crash <= crashes; ++crash) {
        CAPTURE(crash);
        const std::uint64_t seed = random() % 1'000'000;
        CAPTURE(seed);
        const Said said = run_and_kill(file, seed, random_doom(random, crash));
        CAPTURE(said.text);
        store::LoadedCampaign after = opened_after_crash(file);
        if (said.opened != 0) CHECK(said.opened == before.revision);
        CHECK(after.revision >= said.durable);
        CHECK(after.revision >= before.revision);
        CHECK(
            without_times(after.campaign) ==
            without_times(repeated(before, rulebook.value(), seed, after.revision))
        );
        in_the_middle += said.durable > before.revision ? 1 : 0;
        before = std::move(after);
    }
    // If hardly any kill fell into the work, the test would prove nothing.
    CHECK(in_the_middle * 4 >= crashes);
}
