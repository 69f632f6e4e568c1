#include "app/options.h"

#include "base/text.h"

#include <charconv>
#include <string_view>

namespace app {

namespace {

base::Error wrong(std::string message) {
    return {base::ErrorKind::bad_text, std::move(message), {}, "See tablewick --help."};
}

template <class Number>
std::optional<Number> number_in(std::string_view text, Number minimum, Number maximum) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    if (number < minimum || number > maximum) return std::nullopt;
    return number;
}

constexpr int size_min = 320;
constexpr int size_max = 8192;

bool read_size(std::string_view text, Options& options) {
    const std::size_t cross = text.find('x');
    if (cross == std::string_view::npos) return false;
    const auto width = number_in(text.substr(0, cross), size_min, size_max);
    const auto height = number_in(text.substr(cross + 1), size_min, size_max);
    if (!width.has_value() || !height.has_value()) return false;
    options.width = *width;
    options.height = *height;
    return true;
}

bool needs_value(std::string_view word) {
    for (const std::string_view known :
         {"--picture",
          "--pictures",
          "--scene",
          "--size",
          "--text-scale",
          "--theme",
          "--verify",
          "--rehearse",
          "--seed",
          "--controls",
          "--new",
          "--rules",
          "--paper",
          "--card",
          "--out"})
        if (word == known) return true;
    return false;
}

base::Result<base::Nothing> read_task(std::string_view word, std::string value, Options& options) {
    if (word == "--picture" || word == "--pictures") {
        options.task = word == "--picture" ? Task::picture : Task::pictures;
        options.picture = std::move(value);
    } else if (word == "--verify" || word == "--new") {
        options.task = word == "--verify" ? Task::verify : Task::create;
        options.campaign = std::move(value);
    } else if (word == "--rehearse") {
        const auto count = number_in(value, 1, 1'000'000);
        if (!count.has_value()) return wrong("--rehearse takes a number of 1 or more.");
        options.task = Task::rehearse;
        options.rehearsals = *count;
    }
    return base::Nothing{};
}

// "a5, a4, letter"
template <class List>
std::string keys_of(const List& list) {
    std::string keys;
    for (const auto& each : list)
        keys += (keys.empty() ? "" : ", ") + std::string(each.key);
    return keys;
}

base::Result<base::Nothing>
read_print_value(std::string_view word, std::string value, Options& options) {
    if (word == "--paper") {
        options.print_setup.paper = print::find_paper(value);
        if (options.print_setup.paper == nullptr)
            return wrong("--paper takes one of " + keys_of(print::papers()) + ".");
    } else if (word == "--card") {
        options.print_setup.card = print::find_card_size(value);
        if (options.print_setup.card == nullptr)
            return wrong("--card takes one of " + keys_of(print::card_sizes()) + ".");
    } else {
        // So that no slip writes over a campaign.
        if (value.size() < 5 || base::lowercase(value).substr(value.size() - 4) != ".pdf")
            return wrong("--out takes a file whose name ends in .pdf.");
        options.out = std::move(value);
    }
    return base::Nothing{};
}

// Words without a value that say how to print.
bool read_print_flag(std::string_view word, print::PrintSetup& setup) {
    if (word == "--rings")
        setup.has_rings = true;
    else if (word == "--double-sided")
        setup.is_double_sided = true;
    else if (word == "--large-type")
        setup.is_large_type = true;
    else if (word == "--two-up")
        setup.arrangement = print::Arrangement::two_up;
    else if (word == "--booklet")
        setup.arrangement = print::Arrangement::booklet;
    else
        return false;
    return true;
}

base::Result<base::Nothing> read_value(std::string_view word, std::string value, Options& options) {
    if (word == "--scene") {
        options.scene = std::move(value);
        // "Fight" is as good as "fight".
        for (char& letter : options.scene)
            letter =
                letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    } else if (word == "--controls") {
        options.controls = std::move(value);
    } else if (word == "--size") {
        if (!read_size(value, options))
            return wrong("--size takes WIDTHxHEIGHT in pixels, 320 to 8192 each.");
    } else if (word == "--text-scale") {
        options.text_scale_percent = number_in(value, 80, 250);
        if (!options.text_scale_percent.has_value())
            return wrong("--text-scale takes a percentage of 80 to 250.");
    } else if (word == "--theme") {
        if (value != "dark" && value != "paper") return wrong("--theme takes dark or paper.");
        options.theme = value == "dark" ? widgets::ThemeName::dark : widgets::ThemeName::paper;
    } else if (word == "--seed") {
        const auto seed = number_in<std::uint64_t>(value, 0, UINT64_MAX);
        if (!seed.has_value()) return wrong("--seed takes a whole number.");
        options.seed = *seed;
    } else if (word == "--rules") {
        if (value != "four-degree" && value != "srd5")
            return wrong("--rules takes four-degree or srd5.");
        options.rules = std::move(value);
    } else if (word == "--paper" || word == "--card" || word == "--out") {
        return read_print_value(word, std::move(value), options);
    } else {
        return read_task(word, std::move(value), options);
    }
    return base::Nothing{};
}

} // namespace

base::Result<Options> read_options(const std::vector<std::string>& arguments) {
    Options options;
    bool only_files = false;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string& word = arguments[i];
        const bool is_option = !only_files && word.size() > 1 && word.front() == '-';
        if (is_option && word == "--") {
            only_files = true;
        } else if (is_option && (word == "--help" || word == "-h")) {
            options.task = Task::help;
            return options;
        } else if (is_option && word == "--version") {
            options.task = Task::version;
            return options;
        } else if (is_option && word == "--touch") {
            options.is_touch = true;
        } else if (is_option && word == "--print") {
            options.task = Task::print;
            while (i + 1 < arguments.size() && arguments[i + 1].substr(0, 1) != "-")
                options.pages.push_back(arguments[++i]);
            if (options.pages.empty()) return wrong("--print needs the name of a page behind it.");
        } else if (is_option && read_print_flag(word, options.print_setup)) {
            continue;
        } else if (is_option && needs_value(word)) {
            if (i + 1 == arguments.size()) return wrong(word + " needs a value behind it.");
            i += 1;
            const auto read = read_value(word, arguments[i], options);
            if (!read.ok()) return read.error();
        } else if (is_option) {
            return wrong("There is no option " + word + ".");
        } else if (!options.campaign.empty()) {
            return wrong("One campaign at a time: " + options.campaign + " or " + word + ".");
        } else {
            options.campaign = word;
        }
    }
    const bool asks_for_list = options.pages == std::vector<std::string>{"help"};
    if (options.task == Task::print && options.out.empty() && !asks_for_list)
        return wrong("--print needs --out FILE.pdf.");
    return options;
}

std::string help_text() {
    return R"(tablewick [CAMPAIGN.json]
    Opens the campaign; without one, your own copy of the demo.

tablewick --new FILE.json [--rules four-degree|srd5]
    Makes an empty campaign and opens it.
tablewick --verify FILE.json
    Reads a campaign and says whether it is sound; ends with 0 or 1.
tablewick [CAMPAIGN.json] --picture FILE.png [--scene NAME] [--size WxH]
    Draws one scene (prep, fight, roam, wrap-up) into a file, without a window.
tablewick [CAMPAIGN.json] --pictures FOLDER [--size WxH]
    Draws every scene in both themes.
tablewick [CAMPAIGN.json] --print PAGE... --out FILE.pdf
    Prints pages, without a window; "--print help" lists them.
    --paper NAME           a5, a4, a6, letter, half-letter, personal
    --two-up, --booklet    two pages a sheet: to cut apart, or to fold
    --rings                a wider inner margin, and marks where binder holes come
    --double-sided         inner margins change sides
    --large-type
    --card SIZE            63x88, 4x6in, a6
tablewick ask WORDS... [--campaign FILE] [--family four-degree|srd5|srd5.2.1] [--json]
    Answers a question of the rules: ask dc level 7 hard; ask odds +9 dc 20. ask help lists them.
tablewick --rehearse N [--seed S]
    Makes N random edits to a campaign of its own, ends without warning and checks what is kept.

For windows and pictures:
    --text-scale P         80 to 250 per cent
    --theme dark|paper
    --touch                larger targets for fingers
    --controls FILE        keeps a list of everything that can be pressed in FILE, for tests and
                           assistive scripts
--help, --version

Ends with 0 when all went well, 1 when a file is not sound, 2 for a wrong command line,
3 when there is no display to draw on.
)";
}

} // namespace app
