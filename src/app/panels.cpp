#include "app/panels.h"

#include "widgets/calendar_editor.h"
#include "widgets/campaign_page.h"
#include "widgets/close_up.h"
#include "widgets/condition_timers.h"
#include "widgets/creature_builder.h"
#include "widgets/creature_shelf.h"
#include "widgets/day_book.h"
#include "widgets/dice_panel.h"
#include "widgets/difficulty.h"
#include "widgets/encounter_budget_panel.h"
#include "widgets/encounter_preparation.h"
#include "widgets/happenings.h"
#include "widgets/hazard_builder.h"
#include "widgets/name_picker.h"
#include "widgets/open_creatures.h"
#include "widgets/party_defences.h"
#include "widgets/party_roster.h"
#include "widgets/places.h"
#include "widgets/price_book.h"
#include "widgets/print_panel.h"
#include "widgets/recap_page.h"
#include "widgets/recovery_panel.h"
#include "widgets/reference_panel.h"
#include "widgets/register_panel.h"
#include "widgets/reminders.h"
#include "widgets/session_sheet.h"
#include "widgets/treasure_ledger.h"
#include "widgets/turn_order.h"
#include "widgets/weather_walk.h"

#include <array>

namespace app {

namespace {

const auto infos = std::to_array<const widgets::PanelInfo*>(
    {&widgets::turn_order_info,
     &widgets::condition_timers_info,
     &widgets::close_up_info,
     &widgets::party_defences_info,
     &widgets::difficulty_info,
     &widgets::party_roster_info,
     &widgets::creature_shelf_info,
     &widgets::creature_builder_info,
     &widgets::open_creatures_info,
     &widgets::hazard_builder_info,
     &widgets::encounter_preparation_info,
     &widgets::encounter_budget_info,
     &widgets::recovery_info,
     &widgets::reminders_info,
     &widgets::name_picker_info,
     &widgets::register_info,
     &widgets::session_sheet_info,
     &widgets::recap_page_info,
     &widgets::weather_walk_info,
     &widgets::places_info,
     &widgets::treasure_ledger_info,
     &widgets::price_book_info,
     &widgets::dice_panel_info,
     &widgets::reference_info,
     &widgets::day_book_info,
     &widgets::calendar_editor_info,
     &widgets::print_panel_info,
     &widgets::happenings_info,
     &widgets::campaign_page_info}
);

} // namespace

struct Panels::Views {
    widgets::TurnOrderView turn_order;
    widgets::ConditionTimersView condition_timers;
    widgets::CloseUpView close_up;
    widgets::PartyDefencesView party_defences;
    widgets::DifficultyView difficulty;
    widgets::PartyRosterView party_roster;
    widgets::CreatureShelfView creature_shelf;
    widgets::CreatureBuilderView creature_builder;
    widgets::OpenCreaturesView open_creatures;
    widgets::HazardBuilderView hazard_builder;
    widgets::EncounterPreparationView encounter_preparation;
    widgets::EncounterBudgetView encounter_budget;
    widgets::RecoveryView recovery;
    widgets::RemindersView reminders;
    widgets::NamePickerView name_picker;
    widgets::RegisterView registered;
    widgets::SessionSheetView session_sheet;
    widgets::RecapPageView recap_page;
    widgets::WeatherWalkView weather_walk;
    widgets::PlacesView places;
    widgets::TreasureLedgerView treasure_ledger;
    widgets::PriceBookView price_book;
    widgets::DicePanelView dice_panel;
    widgets::ReferenceView reference;
    widgets::DayBookView day_book;
    widgets::CalendarEditorView calendar_editor;
    widgets::PrintPanelView print_panel;
    widgets::HappeningsView happenings;
    widgets::CampaignPageView campaign_page;
};

std::span<const widgets::PanelInfo* const> panel_infos() {
    return infos;
}

const widgets::PanelInfo* find_panel(const std::string& key) {
    for (const widgets::PanelInfo* info : infos)
        if (key == info->key) return info;
    return nullptr;
}

Panels::Panels() : views_(std::make_unique<Views>()) {}

Panels::~Panels() = default;

void Panels::draw(const std::string& key, const widgets::PanelContext& context) {
    const widgets::PanelInfo* info = find_panel(key);
    if (info == &widgets::turn_order_info)
        draw_turn_order(context, views_->turn_order);
    else if (info == &widgets::condition_timers_info)
        draw_condition_timers(context, views_->condition_timers);
    else if (info == &widgets::close_up_info)
        draw_close_up(context, views_->close_up);
    else if (info == &widgets::party_defences_info)
        draw_party_defences(context, views_->party_defences);
    else if (info == &widgets::difficulty_info)
        draw_difficulty(context, views_->difficulty);
    else if (info == &widgets::party_roster_info)
        draw_party_roster(context, views_->party_roster);
    else if (info == &widgets::creature_shelf_info)
        draw_creature_shelf(context, views_->creature_shelf);
    else if (info == &widgets::creature_builder_info)
        draw_creature_builder(context, views_->creature_builder);
    else if (info == &widgets::open_creatures_info)
        draw_open_creatures(context, views_->open_creatures);
    else if (info == &widgets::hazard_builder_info)
        draw_hazard_builder(context, views_->hazard_builder);
    else if (info == &widgets::encounter_preparation_info)
        draw_encounter_preparation(context, views_->encounter_preparation);
    else if (info == &widgets::encounter_budget_info)
        draw_encounter_budget(context, views_->encounter_budget);
    else if (info == &widgets::recovery_info)
        draw_recovery(context, views_->recovery);
    else if (info == &widgets::reminders_info)
        draw_reminders(context, views_->reminders);
    else if (info == &widgets::name_picker_info)
        draw_name_picker(context, views_->name_picker);
    else if (info == &widgets::register_info)
        draw_register(context, views_->registered);
    else if (info == &widgets::session_sheet_info)
        draw_session_sheet(context, views_->session_sheet);
    else if (info == &widgets::recap_page_info)
        draw_recap_page(context, views_->recap_page);
    else if (info == &widgets::weather_walk_info)
        draw_weather_walk(context, views_->weather_walk);
    else if (info == &widgets::places_info)
        draw_places(context, views_->places);
    else if (info == &widgets::treasure_ledger_info)
        draw_treasure_ledger(context, views_->treasure_ledger);
    else if (info == &widgets::price_book_info)
        draw_price_book(context, views_->price_book);
    else if (info == &widgets::dice_panel_info)
        draw_dice_panel(context, views_->dice_panel);
    else if (info == &widgets::reference_info)
        draw_reference(context, views_->reference);
    else if (info == &widgets::day_book_info)
        draw_day_book(context, views_->day_book);
    else if (info == &widgets::calendar_editor_info)
        draw_calendar_editor(context, views_->calendar_editor);
    else if (info == &widgets::print_panel_info)
        draw_print_panel(context, views_->print_panel);
    else if (info == &widgets::happenings_info)
        draw_happenings(context, views_->happenings);
    else if (info == &widgets::campaign_page_info)
        draw_campaign_page(context, views_->campaign_page);
}

} // namespace app
