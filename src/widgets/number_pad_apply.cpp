// What the number pad asks for: one edit for all targets, so that one undo takes it back.
#include "game/hurt.h"
#include "widgets/number_pad.h"
#include "widgets/turn_order_select.h"

#include <algorithm>
#include <charconv>
#include <utility>

namespace widgets {

using base::Id;

static int amount_of(const NumberPadView& view) {
    int amount = 0;
    const char* begin = view.digits.data();
    std::from_chars(begin, begin + view.digits.size(), amount);
    return amount;
}

game::Damage pad_damage(const NumberPadView& view, Id target) {
    game::Damage damage;
    damage.amount = amount_of(view);
    damage.type = view.damage_type;
    damage.is_critical = view.is_critical;
    damage.is_nonlethal = view.is_nonlethal;
    const auto found = view.portions.find(target);
    if (found != view.portions.end()) {
        damage.is_half = found->second == Portion::half;
        damage.is_doubled = found->second == Portion::doubled;
    }
    return damage;
}

static void remember_type(NumberPadView& view) {
    if (view.damage_type.empty()) return;
    auto& types = view.recent_types;
    types.erase(std::remove(types.begin(), types.end(), view.damage_type), types.end());
    types.insert(types.begin(), view.damage_type);
}

// "Hurt Reed Lurker 2 by 7 fire", "Heal Bram Oake by 12".
static std::string label_of(const PanelContext& context, const NumberPadView& view, PadVerb verb) {
    const std::string names = names_text(context.campaign.encounter, view.targets);
    const std::string number = std::to_string(amount_of(view));
    switch (verb) {
    case PadVerb::hurt: {
        std::string label = "Hurt " + names + " by " + number;
        if (!view.damage_type.empty()) label += " " + view.damage_type;
        if (view.is_critical) label += ", critical";
        return label;
    }
    case PadVerb::heal: return "Heal " + names + " by " + number;
    case PadVerb::temp_hp: return "Give " + names + " " + number + " temporary HP";
    }
    return {};
}

static std::string joined(std::string text, const std::string& line) {
    if (!text.empty() && !line.empty()) text += "; ";
    return text + line;
}

static void ask_hurt(const PanelContext& context, const NumberPadView& view, std::string label) {
    std::vector<std::pair<Id, game::Damage>> blows;
    for (const Id target : view.targets)
        blows.emplace_back(target, pad_damage(view, target));
    const rules::Rulebook* rulebook = &context.rulebook;
    context.edits.add(
        &game::Campaign::encounter,
        label,
        [blows, rulebook, label](game::Encounter& encounter) {
            std::string lines;
            for (const auto& [target, damage] : blows)
                lines = joined(lines, game::hurt(encounter, *rulebook, target, damage));
            return label + ": " + lines;
        }
    );
}

static void
ask_help(const PanelContext& context, const NumberPadView& view, PadVerb verb, std::string label) {
    const rules::Rulebook* rulebook = &context.rulebook;
    context.edits.add(
        &game::Campaign::encounter,
        label,
        [ids = view.targets, amount = amount_of(view), verb, rulebook, label](
            game::Encounter& encounter
        ) {
            std::string lines;
            for (const Id id : ids)
                lines = joined(
                    lines,
                    verb == PadVerb::heal ? game::heal(encounter, *rulebook, id, amount)
                                          : game::give_temp_hp(encounter, id, amount)
                );
            return label + ": " + lines;
        }
    );
}

void apply_pad(const PanelContext& context, NumberPadView& view, PadVerb verb) {
    if (view.digits.empty() || view.targets.empty() || context.is_read_only) return;
    const std::string label = label_of(context, view, verb);
    if (verb == PadVerb::hurt) {
        ask_hurt(context, view, label);
        remember_type(view);
    } else {
        ask_help(context, view, verb, label);
    }
    view.digits.clear();
    view.portions.clear();
    view.is_critical = false;
    view.is_open = false;
}

} // namespace widgets
