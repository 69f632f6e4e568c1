// After the fight: wounds, nights and rests, with the dice of the table or of the program.
#include "driver.h"
#include "fixtures.h"
#include "widgets/recovery_panel.h"

#include <doctest/doctest.h>

using driver::inside;

namespace {

using Driver = driver::PanelDriver<widgets::RecoveryView>;

void set_hp(game::Campaign& campaign, const char* name, int hp) {
    for (game::Combatant& combatant : campaign.encounter.combatants)
        if (combatant.name == name) combatant.hp = hp;
}

// Ysolde and Orrin are hurt; Sefa knows Medicine (+13), Bram too (+9).
game::Campaign hurt_party() {
    game::Campaign campaign = fixtures::sluice_campaign();
    campaign.party.characters[3].statistics.skills["medicine"] = 13;
    campaign.party.characters[2].statistics.skills["medicine"] = 9;
    for (game::Character& character : campaign.party.characters)
        character.statistics.abilities["con"] = 2;
    game::link_party(campaign);
    set_hp(campaign, "Ysolde Marr", 20);
    set_hp(campaign, "Orrin Tace", 30);
    return campaign;
}

Driver camp(const driver::Settings& settings = {}) {
    return {hurt_party(), fixtures::four_degree(), widgets::draw_recovery, settings};
}

// Three of level 3 with three hit dice of d8 each, all at 10 HP.
Driver quay() {
    game::Campaign campaign = fixtures::pier_campaign();
    for (game::Character& character : campaign.party.characters)
        character.hit_dice = {{8, 3, 0, {}}};
    for (game::Combatant& combatant : campaign.encounter.combatants)
        combatant.hp = 10;
    return {campaign, fixtures::srd5(), widgets::draw_recovery};
}

int hp_of(const Driver& ui, const char* name) {
    return ui.combatant(name).hp;
}

} // namespace

TEST_CASE("recovery: the best healer, the best DC and the hurt are chosen already") {
    // Player Core (ORC), Treat Wounds: worked examples heal-02 and heal-05, +13.
    Driver ui = camp();
    CHECK(ui.shows("Sefa Lunn, Medicine +13"));
    ui.click("##proficiency");
    ui.click("expert", inside("##Combo"));
    CHECK(ui.shows("trained, DC 15: 95 % succeed, about 12.4 HP"));
    CHECK(ui.shows("expert, DC 20: 70 % succeed, about 14.9 HP, best"));
    CHECK(ui.shows("critical success 20 %, success 50 %, failure 25 %, critical failure 5 %"));
    CHECK(ui.shows("Treat 2 patients"));
    ui.click("60 min each");
    CHECK(ui.shows("about 30 HP, best")); // 30.2 restored, 0.225 lost
}

TEST_CASE("recovery: rolls from the table are typed, the rest is rolled, one press treats all") {
    Driver ui = camp();
    ui.click("##proficiency");
    ui.click("expert", inside("##Combo"));
    ui.fill("##natural 1", "12");
    ui.fill("##healing 1", "19");
    ui.click("###treat");
    CHECK(hp_of(ui, "Ysolde Marr") == 39);
    CHECK(
        ui.last_edit().find("Treat wounds, expert DC 20 with +13: 12, success: Ysolde Marr "
                            "regains 19, now 39; ") == 0
    );
    CHECK(ui.campaign().clock.second_of_day == 8 * 3600 + 20 * 60);
    // Both cannot be treated again for a while.
    CHECK_FALSE(ui.is_enabled("Ysolde Marr##member 1"));
    CHECK(ui.shows("Treat 0 patients"));
    ui.undo();
    CHECK(hp_of(ui, "Ysolde Marr") == 20);
    CHECK(ui.campaign().clock.second_of_day == 8 * 3600);
}

TEST_CASE("recovery: a roll that the dice cannot show is refused, and what was typed stays") {
    Driver ui = camp();
    ui.fill("##natural 1", "21");
    CHECK(ui.shows("A d20 is 1 to 20."));
    ui.fill("##natural 1", "10");
    ui.fill("##healing 1", "30"); // 2d8 gives 16 at most; 4d8 would do
    ui.click("###treat");
    CHECK(ui.shows("Ysolde Marr, success: 2d8 gives 2 to 16."));
    CHECK(ui.last_edit().empty());
    ui.fill("##healing 1", "16");
    ui.click("###treat");
    CHECK(hp_of(ui, "Ysolde Marr") == 36);
}

TEST_CASE("recovery: others are chosen, and the DC and the modifier are set by hand") {
    Driver ui = camp();
    ui.click("Orrin Tace##member 2");
    CHECK(ui.shows("Treat 1 patient"));
    ui.click("Bram Oake##member 3"); // unhurt, but the GM wants it
    CHECK(ui.shows("Treat 2 patients"));
    ui.fill("##modifier", "25");
    ui.click("##proficiency");
    ui.click("legendary", inside("##Combo"));
    ui.click("trained, DC 15##dc");
    ui.fill("##natural 1", "2");
    ui.fill("##healing 1", "8");
    ui.click("###treat");
    CHECK(
        ui.last_edit().find("Treat wounds, trained DC 15 with +25: 2, critical success: Ysolde") ==
        0
    );
}

TEST_CASE("recovery: a night's rest for all who play") {
    // Player Core (ORC), Rest: Constitution 2 times level 4.
    Driver ui = camp();
    ui.click("Night's rest");
    CHECK(ui.shows("+8, to 28 of 52"));
    ui.click("A day and a night");
    CHECK(ui.shows("+16, to 36 of 52")); // from memory
    ui.click("A night");
    ui.click("Tiv Hollow##member 5");
    ui.click("###rest");
    CHECK(hp_of(ui, "Ysolde Marr") == 28);
    CHECK(ui.campaign().clock.second_of_day == 16 * 3600);
    CHECK(ui.last_edit().find("Night's rest: Ysolde Marr +8 HP; Orrin Tace +8 HP; ") == 0);
    CHECK(ui.last_edit().find("Tiv") == std::string::npos);
}

TEST_CASE("recovery: a short rest spends hit dice") {
    // SRD 5.1, Resting. Perrin Dask has Constitution +2.
    Driver ui = quay();
    CHECK(ui.shows("3d8 left, spend"));
    CHECK_FALSE(ui.is_enabled("Short rest now"));
    ui.click("+##more spend 1 d8");
    ui.click("+##more spend 1 d8");
    CHECK(ui.shows("about 13 HP, 6 to 20"));
    ui.fill("##dice 1 d8", "9");
    ui.click("Short rest now");
    CHECK(hp_of(ui, "Perrin Dask") == 23);
    CHECK(ui.campaign().party.characters[0].hit_dice[0].spent == 2);
    CHECK(ui.last_edit() == "Short rest: Perrin Dask regains 13, now 23 (2d8)");
    CHECK(ui.shows("1d8 left, spend"));
    ui.undo();
    CHECK(ui.campaign().party.characters[0].hit_dice[0].spent == 0);
    CHECK(hp_of(ui, "Perrin Dask") == 10);
}

TEST_CASE("recovery: a long rest gives everything back, and half the hit dice") {
    Driver ui = quay();
    for (int each = 0; each < 3; ++each)
        ui.click("+##more spend 1 d8");
    ui.click("Short rest now");
    ui.click("Long rest");
    CHECK(ui.shows("1 hit die"));
    ui.click("###rest");
    CHECK(hp_of(ui, "Perrin Dask") == 28);
    CHECK(ui.campaign().party.characters[0].hit_dice[0].spent == 2);
}

TEST_CASE("recovery: not while a fight is on, not for reading only, not for nobody") {
    game::Campaign campaign = fixtures::opened(hurt_party(), fixtures::four_degree());
    Driver ui(campaign, fixtures::four_degree(), widgets::draw_recovery);
    CHECK(ui.shows("Not while a fight is on."));
    CHECK_FALSE(ui.is_enabled("###treat"));
    Driver reader = camp();
    reader.is_read_only = true;
    reader.frames(2);
    CHECK_FALSE(reader.is_enabled("###treat"));
    Driver nobody(game::Campaign{}, fixtures::four_degree(), widgets::draw_recovery);
    CHECK(nobody.shows("Enter the player characters in the Party panel first."));
}

TEST_CASE("recovery: a narrow panel at twice the text with large targets") {
    driver::Settings narrow;
    narrow.size = {720.0F, 760.0F};
    narrow.scale = 2.0F;
    narrow.is_touch = true;
    Driver ui = camp(narrow);
    ui.fill("##natural 1", "20");
    ui.click("###treat");
    CHECK(hp_of(ui, "Ysolde Marr") > 20);
    ui.click("Night's rest");
    ui.click("###rest");
    CHECK(ui.campaign().clock.second_of_day > 16 * 3600);
}
