// A d20 check against a DC, as each rule family reads it.
#pragma once

namespace rules {

enum class Degree { critical_failure, failure, success, critical_success };

// four-degree: 10 or more past the DC is critical; a natural 20 is one degree better, a natural 1
// one degree worse, before any other change. Source: Player Core (ORC), Checks, degree of success.
Degree four_degree_result(int natural, int modifier, int dc);

// srd5 saves and ability checks: meeting the DC succeeds; 20 and 1 have no special meaning.
// Source: SRD 5.1, Using Ability Scores.
bool meets_dc(int natural, int modifier, int dc);

} // namespace rules
