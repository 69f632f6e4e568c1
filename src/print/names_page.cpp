// Names that are not in play, with boxes to tick and room for who bears them; then those given.
#include "base/unicode.h"
#include "game/date_text.h"
#include "game/name_drawing.h"
#include "print/pages.h"

namespace print {

namespace {

const game::NameSource*
find_source(const std::vector<game::NameSource>& sources, const std::string& wanted) {
    if (wanted.empty()) return sources.empty() ? nullptr : &sources.front();
    for (const game::NameSource& each : sources)
        if (each.key == wanted || base::folded(each.title) == base::folded(wanted)) return &each;
    return nullptr;
}

} // namespace

base::Result<Blocks> names_page(const PrintSource& source, const std::string& detail) {
    const game::Campaign& campaign = source.campaign;
    const auto sources = game::name_sources(source.name_lists, campaign.names.lists);
    const game::NameSource* list = find_source(sources, detail);
    if (list == nullptr) {
        std::string known;
        for (const game::NameSource& each : sources)
            known += (known.empty() ? "" : ", ") + each.key;
        return base::Error{
            base::ErrorKind::not_found,
            detail.empty() ? "There are no lists of names."
                           : "There is no list of names " + detail + ".",
            {},
            known.empty() ? "" : "Lists: " + known + "."};
    }
    game::NamesInPlay in_play;
    in_play.follow(campaign);
    TickList unused{{}, 38};
    for (const std::string& name : *list->names)
        if (in_play.check(name).clash == game::NameClash::none) unused.ticks.push_back({name});
    Blocks blocks{Title{"Names: " + list->title, list->about}};
    if (unused.ticks.empty()) blocks.emplace_back(Paragraph{"Every name of this list is in play."});
    blocks.emplace_back(std::move(unused));

    Table given{{{"Given"}, {"To"}, {"Where"}}, {}, 0, false, false};
    for (const game::UsedName& used : campaign.names.used)
        given.rows.push_back(
            {{used.name, game::short_date_text(campaign.calendar, used.day), true},
             {used.who},
             {used.where}}
        );
    if (!given.rows.empty()) {
        blocks.emplace_back(Divider{});
        blocks.emplace_back(std::move(given));
    }
    return blocks;
}

} // namespace print
