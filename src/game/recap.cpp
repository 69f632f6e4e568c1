#include "game/recap.h"

#include "game/registering.h"
#include "game/session_keeping.h"

#include <algorithm>
#include <string_view>
#include <vector>

namespace game {

namespace {

void add_entry(std::string& part, std::string_view entry) {
    if (entry.empty()) return;
    const std::string line(entry);
    const std::string whole = "\n" + part + "\n";
    if (whole.find("\n" + line + "\n") != std::string::npos) return;
    part += (part.empty() ? "" : "\n") + line;
}

std::string with_summary(const RegisterEntry& entry) {
    return entry.name + (entry.summary.empty() ? "" : ": " + entry.summary);
}

void add_mentions(
    const Campaign& campaign,
    const RegisteredNames& names,
    const std::string& text,
    RecapPage& recap
) {
    for (const Mention& mention : names.find(text)) {
        const RegisterEntry* entry = find_register_entry(campaign.registered, mention.entry);
        if (entry == nullptr) continue;
        if (entry->kind == Kind::place) add_entry(recap.places, with_summary(*entry));
        if (entry->kind == Kind::person || entry->kind == Kind::faction)
            add_entry(recap.people, with_summary(*entry));
    }
}

std::vector<std::string_view> entries_of(std::string_view part) {
    std::vector<std::string_view> entries;
    while (!part.empty()) {
        const std::size_t end = std::min(part.find('\n'), part.size());
        const std::string_view entry = part.substr(0, end);
        if (entry.find_first_not_of(" \t\r") != std::string_view::npos) entries.push_back(entry);
        part.remove_prefix(std::min(end + 1, part.size()));
    }
    return entries;
}

// Signs that Markdown would read as its own.
std::string escaped(std::string_view text) {
    std::string safe;
    for (const char letter : text) {
        if (std::string_view("\\`*_[]<>#|").find(letter) != std::string_view::npos) safe += '\\';
        safe += letter;
    }
    return safe;
}

} // namespace

const std::array<RecapPart, 5>& recap_parts() {
    static constexpr std::array<RecapPart, 5> parts{
        RecapPart{&RecapPage::places, "Where we were"},
        RecapPart{&RecapPage::deeds, "What we did"},
        RecapPart{&RecapPage::people, "Whom we met"},
        RecapPart{&RecapPage::discoveries, "What we found"},
        RecapPart{&RecapPage::next, "What is next"}};
    return parts;
}

RecapPage recap_of(const Campaign& campaign, const Session& session, const RegisteredNames& names) {
    RecapPage recap;
    for (const NoteLine& line : session.lines) {
        add_mentions(campaign, names, line.text, recap);
        switch (line.kind) {
        case NoteKind::note: break;
        case NoteKind::deed: add_entry(recap.deeds, line.text); break;
        case NoteKind::discovery:
        case NoteKind::loot: add_entry(recap.discoveries, line.text); break;
        case NoteKind::next: add_entry(recap.next, line.text); break;
        }
    }
    for (const Goal& goal : session.goals)
        if (!goal.is_done) add_entry(recap.next, goal.text);
    return recap;
}

bool is_empty(const RecapPage& recap) {
    return std::all_of(recap_parts().begin(), recap_parts().end(), [&](const RecapPart& each) {
        return entries_of(recap.*each.part).empty();
    });
}

std::string recap_markdown(const Session& session) {
    std::string text = "# " + escaped(session_title(session)) + "\n";
    if (!session.played_on.empty()) text += "\n*" + escaped(session.played_on) + "*\n";
    for (const RecapPart& part : recap_parts()) {
        const auto entries = entries_of(session.recap.*part.part);
        if (entries.empty()) continue;
        text += std::string("\n## ") + part.title + "\n\n";
        for (const std::string_view entry : entries)
            text += "- " + escaped(entry) + "\n";
    }
    return text;
}

std::string recap_text(const Session& session) {
    std::string text = session_title(session) + "\n";
    if (!session.played_on.empty()) text += session.played_on + "\n";
    for (const RecapPart& part : recap_parts()) {
        const auto entries = entries_of(session.recap.*part.part);
        if (entries.empty()) continue;
        text += std::string("\n") + part.title + "\n";
        for (const std::string_view entry : entries)
            text += "  " + std::string(entry) + "\n";
    }
    return text;
}

} // namespace game
