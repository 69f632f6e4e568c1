// The pages themselves; page_kinds.cpp lists them. `detail` is what was asked for more exactly and
// may be empty.
#pragma once

#include "print/page_kinds.h"

namespace print {

base::Result<Blocks> names_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> session_plan_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> notes_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> recap_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> party_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> initiative_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> creature_cards(const PrintSource& source, const std::string& detail);
base::Result<Blocks> condition_cards(const PrintSource& source, const std::string& detail);
base::Result<Blocks> difficulty_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> encounter_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> month_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> week_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> staff_calendar_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> reminders_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> register_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> character_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> treasure_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> prices_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> weather_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> ruled_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> divider_page(const PrintSource& source, const std::string& detail);
base::Result<Blocks> handout_page(const PrintSource& source, const std::string& detail);

// What the ornaments of dividers are called.
std::vector<std::string_view> ornament_words();

// The session with this number, the current one where no number is given. Errors: not_found,
// bad_text.
base::Result<const game::Session*>
session_asked_for(const PrintSource& source, const std::string& detail);

} // namespace print
