#include "game/calendar_editing.h"

#include "game/calendar_dates.h"

#include <algorithm>
#include <charconv>

namespace game {

namespace {

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

// Takes "30" or "(30)" off the end, a colon before it too; 0: there is none, or nothing but it.
int take_days(std::string_view& name) {
    std::string_view rest = name;
    if (rest.ends_with(')')) rest.remove_suffix(1);
    const std::size_t last = rest.find_last_not_of("0123456789");
    if (last == std::string_view::npos || last + 1 == rest.size()) return 0;
    const std::string_view digits = rest.substr(last + 1);
    rest = trimmed(rest.substr(0, last + 1));
    while (rest.ends_with('(') || rest.ends_with(':'))
        rest = trimmed(rest.substr(0, rest.size() - 1));
    int days = 0;
    const auto [stop, error] = std::from_chars(digits.data(), digits.data() + digits.size(), days);
    if (error != std::errc() || rest.empty() || days > CalendarLimits::part_days_max) return 0;
    name = rest;
    return days;
}

YearPart new_month(Calendar& calendar, std::string name, int days) {
    YearPart month;
    month.id = calendar.next_id++;
    month.name = std::move(name);
    month.days = days;
    return month;
}

} // namespace

void make_months(Calendar& calendar, int count, int days) {
    count = std::clamp(count, 1, CalendarLimits::parts_max);
    days = std::clamp(days, 1, CalendarLimits::part_days_max);
    calendar.parts.clear();
    calendar.leap_rules.clear();
    calendar.seasons.clear();
    calendar.holidays.clear();
    for (int i = 1; i <= count; ++i)
        calendar.parts.push_back(new_month(calendar, "Month " + std::to_string(i), days));
    const Id first = calendar.parts.front().id;
    calendar.midwinter = {first, 1, {}};
    calendar.first_day = {calendar.first_day.year, first, 1, {}};
    for (Moon& moon : calendar.moons)
        moon.new_moon = {moon.new_moon.year, first, 1, {}};
}

std::vector<ListedName> listed_names(std::string_view text, bool with_days) {
    std::vector<ListedName> names;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(",;\n\t"), text.size());
        std::string_view name = trimmed(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        if (name.empty()) continue;
        const int days = with_days ? take_days(name) : 0;
        names.push_back({std::string(name), days});
    }
    return names;
}

void name_months(Calendar& calendar, const std::vector<ListedName>& names) {
    std::size_t at = 0;
    int days = YearPart{}.days;
    std::size_t after_last = 0;
    for (std::size_t i = 0; i < calendar.parts.size(); ++i) {
        YearPart& part = calendar.parts[i];
        if (!part.is_month) continue;
        after_last = i + 1;
        if (at < names.size()) {
            part.name = names[at].name;
            if (names[at].days > 0) part.days = names[at].days;
            at += 1;
        }
        days = part.days;
    }
    const bool was_empty = calendar.parts.empty();
    for (; at < names.size() && calendar.parts.size() < CalendarLimits::parts_max; ++at) {
        if (names[at].days > 0) days = names[at].days;
        calendar.parts.insert(
            calendar.parts.begin() + static_cast<std::ptrdiff_t>(after_last),
            new_month(calendar, names[at].name, days)
        );
        after_last += 1;
    }
    if (was_empty && !calendar.parts.empty()) {
        calendar.midwinter.part = calendar.parts.front().id;
        calendar.first_day.part = calendar.parts.front().id;
    }
}

void name_weekdays(Calendar& calendar, const std::vector<ListedName>& names) {
    calendar.weekdays.clear();
    for (const ListedName& name : names)
        if (calendar.weekdays.size() < CalendarLimits::list_max)
            calendar.weekdays.push_back(name.name);
    if (calendar.year_one_weekday >= static_cast<int>(calendar.weekdays.size()))
        calendar.year_one_weekday = 0;
}

void remove_part(Calendar& calendar, Id part) {
    const auto found =
        std::find_if(calendar.parts.begin(), calendar.parts.end(), [part](const YearPart& each) {
            return each.id == part;
        });
    if (found == calendar.parts.end()) return;
    const auto next = calendar.parts.erase(found);
    const bool wraps = next == calendar.parts.end();
    const Id heir = calendar.parts.empty() ? base::no_id
                    : wraps                ? calendar.parts.front().id
                                           : next->id;
    std::erase_if(calendar.leap_rules, [part](const LeapRule& rule) { return rule.part == part; });
    std::erase_if(calendar.holidays, [part](const Holiday& each) { return each.part == part; });
    const auto move_day = [&](YearDay& day) {
        if (day.part == part) day = {heir, 1, {}};
    };
    const auto move_date = [&](FullDate& date) {
        if (date.part == part) date = {date.year + (wraps ? 1 : 0), heir, 1, {}};
    };
    for (Season& season : calendar.seasons)
        move_day(season.start);
    for (Moon& moon : calendar.moons)
        move_date(moon.new_moon);
    move_day(calendar.midwinter);
    move_date(calendar.first_day);
}

void set_date_of_day(Calendar& calendar, std::int64_t day, const FullDate& date) {
    if (!has_dates(calendar)) return;
    calendar.first_day = date;
    const CalendarDate first = date_of(calendar, 2 - day);
    calendar.first_day = {first.year, calendar.parts[first.part].id, first.day, {}};
}

std::string calendar_summary(const Calendar& calendar) {
    std::string text;
    const auto add = [&text](std::size_t count, const std::string& one) {
        if (count == 0) return;
        text += (text.empty() ? "" : ", ") + std::to_string(count) + " " + one +
                (count == 1 ? "" : "s");
    };
    const auto months =
        std::count_if(calendar.parts.begin(), calendar.parts.end(), [](const YearPart& part) {
            return part.is_month;
        });
    std::size_t days = 0;
    for (const YearPart& part : calendar.parts)
        days += static_cast<std::size_t>(std::max(part.days, 0));
    add(static_cast<std::size_t>(months), "month");
    add(days, "day");
    if (days > 0) text += " a year";
    if (!calendar.weekdays.empty())
        text += ", a week of " + std::to_string(calendar.weekdays.size()) + " days";
    add(calendar.leap_rules.size(), "leap rule");
    add(calendar.seasons.size(), "season");
    add(calendar.moons.size(), "moon");
    add(calendar.holidays.size(), "holiday");
    return text;
}

std::string leap_rule_text(const LeapRule& rule) {
    std::string text;
    bool adds = true;
    for (const LeapStep& step : rule.steps) {
        const std::string every = step.every == 1 ? std::string("every year")
                                                  : "every " + std::to_string(step.every) +
                                                        (text.empty() ? " years" : "");
        text += (text.empty() ? "" : adds ? ", but " : ", not ") + every;
        adds = !adds;
    }
    return text;
}

} // namespace game
