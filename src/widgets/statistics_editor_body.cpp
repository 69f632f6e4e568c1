// DCs, speeds and senses of the form.
#include "game/roster.h"
#include "game/sheet.h"
#include "widgets/stat_words.h"
#include "widgets/statistics_editor_parts.h"
#include "widgets/ui.h"

#include <imgui.h>

#include <array>
#include <map>
#include <utility>

namespace widgets {

using game::Limits;
using game::Statistics;

namespace {

using Numbers = std::map<std::string, int>;

// One of several numbers that a sheet may or may not have, with a cross that takes it away.
struct OptionalNumber {
    Numbers Statistics::*part;
    std::string key;
    std::string name;
    int maximum;
};

void draw_optional_number(
    const StatisticsForm& form, Flow& flow, const OptionalNumber& number, int value
) {
    const float gap = ImGui::GetStyle().ItemInnerSpacing.x;
    const float width = width_of_letters(5);
    flow.field(opening_word(number.name), width + gap + row_height());
    const auto typed = number_field(
        ("##" + number.key).c_str(), value, 0, number.maximum, width, opening_word(number.name)
    );
    if (typed.has_value())
        form.ask(
            number.name + " of " + form.owner + ": " + std::to_string(*typed),
            {},
            [part = number.part, key = number.key, changed = *typed](Statistics& statistics) {
                (statistics.*part)[key] = changed;
            }
        );
    ImGui::SameLine(0.0F, gap);
    if (small_button(("x##without " + number.key).c_str()))
        form.ask(
            "Take " + number.name + " from " + form.owner,
            {},
            [part = number.part, key = number.key](Statistics& statistics) {
                (statistics.*part).erase(key);
            }
        );
    Flow::end_field();
}

} // namespace

void draw_statistics_speeds(const StatisticsForm& form) {
    static constexpr std::array<const char*, 5> kinds{"land", "fly", "swim", "climb", "burrow"};
    heading("Speeds, in feet");
    Flow flow;
    std::vector<std::string> keys;
    std::vector<std::string> names;
    for (const char* kind : kinds) {
        const auto found = form.statistics.speeds_ft.find(kind);
        if (found != form.statistics.speeds_ft.end()) {
            draw_optional_number(
                form,
                flow,
                {&Statistics::speeds_ft, kind, speed_words(kind), Limits::speed_max},
                found->second
            );
            continue;
        }
        keys.emplace_back(kind);
        names.push_back(speed_words(kind));
    }
    if (keys.empty()) return;
    flow.next(button_width("Add a speed"));
    const std::string added = pick_to_add("Add a speed", keys, names);
    constexpr int usual_speed_ft = 25;
    if (!added.empty())
        form.ask(
            "Add a " + speed_words(added) + " to " + form.owner,
            {},
            [added](Statistics& statistics) { statistics.speeds_ft[added] = usual_speed_ft; }
        );
}

void draw_statistics_difficulty_classes(const StatisticsForm& form) {
    static constexpr std::array<const char*, 2> kinds{"class_dc", "spell_dc"};
    heading("Difficulty classes");
    Flow flow;
    std::vector<std::string> keys;
    std::vector<std::string> names;
    const auto& known = form.statistics.difficulty_classes;
    for (const auto& [key, dc] : known) {
        draw_optional_number(
            form,
            flow,
            {&Statistics::difficulty_classes, key, game::dc_name(key), Limits::dc_max},
            dc
        );
    }
    for (const char* kind : kinds) {
        if (known.count(kind) > 0) continue;
        keys.emplace_back(kind);
        names.push_back(game::dc_name(kind));
    }
    if (keys.empty()) return;
    flow.next(button_width("Add a DC"));
    const std::string added = pick_to_add("Add a DC", keys, names);
    constexpr int usual_dc = 15;
    if (!added.empty())
        form.ask(
            "Add a " + game::dc_name(added) + " to " + form.owner,
            {},
            [added](Statistics& statistics) { statistics.difficulty_classes[added] = usual_dc; }
        );
}

void draw_statistics_senses(const StatisticsForm& form) {
    heading("Senses");
    const auto senses = checked_text(
        "##senses",
        form.statistics.senses,
        form.view.drafts,
        form.context.now_seconds,
        ImGui::GetContentRegionAvail().x,
        check_text
    );
    draw_complaints(form.view.drafts, "##senses");
    if (senses.has_value())
        form.ask("Senses of " + form.owner, "senses", [words = *senses](Statistics& statistics) {
            statistics.senses = words;
        });
}

} // namespace widgets
