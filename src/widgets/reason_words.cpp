#include "widgets/reason_words.h"

#include "game/sheet.h"
#include "widgets/stat_words.h"

#include <imgui.h>

namespace widgets {

static std::string change_in_words(
    const game::EffectiveNumber& number, const char* advantage, const char* disadvantage
) {
    std::string words;
    const auto add = [&words](const std::string& word) {
        words += (words.empty() ? "" : ", ") + word;
    };
    if (number.total != number.base) add(game::signed_text(number.total - number.base));
    if (number.mode == rules::RollMode::advantage) add(advantage);
    if (number.mode == rules::RollMode::disadvantage) add(disadvantage);
    if (number.fails) add("fails");
    return words;
}

std::string change_words(const game::EffectiveNumber& number) {
    return change_in_words(number, "advantage", "disadvantage");
}

std::string brief_change(const game::EffectiveNumber& number) {
    return change_in_words(number, "adv", "dis");
}

Ink change_ink(const game::EffectiveNumber& number) {
    const bool is_worse =
        number.total < number.base || number.fails || number.mode == rules::RollMode::disadvantage;
    return is_worse ? Ink::harm : Ink::good;
}

std::string contribution_words(const game::Contribution& part) {
    std::string words = part.source + ": " + game::signed_text(part.amount);
    if (part.bonus_type != rules::BonusType::untyped)
        words += std::string(" ") + bonus_type_words(part.bonus_type);
    if (!part.note.empty()) words += " (" + part.note + ")";
    if (!part.counts)
        words += part.amount < 0 ? ", beaten by a worse one" : ", beaten by a better one";
    return words;
}

std::string reasons_text(const game::EffectiveNumber& number) {
    std::string lines;
    const auto add = [&lines](const std::string& line) {
        lines += (lines.empty() ? "" : "\n") + line;
    };
    for (const game::Contribution& part : number.contributions)
        add(contribution_words(part));
    for (const std::string& note : number.notes)
        add(note);
    return lines;
}

void draw_reasons(const game::EffectiveNumber& number) {
    for (const game::Contribution& part : number.contributions)
        text_wrapped(part.counts ? Ink::text : Ink::muted, contribution_words(part));
    for (const std::string& note : number.notes)
        text_wrapped(Ink::muted, note);
}

void underline_item(Ink ink) {
    const ImVec2 from = ImGui::GetItemRectMin();
    const ImVec2 to = ImGui::GetItemRectMax();
    ImGui::GetWindowDrawList()->AddRectFilled(
        {from.x, to.y}, {to.x, to.y + px(2.0F)}, colour_u32(ink)
    );
}

} // namespace widgets
