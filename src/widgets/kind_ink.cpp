#include "widgets/kind_ink.h"

namespace widgets {

Ink ink_of_kind(game::Kind kind) {
    switch (kind) {
    case game::Kind::person: return Ink::person;
    case game::Kind::place: return Ink::place;
    case game::Kind::creature: return Ink::creature;
    case game::Kind::item: return Ink::item;
    case game::Kind::faction: return Ink::faction;
    }
    return Ink::text;
}

} // namespace widgets
