#include "game/experience.h"

#include "game/roster.h"

#include <map>
#include <utility>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;

std::string joined(const std::vector<std::string>& names) {
    std::string list;
    for (std::size_t at = 0; at < names.size(); ++at) {
        if (at > 0) list += at + 1 == names.size() ? " and " : ", ";
        list += names[at];
    }
    return list;
}

} // namespace

std::vector<Id> present_characters(const Party& party) {
    std::vector<Id> present;
    for (const Character& character : party.characters)
        if (character.is_present) present.push_back(character.id);
    return present;
}

base::Result<std::vector<XpGain>> xp_gains(
    const Campaign& campaign,
    const rules::Rulebook& rulebook,
    const std::vector<Id>& characters,
    int xp
) {
    const std::string_view pace = pace_of(campaign.about, rulebook);
    std::vector<XpGain> gains;
    for (const Id id : characters) {
        const Character* character = find_character(campaign.party, id);
        if (character == nullptr) continue;
        const int level = character->statistics.level;
        const auto after = rules::gain_xp(rulebook, level, character->experience, xp, pace);
        if (!after.ok()) {
            Error error = after.error();
            error.message = character->name + ": " + error.message;
            return error;
        }
        gains.push_back({id, character->name, level, after.value()});
    }
    if (gains.empty()) return Error{ErrorKind::not_possible, "Nobody of the party is chosen."};
    return gains;
}

base::Result<std::string> award_xp(
    Campaign& campaign, const rules::Rulebook& rulebook, const std::vector<Id>& characters, int xp
) {
    const auto gains = xp_gains(campaign, rulebook, characters, xp);
    if (!gains.ok()) return gains.error();
    for (const XpGain& gain : gains.value()) {
        Character changed = *find_character(std::as_const(campaign.party), gain.character);
        changed.experience = gain.after.xp;
        changed.statistics.level = gain.after.level;
        update_character(campaign, changed);
    }
    return award_text(campaign.party, gains.value(), xp);
}

std::string award_text(const Party& party, const std::vector<XpGain>& gains, int xp) {
    std::vector<std::string> names;
    std::map<int, std::vector<std::string>> risen; // by the level reached
    for (const XpGain& gain : gains) {
        names.push_back(gain.name);
        if (gain.after.levels_gained > 0) risen[gain.after.level].push_back(gain.name);
    }
    const bool is_whole_party = names.size() > 1 && names.size() == party.characters.size();
    std::string text = "Award " + std::to_string(xp) + " XP to " +
                       (is_whole_party ? std::string("the whole party") : joined(names));
    for (const auto& [level, who] : risen)
        text += "; " + joined(who) + (who.size() == 1 ? " reaches" : " reach") + " level " +
                std::to_string(level);
    if (!risen.empty()) text += " (only the level is raised)";
    return text;
}

std::string experience_text(
    const rules::Rulebook& rulebook, const Character& character, std::string_view pace
) {
    const std::string xp = std::to_string(character.experience);
    const auto now =
        rules::gain_xp(rulebook, character.statistics.level, character.experience, 0, pace);
    if (!now.ok() || !now.value().xp_to_next) return xp + " XP";
    const int next = *now.value().xp_to_next;
    if (rulebook.family == rules::Family::four_degree)
        return xp + " of " + std::to_string(now.value().xp + next) + " XP";
    return xp + " XP, " + std::to_string(next) + " to level " +
           std::to_string(now.value().level + 1);
}

std::string_view pace_of(const About& about, const rules::Rulebook& rulebook) {
    for (const rules::AdvancementPace& pace : rulebook.advancement.paces)
        if (pace.key == about.pace) return about.pace;
    return {};
}

} // namespace game
