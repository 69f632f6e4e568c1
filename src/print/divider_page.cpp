// Pages that begin a part of a binder, and pictures and letters to hand to the players.
#include "base/text.h"
#include "print/pages.h"

#include <array>

namespace print {

namespace {

struct OrnamentWord {
    const char* word;
    Ornament ornament;
};

constexpr std::array<OrnamentWord, 6> ornaments{{
    {"reeds", Ornament::reeds},
    {"waves", Ornament::waves},
    {"branch", Ornament::branch},
    {"stars", Ornament::stars},
    {"knot", Ornament::knot},
    {"spirals", Ornament::spirals},
}};

const OrnamentWord* find_ornament(const std::string& word) {
    for (const OrnamentWord& each : ornaments)
        if (each.word == base::lowercase(word)) return &each;
    return nullptr;
}

std::string without_ends(const std::string& text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(' ') + 1 - first);
}

// "A | b|c": its parts.
std::vector<std::string> parts_of(const std::string& detail) {
    std::vector<std::string> parts;
    std::size_t from = 0;
    for (std::size_t bar = 0; bar != std::string::npos; from = bar + 1) {
        bar = detail.find('|', from);
        parts.push_back(without_ends(detail.substr(from, bar - from)));
    }
    return parts;
}

} // namespace

std::vector<std::string_view> ornament_words() {
    std::vector<std::string_view> words;
    words.reserve(ornaments.size());
    for (const OrnamentWord& each : ornaments)
        words.emplace_back(each.word);
    return words;
}

base::Result<Blocks> divider_page(const PrintSource& source, const std::string& detail) {
    const std::vector<std::string> parts = parts_of(detail);
    DividerPage page;
    page.title = parts.front().empty() ? source.campaign.about.title : parts.front();
    for (std::size_t i = 1; i < parts.size(); ++i) {
        if (parts[i].empty()) continue;
        if (const OrnamentWord* word = find_ornament(parts[i])) {
            page.ornament = word->ornament;
            continue;
        }
        auto picture = read_picture(source.read_file, parts[i]);
        if (!picture.ok()) {
            base::Error error = picture.error();
            if (error.remedy.empty() && parts[i].find('.') == std::string::npos)
                error.remedy = "Ornaments: reeds, waves, branch, stars, knot, spirals.";
            return error;
        }
        page.picture = std::move(picture).value();
    }
    return Blocks{std::move(page)};
}

base::Result<Blocks> handout_page(const PrintSource& source, const std::string& detail) {
    const std::size_t bar = detail.find('|');
    const std::string file = without_ends(detail.substr(0, bar));
    const std::string text =
        bar == std::string::npos ? std::string() : without_ends(detail.substr(bar + 1));
    if (!file.empty()) {
        auto picture = read_picture(source.read_file, file);
        if (!picture.ok()) return picture.error();
        return Blocks{Picture{std::move(picture).value(), text}};
    }
    Blocks letter{Divider{}};
    if (!text.empty()) letter.emplace_back(Paragraph{text, TextStyle::large});
    letter.emplace_back(text.empty() ? RuledLines{} : RuledLines{0, true});
    return letter;
}

} // namespace print
