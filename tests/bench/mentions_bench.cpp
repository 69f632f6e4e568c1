// Names of a Register of 10,000 in a line that is being typed, and everywhere one of them is spoken
// of, against looking for every name by itself.
#include "bench/measure.h"
#include "game/mentions.h"
#include "rules/dice.h"

#include <algorithm>
#include <string>
#include <vector>

namespace {

constexpr int entries_max = 10'000;
constexpr int notes_max = 20'000;
constexpr std::size_t notes_scanned = 200;

std::string made_up(rules::Dice& dice) {
    constexpr std::string_view heads = "bdfgklmnprstvz";
    constexpr std::string_view cores = "aeiou";
    std::string name;
    for (int left = 2 + dice.roll(2); left > 0; --left) {
        name += heads[static_cast<std::size_t>(dice.roll(static_cast<int>(heads.size())) - 1)];
        name += cores[static_cast<std::size_t>(dice.roll(static_cast<int>(cores.size())) - 1)];
    }
    return name;
}

game::Campaign long_campaign() {
    rules::Dice dice(3);
    game::Campaign campaign;
    for (int i = 0; i < entries_max; ++i) {
        game::RegisterEntry entry;
        entry.id = campaign.registered.next_id++;
        entry.name = made_up(dice) + " " + made_up(dice);
        campaign.registered.entries.push_back(entry);
    }
    game::Session session;
    session.id = 1;
    for (int i = 0; i < notes_max; ++i) {
        game::NoteLine line;
        line.id = i + 1;
        for (int word = 0; word < 10; ++word)
            line.text += made_up(dice) + " ";
        const int named = dice.roll(entries_max) - 1;
        line.text += campaign.registered.entries[static_cast<std::size_t>(named)].name;
        session.lines.push_back(line);
    }
    campaign.sessions.sessions.push_back(session);
    return campaign;
}

// The least that looking for each name by itself does: no cases folded, no words kept whole.
double scanned(const game::Register& registered, const std::string& text) {
    return static_cast<double>(std::count_if(
        registered.entries.begin(),
        registered.entries.end(),
        [&text](const game::RegisterEntry& entry) {
            return text.find(entry.name) != std::string::npos;
        }
    ));
}

} // namespace

int main() {
    const game::Campaign campaign = long_campaign();
    const std::vector<game::NoteLine>& lines = campaign.sessions.sessions.front().lines;
    game::RegisteredNames names;
    names.follow(campaign.registered);
    measure::compare(
        "names of 10,000 in one line",
        [&] { return static_cast<double>(names.find(lines.front().text).size()); },
        "a scan for each name",
        [&] { return scanned(campaign.registered, lines.front().text); }
    );
    measure::compare(
        "a Register of 10,000 that did not change",
        [&] { return names.follow(campaign.registered) ? 1.0 : 0.0; },
        "comparing with a copy",
        [&, copy = campaign.registered] { return copy == campaign.registered ? 1.0 : 0.0; }
    );
    measure::compare(
        "one name in 20,000 notes",
        [&] { return static_cast<double>(game::mentions_of(campaign, names, 17).size()); },
        "a scan of 200 notes for each name",
        [&] {
            double found = 0;
            for (std::size_t at = 0; at < notes_scanned; ++at)
                found += scanned(campaign.registered, lines[at].text);
            return found;
        }
    );
}
