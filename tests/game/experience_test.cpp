// XP for the party, and the levels they lead to.
#include "game/experience.h"
#include "game/roster.h"
#include "rules/books.h"

namespace {

game::Campaign party_of(int count, int level, int experience) {
    game::Campaign campaign;
    for (int each = 1; each <= count; ++each) {
        game::Character character;
        character.name = "Hero " + std::to_string(each);
        character.statistics.level = level;
        character.statistics.armor_class = 20;
        character.experience = experience;
        game::add_character(campaign, character);
    }
    return campaign;
}

const rules::Rulebook& four() {
    static const rules::Rulebook book = four_degree_book();
    return book;
}

std::string award(game::Campaign& campaign, const rules::Rulebook& book, int xp) {
    const auto said = game::award_xp(campaign, book, game::present_characters(campaign.party), xp);
    return said.ok() ? said.value() : said.error().message;
}

} // namespace

TEST_CASE("experience: a fight and a deed lead to the next level, the rest carries over") {
    // Worked example enc-10: GM Core (ORC), 940 + 80 + 30 is a level and 50 XP.
    game::Campaign campaign = party_of(2, 4, 940);
    CHECK(
        award(campaign, four(), 80) == "Award 80 XP to the whole party; Hero 1 and Hero 2 "
                                       "reach level 5 (only the level is raised)"
    );
    CHECK(award(campaign, four(), 30) == "Award 30 XP to the whole party");
    for (const game::Character& character : campaign.party.characters) {
        CHECK(character.statistics.level == 5);
        CHECK(character.experience == 50);
        CHECK(character.statistics.armor_class == 20); // the player's to choose
    }
    // The combatants of the party carry the same level.
    for (const game::Combatant& combatant : campaign.encounter.combatants)
        CHECK(combatant.statistics.level == 5);
}

TEST_CASE("experience: who is away gains nothing") {
    game::Campaign campaign = party_of(3, 2, 0);
    game::set_present(campaign, campaign.party.characters[1].id, false);
    CHECK(award(campaign, four(), 60) == "Award 60 XP to Hero 1 and Hero 3");
    CHECK(campaign.party.characters[1].experience == 0);
    CHECK(campaign.party.characters[2].experience == 60);
}

TEST_CASE("experience: srd5 counts all XP ever gained") {
    // SRD 5.1, Beyond 1st Level / Character Advancement: level 3 at 900, level 4 at 2,700.
    const rules::Rulebook srd = srd_book(rules::SrdEdition::srd_5_1);
    game::Campaign campaign = party_of(1, 3, 2600);
    CHECK(game::experience_text(srd, campaign.party.characters[0]) == "2600 XP, 100 to level 4");
    award(campaign, srd, 150);
    CHECK(campaign.party.characters[0].statistics.level == 4);
    CHECK(campaign.party.characters[0].experience == 2750);
}

TEST_CASE("experience: at a fast pace a level takes less") {
    // GM Core (ORC), experience points (from memory): fast 800 XP a level.
    game::Campaign campaign = party_of(1, 4, 640);
    campaign.about.pace = "fast";
    const std::string_view pace = game::pace_of(campaign.about, four());
    CHECK(game::experience_text(four(), campaign.party.characters[0], pace) == "640 of 800 XP");
    award(campaign, four(), 200);
    CHECK(campaign.party.characters[0].statistics.level == 5);
    CHECK(campaign.party.characters[0].experience == 40);
    campaign.about.pace = "of another rulebook";
    CHECK(game::pace_of(campaign.about, four()).empty());
}

TEST_CASE("experience: how far it is, in words") {
    CHECK(
        game::experience_text(four(), party_of(1, 4, 640).party.characters[0]) == "640 of 1000 XP"
    );
    CHECK(game::experience_text(four(), party_of(1, 20, 640).party.characters[0]) == "640 XP");
    CHECK(game::experience_text(four(), party_of(1, 25, 640).party.characters[0]) == "640 XP");
}

TEST_CASE("experience: what cannot be awarded changes nothing and says why") {
    game::Campaign campaign = party_of(2, 4, 940);
    campaign.party.characters[1].statistics.level = 21;
    const game::Campaign before = campaign;
    CHECK(award(campaign, four(), 80) == "Hero 2: Characters have levels from 1 to 20.");
    CHECK(campaign == before);
    game::Campaign nobody;
    CHECK(award(nobody, four(), 80) == "Nobody of the party is chosen.");
    campaign = party_of(1, 4, 0);
    CHECK(award(campaign, four(), -1).find("Experience points run from 0") != std::string::npos);
}
