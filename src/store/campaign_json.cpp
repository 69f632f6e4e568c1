#include "store/campaign_json.h"

#include "store/campaign_check.h"
#include "store/campaign_values.h"
#include "store/json_place.h"
#include "store/json_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace store {

using base::Error;
using base::ErrorKind;

namespace {

constexpr std::string_view format_word = "tablewick";
constexpr std::int64_t version_max = 1'000'000;
constexpr std::int64_t revision_max = std::int64_t{1} << 53;

// One entry for each version that was ever given out and is no longer the current one.
constexpr std::span<const Migration> migrations{};

Error refused(ErrorKind kind, std::string message, std::string pointer, std::string remedy = {}) {
    base::Place place;
    place.pointer = std::move(pointer);
    return {kind, std::move(message), std::move(place), std::move(remedy)};
}

// Fills in file, line and column of errors that only know their JSON pointer.
void place_all(std::vector<Error>& errors, std::string_view text, const std::string& file) {
    for (Error& error : errors) {
        if (error.place.line == 0 && !text.empty())
            error.place = place_of_pointer(text, error.place.pointer);
        error.place.file = file;
    }
}

CampaignReading
unusable(std::vector<Error> errors, std::string_view text, const std::string& file) {
    place_all(errors, text, file);
    return {std::nullopt, std::move(errors)};
}

struct Header {
    std::string format;
    int version = 0;
    std::uint64_t revision = 0;
};

// Takes the three keys that describe the file, not the campaign, out of the value.
std::optional<Header> take_header(Json& value, Problems& problems) {
    if (!value.is_object()) {
        problems.add(
            ErrorKind::wrong_format,
            "",
            "This is not a campaign file: it must be an object in braces."
        );
        return std::nullopt;
    }
    if (value.value("format", Json()) != format_word) {
        const bool is_there = value.contains("format");
        problems.add(
            ErrorKind::wrong_format,
            is_there ? "/format" : "",
            R"(This is not a campaign file: its "format" must be "tablewick".)"
        );
        return std::nullopt;
    }
    Header header;
    ObjectReader reader(value, problems, "");
    if (const Json* version = reader.find("version", Presence::required))
        if (const auto read = reader.whole("version", *version, {1, version_max}))
            header.version = static_cast<int>(*read);
    if (const Json* revision = reader.find("revision", Presence::optional))
        if (const auto read = reader.whole("revision", *revision, {0, revision_max}))
            header.revision = static_cast<std::uint64_t>(*read);
    if (!problems.empty()) return std::nullopt;
    for (const char* key : {"format", "version", "revision"})
        value.erase(key);
    return header;
}

// A party member's numbers come from its character; what stands beside them in the file is said to
// be left out, not dropped in silence.
void report_party_statistics(const Json& value, std::vector<Error>& problems) {
    const Json::json_pointer list("/encounter/combatants");
    if (!value.contains(list) || !value[list].is_array()) return;
    for (std::size_t i = 0; i < value[list].size(); ++i) {
        const Json& combatant = value[list][i];
        if (combatant.value("character", 0.0) == 0.0) continue;
        for (const char* key : {"statistics", "reminders"})
            if (combatant.contains(key))
                problems.push_back(refused(
                    ErrorKind::duplicate,
                    "A party member's " + std::string(key) +
                        " are those of its character; the ones here are left out.",
                    "/encounter/combatants" + pointer_step(i) + "/" + key
                ));
    }
}

} // namespace

base::Result<base::Nothing>
migrate(Json& value, int version, int to, std::span<const Migration> steps) {
    if (version > to)
        return refused(
            ErrorKind::newer_version,
            "This campaign was written by a newer version of the program (file version " +
                std::to_string(version) + ", this program reads up to " + std::to_string(to) + ").",
            "/version",
            "Open it with the newer version."
        );
    for (; version < to; ++version) {
        const auto step = std::find_if(steps.begin(), steps.end(), [&](const Migration& migration) {
            return migration.from == version;
        });
        if (step == steps.end())
            return refused(
                ErrorKind::wrong_format,
                "File version " + std::to_string(version) + " was never given out.",
                "/version"
            );
        step->change(value);
    }
    return base::Nothing{};
}

CampaignReading read_campaign(std::string_view text, const std::string& file) {
    auto parsed = parse_json(text, file);
    if (!parsed) return {std::nullopt, {parsed.error()}};
    return read_campaign_value(std::move(parsed).value(), text, file);
}

CampaignReading read_campaign_value(Json value, std::string_view text, const std::string& file) {
    Problems problems;
    const auto header = take_header(value, problems);
    if (!header) return unusable(problems.errors(), text, file);
    LoadedCampaign loaded;
    loaded.revision = header->revision;
    loaded.version = header->version;
    if (const auto migrated = migrate(value, loaded.version, file_version, migrations); !migrated)
        return unusable({migrated.error()}, text, file);
    loaded.campaign = from_json<game::Campaign>(value, problems, "");
    if (problems.empty()) check_references(loaded.campaign, problems);
    if (!problems.empty()) return unusable(problems.errors(), text, file);
    std::vector<Error> reported = mend(loaded.campaign);
    report_party_statistics(value, reported);
    place_all(reported, text, file);
    game::link_party(loaded.campaign);
    return {std::move(loaded), std::move(reported)};
}

Json campaign_value(const game::Campaign& campaign, std::uint64_t revision) {
    Json value = Json::object();
    value["format"] = format_word;
    value["version"] = file_version;
    value["revision"] = revision;
    Json sections = to_json(campaign);
    for (auto& [key, section] : sections.items())
        value[key] = std::move(section);
    return value;
}

std::string write_campaign(const game::Campaign& campaign, std::uint64_t revision) {
    return campaign_value(campaign, revision).dump(4) + "\n";
}

} // namespace store
