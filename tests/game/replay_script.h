// A fight told turn by turn, and played: each heading names whose turn it is, below it stands what
// must be seen at that moment and then what happens in the turn.
//
//   Round 2: Bram                         the turn is ended before, and it must be Bram's now
//     actions 3                           what he has at its start
//     state Bram 17 (frightened 1)        everything that changed since the heading before
//     order Mudcaller Bram Kettil         the order, when it changed
//     notice Bram: frightened drops to 1  what happened by itself
//     asked Bram: Roll 1d6 fire ...       what the rules ask for
//     hurt Bram 9 piercing -> TEXT        a deed, and what the program says of it
//     ac Bram = 19                        a number with every condition counted
//
// What is not written must not have happened: without a line "state", "order", "notice" or "asked"
// nothing changed, nothing happened by itself and nothing is asked. "#" starts a comment.
#pragma once

#include "fight_table.h"

#include <functional>
#include <sstream>

namespace fight_table {

class Replay {
public:
    explicit Replay(Table& table) : table_(table) {}

    void play(const std::string& script) {
        std::istringstream lines(script);
        std::string line;
        std::vector<std::string> block;
        while (std::getline(lines, line)) {
            line = trimmed(line.substr(0, line.find('#')));
            if (line.empty()) continue;
            if (line.rfind("Round ", 0) == 0 && !block.empty()) {
                play_block(block);
                block.clear();
            }
            block.push_back(line);
        }
        if (!block.empty()) play_block(block);
    }

private:
    using States = std::map<std::string, std::string>;

    static std::string trimmed(const std::string& text) {
        const std::size_t first = text.find_first_not_of(" \n");
        if (first == std::string::npos) return {};
        return text.substr(first, text.find_last_not_of(" \n") - first + 1);
    }

    void play_block(const std::vector<std::string>& block) {
        const std::string heading = block.front();
        INFO(heading);
        Encounter& encounter = table_.encounter();
        // The turn may have passed on by itself: by a delay, a return, or a fall.
        if (encounter.phase != game::Phase::running)
            REQUIRE(game::begin_fight(encounter, table_.rulebook));
        else if (encounter.current == turn_of_)
            table_.next();
        REQUIRE("Round " + std::to_string(encounter.round) + ": " + table_.current() == heading);
        turn_of_ = encounter.current;
        check_order(encounter);
        std::map<std::string, std::string> seen; // by the first word of a check
        std::size_t at = 1;
        for (; at < block.size() && is_seen(first_word(block[at])); ++at)
            seen[first_word(block[at])] = rest_of(block[at]);
        if (seen.count("actions") == 1)
            CHECK(std::to_string(find(turn_of_).actions_left) == seen["actions"]);
        CHECK(changes() == seen["state"]);
        CHECK(notices() == seen["notice"]);
        CHECK(table_.asked() == seen["asked"]);
        const std::string order = table_.order();
        CHECK((order == order_ ? std::string() : order) == seen["order"]);
        order_ = order;
        for (; at < block.size(); ++at)
            play_deed(block[at]);
    }

    static bool is_seen(const std::string& word) {
        return word == "actions" || word == "state" || word == "notice" || word == "asked" ||
               word == "order";
    }

    static std::string first_word(const std::string& line) {
        return line.substr(0, line.find(' '));
    }

    static std::string rest_of(const std::string& line) {
        const std::size_t space = line.find(' ');
        return space == std::string::npos ? std::string() : trimmed(line.substr(space));
    }

    const Combatant& find(Id id) const {
        return *game::find_combatant(table_.campaign.encounter, id);
    }

    // "Bram 17+8 (slowed 1: 2 rounds; prone) delaying saves 1/2 on Mist".
    std::string state_of(const Combatant& combatant) const {
        std::string text = combatant.name + " " + std::to_string(combatant.hp);
        if (combatant.temp_hp > 0) text += "+" + std::to_string(combatant.temp_hp);
        std::string conditions;
        for (const ActiveCondition& active : combatant.conditions) {
            conditions +=
                (conditions.empty() ? "" : "; ") + game::condition_text(table_.rulebook, active);
            const DurationKind kind = active.duration.kind;
            if (kind == DurationKind::rounds || kind == DurationKind::timed)
                conditions +=
                    ": " + game::duration_text(table_.campaign.encounter, table_.rulebook, active);
        }
        if (!conditions.empty()) text += " (" + conditions + ")";
        if (combatant.is_dead)
            text += " dead";
        else if (combatant.standing == game::Standing::delaying)
            text += " delaying";
        else if (combatant.standing == game::Standing::defeated)
            text += " defeated";
        const game::DeathSaves& saves = combatant.death_saves;
        if (saves.successes + saves.failures > 0)
            text +=
                " saves " + std::to_string(saves.successes) + "/" + std::to_string(saves.failures);
        if (saves.is_stable) text += " stable";
        if (!combatant.concentrating_on.empty()) text += " on " + combatant.concentrating_on;
        return text;
    }

    std::string changes() {
        std::string text;
        for (const Combatant& combatant : table_.campaign.encounter.combatants) {
            const std::string now = state_of(combatant);
            std::string& before = states_[combatant.name];
            const bool is_news = before != now && !(before.empty() && is_opening_);
            if (is_news) text += (text.empty() ? "" : ", ") + now;
            before = now;
        }
        is_opening_ = false;
        return text;
    }

    std::string notices() const {
        std::string text;
        for (const game::Notice& notice : table_.campaign.encounter.notices) {
            text += (text.empty() ? "" : "; ") + find(notice.combatant).name + ": " + notice.text;
        }
        return text;
    }

    // Takes the longest name of a combatant that the text begins with.
    std::string take_name(std::string& text) const {
        std::string name;
        for (const Combatant& combatant : table_.campaign.encounter.combatants) {
            const std::string& each = combatant.name;
            const bool fits = text.compare(0, each.size(), each) == 0 &&
                              (text.size() == each.size() || text[each.size()] == ' ');
            if (fits && each.size() > name.size()) name = each;
        }
        REQUIRE_MESSAGE(!name.empty(), ("nobody is named at the start of: " + text));
        text = trimmed(text.substr(name.size()));
        return name;
    }

    static std::string take_word(std::string& text) {
        std::string word = first_word(text);
        text = rest_of(text);
        return word;
    }

    static int take_number(std::string& text) { return std::stoi(take_word(text)); }

    static bool take_if(std::string& text, const std::string& word) {
        if (first_word(text) != word) return false;
        take_word(text);
        return true;
    }

    // "for 2 rounds at start of NAME", "until end of NAME", "for 12 seconds", or nothing.
    Duration take_duration(std::string& text) {
        Duration duration;
        const bool is_next = take_if(text, "until");
        if (!is_next && !take_if(text, "for")) return duration;
        if (!is_next) {
            const int count = take_number(text);
            if (take_word(text) == "seconds") {
                duration.kind = DurationKind::timed;
                duration.seconds_left = count;
                return duration;
            }
            take_word(text); // at
            duration.rounds_left = count;
        }
        duration.kind = is_next ? DurationKind::until_turn : DurationKind::rounds;
        duration.edge = take_word(text) == "start" ? TurnEdge::start : TurnEdge::end;
        take_word(text); // of
        duration.whose_turn = table_.id(take_name(text));
        return duration;
    }

    static std::string number_text(const game::EffectiveNumber& number) {
        std::string text = std::to_string(number.total);
        if (number.mode == rules::RollMode::advantage) text += " advantage";
        if (number.mode == rules::RollMode::disadvantage) text += " disadvantage";
        return text + (number.fails ? " fails" : "");
    }

    void play_deed(const std::string& line) {
        INFO(line);
        const std::size_t arrow = line.find(" -> ");
        std::string rest = rest_of(line.substr(0, arrow));
        const std::string said = deed(first_word(line), rest);
        if (arrow != std::string::npos) CHECK(said == line.substr(arrow + 4));
    }

    std::string deed(const std::string& what, std::string rest) {
        for (const auto& [word, play] : deeds())
            if (word == what) return play(rest);
        for (const auto& [word, number] : numbers())
            if (word == what) {
                const std::size_t equals = rest.find(" = ");
                std::string of = rest.substr(0, equals);
                CHECK(number(of) == rest.substr(equals + 3));
                return {};
            }
        FAIL("no such deed: " << what);
        return {};
    }

    using Deeds = std::vector<std::pair<std::string, std::function<std::string(std::string&)>>>;

    Deeds numbers() {
        return {
            {"ac", [this](std::string& of) { return std::to_string(table_.ac(take_name(of))); }},
            {"check",
             [this](std::string& of) {
                 const Combatant& who = table_.who(take_name(of));
                 return number_text(game::effective_check(table_.rulebook, who, of));
             }},
            {"strike",
             [this](std::string& of) {
                 const Combatant& who = table_.who(take_name(of));
                 return number_text(
                     game::effective_attack(table_.rulebook, who, who.statistics.attacks.at(0))
                 );
             }},
            {"against",
             [this](std::string& of) {
                 return number_text(
                     game::attacks_against(table_.rulebook, table_.who(take_name(of)))
                 );
             }},
            {"speed",
             [this](std::string& of) {
                 return std::to_string(
                     game::effective_speed_ft(table_.rulebook, table_.who(take_name(of)), "land")
                 );
             }},
            {"elapsed",
             [this](std::string& /*of*/) {
                 return std::to_string(table_.encounter().elapsed_seconds);
             }},
        };
    }

    Deeds deeds() {
        return {
            {"hurt", [this](std::string& rest) { return hurt(rest); }},
            {"heal",
             [this](std::string& rest) {
                 const std::string name = take_name(rest);
                 return table_.heal(name, take_number(rest));
             }},
            {"temp",
             [this](std::string& rest) {
                 const Id id = table_.id(take_name(rest));
                 return game::give_temp_hp(table_.encounter(), id, take_number(rest));
             }},
            {"give", [this](std::string& rest) { return give(rest); }},
            {"effect", [this](std::string& rest) { return effect(rest); }},
            {"burn", [this](std::string& rest) { return burn(rest); }},
            {"end",
             [this](std::string& rest) {
                 const std::string name = take_name(rest);
                 table_.end(name, rest);
                 return std::string();
             }},
            {"delay",
             [this](std::string& /*rest*/) {
                 CHECK(game::delay_turn(table_.encounter(), table_.rulebook));
                 return std::string();
             }},
            {"return",
             [this](std::string& rest) {
                 CHECK(game::return_from_delay(
                     table_.encounter(), table_.rulebook, table_.id(take_name(rest))
                 ));
                 return std::string();
             }},
            {"answer",
             [this](std::string& rest) {
                 const std::string name = take_name(rest);
                 return table_.answer(name, take_number(rest));
             }},
            {"late", [this](std::string& rest) { return late(rest); }},
            {"concentrate",
             [this](std::string& rest) {
                 const std::string name = take_name(rest);
                 take_word(rest); // on
                 table_.change(name).concentrating_on = rest;
                 return std::string();
             }},
            {"said",
             [this](std::string& rest) {
                 CHECK(notices() == rest);
                 return std::string();
             }},
        };
    }

    // NAME AMOUNT TYPE [critical] [half] [nonlethal]
    std::string hurt(std::string& rest) {
        const Id id = table_.id(take_name(rest));
        Damage damage;
        damage.amount = take_number(rest);
        damage.type = take_word(rest);
        damage.is_critical = take_if(rest, "critical");
        damage.is_half = take_if(rest, "half");
        damage.is_nonlethal = take_if(rest, "nonlethal");
        REQUIRE(rest.empty());
        return game::hurt(table_.encounter(), table_.rulebook, id, damage);
    }

    // NAME CONDITION [VALUE] [save STAT DC] [duration]
    std::string give(std::string& rest) {
        const Id id = table_.id(take_name(rest));
        ActiveCondition condition;
        condition.key = take_word(rest);
        if (!rest.empty() && rest[0] >= '0' && rest[0] <= '9') condition.value = take_number(rest);
        if (take_if(rest, "save")) {
            const std::string stat = take_word(rest);
            condition.check = game::EndCheck{stat, take_number(rest), TurnEdge::end, {}};
            condition.duration.kind = DurationKind::until_check;
        } else {
            condition.duration = take_duration(rest);
        }
        REQUIRE(rest.empty());
        CHECK(game::add_condition(table_.encounter(), table_.rulebook, id, condition));
        return {};
    }

    // NAME STATWORD AMOUNT WORDING, until DURATION: an effect worded by the GM, circumstance
    std::string effect(std::string& rest) {
        const Id id = table_.id(take_name(rest));
        ActiveCondition condition;
        const std::string applies_to = take_word(rest);
        condition.modifiers = {{applies_to, take_number(rest), rules::BonusType::circumstance, {}}};
        const std::size_t comma = rest.find(", ");
        condition.name = rest.substr(0, comma);
        rest = rest.substr(comma + 2);
        condition.duration = take_duration(rest);
        CHECK(game::add_condition(table_.encounter(), table_.rulebook, id, condition));
        return {};
    }

    // NAME DICE TYPE
    std::string burn(std::string& rest) {
        const Id id = table_.id(take_name(rest));
        ActiveCondition condition;
        condition.key = "persistent_damage";
        condition.damage = take_word(rest);
        condition.damage_type = rest;
        CHECK(game::add_condition(table_.encounter(), table_.rulebook, id, condition));
        return {};
    }

    // HP AC INITIATIVE NAME: an opponent who comes late
    std::string late(std::string& rest) {
        const int hp = take_number(rest);
        const int armor_class = take_number(rest);
        const int initiative = take_number(rest);
        const Id id = game::add_stranger(
            table_.encounter(),
            table_.rulebook,
            rest,
            game::Side::opponents,
            hp,
            armor_class,
            initiative
        );
        CHECK(id != base::no_id);
        return {};
    }

    Table& table_;
    Id turn_of_ = base::no_id;
    States states_;
    std::string order_;
    bool is_opening_ = true;
};

} // namespace fight_table
