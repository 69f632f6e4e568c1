// Printed pages read back by Poppler, an independent reader of PDF.
#pragma once

#include "print/page_kinds.h"
#include "print/pdf.h"

#include <memory>
#include <string>
#include <vector>

namespace printing {

// Ready lists, open creatures and climates of the assets, read once.
print::PrintSource source(const game::Campaign& campaign, const rules::Rulebook& rulebook);

struct Word {
    std::string text;
    double left = 0; // points, from the upper left corner of the sheet
    double top = 0;
    double right = 0;
    double foot = 0;
};

struct Side {
    double width_mm = 0;
    double height_mm = 0;
    std::string text;
    std::vector<Word> words;
};

struct Read {
    std::vector<Side> sides;
    std::vector<std::string> fonts;
    bool all_embedded = true;
};

Read read(const std::string& pdf);

// One page kind as a whole file.
std::string
pdf_of(const print::PrintSource& source, const std::string& page, const print::PrintSetup& setup);

print::PrintSetup setup(const std::string& paper);

// The same with its marks: fails the test where a text leaves its page, or meets another one, a
// line, the border of a box or a picture.
void check_no_text_is_cut(const print::Document& document);

} // namespace printing
