// A draw of names with 100,000 names used: the index against a scan of all used names, and against
// taking the whole campaign in anew at each draw.
#include "base/unicode.h"
#include "bench/measure.h"
#include "game/name_drawing.h"
#include "game/name_growing.h"
#include "game/name_sound.h"
#include "store/name_lists.h"

#include <algorithm>
#include <cstdio>

namespace {

struct KnownName {
    std::string folded;
    std::u32string letters;
    std::u32string sound;
};

// Syllables put together, so that names are as long and as much alike as names are.
std::string made_up(rules::Dice& dice) {
    constexpr std::string_view heads = "bdfgklmnprstvz";
    constexpr std::string_view cores = "aeiou";
    std::string name;
    for (int left = 2 + dice.roll(2); left > 0; --left) {
        name += heads[static_cast<std::size_t>(dice.roll(static_cast<int>(heads.size())) - 1)];
        name += cores[static_cast<std::size_t>(dice.roll(static_cast<int>(cores.size())) - 1)];
        if (dice.roll(2) == 1)
            name += heads[static_cast<std::size_t>(dice.roll(static_cast<int>(heads.size())) - 1)];
    }
    return name;
}

game::Campaign crowded(int names) {
    rules::Dice dice(1);
    game::Campaign campaign;
    for (int i = 0; i < names; ++i) {
        game::UsedName used;
        used.id = campaign.names.next_id++;
        used.name = made_up(dice);
        used.day = i / 20;
        campaign.names.used.push_back(std::move(used));
    }
    return campaign;
}

// Prepared once, as a fair reference: letters and sounds are not computed in the scan.
bool is_known(const std::vector<KnownName>& all, const std::string& name) {
    const std::string folded = base::folded(name);
    const std::u32string letters = base::letters_only(name);
    const std::u32string sound = game::sound_of(letters);
    return std::any_of(all.begin(), all.end(), [&](const KnownName& known) {
        return known.folded == folded || known.sound == sound ||
               game::look_alike(known.letters, letters);
    });
}

} // namespace

int main() {
    constexpr int used = 100'000;
    game::Campaign campaign = crowded(used);
    const auto lists = store::load_name_lists(TABLEWICK_SOURCE_DIR "/assets").lists;
    std::vector<KnownName> known;
    for (const game::UsedName& each : campaign.names.used) {
        std::u32string letters = base::letters_only(each.name);
        std::u32string sound = game::sound_of(letters);
        known.push_back({base::folded(each.name), std::move(letters), std::move(sound)});
    }
    game::NamesInPlay in_play;
    in_play.follow(campaign);
    rules::Dice dice(2);
    const std::int64_t today = campaign.names.used.back().day;
    for (const game::ReadyNameList& each : lists)
        measure::compare(
            "draw 5 of " + each.key,
            [&] {
                const game::NamesLeft left = game::names_left(
                    each.names, in_play, game::recent_initials(campaign.names, today), {}
                );
                return static_cast<double>(game::draw_names(left, 5, {}, dice).size());
            },
            "scan",
            [&] {
                std::size_t left = 0;
                for (const std::string& name : each.names)
                    left += is_known(known, name) ? 0U : 1U;
                return static_cast<double>(left);
            }
        );
    const std::vector<std::string>& list = lists.front().names;
    measure::compare(
        "use a name, draw 5, take it back",
        [&] {
            campaign.names.used.push_back({campaign.names.next_id++, "Quimmelore", "", "", "", 0});
            in_play.follow(campaign);
            const game::NamesLeft left =
                game::names_left(list, in_play, game::recent_initials(campaign.names, today), {});
            const auto drawn = game::draw_names(left, 5, {}, dice);
            campaign.names.used.pop_back();
            in_play.follow(campaign);
            return static_cast<double>(drawn.size());
        },
        "anew",
        [&] {
            game::NamesInPlay fresh;
            fresh.follow(campaign);
            return static_cast<double>(fresh.size());
        }
    );
    measure::compare(
        "take in one more used name",
        [&] {
            campaign.names.used.push_back({campaign.names.next_id++, "Quimmelore", "", "", "", 0});
            in_play.follow(campaign);
            campaign.names.used.pop_back();
            in_play.follow(campaign);
            return static_cast<double>(in_play.size());
        },
        "anew",
        [&] {
            game::NamesInPlay fresh;
            fresh.follow(campaign);
            return static_cast<double>(fresh.size());
        }
    );
    measure::compare(
        "grow 5 names",
        [&] {
            const auto grown = game::grow_names(list, in_play, {}, {}, 5, dice);
            return grown.ok() ? static_cast<double>(grown.value().size()) : 0.0;
        },
        "one chain",
        [&] {
            const auto chain = game::name_chain(list, 3);
            return static_cast<double>(chain.follows.size());
        }
    );
    return 0;
}
