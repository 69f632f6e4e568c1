#include "store/enum_words.h"

namespace store {

std::string_view word_of(rules::Family value) {
    using enum rules::Family;
    switch (value) {
    case four_degree: return "four_degree";
    case srd5: return "srd5";
    }
    return {};
}

std::string_view word_of(rules::SrdEdition value) {
    using enum rules::SrdEdition;
    switch (value) {
    case srd_5_1: return "srd_5_1";
    case srd_5_2_1: return "srd_5_2_1";
    }
    return {};
}

std::string_view word_of(rules::BonusType value) {
    using enum rules::BonusType;
    switch (value) {
    case untyped: return "untyped";
    case circumstance: return "circumstance";
    case item: return "item";
    case status: return "status";
    }
    return {};
}

std::string_view word_of(rules::RollMode value) {
    using enum rules::RollMode;
    switch (value) {
    case normal: return "normal";
    case advantage: return "advantage";
    case disadvantage: return "disadvantage";
    }
    return {};
}

std::string_view word_of(rules::Degree value) {
    using enum rules::Degree;
    switch (value) {
    case critical_failure: return "critical_failure";
    case failure: return "failure";
    case success: return "success";
    case critical_success: return "critical_success";
    }
    return {};
}

std::string_view word_of(game::TurnEdge value) {
    using enum game::TurnEdge;
    switch (value) {
    case start: return "start";
    case end: return "end";
    }
    return {};
}

std::string_view word_of(game::DurationKind value) {
    using enum game::DurationKind;
    switch (value) {
    case until_removed: return "until_removed";
    case until_turn: return "until_turn";
    case rounds: return "rounds";
    case timed: return "timed";
    case until_rest: return "until_rest";
    case until_check: return "until_check";
    }
    return {};
}

std::string_view word_of(game::Side value) {
    using enum game::Side;
    switch (value) {
    case party: return "party";
    case opponents: return "opponents";
    case others: return "others";
    }
    return {};
}

std::string_view word_of(game::Standing value) {
    using enum game::Standing;
    switch (value) {
    case in_order: return "in_order";
    case delaying: return "delaying";
    case defeated: return "defeated";
    case absent: return "absent";
    }
    return {};
}

std::string_view word_of(game::RefreshedBy value) {
    using enum game::RefreshedBy;
    switch (value) {
    case turn: return "turn";
    case round: return "round";
    case fight: return "fight";
    case short_rest: return "short_rest";
    case rest: return "rest";
    case dawn: return "dawn";
    case hand: return "hand";
    }
    return {};
}

std::string_view word_of(game::ComesUp value) {
    using enum game::ComesUp;
    switch (value) {
    case own_turn: return "own_turn";
    case hurt: return "hurt";
    case falls: return "falls";
    case ally_hurt: return "ally_hurt";
    case ally_falls: return "ally_falls";
    case initiative: return "initiative";
    case exploring: return "exploring";
    }
    return {};
}

std::string_view word_of(game::PromptKind value) {
    using enum game::PromptKind;
    switch (value) {
    case recovery_check: return "recovery_check";
    case death_save: return "death_save";
    case persistent_damage: return "persistent_damage";
    case end_check: return "end_check";
    case concentration: return "concentration";
    }
    return {};
}

std::string_view word_of(game::Phase value) {
    using enum game::Phase;
    switch (value) {
    case no_fight: return "no_fight";
    case gathering: return "gathering";
    case running: return "running";
    }
    return {};
}

std::string_view word_of(game::Kind value) {
    using enum game::Kind;
    switch (value) {
    case person: return "person";
    case place: return "place";
    case creature: return "creature";
    case item: return "item";
    case faction: return "faction";
    }
    return {};
}

std::string_view word_of(game::Hazard value) {
    using enum game::Hazard;
    switch (value) {
    case none: return "none";
    case simple: return "simple";
    case complex: return "complex";
    }
    return {};
}

std::string_view word_of(game::NoteKind value) {
    using enum game::NoteKind;
    switch (value) {
    case note: return "note";
    case deed: return "deed";
    case discovery: return "discovery";
    case loot: return "loot";
    case next: return "next";
    }
    return {};
}

std::string_view word_of(game::LedgerKind value) {
    using enum game::LedgerKind;
    switch (value) {
    case found: return "found";
    case given: return "given";
    case sold: return "sold";
    case spent: return "spent";
    case split: return "split";
    }
    return {};
}

std::string_view word_of(game::Sky value) {
    using enum game::Sky;
    switch (value) {
    case clear: return "clear";
    case fair: return "fair";
    case overcast: return "overcast";
    case fog: return "fog";
    case light_rain: return "light_rain";
    case rain: return "rain";
    case heavy_rain: return "heavy_rain";
    case thunderstorm: return "thunderstorm";
    case sleet: return "sleet";
    case light_snow: return "light_snow";
    case snow: return "snow";
    case heavy_snow: return "heavy_snow";
    }
    return {};
}

std::string_view word_of(game::WindStrength value) {
    using enum game::WindStrength;
    switch (value) {
    case still: return "still";
    case light: return "light";
    case breeze: return "breeze";
    case strong: return "strong";
    case gale: return "gale";
    case storm: return "storm";
    }
    return {};
}

std::string_view word_of(game::ItemFate value) {
    using enum game::ItemFate;
    switch (value) {
    case held: return "held";
    case sold: return "sold";
    case given_away: return "given_away";
    }
    return {};
}

std::string_view word_of(game::HolidayRule value) {
    using enum game::HolidayRule;
    switch (value) {
    case fixed_day: return "fixed_day";
    case nth_weekday: return "nth_weekday";
    }
    return {};
}

} // namespace store
