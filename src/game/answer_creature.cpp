// "creature level 5 guard", "creature cr 1/4 beast elite".
#include "game/answer_topics.h"
#include "game/builder_reading.h"
#include "game/creature_building.h"
#include "game/sheet.h"
#include "rules/challenge_text.h"
#include "rules/creature_building.h"

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using rules::BuildStep;
using rules::Rulebook;

bool is_srd(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5;
}

// "level 5" or "cr 1/4", within the tables.
base::Result<base::Nothing>
take_rating(const Rulebook& rulebook, Words& words, rules::BuildChoice& choice) {
    const rules::CreatureBuilding& building = rulebook.creature_building;
    if (is_srd(rulebook)) {
        if (!words.take("cr")) return misfit();
        const std::optional<double> challenge = words.take_challenge();
        if (!challenge.has_value()) return misfit();
        choice.challenge = *challenge;
        for (const rules::ChallengeStep& step : building.statistics.steps)
            if (step.challenge == *challenge) return base::Nothing{};
        return Error{
            ErrorKind::out_of_range,
            "Challenge " + rules::challenge_text(*challenge) + " is not in the tables."};
    }
    if (!words.take("level")) return misfit();
    const auto level = words.take_number(building.tables.level_min, building.tables.level_max);
    if (!level.has_value())
        return Error{
            ErrorKind::out_of_range,
            "Creatures are built for level " + std::to_string(building.tables.level_min) + " to " +
                std::to_string(building.tables.level_max) + "."};
    choice.level = *level;
    return base::Nothing{};
}

base::Result<base::Nothing>
take_step(const Rulebook& rulebook, Words& words, rules::BuildChoice& choice) {
    if (words.take("weak")) choice.step = BuildStep::weak;
    if (words.take("elite")) choice.step = BuildStep::elite;
    if (choice.step == BuildStep::none || rules::has_step(rulebook, choice, choice.step))
        return base::Nothing{};
    return Error{ErrorKind::not_possible, "The rules have no such form of it."};
}

NamedValues named(const Modifiers& modifiers) {
    NamedValues values;
    for (const auto& [key, modifier] : modifiers)
        values.push_back({key, modifier});
    return values;
}

std::string line_of(const std::vector<rules::StatName>& names, const Modifiers& modifiers) {
    std::string line;
    for (const rules::StatName& name : names) {
        const auto found = modifiers.find(name.key);
        if (found == modifiers.end()) continue;
        line += (line.empty() ? "" : ", ") + name.name + " " + signed_text(found->second);
    }
    return line;
}

std::vector<NamedValues> attack_rows(const Statistics& creature) {
    std::vector<NamedValues> rows;
    for (const Attack& attack : creature.attacks)
        rows.push_back(
            {{"name", attack.name},
             {"bonus", attack.bonus},
             {"damage", attack.damage},
             {"damage_type", attack.damage_type}}
        );
    return rows;
}

void add_lines(const Rulebook& rulebook, const Statistics& creature, Answer& answer) {
    const auto add = [&answer](const std::string& title, const std::string& text) {
        if (!text.empty()) answer.lines.push_back(title + "\t" + text);
    };
    add("AC", std::to_string(creature.armor_class));
    add("HP",
        std::to_string(creature.hit_points) +
            (creature.hit_dice.empty() ? "" : " (" + creature.hit_dice + ")"));
    add("saves", line_of(rulebook.saves, creature.saves));
    add("Perception", signed_text(creature.perception));
    add("skills", line_of(rulebook.skills, creature.skills));
    add("abilities", line_of(rulebook.abilities, creature.abilities));
    for (const Attack& attack : creature.attacks)
        add("attack", built_attack_text(attack));
    for (const auto& [key, dc] : creature.difficulty_classes)
        add(dc_name(key), std::to_string(dc));
}

} // namespace

base::Result<Answer> answer_creature(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    const std::vector<rules::Archetype>& archetypes = rulebook.creature_building.archetypes;
    if (archetypes.empty())
        return Error{
            ErrorKind::not_possible, "This rulebook has no tables to build creatures from."};
    rules::BuildChoice choice;
    choose_archetype(choice, rulebook, archetypes.front().key);
    if (const auto taken = take_rating(rulebook, words, choice); !taken.ok()) return taken.error();
    std::vector<std::string> kinds;
    kinds.reserve(archetypes.size());
    for (const rules::Archetype& archetype : archetypes)
        kinds.push_back(archetype.key);
    if (const auto kind = words.take_key(kinds)) choose_archetype(choice, rulebook, *kind);
    if (const auto taken = take_step(rulebook, words, choice); !taken.ok()) return taken.error();
    const Statistics creature = built_statistics(rulebook, choice);
    Answer answer;
    answer.title =
        choice.name + (is_srd(rulebook) ? ", CR " + rules::challenge_text(creature.challenge)
                                        : ", level " + std::to_string(creature.level));
    add_lines(rulebook, creature, answer);
    answer.source = rulebook.title;
    answer.values = {
        {"armor_class", creature.armor_class},
        {"hit_points", creature.hit_points},
        {"perception", creature.perception},
        {"saves", named(creature.saves)},
        {"abilities", named(creature.abilities)},
        {"skills", named(creature.skills)},
        {"difficulty_classes", named(creature.difficulty_classes)},
        {"attacks", attack_rows(creature)}};
    if (is_srd(rulebook))
        answer.values.push_back({"challenge", Quantity(creature.challenge)});
    else
        answer.values.push_back({"level", creature.level});
    return answer;
}

} // namespace game
