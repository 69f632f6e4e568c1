// Asking for the weather: today's, another day's, and where there is none.
#include "game/asking.h"
#include "game/places_edit.h"
#include "game/weather_table.h"

namespace {

game::Campaign at_the_ferry() {
    game::Campaign campaign;
    campaign.clock.day = 12;
    game::Place ferry;
    ferry.name = "Salt Ferry";
    ferry.climate = "temperate_coast";
    game::add_place(campaign.places, ferry, "Salt Road Charter");
    return campaign;
}

base::Result<game::Answer> ask(const game::Campaign& campaign, std::string_view words) {
    return game::answer({asking::four(), &campaign, &weather_table::climates()}, words);
}

} // namespace

TEST_CASE("ask: the weather where the party is, with the line to read and the week ahead") {
    const game::Campaign campaign = at_the_ferry();
    const auto found = ask(campaign, "weather");
    REQUIRE(found.ok());
    const game::Answer& answer = found.value();
    CHECK(answer.title.find("Day 12, Salt Ferry: ") == 0);
    CHECK(answer.lines.front() == asking::text(answer.values, "line"));
    CHECK(asking::text(answer.values, "place") == "Salt Ferry");
    const auto& ahead = asking::value(answer.values, "days_ahead").content;
    CHECK(std::get<std::vector<game::NamedValues>>(ahead).size() == 7);
}

TEST_CASE("ask: another day's weather is the same however it is asked for") {
    const game::Campaign campaign = at_the_ferry();
    const auto fifteen = ask(campaign, "weather day 15");
    const auto later = ask(campaign, "weather +3");
    REQUIRE(fifteen.ok());
    REQUIRE(later.ok());
    CHECK(fifteen.value().title.find("Day 15, ") == 0);
    CHECK(fifteen.value().lines == later.value().lines);
    const auto before = ask(campaign, "weather day -40");
    REQUIRE(before.ok());
    CHECK(before.value().title.find("Day -40, ") == 0);
}

TEST_CASE("ask: where there is no weather the answer says why") {
    CHECK(asking::refusal("weather").find("Weather where?") == 0);
    game::Campaign campaign = at_the_ferry();
    campaign.places.places[0].climate.clear();
    CHECK(ask(campaign, "weather").error().message == "There is no weather at Salt Ferry.");
    campaign.places.current = base::no_id;
    CHECK(ask(campaign, "weather").error().message.find("The party is at no place") == 0);
    CHECK_FALSE(ask(at_the_ferry(), "weather forecast").ok());
    CHECK_FALSE(ask(at_the_ferry(), "weather day").ok());
}
