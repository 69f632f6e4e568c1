#include "print/printing.h"

#include "store/climate_json.h"
#include "store/creature_library.h"
#include "store/name_lists.h"
#include "store/prices.h"
#include "store/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <poppler-document.h>
#include <poppler-font.h>
#include <poppler-page.h>

namespace printing {

namespace {

std::string utf8(const poppler::ustring& text) {
    const poppler::byte_array bytes = text.to_utf8();
    return {bytes.begin(), bytes.end()};
}

struct Box {
    double left, top, right, foot;
    std::string text; // the beginning
};

std::string where(const Box& box) {
    return "[" + box.text + "] " + std::to_string(box.left) + " " + std::to_string(box.top) +
           " to " + std::to_string(box.right) + " " + std::to_string(box.foot);
}

// What no text may lie upon: lines, borders of boxes, pictures. Texts that stand below a line that
// is written on, or beside one, do not meet it.
std::vector<Box> edges_of(const print::LaidPage& page) {
    std::vector<Box> edges;
    for (const print::Mark& mark : page.marks) {
        if (const auto* line = std::get_if<print::LineMark>(&mark)) {
            edges.push_back(
                {std::min(line->x1, line->x2),
                 std::min(line->y1, line->y2),
                 std::max(line->x1, line->x2),
                 std::max(line->y1, line->y2),
                 "line"}
            );
            // Thin as they are, they count as half a point each way.
            edges.back().left -= 0.25;
            edges.back().right += 0.25;
            edges.back().top -= 0.25;
            edges.back().foot += 0.25;
        } else if (const auto* box = std::get_if<print::BoxMark>(&mark)) {
            const double right = box->x + box->width;
            const double foot = box->y + box->height;
            edges.push_back({box->x, box->y, right, box->y + 0.5, "box"});
            edges.push_back({box->x, foot - 0.5, right, foot, "box"});
            edges.push_back({box->x, box->y, box->x + 0.5, foot, "box"});
            edges.push_back({right - 0.5, box->y, right, foot, "box"});
        } else if (const auto* picture = std::get_if<print::PictureMark>(&mark)) {
            edges.push_back(
                {picture->x,
                 picture->y,
                 picture->x + picture->width,
                 picture->y + picture->height,
                 "picture"}
            );
        }
    }
    return edges;
}

} // namespace

print::PrintSource source(const game::Campaign& campaign, const rules::Rulebook& rulebook) {
    static const std::filesystem::path assets = std::string(TABLEWICK_SOURCE_DIR) + "/assets";
    static const auto names = store::load_name_lists(assets).lists;
    static const auto climates = store::load_climates(assets).climates;
    static const auto library =
        store::load_creature_library(assets, samples::rulebook(rules::Family::srd5)).value();
    static const auto prices =
        store::load_prices(assets, rules::Family::four_degree, rules::SrdEdition::srd_5_1, {})
            .value();
    return {campaign, rulebook, names, library, climates, prices};
}

Read read(const std::string& pdf) {
    Read read;
    const std::unique_ptr<poppler::document> document(
        poppler::document::load_from_raw_data(pdf.data(), static_cast<int>(pdf.size()))
    );
    REQUIRE(document != nullptr);
    for (int i = 0; i < document->pages(); ++i) {
        const std::unique_ptr<poppler::page> page(document->create_page(i));
        const poppler::rectf media = page->page_rect(poppler::media_box);
        Side side;
        side.width_mm = media.width() / print::points_per_mm;
        side.height_mm = media.height() / print::points_per_mm;
        side.text = utf8(page->text());
        for (const poppler::text_box& box : page->text_list()) {
            const poppler::rectf at = box.bbox();
            side.words.push_back({utf8(box.text()), at.left(), at.top(), at.right(), at.bottom()});
        }
        read.sides.push_back(std::move(side));
    }
    for (const poppler::font_info& font : document->fonts()) {
        read.fonts.push_back(font.name());
        read.all_embedded = read.all_embedded && font.is_embedded();
    }
    return read;
}

print::PrintSetup setup(const std::string& paper) {
    print::PrintSetup setup;
    setup.paper = print::find_paper(paper);
    REQUIRE(setup.paper != nullptr);
    return setup;
}

std::string
pdf_of(const print::PrintSource& source, const std::string& page, const print::PrintSetup& setup) {
    const std::size_t colon = page.find(':');
    const print::PageKind* kind = print::find_page_kind(page.substr(0, colon));
    REQUIRE(kind != nullptr);
    auto blocks = kind->make(source, colon == std::string::npos ? "" : page.substr(colon + 1));
    if (!blocks.ok()) FAIL(base::to_text(blocks.error()));
    const auto document = print::Document::lay_out(
        {{std::string(kind->title), std::move(blocks).value()}}, "Test", setup
    );
    REQUIRE(document.ok());
    check_no_text_is_cut(document.value());
    const auto pdf = document.value().pdf();
    REQUIRE(pdf.ok());
    return pdf.value();
}

void check_no_text_is_cut(const print::Document& document) {
    constexpr double tolerance = 0.1; // points
    const print::PrintSetup& setup = document.setup();
    for (const print::LaidPage& page : document.pages()) {
        const double width = print::content_width(setup, page.use);
        const double height = print::content_height(setup, page.use) + print::foot_height(setup);
        std::vector<Box> boxes;
        for (const print::Mark& mark : page.marks) {
            const auto* text = std::get_if<print::TextMark>(&mark);
            if (text == nullptr || text->line.width == 0) continue;
            boxes.push_back(
                {text->x,
                 text->y,
                 text->x + text->line.width,
                 text->y + text->line.height,
                 std::string(pango_layout_get_text(text->line.layout.get())).substr(0, 30)}
            );
        }
        std::sort(boxes.begin(), boxes.end(), [](const Box& one, const Box& other) {
            return one.top < other.top;
        });
        std::string outside;
        std::string meeting;
        std::string crossed;
        for (std::size_t i = 0; i < boxes.size(); ++i) {
            const Box& box = boxes[i];
            if (box.left < -tolerance || box.right > width + tolerance || box.top < -tolerance ||
                box.foot > height + tolerance)
                outside = where(box);
            for (std::size_t other = i + 1;
                 other < boxes.size() && boxes[other].top < box.foot - tolerance;
                 ++other)
                if (box.left < boxes[other].right - tolerance &&
                    boxes[other].left < box.right - tolerance)
                    meeting = where(box) + " and " + where(boxes[other]);
        }
        for (const Box& edge : edges_of(page))
            for (const Box& box : boxes) {
                constexpr double blank = 1.2; // points above and below letters, within their line
                const bool is_met = box.left < edge.right - tolerance &&
                                    edge.left < box.right - tolerance &&
                                    box.top < edge.foot - blank && edge.top < box.foot - blank;
                if (is_met) crossed = where(box) + " by " + where(edge);
            }
        CHECK(outside == std::string());
        CHECK(meeting == std::string());
        CHECK(crossed == std::string());
    }
}

} // namespace printing
