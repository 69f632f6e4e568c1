#include "game/fights.h"

#include "game/conditions.h"
#include "game/effects.h"
#include "game/reminding.h"
#include "game/turn_steps.h"
#include "game/turns.h"

#include <algorithm>

namespace game {

namespace {

using rules::Rulebook;

constexpr int seconds_a_day = 24 * 3600;

// What belongs to one fight alone and starts afresh with the next.
void clear_fight_state(Combatant& combatant) {
    combatant.initiative.reset();
    combatant.initiative_stat.clear();
    combatant.group = base::no_id;
    combatant.is_hidden = false;
    combatant.has_acted = false;
    combatant.actions_left = 0;
    combatant.actions_total = 0;
    combatant.attacks_made = 0;
    combatant.reaction_used = false;
    combatant.readied.clear();
    combatant.delayed_after = base::no_id;
    combatant.is_delay_counted = false;
    refresh_reminders(combatant, RefreshedBy::fight);
}

// "Reed Lurker 12" -> 12; 0 when it is not that name with a number.
int number_of(const std::string& name, const std::string& stem) {
    if (name == stem) return 1;
    if (name.size() <= stem.size() + 1 || name.compare(0, stem.size() + 1, stem + " ") != 0)
        return 0;
    int number = 0;
    for (std::size_t at = stem.size() + 1; at < name.size(); ++at) {
        if (name[at] < '0' || name[at] > '9' || number > 9999) return 0;
        number = number * 10 + (name[at] - '0');
    }
    return number;
}

int highest_number(const Encounter& encounter, const std::string& stem) {
    int highest = 0;
    for (const Combatant& combatant : encounter.combatants)
        highest = std::max(highest, number_of(combatant.name, stem));
    return highest;
}

// Adds them to the list of combatants, in the order only when that is asked for later.
std::vector<Id> create(
    Encounter& encounter,
    const Creature& creature,
    int count,
    bool shares_initiative,
    bool is_hidden
) {
    const int from = highest_number(encounter, creature.name);
    const Id group = shares_initiative && count > 1 ? encounter.next_id++ : base::no_id;
    std::vector<Id> created;
    for (int each = 1; each <= count; ++each) {
        const bool is_alone = count == 1 && from == 0;
        Combatant opponent = make_opponent(creature, is_alone ? 0 : from + each);
        opponent.id = encounter.next_id++;
        opponent.group = group;
        opponent.is_hidden = is_hidden;
        created.push_back(opponent.id);
        encounter.combatants.push_back(std::move(opponent));
    }
    return created;
}

bool counts_in_rounds(const Rulebook& rulebook, const ActiveCondition& active) {
    const DurationKind kind = active.duration.kind;
    if (kind == DurationKind::until_turn || kind == DurationKind::rounds) return true;
    const rules::ConditionRule* rule = rules::find_condition(rulebook, active.key);
    return rule != nullptr && (rule->fading == rules::Fading::drops_at_turn_end ||
                               rule->fading == rules::Fading::lost_with_actions);
}

void end_fight_conditions(Encounter& encounter, const Rulebook& rulebook, Id id) {
    const std::vector<ActiveCondition> before = find_combatant(encounter, id)->conditions;
    for (const ActiveCondition& active : before) {
        if (counts_in_rounds(rulebook, active)) end_condition(encounter, rulebook, id, active.id);
    }
    for (ActiveCondition& active : find_combatant(encounter, id)->conditions) {
        active.source = base::no_id; // whoever caused it may leave
        active.duration.whose_turn = base::no_id;
    }
}

void remove_opponents(Encounter& encounter) {
    std::erase_if(encounter.combatants, [](const Combatant& combatant) {
        return combatant.character == base::no_id;
    });
}

void clear_encounter(Encounter& encounter) {
    encounter.phase = Phase::no_fight;
    encounter.name.clear();
    encounter.round = 0;
    encounter.elapsed_seconds = 0;
    encounter.current = base::no_id;
    encounter.order.clear();
    encounter.notices.clear();
    encounter.called.clear();
    std::erase_if(encounter.prompts, [&](const Prompt& prompt) {
        return find_combatant(encounter, prompt.combatant) == nullptr;
    });
}

} // namespace

Combatant make_opponent(const Creature& creature, int number) {
    Combatant opponent;
    opponent.name = number > 0 ? creature.name + " " + std::to_string(number) : creature.name;
    opponent.side = Side::opponents;
    opponent.creature = creature.id;
    opponent.statistics = creature.statistics;
    opponent.hp = creature.statistics.hit_points;
    return opponent;
}

void open_fight(Campaign& campaign, const Rulebook& rulebook, Id prepared) {
    Encounter& encounter = campaign.encounter;
    remove_opponents(encounter);
    clear_encounter(encounter);
    link_party(campaign);
    forget_gone(encounter);
    for (Combatant& combatant : encounter.combatants) {
        clear_fight_state(combatant);
        const Character* character =
            find_character(std::as_const(campaign.party), combatant.character);
        const bool takes_part = character != nullptr && character->is_present && !combatant.is_dead;
        combatant.standing = takes_part ? Standing::in_order : Standing::absent;
    }
    encounter.phase = Phase::gathering;
    if (const PreparedEncounter* plan =
            find_prepared(std::as_const(campaign.preparation), prepared)) {
        encounter.name = plan->name;
        for (const PreparedCreatures& group : plan->creatures) {
            const Creature* creature = find_creature(std::as_const(campaign.shelf), group.creature);
            if (creature != nullptr)
                create(encounter, *creature, group.count, group.shares_initiative, group.is_hidden);
        }
    }
    sort_order(encounter, rulebook);
}

std::vector<Id> add_creatures(
    Campaign& campaign,
    const Rulebook& rulebook,
    Id creature_id,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
) {
    const Creature* creature = find_creature(std::as_const(campaign.shelf), creature_id);
    if (creature == nullptr) return {};
    return add_opponents(
        campaign.encounter, rulebook, *creature, count, shares_initiative, initiative, dice
    );
}

std::vector<Id> add_opponents(
    Encounter& encounter,
    const Rulebook& rulebook,
    const Creature& creature,
    int count,
    bool shares_initiative,
    std::optional<int> initiative,
    rules::Dice& dice
) {
    if (count < 1 || encounter.phase == Phase::no_fight) return {};
    std::vector<Id> created = create(encounter, creature, count, shares_initiative, false);
    for (const Id id : created) {
        if (find_combatant(encounter, id)->initiative) continue; // its group has rolled already
        if (initiative)
            set_initiative(encounter, rulebook, id, *initiative);
        else if (encounter.phase == Phase::running)
            roll_initiative(encounter, rulebook, id, dice);
    }
    if (encounter.phase == Phase::gathering) {
        sort_order(encounter, rulebook);
        return created;
    }
    for (const Id id : created)
        enter_order(encounter, rulebook, id);
    return created;
}

Id add_stranger(
    Encounter& encounter,
    const Rulebook& rulebook,
    const std::string& name,
    Side side,
    int hp,
    int armor_class,
    std::optional<int> initiative
) {
    if (name.empty() || encounter.phase == Phase::no_fight) return base::no_id;
    Combatant stranger;
    stranger.id = encounter.next_id++;
    stranger.name = name;
    stranger.side = side;
    stranger.dies_at_zero = side != Side::party;
    stranger.statistics.hit_points = std::max(hp, 1);
    stranger.statistics.armor_class = armor_class;
    stranger.hp = stranger.statistics.hit_points;
    stranger.standing = Standing::absent;
    const Id id = stranger.id;
    encounter.combatants.push_back(std::move(stranger));
    join_fight(encounter, rulebook, id, initiative);
    return id;
}

bool join_fight(
    Encounter& encounter, const Rulebook& rulebook, Id id, std::optional<int> initiative
) {
    Combatant* combatant = find_combatant(encounter, id);
    if (combatant == nullptr || combatant->standing == Standing::in_order ||
        encounter.phase == Phase::no_fight)
        return false;
    if (combatant->is_dead) return false;
    if (initiative) combatant->initiative = initiative;
    if (encounter.phase == Phase::gathering) {
        combatant->standing = Standing::in_order;
        sort_order(encounter, rulebook);
        return true;
    }
    // Without a number it acts after everybody else until one is typed.
    enter_order(encounter, rulebook, id);
    return true;
}

void end_fight(Campaign& campaign, const Rulebook& rulebook) {
    const Clock ended = now(campaign);
    refresh_at_dawn(campaign, campaign.clock, ended);
    campaign.clock = ended;
    Encounter& encounter = campaign.encounter;
    encounter.phase = Phase::no_fight; // ending conditions below must not move turns
    remove_opponents(encounter);
    std::vector<Id> party;
    for (const Combatant& combatant : encounter.combatants)
        party.push_back(combatant.id);
    for (const Id id : party) {
        end_fight_conditions(encounter, rulebook, id);
        Combatant& combatant = *find_combatant(encounter, id);
        clear_fight_state(combatant);
        combatant.standing = Standing::absent;
    }
    clear_encounter(encounter);
}

Clock now(const Campaign& campaign) {
    Clock clock = campaign.clock;
    if (campaign.encounter.phase != Phase::running) return clock;
    const int seconds = clock.second_of_day + campaign.encounter.elapsed_seconds;
    clock.day += seconds / seconds_a_day;
    clock.second_of_day = seconds % seconds_a_day;
    return clock;
}

} // namespace game
