#include "print/day_words.h"

#include "base/unicode.h"
#include "game/calendar_dates.h"
#include "game/date_text.h"

#include <algorithm>

namespace print {

namespace {

constexpr std::string_view blank = "blank";

// So many of its letters; the whole where it has no more.
std::string first_letters(const std::string& word, std::size_t count) {
    std::string text;
    for (const std::string& letter : base::graphemes(word)) {
        if (count-- == 0) break;
        text += letter;
    }
    return text;
}

} // namespace

base::Result<AskedDay> day_asked_for(const PrintSource& source, const std::string& detail) {
    AskedDay asked{source.campaign.clock.day, false};
    std::string date = detail;
    if (date.substr(0, blank.size()) == blank) {
        asked.is_blank = true;
        const std::size_t behind = date.find_first_not_of(' ', blank.size());
        date = behind == std::string::npos ? std::string() : date.substr(behind);
    }
    if (date.empty()) return asked;
    const auto read = game::parse_date(source.campaign.calendar, date, source.campaign.clock.day);
    if (!read.ok()) return read.error();
    asked.day = read.value();
    return asked;
}

void append_line(std::string& text, const std::string& line) {
    if (line.empty()) return;
    if (!text.empty()) text += '\n';
    text += line;
}

std::string holidays_text(const game::Calendar& calendar, std::int64_t day) {
    std::string text;
    for (const std::size_t index : game::holidays_on(calendar, day))
        append_line(text, calendar.holidays[index].name);
    return text;
}

std::string moons_text(const game::Calendar& calendar, std::int64_t day) {
    std::string text;
    for (const game::Moon& moon : calendar.moons) {
        const game::MoonPhase phase = game::moon_phase(calendar, moon, day);
        if (phase == game::MoonPhase::full_moon || phase == game::MoonPhase::new_moon)
            append_line(text, moon.name + ": " + game::moon_phase_text(phase));
    }
    return text;
}

std::vector<std::string> weekday_letters(const game::Calendar& calendar) {
    std::vector<std::string> all;
    for (const std::string& name : calendar.weekdays) {
        const std::size_t length = base::graphemes(name).size();
        std::size_t letters = 1;
        const auto is_shared = [&] {
            const std::string start = first_letters(name, letters);
            return std::count_if(
                       calendar.weekdays.begin(),
                       calendar.weekdays.end(),
                       [&](const std::string& each) {
                           return first_letters(each, letters) == start;
                       }
                   ) > 1;
        };
        while (letters < length && is_shared())
            letters += 1;
        all.push_back(first_letters(name, letters));
    }
    return all;
}

} // namespace print
