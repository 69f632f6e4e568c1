// Pages of one session: plan, running notes, and the Recap Page.
#include "game/date_text.h"
#include "game/recap.h"
#include "game/session_keeping.h"
#include "game/shelf.h"
#include "print/pages.h"

#include <charconv>
#include <sstream>

namespace print {

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        if (!line.empty()) lines.push_back(line);
    return lines;
}

void add_part(Blocks& blocks, const std::string& title, const std::string& text) {
    if (text.empty()) return;
    blocks.emplace_back(Heading{title});
    blocks.emplace_back(Paragraph{text});
}

void add_ticks(Blocks& blocks, const std::string& title, TickList list) {
    if (list.ticks.empty()) return;
    blocks.emplace_back(Heading{title});
    blocks.emplace_back(std::move(list));
}

TickList ticks_of(const std::vector<game::PlanItem>& items) {
    TickList list;
    for (const game::PlanItem& item : items)
        list.ticks.push_back({item.text, {}, item.is_done});
    return list;
}

TickList goals_of(const game::Session& session, bool is_question) {
    TickList list;
    for (const game::Goal& goal : session.goals)
        if (goal.is_question == is_question) list.ticks.push_back({goal.text, {}, goal.is_done});
    return list;
}

std::string present_text(const game::Campaign& campaign, const game::Session& session) {
    std::string text;
    for (const game::Id id : session.present) {
        const game::Character* character = game::find_character(campaign.party, id);
        if (character == nullptr) continue;
        text += (text.empty() ? "" : ", ") + character->name;
    }
    return text;
}

Table people_of(const game::Campaign& campaign, const game::Session& session) {
    Table people{{{"Who"}, {"What"}}, {}, 0, false, false};
    for (const game::Id id : session.people)
        for (const game::RegisterEntry& entry : campaign.registered.entries)
            if (entry.id == id)
                people.rows.push_back({{entry.name, entry.attitude, true}, {entry.summary}});
    return people;
}

} // namespace

base::Result<const game::Session*>
session_asked_for(const PrintSource& source, const std::string& detail) {
    const game::Sessions& sessions = source.campaign.sessions;
    if (detail.empty()) {
        const game::Session* current = game::current_session(sessions);
        if (current != nullptr) return current;
        return base::Error{
            base::ErrorKind::not_found,
            "There is no session yet.",
            {},
            "Begin one on the Session Sheet."};
    }
    int number = 0;
    const auto [end, error] = std::from_chars(detail.data(), detail.data() + detail.size(), number);
    if (error != std::errc() || end != detail.data() + detail.size())
        return base::Error{
            base::ErrorKind::bad_text, detail + " is not the number of a session.", {}, {}};
    for (const game::Session& session : sessions.sessions)
        if (session.number == number) return &session;
    return base::Error{base::ErrorKind::not_found, "There is no session " + detail + ".", {}, {}};
}

base::Result<Blocks> session_plan_page(const PrintSource& source, const std::string& detail) {
    const auto asked = session_asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Campaign& campaign = source.campaign;
    const game::Session& session = *asked.value();
    Blocks blocks{Title{
        game::session_title(session),
        session.played_on + (session.played_on.empty() ? "" : "   ") +
            game::date_time_text(campaign)}};
    add_part(blocks, "Who comes", present_text(campaign, session));
    add_part(blocks, "What it is about", session.summary);
    add_part(blocks, "Must know", session.must_know);
    add_ticks(blocks, "Scenes", ticks_of(session.scenes));
    add_ticks(blocks, "Goals", goals_of(session, false));
    add_ticks(blocks, "Open questions", goals_of(session, true));
    Table people = people_of(campaign, session);
    if (!people.rows.empty()) {
        blocks.emplace_back(Heading{"People"});
        blocks.emplace_back(std::move(people));
    }
    TickList fights;
    for (const game::Id id : session.encounters)
        if (const auto* fight = game::find_prepared(campaign.preparation, id))
            fights.ticks.push_back({fight->name, game::creatures_text(campaign.shelf, *fight)});
    add_ticks(blocks, "Encounters", std::move(fights));
    add_ticks(blocks, "Loot", ticks_of(session.loot));
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

base::Result<Blocks> notes_page(const PrintSource& source, const std::string& detail) {
    if (detail == "blank") return Blocks{Title{"Notes"}, RuledLines{}};
    const auto asked = session_asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Session& session = *asked.value();
    Table notes{{{"When"}, {""}, {"What"}}, {}, 0, false, false};
    for (const game::NoteLine& line : session.lines) {
        std::string when = game::time_of_day_text(line.second_of_day);
        if (line.round > 0) when += ", round " + std::to_string(line.round);
        notes.rows.push_back(
            {{game::short_date_text(source.campaign.calendar, line.day), when},
             {game::note_kind_sign(line.kind), {}, true},
             {line.text}}
        );
    }
    Blocks blocks{
        Title{game::session_title(session), "Notes. ! deed, * discovery, $ loot, ? open question"}};
    if (!notes.rows.empty()) blocks.emplace_back(std::move(notes));
    blocks.emplace_back(RuledLines{});
    return blocks;
}

base::Result<Blocks> recap_page(const PrintSource& source, const std::string& detail) {
    constexpr int least_lines = 2;
    if (detail == "blank") {
        Blocks blocks{Title{"Last time", source.campaign.about.title}};
        for (const game::RecapPart& part : game::recap_parts()) {
            blocks.emplace_back(Heading{part.title});
            blocks.emplace_back(RuledLines{least_lines, false, true});
        }
        return blocks;
    }
    const auto asked = session_asked_for(source, detail);
    if (!asked.ok()) return asked.error();
    const game::Session& session = *asked.value();
    game::RecapPage recap = session.recap;
    if (game::is_empty(recap)) {
        game::RegisteredNames names;
        names.follow(source.campaign.registered);
        recap = game::recap_of(source.campaign, session, names);
    }
    Blocks blocks{Title{game::session_title(session), source.campaign.about.title}};
    for (const game::RecapPart& part : game::recap_parts()) {
        blocks.emplace_back(Heading{part.title});
        const std::vector<std::string> entries = lines_of(recap.*(part.part));
        if (entries.empty()) {
            blocks.emplace_back(RuledLines{2});
            continue;
        }
        for (const std::string& entry : entries)
            blocks.emplace_back(Paragraph{entry});
    }
    blocks.emplace_back(RuledLines{0, true});
    return blocks;
}

} // namespace print
