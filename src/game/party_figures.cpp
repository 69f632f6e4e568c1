#include "game/party_figures.h"

#include "game/sheet.h"

#include <algorithm>
#include <set>

namespace game {

using rules::Rulebook;

namespace {

// What a save or a skill is called where an ability lends it its name (srd5: "Dexterity").
std::string save_name(const Rulebook& rulebook, const rules::StatName& save) {
    const bool is_ability = std::any_of(
        rulebook.abilities.begin(),
        rulebook.abilities.end(),
        [&](const rules::StatName& ability) { return ability.key == save.key; }
    );
    return is_ability ? save.name + " save" : save.name;
}

std::string plain_words(std::string key) {
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

bool is_skill_of(const Rulebook& rulebook, const std::string& key) {
    return std::any_of(
        rulebook.skills.begin(),
        rulebook.skills.end(),
        [&](const rules::StatName& skill) { return skill.key == key; }
    );
}

using Characters = std::vector<const Character*>;

Characters shown_characters(const Party& party, bool with_absent) {
    Characters shown;
    for (const Character& character : party.characters)
        if (with_absent || character.is_present) shown.push_back(&character);
    return shown;
}

// Skills that the rulebook does not list: lores and tools, by the alphabet.
std::set<std::string> own_skills(const Rulebook& rulebook, const Characters& characters) {
    std::set<std::string> keys;
    for (const Character* character : characters)
        for (const auto& [key, modifier] : character->statistics.skills)
            if (key != "perception" && !is_skill_of(rulebook, key)) keys.insert(key);
    return keys;
}

template <class Numbers>
bool has_any(const Characters& characters, Numbers Statistics::*numbers, const std::string& key) {
    return std::any_of(characters.begin(), characters.end(), [&](const Character* character) {
        return (character->statistics.*numbers).count(key) > 0;
    });
}

std::string passive_name(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5 ? "passive Perception" : "Perception DC";
}

std::string opening(std::string word) {
    constexpr char to_upper = 'a' - 'A';
    if (!word.empty() && word.front() >= 'a' && word.front() <= 'z')
        word.front() = static_cast<char>(word.front() - to_upper);
    return word;
}

// The first letters of a word that has no short form of its own, never half a character.
std::string cut(const std::string& word) {
    constexpr std::size_t letters = 5;
    if (word.size() <= letters) return word;
    std::size_t end = letters;
    while (end > 0 && (static_cast<unsigned char>(word[end]) & 0xC0U) == 0x80U)
        end -= 1;
    return word.substr(0, end);
}

std::vector<FigureColumn> columns_of(const Rulebook& rulebook, const Characters& characters) {
    std::vector<FigureColumn> columns{{FigureKind::armor_class, "ac", "AC", "AC"}};
    for (const rules::StatName& save : rulebook.saves)
        columns.push_back({FigureKind::save, save.key, save_name(rulebook, save), save.brief});
    columns.push_back({FigureKind::perception, "perception", "Perception", "Perc"});
    columns.push_back(
        {FigureKind::passive_perception,
         "passive_perception",
         passive_name(rulebook),
         rulebook.family == rules::Family::srd5 ? "passive" : "Perc DC"}
    );
    for (const rules::StatName& skill : rulebook.skills)
        if (skill.key != "perception" && has_any(characters, &Statistics::skills, skill.key))
            columns.push_back({FigureKind::skill, skill.key, skill.name, skill.brief});
    for (const std::string& key : own_skills(rulebook, characters))
        columns.push_back(
            {FigureKind::skill, key, opening(plain_words(key)), cut(opening(plain_words(key)))}
        );
    std::set<std::string> dcs;
    std::set<std::string> speeds;
    for (const Character* character : characters) {
        for (const auto& [key, dc] : character->statistics.difficulty_classes)
            dcs.insert(key);
        for (const auto& [key, feet] : character->statistics.speeds_ft)
            speeds.insert(key);
    }
    for (const std::string& key : dcs)
        columns.push_back({FigureKind::dc, key, opening(dc_name(key)), opening(dc_name(key))});
    for (const std::string& key : speeds)
        columns.push_back(
            {FigureKind::speed,
             key,
             key == "land" ? "Speed" : opening(plain_words(key)) + " speed",
             key == "land" ? "Speed" : opening(plain_words(key))}
        );
    return columns;
}

bool is_written(const Statistics& sheet, const FigureColumn& column) {
    switch (column.kind) {
    case FigureKind::save: return sheet.saves.count(column.key) > 0;
    case FigureKind::skill: return sheet.skills.count(column.key) > 0;
    case FigureKind::dc: return sheet.difficulty_classes.count(column.key) > 0;
    case FigureKind::speed: return sheet.speeds_ft.count(column.key) > 0;
    case FigureKind::armor_class:
    case FigureKind::perception:
    case FigureKind::passive_perception: return true;
    }
    return true;
}

EffectiveNumber
number_of(const Rulebook& rulebook, const Combatant& combatant, const FigureColumn& column) {
    switch (column.kind) {
    case FigureKind::armor_class: return effective_ac(rulebook, combatant);
    case FigureKind::save:
    case FigureKind::perception:
    case FigureKind::skill: return effective_check(rulebook, combatant, column.key);
    case FigureKind::passive_perception: return passive_perception(rulebook, combatant);
    case FigureKind::dc: return effective_dc(rulebook, combatant, column.key);
    case FigureKind::speed: return effective_speed(rulebook, combatant, column.key);
    }
    return {};
}

// Worse than every number: what fails by a rule.
int rank(const EffectiveNumber& number) {
    constexpr int below_all = -1'000'000;
    return number.fails ? below_all : number.total;
}

void mark_best_and_worst(PartyFigures& party, std::size_t column) {
    std::vector<int> ranks;
    for (const PartyRow& row : party.rows)
        if (row.figures[column].is_there) ranks.push_back(rank(row.figures[column].number));
    if (ranks.empty()) return;
    const auto [worst, best] = std::minmax_element(ranks.begin(), ranks.end());
    if (*worst == *best) return;
    for (PartyRow& row : party.rows) {
        PartyFigure& figure = row.figures[column];
        if (!figure.is_there) continue;
        figure.is_best = rank(figure.number) == *best;
        figure.is_worst = rank(figure.number) == *worst;
    }
}

} // namespace

Combatant combatant_of(const Campaign& campaign, const Character& character) {
    const Combatant* known = find_party_combatant(campaign.encounter, character.id);
    if (known != nullptr) return *known;
    Combatant plain;
    plain.side = Side::party;
    plain.character = character.id;
    plain.name = character.name;
    plain.statistics = character.statistics;
    return plain;
}

EffectiveNumber passive_perception(const Rulebook& rulebook, const Combatant& combatant) {
    constexpr int base = 10;
    constexpr int for_mode = 5;
    EffectiveNumber number = effective_check(rulebook, combatant, "perception");
    number.base += base;
    number.total += base;
    if (number.mode == rules::RollMode::advantage) number.total += for_mode;
    if (number.mode == rules::RollMode::disadvantage) number.total -= for_mode;
    number.mode = rules::RollMode::normal;
    return number;
}

PartyFigures party_figures(const Campaign& campaign, const Rulebook& rulebook, bool with_absent) {
    const Characters shown = shown_characters(campaign.party, with_absent);
    PartyFigures party;
    party.columns = columns_of(rulebook, shown);
    for (const Character* character : shown) {
        const Combatant combatant = combatant_of(campaign, *character);
        PartyRow row;
        row.character = character->id;
        row.combatant = combatant.id;
        row.name = character->name;
        row.is_present = character->is_present;
        row.senses = character->statistics.senses;
        for (const FigureColumn& column : party.columns) {
            PartyFigure figure;
            figure.is_on_sheet = is_written(character->statistics, column);
            const bool needs_sheet =
                column.kind == FigureKind::dc || column.kind == FigureKind::speed;
            figure.is_there = figure.is_on_sheet || !needs_sheet;
            if (figure.is_there) figure.number = number_of(rulebook, combatant, column);
            row.figures.push_back(std::move(figure));
        }
        party.rows.push_back(std::move(row));
    }
    for (std::size_t column = 0; column < party.columns.size(); ++column)
        mark_best_and_worst(party, column);
    return party;
}

bool is_rolled(FigureKind kind) {
    return kind == FigureKind::save || kind == FigureKind::perception || kind == FigureKind::skill;
}

std::vector<RollableStat> rollable_stats(const Party& party, const Rulebook& rulebook) {
    std::vector<RollableStat> stats{{"perception", "Perception"}};
    for (const rules::StatName& save : rulebook.saves)
        stats.push_back({save.key, save_name(rulebook, save)});
    for (const rules::StatName& skill : rulebook.skills)
        if (skill.key != "perception") stats.push_back({skill.key, skill.name});
    for (const std::string& key : own_skills(rulebook, shown_characters(party, true)))
        stats.push_back({key, opening(plain_words(key))});
    if (rulebook.family == rules::Family::srd5)
        for (const rules::StatName& ability : rulebook.abilities)
            stats.push_back({ability.key + "_check", ability.name + " check"});
    return stats;
}

std::string rollable_name(const Rulebook& rulebook, std::string_view key) {
    for (const RollableStat& stat : rollable_stats({}, rulebook))
        if (stat.key == key) return stat.name;
    return opening(plain_words(std::string(key)));
}

} // namespace game
