// From an ability score to its modifier; sheets and tables carry modifiers alone.
#pragma once

namespace rules {

// Half of what the score lies above 10, rounded down: 8 gives -1, 21 gives +5. Source: SRD 5.1
// (CC-BY-4.0), Using Ability Scores, Ability Scores and Modifiers.
int ability_modifier(int score);

} // namespace rules
