#include "store/rulebook_rows.h"
#include "store/rulebook_tables.h"

namespace store {

namespace {

constexpr int hours_max = 24;
constexpr int factor_max = 10;

void read_treat_wounds(
    const Spot& table, const rules::Rulebook& rulebook, rules::TreatWoundsRules& treat
) {
    treat.source = table.at("source").text();
    treat.minutes = table.at("minutes").number(1, table_minutes_max);
    treat.immune_minutes = table.at("immune_minutes").number(0, table_minutes_max);
    treat.full_minutes = table.at("full_treatment_minutes").number(1, table_minutes_max);
    treat.full_factor = table.at("full_treatment_factor").number(1, factor_max);
    treat.critical_failure_damage = read_dice(table.at("critical_failure_damage"));
    const Spot ends = table.at("ends_condition");
    treat.ends_condition = ends.key();
    if (rules::find_condition(rulebook, treat.ends_condition) == nullptr)
        throw ends.wrong("the key of a condition", base::ErrorKind::dangling_reference);
    each_named(
        table.at("rows"),
        [&](const Spot& row, const std::string& key, const std::string& name) {
            treat.ranks.push_back(
                {key,
                 name,
                 row.at("dc").number(0, table_dc_max),
                 read_dice(row.at("success")),
                 read_dice(row.at("critical_success"))}
            );
        }
    );
}

void read_first_aid(const Spot& table, rules::FirstAidRules& first_aid) {
    first_aid.source = table.at("source").text();
    first_aid.actions = table.at("actions").number(1, table_bonus_max);
    first_aid.stabilize_dc_base = table.at("stabilize_dc_base").number(0, table_dc_max);
    first_aid.critical_failure_dying =
        table.at("stabilize_critical_failure_dying").number(0, table_bonus_max);
}

void read_night_rest(const Spot& table, rules::NightRestRules& rest) {
    rest.source = table.at("source").text();
    rest.hours = table.at("hours").number(1, hours_max);
    rest.hp_per_level_min = table.at("hp_per_level_min").number(0, table_bonus_max);
    rest.full_day_factor = table.at("full_day_factor").number(1, factor_max);
    rest.rough_comfort_divisor = table.at("rough_comfort_divisor").number(1, factor_max);
}

void read_rests(const Spot& table, rules::SrdEdition edition, rules::RestRules& rests) {
    rests.source = table.at("source").text();
    const Spot brief = table.at("short");
    rests.short_hours = by_edition(brief.at("hours"), edition).number(1, hours_max);
    rests.hp_per_die_min =
        by_edition(brief.at("hit_points_per_die_min"), edition).number(0, table_bonus_max);
    const Spot full = table.at("long");
    rests.long_hours = by_edition(full.at("hours"), edition).number(1, hours_max);
    rests.hit_dice_divisor = by_edition(full.at("hit_dice_divisor"), edition).number(1, factor_max);
    rests.hit_dice_min =
        by_edition(full.at("hit_dice_regained_min"), edition).number(0, table_bonus_max);
}

} // namespace

void read_recovery_tables(const Spot& top, rules::Rulebook& rulebook) {
    rules::RecoveryTables& recovery = rulebook.recovery;
    if (rulebook.family == rules::Family::srd5) {
        read_rests(top.at("rests"), rulebook.edition, recovery.rests);
        return;
    }
    read_treat_wounds(top.at("treat_wounds"), rulebook, recovery.treat_wounds);
    read_first_aid(top.at("first_aid"), recovery.first_aid);
    read_night_rest(top.at("rest"), recovery.night_rest);
}

} // namespace store
