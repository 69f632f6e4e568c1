#include "game/finding.h"

#include "base/unicode.h"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace game {

namespace {

constexpr FindGrade grade_of(FindMatch match, bool is_also) {
    return static_cast<FindGrade>(2 * static_cast<int>(match) + (is_also ? 1 : 0));
}

constexpr FindGrade no_answer = grade_of(FindMatch::none, false);

// The answers to every typed word in one section.
struct Answers {
    const FindSection* section = nullptr;
    std::vector<std::vector<FindGrade>> best; // by typed word, then by entry

    bool has_all(std::size_t entry) const {
        return std::all_of(best.begin(), best.end(), [entry](const std::vector<FindGrade>& one) {
            return one[entry] < no_answer;
        });
    }

    std::size_t count() const {
        std::size_t found = 0;
        for (std::size_t entry = 0; entry < section->entries().size(); ++entry)
            found += has_all(entry) ? 1 : 0;
        return found;
    }
};

// Smaller is better.
struct Rank {
    std::size_t worst = 0;
    std::size_t sum = 0;
    std::size_t words = 0;
    std::int64_t age = 0;
    FindHit hit;

    bool operator<(const Rank& other) const {
        return std::tie(worst, sum, words, age, hit.section, hit.entry) < std::tie(
                                                                              other.worst,
                                                                              other.sum,
                                                                              other.words,
                                                                              other.age,
                                                                              other.hit.section,
                                                                              other.hit.entry
                                                                          );
    }
};

// Keeps the best so many: a heap with the worst of them on top.
class BestOf {
public:
    explicit BestOf(std::size_t most) : most_(most) {}

    void add(const Rank& rank) {
        if (kept_.size() == most_) {
            if (most_ == 0 || !(rank < kept_.front())) return;
            std::pop_heap(kept_.begin(), kept_.end());
            kept_.pop_back();
        }
        kept_.push_back(rank);
        std::push_heap(kept_.begin(), kept_.end());
    }

    std::vector<FindHit> take() {
        std::sort_heap(kept_.begin(), kept_.end());
        std::vector<FindHit> hits;
        hits.reserve(kept_.size());
        for (const Rank& rank : kept_)
            hits.push_back(rank.hit);
        return hits;
    }

private:
    std::size_t most_;
    std::vector<Rank> kept_;
};

void rank_all(const Answers& answers, std::size_t section, BestOf& best) {
    const std::vector<FindEntry>& entries = answers.section->entries();
    for (std::size_t entry = 0; entry < entries.size(); ++entry) {
        if (!answers.has_all(entry)) continue;
        Rank rank;
        for (const std::vector<FindGrade>& one : answers.best) {
            rank.worst = std::max<std::size_t>(rank.worst, one[entry] / 2U);
            rank.sum += one[entry];
        }
        rank.words = answers.section->word_count(entry);
        rank.age = -entries[entry].recency;
        rank.hit = {section, entry};
        best.add(rank);
    }
}

} // namespace

FindSection::FindSection(std::vector<FindEntry> entries) : entries_(std::move(entries)) {
    std::unordered_map<std::u32string, std::size_t> known;
    std::vector<std::vector<std::uint32_t>> uses; // by the order in which words came
    word_counts_.reserve(entries_.size());
    for (std::size_t at = 0; at < entries_.size(); ++at) {
        const auto add = [&](const std::string& text, std::uint32_t is_also) {
            const std::uint32_t use = 2 * static_cast<std::uint32_t>(at) + is_also;
            std::vector<std::u32string> words = base::search_words(text);
            for (std::u32string& word : words) {
                const std::size_t place =
                    known.try_emplace(std::move(word), uses.size()).first->second;
                if (place == uses.size()) uses.emplace_back();
                if (uses[place].empty() || uses[place].back() != use) uses[place].push_back(use);
            }
            return static_cast<std::uint32_t>(words.size());
        };
        word_counts_.push_back(add(entries_[at].text, 0));
        add(entries_[at].also, 1);
    }
    std::vector<std::pair<std::u32string, std::size_t>> sorted(known.begin(), known.end());
    std::sort(sorted.begin(), sorted.end());
    std::vector<std::u32string> words;
    words.reserve(sorted.size());
    first_use_.reserve(sorted.size() + 1);
    for (auto& [word, place] : sorted) {
        words.push_back(std::move(word));
        first_use_.push_back(uses_.size());
        uses_.insert(uses_.end(), uses[place].begin(), uses[place].end());
    }
    first_use_.push_back(uses_.size());
    words_ = WordList(words);
}

void FindSection::mark_words(WordList::Range range, FindMatch how, std::vector<FindGrade>& best)
    const {
    for (std::size_t at = first_use_[range.first]; at < first_use_[range.last]; ++at) {
        FindGrade& grade = best[uses_[at] / 2U];
        grade = std::min(grade, grade_of(how, uses_[at] % 2U == 1));
    }
}

void FindSection::mark(
    std::u32string_view typed, FindMatch how, bool is_unfinished, std::vector<FindGrade>& best
) const {
    switch (how) {
    case FindMatch::word:
    case FindMatch::start: {
        WordList::Range range = words_.starting_with(typed);
        if (range.first < range.last && words_.word(range.first) == typed) {
            mark_words({range.first, range.first + 1}, FindMatch::word, best);
            range.first += 1;
        }
        if (how == FindMatch::start) mark_words(range, how, best);
        break;
    }
    case FindMatch::inside:
        for (const std::size_t word : words_.containing(typed))
            mark_words({word, word + 1}, how, best);
        break;
    case FindMatch::misspelt:
        for (const std::size_t word : words_.misspelt(typed, is_unfinished))
            mark_words({word, word + 1}, how, best);
        break;
    case FindMatch::none: break;
    }
}

std::vector<FindHit> FindIndex::find(std::string_view typed, std::size_t most) const {
    std::vector<std::u32string> words = base::search_words(typed);
    if (words.size() > words_max) words.resize(words_max);
    if (words.empty()) return {};
    std::vector<Answers> all;
    all.reserve(sections.size());
    for (const auto& section : sections) {
        const std::vector<FindGrade> none(section->entries().size(), no_answer);
        all.push_back({section.get(), std::vector<std::vector<FindGrade>>(words.size(), none)});
    }
    const auto mark_all = [&](FindMatch how) {
        for (Answers& answers : all)
            for (std::size_t at = 0; at < words.size(); ++at)
                answers.section->mark(words[at], how, at + 1 == words.size(), answers.best[at]);
        return std::accumulate(
            all.begin(),
            all.end(),
            std::size_t{0},
            [](std::size_t sum, const Answers& answers) { return sum + answers.count(); }
        );
    };
    // What is looked for later answers worse, so it cannot come before what is there.
    std::size_t found = mark_all(FindMatch::start);
    if (found < most) found = mark_all(FindMatch::inside);
    if (found < std::min(most, forgiving_below)) mark_all(FindMatch::misspelt);
    BestOf best(most);
    for (std::size_t section = 0; section < all.size(); ++section)
        rank_all(all[section], section, best);
    return best.take();
}

} // namespace game
