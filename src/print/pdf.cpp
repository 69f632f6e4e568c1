#include "print/pdf.h"

#include <algorithm>
#include <cairo-pdf.h>
#include <cstdint>
#include <cstring>
#include <memory>
#include <numbers>

namespace print {

namespace {

// The same campaign gives the same file, so it carries no clock: a fixed date stands in it.
constexpr const char* fixed_date = "2000-01-01T00:00:00Z";

struct SurfaceEnd {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

struct CairoEnd {
    void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
};

void set_grey(cairo_t* cairo, double grey) {
    cairo_set_source_rgb(cairo, grey, grey, grey);
}

void draw(cairo_t* cairo, const LineMark& line) {
    set_grey(cairo, line.grey);
    cairo_set_line_width(cairo, line.thickness);
    cairo_move_to(cairo, line.x1, line.y1);
    cairo_line_to(cairo, line.x2, line.y2);
    cairo_stroke(cairo);
}

void draw(cairo_t* cairo, const BoxMark& box) {
    constexpr double quarter = std::numbers::pi / 2;
    const double r = std::min({box.radius, box.width / 2, box.height / 2});
    const double right = box.x + box.width;
    const double foot = box.y + box.height;
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, right - r, box.y + r, r, -quarter, 0);
    cairo_arc(cairo, right - r, foot - r, r, 0, quarter);
    cairo_arc(cairo, box.x + r, foot - r, r, quarter, 2 * quarter);
    cairo_arc(cairo, box.x + r, box.y + r, r, 2 * quarter, 3 * quarter);
    cairo_close_path(cairo);
    if (box.fill_grey < 1) {
        set_grey(cairo, box.fill_grey);
        cairo_fill_preserve(cairo);
    }
    set_grey(cairo, 0);
    cairo_set_line_width(cairo, box.thickness);
    if (box.thickness > 0) cairo_stroke(cairo);
    cairo_new_path(cairo);
}

void draw(cairo_t* cairo, const DotMark& dot) {
    set_grey(cairo, dot.grey);
    cairo_new_path(cairo);
    cairo_arc(cairo, dot.x, dot.y, dot.radius, 0, 2 * std::numbers::pi);
    cairo_fill(cairo);
}

void draw(cairo_t* cairo, const CurveMark& curve) {
    if (curve.points.empty()) return;
    cairo_new_path(cairo);
    const auto at = [&curve](std::size_t index) {
        return Point{curve.x + curve.points[index].x, curve.y + curve.points[index].y};
    };
    cairo_move_to(cairo, at(0).x, at(0).y);
    for (std::size_t i = 1; i + 2 < curve.points.size(); i += 3)
        cairo_curve_to(cairo, at(i).x, at(i).y, at(i + 1).x, at(i + 1).y, at(i + 2).x, at(i + 2).y);
    set_grey(cairo, curve.grey);
    cairo_set_line_width(cairo, curve.thickness);
    if (curve.is_filled) cairo_fill_preserve(cairo);
    if (curve.thickness > 0) cairo_stroke(cairo);
    cairo_new_path(cairo);
}

void draw(cairo_t* cairo, const PictureMark& picture) {
    const Pixels& pixels = *picture.pixels;
    const std::unique_ptr<cairo_surface_t, SurfaceEnd> surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixels.width, pixels.height)
    );
    if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) return;
    const int stride = cairo_image_surface_get_stride(surface.get());
    unsigned char* rows = cairo_image_surface_get_data(surface.get());
    for (int y = 0; y < pixels.height; ++y)
        for (int x = 0; x < pixels.width; ++x) {
            const std::uint8_t* rgb = pixels.at(x, y);
            const std::uint32_t all = (static_cast<std::uint32_t>(rgb[0]) << 16U) |
                                      (static_cast<std::uint32_t>(rgb[1]) << 8U) | rgb[2];
            std::memcpy(rows + std::ptrdiff_t{y} * stride + std::ptrdiff_t{x} * 4, &all, 4);
        }
    cairo_surface_mark_dirty(surface.get());
    cairo_save(cairo);
    cairo_translate(cairo, picture.x, picture.y);
    cairo_scale(cairo, picture.width / pixels.width, picture.height / pixels.height);
    cairo_set_source_surface(cairo, surface.get(), 0, 0);
    cairo_paint(cairo);
    cairo_restore(cairo);
}

void draw(cairo_t* cairo, const TextMark& text) {
    set_grey(cairo, 0);
    cairo_move_to(cairo, text.x, text.y + text.line.ascent);
    pango_cairo_show_layout_line(
        cairo, pango_layout_get_line_readonly(text.line.layout.get(), text.line.index)
    );
}

base::Error stopped() {
    return {base::ErrorKind::not_possible, "Printing was stopped.", {}, {}};
}

// Name left, number right, below the content.
void add_foot(
    LaidPage& page,
    const std::string& name,
    std::size_t number,
    std::size_t all,
    const PrintSetup& setup,
    const Texts& texts
) {
    const double width = content_width(setup, page.use);
    const TextWish small{TextStyle::small};
    const std::vector<TextLine> count = texts.lines(
        std::to_string(number) + " / " + std::to_string(all), width, {TextStyle::small, true, 1.0}
    );
    const double room = std::max(1.0, width - count.front().width - 8);
    std::vector<TextLine> names = texts.lines(name, room, small);
    const double strip = foot_height(setup);
    const auto put = [&](const TextLine& line) {
        page.marks.emplace_back(TextMark{
            line, line.x, content_height(setup, page.use) + std::max(0.0, strip - line.height)});
    };
    // A name that needs two lines stands at the head of the page already.
    if (names.size() == 1 && names.front().height <= strip) put(names.front());
    put(count.front());
}

} // namespace

base::Result<Document> Document::lay_out(
    const std::vector<Section>& sections,
    const std::string& title,
    const PrintSetup& setup,
    const Progress& progress
) {
    Document document(title, setup);
    const Texts texts(setup.is_large_type);
    std::vector<const Section*> owners;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        document.first_pages_.push_back(document.pages_.size());
        for (LaidPage& page : print::lay_out(sections[i].blocks, setup, texts)) {
            document.pages_.push_back(std::move(page));
            owners.push_back(&sections[i]);
        }
        if (progress && !progress(i + 1, 2 * sections.size())) return stopped();
    }
    for (std::size_t i = 0; i < owners.size(); ++i)
        add_foot(document.pages_[i], owners[i]->name, i + 1, owners.size(), setup, texts);
    return document;
}

void Document::draw_page(cairo_t* cairo, std::size_t page) const {
    const PageUse use = pages_[page].use;
    const BoxMm box = content_box(setup_, page, use);
    cairo_save(cairo);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
    const bool is_bound = use == PageUse::bound;
    for (const HoleMm& hole : is_bound ? holes(setup_, page) : std::vector<HoleMm>()) {
        set_grey(cairo, 0.6);
        cairo_set_line_width(cairo, 0.4);
        cairo_new_path(cairo);
        cairo_arc(
            cairo,
            hole.x * points_per_mm,
            hole.y * points_per_mm,
            hole.diameter / 2 * points_per_mm,
            0,
            2 * std::numbers::pi
        );
        cairo_stroke(cairo);
    }
    cairo_translate(cairo, box.x * points_per_mm, box.y * points_per_mm);
    for (const Mark& mark : pages_[page].marks)
        std::visit([cairo](const auto& each) { draw(cairo, each); }, mark);
    cairo_restore(cairo);
}

void Document::draw_side(cairo_t* cairo, const SheetSide& side) const {
    for (const PlacedPage& placed : side.pages) {
        if (!placed.page.has_value()) continue;
        cairo_save(cairo);
        cairo_translate(cairo, placed.x_mm * points_per_mm, placed.y_mm * points_per_mm);
        draw_page(cairo, *placed.page);
        cairo_restore(cairo);
    }
    for (const CutMark& mark : side.cut_marks)
        draw(
            cairo,
            LineMark{
                mark.x1_mm * points_per_mm,
                mark.y1_mm * points_per_mm,
                mark.x2_mm * points_per_mm,
                mark.y2_mm * points_per_mm,
                0.4,
                0}
        );
}

std::vector<std::size_t> Document::first_sides() const {
    const std::vector<SheetSide> all = sides();
    std::vector<std::size_t> side_of_page(pages_.size(), 0);
    for (std::size_t side = 0; side < all.size(); ++side)
        for (const PlacedPage& placed : all[side].pages)
            if (placed.page.has_value()) side_of_page[*placed.page] = side;
    std::vector<std::size_t> first;
    for (const std::size_t page : first_pages_)
        first.push_back(side_of_page[page]);
    return first;
}

base::Result<std::string> Document::pdf(const Progress& progress) const {
    std::string bytes;
    const SizeMm sheet = sheet_size(setup_);
    const auto collect = [](void* target, const unsigned char* data, unsigned int length) {
        static_cast<std::string*>(target)->append(reinterpret_cast<const char*>(data), length);
        return CAIRO_STATUS_SUCCESS;
    };
    const std::unique_ptr<cairo_surface_t, SurfaceEnd> surface(cairo_pdf_surface_create_for_stream(
        collect, &bytes, sheet.width * points_per_mm, sheet.height * points_per_mm
    ));
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title_.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "Tablewick");
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, fixed_date);
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_MOD_DATE, fixed_date);
    const std::unique_ptr<cairo_t, CairoEnd> cairo(cairo_create(surface.get()));
    const std::vector<SheetSide> sides = this->sides();
    for (std::size_t i = 0; i < sides.size(); ++i) {
        draw_side(cairo.get(), sides[i]);
        cairo_show_page(cairo.get());
        if (progress && !progress(sides.size() + i + 1, 2 * sides.size())) return stopped();
    }
    cairo_surface_finish(surface.get());
    const cairo_status_t status = cairo_surface_status(surface.get());
    if (status != CAIRO_STATUS_SUCCESS || cairo_status(cairo.get()) != CAIRO_STATUS_SUCCESS)
        return base::Error{
            base::ErrorKind::cannot_write,
            std::string("The pages could not be drawn: ") + cairo_status_to_string(status) + ".",
            {},
            {}};
    return bytes;
}

} // namespace print
