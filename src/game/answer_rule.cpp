// "rule cover": the reference, and the GM's own pages.
#include "game/answer_topics.h"

#include <algorithm>

namespace game {

namespace {

constexpr std::size_t others_max = 5;

std::string joined(const std::vector<std::string>& parts, const char* between) {
    std::string all;
    for (const std::string& part : parts)
        all += (all.empty() ? "" : between) + part;
    return all;
}

// All chapters, each with its titles.
Answer all_rules(const std::vector<ReferenceEntry>& entries) {
    Answer answer;
    answer.title = counted(static_cast<int>(entries.size()), "rule") + " to look up";
    std::vector<NamedValues> rows;
    for (const ReferenceEntry& entry : entries) {
        rows.push_back({{"key", entry.key}, {"chapter", entry.chapter}, {"title", entry.title}});
        const bool is_new =
            answer.lines.empty() ||
            answer.lines.back().compare(0, entry.chapter.size() + 1, entry.chapter + "\t") != 0;
        if (is_new)
            answer.lines.push_back(entry.chapter + "\t" + entry.title);
        else
            answer.lines.back() += ", " + entry.title;
    }
    answer.values = {{"rules", std::move(rows)}};
    return answer;
}

Answer one_rule(const ReferenceEntry& entry, const std::vector<std::string>& others) {
    Answer answer;
    answer.title = entry.title;
    if (!entry.text.empty()) answer.lines.push_back(entry.text);
    for (const std::string& point : entry.points)
        answer.lines.push_back("- " + point);
    if (!entry.columns.empty()) answer.lines.push_back(joined(entry.columns, "\t"));
    std::vector<NamedValues> rows;
    for (const std::vector<std::string>& row : entry.rows) {
        answer.lines.push_back(joined(row, "\t"));
        rows.push_back({{"cells", row}});
    }
    if (!others.empty()) answer.lines.push_back("See also: " + joined(others, ", "));
    answer.source = entry.source;
    answer.values = {
        {"key", entry.key},
        {"chapter", entry.chapter},
        {"title", entry.title},
        {"text", entry.text},
        {"points", entry.points},
        {"columns", entry.columns},
        {"rows", std::move(rows)},
        {"see_also", others}};
    return answer;
}

} // namespace

base::Result<Answer> answer_rule(const AnswerContext& context, Words& words) {
    const std::vector<ReferenceEntry> entries = reference_pages(
        context.rulebook,
        context.reference,
        context.campaign == nullptr ? nullptr : &context.campaign->own_pages
    );
    if (words.is_at_end()) return all_rules(entries);
    const std::string wanted = words.take_rest();
    const std::vector<std::size_t> found = search_reference(entries, wanted);
    if (found.empty())
        return base::Error{
            base::ErrorKind::not_found,
            "Nothing to look up answers \"" + wanted + R"("; "rule" alone lists everything.)"};
    std::vector<std::string> others;
    for (std::size_t at = 1; at < std::min(found.size(), others_max + 1); ++at)
        others.push_back(entries[found[at]].title);
    return one_rule(entries[found.front()], others);
}

} // namespace game
