#include "store/rulebook_json.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <functional>
#include <set>
#include <unistd.h>

namespace {

using nlohmann::json;

std::string assets() {
    return std::string(TABLEWICK_SOURCE_DIR) + "/assets";
}

json tables(const char* name) {
    std::ifstream stream(assets() + "/rules/" + name);
    return json::parse(stream);
}

std::string complaint(const json& changed, rules::SrdEdition edition = rules::SrdEdition::srd_5_1) {
    const auto rulebook = store::read_rulebook(changed, "house.json", edition);
    return rulebook.ok() ? std::string("none") : base::to_text(rulebook.error());
}

// A folder of its own with a rulebook in it, gone at the end.
struct RulesFolder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("tablewick_rules_" + std::to_string(getpid()));

    explicit RulesFolder(const std::string& text) {
        std::filesystem::create_directories(path / "rules");
        std::ofstream(path / "rules" / "four_degree.json") << text;
    }

    ~RulesFolder() { std::filesystem::remove_all(path); }

    RulesFolder(const RulesFolder&) = delete;
    RulesFolder& operator=(const RulesFolder&) = delete;

    base::Error error() const {
        const auto rulebook =
            store::load_rulebook(path, rules::Family::four_degree, rules::SrdEdition::srd_5_1);
        REQUIRE_FALSE(rulebook.ok());
        return rulebook.error();
    }
};

// One slip of the pen, and what is said about it.
struct Slip {
    std::function<void(json&)> make;
    std::string place;
    std::string needed;
};

} // namespace

TEST_CASE("rulebook: both families and editions load, with every published condition") {
    // Player Core (ORC), conditions: 42 entries; SRD 5.1, Appendix PH-A, and SRD 5.2.1, Rules
    // Glossary: 15.
    const auto four =
        store::load_rulebook(assets(), rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    REQUIRE(four.ok());
    CHECK(four.value().conditions.size() == 42);
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const auto srd = store::load_rulebook(assets(), rules::Family::srd5, edition);
        REQUIRE(srd.ok());
        CHECK(srd.value().conditions.size() == 15);
        CHECK(srd.value().edition == edition);
        CHECK(srd.value().saves.size() == 6);
    }
}

TEST_CASE("rulebook: the figures of turns and of dying, against the published ones") {
    const auto loaded =
        store::load_rulebook(assets(), rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    REQUIRE(loaded.ok());
    // Player Core (ORC), encounter mode (from memory), and Multiple Attack Penalty.
    const rules::TurnRules& turn = loaded.value().turn;
    CHECK(turn.actions == 3);
    CHECK(turn.reactions == 1);
    CHECK(turn.round_seconds == 6);
    CHECK(turn.has_delay);
    CHECK(turn.opponents_win_ties);
    CHECK(turn.initiative_stat == "perception");
    CHECK(turn.attack_penalty == std::vector<int>{0, -5, -10});
    CHECK(turn.agile_attack_penalty == std::vector<int>{0, -4, -8});
    // Player Core (ORC), Hit Points, Healing, and Dying; massive damage from memory.
    rules::DyingRules dying;
    dying.gained = 1;
    dying.gained_on_critical = 2;
    dying.death_at = 4;
    dying.damage_adds = 1;
    dying.critical_damage_adds = 2;
    dying.recovery_dc_base = 10;
    dying.recovery_critical_success = -2;
    dying.recovery_success = -1;
    dying.recovery_failure = 1;
    dying.recovery_critical_failure = 2;
    dying.wounded_gained = 1;
    dying.massive_damage_factor = 2;
    dying.persistent_flat_dc = 15;
    dying.persistent_helped_dc = 10;
    CHECK(loaded.value().dying == dying);
    CHECK_FALSE(loaded.value().damage.halves_and_doubles);
}

TEST_CASE("rulebook: the figures of srd5 turns, death saves and concentration, both editions") {
    // SRD 5.1, Combat / Dropping to 0 Hit Points, Spellcasting / Duration; SRD 5.2.1, Playing the
    // Game / Damage and Healing, Rules Glossary / Concentration (DC at most 30).
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const auto loaded = store::load_rulebook(assets(), rules::Family::srd5, edition);
        REQUIRE(loaded.ok());
        CHECK(loaded.value().turn.actions == 1);
        CHECK_FALSE(loaded.value().turn.has_delay);
        CHECK(loaded.value().turn.initiative_stat == "dex");
        CHECK(loaded.value().turn.attack_penalty.empty());
        CHECK(loaded.value().damage.halves_and_doubles);
        CHECK(loaded.value().damage.types.size() == 13); // SRD 5.1, Combat / Damage Types
        const rules::DeathSaveRules& saves = loaded.value().death_saves;
        CHECK(saves.dc == 10);
        CHECK(saves.successes_to_stable == 3);
        CHECK(saves.failures_to_death == 3);
        CHECK(saves.natural_1_failures == 2);
        CHECK(saves.natural_20_hp == 1);
        CHECK(saves.damage_failures == 1);
        CHECK(saves.critical_failures == 2);
        CHECK(saves.concentration_dc_min == 10);
        CHECK(saves.concentration_damage_divisor == 2);
        CHECK(saves.concentration_dc_max == (edition == rules::SrdEdition::srd_5_1 ? 0 : 30));
        CHECK(saves.opponents_die_at_zero);
    }
}

TEST_CASE("rulebook: how conditions fade by themselves and overnight") {
    // Player Core (ORC), conditions, and Rest and Daily Preparations; SRD 5.1 and 5.2.1,
    // Exhaustion.
    const auto four =
        store::load_rulebook(assets(), rules::Family::four_degree, rules::SrdEdition::srd_5_1);
    REQUIRE(four.ok());
    const auto rule = [&](const char* key) { return *rules::find_condition(four.value(), key); };
    CHECK(rule("frightened").fading == rules::Fading::drops_at_turn_end);
    CHECK(rule("dying").fading == rules::Fading::recovery_check);
    CHECK(rule("persistent_damage").fading == rules::Fading::persistent_damage);
    CHECK(rule("stunned").fading == rules::Fading::lost_with_actions);
    CHECK(rule("doomed").night_rest == -1);
    CHECK(rule("drained").night_rest == -1);
    CHECK(rule("fatigued").night_rest_ends);
    CHECK(rule("sickened").save_lowers_value);
    int fading = 0;
    int resting = 0;
    std::set<std::string> valued;
    for (const rules::ConditionRule& each : four.value().conditions) {
        fading += each.fading == rules::Fading::stays ? 0 : 1;
        resting += each.night_rest != 0 || each.night_rest_ends ? 1 : 0;
        if (each.has_value) valued.insert(each.key);
    }
    CHECK(fading == 4);
    CHECK(resting == 3);
    CHECK(
        valued ==
        std::set<std::string>{
            "clumsy",
            "doomed",
            "drained",
            "dying",
            "enfeebled",
            "frightened",
            "sickened",
            "slowed",
            "stunned",
            "stupefied",
            "wounded"}
    );
    for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
        const auto srd = store::load_rulebook(assets(), rules::Family::srd5, edition);
        REQUIRE(srd.ok());
        CHECK(rules::find_condition(srd.value(), "exhaustion")->night_rest == -1);
        CHECK(rules::find_condition(srd.value(), "exhaustion")->max_value == 6);
    }
}

TEST_CASE("rulebook: every condition says in one line what it is, and no table lacks its source") {
    for (const char* name : {"four_degree.json", "srd5.json"}) {
        const json book = tables(name);
        for (const auto& entry : book.items()) {
            const std::string key = entry.key();
            const json& table = entry.value();
            CAPTURE(key);
            if (!table.is_object()) continue;
            CHECK(table.contains("source"));
            CHECK(table.contains("verified"));
        }
    }
    for (const auto family : {rules::Family::four_degree, rules::Family::srd5}) {
        for (const auto edition : {rules::SrdEdition::srd_5_1, rules::SrdEdition::srd_5_2_1}) {
            const auto book = store::load_rulebook(assets(), family, edition);
            REQUIRE(book.ok());
            for (const rules::ConditionRule& rule : book.value().conditions) {
                CAPTURE(rule.key);
                CHECK(rule.summary.size() > 10);
                CHECK(rule.summary.size() <= 110); // one line of the condition picker
                CHECK(rule.summary.find('\n') == std::string::npos);
                CHECK(rule.name.find('_') == std::string::npos);
                CHECK_FALSE(rule.group.empty());
            }
        }
    }
}

TEST_CASE("rulebook: a wrong table is refused in full words") {
    json changed = tables("four_degree.json");
    CHECK(complaint(changed) == "none");
    changed["turn"]["actions"] = "three";
    CHECK(
        complaint(changed) ==
        "house.json (/turn/actions): The rulebook is not as expected here: a whole number is "
        "needed, not \"three\". Correct it there, or put the original file back."
    );
}

TEST_CASE("rulebook: each slip of the pen is named with its place and what is needed") {
    const std::vector<Slip> slips = {
        {[](json& b) { b["format"] = "other"; }, "/format", "\"tablewick-rulebook\" is needed"},
        {[](json& b) { b["family"] = "five"; }, "/family", "one of four_degree, srd5 is needed"},
        {[](json& b) { b.erase("turn"); }, "", "a key \"turn\" is needed"},
        {[](json& b) { b["turn"]["round_seconds"] = 0; }, "/turn/round_seconds", "from 1 to 3600"},
        {[](json& b) { b["turn"]["actions"] = 1.5; }, "/turn/actions", "a whole number"},
        {[](json& b) { b["turn"]["actions"] = 18446744073709551615ULL; },
         "/turn/actions",
         "a whole number from 1 to 9"},
        {[](json& b) { b["turn"]["has_delay"] = 1; }, "/turn/has_delay", "true or false"},
        {[](json& b) { b["turn"]["initiative_stat"] = "luck"; },
         "/turn/initiative_stat",
         "perception or the key of a skill or ability"},
        {[](json& b) { b["turn"]["attack_penalty"][1] = 5; },
         "/turn/attack_penalty/1",
         "from -100 to 0"},
        {[](json& b) { b["dying"].erase("death_at"); }, "/dying", "a key \"death_at\""},
        {[](json& b) { b["damage"]["types"].push_back("fire"); },
         "/damage/types/20",
         "a type that stands once"},
        {[](json& b) { b["damage"]["types"] = "fire"; }, "/damage/types", "a list"},
        {[](json& b) { b["saves"][0]["ability"] = "vim"; },
         "/saves/0/ability",
         "the key of an ability"},
        {[](json& b) { b["saves"][0]["brief"] = "Fortitude"; }, "/saves/0/brief", "five letters"},
        {[](json& b) { b["skills"][1]["key"] = "acrobatics"; },
         "/skills/1/key",
         "a key that stands once"},
        {[](json& b) { b["skills"] = json::array(); }, "/skills", "at least one entry"},
        {[](json& b) { b["conditions"] = 7; }, "/conditions", "an object"},
        {[](json& b) { b["conditions"]["list"][0]["key"] = "Off Guard"; },
         "/conditions/list/0/key",
         "small letters"},
        {[](json& b) { b["conditions"]["list"][0]["summary"] = ""; },
         "/conditions/list/0/summary",
         "not empty"},
        {[](json& b) { b["conditions"]["list"][1]["key"] = "blinded"; },
         "/conditions/list/1/key",
         "a key that stands once"},
        {[](json& b) { b["conditions"]["list"][0]["sumary"] = "x"; },
         "/conditions/list/0/sumary",
         "one of the keys key, name"},
        {[](json& b) { b["conditions"]["list"][0]["fading"] = "slowly"; },
         "/conditions/list/0/fading",
         "one of stays, drops_at_turn_end"},
        {[](json& b) { b["conditions"]["list"][0]["fading"] = "drops_at_turn_end"; },
         "/conditions/list/0/fading",
         "\"has_value\": true"},
        {[](json& b) { b["conditions"]["list"][0]["night_rest"] = -1; },
         "/conditions/list/0/night_rest",
         "\"has_value\": true"},
        {[](json& b) { b["conditions"]["list"][0]["editions"] = json::object(); },
         "/conditions/list/0/editions",
         "only srd5 has editions"},
    };
    for (const Slip& slip : slips) {
        json book = tables("four_degree.json");
        slip.make(book);
        const std::string said = complaint(book);
        CAPTURE(said);
        const std::string place = slip.place.empty() ? "house.json: " : "(" + slip.place + "): ";
        CHECK(said.find(place) != std::string::npos);
        CHECK(said.find(slip.needed) != std::string::npos);
    }
    CHECK(complaint(json::array()) != "none");
    CHECK(complaint(json()) != "none");
}

TEST_CASE("rulebook: what differs by edition is read from its own part") {
    json book = tables("srd5.json");
    CHECK(complaint(book) == "none");
    book["death_saves"]["concentration_dc_max"].erase("srd_5_2_1");
    CHECK(complaint(book) == "none");
    const std::string said = complaint(book, rules::SrdEdition::srd_5_2_1);
    CHECK(said.find("(/death_saves/concentration_dc_max)") != std::string::npos);
    CHECK(said.find("a key \"srd_5_2_1\" is needed") != std::string::npos);
}

TEST_CASE("rulebook: tables of other kinds may stand beside those that are read") {
    json book = tables("four_degree.json");
    book["prices"] = {{"source", "house rule"}, {"rope", 5}};
    CHECK(complaint(book) == "none");
}

TEST_CASE("rulebook: a file that is wrong is named with line and column") {
    json book = tables("four_degree.json");
    book["turn"]["actions"] = "three";
    const RulesFolder folder(book.dump(2));
    const base::Error wrong = folder.error();
    CHECK(wrong.place.pointer == "/turn/actions");
    CHECK(wrong.place.line > 1);
    CHECK(wrong.place.column > 1);
    const RulesFolder broken("{\n  \"format\": \"tablewick-rulebook\",\n  \"family\" \"srd5\"\n}\n"
    );
    CHECK(broken.error().kind == base::ErrorKind::not_json);
    CHECK(broken.error().place.line == 3);
    const RulesFolder empty("");
    CHECK(empty.error().kind == base::ErrorKind::not_json);
    json other = tables("srd5.json");
    const RulesFolder swapped(other.dump(2));
    CHECK(swapped.error().kind == base::ErrorKind::wrong_format);
    CHECK(swapped.error().place.pointer == "/family");
}

TEST_CASE("rulebook: a missing file says so") {
    const auto book =
        store::load_rulebook("/nowhere", rules::Family::srd5, rules::SrdEdition::srd_5_1);
    REQUIRE_FALSE(book.ok());
    CHECK(book.error().kind == base::ErrorKind::not_found);
}

TEST_CASE("rulebook: whatever is cut out of it or put in, it is refused or read, never a crash") {
    // Every value of the tables in turn is replaced by something of another kind.
    const json book = tables("srd5.json");
    const std::vector<json> odd = {json(), json(-7), json("x y"), json::array(), json::object()};
    std::size_t turn = 0;
    int refused = 0;
    const json flat = book.flatten();
    for (const auto& [pointer, ignored] : flat.items()) {
        json changed = book;
        changed[json::json_pointer(pointer)] = odd[turn++ % odd.size()];
        const auto read = store::read_rulebook(changed, "house.json", rules::SrdEdition::srd_5_2_1);
        if (read.ok()) continue;
        refused += 1;
        CHECK(read.error().message.find("is needed") != std::string::npos);
    }
    CHECK(turn > 400);
    CHECK(refused > 300); // the rest stands where another edition or a word of the GM's own stands
}
