// How far away things are: common questions at the table, answered in so many taps from any scene.
// Typing is no tap. The table in the README says the same.
#include "game/register_keeping.h"
#include "game/session_keeping.h"
#include "game/treasure.h"
#include "shell_driver.h"
#include "store/name_lists.h"

#include <doctest/doctest.h>

#include <chrono>
#include <string>
#include <thread>
#include <vector>

using driver::ShellDriver;

namespace {

game::Campaign at_the_table() {
    game::Campaign campaign = driver::running_fight();
    game::enter(campaign, "Marta Quill", game::Kind::person);
    const base::Id before = game::begin_session(campaign, "2026-01-24");
    game::write_note(campaign, before, game::NoteKind::deed, "Barred the sluice", "2026-01-24");
    game::begin_session(campaign, "2026-01-31");
    REQUIRE(game::add_ledger_line(campaign, game::LedgerKind::found, "chest", 5000).ok());
    return campaign;
}

struct Question {
    const char* asked;
    std::vector<std::string> steps; // what is tapped; "typed: ..." is typed
    const char* seen;               // the answer, or what is there then
    std::size_t taps;               // at most
};

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {"Whose turn is next?", {"Fight"}, "Next: Reed Lurker 2", 1},
        {"How hurt is Orrin Tace?", {"Fight"}, "44/44", 1},
        {"What does frightened do?",
         {"Find", "typed: frightened", "###hit 0"},
         "Source: GM Core and Player Core, conditions",
         2},
        {"The DC for level 7?", {"Find", "typed: dc level 7"}, "DC 23", 1},
        {"Does the party see the ambush?", {"Roam"}, "Perception: about", 1},
        {"A name for an innkeeper?", {"Find", "typed: next name", "###hit 0"}, "Use it", 2},
        {"What is the date?", {}, "Day ", 0},
        {"What happened last time?",
         {"Find", "typed: last time", "###hit 0"},
         "Barred the sluice",
         2},
        {"Who is Marta Quill?", {"Find", "typed: marta", "###hit 0"}, "##summary", 2},
        {"What does a rope cost?", {"Find", "typed: rope 50"}, "5 sp", 1},
        {"How much money is there?",
         {"Find", "typed: treasure ledger", "###hit 0"},
         "in the purse",
         2},
        {"Roll 3d6+4", {"Find", "typed: 3d6+4", "###order"}, "3d6+4 = ", 2},
        {"Orrin Tace is frightened",
         {"Find", "typed: frightened 2 orrin", "###order", "Fight"},
         "frightened 2",
         3}};
    return all;
}

void settle(ShellDriver& ui) {
    ui.frames(3);
    for (int tries = 0; tries < 500 && ui.state().find.is_open; ++tries) {
        if (!ui.state().find.finder.is_behind()) break;
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
        ui.frames(1);
    }
    ui.frames(12);
}

} // namespace

TEST_CASE("taps: common questions are answered in at most three, from every scene, by finger") {
    for (const Question& question : questions())
        for (const app::SceneInfo& scene : app::scene_infos) {
            const std::string asked = question.asked;
            const std::string from = scene.title;
            CAPTURE(asked);
            CAPTURE(from);
            driver::Settings touch;
            touch.is_touch = true;
            ShellDriver ui(at_the_table(), touch);
            ui.on_disk.price_book = fixtures::four_degree_prices();
            ui.on_disk.ready_names = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
            ui.state().settings.scenes.current = scene.key;
            ui.frames(4);
            std::size_t taps = 0;
            for (const std::string& step : question.steps) {
                if (step.rfind("typed: ", 0) == 0)
                    ui.type(step.substr(7));
                else
                    ui.click(step);
                if (step.rfind("typed: ", 0) != 0) taps += 1;
                settle(ui);
            }
            CHECK(taps <= question.taps);
            const bool is_answered = ui.shows(question.seen) || ui.has(question.seen);
            CHECK(is_answered);
        }
}
