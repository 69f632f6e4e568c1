// What a player may forget: when it comes up, how often it can be used, what gives it back.
#pragma once

#include "game/campaign.h"

#include <string>
#include <vector>

namespace game {

// How many uses are left, 0..uses; 0 for one that is not counted.
int uses_left(const Combatant& combatant, const Reminder& reminder);

// Counted, and none left.
bool is_used_up(const Combatant& combatant, const Reminder& reminder);

// Gives back what `happened` gives back: the end of a fight also what a turn or a round does, a
// short rest what a fight does, a night what a short rest does. A turn, a round and the dawn give
// back only what is named for them, and what is given back by hand waits for the GM's hand.
void refresh_reminders(Combatant& combatant, RefreshedBy happened);

// The dawn comes for everybody when the clock has passed one between the two times.
void refresh_at_dawn(Campaign& campaign, const Clock& from, const Clock& to);

// The GM gives back all that `happened` gives back, to the whole party.
void refresh_party(Encounter& encounter, RefreshedBy happened);

// Something happened to the combatant: its reminders for that, and those of its side for an ally,
// come up until they are used, set aside, or the turn passes. Used up ones stay away, and so do
// those of the fallen, except for their own fall.
void call_reminders(Encounter& encounter, Id combatant, ComesUp happened);
void set_reminder_aside(Encounter& encounter, Id combatant, Id reminder);

// A reminder to show now; pointers live as long as the encounter stands still.
struct ShownReminder {
    const Combatant* combatant = nullptr;
    const Reminder* reminder = nullptr;
};

// Those that something called up, the latest first.
std::vector<ShownReminder> called_reminders(const Encounter& encounter);

// Those of one moment: of the turn of whoever is up; of everybody here while initiative is rolled;
// of everybody present while no fight is on. Used up ones are among them.
std::vector<ShownReminder> reminders_of_the_moment(const Encounter& encounter);

// The moment in words: "turn", "initiative", "exploring".
ComesUp present_moment(const Encounter& encounter);

// "each turn", "each short rest" / "on the own turn", "when hurt".
std::string refreshed_words(RefreshedBy refreshed_by);
std::string comes_up_words(ComesUp comes_up);

} // namespace game
