// The GM's own screen: DCs, encounter budgets and XP, by the rulebook and its house rules.
#include "game/sheet.h"
#include "print/pages.h"
#include "rules/challenge_text.h"
#include "rules/difficulty.h"

namespace print {

namespace {

Table list_of(
    const std::string& first, const std::string& second, const std::vector<rules::NamedDc>& rows
) {
    Table table{{{first}, {second, true}}, {}, 0, false, false};
    table.may_fold = true;
    for (const rules::NamedDc& each : rows)
        table.rows.push_back({{each.name}, {std::to_string(each.dc), {}, true}});
    return table;
}

void add_source(Blocks& blocks, const std::string& source) {
    if (!source.empty()) blocks.emplace_back(Paragraph{"Source: " + source, TextStyle::small});
}

void add_adjustments(Blocks& blocks, const rules::Rulebook& rulebook) {
    std::vector<rules::DcAdjustment> all = rulebook.difficulty.steps;
    all.insert(all.end(), rulebook.difficulty.rarities.begin(), rulebook.difficulty.rarities.end());
    if (all.empty()) return;
    blocks.emplace_back(Heading{"Adjustments"});
    Table table{{{"Step or rarity"}, {"Moves the DC by", true}}, {}, 0, false, false};
    table.may_fold = true;
    for (const rules::DcAdjustment& each : all)
        table.rows.push_back({{each.name}, {game::signed_text(each.amount), {}, true}});
    blocks.emplace_back(std::move(table));
    add_source(blocks, rulebook.difficulty.adjustments_source);
}

} // namespace

base::Result<Blocks> difficulty_page(const PrintSource& source, const std::string& /*detail*/) {
    Blocks blocks{Title{"Difficulty", source.rulebook.title}};
    for (const rules::DcList& list : rules::dc_lists(source.rulebook)) {
        blocks.emplace_back(Heading{list.title});
        blocks.emplace_back(list_of("For", "DC", list.rows));
        add_source(blocks, list.source);
    }
    add_adjustments(blocks, source.rulebook);
    return blocks;
}

base::Result<Blocks> encounter_page(const PrintSource& source, const std::string& /*detail*/) {
    const rules::EncounterTables& tables = source.rulebook.encounters;
    Blocks blocks{Title{"Encounters", source.rulebook.title}};
    if (!tables.threats.empty()) {
        blocks.emplace_back(Heading{"Budget for a party of " + std::to_string(tables.party_size)});
        Table budget{
            {{"Threat"}, {"XP", true}, {"Each character more or less", true}}, {}, 0, false, false};
        for (const rules::Threat& threat : tables.threats)
            budget.rows.push_back(
                {{threat.name},
                 {std::to_string(threat.budget), {}, true},
                 {std::to_string(threat.per_character)}}
            );
        blocks.emplace_back(std::move(budget));
    }
    if (!tables.character_budgets.empty()) {
        blocks.emplace_back(Heading{"Budget of each character"});
        Table budget{{{"Level"}}, {}, 0, false, false};
        for (const rules::Difficulty& difficulty : tables.difficulties)
            budget.columns.push_back({difficulty.name, true});
        for (const rules::CharacterBudget& row : tables.character_budgets) {
            std::vector<Cell> cells{{std::to_string(row.level), {}, true}};
            for (std::size_t i = 0; i < tables.difficulties.size(); ++i)
                cells.push_back({i < row.xp.size() ? std::to_string(row.xp[i]) : ""});
            budget.rows.push_back(std::move(cells));
        }
        blocks.emplace_back(std::move(budget));
    }
    add_source(blocks, tables.budget_source);
    if (!tables.xp_by_difference.empty()) {
        blocks.emplace_back(Heading{"XP of one opponent"});
        Table xp{
            {{"Level against the party"},
             {"Creature", true},
             {"Simple hazard", true},
             {"Complex hazard", true}},
            {},
            0,
            false,
            false};
        for (const rules::XpByDifference& row : tables.xp_by_difference)
            xp.rows.push_back(
                {{game::signed_text(row.difference), {}, true},
                 {std::to_string(row.creature)},
                 {std::to_string(row.simple_hazard)},
                 {std::to_string(row.complex_hazard)}}
            );
        blocks.emplace_back(std::move(xp));
    }
    if (!tables.xp_by_challenge.empty()) {
        blocks.emplace_back(Heading{"XP by challenge rating"});
        std::vector<rules::NamedDc> rows;
        for (const rules::XpByChallenge& row : tables.xp_by_challenge)
            rows.push_back({{}, rules::challenge_text(row.challenge), row.xp});
        blocks.emplace_back(list_of("CR", "XP", rows));
    }
    add_source(blocks, tables.xp_source);
    return blocks;
}

} // namespace print
