// The numbers of the creature that is being made.
#include "widgets/creature_builder_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace widgets {

using rules::BuildChoice;
using rules::NumberOffer;

static std::string why_no_band(const NumberOffer& offer, int direction) {
    if (offer.bands.empty()) return "It follows from the other numbers, or is typed.";
    if (rules::next_band(offer, direction).has_value()) return {};
    return direction < 0 ? "There is no weaker band." : "There is no stronger band.";
}

static std::string band_words(const NumberOffer& offer) {
    if (offer.is_typed) return "typed";
    if (!offer.band.has_value()) return {};
    return std::string(rules::band_word(*offer.band));
}

static void draw_builder_number(BuildChoice& choice, const NumberOffer& offer, float name_width) {
    ImGui::PushID(offer.key.c_str());
    ImGui::AlignTextToFramePadding();
    text_fitted(Ink::text, offer.name, name_width - px(8.0F));
    ImGui::SameLine(name_width);
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    if (button(("-##less " + offer.key).c_str(), why_no_band(offer, -1)))
        game::nudge(choice, offer, -1);
    ImGui::SameLine(0.0F, gap);
    const game::NumberRange range = game::number_range(offer.key);
    const auto typed = number_field(
        ("##" + offer.key).c_str(),
        offer.value,
        range.minimum,
        range.maximum,
        width_of_letters(4),
        offer.name
    );
    if (typed.has_value()) choice.numbers[offer.key] = {std::nullopt, *typed};
    ImGui::SameLine(0.0F, gap);
    if (button(("+##more " + offer.key).c_str(), why_no_band(offer, 1)))
        game::nudge(choice, offer, 1);
    const bool is_changed = offer.is_typed || offer.band != offer.usual;
    ImGui::SameLine();
    text(is_changed ? Ink::accent : Ink::muted, band_words(offer));
    if (is_changed) {
        ImGui::SameLine();
        if (small_button(("Usual##usual " + offer.key).c_str())) choice.numbers.erase(offer.key);
    }
    ImGui::PopID();
}

void draw_builder_numbers(CreatureBuilderView& view, const game::BuilderReading& reading) {
    float name_width = px(60.0F);
    for (const NumberOffer& offer : reading.numbers)
        name_width = std::max(name_width, ImGui::CalcTextSize(offer.name.c_str()).x + px(12.0F));
    name_width = std::min(name_width, ImGui::GetContentRegionAvail().x * 0.4F);
    const BuildChoice before = *view.choice;
    for (const NumberOffer& offer : reading.numbers)
        draw_builder_number(*view.choice, offer, name_width);
    if (*view.choice != before) view.done.clear();
    heading("Attacks");
    for (const game::Attack& attack : reading.statistics.attacks)
        text_wrapped(Ink::text, game::built_attack_text(attack));
    if (!reading.statistics.notes.empty()) text_wrapped(Ink::muted, reading.statistics.notes);
}

} // namespace widgets
