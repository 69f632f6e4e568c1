#include "store/campaign_values.h"

#include "store/campaign_fields.h"

namespace store {

template <class Part>
Json to_json(const Part& part, std::string_view left_out) {
    return write_object(part, left_out);
}

template <class Part>
Part from_json(const Json& value, Problems& problems, const std::string& pointer) {
    Part part;
    read_object(value, part, problems, pointer);
    return part;
}

#define TABLEWICK_PART(Part)                                                                       \
    template Json to_json<game::Part>(const game::Part&, std::string_view);                        \
    template game::Part from_json<game::Part>(const Json&, Problems&, const std::string&)

TABLEWICK_PART(About);
TABLEWICK_PART(Clock);
TABLEWICK_PART(Party);
TABLEWICK_PART(CreatureShelf);
TABLEWICK_PART(Preparation);
TABLEWICK_PART(Encounter);
TABLEWICK_PART(TableRolls);
TABLEWICK_PART(TableRoll);
TABLEWICK_PART(Register);
TABLEWICK_PART(RegisterEntry);
TABLEWICK_PART(NameBook);
TABLEWICK_PART(UsedName);
TABLEWICK_PART(Calendar);
TABLEWICK_PART(DayBook);
TABLEWICK_PART(DayPage);
TABLEWICK_PART(Places);
TABLEWICK_PART(Sessions);
TABLEWICK_PART(Session);
TABLEWICK_PART(Treasury);
TABLEWICK_PART(LedgerLine);
TABLEWICK_PART(TreasureItem);
TABLEWICK_PART(DiceRoll);
TABLEWICK_PART(OwnPages);
TABLEWICK_PART(OwnPage);
TABLEWICK_PART(History);
TABLEWICK_PART(HistoryLine);
TABLEWICK_PART(Combatant);
TABLEWICK_PART(Character);
TABLEWICK_PART(Creature);
TABLEWICK_PART(Campaign);

#undef TABLEWICK_PART

} // namespace store
