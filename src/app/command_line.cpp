#include "app/command_line.h"

#include "app/ask.h"
#include "app/options.h"
#include "app/paths.h"
#include "app/pictures.h"
#include "app/print_pages.h"
#include "app/program.h"
#include "app/read_campaign.h"
#include "app/scenes.h"
#include "app/stored_campaign.h"
#include "store/campaign_store.h"
#include "store/files.h"
#include "store/rehearsal.h"
#include "store/verify.h"

#include <cstdio>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

namespace app {

namespace {

constexpr int sound = 0;
constexpr int not_sound = 1;
constexpr int wrong_words = 2;
constexpr int no_screen = 3; // ./run draws pictures instead

int refuse(const base::Error& error, int code) {
    std::fprintf(stderr, "tablewick: %s\n", base::to_text(error).c_str());
    return code;
}

int code_of(const base::Error& error) {
    return error.kind == base::ErrorKind::no_display ? no_screen : not_sound;
}

base::Result<std::filesystem::path> campaign_file(const Options& options) {
    if (options.campaign.empty()) return own_demo();
    return std::filesystem::path(options.campaign);
}

int draw(const Options& options) {
    if (!options.scene.empty() && find_scene(options.scene) == nullptr)
        return refuse(
            {base::ErrorKind::bad_text,
             "There is no scene " + options.scene + ".",
             {},
             "Scenes: prep, fight, roam, wrap-up."},
            wrong_words
        );
    const auto file = campaign_file(options);
    if (!file.ok()) return refuse(file.error(), not_sound);
    auto campaign = read_for_pictures(file.value(), assets_folder());
    if (!campaign.ok()) return refuse(campaign.error(), not_sound);
    const auto drawn = draw_pictures(*campaign.value(), options);
    return drawn.ok() ? sound : refuse(drawn.error(), code_of(drawn.error()));
}

int print_to_file(const Options& options) {
    if (options.pages == std::vector<std::string>{"help"}) {
        std::puts(print::list_of_pages().c_str());
        return sound;
    }
    const auto order = print_order(options);
    if (!order.ok()) return refuse(order.error(), wrong_words);
    const auto file = campaign_file(options);
    if (!file.ok()) return refuse(file.error(), not_sound);
    const auto campaign = read_for_pictures(file.value(), assets_folder());
    if (!campaign.ok()) return refuse(campaign.error(), not_sound);
    const auto document = lay_out_pages(order.value(), print_source(*campaign.value()));
    if (!document.ok()) return refuse(document.error(), not_sound);
    const auto printed = save_pages(document.value(), options.out);
    if (!printed.ok()) return refuse(printed.error(), not_sound);
    std::puts(printed.value().c_str());
    return sound;
}

rules::Family family_of(const Options& options) {
    return options.rules == "srd5" ? rules::Family::srd5 : rules::Family::four_degree;
}

int run(const Options& options, const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::exists(file, error))
        return refuse(
            {base::ErrorKind::not_found,
             "There is no campaign here.",
             {file.string(), 0, 0, {}},
             "To make an empty one: tablewick --new " + file.string() +
                 " [--rules four-degree|srd5]"},
            not_sound
        );
    const auto ended = run_program(
        [&file](std::function<void()> wake) {
            return open_stored(file, assets_folder(), std::move(wake));
        },
        options
    );
    return ended.ok() ? sound : refuse(ended.error(), code_of(ended.error()));
}

int open(const Options& options) {
    const auto file = campaign_file(options);
    return file.ok() ? run(options, file.value()) : refuse(file.error(), not_sound);
}

int create(const Options& options) {
    const std::filesystem::path file = options.campaign;
    game::Campaign campaign;
    campaign.about.rules = family_of(options);
    campaign.about.title = file.stem().string();
    const auto written = store::write_new_campaign(store::disk(), file, campaign);
    return written.ok() ? run(options, file) : refuse(written.error(), not_sound);
}

int verify(const Options& options) {
    const store::VerifyReport report = store::verify_campaign(options.campaign, assets_folder());
    std::fputs(report.text.c_str(), stdout);
    return report.is_good ? sound : not_sound;
}

int rehearse(const Options& options) {
    const auto file = campaign_file(options);
    if (!file.ok()) return refuse(file.error(), not_sound);
    return store::run_rehearsal(
        file.value(), assets_folder(), options.rehearsals, options.seed, std::cout
    );
}

// A file that cannot be read ends like everywhere else; a question that is not understood, or has
// no answer, as a wrong command line.
int answer_question(const std::vector<std::string>& words) {
    const auto read = read_ask_options(words);
    if (!read.ok()) return refuse(read.error(), wrong_words);
    const auto text = ask(read.value(), assets_folder());
    if (!text.ok())
        return refuse(text.error(), text.error().place.file.empty() ? wrong_words : not_sound);
    std::fputs(text.value().c_str(), stdout);
    return sound;
}

} // namespace

int run_command_line(int argc, char** argv) {
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    if (!arguments.empty() && arguments.front() == "ask")
        return answer_question({arguments.begin() + 1, arguments.end()});
    const base::Result<Options> read = read_options(arguments);
    if (!read.ok()) return refuse(read.error(), wrong_words);
    const Options& options = read.value();
    switch (options.task) {
    case Task::help: std::fputs(help_text().c_str(), stdout); return sound;
    case Task::version: std::puts("tablewick " TABLEWICK_VERSION); return sound;
    case Task::picture:
    case Task::pictures: return draw(options);
    case Task::print: return print_to_file(options);
    case Task::open: return open(options);
    case Task::create: return create(options);
    case Task::verify: return verify(options);
    case Task::rehearse: return rehearse(options);
    }
    return sound;
}

} // namespace app
