// "party", "party will dc 20".
#include "base/text.h"
#include "game/answer_topics.h"
#include "game/effect_words.h"
#include "game/effects.h"
#include "game/party_odds.h"
#include "game/sheet.h"

#include <algorithm>
#include <map>

namespace game {

namespace {

using rules::Rulebook;

std::vector<const Combatant*> present_party(const Campaign& campaign) {
    std::vector<const Combatant*> present;
    for (const Character& character : campaign.party.characters) {
        const Combatant* combatant = find_party_combatant(campaign.encounter, character.id);
        if (character.is_present && combatant != nullptr) present.push_back(combatant);
    }
    return present;
}

// "11*": a condition has changed the number.
std::string shown(const EffectiveNumber& number, bool is_signed) {
    return (is_signed ? signed_text(number.total) : std::to_string(number.total)) +
           (number.total != number.base ? "*" : "");
}

Answer defences(const Rulebook& rulebook, const std::vector<const Combatant*>& party) {
    Answer answer;
    answer.title = "The party's defences now";
    std::string head = "\tHP\tAC";
    for (const rules::StatName& save : rulebook.saves)
        head += "\t" + save.brief;
    answer.lines.push_back(head + "\tPerc");
    std::vector<NamedValues> rows;
    bool is_changed = false;
    for (const Combatant* combatant : party) {
        const int hp_max = effective_hp_max(rulebook, *combatant);
        const EffectiveNumber armor_class = effective_ac(rulebook, *combatant);
        std::string line = combatant->name + "\t" + std::to_string(combatant->hp) + "/" +
                           std::to_string(hp_max) + "\t" + shown(armor_class, false);
        is_changed = is_changed || armor_class.total != armor_class.base;
        NamedValues saves;
        for (const rules::StatName& save : rulebook.saves) {
            const EffectiveNumber number = effective_check(rulebook, *combatant, save.key);
            line += "\t" + shown(number, true);
            is_changed = is_changed || number.total != number.base;
            saves.push_back({save.key, number.total});
        }
        const EffectiveNumber perception = effective_check(rulebook, *combatant, "perception");
        is_changed = is_changed || perception.total != perception.base;
        answer.lines.push_back(line + "\t" + shown(perception, true));
        rows.push_back(
            {{"name", combatant->name},
             {"hp", combatant->hp},
             {"hp_max", hp_max},
             {"ac", armor_class.total},
             {"saves", std::move(saves)},
             {"perception", perception.total}}
        );
    }
    if (is_changed) answer.lines.emplace_back("* changed by a condition");
    answer.values = {{"characters", std::move(rows)}};
    return answer;
}

// A save, skill or ability by its key, name or short name.
std::optional<std::string> take_stat(const Rulebook& rulebook, Words& words) {
    std::map<std::string, std::string> keys{
        {"perception", "perception"}, {"initiative", "initiative"}};
    for (const auto* list : {&rulebook.saves, &rulebook.skills, &rulebook.abilities}) {
        for (const rules::StatName& stat : *list) {
            for (const std::string& name : {stat.key, stat.name, stat.brief})
                keys.emplace(base::lowercase(name), stat.key);
        }
    }
    std::vector<std::string> names;
    for (const auto& [name, key] : keys) {
        names.push_back(name);
        std::replace(names.back().begin(), names.back().end(), ' ', '_');
    }
    std::optional<std::string> taken = words.take_key(names);
    if (!taken) return {};
    const auto found = keys.find(*taken);
    if (found != keys.end()) return found->second;
    std::replace(taken->begin(), taken->end(), '_', ' ');
    return keys.at(*taken);
}

} // namespace

base::Result<Answer> answer_party(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    if (context.campaign == nullptr)
        return base::Error{
            base::ErrorKind::not_possible, "Which party? Name a campaign with --campaign FILE."};
    const std::vector<const Combatant*> party = present_party(*context.campaign);
    if (party.empty())
        return base::Error{base::ErrorKind::not_possible, "Nobody of the party plays tonight."};
    if (words.is_at_end()) return defences(rulebook, party);

    const auto stat = take_stat(rulebook, words);
    if (!stat || !words.take("dc")) return misfit();
    const auto dc = words.take_number(0, AnswerLimits::dc_max);
    if (!dc) return misfit();
    std::vector<rules::GroupMember> members;
    std::vector<NamedValues> rows;
    std::vector<std::string> lines;
    for (const Combatant* combatant : party) {
        const EffectiveNumber number = effective_check(rulebook, *combatant, *stat);
        members.push_back({number.total, number.mode, number.fails});
        const rules::DegreeOdds odds =
            rules::member_odds(check_kind(rulebook), members.back(), *dc);
        const rules::Fraction succeeds = rules::exact_chance_of_success(odds);
        lines.push_back(
            combatant->name + "\t" + signed_text(number.total) + "\t" +
            precise_percent(rules::value_of(succeeds))
        );
        rows.push_back(
            {{"name", combatant->name},
             {"modifier", number.total},
             {"succeeds", Quantity(succeeds)}}
        );
    }
    Answer answer;
    add_group(answer, check_kind(rulebook), members, *dc);
    answer.lines.insert(answer.lines.end(), lines.begin(), lines.end());
    answer.title = stat_phrase(rulebook, *stat) + ": " + answer.title;
    answer.values.push_back({"characters", std::move(rows)});
    return answer;
}

} // namespace game
