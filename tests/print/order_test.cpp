// What is to be printed, by name: words, choices, and the set for an evening.
#include "print/order.h"
#include "print/printing.h"
#include "store/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace {

struct Desk {
    game::Campaign campaign = samples::demo();
    const rules::Rulebook& rulebook = samples::rulebook(campaign.about.rules);

    print::PrintSource source() const { return printing::source(campaign, rulebook); }
};

std::vector<std::string> details_of(const std::vector<print::DetailOffer>& offers) {
    std::vector<std::string> details;
    details.reserve(offers.size());
    for (const print::DetailOffer& offer : offers)
        details.push_back(offer.detail);
    return details;
}

} // namespace

TEST_CASE("print order: a page is named as typed, with what it is of behind a colon") {
    CHECK(print::wanted_page("party").value() == print::WantedPage{"party", ""});
    CHECK(print::wanted_page("session-plan:7").value() == print::WantedPage{"session-plan", "7"});
    CHECK(print::wanted_page("divider:A: B|waves").value().detail == "A: B|waves");
    const auto unknown = print::wanted_page("poster:large");
    REQUIRE_FALSE(unknown.ok());
    CHECK(unknown.error().message == "There is no page poster.");
    CHECK(print::list_of_pages().find("\n    session-plan[:number") != std::string::npos);
}

TEST_CASE("print order: everything that is offered can be made, but where nothing is there yet") {
    const Desk desk;
    const std::set<std::string> may_be_empty = {"creatures", "register"};
    std::size_t offered = 0;
    for (const print::PageKind& kind : print::page_kinds()) {
        for (const print::DetailOffer& offer : print::detail_offers(kind.key, desk.source())) {
            const std::string key(kind.key);
            CAPTURE(key);
            CAPTURE(offer.detail);
            CHECK_FALSE(offer.words.empty());
            const auto made = print::make_section({key, offer.detail}, desk.source());
            if (!made.ok()) CHECK(may_be_empty.count(key) == 1);
            if (made.ok()) offered += 1;
        }
    }
    CHECK(offered > 30);
}

TEST_CASE("print order: every page that can be of something offers it or has fields for it") {
    const Desk desk;
    for (const print::PageKind& kind : print::page_kinds()) {
        CAPTURE(kind.key);
        const bool is_asked = !print::detail_offers(kind.key, desk.source()).empty() ||
                              !print::detail_fields(kind.key).empty();
        CHECK(is_asked == !kind.detail.empty());
    }
}

TEST_CASE("print order: the newest session is offered first, after the current one") {
    Desk desk;
    desk.campaign.sessions.sessions.resize(2);
    desk.campaign.sessions.sessions[0].number = 6;
    desk.campaign.sessions.sessions[1].number = 7;
    const auto plan = print::detail_offers("session-plan", desk.source());
    CHECK(details_of(plan) == std::vector<std::string>{"", "7", "6"});
    CHECK(plan[1].words == "Session 7: The drowned bell");
    CHECK(
        details_of(print::detail_offers("recap", desk.source())) ==
        std::vector<std::string>{"", "blank", "7", "6"}
    );
}

TEST_CASE("print order: what can be typed besides says so in a few words") {
    CHECK(print::typed_detail_hint("week") == "or a date in it");
    CHECK(print::typed_detail_hint("party").empty());
    CHECK(print::detail_offers("party", Desk().source()).empty());
}

TEST_CASE("print order: a detail of several parts is taken apart and put together again") {
    using Parts = std::vector<std::string>;
    CHECK(print::split_detail("The dike|waves|a.png", 3) == Parts{"The dike", "waves", "a.png"});
    CHECK(print::split_detail("", 3) == Parts{"", "", ""});
    CHECK(print::split_detail("map.png|left | right", 2) == Parts{"map.png", "left | right"});
    CHECK(print::join_detail({"The dike", "", ""}) == "The dike");
    CHECK(print::join_detail({"", "", "a.png"}) == "||a.png");
    for (const char* detail : {"", "a", "a|b", "|b", "||c", "a|b|c|d"})
        CHECK(print::join_detail(print::split_detail(detail, 3)) == detail);
    CHECK(print::detail_fields("divider").size() == 3);
    CHECK(print::detail_fields("divider")[1].choices.size() >= 6);
    CHECK(print::detail_fields("names").empty());
}

TEST_CASE("print order: every ornament that is offered makes a divider") {
    const Desk desk;
    const print::DetailField ornament = print::detail_fields("divider")[1];
    for (const std::string_view word : ornament.choices)
        CHECK(print::make_section({"divider", "The dike|" + std::string(word)}, desk.source()).ok()
        );
}

TEST_CASE("print order: the set for an evening holds only what the campaign has") {
    const Desk desk;
    const auto set = print::evening_set(desk.source());
    CHECK(print::make_sections(set, desk.source()).ok());
    const auto holds = [](const std::vector<print::WantedPage>& pages, const char* key) {
        return std::any_of(pages.begin(), pages.end(), [key](const print::WantedPage& page) {
            return page.key == key;
        });
    };
    CHECK(holds(set, "session-plan"));
    CHECK(holds(set, "initiative"));
    game::Campaign empty;
    empty.about = desk.campaign.about;
    const auto first = print::evening_set(printing::source(empty, desk.rulebook));
    CHECK_FALSE(holds(first, "session-plan")); // no session yet
    CHECK(holds(first, "initiative"));         // blank, to write on
    CHECK(holds(first, "difficulty"));
}

TEST_CASE("print order: each section begins on the side that carries its first page") {
    const Desk desk;
    const std::vector<print::WantedPage> pages{{"party"}, {"difficulty"}, {"initiative", "blank"}};
    const auto sections = print::make_sections(pages, desk.source());
    REQUIRE(sections.ok());
    print::PrintSetup setup = printing::setup("a5");
    const auto one = print::Document::lay_out(sections.value(), "x", setup);
    REQUIRE(one.ok());
    const auto first = one.value().first_sides();
    REQUIRE(first.size() == 3);
    CHECK(first[0] == 0);
    CHECK(first[1] > 0);
    CHECK(first[2] > first[1]);
    CHECK(first[2] < one.value().page_count());
    setup.arrangement = print::Arrangement::two_up;
    const auto two = print::Document::lay_out(sections.value(), "x", setup);
    REQUIRE(two.ok());
    CHECK(two.value().first_sides()[2] == first[2] / 2);
}
