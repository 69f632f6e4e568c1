// Names of the Register found in what is written.
#include "game/mentions.h"
#include "game/register_keeping.h"
#include "game/registering.h"
#include "game/session_keeping.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

game::Register registered(const std::vector<std::pair<std::string, game::Kind>>& names) {
    game::Register made;
    for (const auto& [name, kind] : names) {
        game::RegisterEntry entry;
        entry.name = name;
        entry.kind = kind;
        game::add_register_entry(made, entry);
    }
    return made;
}

std::vector<std::string> found(const game::Register& names, const std::string& text) {
    game::RegisteredNames index;
    index.follow(names);
    std::vector<std::string> words;
    for (const game::Mention& mention : index.find(text))
        words.push_back(text.substr(mention.begin, mention.end - mention.begin));
    return words;
}

using Words = std::vector<std::string>;

} // namespace

TEST_CASE("mentions: whole words, whatever their case, with signs around them") {
    const auto names =
        registered({{"Selbra", game::Kind::person}, {"Wrack Ferry", game::Kind::place}});
    CHECK(found(names, "Selbra waits at Wrack Ferry.") == Words{"Selbra", "Wrack Ferry"});
    CHECK(found(names, "\"SELBRA's boat\", wrack  ferry") == Words{"SELBRA", "wrack  ferry"});
    CHECK(found(names, "Selbrand and Wrack Ferryman") == Words{});
    CHECK(found(names, "").empty());
    CHECK(found({}, "Selbra").empty());
}

TEST_CASE("mentions: the longest name that begins at a place counts, none overlap") {
    const auto names = registered(
        {{"Orrin", game::Kind::person},
         {"Orrin Tace", game::Kind::person},
         {"Tace", game::Kind::faction},
         {"Tace Hall", game::Kind::place}}
    );
    CHECK(found(names, "Orrin Tace Hall") == Words{"Orrin Tace"});
    CHECK(found(names, "Orrin and Tace Hall") == Words{"Orrin", "Tace Hall"});
}

TEST_CASE("mentions: names with marks, signs and letters of any script") {
    const auto names = registered(
        {{"Ysólde", game::Kind::person},
         {"O'Rhé-Varn", game::Kind::person},
         {"\xE7\x81\xAF\xE5\x8F\xB0", game::Kind::place}}
    );
    CHECK(found(names, "YSÓLDE met O'RHÉ-VARN") == Words{"YSÓLDE", "O'RHÉ-VARN"});
    CHECK(
        found(names, "Yso\xCC\x81lde") == Words{"Yso\xCC\x81lde"}
    ); // the mark as a letter of its own
    CHECK(found(names, "at \xE7\x81\xAF\xE5\x8F\xB0.").size() == 1);
}

TEST_CASE("mentions: the index follows the Register and tells when something changed") {
    game::Register names = registered({{"Selbra", game::Kind::person}});
    game::RegisteredNames index;
    CHECK(index.follow(names));
    CHECK_FALSE(index.follow(names));
    names.entries[0].name = "Tollick";
    CHECK(index.follow(names));
    CHECK(index.find("Selbra").empty());
    CHECK(index.find("Tollick").size() == 1);
}

TEST_CASE("mentions: ten thousand names are found as one is, against a look for each of them") {
    std::vector<std::pair<std::string, game::Kind>> all;
    for (int each = 0; each < 10'000; ++each)
        all.emplace_back("Name" + std::to_string(each) + " Surname", game::Kind::person);
    const auto names = registered(all);
    game::RegisteredNames index;
    index.follow(names);
    const std::string text = "Name7 Surname met Name9999 surname and Name70 Surnames.";
    const auto mentions = index.find(text);
    std::size_t looked_for = 0; // the straightforward way, for these three alone
    for (const auto& [name, kind] : all)
        looked_for += text.find(name + " ") != std::string::npos ? 1 : 0;
    CHECK(looked_for == 1);
    REQUIRE(mentions.size() == 2);
    CHECK(mentions[0].entry == 8);
    CHECK(mentions[1].entry == 10'000);
}

TEST_CASE("mentions: every spot where an entry is spoken of, newest first") {
    game::Campaign campaign;
    campaign.registered =
        registered({{"Selbra", game::Kind::person}, {"Wrack Ferry", game::Kind::place}});
    const base::Id selbra = 1;
    const base::Id session = game::begin_session(campaign, "");
    campaign.clock.day = 3;
    game::write_note(campaign, session, game::NoteKind::note, "Selbra asks for salt.", "");
    campaign.clock.day = 8;
    game::write_note(campaign, session, game::NoteKind::note, "selbra is gone", "");
    game::write_note(campaign, session, game::NoteKind::note, "Nobody waits.", "");
    game::find_session(campaign.sessions, session)->people = {selbra};
    campaign.day_book.pages = {{5, 5, "Rain; Selbra stays in."}};
    campaign.registered.entries[1].notes = "Selbra's home.";
    game::RegisteredNames index;
    index.follow(campaign.registered);
    const auto spots = game::mentions_of(campaign, index, selbra);
    REQUIRE(spots.size() == 5);
    CHECK(spots[0].text == "selbra is gone");
    CHECK(spots[0].day == 8);
    CHECK(spots[1].place == game::MentionPlace::day_page);
    CHECK(spots[2].day == 3);
    CHECK(spots[2].title == "Session 1");
}

TEST_CASE("mentions: notes are passed over quickly, but none that holds the name in other letters"
) {
    // U+212A KELVIN SIGN folds to k, U+017F LATIN SMALL LETTER LONG S to s (Unicode, CaseFolding).
    game::Campaign campaign;
    campaign.registered = registered(
        {{"Kestrel of the Weir", game::Kind::person},
         {"\xC3\x89l", game::Kind::person},
         {"\xE7\x81\xAF", game::Kind::place}}
    );
    const base::Id session = game::begin_session(campaign, "");
    for (const char* text :
         {"KESTREL OF THE WEIR waits",
          "the \xE2\x84\xAA"
          "e\xC5\xBFtrel of the weir waits",
          "Kestrel of the mill waits",
          "\xC3\xA9l is here",
          "el is here",
          "under the \xE7\x81\xAF"})
        game::write_note(campaign, session, game::NoteKind::note, text, "");
    game::RegisteredNames index;
    index.follow(campaign.registered);
    CHECK(game::mentions_of(campaign, index, 1).size() == 2);
    CHECK(game::mentions_of(campaign, index, 2).size() == 1);
    CHECK(game::mentions_of(campaign, index, 3).size() == 1);
}
