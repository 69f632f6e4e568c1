#include "game/reference.h"

#include "game/effect_words.h"
#include "game/finding.h"

#include <algorithm>
#include <charconv>
#include <memory>
#include <numeric>

namespace game {

namespace {

constexpr std::string_view own_prefix = "own/";

std::string with_capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

ReferenceEntry condition_entry(const rules::Rulebook& rulebook, const rules::ConditionRule& rule) {
    ReferenceEntry entry;
    entry.key = "condition/" + rule.key;
    entry.chapter = "Conditions";
    entry.title = with_capital(rule.name);
    entry.text = rule.summary;
    for (const rules::Effect& effect : rule.effects)
        entry.points.push_back(with_capital(effect_text(rulebook, effect)) + ".");
    for (const std::string& ends : fading_texts(rule))
        entry.points.push_back(ends);
    entry.source = rulebook.title + ", conditions";
    return entry;
}

ReferenceEntry own_entry(const OwnPage& page) {
    ReferenceEntry entry;
    entry.key = own_page_key(page.id);
    entry.chapter = "Own pages";
    entry.title = page.title;
    entry.text = page.text;
    return entry;
}

// Everything an entry says beside its title.
std::string words_of(const ReferenceEntry& entry) {
    std::string words = entry.chapter + "\n" + entry.text;
    for (const std::string& also : entry.also)
        words += "\n" + also;
    for (const std::string& point : entry.points)
        words += "\n" + point;
    for (const std::string& title : entry.columns)
        words += "\n" + title;
    for (const std::vector<std::string>& row : entry.rows)
        if (!row.empty()) words += "\n" + row.front(); // names it; the rest are figures
    return words;
}

} // namespace

std::string own_page_key(Id page) {
    return std::string(own_prefix) + std::to_string(page);
}

Id own_page_of(std::string_view key) {
    if (key.substr(0, own_prefix.size()) != own_prefix) return base::no_id;
    Id id = base::no_id;
    const std::string_view digits = key.substr(own_prefix.size());
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), id);
    const bool is_whole = read.ec == std::errc{} && read.ptr == digits.data() + digits.size();
    return is_whole ? id : base::no_id;
}

std::vector<ReferenceEntry> reference_pages(
    const rules::Rulebook& rulebook, const Reference* reference, const OwnPages* own_pages
) {
    std::vector<ReferenceEntry> entries;
    for (const rules::ConditionRule& rule : rulebook.conditions)
        entries.push_back(condition_entry(rulebook, rule));
    if (reference != nullptr)
        entries.insert(entries.end(), reference->entries.begin(), reference->entries.end());
    if (own_pages != nullptr)
        for (const OwnPage& page : own_pages->pages)
            entries.push_back(own_entry(page));
    return entries;
}

std::vector<std::size_t>
search_reference(const std::vector<ReferenceEntry>& entries, std::string_view typed) {
    std::vector<std::size_t> found;
    if (typed.find_first_not_of(" \t\n") == std::string_view::npos) {
        found.resize(entries.size());
        std::iota(found.begin(), found.end(), std::size_t{0});
        return found;
    }
    // Titles first, then other names for them, then everything.
    std::vector<std::vector<FindEntry>> passes(3);
    for (const ReferenceEntry& entry : entries) {
        FindEntry words;
        words.text = entry.title;
        passes[0].push_back(words);
        for (const std::string& also : entry.also)
            words.also += also + " ";
        passes[1].push_back(words);
        words.also += words_of(entry);
        passes[2].push_back(std::move(words));
    }
    for (std::vector<FindEntry>& pass : passes) {
        const FindIndex index{{std::make_shared<FindSection>(std::move(pass))}};
        for (const FindHit& hit : index.find(typed, entries.size()))
            if (std::find(found.begin(), found.end(), hit.entry) == found.end())
                found.push_back(hit.entry);
    }
    return found;
}

} // namespace game
