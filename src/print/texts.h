// Texts measured and broken into lines by Pango, ready to be drawn: B612, and DejaVu Sans behind it
// for other scripts. All lengths in points.
#pragma once

#include "print/blocks.h"

#include <memory>
#include <pango/pangocairo.h>
#include <string>
#include <vector>

namespace print {

// One line of a text.
struct TextLine {
    std::shared_ptr<PangoLayout> layout;
    int index = 0;     // of the line in its layout
    double x = 0;      // of its left edge, in the width it was broken for
    double width = 0;  // of what is seen
    double ascent = 0; // from its upper edge to the baseline
    double height = 0; // letters with many marks included: lines below each other never touch
};

struct TextWish {
    TextStyle style = TextStyle::body;
    bool is_right = false;
    double shrink = 1.0; // of the size, for cards
};

class Texts {
public:
    explicit Texts(bool is_large_type);

    // At least one line. Words that are wider than the room are broken between letters; signs that
    // print nothing become spaces, bytes that are no UTF-8 the replacement character.
    std::vector<TextLine>
    lines(const std::string& text, double width, const TextWish& wish = {}) const;

    double natural_width(const std::string& text, const TextWish& wish) const;
    double longest_word(const std::string& text, const TextWish& wish) const;

    // Size of the letters of a style.
    double size(const TextWish& wish) const;

private:
    std::shared_ptr<PangoLayout> layout_of(const std::string& text, const TextWish& wish) const;

    double scale_ = 1.0;
    std::shared_ptr<PangoFontMap> fonts_;
    std::shared_ptr<PangoContext> context_;
};

double height_of(const std::vector<TextLine>& lines);

} // namespace print
