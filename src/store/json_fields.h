// One description of a struct serves reading it from JSON and writing it: see campaign_fields.h.
//
//   template <class Fields>
//   void describe(Fields& fields, Described<game::Attack>) {
//       fields.text("name", &game::Attack::name, name_limit, Presence::required);
//       fields.whole("bonus", &game::Attack::bonus, {-30, 99});
//       fields.unknown(&game::Attack::unknown);
//   }
//
// Reading collects every problem instead of stopping at the first; a missing optional key keeps the
// struct's default; keys nobody described go to the struct's unknown fields and are written back.
#pragma once

#include "base/id.h"
#include "base/result.h"
#include "base/unknown_fields.h"
#include "store/enum_words.h"
#include "store/json.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace store {

template <class T>
struct Described {};

// optional: left out when it is the default. shown: always written, may be missing.
// required: always written, must be there.
enum class Presence { optional, shown, required };

struct Whole {
    std::int64_t min = 0;
    std::int64_t max = 0;
};

// What is wrong in a file, first to last. Line and column are found later, from the pointer.
class Problems {
public:
    static constexpr std::size_t kept = 100; // more help nobody

    void add(base::ErrorKind kind, std::string pointer, std::string message);

    bool empty() const { return errors_.empty(); }

    const std::vector<base::Error>& errors() const { return errors_; }

private:
    std::vector<base::Error> errors_;
};

// "hit_points" as people read it: "Hit points".
std::string spoken(std::string_view key);

// Reads the values of one JSON object; what is not as it should be becomes a problem and reads as
// nothing.
class ObjectReader {
public:
    ObjectReader(const Json& value, Problems& problems, std::string pointer);

    const Json* find(std::string_view key, Presence presence);
    std::optional<std::int64_t> whole(std::string_view key, const Json& value, Whole range);
    std::optional<double> number(std::string_view key, const Json& value, double min, double max);
    std::optional<bool> flag(std::string_view key, const Json& value);
    std::optional<std::string> text(std::string_view key, const Json& value, std::size_t bytes_max);
    bool is_list(std::string_view key, const Json& value);
    bool is_map(std::string_view key, const Json& value);
    std::optional<base::Id> map_id(std::string_view key, const std::string& word);
    void unknown_word(std::string_view key, const std::string& choices);
    base::UnknownFields left_over() const; // sorted by key

    Problems& problems() { return problems_; }

    std::string pointer_to(std::string_view key) const { return pointer_ + pointer_step(key); }

    // While one element of a list or map is read, problems point at it.
    void enter(std::string_view key, const std::string& step) { inner_ = pointer_to(key) + step; }

    void leave() { inner_.clear(); }

private:
    void problem(base::ErrorKind kind, std::string_view key, const std::string& text);

    const Json& value_;
    Problems& problems_;
    std::string pointer_;
    std::string inner_;
    std::vector<std::string_view> described_;
};

template <class T>
void read_object(const Json& value, T& target, Problems& problems, const std::string& pointer);

template <class T>
class FieldReader {
public:
    FieldReader(const Json& value, T& target, Problems& problems, std::string pointer)
        : reader_(value, problems, std::move(pointer)), target_(target) {}

    template <class Int>
    void whole(
        std::string_view key, Int T::*member, Whole range, Presence presence = Presence::optional
    ) {
        if (const Json* value = reader_.find(key, presence))
            if (const auto read = reader_.whole(key, *value, range))
                target_.*member = static_cast<Int>(*read);
    }

    void whole(std::string_view key, std::optional<int> T::*member, Whole range) {
        if (const Json* value = reader_.find(key, Presence::optional))
            if (const auto read = reader_.whole(key, *value, range))
                target_.*member = static_cast<int>(*read);
    }

    void number(std::string_view key, double T::*member, double min, double max) {
        if (const Json* value = reader_.find(key, Presence::optional))
            if (const auto read = reader_.number(key, *value, min, max)) target_.*member = *read;
    }

    void number(std::string_view key, std::optional<double> T::*member, double min, double max) {
        if (const Json* value = reader_.find(key, Presence::optional))
            if (const auto read = reader_.number(key, *value, min, max)) target_.*member = *read;
    }

    void flag(std::string_view key, bool T::*member, Presence presence = Presence::optional) {
        if (const Json* value = reader_.find(key, presence))
            if (const auto read = reader_.flag(key, *value)) target_.*member = *read;
    }

    void text(
        std::string_view key,
        std::string T::*member,
        std::size_t bytes_max,
        Presence presence = Presence::optional
    ) {
        if (const Json* value = reader_.find(key, presence))
            if (auto read = reader_.text(key, *value, bytes_max))
                target_.*member = std::move(*read);
    }

    template <class Enum>
    void word(std::string_view key, Enum T::*member, Presence presence = Presence::optional) {
        const Json* value = reader_.find(key, presence);
        if (value == nullptr) return;
        const auto read = reader_.text(key, *value, 100);
        if (!read) return;
        if (const auto found = from_word<Enum>(*read))
            target_.*member = *found;
        else
            reader_.unknown_word(key, all_words<Enum>());
    }

    template <class Enum>
    void word(std::string_view key, std::optional<Enum> T::*member) {
        const Json* value = reader_.find(key, Presence::optional);
        if (value == nullptr) return;
        const auto read = reader_.text(key, *value, 100);
        if (!read) return;
        target_.*member = from_word<Enum>(*read);
        if (!(target_.*member).has_value()) reader_.unknown_word(key, all_words<Enum>());
    }

    template <class Part>
    void object(std::string_view key, Part T::*member, Presence presence = Presence::optional) {
        if (const Json* value = reader_.find(key, presence))
            read_object(*value, target_.*member, reader_.problems(), reader_.pointer_to(key));
    }

    template <class Part>
    void object(std::string_view key, std::optional<Part> T::*member) {
        if (const Json* value = reader_.find(key, Presence::optional))
            read_object(
                *value, (target_.*member).emplace(), reader_.problems(), reader_.pointer_to(key)
            );
    }

    // Written only while `is_written` holds; read in any case.
    template <class Part, class Condition>
    void object_if(Condition /*is_written*/, std::string_view key, Part T::*member) {
        object(key, member);
    }

    template <class Part>
    void list(
        std::string_view key, std::vector<Part> T::*member, Presence presence = Presence::optional
    ) {
        const Json* value = reader_.find(key, presence);
        if (value == nullptr || !reader_.is_list(key, *value)) return;
        std::vector<Part>& parts = target_.*member;
        parts.resize(value->size());
        for (std::size_t i = 0; i < parts.size(); ++i)
            read_object(
                (*value)[i], parts[i], reader_.problems(), reader_.pointer_to(key) + pointer_step(i)
            );
    }

    template <class Part, class Condition>
    void list_if(Condition /*is_written*/, std::string_view key, std::vector<Part> T::*member) {
        list(key, member);
    }

    void texts(std::string_view key, std::vector<std::string> T::*member, std::size_t bytes_max) {
        const Json* value = reader_.find(key, Presence::optional);
        if (value == nullptr || !reader_.is_list(key, *value)) return;
        for (std::size_t i = 0; i < value->size(); ++i) {
            reader_.enter(key, pointer_step(i));
            if (auto read = reader_.text(key, (*value)[i], bytes_max))
                (target_.*member).push_back(std::move(*read));
        }
        reader_.leave();
    }

    void ids(std::string_view key, std::vector<base::Id> T::*member) {
        const Json* value = reader_.find(key, Presence::optional);
        if (value == nullptr || !reader_.is_list(key, *value)) return;
        for (std::size_t i = 0; i < value->size(); ++i) {
            reader_.enter(key, pointer_step(i));
            if (const auto read = reader_.whole(key, (*value)[i], {1, UINT32_MAX}))
                (target_.*member).push_back(static_cast<base::Id>(*read));
        }
        reader_.leave();
    }

    void numbers(std::string_view key, std::map<std::string, int> T::*member, Whole range) {
        const Json* value = reader_.find(key, Presence::optional);
        if (value == nullptr || !reader_.is_map(key, *value)) return;
        for (const auto& [word, element] : value->items()) {
            reader_.enter(key, pointer_step(word));
            if (const auto read = reader_.whole(word, element, range))
                (target_.*member)[word] = static_cast<int>(*read);
        }
        reader_.leave();
    }

    void numbers(std::string_view key, std::map<base::Id, int> T::*member, Whole range) {
        const Json* value = reader_.find(key, Presence::optional);
        if (value == nullptr || !reader_.is_map(key, *value)) return;
        for (const auto& [word, element] : value->items()) {
            reader_.enter(key, pointer_step(word));
            const auto id = reader_.map_id(key, word);
            const auto read = reader_.whole(key, element, range);
            if (id && read) (target_.*member)[*id] = static_cast<int>(*read);
        }
        reader_.leave();
    }

    void unknown(base::UnknownFields T::*member) { target_.*member = reader_.left_over(); }

private:
    ObjectReader reader_;
    T& target_;
};

template <class T>
void read_object(const Json& value, T& target, Problems& problems, const std::string& pointer) {
    if (!value.is_object()) {
        const std::string key = pointer.substr(pointer.rfind('/') + 1);
        const bool is_named =
            !key.empty() && key.find_first_not_of("0123456789") != std::string::npos;
        problems.add(
            base::ErrorKind::wrong_type,
            pointer,
            (is_named ? spoken(key) : std::string("This")) + " must be an object in braces."
        );
        return;
    }
    FieldReader<T> fields(value, target, problems, pointer);
    describe(fields, Described<T>{});
}

template <class T>
Json write_object(const T& source, std::string_view left_out = {});

void write_unknown(const base::UnknownFields& fields, Json& object);

template <class T>
class FieldWriter {
public:
    FieldWriter(const T& source, Json& object, std::string_view left_out)
        : source_(source), object_(object), left_out_(left_out) {}

    template <class Value>
    void whole(
        std::string_view key,
        Value T::*member,
        Whole /*range*/,
        Presence presence = Presence::optional
    ) {
        if (is_written(key, member, presence)) put(key, source_.*member);
    }

    void whole(std::string_view key, std::optional<int> T::*member, Whole /*range*/) {
        if ((source_.*member).has_value()) put(key, *(source_.*member));
    }

    void number(std::string_view key, double T::*member, double /*min*/, double /*max*/) {
        if (is_written(key, member, Presence::optional)) put(key, source_.*member);
    }

    void number(
        std::string_view key, std::optional<double> T::*member, double /*min*/, double /*max*/
    ) {
        if ((source_.*member).has_value()) put(key, *(source_.*member));
    }

    void flag(std::string_view key, bool T::*member, Presence presence = Presence::optional) {
        if (is_written(key, member, presence)) put(key, source_.*member);
    }

    void text(
        std::string_view key,
        std::string T::*member,
        std::size_t /*bytes_max*/,
        Presence presence = Presence::optional
    ) {
        if (is_written(key, member, presence)) put(key, source_.*member);
    }

    template <class Enum>
    void word(std::string_view key, Enum T::*member, Presence presence = Presence::optional) {
        if (is_written(key, member, presence)) put(key, word_of(source_.*member));
    }

    template <class Enum>
    void word(std::string_view key, std::optional<Enum> T::*member) {
        if ((source_.*member).has_value()) put(key, word_of(*(source_.*member)));
    }

    template <class Part>
    void object(std::string_view key, Part T::*member, Presence presence = Presence::optional) {
        if (is_written(key, member, presence)) put(key, write_object(source_.*member));
    }

    template <class Part>
    void object(std::string_view key, std::optional<Part> T::*member) {
        if ((source_.*member).has_value()) put(key, write_object(*(source_.*member)));
    }

    template <class Part, class Condition>
    void object_if(Condition is_written_now, std::string_view key, Part T::*member) {
        if (is_written_now(source_)) object(key, member);
    }

    template <class Part>
    void list(
        std::string_view key, std::vector<Part> T::*member, Presence presence = Presence::optional
    ) {
        if (!is_written(key, member, presence)) return;
        Json parts = Json::array();
        for (const Part& part : source_.*member)
            parts.push_back(write_object(part));
        put(key, std::move(parts));
    }

    template <class Part, class Condition>
    void list_if(Condition is_written_now, std::string_view key, std::vector<Part> T::*member) {
        if (is_written_now(source_)) list(key, member);
    }

    void
    texts(std::string_view key, std::vector<std::string> T::*member, std::size_t /*bytes_max*/) {
        if (is_written(key, member, Presence::optional)) put(key, source_.*member);
    }

    void ids(std::string_view key, std::vector<base::Id> T::*member) {
        if (is_written(key, member, Presence::optional)) put(key, source_.*member);
    }

    template <class Key>
    void numbers(std::string_view key, std::map<Key, int> T::*member, Whole /*range*/) {
        if (!is_written(key, member, Presence::optional)) return;
        Json numbers = Json::object();
        for (const auto& [name, number] : source_.*member) {
            if constexpr (std::is_same_v<Key, std::string>)
                numbers[name] = number;
            else
                numbers[std::to_string(name)] = number;
        }
        put(key, std::move(numbers));
    }

    void unknown(base::UnknownFields T::*member) {
        if (!(source_.*member).empty()) write_unknown(source_.*member, object_);
    }

private:
    static const T& plain() {
        static const T value{};
        return value;
    }

    template <class Member>
    bool is_written(std::string_view key, Member member, Presence presence) const {
        if (key == left_out_) return false;
        return presence != Presence::optional || !(source_.*member == plain().*member);
    }

    template <class Value>
    void put(std::string_view key, Value&& value) {
        Json::object_t::Container& entries = object_.get_ref<Json::object_t&>();
        entries.emplace_back(std::string(key), Json(std::forward<Value>(value)));
    }

    const T& source_;
    Json& object_;
    std::string_view left_out_;
};

template <class T>
Json write_object(const T& source, std::string_view left_out) {
    Json object = Json::object();
    FieldWriter<T> fields(source, object, left_out);
    describe(fields, Described<T>{});
    return object;
}

} // namespace store
