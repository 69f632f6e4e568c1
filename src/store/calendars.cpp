#include "store/calendars.h"

#include "game/calendar_editing.h"
#include "store/calendar_fields.h"
#include "store/campaign_check.h"
#include "store/json_place.h"
#include "store/json_text.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <utility>

namespace store {

namespace {

using base::Error;
using base::ErrorKind;

constexpr const char* remedy = "Correct it there, or put the original file back.";

// Keys that nobody knows are slips of the pen in a file that only people write.
template <class Part>
void refuse_unknown(const Part& part, const std::string& pointer, Problems& problems) {
    for (const auto& [key, ignored] : part.unknown)
        problems.add(
            ErrorKind::wrong_format,
            pointer + pointer_step(key),
            "A calendar has no \"" + key + "\"."
        );
}

template <class List>
void refuse_unknown_in(const List& list, const std::string& pointer, Problems& problems) {
    for (std::size_t i = 0; i < list.size(); ++i)
        refuse_unknown(list[i], pointer + pointer_step(i), problems);
}

void check_unknown(const game::Calendar& calendar, Problems& problems) {
    refuse_unknown(calendar, "", problems);
    refuse_unknown_in(calendar.parts, "/parts", problems);
    refuse_unknown_in(calendar.leap_rules, "/leap_rules", problems);
    refuse_unknown_in(calendar.seasons, "/seasons", problems);
    refuse_unknown_in(calendar.moons, "/moons", problems);
    refuse_unknown_in(calendar.holidays, "/holidays", problems);
    refuse_unknown_in(calendar.eras, "/eras", problems);
}

void check_parts(const game::Calendar& calendar, Problems& problems) {
    const auto look_up = [&](base::Id part, const std::string& pointer) {
        const bool is_there =
            std::any_of(calendar.parts.begin(), calendar.parts.end(), [part](const auto& each) {
                return each.id == part;
            });
        if (part != base::no_id && !is_there)
            problems.add(
                ErrorKind::dangling_reference,
                pointer,
                "The id of one of the parts is needed here, not " + std::to_string(part) + "."
            );
    };
    for (std::size_t i = 0; i < calendar.leap_rules.size(); ++i)
        look_up(calendar.leap_rules[i].part, "/leap_rules" + pointer_step(i) + "/part");
    for (std::size_t i = 0; i < calendar.seasons.size(); ++i)
        look_up(calendar.seasons[i].start.part, "/seasons" + pointer_step(i) + "/start/part");
    for (std::size_t i = 0; i < calendar.moons.size(); ++i)
        look_up(calendar.moons[i].new_moon.part, "/moons" + pointer_step(i) + "/new_moon/part");
    for (std::size_t i = 0; i < calendar.holidays.size(); ++i)
        look_up(calendar.holidays[i].part, "/holidays" + pointer_step(i) + "/part");
    look_up(calendar.midwinter.part, "/midwinter/part");
    look_up(calendar.first_day.part, "/first_day/part");
}

Error first_of(const Problems& problems, std::string_view text, const std::string& file_name) {
    Error error = problems.errors().front();
    error.place = place_of_pointer(text, error.place.pointer);
    error.place.file = file_name;
    error.remedy = remedy;
    return error;
}

} // namespace

base::Result<game::Calendar> read_calendar(std::string_view text, const std::string& file_name) {
    base::Result<Json> parsed = parse_json(text, file_name);
    if (!parsed.ok()) return parsed.error();
    Json& value = parsed.value();
    if (!value.is_object() || value.value("format", Json()) != "tablewick-calendar")
        return Error{
            ErrorKind::wrong_format,
            R"(This is not a calendar: its "format" must be "tablewick-calendar".)",
            {file_name, 1, 1, {}},
            remedy};
    for (const char* key : {"format", "about"})
        value.erase(key);
    game::Calendar calendar;
    Problems problems;
    read_object(value, calendar, problems, "");
    check_unknown(calendar, problems);
    check_calendar_ids(calendar, "", problems);
    check_parts(calendar, problems);
    if (problems.empty())
        for (const std::string& wrong : game::calendar_problems(calendar))
            problems.add(ErrorKind::out_of_range, "", wrong);
    if (calendar.name.empty())
        problems.add(ErrorKind::missing_field, "", "A ready calendar needs a name.");
    if (!problems.empty()) return first_of(problems, text, file_name);
    keep_calendar_ids_fresh(calendar);
    return calendar;
}

ReadyCalendars load_calendars(const std::filesystem::path& assets_folder) {
    ReadyCalendars ready;
    std::vector<std::filesystem::path> files;
    std::error_code code;
    for (const auto& entry : std::filesystem::directory_iterator(assets_folder / "calendars", code))
        if (entry.path().extension() == ".json") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    for (const std::filesystem::path& file : files) {
        std::ifstream stream(file, std::ios::binary);
        const std::string text(std::istreambuf_iterator<char>(stream), {});
        auto calendar = read_calendar(text, file.string());
        if (calendar.ok())
            ready.calendars.push_back(std::move(calendar).value());
        else
            ready.errors.push_back(calendar.error());
    }
    return ready;
}

} // namespace store
