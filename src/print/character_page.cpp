// A sheet that a new player reads at a glance, and a pack to fill: a character each.
#include "base/unicode.h"
#include "game/party_figures.h"
#include "game/reminding.h"
#include "game/sheet.h"
#include "print/pages.h"

namespace print {

namespace {

void add_numbers(Blocks& blocks, const PrintSource& source, const game::Combatant& combatant) {
    Table defences{{}, {{}}, 0, true, true};
    Table skills{{{""}, {"", true}, {""}, {""}, {"", true}}, {}, 0, false, false};
    Table attacks{{{"Attack"}, {"To hit", true}, {"Damage"}}, {}, 0, false, false};
    std::vector<Cell> pending;
    // What a new player looks for first, large, and in words below what it is for.
    const auto add_defence =
        [&](const std::string& name, const std::string& number, const std::string& use) {
            defences.columns.push_back({name});
            defences.rows.front().push_back({number, use, true, true});
        };
    add_defence(
        "HP", std::to_string(game::effective_hp_max(source.rulebook, combatant)), "when unhurt"
    );
    for (const game::SheetNumber& each : game::sheet_numbers(source.rulebook, combatant)) {
        const int total = each.number.total;
        switch (each.part) {
        case game::SheetPart::armor_class:
            add_defence("AC", std::to_string(total), "what hits you");
            break;
        case game::SheetPart::save:
            add_defence(each.brief, game::signed_text(total), each.name);
            break;
        case game::SheetPart::attack: {
            const auto index = static_cast<std::size_t>(std::stoi(each.key));
            const game::Attack& attack = combatant.statistics.attacks[index];
            attacks.rows.push_back(
                {{each.name, attack.traits, true},
                 {game::signed_text(total), {}, true},
                 {attack.damage + " " + attack.damage_type}}
            );
            break;
        }
        default: {
            const bool is_dc = each.part == game::SheetPart::difficulty_class;
            pending.push_back({each.name});
            pending.push_back({is_dc ? std::to_string(total) : game::signed_text(total), {}, true});
            if (pending.size() == 2) {
                pending.push_back({"   "}); // between the pairs
            } else {
                skills.rows.push_back(std::move(pending));
                pending.clear();
            }
        }
        }
    }
    if (!pending.empty()) {
        pending.resize(skills.columns.size());
        skills.rows.push_back(std::move(pending));
    }
    blocks.emplace_back(std::move(defences));
    if (!attacks.rows.empty()) blocks.emplace_back(std::move(attacks));
    if (!skills.rows.empty()) {
        blocks.emplace_back(Heading{"You roll a d20 and add"});
        blocks.emplace_back(std::move(skills));
    }
}

} // namespace

base::Result<Blocks> character_page(const PrintSource& source, const std::string& detail) {
    Blocks blocks;
    for (const game::Character& character : source.campaign.party.characters) {
        if (!detail.empty() && base::folded(character.name) != base::folded(detail)) continue;
        if (!blocks.empty()) blocks.emplace_back(PageBreak{});
        std::string about = character.calling;
        if (!character.player.empty()) about += (about.empty() ? "" : ", ") + character.player;
        about +=
            (about.empty() ? "level " : ", level ") + std::to_string(character.statistics.level);
        blocks.emplace_back(Title{character.name, about});
        game::Combatant combatant = game::combatant_of(source.campaign, character);
        combatant.conditions.clear(); // the sheet is as written, whatever runs now
        add_numbers(blocks, source, combatant);
        if (!character.reminders.empty()) blocks.emplace_back(Heading{"Do not forget"});
        for (const game::Reminder& reminder : character.reminders)
            blocks.emplace_back(Tally{
                reminder.text, game::comes_up_words(reminder.comes_up), reminder.uses});
        blocks.emplace_back(Heading{"Hit points now, and notes"});
        blocks.emplace_back(RuledLines{});
        blocks.emplace_back(PageBreak{});
        blocks.emplace_back(Heading{"What " + character.name + " carries"});
        TickList carried{{}, 55};
        for (const game::TreasureItem& item : source.campaign.treasury.items)
            if (item.carrier == character.id && item.fate == game::ItemFate::held)
                carried.ticks.push_back(
                    {(item.count > 1 ? std::to_string(item.count) + " " : "") + item.name}
                );
        blocks.emplace_back(std::move(carried));
        blocks.emplace_back(Pack{});
    }
    if (!blocks.empty()) return blocks;
    return base::Error{
        base::ErrorKind::not_found,
        detail.empty() ? "The party has no characters yet."
                       : "There is no character " + detail + ".",
        {},
        {}};
}

} // namespace print
