// What is to be printed and how: the pages by name and the choices for the paper. A plain value, to
// be remembered and compared.
#pragma once

#include "base/result.h"
#include "print/page_kinds.h"
#include "print/paper.h"
#include "print/pdf.h"

#include <string>
#include <vector>

namespace print {

struct WantedPage {
    std::string key;      // of its kind
    std::string detail{}; // what it is of, as typed behind the colon

    bool operator==(const WantedPage&) const = default;
};

struct PrintOrder {
    std::vector<WantedPage> pages;
    PrintSetup setup{};

    bool operator==(const PrintOrder&) const = default;
};

// From "names:fen_given". Error (not_found): there is no such page; it lists those there are.
base::Result<WantedPage> wanted_page(const std::string& word);

// A section for each page. Errors: those of the kinds.
base::Result<std::vector<Section>>
make_sections(const std::vector<WantedPage>& pages, const PrintSource& source);

// One of the answers to the question what a page is of.
struct DetailOffer {
    std::string detail; // for WantedPage; empty: what is usual
    std::string words;  // "Session 7, The Ferry"
};

// What a page of this kind can be of, the usual one first; empty where there is nothing to choose.
std::vector<DetailOffer> detail_offers(std::string_view key, const PrintSource& source);

// What may be typed that is not among the offers, in two or three words: "a date". Empty: nothing.
std::string_view typed_detail_hint(std::string_view key);

// What most evenings need on paper.
std::vector<WantedPage> evening_set();

} // namespace print
