#include "widgets/number_offers.h"

#include "game/builder_reading.h"
#include "widgets/form.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <algorithm>
#include <string>

namespace widgets {

using rules::NumberChoices;
using rules::NumberOffer;

namespace {

std::string why_no_band(const NumberOffer& offer, int direction) {
    if (offer.bands.empty()) return "It has one value at each level, or is typed.";
    if (rules::next_band(offer, direction).has_value()) return {};
    return direction < 0 ? "There is no weaker band." : "There is no stronger band.";
}

std::string band_words(const NumberOffer& offer) {
    if (offer.is_typed) return "typed";
    if (!offer.band.has_value()) return {};
    return std::string(rules::band_word(*offer.band));
}

std::string range_text(const rules::BandRange& range) {
    if (range.low == range.high) return std::to_string(range.low);
    return std::to_string(range.low) + " to " + std::to_string(range.high);
}

// "low 26, high 32, extreme 35": everything the tables say at this level.
std::string all_bands(const NumberOffer& offer) {
    std::string words;
    for (const rules::BandOffer& band : offer.bands)
        words += (words.empty() ? "" : ", ") + std::string(rules::band_word(band.band)) + " " +
                 range_text(band.range);
    return words;
}

// What the bands give, weakest first: "26 / 32 / 35".
std::string band_values(const NumberOffer& offer) {
    std::string words;
    for (const rules::BandOffer& band : offer.bands)
        words += (words.empty() ? "" : " / ") + std::to_string(band.value);
    return words;
}

void draw_band(const NumberOffer& offer, bool is_changed) {
    const std::string words = band_words(offer);
    text(is_changed ? Ink::accent : Ink::text, words);
    const std::string all = all_bands(offer);
    if (!all.empty()) ImGui::SetItemTooltip("%s", all.c_str());
    const std::string values = band_values(offer);
    if (offer.bands.size() < 2) return;
    ImGui::SameLine();
    const float room = ImGui::GetContentRegionAvail().x;
    if (ImGui::CalcTextSize(values.c_str()).x > room) return; // the tooltip has it
    text(Ink::muted, values);
    ImGui::SetItemTooltip("%s", all.c_str());
}

void draw_number_offer(NumberChoices& choices, const NumberOffer& offer, float name_width) {
    ImGui::PushID(offer.key.c_str());
    ImGui::AlignTextToFramePadding();
    text_fitted(Ink::text, offer.name, name_width - px(8.0F));
    ImGui::SameLine(name_width);
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    if (button(("-##less " + offer.key).c_str(), why_no_band(offer, -1)))
        game::nudge(choices, offer, -1);
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
    if (typed.has_value()) choices[offer.key] = {std::nullopt, *typed};
    ImGui::SameLine(0.0F, gap);
    if (button(("+##more " + offer.key).c_str(), why_no_band(offer, 1)))
        game::nudge(choices, offer, 1);
    const bool is_changed = offer.is_typed || offer.band != offer.usual;
    ImGui::SameLine();
    if (is_changed) {
        if (small_button(("Usual##usual " + offer.key).c_str())) choices.erase(offer.key);
        ImGui::SameLine();
    }
    draw_band(offer, is_changed);
    ImGui::PopID();
}

} // namespace

bool draw_number_offers(NumberChoices& choices, const std::vector<NumberOffer>& offers) {
    float name_width = px(60.0F);
    for (const NumberOffer& offer : offers)
        name_width = std::max(name_width, ImGui::CalcTextSize(offer.name.c_str()).x + px(12.0F));
    name_width = std::min(name_width, ImGui::GetContentRegionAvail().x * 0.4F);
    const NumberChoices before = choices;
    for (const NumberOffer& offer : offers)
        draw_number_offer(choices, offer, name_width);
    return choices != before;
}

} // namespace widgets
