// The edits that panels hand out while drawing. They are carried out after the last panel has
// drawn, so the campaign stands still for a whole frame. Panels never change a campaign themselves.
#pragma once

#include "game/campaign.h"

#include <functional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace game {

// The sections that an edit may name. History is written by the document alone.
enum class Section {
    about,
    party,
    shelf,
    preparation,
    encounter,
    clock,
    table_rolls,
    registered,
    names,
    calendar,
    day_book,
    places,
    sessions,
    treasury,
    own_pages,
};

struct Edit {
    std::vector<Section>
        sections;      // what it may change; anything else it changes is a mistake (asserted)
    std::string label; // for people, past or imperative: "Hurt Reed Lurker 2 by 7"
    // Returns the label that says what really happened, or an empty text to keep `label`. A change
    // that throws leaves the campaign as it was.
    std::function<std::string(Campaign&)> change;
    // Edits with the same non-empty key that follow each other (typing in one field) undo as one.
    std::string merge_key{};
};

template <class Part>
constexpr Section section_of() {
    if constexpr (std::is_same_v<Part, About>)
        return Section::about;
    else if constexpr (std::is_same_v<Part, Party>)
        return Section::party;
    else if constexpr (std::is_same_v<Part, CreatureShelf>)
        return Section::shelf;
    else if constexpr (std::is_same_v<Part, Preparation>)
        return Section::preparation;
    else if constexpr (std::is_same_v<Part, Encounter>)
        return Section::encounter;
    else if constexpr (std::is_same_v<Part, Clock>)
        return Section::clock;
    else if constexpr (std::is_same_v<Part, TableRolls>)
        return Section::table_rolls;
    else if constexpr (std::is_same_v<Part, Register>)
        return Section::registered;
    else if constexpr (std::is_same_v<Part, NameBook>)
        return Section::names;
    else if constexpr (std::is_same_v<Part, Calendar>)
        return Section::calendar;
    else if constexpr (std::is_same_v<Part, DayBook>)
        return Section::day_book;
    else if constexpr (std::is_same_v<Part, Places>)
        return Section::places;
    else if constexpr (std::is_same_v<Part, Sessions>)
        return Section::sessions;
    else if constexpr (std::is_same_v<Part, Treasury>)
        return Section::treasury;
    else {
        static_assert(
            std::is_same_v<Part, OwnPages>, "only sections of the campaign can be edited"
        );
        return Section::own_pages;
    }
}

class Edits {
public:
    // One section: change takes Part& and returns nothing or the text that replaces the label.
    template <class Part, class Change>
    void add(Part Campaign::*part, std::string label, Change change, std::string merge_key = {}) {
        add(
            {section_of<Part>()},
            std::move(label),
            [part, change](Campaign& campaign) -> std::string {
                if constexpr (std::is_convertible_v<
                                  std::invoke_result_t<Change, Part&>,
                                  std::string>) {
                    return change(campaign.*part);
                } else {
                    change(campaign.*part);
                    return {};
                }
            },
            std::move(merge_key)
        );
    }

    // Several sections at once: roster changes, the start and end of a fight.
    void
    add(std::vector<Section> sections,
        std::string label,
        std::function<std::string(Campaign&)> change,
        std::string merge_key = {}) {
        queue_.push_back(
            {std::move(sections), std::move(label), std::move(change), std::move(merge_key)}
        );
    }

    void undo() { undo_count_ += 1; }

    void redo() { redo_count_ += 1; }

    // What was asked for since the last call, first to last; the queue is empty afterwards.
    std::vector<Edit> take() { return std::exchange(queue_, {}); }

    int take_undos() { return std::exchange(undo_count_, 0); }

    int take_redos() { return std::exchange(redo_count_, 0); }

    const std::vector<Edit>& queued() const { return queue_; }

private:
    std::vector<Edit> queue_;
    int undo_count_ = 0;
    int redo_count_ = 0;
};

} // namespace game
