// Creatures as cards to cut out: from the shelf, the fight, the Register, or an open creature.
#include "base/unicode.h"
#include "game/creature_card.h"
#include "game/sheet.h"
#include "print/pages.h"
#include "rules/challenge_text.h"

namespace print {

namespace {

void append(std::string& text, const std::string& word) {
    if (word.empty()) return;
    if (!text.empty()) text += ", ";
    text += word;
}

void add(Card& card, const std::string& label, const std::string& text) {
    if (!text.empty()) card.entries.push_back({label, text});
}

std::string named_modifiers(const std::vector<rules::StatName>& names, const game::Modifiers& all) {
    std::string text;
    for (const rules::StatName& name : names) {
        const auto found = all.find(name.key);
        if (found != all.end()) append(text, name.name + " " + game::signed_text(found->second));
    }
    return text;
}

std::string other_modifiers(const std::vector<rules::StatName>& names, const game::Modifiers& all) {
    std::string text;
    for (const auto& [key, modifier] : all) {
        bool is_named = false;
        for (const rules::StatName& name : names)
            is_named = is_named || name.key == key;
        if (!is_named) append(text, key + " " + game::signed_text(modifier));
    }
    return text;
}

std::string traits_text(const std::vector<game::DamageTrait>& traits) {
    std::string text;
    for (const game::DamageTrait& trait : traits)
        append(text, trait.type + (trait.amount > 0 ? " " + std::to_string(trait.amount) : ""));
    return text;
}

std::string attack_text(const game::Attack& attack) {
    std::string text = game::signed_text(attack.bonus);
    std::string damage = attack.damage;
    if (!attack.damage_type.empty()) damage += " " + attack.damage_type;
    append(text, damage);
    append(text, attack.is_ranged ? "ranged" : "");
    append(text, attack.traits);
    if (attack.per_turn > 0) append(text, std::to_string(attack.per_turn) + " a turn");
    return text;
}

Card card_of(
    const rules::Rulebook& rulebook,
    const std::string& name,
    const game::Statistics& numbers,
    const std::string& notes
) {
    Card card;
    card.title = name;
    card.subtitle = numbers.creature_type;
    append(
        card.subtitle,
        rulebook.family == rules::Family::srd5
            ? "CR " + rules::challenge_text(numbers.challenge)
            : (numbers.hazard == game::Hazard::none ? "level " : "hazard, level ") +
                  std::to_string(numbers.level)
    );
    std::string hit_points = std::to_string(numbers.hit_points);
    if (!numbers.hit_dice.empty()) hit_points += " (" + numbers.hit_dice + ")";
    if (numbers.hardness > 0) hit_points += ", hardness " + std::to_string(numbers.hardness);
    add(card, "AC", std::to_string(numbers.armor_class) + "   HP " + hit_points);
    std::string saves = named_modifiers(rulebook.saves, numbers.saves);
    add(card, "Saves", saves);
    std::string perception = game::signed_text(numbers.perception);
    append(perception, numbers.senses);
    add(card, "Perception", perception);
    std::string speeds;
    for (const auto& [kind, feet] : numbers.speeds_ft)
        append(speeds, kind + " " + std::to_string(feet) + " ft");
    add(card, "Speed", speeds);
    for (const game::Attack& attack : numbers.attacks)
        add(card, attack.name, attack_text(attack));
    std::string dcs;
    for (const auto& [key, dc] : numbers.difficulty_classes)
        append(dcs, game::dc_name(key) + " " + std::to_string(dc));
    add(card, "DCs", dcs);
    add(card, "Resists", traits_text(numbers.resistances));
    add(card, "Weak to", traits_text(numbers.weaknesses));
    std::string immune;
    for (const std::string& each : numbers.immunities)
        append(immune, each);
    add(card, "Immune to", immune);
    add(card, "Abilities", named_modifiers(rulebook.abilities, numbers.abilities));
    std::string skills = named_modifiers(rulebook.skills, numbers.skills);
    append(skills, other_modifiers(rulebook.skills, numbers.skills));
    add(card, "Skills", skills);
    add(card, "Notes", numbers.notes);
    add(card, "", notes == numbers.notes ? "" : notes);
    return card;
}

Card card_of(const rules::Rulebook& rulebook, const game::LibraryCreature& creature) {
    Card card{creature.name, game::card_subtitle(creature), {}};
    for (const game::CardLine& line : game::card_lines(rulebook, creature)) {
        if (line.title == "HP" && !card.entries.empty() && card.entries.back().label == "AC")
            card.entries.back().text += "   HP " + line.text; // as on the cards of those built
        else
            card.entries.push_back({line.title, line.text});
    }
    return card;
}

void add_shelf(Blocks& blocks, const PrintSource& source) {
    for (const game::Creature& creature : source.campaign.shelf.creatures)
        blocks.emplace_back(
            card_of(source.rulebook, creature.name, creature.statistics, creature.notes)
        );
}

void add_fight(Blocks& blocks, const PrintSource& source) {
    for (const game::Combatant& each : source.campaign.encounter.combatants)
        if (each.side != game::Side::party)
            blocks.emplace_back(card_of(source.rulebook, each.name, each.statistics, each.note));
}

void add_register(Blocks& blocks, const PrintSource& source) {
    for (const game::RegisterEntry& entry : source.campaign.registered.entries)
        if (entry.kind == game::Kind::creature || entry.kind == game::Kind::person)
            blocks.emplace_back(Card{
                entry.name, entry.summary, {{"", entry.attitude}, {"", entry.notes}}});
}

} // namespace

base::Result<Blocks> creature_cards(const PrintSource& source, const std::string& detail) {
    Blocks blocks;
    if (detail.empty() || detail == "shelf") {
        add_shelf(blocks, source);
    } else if (detail == "fight") {
        add_fight(blocks, source);
    } else if (detail == "register") {
        add_register(blocks, source);
    } else {
        for (const game::Creature& creature : source.campaign.shelf.creatures)
            if (base::folded(creature.name) == base::folded(detail))
                blocks.emplace_back(
                    card_of(source.rulebook, creature.name, creature.statistics, creature.notes)
                );
        for (const game::LibraryCreature& creature : source.library)
            if (detail == "open" || base::folded(creature.name) == base::folded(detail))
                blocks.emplace_back(card_of(source.rulebook, creature));
    }
    if (!blocks.empty()) return blocks;
    return base::Error{
        base::ErrorKind::not_found,
        detail.empty() || detail == "shelf" || detail == "fight" || detail == "register"
            ? "There are no creatures to make cards of."
            : "There is no creature " + detail + ".",
        {},
        "Cards come from: shelf, fight, register, open, or the name of a creature."};
}

} // namespace print
