#include "game/encounter_plan.h"

#include "game/answer_words.h"
#include "game/opponent_rating.h"
#include "game/roster.h"

#include <algorithm>
#include <cmath>

namespace game {

namespace {

using rules::Rulebook;
using rules::ThreatBudget;

bool is_srd(const Rulebook& rulebook) {
    return rulebook.family == rules::Family::srd5;
}

rules::Opponents
opponents_of(const Campaign& campaign, const Rulebook& rulebook, const PreparedCreatures& part) {
    const Creature* creature = find_creature(campaign.shelf, part.creature);
    if (creature == nullptr) return {0, 0};
    return opponents_of(creature->statistics, rulebook.family, part.count);
}

rules::Opponents opponents_of(const PreparedHazards& hazards) {
    return {static_cast<double>(hazards.level), hazards.count, true, hazards.is_complex};
}

PlannedPart planned(
    const Rulebook& rulebook,
    std::string name,
    const rules::Opponents& opponents,
    const std::optional<int>& xp
) {
    PlannedPart part;
    part.name = std::move(name);
    part.rating = rating_text(opponents, rulebook.family);
    part.count = opponents.count;
    part.xp_each = xp;
    part.xp = xp.value_or(0) * opponents.count;
    return part;
}

std::string hazard_name(const PreparedHazards& hazards) {
    const std::string kind = hazards.is_complex ? "complex hazard" : "simple hazard";
    return hazards.name.empty() ? kind : hazards.name + ", " + kind;
}

// The budget that names the threat: the highest reached, or the lowest that is not exceeded (srd5).
const ThreatBudget* naming_budget(const rules::EncounterRating& rating) {
    for (const ThreatBudget& budget : rating.budgets)
        if (budget.name == rating.threat) return &budget;
    return nullptr;
}

BudgetBar bar_of(const Rulebook& rulebook, const rules::EncounterRating& rating) {
    // Room behind the last mark, for its name and for what lies beyond.
    constexpr double room = 1.2;
    const double length = std::max(rating.budgets.back().xp * room, rating.xp * 1.0);
    BudgetBar bar;
    bar.filled = rating.xp / length;
    for (const ThreatBudget& budget : rating.budgets) {
        const bool is_reached = is_srd(rulebook) ? rating.xp > budget.xp : rating.xp >= budget.xp;
        bar.marks.push_back({budget.name, budget.xp, budget.xp / length, is_reached});
    }
    return bar;
}

std::string party_line(const Rulebook& rulebook, const std::vector<int>& levels, int party_level) {
    const std::string size = counted(static_cast<int>(levels.size()), "character");
    const auto [low, high] = std::minmax_element(levels.begin(), levels.end());
    if (*low == *high) return size + ", level " + std::to_string(*low);
    const std::string range = ", levels " + std::to_string(*low) + " to " + std::to_string(*high);
    return size + range +
           (is_srd(rulebook) ? std::string() : " (counts as " + std::to_string(party_level) + ")");
}

} // namespace

std::string threat_line(const Rulebook& rulebook, const rules::EncounterRating& rating) {
    const std::string xp = std::to_string(rating.xp) + " XP";
    if (rating.is_beyond) return xp + ": " + rating.threat;
    std::string text = xp;
    const ThreatBudget* named = naming_budget(rating);
    // The lightest threat of four-degree is "so much or less", like all of srd5.
    const bool is_limit =
        is_srd(rulebook) || (named != nullptr && named == &rating.budgets.front());
    if (named != nullptr)
        text +=
            ": " + named->name + (is_limit ? " (up to " : " (") + std::to_string(named->xp) + ")";
    if (!rating.xp_to_next) return text;
    if (is_srd(rulebook)) {
        if (named == nullptr) return text;
        return text + "; " + std::to_string(*rating.xp_to_next) + " left";
    }
    return text + "; " + std::to_string(*rating.xp_to_next) + " to " + rating.next_budget + " (" +
           std::to_string(rating.xp + *rating.xp_to_next) + ")";
}

std::vector<int> levels_of(const Party& party, const std::vector<Id>& characters) {
    std::vector<int> levels;
    for (const Character& character : party.characters)
        if (std::find(characters.begin(), characters.end(), character.id) != characters.end())
            levels.push_back(character.statistics.level);
    return levels;
}

base::Result<EncounterPlan> plan_encounter(
    const Campaign& campaign,
    const Rulebook& rulebook,
    const PreparedEncounter& prepared,
    const std::vector<Id>& characters
) {
    std::vector<rules::Opponents> opponents;
    for (const PreparedCreatures& part : prepared.creatures)
        opponents.push_back(opponents_of(campaign, rulebook, part));
    for (const PreparedHazards& hazards : prepared.hazards)
        opponents.push_back(opponents_of(hazards));
    const std::vector<int> levels = levels_of(campaign.party, characters);
    const auto rated = rules::rate_encounter(rulebook, levels, opponents);
    if (!rated.ok()) return rated.error();

    EncounterPlan plan;
    plan.rating = rated.value();
    for (std::size_t at = 0; at < opponents.size(); ++at) {
        const std::optional<int>& xp = plan.rating.xp_each[at];
        if (at >= prepared.creatures.size()) {
            const PreparedHazards& hazards = prepared.hazards[at - prepared.creatures.size()];
            plan.hazards.push_back(planned(rulebook, hazard_name(hazards), opponents[at], xp));
            plan.hazards.back().rating = "level " + std::to_string(hazards.level); // named already
            continue;
        }
        const Creature* creature = find_creature(campaign.shelf, prepared.creatures[at].creature);
        plan.creatures.push_back(planned(
            rulebook,
            creature == nullptr ? std::string("unknown creature") : creature->name,
            opponents[at],
            xp
        ));
    }
    plan.bar = bar_of(rulebook, plan.rating);
    plan.party_text = party_line(rulebook, levels, plan.rating.party_level);
    plan.threat_text = threat_line(rulebook, plan.rating);
    return plan;
}

std::vector<ThreatAim>
threat_aims(const Rulebook& rulebook, const std::vector<ThreatBudget>& budgets) {
    std::vector<ThreatAim> aims;
    for (std::size_t at = 0; at < budgets.size(); ++at) {
        const ThreatBudget& budget = budgets[at];
        const int before = at == 0 ? 0 : budgets[at - 1].xp;
        ThreatAim aim{budget.key, budget.name, before + 1, budget.xp, budget.xp};
        if (!is_srd(rulebook)) {
            // From this budget to below the next; the lightest one from the first XP on.
            const int step = budget.xp - before;
            aim.xp_min = at == 0 ? 1 : budget.xp;
            aim.xp_max = at + 1 < budgets.size() ? budgets[at + 1].xp - 1 : budget.xp + step - 1;
            // A lone character's budgets may fall together.
            aim.xp_max = std::max(aim.xp_max, aim.xp_min);
        }
        aims.push_back(aim);
    }
    return aims;
}

void change_count(PreparedEncounter& prepared, Id creature, int by) {
    for (auto part = prepared.creatures.begin(); part != prepared.creatures.end() && by != 0;) {
        if (part->creature != creature) {
            ++part;
            continue;
        }
        const int count = std::clamp(part->count + by, 0, int{Limits::count_max});
        by -= count - part->count;
        part->count = count;
        part = count == 0 ? prepared.creatures.erase(part) : part + 1;
    }
    if (by <= 0) return;
    PreparedCreatures part;
    part.creature = creature;
    part.count = std::min(by, int{Limits::count_max});
    prepared.creatures.push_back(part);
}

} // namespace game
