#include "game/creature_card.h"

#include "game/sheet.h"
#include "rules/challenge_text.h"

namespace game {

namespace {

void append(std::string& text, const std::string& word) {
    if (word.empty()) return;
    if (!text.empty()) text += ", ";
    text += word;
}

std::string modifiers_text(const std::vector<rules::StatName>& names, const Modifiers& modifiers) {
    std::string text;
    for (const rules::StatName& name : names) {
        const auto found = modifiers.find(name.key);
        if (found != modifiers.end()) append(text, name.name + " " + signed_text(found->second));
    }
    return text;
}

// "Strength 21 (+5)"; the modifier alone where the score is not known.
std::string abilities_text(const rules::Rulebook& rulebook, const LibraryCreature& creature) {
    std::string text;
    for (const rules::StatName& name : rulebook.abilities) {
        const auto modifier = creature.statistics.abilities.find(name.key);
        if (modifier == creature.statistics.abilities.end()) continue;
        const std::string sign = signed_text(modifier->second);
        const auto score = creature.ability_scores.find(name.key);
        append(
            text,
            name.name + " " +
                (score == creature.ability_scores.end()
                     ? sign
                     : std::to_string(score->second) + " (" + sign + ")")
        );
    }
    return text;
}

std::string traits_text(const std::vector<DamageTrait>& traits) {
    std::string text;
    for (const DamageTrait& trait : traits)
        append(text, trait.type);
    return text;
}

std::string feet_text(const std::map<std::string, int>& distances) {
    std::string text;
    for (const auto& [kind, feet] : distances)
        append(text, kind + " " + std::to_string(feet) + " ft");
    return text;
}

std::string reach_text(const LibraryAttack& attack) {
    std::string text;
    if (attack.is_melee) text = "reach " + std::to_string(attack.reach_ft) + " ft";
    if (attack.range_ft == 0) return text;
    std::string range = "range " + std::to_string(attack.range_ft);
    if (attack.long_range_ft > 0) range += "/" + std::to_string(attack.long_range_ft);
    append(text, range + " ft");
    return text;
}

std::string attack_text(const LibraryAttack& attack) {
    std::string text = signed_text(attack.bonus);
    append(text, reach_text(attack));
    for (const DamagePart& part : attack.damage)
        append(text, part.dice + " " + part.type);
    if (attack.escape_dc > 0)
        append(text, "grapples, escape DC " + std::to_string(attack.escape_dc));
    append(text, recharge_text(attack.recharge));
    append(text, attack.note);
    return text;
}

std::string spellcasting_text(const Spellcasting& magic) {
    std::string text = magic.ability + " DC " + std::to_string(magic.dc);
    if (magic.bonus.has_value()) append(text, "attack " + signed_text(*magic.bonus));
    if (magic.caster_level > 0) append(text, "caster level " + std::to_string(magic.caster_level));
    return text;
}

class Card {
public:
    void add(const std::string& title, const std::string& text) {
        if (!text.empty()) lines.push_back({title, text});
    }

    std::vector<CardLine> lines;
};

void add_offence(Card& card, const LibraryCreature& creature) {
    for (const auto& routine : creature.routines)
        card.add("A turn", routine_text(routine));
    for (const LibraryAttack& attack : creature.attacks)
        card.add(attack.name, attack_text(attack));
    for (const SaveEffect& effect : creature.save_effects)
        card.add(effect.name, save_effect_text(effect));
    for (const Spellcasting& magic : creature.spellcasting)
        card.add("Magic", spellcasting_text(magic));
    if (creature.legendary_actions > 0)
        card.add("Legendary actions", std::to_string(creature.legendary_actions) + " a round");
    for (const std::string& note : creature.notes)
        card.add("Note", note);
}

} // namespace

std::string card_subtitle(const LibraryCreature& creature) {
    std::string text = creature.size + " " + creature.type;
    append(text, "CR " + rules::challenge_text(creature.statistics.challenge));
    append(text, std::to_string(creature.xp) + " XP");
    return text;
}

std::vector<CardLine> card_lines(const rules::Rulebook& rulebook, const LibraryCreature& creature) {
    const Statistics& numbers = creature.statistics;
    Card card;
    card.add("AC", std::to_string(numbers.armor_class));
    std::string hit_points = std::to_string(numbers.hit_points);
    if (!numbers.hit_dice.empty()) hit_points += " (" + numbers.hit_dice + ")";
    card.add("HP", hit_points);
    std::string speeds = feet_text(numbers.speeds_ft);
    append(speeds, creature.hovers ? "hovers" : "");
    card.add("Speed", speeds);
    card.add("Abilities", abilities_text(rulebook, creature));
    card.add("Saves", modifiers_text(rulebook.saves, numbers.saves));
    card.add("Skills", modifiers_text(rulebook.skills, numbers.skills));
    card.add("Vulnerable to", traits_text(numbers.weaknesses));
    card.add("Resists", traits_text(numbers.resistances));
    std::string immune;
    for (const std::string& each : numbers.immunities)
        append(immune, each);
    card.add("Immune to", immune);
    std::string senses = feet_text(creature.senses_ft);
    append(senses, "passive Perception " + std::to_string(creature.passive_perception));
    card.add("Senses", senses);
    add_offence(card, creature);
    return card.lines;
}

} // namespace game
