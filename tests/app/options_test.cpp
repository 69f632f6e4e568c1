#include "app/options.h"

#include <doctest/doctest.h>

using app::Options;
using app::read_options;
using app::Task;

namespace {

Options read(const std::vector<std::string>& words) {
    const base::Result<Options> result = read_options(words);
    REQUIRE(result.ok());
    return result.value();
}

std::string refusal(const std::vector<std::string>& words) {
    const base::Result<Options> result = read_options(words);
    REQUIRE_FALSE(result.ok());
    return result.error().message;
}

} // namespace

TEST_CASE("options: without a word the demo opens, with one that campaign") {
    CHECK(read({}).task == Task::open);
    CHECK(read({}).campaign.empty());
    CHECK(read({"marsh.json"}).campaign == "marsh.json");
    CHECK(read({"--", "-odd name.json"}).campaign == "-odd name.json");
}

TEST_CASE("options: a picture names its file, scene, size, text, theme and targets") {
    const Options options = read(
        {"marsh.json",
         "--picture",
         "out.png",
         "--scene",
         "prep",
         "--size",
         "1920x1200",
         "--theme",
         "paper",
         "--touch",
         "--text-scale",
         "200"}
    );
    CHECK(options.task == Task::picture);
    CHECK(options.campaign == "marsh.json");
    CHECK(options.picture == "out.png");
    CHECK(options.scene == "prep");
    CHECK(options.width == 1920);
    CHECK(options.height == 1200);
    CHECK(options.text_scale_percent == 200);
    CHECK(options.theme == widgets::ThemeName::paper);
    CHECK(options.is_touch == true);
    CHECK(read({"--pictures", "folder"}).task == Task::pictures);
}

TEST_CASE("options: checking, rehearsing and making a campaign") {
    CHECK(read({"--verify", "marsh.json"}).task == Task::verify);
    CHECK(read({"--verify", "marsh.json"}).campaign == "marsh.json");
    const Options rehearsal = read({"--rehearse", "500", "--seed", "18446744073709551615"});
    CHECK(rehearsal.task == Task::rehearse);
    CHECK(rehearsal.rehearsals == 500);
    CHECK(rehearsal.seed == UINT64_MAX);
    const Options made = read({"--new", "fen.json", "--rules", "srd5"});
    CHECK(made.task == Task::create);
    CHECK(made.campaign == "fen.json");
    CHECK(made.rules == "srd5");
    CHECK(read({"--controls", "list.json"}).controls == "list.json");
}

TEST_CASE("options: help and version win over everything else") {
    CHECK(read({"marsh.json", "--help", "--no-such"}).task == Task::help);
    CHECK(read({"--version"}).task == Task::version);
}

TEST_CASE("options: what cannot be understood is refused in one line") {
    CHECK(refusal({"--frobnicate"}) == "There is no option --frobnicate.");
    CHECK(refusal({"-x"}) == "There is no option -x.");
    CHECK(refusal({"--scene"}) == "--scene needs a value behind it.");
    CHECK(refusal({"a.json", "b.json"}) == "One campaign at a time: a.json or b.json.");
    CHECK(refusal({"--theme", "neon"}) == "--theme takes dark or paper.");
    CHECK(refusal({"--rules", "other"}) == "--rules takes four-degree or srd5.");
    for (const char* percent : {"79", "251", "large", "", "100%", "1e2"})
        CHECK(
            refusal({"--text-scale", percent}) == "--text-scale takes a percentage of 80 to 250."
        );
    for (const char* size : {"1280", "1280x", "x800", "10x10", "99999x800", "1280x800x2", "axb"})
        CHECK(
            refusal({"--size", size}) == "--size takes WIDTHxHEIGHT in pixels, 320 to 8192 each."
        );
    for (const char* count : {"0", "-3", "many", "99999999999"})
        CHECK(refusal({"--rehearse", count}) == "--rehearse takes a number of 1 or more.");
    CHECK(refusal({"--seed", "-1"}) == "--seed takes a whole number.");
}

TEST_CASE("options: the help names every option") {
    const std::string help = app::help_text();
    for (const char* option :
         {"--new",
          "--rules",
          "--verify",
          "--picture",
          "--pictures",
          "--scene",
          "--size",
          "--text-scale",
          "--theme",
          "--touch",
          "--rehearse",
          "--seed",
          "--controls",
          "--help",
          "--version"})
        CHECK(help.find(option) != std::string::npos);
}

TEST_CASE("options: pages to print name themselves, their paper and their file") {
    const Options options = read(
        {"marsh.json",
         "--print",
         "names:fen",
         "party",
         "--paper",
         "a6",
         "--rings",
         "--two-up",
         "--out",
         "x.PDF"}
    );
    CHECK(options.task == Task::print);
    CHECK(options.pages == std::vector<std::string>{"names:fen", "party"});
    CHECK(options.print_setup.paper->name == "A6");
    CHECK(options.print_setup.has_rings);
    CHECK(options.print_setup.arrangement == print::Arrangement::two_up);
    CHECK(options.out == "x.PDF");
    CHECK(refusal({"--print"}) == "--print needs the name of a page behind it.");
    CHECK(refusal({"--print", "names"}) == "--print needs --out FILE.pdf.");
    CHECK(
        refusal({"--print", "names", "--paper", "a7"}) ==
        "--paper takes one of a5, a4, a6, letter, half-letter, personal."
    );
    // So that no slip writes over a campaign.
    CHECK(
        refusal({"--print", "names", "--out", "marsh.json"}) ==
        "--out takes a file whose name ends in .pdf."
    );
}
