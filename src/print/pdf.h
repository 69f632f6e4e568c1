// Laid pages drawn by Cairo: as a PDF, or onto any surface for a preview.
#pragma once

#include "base/result.h"
#include "print/layout.h"
#include "print/sheets.h"

#include <functional>
#include <string>
#include <vector>

namespace print {

// A page kind with what it holds. Each begins on a page of its own.
struct Section {
    std::string name; // at the foot of its pages
    Blocks blocks;
};

// Asked after every page and every side: done, of all. False stops the work.
using Progress = std::function<bool(std::size_t done, std::size_t all)>;

class Document {
public:
    // Error (not_possible): stopped.
    static base::Result<Document> lay_out(
        const std::vector<Section>& sections,
        const std::string& title,
        const PrintSetup& setup,
        const Progress& progress = {}
    );

    std::size_t page_count() const { return pages_.size(); }

    const std::vector<LaidPage>& pages() const { return pages_; }

    const PrintSetup& setup() const { return setup_; }

    // One page in points, its upper left corner at the origin: what the PDF gets, too.
    void draw_page(cairo_t* cairo, std::size_t page) const;

    // The same for a side of a sheet, with every page on it and the cut marks.
    void draw_side(cairo_t* cairo, const SheetSide& side) const;

    std::vector<SheetSide> sides() const { return sheet_sides(setup_, pages_.size()); }

    // The side on which each section begins.
    std::vector<std::size_t> first_sides() const;

    // The whole file. The same content gives the same bytes. Errors: not_possible (stopped),
    // cannot_write.
    base::Result<std::string> pdf(const Progress& progress = {}) const;

private:
    Document(std::string title, const PrintSetup& setup)
        : title_(std::move(title)), setup_(setup) {}

    std::string title_;
    PrintSetup setup_;
    std::vector<LaidPage> pages_;          // their foot lines included
    std::vector<std::size_t> first_pages_; // of each section
};

} // namespace print
