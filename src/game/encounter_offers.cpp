#include "game/encounter_offers.h"

#include "game/creature_building.h"
#include "game/creature_step.h"
#include "game/opponent_rating.h"
#include "game/placing.h"
#include "game/roster.h"

#include <algorithm>
#include <utility>

namespace game {

namespace {

using rules::BuildStep;
using rules::Rulebook;

// Suggestions go no further: more than a dozen is slow to play. Common practice, no source.
constexpr int handy_crowd = 12;

// Beyond the tables because of one creature, not because of many XP (srd5).
bool has_unrated_danger(const Rulebook& rulebook, const rules::EncounterRating& rating) {
    const bool is_srd = rulebook.family == rules::Family::srd5;
    return rating.is_beyond && !(is_srd && rating.xp > rating.budgets.back().xp);
}

int count_in(const PreparedEncounter& prepared, Id creature) {
    int count = 0;
    for (const PreparedCreatures& part : prepared.creatures)
        if (part.creature == creature) count += part.count;
    return count;
}

bool stands_on(const CreatureShelf& shelf, const std::string& name) {
    return std::any_of(
        shelf.creatures.begin(),
        shelf.creatures.end(),
        [&name](const Creature& creature) { return creature.name == name; }
    );
}

class Offers {
public:
    Offers(
        const Campaign& campaign,
        const Rulebook& rulebook,
        const PreparedEncounter& prepared,
        int party_level
    )
        : shelf_(campaign.shelf), rulebook_(rulebook), prepared_(prepared),
          party_level_(party_level) {}

    void add_shelf() {
        int kin = 0;
        for (const Creature& creature : shelf_.creatures) {
            if (creature.statistics.hazard != Hazard::none) continue;
            kin += 1;
            OfferSource source;
            source.creature = creature.id;
            add(creature.name, rating(creature.statistics), kin, source);
            if (count_in(prepared_, creature.id) == 0) continue;
            for (const BuildStep step : {BuildStep::weak, BuildStep::elite})
                add_form(creature, step, kin);
        }
    }

    void add_ready(const std::vector<LibraryCreature>& ready, const std::string& type) {
        for (const LibraryCreature& creature : ready) {
            if (!type.empty() && creature.type != type) continue;
            if (stands_on(shelf_, creature.name)) continue;
            OfferSource source;
            source.ready = creature.key;
            add(creature.name, rating(creature.statistics), 0, source);
        }
    }

    void add_built() {
        const rules::CreatureBuilding& building = rulebook_.creature_building;
        for (const rules::Archetype& archetype : building.archetypes) {
            rules::BuildChoice choice;
            choice.archetype = archetype.key;
            if (rulebook_.family == rules::Family::srd5) {
                for (const rules::ChallengeStep& step : building.statistics.steps) {
                    choice.challenge = step.challenge;
                    add_choice(archetype, choice);
                }
                continue;
            }
            for (int level = building.tables.level_min; level <= building.tables.level_max;
                 ++level) {
                choice.level = level;
                add_choice(archetype, choice);
            }
        }
    }

    SuggestionQuestion question;

private:
    double rating(const Statistics& statistics) const {
        return opponents_of(statistics, rulebook_.family, 1).level;
    }

    void add(const std::string& name, double level, int kin, const OfferSource& source) {
        const auto xp = rules::opponent_xp(rulebook_, party_level_, {level});
        if (!xp || *xp < 1) return;
        question.offers.push_back({name, level, *xp, kin});
        question.sources.push_back(source);
        const bool is_there = source.creature != base::no_id && source.step == BuildStep::none;
        question.counts.push_back(is_there ? count_in(prepared_, source.creature) : 0);
    }

    void add_form(const Creature& creature, BuildStep step, int kin) {
        const std::string name = stepped_name(creature.name, step);
        if (stands_on(shelf_, name)) return;
        const int level = creature.statistics.level;
        const rules::CreatureStep* change =
            rulebook_.family == rules::Family::four_degree
                ? rules::find_step(rulebook_.creature_building, step, level)
                : nullptr;
        if (change == nullptr) return;
        OfferSource source;
        source.creature = creature.id;
        source.step = step;
        add(name, rules::stepped_level(*change, level), kin, source);
    }

    void add_choice(const rules::Archetype& archetype, rules::BuildChoice choice) {
        const bool is_srd = rulebook_.family == rules::Family::srd5;
        const double level = is_srd ? choice.challenge : choice.level;
        rules::Opponents one;
        one.level = level;
        choice.name = archetype.name + ", " + rating_text(one, rulebook_.family);
        if (stands_on(shelf_, choice.name)) return;
        OfferSource source;
        source.built = choice;
        add(choice.name, level, 0, source);
    }

    const CreatureShelf& shelf_;
    const Rulebook& rulebook_;
    const PreparedEncounter& prepared_;
    int party_level_;
};

// The creature of the shelf that stands for the offer, put there first if need be.
Id on_shelf(
    CreatureShelf& shelf,
    const Rulebook& rulebook,
    const OfferSource& source,
    const std::string& name,
    const std::vector<LibraryCreature>& ready
) {
    if (source.built) return keep_on_shelf(shelf, name, built_statistics(rulebook, *source.built));
    for (const LibraryCreature& creature : ready)
        if (!source.ready.empty() && creature.key == source.ready)
            return keep_on_shelf(shelf, name, statistics_of(creature));
    if (source.step == BuildStep::none) return source.creature;
    const Creature* plain = find_creature(std::as_const(shelf), source.creature);
    if (plain == nullptr) return base::no_id;
    const auto stepped = stepped_statistics(rulebook, plain->statistics, source.step);
    return stepped ? keep_on_shelf(shelf, name, *stepped) : base::no_id;
}

} // namespace

std::optional<SuggestionQuestion> suggestion_question(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const PreparedEncounter& prepared,
    const EncounterPlan& plan,
    const std::string& aim,
    const OfferPlaces& places,
    const std::vector<LibraryCreature>& ready
) {
    const std::vector<ThreatAim> aims = threat_aims(rulebook, plan.rating.budgets);
    const auto wanted = std::find_if(aims.begin(), aims.end(), [&aim](const ThreatAim& each) {
        return each.key == aim;
    });
    if (wanted == aims.end() || has_unrated_danger(rulebook, plan.rating)) return {};
    Offers offers(campaign, rulebook, prepared, plan.rating.party_level);
    offers.add_shelf();
    if (places.has_ready) offers.add_ready(ready, places.ready_type);
    if (places.has_built) offers.add_built();
    SuggestionQuestion question = std::move(offers.question);
    int rated = 0;
    int creatures = 0;
    for (std::size_t at = 0; at < question.offers.size(); ++at) {
        rated += question.offers[at].xp * question.counts[at];
        creatures += question.counts[at];
    }
    question.goal.xp_min = wanted->xp_min;
    question.goal.xp_max = wanted->xp_max;
    question.goal.xp_best = wanted->aim;
    question.goal.fixed_xp = plan.rating.xp - rated;
    question.goal.count_max = Limits::count_max;
    question.goal.creatures_max = std::max(creatures, handy_crowd);
    return question;
}

std::string carry_out(
    Campaign& campaign,
    const Rulebook& rulebook,
    Id encounter,
    const SuggestionQuestion& question,
    const PlanSuggestion& suggestion,
    const std::vector<LibraryCreature>& ready
) {
    PreparedEncounter* prepared = find_prepared(campaign.preparation, encounter);
    if (prepared == nullptr) return {};
    const auto creature_of = [&](std::size_t offer) {
        return on_shelf(
            campaign.shelf, rulebook, question.sources[offer], question.offers[offer].name, ready
        );
    };
    for (const PlanMove& move : suggestion.moves) {
        if (move.kind != MoveKind::add)
            change_count(*prepared, creature_of(move.from), -move.count);
        if (move.kind != MoveKind::remove)
            change_count(*prepared, creature_of(move.to), move.count);
    }
    return prepared->name + ": " + suggestion_text(question.offers, suggestion);
}

} // namespace game
