#include "game/loot_notes.h"

#include "base/text.h"
#include "game/roster.h"
#include "game/session_keeping.h"
#include "game/treasure.h"

#include <algorithm>
#include <optional>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using base::Result;

std::vector<std::string> words_of(std::string_view text) {
    constexpr std::string_view ends = ".,;:!)";
    std::vector<std::string> words;
    std::string word;
    const auto finish = [&] {
        while (!word.empty() && ends.find(word.back()) != std::string_view::npos)
            word.pop_back();
        if (!word.empty()) words.push_back(std::exchange(word, {}));
        word.clear();
    };
    for (const char letter : text)
        if (letter == ' ' || letter == '(' || letter == '\n')
            finish();
        else
            word += letter;
    finish();
    return words;
}

bool has_digit_first(const std::string& word) {
    return word.front() >= '0' && word.front() <= '9';
}

bool names_coin(const std::string& run) {
    return run.find_first_not_of("0123456789., ") != std::string::npos;
}

// The longest amount that begins with this word: "12 gp 3 sp".
std::optional<std::int64_t> amount_from(
    const std::vector<std::string>& words, std::size_t first, const std::vector<Coin>& coins
) {
    std::optional<std::int64_t> found;
    std::string run;
    // Every coin at most once, a number and a name each.
    const std::size_t end = std::min(words.size(), first + 2 * coins.size());
    for (std::size_t at = first; at < end; ++at) {
        run += (run.empty() ? "" : " ") + words[at];
        const auto amount = parse_money(run, coins);
        if (amount.ok() && names_coin(run)) found = amount.value();
    }
    return found;
}

} // namespace

ReadLoot read_loot(std::string_view text, const std::vector<Coin>& coins) {
    const std::vector<std::string> words = words_of(text);
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (!has_digit_first(words[at])) continue;
        const auto amount = amount_from(words, at, coins);
        if (!amount || *amount == 0) continue;
        const bool is_worth = at > 0 && base::lowercase(words[at - 1]) == "worth";
        return is_worth ? ReadLoot{0, *amount} : ReadLoot{*amount, 0};
    }
    return {};
}

bool is_loot_taken(const Treasury& treasury, Id note) {
    const auto is_from = [note](const auto& entry) { return entry.note == note; };
    return std::any_of(treasury.lines.begin(), treasury.lines.end(), is_from) ||
           std::any_of(treasury.items.begin(), treasury.items.end(), is_from);
}

Result<Id> take_loot(Campaign& campaign, Id session, Id note, const std::vector<Coin>& coins) {
    const Session* written_in = find_session(campaign.sessions, session);
    const NoteLine* line = nullptr;
    if (written_in != nullptr)
        for (const NoteLine& each : written_in->lines)
            if (each.id == note) line = &each;
    if (line == nullptr) return Error{ErrorKind::not_found, "That note is gone."};
    if (is_loot_taken(campaign.treasury, note))
        return Error{ErrorKind::not_possible, "That note is in the ledger already."};
    const ReadLoot loot = read_loot(line->text, coins);
    const auto stamp = [&](auto& entry) {
        entry.day = line->day;
        entry.session = session;
        entry.note = note;
    };
    if (loot.money != 0) {
        auto added = add_ledger_line(campaign, LedgerKind::found, line->text, loot.money);
        if (added.ok()) stamp(campaign.treasury.lines.back());
        return added;
    }
    TreasureItem item;
    item.name = base::shortened(line->text, Limits::name_bytes_max);
    item.value = loot.worth;
    item.note = note;
    auto added = add_item(campaign, std::move(item));
    if (added.ok()) stamp(*find_item(campaign.treasury, added.value()));
    return added;
}

} // namespace game
