// "dc level 7 hard", "dc rank 3", "dc trained", "dc hard".
#include "base/text.h"
#include "game/answer_topics.h"
#include "game/sheet.h"
#include "rules/difficulty.h"

#include <algorithm>

namespace game {

namespace {

using rules::Rulebook;

struct Adjustments {
    std::vector<std::string> keys;
    std::vector<std::string> names; // "hard +2"
};

const rules::DcAdjustment* find_adjustment(const Rulebook& rulebook, const std::string& key) {
    for (const auto* list : {&rulebook.difficulty.steps, &rulebook.difficulty.rarities}) {
        for (const rules::DcAdjustment& each : *list)
            if (each.key == key) return &each;
    }
    return nullptr;
}

Adjustments take_adjustments(const Rulebook& rulebook, Words& words) {
    std::vector<std::string> known;
    for (const auto* list : {&rulebook.difficulty.steps, &rulebook.difficulty.rarities})
        for (const rules::DcAdjustment& each : *list)
            known.push_back(each.key);
    Adjustments taken;
    while (const auto key = words.take_key(known)) {
        const rules::DcAdjustment& found = *find_adjustment(rulebook, *key);
        taken.keys.push_back(*key);
        taken.names.push_back(found.name + " " + signed_text(found.amount));
    }
    return taken;
}

// One DC with what moved it.
base::Result<Answer> dc_answer(
    const Rulebook& rulebook,
    const base::Result<int>& dc,
    const Adjustments& adjustments,
    const std::string& what,
    const std::string& source
) {
    if (!dc.ok()) return dc.error();
    const base::Result<int> moved = rules::dc_adjustment(rulebook, adjustments.keys);
    if (!moved.ok()) return moved.error();
    Answer answer;
    answer.title = "DC " + std::to_string(dc.value());
    std::string line = what + " " + std::to_string(dc.value() - moved.value());
    for (const std::string& name : adjustments.names)
        line += ", " + name;
    answer.lines.push_back(line);
    answer.source = source;
    answer.values = {
        {"dc", dc.value()},
        {"dc_unadjusted", dc.value() - moved.value()},
        {"adjustment", moved.value()},
        {"adjustments", adjustments.keys}};
    return answer;
}

// Adjustments alone: what they would do to any DC.
Answer adjustment_answer(const Rulebook& rulebook, const Adjustments& adjustments, int amount) {
    Answer answer;
    answer.title = "The DC changes by " + signed_text(amount);
    for (const std::string& name : adjustments.names)
        answer.lines.push_back(name);
    answer.source = rulebook.difficulty.adjustments_source;
    answer.values = {{"adjustment", amount}, {"adjustments", adjustments.keys}};
    return answer;
}

// "dc" alone: the short list.
Answer simple_list(const Rulebook& rulebook) {
    Answer answer;
    const rules::DcList list = rules::dc_lists(rulebook).back();
    answer.title = "Difficulty classes: " + base::lowercase(list.title);
    NamedValues dcs;
    for (const rules::NamedDc& row : list.rows) {
        answer.lines.push_back(row.name + "\t" + std::to_string(row.dc));
        dcs.push_back({row.key, row.dc});
    }
    answer.source = list.source;
    answer.values = {{"dcs", std::move(dcs)}};
    return answer;
}

} // namespace

base::Result<Answer> answer_dc(const AnswerContext& context, Words& words) {
    const Rulebook& rulebook = context.rulebook;
    const rules::DifficultyTables& tables = rulebook.difficulty;
    constexpr int row_max = 999; // the table itself says how far it goes
    if (words.is_at_end()) return simple_list(rulebook);
    if (words.take("level")) {
        const auto level = words.take_number(-row_max, row_max);
        if (!level) return misfit();
        const Adjustments adjustments = take_adjustments(rulebook, words);
        return dc_answer(
            rulebook,
            rules::dc_for_level(rulebook, *level, adjustments.keys),
            adjustments,
            "level " + std::to_string(*level) + ":",
            tables.by_level_source
        );
    }
    if (words.take("rank")) {
        const auto rank = words.take_number(-row_max, row_max);
        if (!rank) return misfit();
        const Adjustments adjustments = take_adjustments(rulebook, words);
        return dc_answer(
            rulebook,
            rules::dc_for_spell_rank(rulebook, *rank, adjustments.keys),
            adjustments,
            "spell rank " + std::to_string(*rank) + ":",
            tables.by_spell_rank_source
        );
    }
    std::vector<std::string> simple;
    for (const rules::NamedDc& each : tables.simple)
        simple.push_back(each.key);
    if (const auto key = words.take_key(simple)) {
        const auto row = std::find_if(
            tables.simple.begin(),
            tables.simple.end(),
            [&key](const rules::NamedDc& each) { return each.key == *key; }
        );
        const Adjustments adjustments = take_adjustments(rulebook, words);
        return dc_answer(
            rulebook,
            rules::simple_dc(rulebook, *key, adjustments.keys),
            adjustments,
            row->name + ":",
            tables.simple_source
        );
    }
    const Adjustments adjustments = take_adjustments(rulebook, words);
    if (adjustments.keys.empty()) return misfit();
    const base::Result<int> amount = rules::dc_adjustment(rulebook, adjustments.keys);
    if (!amount.ok()) return amount.error();
    return adjustment_answer(rulebook, adjustments, amount.value());
}

} // namespace game
