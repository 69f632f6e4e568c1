#include "print/texts.h"

#include "base/unicode.h"

#include <algorithm>

namespace print {

namespace {

constexpr double large_type = 1.4;

struct Face {
    double points;
    PangoWeight weight;
};

Face face_of(TextStyle style) {
    switch (style) {
    case TextStyle::body: return {9.0, PANGO_WEIGHT_NORMAL};
    case TextStyle::strong: return {9.0, PANGO_WEIGHT_BOLD};
    case TextStyle::small: return {7.5, PANGO_WEIGHT_NORMAL};
    case TextStyle::large: return {11.0, PANGO_WEIGHT_NORMAL};
    case TextStyle::heading: return {11.0, PANGO_WEIGHT_BOLD};
    case TextStyle::title: return {16.0, PANGO_WEIGHT_BOLD};
    }
    return {9.0, PANGO_WEIGHT_NORMAL};
}

double points(int pango_units) {
    return static_cast<double>(pango_units) / PANGO_SCALE;
}

// Control signs and unusual ends of lines never reach the page.
std::string printable(const std::string& text) {
    std::u32string letters = base::code_points(text);
    for (char32_t& letter : letters) {
        const bool is_control = letter < 0x20 || (letter >= 0x7F && letter < 0xA0);
        if (is_control && letter != U'\n') letter = U' ';
        if (letter == 0x2028 || letter == 0x2029) letter = U' ';
    }
    return base::to_utf8(letters);
}

template <class Object>
std::shared_ptr<Object> owned(Object* object) {
    return {object, [](Object* last) { g_object_unref(last); }};
}

} // namespace

Texts::Texts(bool is_large_type)
    : scale_(is_large_type ? large_type : 1.0), fonts_(owned(pango_cairo_font_map_new())),
      context_(owned(pango_font_map_create_context(fonts_.get()))) {
    pango_cairo_context_set_resolution(context_.get(), 72.0);
    // Letters stand where they are measured, whatever the device.
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context_.get(), options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(context_.get(), FALSE);
    pango_context_set_language(context_.get(), pango_language_from_string("en"));
}

double Texts::size(const TextWish& wish) const {
    return face_of(wish.style).points * scale_ * wish.shrink;
}

std::shared_ptr<PangoLayout> Texts::layout_of(const std::string& text, const TextWish& wish) const {
    std::shared_ptr<PangoLayout> layout = owned(pango_layout_new(context_.get()));
    PangoFontDescription* font = pango_font_description_from_string("B612, DejaVu Sans");
    pango_font_description_set_weight(font, face_of(wish.style).weight);
    pango_font_description_set_absolute_size(font, size(wish) * PANGO_SCALE);
    pango_layout_set_font_description(layout.get(), font);
    pango_font_description_free(font);
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD_CHAR);
    // A hyphen that nobody wrote would stand in names, and make lines longer than their room.
    PangoAttrList* attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes, pango_attr_insert_hyphens_new(FALSE));
    pango_layout_set_attributes(layout.get(), attributes);
    pango_attr_list_unref(attributes);
    const std::string shown = printable(text);
    pango_layout_set_text(layout.get(), shown.data(), static_cast<int>(shown.size()));
    return layout;
}

namespace {

std::vector<TextLine> lines_of(const std::shared_ptr<PangoLayout>& layout) {
    std::vector<TextLine> lines;
    PangoLayoutIter* iter = pango_layout_get_iter(layout.get());
    int index = 0;
    do {
        PangoRectangle ink;
        PangoRectangle logical;
        pango_layout_iter_get_line_extents(iter, &ink, &logical);
        const int foot = logical.y + logical.height;
        const int ink_top = ink.height > 0 ? ink.y : logical.y;
        const int ink_foot = ink.height > 0 ? ink.y + ink.height : foot;
        const int top = std::min(ink_top, logical.y);
        TextLine line;
        line.layout = layout;
        line.index = index++;
        line.x = points(logical.x);
        line.width = points(logical.width);
        line.ascent = points(pango_layout_iter_get_baseline(iter) - top);
        line.height = points(std::max(ink_foot, foot) - top);
        lines.push_back(std::move(line));
    } while (pango_layout_iter_next_line(iter) != FALSE);
    pango_layout_iter_free(iter);
    return lines;
}

double widest(const std::vector<TextLine>& lines) {
    double width = 0;
    for (const TextLine& line : lines)
        width = std::max(width, line.width);
    return width;
}

} // namespace

std::vector<TextLine>
Texts::lines(const std::string& text, double width, const TextWish& wish) const {
    const std::shared_ptr<PangoLayout> layout = layout_of(text, wish);
    if (wish.is_right) {
        // Pango turns left and right round for a text from right to left; here right is right.
        const bool runs_left = pango_layout_get_direction(layout.get(), 0) == PANGO_DIRECTION_RTL;
        pango_layout_set_alignment(layout.get(), runs_left ? PANGO_ALIGN_LEFT : PANGO_ALIGN_RIGHT);
    }
    // A word that is broken between its letters may come out a little wider than asked for: then
    // again for a little less.
    constexpr int tries = 8;
    double asked = width;
    std::vector<TextLine> lines;
    for (int i = 0; i < tries; ++i) {
        pango_layout_set_width(layout.get(), std::max(1, static_cast<int>(asked * PANGO_SCALE)));
        lines = lines_of(layout);
        const double over = widest(lines) - width;
        if (over <= 0) break;
        asked = std::max(1.0, asked - over - 0.5);
    }
    for (TextLine& line : lines) { // what ends at the right edge ends at that of the whole width
        const bool is_at_right = line.x + line.width > asked - 0.1 && line.x > 0.1;
        if (is_at_right || line.x < 0) line.x = std::max(0.0, width - line.width);
    }
    return lines;
}

double Texts::natural_width(const std::string& text, const TextWish& wish) const {
    const std::shared_ptr<PangoLayout> layout = layout_of(text, wish);
    PangoRectangle logical;
    pango_layout_get_extents(layout.get(), nullptr, &logical);
    return points(logical.width);
}

double Texts::longest_word(const std::string& text, const TextWish& wish) const {
    const std::shared_ptr<PangoLayout> layout = layout_of(text, wish);
    pango_layout_set_wrap(layout.get(), PANGO_WRAP_WORD);
    pango_layout_set_width(layout.get(), 0);
    PangoRectangle logical;
    pango_layout_get_extents(layout.get(), nullptr, &logical);
    return points(logical.width);
}

double height_of(const std::vector<TextLine>& lines) {
    double height = 0;
    for (const TextLine& line : lines)
        height += line.height;
    return height;
}

} // namespace print
