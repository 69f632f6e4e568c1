#include "game/register_keeping.h"

#include "base/unicode.h"
#include "game/creature_search.h"
#include "game/fights.h"
#include "game/registering.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace game {

namespace {

// Every text of the campaign in which an entry may be spoken of.
template <class Action>
void for_each_text(Campaign& campaign, Action action) {
    for (Session& session : campaign.sessions.sessions) {
        action(session.summary);
        action(session.must_know);
        for (PlanItem& scene : session.scenes)
            action(scene.text);
        for (Goal& goal : session.goals)
            action(goal.text);
        for (PlanItem& loot : session.loot)
            action(loot.text);
        for (NoteLine& line : session.lines)
            action(line.text);
        RecapPage& recap = session.recap;
        for (std::string* part :
             {&recap.places, &recap.deeds, &recap.people, &recap.discoveries, &recap.next})
            action(*part);
    }
    for (DayPage& page : campaign.day_book.pages)
        action(page.text);
    for (UsedName& used : campaign.names.used) {
        action(used.who);
        action(used.where);
    }
    for (RegisterEntry& entry : campaign.registered.entries) {
        action(entry.summary);
        action(entry.notes);
    }
}

// Puts `name` in the place of every mention of the entry; true if there was one.
bool replace_mentions(
    std::string& text, const RegisteredNames& names, Id entry, const std::string& name
) {
    std::vector<Mention> mentions = names.find(text);
    std::erase_if(mentions, [entry](const Mention& each) { return each.entry != entry; });
    for (std::size_t left = mentions.size(); left > 0; --left) { // from the end: places stay right
        const Mention& mention = mentions[left - 1];
        text.replace(mention.begin, mention.end - mention.begin, name);
    }
    return !mentions.empty();
}

int speak_of(Campaign& campaign, Id entry, const std::string& name) {
    RegisteredNames names;
    names.follow(campaign.registered);
    int changed = 0;
    for_each_text(campaign, [&](std::string& text) {
        changed += replace_mentions(text, names, entry, name) ? 1 : 0;
    });
    return changed;
}

void exchange_id(std::vector<Id>& ids, Id from, Id into) {
    const bool is_there = std::find(ids.begin(), ids.end(), into) != ids.end();
    for (Id& id : ids)
        if (id == from && !is_there) id = into;
    std::erase(ids, from);
}

void exchange_references(Campaign& campaign, Id from, Id into) {
    for (Session& session : campaign.sessions.sessions)
        exchange_id(session.people, from, into);
    for (UsedName& used : campaign.names.used)
        if (used.entry == from) used.entry = into;
    for (RegisterEntry& entry : campaign.registered.entries)
        if (entry.place == from) entry.place = entry.id == into ? base::no_id : into;
}

void add_to(std::string& text, const std::string& more) {
    if (more.empty() || text.find(more) != std::string::npos) return;
    text += (text.empty() ? "" : "\n") + more;
}

} // namespace

Id enter(Campaign& campaign, const std::string& name, Kind kind) {
    if (name.find_first_not_of(' ') == std::string::npos) return base::no_id;
    Register& registered = campaign.registered;
    if (const RegisterEntry* known = find_registered_name(registered, name)) return known->id;
    RegisterEntry entry;
    entry.name = name;
    entry.kind = kind;
    entry.is_met = true;
    entry.first_met_day = now(campaign).day;
    return add_register_entry(registered, std::move(entry));
}

void update_entry(Register& registered, const RegisterEntry& changed) {
    if (RegisterEntry* entry = find_register_entry(registered, changed.id)) *entry = changed;
}

int rename_entry(Campaign& campaign, Id entry, const std::string& name) {
    RegisterEntry* found = find_register_entry(campaign.registered, entry);
    if (found == nullptr || name.find_first_not_of(' ') == std::string::npos) return 0;
    const RegisterEntry* other = find_registered_name(campaign.registered, name);
    if (other != nullptr && other->id != entry) return 0;
    const int changed = speak_of(campaign, entry, name);
    for (UsedName& used : campaign.names.used)
        if (used.entry == entry) used.name = name;
    find_register_entry(campaign.registered, entry)->name = name;
    return changed;
}

void merge_entries(Campaign& campaign, Id from, Id into) {
    const RegisterEntry* gone = find_register_entry(std::as_const(campaign.registered), from);
    const RegisterEntry* kept = find_register_entry(std::as_const(campaign.registered), into);
    if (gone == nullptr || kept == nullptr || from == into) return;
    speak_of(campaign, from, kept->name);
    const RegisterEntry old = *gone;
    RegisterEntry& entry = *find_register_entry(campaign.registered, into);
    if (entry.summary.empty())
        entry.summary = old.summary;
    else if (old.summary != entry.summary)
        add_to(entry.notes, old.summary);
    add_to(entry.notes, old.notes);
    if (entry.place == base::no_id && old.place != into) entry.place = old.place;
    if (entry.attitude.empty()) entry.attitude = old.attitude;
    if (old.is_met && (!entry.is_met || old.first_met_day < entry.first_met_day)) {
        entry.is_met = true;
        entry.first_met_day = old.first_met_day;
    }
    exchange_references(campaign, from, into);
    std::erase_if(campaign.registered.entries, [from](const RegisterEntry& each) {
        return each.id == from;
    });
}

void remove_entry(Campaign& campaign, Id entry) {
    exchange_references(campaign, entry, base::no_id);
    for (Session& session : campaign.sessions.sessions)
        std::erase(session.people, base::no_id);
    std::erase_if(campaign.registered.entries, [entry](const RegisterEntry& each) {
        return each.id == entry;
    });
}

std::vector<std::size_t> search_register(const Register& registered, const RegisterQuery& query) {
    struct Found {
        int rank = 0;
        std::string name;
        std::size_t place = 0;
    };

    const std::string wanted = base::folded(query.text);
    constexpr int in_the_text = 100; // after every match of a name
    std::vector<Found> found;
    for (std::size_t place = 0; place < registered.entries.size(); ++place) {
        const RegisterEntry& entry = registered.entries[place];
        const bool is_wanted_kind =
            query.kinds.empty() ||
            std::find(query.kinds.begin(), query.kinds.end(), entry.kind) != query.kinds.end();
        if (!is_wanted_kind) continue;
        std::string name = base::folded(entry.name);
        if (const auto match = name_match(name, wanted)) {
            found.push_back({static_cast<int>(*match), std::move(name), place});
            continue;
        }
        const bool is_in_text = base::folded(entry.summary).find(wanted) != std::string::npos ||
                                base::folded(entry.notes).find(wanted) != std::string::npos;
        if (is_in_text) found.push_back({in_the_text, std::move(name), place});
    }
    const bool is_asked = !wanted.empty();
    std::sort(found.begin(), found.end(), [is_asked](const Found& one, const Found& other) {
        const int rank_one = is_asked ? one.rank : 0;
        const int rank_other = is_asked ? other.rank : 0;
        return std::tie(rank_one, one.name, one.place) <
               std::tie(rank_other, other.name, other.place);
    });
    std::vector<std::size_t> places;
    places.reserve(found.size());
    for (const Found& each : found)
        places.push_back(each.place);
    return places;
}

} // namespace game
