// What the conditions in play do, a card each.
#include "game/effect_words.h"
#include "print/pages.h"

#include <set>

namespace print {

namespace {

std::set<std::string> in_play(const game::Encounter& encounter) {
    std::set<std::string> keys;
    for (const game::Combatant& combatant : encounter.combatants)
        for (const game::ActiveCondition& condition : combatant.conditions)
            if (!condition.key.empty()) keys.insert(condition.key);
    return keys;
}

} // namespace

base::Result<Blocks> condition_cards(const PrintSource& source, const std::string& detail) {
    const std::set<std::string> keys = in_play(source.campaign.encounter);
    Blocks blocks;
    for (const rules::ConditionRule& rule : source.rulebook.conditions) {
        if (detail != "all" && keys.count(rule.key) == 0) continue;
        Card card{rule.name, rule.summary, {}};
        for (const rules::Effect& effect : rule.effects)
            card.entries.push_back({"", game::effect_text(source.rulebook, effect)});
        for (const std::string& sentence : game::fading_texts(rule))
            card.entries.push_back({"", sentence});
        blocks.emplace_back(std::move(card));
    }
    if (!blocks.empty()) return blocks;
    return base::Error{
        base::ErrorKind::not_found,
        "No condition is in play.",
        {},
        "conditions:all makes a card of each."};
}

} // namespace print
