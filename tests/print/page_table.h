// The demo at a table of its own, its pages printed and read back.
#pragma once

#include "print/printing.h"
#include "store/samples.h"

#include <algorithm>

namespace printing {

struct Table {
    game::Campaign campaign = samples::demo();
    const rules::Rulebook& rulebook = samples::rulebook(campaign.about.rules);

    printing::Read read(const std::string& page, const std::string& paper = "a5") const {
        return printing::read(
            printing::pdf_of(printing::source(campaign, rulebook), page, printing::setup(paper))
        );
    }

    std::string text(const std::string& page, const std::string& paper = "a5") const {
        std::string all;
        for (const printing::Side& side : read(page, paper).sides)
            all += side.text;
        return all;
    }

    std::string refusal(const std::string& page) const {
        const std::size_t colon = page.find(':');
        const auto* kind = print::find_page_kind(page.substr(0, colon));
        const auto made = kind->make(
            printing::source(campaign, rulebook),
            colon == std::string::npos ? "" : page.substr(colon + 1)
        );
        return made.ok() ? "" : base::to_text(made.error());
    }
};

inline bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

// What stands right of this word on its line, nearest first.
inline std::vector<std::string> behind(const printing::Side& side, const std::string& word) {
    for (const printing::Word& start : side.words) {
        if (start.text != word) continue;
        std::vector<printing::Word> row;
        for (const printing::Word& each : side.words)
            if (std::abs(each.top - start.top) < 2 && each.left > start.right) row.push_back(each);
        std::sort(row.begin(), row.end(), [](const auto& one, const auto& other) {
            return one.left < other.left;
        });
        std::vector<std::string> texts;
        texts.reserve(row.size());
        for (const printing::Word& each : row)
            texts.push_back(each.text);
        if (!texts.empty()) return texts;
    }
    return {};
}

} // namespace printing
