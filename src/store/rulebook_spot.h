// One value of a rulebook's tables together with where it stands. Reading something else than what
// is there throws a Wrong, which read_rulebook turns into an Error; it goes no further.
#pragma once

#include "base/result.h"

#include <nlohmann/json.hpp>

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace store {

// The first thing found wrong ends the reading; it carries the pointer to the spot.
struct Wrong {
    std::string pointer;
    std::string expected; // "a whole number"
    base::ErrorKind kind = base::ErrorKind::wrong_type;
    std::string found{}; // as written, shortened; empty: nothing to show
};

struct Spot {
    const nlohmann::json& value;
    std::string pointer;

    Spot at(const std::string& key) const;
    bool has(const std::string& key) const;

    std::string text() const; // not empty
    std::string key() const;  // small letters, digits and _
    int number(int least, int most) const;
    double fraction() const;
    bool truth() const;

    std::string text_or(const std::string& key) const; // empty without the key
    int number_or(const std::string& key, int otherwise, int least, int most) const;
    bool truth_or(const std::string& key) const; // false without the key

    // Refuses every other key, so that a slip of the pen does not pass for an omission.
    void allow_only(const std::vector<std::string>& keys) const;

    // The Wrong for this spot: what was expected instead of what stands here.
    Wrong
    wrong(const std::string& expected, base::ErrorKind kind = base::ErrorKind::out_of_range) const;

    template <class Each>
    void each(Each read_one) const {
        if (!value.is_array()) throw wrong("a list", base::ErrorKind::wrong_type);
        for (std::size_t index = 0; index < value.size(); ++index)
            read_one(Spot{value[index], pointer + "/" + std::to_string(index)});
    }

    // One of a closed list of words.
    template <class Enum, std::size_t Count>
    Enum word(const std::array<std::pair<std::string_view, Enum>, Count>& words) const {
        const std::string written = text();
        std::string known;
        for (const auto& [name, meaning] : words) {
            if (written == name) return meaning;
            known += (known.empty() ? "" : ", ") + std::string(name);
        }
        throw wrong("one of " + known);
    }
};

} // namespace store
