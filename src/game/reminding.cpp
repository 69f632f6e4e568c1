#include "game/reminding.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace game {

namespace {

// Who is awake to use anything: in the fight (or in the party, between fights) and on its feet.
bool can_be_reminded(const Combatant& combatant, ComesUp happened) {
    if (combatant.is_dead || combatant.standing == Standing::defeated) return false;
    return combatant.hp > 0 || happened == ComesUp::falls;
}

void call(Encounter& encounter, const Combatant& combatant, ComesUp happened) {
    if (combatant.standing == Standing::absent || !can_be_reminded(combatant, happened)) return;
    for (const Reminder& reminder : combatant.reminders) {
        if (reminder.comes_up != happened || is_used_up(combatant, reminder)) continue;
        const CalledReminder called{combatant.id, reminder.id, {}};
        std::erase(encounter.called, called);
        encounter.called.push_back(called);
    }
}

const Reminder* find_reminder(const Combatant& combatant, Id id) {
    for (const Reminder& reminder : combatant.reminders)
        if (reminder.id == id) return &reminder;
    return nullptr;
}

void append(std::vector<ShownReminder>& shown, const Combatant& combatant, ComesUp moment) {
    for (const Reminder& reminder : combatant.reminders)
        if (reminder.comes_up == moment) shown.push_back({&combatant, &reminder});
}

// Whole days since the first dawn: one more with every dawn that passes.
std::int64_t dawns_before(const Calendar& calendar, const Clock& time) {
    return time.day + (time.second_of_day >= calendar.dawn_second ? 1 : 0);
}

} // namespace

int uses_left(const Combatant& combatant, const Reminder& reminder) {
    const auto found = combatant.reminders_used.find(reminder.id);
    const int used = found == combatant.reminders_used.end() ? 0 : found->second;
    return std::max(0, reminder.uses - used);
}

bool is_used_up(const Combatant& combatant, const Reminder& reminder) {
    return reminder.uses > 0 && uses_left(combatant, reminder) == 0;
}

void refresh_reminders(Combatant& combatant, RefreshedBy happened) {
    for (const Reminder& reminder : combatant.reminders) {
        const bool gives_more = happened >= RefreshedBy::fight && happened <= RefreshedBy::rest;
        if (reminder.refreshed_by == happened || (gives_more && reminder.refreshed_by < happened))
            combatant.reminders_used.erase(reminder.id);
    }
}

void refresh_at_dawn(Campaign& campaign, const Clock& from, const Clock& to) {
    if (dawns_before(campaign.calendar, to) <= dawns_before(campaign.calendar, from)) return;
    for (Combatant& combatant : campaign.encounter.combatants)
        refresh_reminders(combatant, RefreshedBy::dawn);
}

void refresh_party(Encounter& encounter, RefreshedBy happened) {
    for (Combatant& combatant : encounter.combatants)
        if (combatant.character != base::no_id) refresh_reminders(combatant, happened);
}

void call_reminders(Encounter& encounter, Id id, ComesUp happened) {
    const Combatant* combatant = find_combatant(std::as_const(encounter), id);
    if (combatant == nullptr) return;
    call(encounter, *combatant, happened);
    for (const Combatant& ally : encounter.combatants) {
        if (ally.id == id || ally.side != combatant->side) continue;
        if (happened == ComesUp::hurt) call(encounter, ally, ComesUp::ally_hurt);
        if (happened == ComesUp::falls) call(encounter, ally, ComesUp::ally_falls);
    }
}

void set_reminder_aside(Encounter& encounter, Id combatant, Id reminder) {
    std::erase_if(encounter.called, [&](const CalledReminder& called) {
        return called.combatant == combatant && called.reminder == reminder;
    });
}

std::vector<ShownReminder> called_reminders(const Encounter& encounter) {
    std::vector<ShownReminder> shown;
    for (auto called = encounter.called.rbegin(); called != encounter.called.rend(); ++called) {
        const Combatant* combatant = find_combatant(encounter, called->combatant);
        const Reminder* reminder =
            combatant == nullptr ? nullptr : find_reminder(*combatant, called->reminder);
        if (reminder != nullptr) shown.push_back({combatant, reminder});
    }
    return shown;
}

ComesUp present_moment(const Encounter& encounter) {
    switch (encounter.phase) {
    case Phase::no_fight: return ComesUp::exploring;
    case Phase::gathering: return ComesUp::initiative;
    case Phase::running: return ComesUp::own_turn;
    }
    return ComesUp::own_turn;
}

std::vector<ShownReminder> reminders_of_the_moment(const Encounter& encounter) {
    const ComesUp moment = present_moment(encounter);
    std::vector<ShownReminder> shown;
    for (const Combatant& combatant : encounter.combatants) {
        if (combatant.is_dead) continue;
        const bool is_meant = moment == ComesUp::own_turn ? combatant.id == encounter.current
                              : moment == ComesUp::exploring
                                  ? combatant.character != base::no_id
                                  : combatant.standing == Standing::in_order;
        if (is_meant) append(shown, combatant, moment);
    }
    return shown;
}

std::string refreshed_words(RefreshedBy refreshed_by) {
    switch (refreshed_by) {
    case RefreshedBy::turn: return "each turn";
    case RefreshedBy::round: return "each round";
    case RefreshedBy::fight: return "each fight";
    case RefreshedBy::short_rest: return "each short rest";
    case RefreshedBy::rest: return "each night's rest";
    case RefreshedBy::dawn: return "each dawn";
    case RefreshedBy::hand: return "given back by hand";
    }
    return {};
}

std::string comes_up_words(ComesUp comes_up) {
    switch (comes_up) {
    case ComesUp::own_turn: return "on the own turn";
    case ComesUp::hurt: return "when hurt";
    case ComesUp::falls: return "when falling to 0 HP";
    case ComesUp::ally_hurt: return "when an ally is hurt";
    case ComesUp::ally_falls: return "when an ally falls";
    case ComesUp::initiative: return "when initiative is rolled";
    case ComesUp::exploring: return "while exploring";
    }
    return {};
}

} // namespace game
