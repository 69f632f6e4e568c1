#include "store/verify.h"

#include "game/date_text.h"
#include "game/roster.h"
#include "store/campaign_json.h"
#include "store/campaign_rulebook.h"
#include "store/journal_replay.h"
#include "store/json_place.h"
#include "store/store_paths.h"

namespace store {

namespace {

constexpr std::size_t problems_shown = 10;

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

VerifyReport refused(const std::vector<base::Error>& problems) {
    VerifyReport report;
    for (std::size_t i = 0; i < problems.size() && i < problems_shown; ++i)
        report.text += base::to_text(problems[i]) + "\n";
    if (problems.size() > problems_shown)
        report.text +=
            "and " + std::to_string(problems.size() - problems_shown) + " more problems\n";
    return report;
}

std::string fight_text(const game::Encounter& encounter) {
    const std::string name = encounter.name.empty() ? "" : " \"" + encounter.name + "\"";
    switch (encounter.phase) {
    case game::Phase::no_fight: return "no fight";
    case game::Phase::gathering: return "fight" + name + " about to start";
    case game::Phase::running:
        return "fight" + name + ", round " + std::to_string(encounter.round) + ", " +
               counted(encounter.order.size(), "combatant", "combatants") + " in order";
    }
    return {};
}

std::string rules_text(const game::About& about) {
    if (about.rules == rules::Family::four_degree) return "four-degree";
    return about.srd_edition == rules::SrdEdition::srd_5_1 ? "srd5 (SRD 5.1)" : "srd5 (SRD 5.2.1)";
}

std::string journal_text(
    Files& files, const StorePaths& paths, const LoadedCampaign& loaded, const FileMark& mark
) {
    const auto text = files.read(paths.journal);
    if (!text) return "no journal";
    const JournalReading journal = read_journal(text.value());
    const Replay replay = replay_journal(loaded, mark, journal);
    std::string waiting = counted(replay.replayed, "journal line", "journal lines") + " waiting";
    if (replay.end == ReplayEnd::other_chain)
        waiting = "the journal belongs to another state of the file";
    else if (replay.end != ReplayEnd::complete || journal.is_damaged)
        waiting += ", then a spoiled one";
    else if (journal.is_torn)
        waiting += ", then an incomplete one";
    return waiting;
}

std::string
summary(Files& files, const StorePaths& paths, const LoadedCampaign& loaded, const FileMark& mark) {
    const game::Campaign& campaign = loaded.campaign;
    return campaign.about.title + "\n" + "rules: " + rules_text(campaign.about) + "\n" +
           "party: " + counted(campaign.party.characters.size(), "character", "characters") + "\n" +
           "shelf: " + counted(campaign.shelf.creatures.size(), "creature", "creatures") + ", " +
           counted(
               campaign.preparation.encounters.size(), "prepared encounter", "prepared encounters"
           ) +
           "\n" + fight_text(campaign.encounter) + "\n" +
           "time: " + game::date_time_text(campaign) + "\n" +
           "history: " + counted(campaign.history.lines.size(), "line", "lines") + "\n" +
           "revision " + std::to_string(loaded.revision) + ", " +
           journal_text(files, paths, loaded, mark) + "\n";
}

} // namespace

std::vector<base::Error> problems_in(
    const game::Campaign& campaign,
    const rules::Rulebook& rulebook,
    std::string_view text,
    const std::string& file
) {
    std::vector<base::Error> errors;
    for (const game::Problem& problem : game::find_problems(campaign, rulebook)) {
        base::Place place = place_of_pointer(text, problem.pointer);
        place.file = file;
        errors.push_back({base::ErrorKind::dangling_reference, problem.text, std::move(place), {}});
    }
    return errors;
}

VerifyReport
verify_campaign(const std::filesystem::path& path, const std::filesystem::path& assets_folder) {
    Files& files = disk();
    const StorePaths paths = store_paths(path);
    const auto text = files.read(paths.file);
    if (!text) return refused({text.error()});
    const CampaignReading reading = read_campaign(text.value(), path.string());
    if (!reading.loaded) return refused(reading.problems);
    const game::About& about = reading.loaded->campaign.about;
    const auto rulebook = load_campaign_rulebook(assets_folder, about, path);
    if (!rulebook) return refused({rulebook.error()});
    std::vector<base::Error> problems = reading.problems;
    for (base::Error& problem :
         problems_in(reading.loaded->campaign, rulebook.value(), text.value(), path.string()))
        problems.push_back(std::move(problem));
    if (!problems.empty()) return refused(problems);
    const FileMark mark = mark_of(text.value(), reading.loaded->revision);
    return {true, summary(files, paths, *reading.loaded, mark)};
}

} // namespace store
