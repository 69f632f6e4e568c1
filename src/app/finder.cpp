#include "app/finder.h"

#include "app/actions.h"
#include "app/panels.h"
#include "game/find_sources.h"
#include "game/money.h"

#include <chrono>
#include <utility>

namespace app {

namespace {

using game::FindEntry;

std::vector<FindEntry> find_in_actions(const FindContext& /*context*/) {
    std::vector<FindEntry> entries;
    for (const Action& action : actions()) {
        if (!action.run && action.panel.empty()) continue;
        FindEntry entry;
        entry.text = action.title;
        entry.beside = action.keys;
        if (const widgets::PanelInfo* panel = find_panel(action.panel); panel != nullptr) {
            const bool has_key = !action.keys.empty();
            entry.beside += (has_key ? " in " : "") + std::string(panel->title);
            // The key of the panel, where the deed has none.
            if (!has_key && *panel->shortcut != '\0')
                entry.beside += std::string(", ") + panel->shortcut;
        }
        if (action.key.compare(0, 6, "panel/") == 0) {
            const widgets::PanelInfo* info = find_panel(action.key.substr(6));
            entry.beside += (entry.beside.empty() ? "" : "  ") + std::string(info->help);
        }
        entry.also = entry.beside + " " + action.also;
        entry.target.key = action.key;
        entries.push_back(std::move(entry));
    }
    return entries;
}

std::vector<FindEntry> find_in_open_creatures(const FindContext& context) {
    return game::find_in_library(context.library);
}

std::vector<FindEntry> find_in_rules(const FindContext& context) {
    return game::find_in_reference(
        game::reference_pages(context.rulebook, &context.reference, &context.campaign.own_pages)
    );
}

std::vector<FindEntry> find_in_price_book(const FindContext& context) {
    return game::find_in_prices(
        context.prices, game::coins_of(context.campaign.treasury, &context.prices)
    );
}

} // namespace

template <class Part>
Finder::Source
Finder::in_section(Part game::Campaign::*part, std::vector<FindEntry> (*entries)(const Part&)) {
    return [part, entries, seen = std::shared_ptr<const Part>()](const FindContext& context
           ) mutable -> Work {
        const Part& now = context.campaign.*part;
        if (seen != nullptr && *seen == now) return {};
        seen = std::make_shared<const Part>(now);
        return [entries, copy = seen] { return entries(*copy); };
    };
}

// For what is small: its entries are made at once, and compared.
Finder::Source Finder::in_values(std::vector<FindEntry> (*entries)(const FindContext&)) {
    return [entries, seen = std::vector<FindEntry>()](const FindContext& context) mutable -> Work {
        std::vector<FindEntry> now = entries(context);
        if (now == seen) return {};
        seen = std::move(now);
        return [copy = seen] { return copy; };
    };
}

// In this order equally good ones stand.
Finder::Finder()
    : sources_{
          in_values(find_in_actions),
          in_section(&game::Campaign::registered, game::find_in_register),
          in_section(&game::Campaign::party, game::find_in_party),
          in_values(find_in_rules),
          in_section(&game::Campaign::shelf, game::find_in_shelf),
          in_section(&game::Campaign::preparation, game::find_in_preparation),
          in_section(&game::Campaign::places, game::find_in_places),
          in_section(&game::Campaign::names, game::find_in_names),
          in_section(&game::Campaign::day_book, game::find_in_days),
          in_section(&game::Campaign::treasury, game::find_in_treasury),
          in_values(find_in_price_book),
          in_values(find_in_open_creatures),
          in_section(&game::Campaign::sessions, game::find_in_sessions)} {
    const auto empty = std::make_shared<const game::FindSection>(std::vector<FindEntry>());
    index_.sections.assign(sources_.size(), empty);
}

void Finder::take_built() {
    index_.sections[building_] = built_.get();
    version_ += 1;
}

void Finder::follow(const FindContext& context) {
    if (!is_behind_ && revision_ == context.revision) return;
    is_behind_ = true;
    if (built_.valid()) {
        if (built_.wait_for(std::chrono::seconds(0)) != std::future_status::ready) return;
        take_built();
    }
    for (std::size_t asked = 0; asked < sources_.size(); ++asked) {
        building_ = next_;
        next_ = (next_ + 1) % sources_.size();
        Work work = sources_[building_](context);
        if (!work) continue;
        std::promise<std::shared_ptr<const game::FindSection>> promise;
        built_ = promise.get_future();
        builder_ = std::jthread([work = std::move(work), promise = std::move(promise)]() mutable {
            promise.set_value(std::make_shared<const game::FindSection>(work()));
        });
        return;
    }
    is_behind_ = false;
    revision_ = context.revision;
}

} // namespace app
