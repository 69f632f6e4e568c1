#include "app/ask.h"

#include "app/read_campaign.h"
#include "store/answer_json.h"
#include "store/prices.h"
#include "store/reference_json.h"
#include "store/rulebook_json.h"

#include <memory>

namespace app {

namespace {

using base::Error;
using base::ErrorKind;

Error wrong(std::string message) {
    return {ErrorKind::bad_text, std::move(message), {}, "See tablewick ask help."};
}

base::Result<base::Nothing>
set_rulebook(AskOptions& options, const std::optional<game::RulebookChoice>& choice) {
    if (!choice) return wrong("--family takes four-degree, srd5 or srd5.2.1.");
    options.rulebook = choice;
    return base::Nothing{};
}

std::string printed(const game::Answer& answer) {
    std::string text = answer.title + "\n";
    for (const std::string& line : game::aligned_lines(answer))
        text += line + "\n";
    if (!answer.source.empty()) text += "Source: " + answer.source + "\n";
    return text;
}

} // namespace

base::Result<AskOptions> read_ask_options(const std::vector<std::string>& arguments) {
    AskOptions options;
    for (std::size_t at = 0; at < arguments.size(); ++at) {
        const std::string& word = arguments[at];
        if (word == "--json") {
            options.as_json = true;
        } else if (word == "--campaign" || word == "--family") {
            at += 1;
            if (at == arguments.size()) return wrong(word + " needs a value behind it.");
            if (word == "--campaign") {
                options.campaign = arguments[at];
                continue;
            }
            const auto set = set_rulebook(options, game::rulebook_choice(arguments[at]));
            if (!set.ok()) return set.error();
        } else if (word.compare(0, 2, "--") == 0) {
            return wrong("There is no option " + word + " for a question.");
        } else {
            options.words += (options.words.empty() ? "" : " ") + word;
        }
    }
    if (const auto choice = game::take_rulebook_choice(options.words)) options.rulebook = choice;
    return options;
}

base::Result<std::string> ask(const AskOptions& options, const std::filesystem::path& assets) {
    std::unique_ptr<OpenCampaign> campaign;
    if (!options.campaign.empty()) {
        auto read = read_for_pictures(options.campaign, assets);
        if (!read.ok()) return read.error();
        campaign = std::move(read).value();
        const game::About& about = campaign->document().view().about;
        const bool is_other = options.rulebook && options.rulebook->family != about.rules;
        if (is_other)
            return wrong("This campaign is played by another rulebook than the one you named.");
    }
    rules::Rulebook rulebook;
    rules::PriceBook prices;
    game::Reference reference;
    if (campaign == nullptr) {
        const game::RulebookChoice choice = options.rulebook.value_or(game::RulebookChoice{});
        auto loaded = store::load_rulebook(assets, choice.family, choice.edition);
        if (!loaded.ok()) return loaded.error();
        rulebook = std::move(loaded).value();
        auto list = store::load_prices(assets, choice.family, choice.edition);
        if (!list.ok()) return list.error();
        prices = std::move(list).value();
        auto rules = store::load_reference(assets, choice.family, choice.edition);
        if (!rules.ok()) return rules.error();
        reference = std::move(rules).value();
    }
    const game::AnswerContext context{
        campaign == nullptr ? rulebook : campaign->rulebook(),
        campaign == nullptr ? nullptr : &campaign->document().view(),
        campaign == nullptr ? nullptr : &campaign->climates(),
        campaign == nullptr ? &prices : &campaign->prices(),
        campaign == nullptr ? &reference : &campaign->reference()};
    const auto answer = game::answer(context, options.words);
    if (!answer.ok()) return answer.error();
    return options.as_json ? store::answer_json(answer.value()) : printed(answer.value());
}

} // namespace app
