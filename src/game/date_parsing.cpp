// Dates that people type.
#include "base/unicode.h"
#include "game/calendar_dates.h"
#include "game/date_text.h"

#include <algorithm>
#include <charconv>
#include <utility>
#include <vector>

namespace game {

namespace {

using base::Error;
using base::ErrorKind;
using Found = base::Result<std::int64_t>;

struct Token {
    std::string text;   // as typed
    std::string folded; // for comparing
};

Error not_understood() {
    return {
        ErrorKind::bad_text,
        R"(This is no date; type for instance "+10", "day 40", or day, month and year.)"};
}

Error too_far() {
    return {ErrorKind::out_of_range, "That is too far away."};
}

std::vector<Token> tokens_of(std::string_view text) {
    std::vector<Token> tokens;
    std::string word;
    const auto finish = [&] {
        if (!word.empty()) tokens.push_back({word, base::folded(word)});
        word.clear();
    };
    for (const char letter : text) {
        if (letter == ' ' || letter == ',' || letter == '\t' || letter == '\n')
            finish();
        else
            word += letter;
    }
    finish();
    return tokens;
}

// A whole number, a sign allowed; "12." and "12th" are numbers too.
std::optional<std::int64_t> number_in(std::string_view text) {
    if (text.empty()) return {};
    if (text.front() == '+') text.remove_prefix(1);
    if (text.empty() || text.front() == '+') return {};
    std::int64_t number = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    if (error != std::errc()) return {};
    const std::string_view rest(stop, static_cast<std::size_t>(end - stop));
    const bool is_number =
        rest.empty() || rest == "." || rest == "st" || rest == "nd" || rest == "rd" || rest == "th";
    return is_number ? std::optional(number) : std::nullopt;
}

Found within_reach(std::int64_t day) {
    if (day < -CalendarLimits::day_max || day > CalendarLimits::day_max) return too_far();
    return day;
}

// "+10", "-3 weeks": counted from `today`.
Found moved(
    const Calendar& calendar, std::int64_t today, std::int64_t count, std::string_view unit
) {
    if (count < -CalendarLimits::day_max || count > CalendarLimits::day_max) return too_far();
    const auto is = [&](std::string_view one) {
        return unit == one || unit == std::string(one) + "s";
    };
    if (unit.empty() || is("day")) return within_reach(today + count);
    const bool is_far = count < -CalendarLimits::year_max || count > CalendarLimits::year_max;
    if (is("week")) {
        if (calendar.weekdays.empty())
            return Error{ErrorKind::not_possible, "This calendar has no weeks."};
        if (is_far) return too_far();
        return within_reach(today + count * static_cast<std::int64_t>(calendar.weekdays.size()));
    }
    if (!is("month") && !is("year")) return not_understood();
    if (!has_dates(calendar))
        return Error{ErrorKind::not_possible, "Without a calendar there are only days."};
    if (is_far) return too_far();
    return within_reach(
        is("month") ? add_months(calendar, today, count) : add_years(calendar, today, count)
    );
}

Found day_on(const Calendar& calendar, const CalendarDate& date) {
    if (date.year < -CalendarLimits::year_max || date.year > CalendarLimits::year_max)
        return too_far();
    const int length = part_length(calendar, date.part, date.year);
    const std::string& name = calendar.parts[date.part].name;
    const std::string year = year_text(calendar, date.year);
    if (length == 0) return Error{ErrorKind::out_of_range, year + " has no " + name + "."};
    if (date.day < 1 || date.day > length)
        return Error{
            ErrorKind::out_of_range,
            name + " " + year + " has " + std::to_string(length) +
                (length == 1 ? " day." : " days.")};
    return within_reach(day_of(calendar, date));
}

// A day as it was typed; what no calendar has becomes 0 and is refused with the rest.
int day_number(std::int64_t typed) {
    constexpr std::int64_t most = CalendarLimits::part_days_max + CalendarLimits::leap_days_max + 1;
    return typed < 1 || typed > most ? 0 : static_cast<int>(typed);
}

std::int64_t plain_year(const Calendar& calendar, std::int64_t typed, std::int64_t today) {
    const std::int64_t clamped =
        std::clamp(typed, -2 * CalendarLimits::year_max, 2 * CalendarLimits::year_max);
    const auto era = era_index(calendar, date_of(calendar, today).year);
    return typed < 1 || !era ? clamped : year_of_era(calendar.eras[*era], clamped);
}

// "12.3.1204", "12.3."
std::optional<Found>
dotted_date(const Calendar& calendar, std::string_view text, std::int64_t today) {
    std::vector<std::int64_t> numbers;
    while (!text.empty()) {
        const std::size_t dot = std::min(text.find('.'), text.size());
        std::int64_t number = 0;
        const auto [stop, error] = std::from_chars(text.data(), text.data() + dot, number);
        if (error != std::errc() || stop != text.data() + dot) return {};
        numbers.push_back(number);
        text.remove_prefix(std::min(dot + 1, text.size()));
    }
    if (numbers.size() < 2 || numbers.size() > 3) return {};
    for (std::size_t part = 0; part < calendar.parts.size(); ++part) {
        if (!calendar.parts[part].is_month || month_number(calendar, part) != numbers[1]) continue;
        const std::int64_t year = numbers.size() == 3 ? plain_year(calendar, numbers[2], today)
                                                      : date_of(calendar, today).year;
        return day_on(calendar, {year, part, day_number(numbers[0])});
    }
    return Error{
        ErrorKind::not_found, "There is no month number " + std::to_string(numbers[1]) + "."};
}

// A name of the year among the words: these words are the part with this index.
struct NamedPart {
    std::size_t first = 0;
    std::size_t count = 0;
    std::size_t part = 0;
    bool is_exact = false;
    bool is_ambiguous = false;
};

std::string joined(const std::vector<Token>& tokens, std::size_t first, std::size_t count) {
    std::string text;
    for (std::size_t i = first; i < first + count; ++i)
        text += (i == first ? "" : " ") + tokens[i].folded;
    return text;
}

// Whole names before shortened ones, and longer ones before shorter ones.
std::optional<NamedPart> find_part(const Calendar& calendar, const std::vector<Token>& tokens) {
    std::optional<NamedPart> best;
    const auto is_better = [&](const NamedPart& one) {
        return !best || std::pair(one.is_exact, one.count) > std::pair(best->is_exact, best->count);
    };
    for (std::size_t first = 0; first < tokens.size(); ++first) {
        for (std::size_t count = 1; first + count <= tokens.size(); ++count) {
            const std::string run = joined(tokens, first, count);
            const bool may_be_short = !number_in(tokens[first].folded) && run != "of";
            std::vector<std::size_t> shortened;
            for (std::size_t part = 0; part < calendar.parts.size(); ++part) {
                const std::string name = base::folded(calendar.parts[part].name);
                if (name == run) {
                    const NamedPart found{first, count, part, true, false};
                    if (is_better(found)) best = found;
                } else if (may_be_short && name.compare(0, run.size(), run) == 0) {
                    shortened.push_back(part);
                }
            }
            if (shortened.empty()) continue;
            const NamedPart found{first, count, shortened[0], false, shortened.size() > 1};
            if (is_better(found)) best = found;
        }
    }
    return best;
}

bool is_weekday(const Calendar& calendar, const std::string& folded) {
    return std::any_of(
        calendar.weekdays.begin(),
        calendar.weekdays.end(),
        [&](const std::string& weekday) {
            return base::folded(weekday).compare(0, folded.size(), folded) == 0;
        }
    );
}

// "1204", "1204 AE", "1204 after the embankment"; nothing: not understood.
std::optional<std::int64_t>
typed_year(const Calendar& calendar, const std::vector<Token>& tokens, std::int64_t today) {
    if (tokens.empty()) return date_of(calendar, today).year;
    const auto number = number_in(tokens[0].folded);
    if (!number) return {};
    if (tokens.size() == 1) return plain_year(calendar, *number, today);
    const std::string called = joined(tokens, 1, tokens.size() - 1);
    for (const Era& era : calendar.eras)
        if (called == base::folded(era.abbreviation) || called == base::folded(era.name))
            return year_of_era(
                era, std::clamp<std::int64_t>(*number, 1, 2 * CalendarLimits::year_max)
            );
    return {};
}

Found named_date(const Calendar& calendar, const std::vector<Token>& tokens, std::int64_t today) {
    const auto named = find_part(calendar, tokens);
    if (!named) {
        const auto word = std::find_if(tokens.begin(), tokens.end(), [&](const Token& token) {
            return std::string_view("0123456789+-").find(token.text[0]) == std::string_view::npos;
        });
        if (word == tokens.end()) return not_understood();
        return Error{ErrorKind::not_found, "No part of the year is called \"" + word->text + "\"."};
    }
    if (named->is_ambiguous)
        return Error{
            ErrorKind::not_found,
            "Several parts of the year begin with \"" + tokens[named->first].text + "\"."};
    std::optional<std::int64_t> day;
    for (std::size_t i = 0; i < named->first; ++i) {
        const std::string& word = tokens[i].folded;
        if (const auto number = number_in(word); number && !day)
            day = number;
        else if (word != "of" && word != "the" && (day || !is_weekday(calendar, word)))
            return not_understood();
    }
    const auto behind = static_cast<std::ptrdiff_t>(named->first + named->count);
    std::vector<Token> rest(tokens.begin() + behind, tokens.end());
    if (!day && !rest.empty()) {
        // A number that can be a day of this part is one, if no other number is there to be it.
        const auto number = number_in(rest[0].folded);
        if (!number) return not_understood();
        const bool has_year = rest.size() > 1 && number_in(rest[1].folded);
        const bool can_be_day = rest.size() == 1 && *number > 0 &&
                                longest_part(calendar, named->part) > 1 &&
                                *number <= longest_part(calendar, named->part);
        if (has_year || can_be_day) {
            day = number;
            rest.erase(rest.begin());
        }
    }
    const auto year = typed_year(calendar, rest, today);
    if (!year) return not_understood();
    return day_on(calendar, {*year, named->part, day_number(day.value_or(1))});
}

} // namespace

Found parse_date(const Calendar& calendar, std::string_view text, std::int64_t today) {
    std::vector<Token> tokens = tokens_of(text);
    if (tokens.empty()) return not_understood();
    if (tokens[0].folded == "today" || tokens[0].folded == "tomorrow" ||
        tokens[0].folded == "yesterday") {
        today += tokens[0].folded == "tomorrow" ? 1 : 0;
        today -= tokens[0].folded == "yesterday" ? 1 : 0;
        tokens.erase(tokens.begin());
        if (tokens.empty()) return within_reach(today);
        if (tokens[0].text[0] != '+' && tokens[0].text[0] != '-') return not_understood();
    }
    const auto number = number_in(tokens[0].folded);
    if (tokens[0].text[0] == '+' || tokens[0].text[0] == '-') {
        if (!number || tokens.size() > 2) return not_understood();
        return moved(calendar, today, *number, tokens.size() == 2 ? tokens[1].folded : "");
    }
    if (tokens[0].folded == "day" && tokens.size() == 2)
        if (const auto day = number_in(tokens[1].folded)) return within_reach(*day);
    if (!has_dates(calendar)) {
        if (number && tokens.size() == 1) return within_reach(*number);
        return not_understood();
    }
    if (tokens.size() == 1) {
        if (const auto dotted = dotted_date(calendar, tokens[0].folded, today)) return *dotted;
        if (number) {
            CalendarDate date = date_of(calendar, today);
            date.day = day_number(*number);
            return day_on(calendar, date);
        }
    }
    return named_date(calendar, tokens, today);
}

base::Result<int> parse_time_of_day(std::string_view text) {
    const Error wrong{ErrorKind::bad_text, "Type a time of day such as \"16:30\"."};
    const std::vector<Token> tokens = tokens_of(text);
    if (tokens.size() != 1) return wrong;
    const std::string_view typed = tokens[0].text;
    const std::size_t colon = std::min(typed.find(':'), typed.size());
    int hour = 0;
    int minute = 0;
    const auto read = [](std::string_view part, int& number) {
        const char* const end = part.data() + part.size();
        const auto [stop, error] = std::from_chars(part.data(), end, number);
        return error == std::errc() && stop == end && part.size() <= 2;
    };
    if (!read(typed.substr(0, colon), hour)) return wrong;
    if (colon < typed.size() && !read(typed.substr(colon + 1), minute)) return wrong;
    constexpr int hours_a_day = 24;
    constexpr int minutes_an_hour = 60;
    if (hour < 0 || hour >= hours_a_day || minute < 0 || minute >= minutes_an_hour) return wrong;
    return (hour * minutes_an_hour + minute) * minutes_an_hour;
}

} // namespace game
