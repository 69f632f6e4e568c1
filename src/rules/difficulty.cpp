#include "rules/difficulty.h"

#include <utility>

namespace rules {

namespace {

using base::Error;
using base::ErrorKind;

// `noun` is what each row is called by: "level 3".
DcList numbered_list(
    const std::string& title,
    const std::string& noun,
    const std::string& source,
    const std::vector<NumberedDc>& dcs,
    int adjustment
) {
    DcList list{title, source, {}};
    for (const NumberedDc& each : dcs) {
        std::string number = std::to_string(each.number);
        std::string name = noun;
        name.append(" ").append(number);
        list.rows.push_back({std::move(number), std::move(name), each.dc + adjustment});
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
        lists.push_back(
            numbered_list("By level", "level", tables.by_level_source, tables.by_level, adjustment)
        );
    if (!tables.by_spell_rank.empty())
        lists.push_back(numbered_list(
            "By spell rank", "rank", tables.by_spell_rank_source, tables.by_spell_rank, adjustment
        ));
    const bool is_by_proficiency = rulebook.family == Family::four_degree;
    DcList simple{
        is_by_proficiency ? "By proficiency" : "Typical", tables.simple_source, tables.simple};
    for (NamedDc& each : simple.rows)
        each.dc += adjustment;
    lists.push_back(std::move(simple));
    return lists;
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
