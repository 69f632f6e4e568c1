#include "game/sheet.h"

#include <cstddef>
#include <utility>

namespace game {

using rules::Rulebook;

static std::string name_of(const Rulebook& rulebook, const std::string& key, bool is_brief) {
    const rules::StatName* stat = rules::find_stat(rulebook, key);
    if (stat == nullptr) return key;
    return is_brief && !stat->brief.empty() ? stat->brief : stat->name;
}

std::string dc_name(const std::string& key) {
    const std::string ending = "_dc";
    if (key.size() <= ending.size() ||
        key.compare(key.size() - ending.size(), ending.size(), ending) != 0)
        return key;
    return key.substr(0, key.size() - ending.size()) + " DC";
}

std::string signed_text(int number) {
    return (number < 0 ? "" : "+") + std::to_string(number);
}

std::vector<SheetNumber> sheet_numbers(const Rulebook& rulebook, const Combatant& combatant) {
    const Statistics& sheet = combatant.statistics;
    std::vector<SheetNumber> numbers;
    numbers.push_back({SheetPart::armor_class, "ac", "AC", "AC", effective_ac(rulebook, combatant)}
    );
    for (const rules::StatName& save : rulebook.saves) {
        numbers.push_back(
            {SheetPart::save,
             save.key,
             save.name,
             save.brief,
             effective_check(rulebook, combatant, save.key)}
        );
    }
    numbers.push_back(
        {SheetPart::perception,
         "perception",
         "Perception",
         "Perc",
         effective_check(rulebook, combatant, "perception")}
    );
    for (const auto& [key, modifier] : sheet.skills) {
        if (key == "perception") continue; // srd5 lists it as a skill; it stands above already
        numbers.push_back(
            {SheetPart::skill,
             key,
             name_of(rulebook, key, false),
             name_of(rulebook, key, true),
             effective_check(rulebook, combatant, key)}
        );
    }
    for (std::size_t place = 0; place < sheet.attacks.size(); ++place) {
        const Attack& attack = sheet.attacks[place];
        numbers.push_back(
            {SheetPart::attack,
             std::to_string(place),
             attack.name,
             attack.name,
             effective_attack(rulebook, combatant, attack)}
        );
    }
    for (const auto& [key, dc] : sheet.difficulty_classes) {
        numbers.push_back(
            {SheetPart::difficulty_class,
             key,
             dc_name(key),
             dc_name(key),
             effective_dc(rulebook, combatant, key)}
        );
    }
    return numbers;
}

std::vector<int>
attack_series(const Rulebook& rulebook, const Combatant& combatant, const Attack& attack) {
    const std::vector<int>& penalties =
        attack.is_agile ? rulebook.turn.agile_attack_penalty : rulebook.turn.attack_penalty;
    Combatant then = combatant;
    std::vector<int> series;
    do {
        then.attacks_made = static_cast<int>(series.size());
        series.push_back(effective_attack(rulebook, then, attack).total);
    } while (series.size() < penalties.size());
    return series;
}

} // namespace game
