// Numbers by challenge rating from the statistics of the creatures of SRD 5.1 (CC-BY-4.0), see
// challenge_bands.h; the rest follows as in every entry there: saves and skills are ability plus
// proficiency, attacks and spell DC tell the ability behind them.
#include "rules/challenge_bands.h"
#include "rules/creature_building_parts.h"
#include "rules/natural_dice.h"

#include <algorithm>
#include <cmath>

namespace rules {

namespace {

using Bands = std::vector<ChallengeBand>;

int value_in(const ChallengeBand& bands, Band band) {
    if (band <= Band::low) return bands.low;
    return band >= Band::high ? bands.high : bands.typical;
}

std::vector<BandOffer> offers_of(const ChallengeBand& bands) {
    std::vector<BandOffer> offers;
    for (const Band band : {Band::low, Band::typical, Band::high}) {
        const int value = value_in(bands, band);
        offers.push_back({band, {value, value}, value});
    }
    return offers;
}

// The place on the list of challenge ratings, weak and elite counted.
std::size_t rating_of(const ChallengeStatistics& statistics, const BuildChoice& choice) {
    const std::size_t place = step_of(statistics, choice.challenge);
    if (choice.step == BuildStep::elite && place + 1 < statistics.steps.size()) return place + 1;
    if (choice.step == BuildStep::weak && place > 0) return place - 1;
    return place;
}

class Offers {
public:
    Offers(const Rulebook& rulebook, const BuildChoice& choice)
        : statistics_(rulebook.creature_building.statistics), choice_(choice),
          rating_(rating_of(statistics_, choice)) {}

    int proficiency() const { return statistics_.steps[rating_].proficiency; }

    void
    add(const std::string& key,
        const std::string& name,
        std::optional<Band> usual,
        Quartiles ChallengeRow::*number,
        int otherwise = 0) {
        const Bands bands = challenge_bands(statistics_, number);
        std::vector<BandOffer> offered;
        if (!bands.empty()) offered = offers_of(bands[rating_]);
        offers.push_back(
            settled_offer(choice_.numbers, key, name, usual, std::move(offered), otherwise)
        );
    }

    // Untrained, trained, and expert where that exists: ability plus no, one or two proficiencies.
    void add_trained(
        const std::string& key, const std::string& name, Band usual, int ability, bool has_expert
    ) {
        std::vector<BandOffer> offered;
        int value = ability;
        for (const Band band : {Band::untrained, Band::trained, Band::expert}) {
            if (band == Band::expert && !has_expert) break;
            offered.push_back({band, {value, value}, value});
            value += proficiency();
        }
        offers.push_back(
            settled_offer(choice_.numbers, key, name, usual, std::move(offered), ability)
        );
    }

    // The ability behind a number that is `above` more than ability and proficiency. Proficiency
    // rises in jumps; the ability does not fall when it does.
    int ability_behind(const std::string& key, Quartiles ChallengeRow::*number, int above) const {
        const NumberOffer& offer = *find_offer(offers, key);
        int ability = offer.value - above - proficiency();
        if (!offer.band) return ability;
        const Bands bands = challenge_bands(statistics_, number);
        for (std::size_t place = 0; place < rating_; ++place) {
            const int before =
                value_in(bands[place], *offer.band) - above - statistics_.steps[place].proficiency;
            ability = std::max(ability, before);
        }
        return ability;
    }

    std::vector<NumberOffer> offers;

private:
    const ChallengeStatistics& statistics_;
    const BuildChoice& choice_;
    std::size_t rating_;
};

void add_abilities(
    Offers& all, const Rulebook& rulebook, const Archetype& archetype, bool has_magic
) {
    for (const StatName& ability : rulebook.abilities) {
        const ArchetypeAbility& source = archetype.abilities.at(ability.key);
        std::optional<Band> usual = source.band;
        int otherwise = source.fixed;
        if (has_magic && ability.key == archetype.spell_ability) {
            usual.reset();
            otherwise = all.ability_behind(
                "spell_dc",
                &ChallengeRow::save_dc,
                rulebook.creature_building.statistics.spell_dc_base
            );
        } else if (ability.key == archetype.attack_ability) {
            usual.reset();
            otherwise = all.ability_behind("attack", &ChallengeRow::attack, 0);
        }
        all.add("ability_" + ability.key, ability.name, usual, &ChallengeRow::ability, otherwise);
    }
}

void add_attacks(Offers& all, const Archetype& archetype) {
    all.add(
        "attacks_per_turn",
        "Attacks a turn",
        archetype.attacks_per_turn,
        &ChallengeRow::attacks_per_turn
    );
    for (std::size_t place = 0; place < archetype.attacks.size(); ++place) {
        const ArchetypeAttack& attack = archetype.attacks[place];
        all.add(
            attack_key("attack", place),
            attack.name,
            attack.attack.value_or(archetype.attack),
            &ChallengeRow::attack
        );
        all.add(
            attack_key("damage", place),
            attack.name + " damage a turn",
            attack.damage.value_or(archetype.damage),
            &ChallengeRow::damage
        );
    }
}

// The range that the damage of a turn may lie in: up to the bands beside its own.
BandRange damage_range(const NumberOffer& offer) {
    if (!offer.band) return {offer.value, offer.value};
    BandRange range{offer.value, offer.value};
    for (std::size_t place = 0; place < offer.bands.size(); ++place) {
        if (offer.bands[place].band != *offer.band) continue;
        if (place > 0) range.low = offer.bands[place - 1].value;
        if (place + 1 < offer.bands.size()) range.high = offer.bands[place + 1].value;
    }
    return range;
}

// Dice of that many sides whose mean, rounded down, is exactly hp; about as many as give it with
// the Constitution modifier on each.
DiceExpression hit_dice(int hp, int sides, int constitution) {
    const double each = std::max((sides + 1) / 2.0 + constitution, 1.0);
    const int count = std::clamp(static_cast<int>(std::lround(hp / each)), 1, 100);
    return {{{count, sides}}, hp - count * (sides + 1) / 2};
}

} // namespace

std::vector<NumberOffer>
srd5_offers(const Rulebook& rulebook, const Archetype& archetype, const BuildChoice& choice) {
    if (rulebook.creature_building.statistics.steps.empty()) return {};
    Offers all(rulebook, choice);
    all.add("armor_class", "AC", archetype.armor_class, &ChallengeRow::armor_class);
    all.add("hit_points", "HP", archetype.hit_points, &ChallengeRow::hit_points);
    add_attacks(all, archetype);
    const bool has_magic = archetype.spell_dc || choice.numbers.count("spell_dc") > 0;
    if (has_magic) {
        all.add(
            "spell_dc",
            "Spell DC",
            archetype.spell_dc.value_or(Band::typical),
            &ChallengeRow::save_dc
        );
    }
    add_abilities(all, rulebook, archetype, has_magic);
    const auto ability = [&](const std::string& key) {
        return value_of(all.offers, "ability_" + key, 0);
    };
    for (const StatName& save : rulebook.saves) {
        all.add_trained(
            "save_" + save.key,
            save.name + " save",
            archetype.saves.at(save.key),
            ability(save.ability),
            false
        );
    }
    all.add_trained("perception", "Perception", archetype.perception, ability("wis"), true);
    for (const auto& [key, band] : skills_of(rulebook, archetype, choice)) {
        if (key == "perception") continue; // stands above
        const StatName& skill = *find_stat(rulebook, key);
        all.add_trained(
            "skill_" + key, skill.name, band.value_or(Band::trained), ability(skill.ability), true
        );
    }
    return std::move(all.offers);
}

void finish_srd5(
    const Rulebook& rulebook,
    const Archetype& archetype,
    const BuildChoice& choice,
    const std::vector<NumberOffer>& offers,
    BuiltCreature& built
) {
    const ChallengeStatistics& statistics = rulebook.creature_building.statistics;
    built.skills.erase("perception"); // Perception stands on its own
    if (statistics.steps.empty()) return;
    built.challenge = statistics.steps[rating_of(statistics, choice)].challenge;
    const int times = std::max(value_of(offers, "attacks_per_turn", 1), 1);
    const int constant = built.abilities[archetype.attack_ability];
    for (std::size_t place = 0; place < built.attacks.size(); ++place) {
        const NumberOffer& offer = *find_offer(offers, attack_key("damage", place));
        const BandRange range = damage_range(offer);
        built.attacks[place].damage = natural_dice(
            static_cast<double>(offer.value) / times,
            static_cast<double>(range.low) / times,
            static_cast<double>(range.high) / times,
            constant
        );
        built.attacks[place].per_turn = place == 0 ? times : 0;
    }
    built.hit_dice = hit_dice(built.hit_points, archetype.hit_die, built.abilities["con"]);
    if (built.spell_dc) built.spell_attack = *built.spell_dc - statistics.spell_dc_base;
    for (const auto& [type, band] : archetype.resistances)
        built.resistances[type] = 0;
    for (const auto& [type, band] : archetype.weaknesses)
        built.weaknesses[type] = 0;
}

} // namespace rules
