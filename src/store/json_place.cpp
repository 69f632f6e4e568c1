#include "store/json_place.h"

#include <algorithm>
#include <vector>

namespace store {

namespace {

// Walks over a text that is probably JSON. Every step is total: at nonsense it just stops moving
// on.
class Walker {
public:
    explicit Walker(std::string_view text) : text_(text) {
        if (text_.substr(0, 3) == "\xEF\xBB\xBF") at_ = 3;
        skip_space();
    }

    std::size_t at() const { return at_; }

    char here() const { return at_ < text_.size() ? text_[at_] : '\0'; }

    void step() {
        if (at_ < text_.size()) at_ += 1;
    }

    void skip_space() {
        while (at_ < text_.size() &&
               std::string_view(" \t\r\n").find(text_[at_]) != std::string_view::npos)
            at_ += 1;
    }

    // Reads a string literal and returns its content with escapes of one byte resolved; \u escapes
    // are kept as written, which only matters for finding keys written that way.
    std::string take_string() {
        std::string content;
        step();
        while (at_ < text_.size() && here() != '"') {
            if (here() == '\\') {
                step();
                content += unescaped();
            } else {
                content += here();
            }
            step();
        }
        step();
        return content;
    }

    // Skips one value, however deep.
    void skip_value() {
        int depth = 0;
        do {
            skip_space();
            const char first = here();
            if (first == '"') {
                take_string();
            } else if (first == '{' || first == '[') {
                depth += 1;
                step();
            } else if (first == '}' || first == ']') {
                depth -= 1;
                step();
            } else if ((first == ',' || first == ':') && depth > 0) {
                step();
            } else {
                skip_plain();
            }
        } while (depth > 0 && at_ < text_.size());
    }

private:
    std::string unescaped() {
        switch (here()) {
        case 'n': return "\n";
        case 't': return "\t";
        case 'r': return "\r";
        case 'b': return "\b";
        case 'f': return "\f";
        case 'u': return "\\u";
        default: return {here()};
        }
    }

    void skip_plain() {
        const std::size_t from = at_;
        while (at_ < text_.size() &&
               std::string_view(" \t\r\n,:{}[]\"").find(text_[at_]) == std::string_view::npos)
            at_ += 1;
        if (at_ == from) step();
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

std::vector<std::string> steps_of(std::string_view pointer) {
    std::vector<std::string> steps;
    for (std::size_t at = 0; at < pointer.size(); ++at) {
        if (pointer[at] == '/') {
            steps.emplace_back();
        } else if (!steps.empty()) {
            const bool is_escape = pointer[at] == '~' && at + 1 < pointer.size();
            if (is_escape) at += 1;
            steps.back() += !is_escape ? pointer[at] : pointer[at] == '1' ? '/' : '~';
        }
    }
    return steps;
}

// Moves into the object at the walker and stands at the value of the key; false when it is not
// there. `key_at` receives where the key itself stands.
bool enter_key(Walker& walker, std::string_view key, int occurrence, std::size_t& key_at) {
    if (walker.here() != '{') return false;
    walker.step();
    walker.skip_space();
    while (walker.here() == '"') {
        key_at = walker.at();
        const std::string found = walker.take_string();
        walker.skip_space();
        if (walker.here() == ':') walker.step();
        walker.skip_space();
        if (found == key) occurrence -= 1;
        if (occurrence == 0) return true;
        walker.skip_value();
        walker.skip_space();
        if (walker.here() != ',') return false;
        walker.step();
        walker.skip_space();
    }
    return false;
}

bool enter_index(Walker& walker, std::string_view step) {
    const bool is_index =
        !step.empty() && step.size() < 10 &&
        std::all_of(step.begin(), step.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (walker.here() != '[' || !is_index) return false;
    walker.step();
    walker.skip_space();
    for (int left = std::stoi(std::string(step)); left > 0; --left) {
        walker.skip_value();
        walker.skip_space();
        if (walker.here() != ',') return false;
        walker.step();
        walker.skip_space();
    }
    return walker.here() != ']' && walker.here() != '\0';
}

bool enter(Walker& walker, std::string_view step) {
    std::size_t key_at = 0;
    return walker.here() == '[' ? enter_index(walker, step) : enter_key(walker, step, 1, key_at);
}

} // namespace

base::Place place_of_byte(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const std::size_t last_break = before.rfind('\n');
    const std::size_t line_start = last_break == std::string_view::npos ? 0 : last_break + 1;
    base::Place place;
    place.line = 1 + static_cast<int>(std::count(before.begin(), before.end(), '\n'));
    place.column = 1 + static_cast<int>(before.size() - line_start);
    return place;
}

base::Place place_of_pointer(std::string_view text, std::string_view pointer) {
    Walker walker(text);
    std::size_t best = walker.at();
    for (const std::string& step : steps_of(pointer)) {
        if (!enter(walker, step)) break;
        best = walker.at();
    }
    base::Place place = place_of_byte(text, best);
    place.pointer = pointer;
    return place;
}

base::Place place_of_key(
    std::string_view text, std::string_view object_pointer, std::string_view key, int occurrence
) {
    Walker walker(text);
    std::size_t best = walker.at();
    bool is_there = true;
    for (const std::string& step : steps_of(object_pointer)) {
        is_there = is_there && enter(walker, step);
        if (is_there) best = walker.at();
    }
    std::size_t key_at = best;
    if (is_there && enter_key(walker, key, occurrence, key_at)) best = key_at;
    return place_of_byte(text, best);
}

} // namespace store
