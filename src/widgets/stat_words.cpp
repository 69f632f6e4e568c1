#include "widgets/stat_words.h"

#include <algorithm>
#include <cctype>

namespace widgets {

std::string plain_word(const std::string& key) {
    std::string word = key;
    std::replace(word.begin(), word.end(), '_', ' ');
    return word;
}

std::string opening_word(const std::string& key) {
    std::string word = plain_word(key);
    if (!word.empty())
        word.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(word.front())));
    return word;
}

std::string stat_words(const rules::Rulebook& rulebook, const std::string& key) {
    if (key.empty()) return "flat check";
    if (key == "perception") return "Perception";
    const rules::StatName* stat = rules::find_stat(rulebook, key);
    return stat == nullptr ? plain_word(key) : stat->name;
}

std::string applies_to_words(const rules::Rulebook& rulebook, const std::string& word) {
    if (word == "ac") return "AC";
    if (word == "all_checks") return "every check";
    if (word == "all_saves") return "every save";
    if (word == "skills") return "every skill";
    if (word == "all_dcs") return "every DC";
    if (word == "attack") return "every attack";
    if (word == "spell_dc") return "spell DC";
    if (word == "class_dc") return "class DC";
    return stat_words(rulebook, word);
}

const char* bonus_type_words(rules::BonusType type) {
    switch (type) {
    case rules::BonusType::untyped: return "untyped";
    case rules::BonusType::circumstance: return "circumstance";
    case rules::BonusType::item: return "item";
    case rules::BonusType::status: return "status";
    }
    return "untyped";
}

std::string speed_words(const std::string& kind) {
    return kind == "land" ? std::string("speed") : plain_word(kind) + " speed";
}

} // namespace widgets
