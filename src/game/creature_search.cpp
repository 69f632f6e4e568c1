#include "game/creature_search.h"

#include "base/text.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace game {

namespace {

using Words = std::vector<std::string_view>;

bool is_letter(char letter) {
    return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') ||
           static_cast<unsigned char>(letter) >= 0x80;
}

Words words_of(std::string_view folded) {
    Words words;
    std::size_t at = 0;
    while (at < folded.size()) {
        while (at < folded.size() && !is_letter(folded[at]))
            ++at;
        const std::size_t from = at;
        while (at < folded.size() && is_letter(folded[at]))
            ++at;
        if (at > from) words.push_back(folded.substr(from, at - from));
    }
    return words;
}

bool starts_with(std::string_view word, std::string_view typed) {
    return word.substr(0, typed.size()) == typed;
}

// Does the word start as typed but for one letter that is wrong, missing, too much, or swapped with
// its neighbour?
bool starts_with_one_slip(std::string_view word, std::string_view typed) {
    std::size_t at = 0;
    while (at < word.size() && at < typed.size() && word[at] == typed[at])
        ++at;
    if (at == typed.size()) return true;
    const std::string_view typed_on = typed.substr(at + 1);
    if (starts_with(word.substr(at), typed_on)) return true; // one too much
    if (at == word.size()) return false;
    const std::string_view word_on = word.substr(at + 1);
    if (starts_with(word_on, typed_on)) return true;         // one wrong
    if (starts_with(word_on, typed.substr(at))) return true; // one missing
    const bool is_swapped =
        !word_on.empty() && !typed_on.empty() && word[at] == typed_on[0] && word_on[0] == typed[at];
    return is_swapped && starts_with(word_on.substr(1), typed_on.substr(1));
}

bool is_answered_with_slip(const Words& name, std::string_view typed) {
    constexpr std::size_t letters_min = 4; // shorter words would answer nearly everything
    return std::any_of(name.begin(), name.end(), [&](std::string_view word) {
        return typed.size() < letters_min ? starts_with(word, typed)
                                          : starts_with_one_slip(word, typed);
    });
}

std::optional<NameMatch>
match_folded(std::string_view name, std::string_view typed, const Words& typed_words) {
    if (name == typed) return NameMatch::whole;
    if (starts_with(name, typed)) return NameMatch::start;
    const Words words = words_of(name);
    const auto all = [&](auto answers) {
        return std::all_of(typed_words.begin(), typed_words.end(), answers);
    };
    const bool all_start = all([&](std::string_view part) {
        return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
            return starts_with(word, part);
        });
    });
    if (all_start) return NameMatch::word_starts;
    if (all([&](std::string_view part) { return name.find(part) != std::string_view::npos; }))
        return NameMatch::inside;
    if (all([&](std::string_view part) { return is_answered_with_slip(words, part); }))
        return NameMatch::one_slip;
    return std::nullopt;
}

std::string folded_text(std::string_view typed) {
    std::string folded = base::lowercase(typed);
    folded.erase(0, folded.find_first_not_of(' '));
    while (!folded.empty() && folded.back() == ' ')
        folded.pop_back();
    return folded;
}

bool deals(const std::vector<DamagePart>& damage, const std::string& type) {
    return std::any_of(damage.begin(), damage.end(), [&](const DamagePart& part) {
        return part.type == type;
    });
}

bool deals(const LibraryCreature& creature, const std::string& type) {
    return std::any_of(
               creature.attacks.begin(),
               creature.attacks.end(),
               [&](const LibraryAttack& attack) { return deals(attack.damage, type); }
           ) ||
           std::any_of(
               creature.save_effects.begin(),
               creature.save_effects.end(),
               [&](const SaveEffect& effect) { return deals(effect.damage, type); }
           );
}

bool deals(const Statistics& statistics, const std::string& type) {
    return std::any_of(
        statistics.attacks.begin(),
        statistics.attacks.end(),
        [&](const Attack& attack) { return attack.damage_type == type; }
    );
}

bool passes(const CreatureQuery& query, double rating, const Statistics& statistics) {
    if (query.rating_min && rating < *query.rating_min) return false;
    if (query.rating_max && rating > *query.rating_max) return false;
    if (query.speed.empty()) return true;
    const auto speed = statistics.speeds_ft.find(query.speed);
    return speed != statistics.speeds_ft.end() && speed->second > 0;
}

// Collects what passes and sorts it at the end.
class Finds {
public:
    explicit Finds(const CreatureQuery& query)
        : query_(query), typed_(folded_text(query.text)), typed_words_(words_of(typed_)) {}

    void offer(std::size_t place, const std::string& name, double rating) {
        std::string folded = base::lowercase(name);
        const auto match = match_folded(folded, typed_, typed_words_);
        if (match) finds_.push_back({*match, rating, std::move(folded), place});
    }

    std::vector<std::size_t> sorted() {
        std::sort(finds_.begin(), finds_.end(), [this](const Find& left, const Find& right) {
            if (query_.order == CreatureOrder::best_match && left.match != right.match)
                return left.match < right.match;
            if (query_.order == CreatureOrder::by_rating && left.rating != right.rating)
                return left.rating < right.rating;
            return std::tie(left.name, left.place) < std::tie(right.name, right.place);
        });
        std::vector<std::size_t> places;
        places.reserve(finds_.size());
        for (const Find& find : finds_)
            places.push_back(find.place);
        return places;
    }

private:
    struct Find {
        NameMatch match = NameMatch::start;
        double rating = 0;
        std::string name;
        std::size_t place = 0;
    };

    const CreatureQuery& query_;
    std::string typed_;
    Words typed_words_;
    std::vector<Find> finds_;
};

} // namespace

std::optional<NameMatch> name_match(std::string_view name, std::string_view typed) {
    const std::string folded = folded_text(typed);
    return match_folded(base::lowercase(name), folded, words_of(folded));
}

LibraryWords library_words(const std::vector<LibraryCreature>& creatures) {
    std::set<std::string> types;
    std::set<std::string> speeds;
    std::set<std::string> damage_types;
    std::set<double> ratings;
    const auto add_damage = [&](const std::vector<DamagePart>& parts) {
        for (const DamagePart& part : parts)
            if (!part.type.empty()) damage_types.insert(part.type);
    };
    for (const LibraryCreature& creature : creatures) {
        types.insert(creature.type);
        ratings.insert(creature.statistics.challenge);
        for (const auto& [kind, feet] : creature.statistics.speeds_ft)
            speeds.insert(kind);
        for (const LibraryAttack& attack : creature.attacks)
            add_damage(attack.damage);
        for (const SaveEffect& effect : creature.save_effects)
            add_damage(effect.damage);
    }
    return {
        {types.begin(), types.end()},
        {speeds.begin(), speeds.end()},
        {damage_types.begin(), damage_types.end()},
        {ratings.begin(), ratings.end()}};
}

std::vector<std::size_t>
search_creatures(const std::vector<LibraryCreature>& creatures, const CreatureQuery& query) {
    Finds finds(query);
    for (std::size_t place = 0; place < creatures.size(); ++place) {
        const LibraryCreature& creature = creatures[place];
        if (!query.type.empty() && creature.type != query.type) continue;
        if (!passes(query, creature.statistics.challenge, creature.statistics)) continue;
        if (!query.damage_type.empty() && !deals(creature, query.damage_type)) continue;
        finds.offer(place, creature.name, creature.statistics.challenge);
    }
    return finds.sorted();
}

std::vector<std::size_t>
search_shelf(const CreatureShelf& shelf, rules::Family family, const CreatureQuery& query) {
    Finds finds(query);
    for (std::size_t place = 0; place < shelf.creatures.size(); ++place) {
        const Creature& creature = shelf.creatures[place];
        const double rating = family == rules::Family::srd5
                                  ? creature.statistics.challenge
                                  : static_cast<double>(creature.statistics.level);
        if (!query.type.empty() && creature.statistics.creature_type != query.type) continue;
        if (!passes(query, rating, creature.statistics)) continue;
        if (!query.damage_type.empty() && !deals(creature.statistics, query.damage_type)) continue;
        finds.offer(place, creature.name, rating);
    }
    return finds.sorted();
}

} // namespace game
