#include "rules/difficulty.h"

#include <utility>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

void add_row(DcList& list, NamedDc row, const std::string& table) {
    list.pointers.push_back(table + "/" + std::to_string(list.rows.size()));
    list.rows.push_back(std::move(row));
}

constexpr const char* level_table = "/dc_by_level/rows";

// `noun` is what each row is called by: "level 3".
DcList numbered_list(
    const std::string& title,
    const std::string& noun,
    const std::string& source,
    const std::vector<NumberedDc>& dcs,
    int adjustment,
    const std::string& table
) {
    DcList list{title, source, {}, {}, table == level_table};
    for (const NumberedDc& each : dcs) {
        std::string number = std::to_string(each.number);
        std::string name = noun;
        name.append(" ").append(number);
        add_row(list, {std::move(number), std::move(name), each.dc + adjustment}, table);
    }
    return list;
}

DcList trap_saves(const TrapTables& traps, int adjustment) {
    DcList list{"Saves against traps", traps.source, {}, {}};
    for (std::size_t at = 0; at < traps.dangers.size(); ++at) {
        const TrapDanger& danger = traps.dangers[at];
        const std::string place = "/traps/dangers/" + std::to_string(at);
        list.rows.push_back(
            {danger.key + "_min", danger.name + ", at least", danger.save_dc_min + adjustment}
        );
        list.pointers.push_back(place + "/save_dc_min");
        list.rows.push_back(
            {danger.key + "_max", danger.name + ", at most", danger.save_dc_max + adjustment}
        );
        list.pointers.push_back(place + "/save_dc_max");
    }
    return list;
}

base::Result<int> numbered_dc(
    const Rulebook& rulebook,
    const std::string& noun,
    const std::vector<NumberedDc>& dcs,
    int number,
    const std::vector<std::string>& adjustments
) {
    if (dcs.empty())
        return Error{ErrorKind::not_possible, "This rulebook has no DCs by " + noun + "."};
    const base::Result<int> adjustment = dc_adjustment(rulebook, adjustments);
    if (!adjustment.ok()) return adjustment.error();
    for (const NumberedDc& each : dcs)
        if (each.number == number) return each.dc + adjustment.value();
    return Error{
        ErrorKind::out_of_range,
        "There is no DC for " + noun + " " + std::to_string(number) + ": the table runs from " +
            std::to_string(dcs.front().number) + " to " + std::to_string(dcs.back().number) + "."};
}

} // namespace

std::vector<DcList> dc_lists(const Rulebook& rulebook, int adjustment) {
    const DifficultyTables& tables = rulebook.difficulty;
    std::vector<DcList> lists;
    if (!tables.by_level.empty())
        lists.push_back(numbered_list(
            "By level", "level", tables.by_level_source, tables.by_level, adjustment, level_table
        ));
    if (!tables.by_spell_rank.empty())
        lists.push_back(numbered_list(
            "By spell rank",
            "rank",
            tables.by_spell_rank_source,
            tables.by_spell_rank,
            adjustment,
            "/spell_rank_dc/rows"
        ));
    const bool is_by_proficiency = rulebook.family == Family::four_degree;
    DcList simple{is_by_proficiency ? "By proficiency" : "Typical", tables.simple_source, {}, {}};
    const char* simple_table = is_by_proficiency ? "/simple_dc/rows" : "/difficulty_classes/rows";
    for (const NamedDc& each : tables.simple)
        add_row(simple, {each.key, each.name, each.dc + adjustment}, simple_table);
    lists.push_back(std::move(simple));
    if (!tables.traps.dangers.empty()) lists.push_back(trap_saves(tables.traps, adjustment));
    return lists;
}

const TrapDamage* trap_damage(const Rulebook& rulebook, int level) {
    for (const TrapDamage& row : rulebook.difficulty.traps.damage)
        if (level >= row.level_min && level <= row.level_max) return &row;
    return nullptr;
}

base::Result<int> dc_adjustment(const Rulebook& rulebook, const std::vector<std::string>& keys) {
    int total = 0;
    for (const std::string& key : keys) {
        bool is_known = false;
        for (const auto* list : {&rulebook.difficulty.steps, &rulebook.difficulty.rarities}) {
            for (const DcAdjustment& each : *list) {
                if (each.key != key) continue;
                total += each.amount;
                is_known = true;
            }
        }
        if (!is_known)
            return Error{
                ErrorKind::not_found, "This rulebook has no DC adjustment \"" + key + "\"."};
    }
    return total;
}

bool is_house_ruled_adjustment(const Rulebook& rulebook, std::string_view key) {
    const auto is_replaced = [&](const std::vector<DcAdjustment>& list, const std::string& place) {
        for (std::size_t at = 0; at < list.size(); ++at)
            if (list[at].key == key) return is_house_ruled(rulebook, place + std::to_string(at));
        return false;
    };
    return is_replaced(rulebook.difficulty.steps, "/dc_adjustments/steps/") ||
           is_replaced(rulebook.difficulty.rarities, "/dc_adjustments/rarities/");
}

base::Result<int>
dc_for_level(const Rulebook& rulebook, int level, const std::vector<std::string>& adjustments) {
    return numbered_dc(rulebook, "level", rulebook.difficulty.by_level, level, adjustments);
}

base::Result<int>
dc_for_spell_rank(const Rulebook& rulebook, int rank, const std::vector<std::string>& adjustments) {
    return numbered_dc(
        rulebook, "spell rank", rulebook.difficulty.by_spell_rank, rank, adjustments
    );
}

base::Result<int> simple_dc(
    const Rulebook& rulebook, std::string_view key, const std::vector<std::string>& adjustments
) {
    const base::Result<int> adjustment = dc_adjustment(rulebook, adjustments);
    if (!adjustment.ok()) return adjustment.error();
    for (const NamedDc& each : rulebook.difficulty.simple)
        if (each.key == key) return each.dc + adjustment.value();
    return Error{ErrorKind::not_found, "This rulebook has no DC \"" + std::string(key) + "\"."};
}

} // namespace rules
