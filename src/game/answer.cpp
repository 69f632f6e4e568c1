#include "game/answer.h"

#include <algorithm>
#include <cstddef>
#include <string_view>

namespace game {

namespace {

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::size_t from = 0;
    while (true) {
        const std::size_t tab = line.find('\t', from);
        cells.push_back(line.substr(from, tab - from));
        if (tab == std::string::npos) return cells;
        from = tab + 1;
    }
}

// Letters, not bytes: every byte of UTF-8 that does not continue one.
std::size_t letters_in(const std::string& text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char byte) {
        constexpr unsigned kind_bits = 0xC0;
        constexpr unsigned continuing = 0x80;
        return (static_cast<unsigned char>(byte) & kind_bits) != continuing;
    }));
}

bool is_table(const std::string& line) {
    return line.find('\t') != std::string::npos;
}

// Lines first..last (one past) become columns.
void align(const std::vector<std::string>& lines, std::size_t first, std::size_t last, auto& out) {
    std::vector<std::size_t> widths;
    for (std::size_t at = first; at < last; ++at) {
        const auto cells = cells_of(lines[at]);
        if (widths.size() < cells.size()) widths.resize(cells.size());
        for (std::size_t cell = 0; cell < cells.size(); ++cell)
            widths[cell] = std::max(widths[cell], letters_in(cells[cell]));
    }
    for (std::size_t at = first; at < last; ++at) {
        const auto cells = cells_of(lines[at]);
        std::string line;
        for (std::size_t cell = 0; cell < cells.size(); ++cell) {
            line += cells[cell];
            if (cell + 1 < cells.size())
                line.append(widths[cell] - letters_in(cells[cell]) + 2, ' ');
        }
        out.push_back(line);
    }
}

} // namespace

const NamedValue* find_value(const NamedValues& values, std::string_view name) {
    const auto found = std::find_if(values.begin(), values.end(), [name](const NamedValue& value) {
        return value.name == name;
    });
    return found == values.end() ? nullptr : &*found;
}

std::vector<std::string> aligned_lines(const Answer& answer) {
    const std::vector<std::string>& lines = answer.lines;
    std::vector<std::string> out;
    for (std::size_t at = 0; at < lines.size();) {
        std::size_t end = at;
        while (end < lines.size() && is_table(lines[end]))
            ++end;
        if (end == at) {
            out.push_back(lines[at]);
            ++at;
            continue;
        }
        align(lines, at, end, out);
        at = end;
    }
    return out;
}

} // namespace game
