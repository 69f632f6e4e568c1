// Everybody's numbers side by side, and the reminders of each player.
#include "game/party_figures.h"
#include "game/reminding.h"
#include "game/sheet.h"
#include "print/pages.h"

namespace print {

namespace {

bool is_signed(game::FigureKind kind) {
    return kind == game::FigureKind::save || kind == game::FigureKind::perception ||
           kind == game::FigureKind::skill;
}

// The best is set strong, and both ends are named by a sign: no colour is needed.
Cell figure_cell(const game::FigureColumn& column, const game::PartyFigure& figure) {
    if (!figure.is_there) return {"-"};
    std::string text = is_signed(column.kind) ? game::signed_text(figure.number.total)
                                              : std::to_string(figure.number.total);
    if (figure.is_best) text = "\xE2\x96\xB2\u00A0" + text;  // triangle up
    if (figure.is_worst) text = "\xE2\x96\xBD\u00A0" + text; // hollow triangle down
    return {text, {}, figure.is_best};
}

} // namespace

// A row a number and a column a character: a party is smaller than a sheet is long.
base::Result<Blocks> party_page(const PrintSource& source, const std::string& /*detail*/) {
    const game::PartyFigures party = game::party_figures(source.campaign, source.rulebook, false);
    Blocks blocks{Title{"Party defences", source.campaign.about.title}};
    if (party.rows.empty()) {
        blocks.emplace_back(Paragraph{"Nobody of the party is present tonight."});
        return blocks;
    }
    Table table;
    table.columns.push_back({""});
    for (const game::PartyRow& row : party.rows)
        table.columns.push_back({row.name, true});
    for (std::size_t column = 0; column < party.columns.size(); ++column) {
        std::vector<Cell> cells{{party.columns[column].name, {}, true}};
        for (const game::PartyRow& row : party.rows)
            cells.push_back(figure_cell(party.columns[column], row.figures[column]));
        table.rows.push_back(std::move(cells));
    }
    blocks.emplace_back(std::move(table));
    blocks.emplace_back(Paragraph{
        "\xE2\x96\xB2 best of the party, \xE2\x96\xBD worst", TextStyle::small});
    Table senses{{{""}, {""}}, {}, 0, false, false};
    for (const game::PartyRow& row : party.rows)
        if (!row.senses.empty()) senses.rows.push_back({{row.name, {}, true}, {row.senses}});
    if (!senses.rows.empty()) {
        blocks.emplace_back(Heading{"Senses"});
        blocks.emplace_back(std::move(senses));
    }
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

base::Result<Blocks> reminders_page(const PrintSource& source, const std::string& /*detail*/) {
    Blocks blocks{Title{"Reminders", source.campaign.about.title}};
    bool has_any = false;
    for (const game::Character& character : source.campaign.party.characters) {
        if (character.reminders.empty()) continue;
        has_any = true;
        blocks.emplace_back(Heading{
            character.name + (character.player.empty() ? "" : " (" + character.player + ")")});
        for (const game::Reminder& reminder : character.reminders) {
            std::string note = game::comes_up_words(reminder.comes_up);
            if (reminder.uses > 0) note += ", back " + game::refreshed_words(reminder.refreshed_by);
            blocks.emplace_back(Tally{reminder.text, note, reminder.uses});
        }
    }
    if (!has_any) blocks.emplace_back(Paragraph{"No character has reminders yet."});
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

} // namespace print
