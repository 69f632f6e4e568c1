#include "store/json_text.h"

#include "store/json_place.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>
#include <unordered_set>
#include <vector>

namespace store {

using base::Error;
using base::ErrorKind;

std::string pointer_step(std::string_view key) {
    std::string step = "/";
    for (const char c : key) {
        if (c == '~')
            step += "~0";
        else if (c == '/')
            step += "~1";
        else
            step += c;
    }
    return step;
}

std::string pointer_step(std::size_t index) {
    return "/" + std::to_string(index);
}

namespace {

// Receives the tokens of nlohmann's parser and builds the value, so that limits hold while reading
// and not only afterwards.
class Builder {
public:
    Builder(std::string_view text, int depth_max)
        : text_(text), depth_max_(static_cast<std::size_t>(depth_max)) {}

    // What the parser asks of a receiver; false stops it.
    bool null() { return put(nullptr); }

    bool boolean(bool value) { return put(value); }

    bool number_integer(std::int64_t value) { return put(value); }

    bool number_unsigned(std::uint64_t value) { return put(value); }

    bool number_float(double value, const std::string& /*as_written*/) { return put(value); }

    bool string(std::string& value) { return put(std::move(value)); }

    bool binary(Json::binary_t& /*value*/) { return false; }

    bool start_object(std::size_t /*size*/) { return open(Json::object()); }

    bool start_array(std::size_t /*size*/) { return open(Json::array()); }

    bool end_object() { return close(); }

    bool end_array() { return close(); }

    bool key(std::string& name) {
        Level& level = levels_.back();
        if (!level.keys.insert(name).second) {
            const std::string around = pointer(levels_.size() - 1);
            fail(ErrorKind::duplicate, "The key \"" + name + "\" stands here twice.");
            error_->place = place_of_key(text_, around, name, 2);
            error_->place.pointer = around + pointer_step(name);
            return false;
        }
        level.key = std::move(name);
        return true;
    }

    bool parse_error(std::size_t byte, const std::string& token, const Json::exception& problem) {
        constexpr int number_overflow = 406;
        if (problem.id == number_overflow) {
            fail(ErrorKind::out_of_range, "The number " + token + " is too large.");
            place_at(byte - std::min(byte, token.size()));
            return false;
        }
        const bool is_utf8 =
            std::string_view(problem.what()).find("UTF-8") != std::string_view::npos;
        if (is_utf8) {
            fail(ErrorKind::bad_text, "The text is not valid UTF-8 here.");
        } else if (byte > text_.size() || token == "<end of file>") {
            fail(ErrorKind::not_json, "The file ends in the middle.");
        } else if (has_root_ && levels_.empty()) {
            fail(ErrorKind::not_json, "Something follows after the end of the file's content.");
        } else {
            fail(ErrorKind::not_json, "This is not valid JSON.");
        }
        place_at(byte == 0 ? 0 : byte - 1);
        return false;
    }

    std::optional<Error> error() const { return error_; }

    Json take() { return std::move(root_); }

private:
    struct Level {
        Json* value; // the open object or array
        std::string key;
        std::unordered_set<std::string> keys{}; // so that a hostile object stays linear
    };

    template <class Value>
    bool put(Value&& value) {
        add(Json(std::forward<Value>(value)));
        return true;
    }

    Json* add(Json value) {
        if (levels_.empty()) {
            root_ = std::move(value);
            has_root_ = true;
            return &root_;
        }
        Level& level = levels_.back();
        if (level.value->is_array()) {
            level.value->push_back(std::move(value));
            return &level.value->back();
        }
        Json::object_t::Container& object = level.value->get_ref<Json::object_t&>();
        return &object.emplace_back(level.key, std::move(value)).second;
    }

    bool open(Json value) {
        if (levels_.size() >= depth_max_) {
            fail(
                ErrorKind::too_deep,
                "The nesting is deeper than " + std::to_string(depth_max_) + "."
            );
            error_->place = place_of_pointer(text_, pointer(levels_.size()));
            return false;
        }
        Json* added = add(std::move(value));
        levels_.push_back({added, {}, {}});
        return true;
    }

    bool close() {
        levels_.pop_back();
        return true;
    }

    // Of the value that comes next: the keys and indices of the innermost `depth` levels.
    std::string pointer(std::size_t depth) const {
        std::string path;
        for (std::size_t i = 0; i < depth; ++i) {
            const Level& level = levels_[i];
            const bool is_last = i + 1 == levels_.size();
            if (level.value->is_array())
                path += pointer_step(level.value->size() - (is_last ? 0 : 1));
            else
                path += pointer_step(level.key);
        }
        return path;
    }

    void fail(ErrorKind kind, std::string message) {
        error_ = Error{kind, std::move(message), {}, {}};
    }

    void place_at(std::size_t byte) {
        error_->place = place_of_byte(text_, byte);
        const bool has_key =
            !levels_.empty() && (levels_.back().value->is_array() || !levels_.back().key.empty());
        error_->place.pointer = pointer(levels_.empty() ? 0 : levels_.size() - (has_key ? 0 : 1));
    }

    std::string_view text_;
    std::size_t depth_max_;
    Json root_;
    bool has_root_ = false;
    std::vector<Level> levels_;
    std::optional<Error> error_;
};

} // namespace

base::Result<base::Nothing> check_size(std::size_t bytes, const std::string& file) {
    if (bytes <= JsonLimits::bytes_max) return base::Nothing{};
    base::Place place;
    place.file = file;
    return Error{ErrorKind::too_large, "The file is larger than 256 MB.", place, {}};
}

base::Result<Json> parse_json(std::string_view text, const std::string& file, int depth_max) {
    if (const auto size = check_size(text.size(), file); !size) return size.error();
    Builder builder(text, depth_max);
    const bool is_good = Json::sax_parse(text.begin(), text.end(), &builder);
    if (!is_good || builder.error()) {
        Error error =
            builder.error().value_or(Error{ErrorKind::not_json, "This is not valid JSON.", {}, {}});
        error.place.file = file;
        return error;
    }
    return builder.take();
}

} // namespace store
