#include "store/rulebook_rows.h"
#include "store/rulebook_tables.h"

namespace store {

namespace {

using rules::EncounterTables;

// Rows that the published tables have. Sources: GM Core (ORC), tables Creature XP and XP Awards;
// SRD 5.2.1, Gameplay Toolbox / Combat Encounters.
constexpr RowRange level_differences = {"level_difference", -4, 4};
constexpr RowRange character_levels = {"level", 1, 20};

void read_threats(const Spot& table, EncounterTables& encounters) {
    constexpr int party_max = 20;
    encounters.budget_source = table.at("source").text();
    encounters.party_size = table.at("party_size").number(1, party_max);
    each_named(
        table.at("rows"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            const rules::Threat threat{
                key,
                name,
                row.at("budget").number(1, table_xp_max),
                row.at("per_character").number(0, table_xp_max)};
            // The lowest threat reached or the next one above would have no meaning otherwise.
            if (!encounters.threats.empty() && threat.budget <= encounters.threats.back().budget)
                throw row.at("budget").wrong("more than the budget of the row before");
            encounters.threats.push_back(threat);
        }
    );
}

void read_xp_by_difference(const Spot& top, EncounterTables& encounters) {
    const Spot creatures = top.at("creature_xp");
    encounters.xp_source = creatures.at("source").text();
    each_row(creatures, level_differences, [&](const Spot& row, int difference) {
        encounters.xp_by_difference.push_back({difference, row.at("xp").number(0, table_xp_max)});
    });
    std::size_t at = 0;
    each_row(top.at("hazard_xp"), level_differences, [&](const Spot& row, int /*difference*/) {
        rules::XpByDifference& xp = encounters.xp_by_difference[at++];
        xp.simple_hazard = row.at("simple").number(0, table_xp_max);
        xp.complex_hazard = row.at("complex").number(0, table_xp_max);
    });
}

// 0, 1/8, 1/4 and 1/2, then every whole number. Source: SRD 5.1, Monsters / Challenge.
double challenge_of_row(std::size_t row) {
    constexpr std::array fractions = {0.0, 0.125, 0.25, 0.5};
    if (row < fractions.size()) return fractions[row];
    return static_cast<double>(row - fractions.size() + 1);
}

void read_xp_by_challenge(const Spot& table, EncounterTables& encounters) {
    constexpr std::size_t rows_needed = 34; // up to challenge 30
    const char* const whole = "rows of challenge 0, 0.125, 0.25, 0.5 and 1 to 30 in order and "
                              "without a gap";
    encounters.xp_source = table.at("source").text();
    std::vector<rules::XpByChallenge>& list = encounters.xp_by_challenge;
    table.at("rows").each([&](const Spot& row) {
        const double challenge = row.at("challenge").fraction();
        if (list.size() == rows_needed || challenge != challenge_of_row(list.size()))
            throw row.at("challenge").wrong(whole);
        list.push_back({challenge, row.at("xp").number(0, table_xp_max)});
    });
    if (list.size() != rows_needed)
        throw table.at("rows").wrong(whole, base::ErrorKind::missing_field);
}

void read_character_budgets(const Spot& table, EncounterTables& encounters) {
    encounters.budget_source = table.at("source").text();
    encounters.crowd_per_character =
        table.at("creatures_per_character_caution_above").number(0, table_bonus_max);
    each_named(
        table.at("difficulties"),
        [&](const Spot& /*row*/, const std::string& key, const std::string& name) {
            encounters.difficulties.push_back({key, name});
        }
    );
    each_row(table, character_levels, [&](const Spot& row, int level) {
        rules::CharacterBudget budget{level, {}};
        for (const rules::Difficulty& difficulty : encounters.difficulties) {
            const Spot xp = row.at(difficulty.key);
            budget.xp.push_back(xp.number(1, table_xp_max));
            const std::size_t count = budget.xp.size();
            if (count > 1 && budget.xp[count - 1] <= budget.xp[count - 2])
                throw xp.wrong("more than the budget of the difficulty before");
        }
        encounters.character_budgets.push_back(budget);
    });
}

void read_awards(const Spot& table, rules::AdvancementTables& advancement) {
    advancement.awards_source = table.at("source").text();
    each_named(
        table.at("rows"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            advancement.awards.push_back(
                {key,
                 name,
                 row.at("xp").number(0, table_xp_max),
                 row.at("earns_hero_point").truth()}
            );
        }
    );
}

void read_paces(const Spot& table, rules::AdvancementTables& advancement) {
    advancement.source = table.at("source").text();
    advancement.level_max = table.at("level_max").number(1, table_bonus_max);
    each_named(
        table.at("rows"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            advancement.paces.push_back({key, name, row.at("xp").number(1, table_xp_max)});
        }
    );
}

void read_xp_by_level(const Spot& table, rules::AdvancementTables& advancement) {
    advancement.source = table.at("source").text();
    each_row(table, character_levels, [&](const Spot& row, int level) {
        const int xp = row.at("xp").number(0, table_xp_max);
        std::vector<rules::LevelXp>& list = advancement.xp_by_level;
        if (list.empty() ? xp != 0 : xp <= list.back().xp)
            throw row.at("xp").wrong(
                list.empty() ? "0 for the first level" : "more than the XP of the row before"
            );
        list.push_back({level, xp});
    });
    advancement.level_max = character_levels.last;
}

} // namespace

void read_encounter_tables(const Spot& top, rules::Rulebook& rulebook) {
    if (rulebook.family == rules::Family::four_degree) {
        read_threats(top.at("encounter_budget"), rulebook.encounters);
        read_xp_by_difference(top, rulebook.encounters);
    } else {
        read_xp_by_challenge(top.at("xp_by_challenge"), rulebook.encounters);
        read_character_budgets(top.at("xp_budget_per_character"), rulebook.encounters);
    }
}

void read_advancement_tables(const Spot& top, rules::Rulebook& rulebook) {
    if (rulebook.family == rules::Family::four_degree) {
        read_paces(top.at("level_up_xp"), rulebook.advancement);
        read_awards(top.at("xp_awards"), rulebook.advancement);
    } else {
        read_xp_by_level(top.at("character_advancement"), rulebook.advancement);
    }
}

} // namespace store
