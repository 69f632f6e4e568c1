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

// From "names:fen_given". Error (not_found): there is no such page.
base::Result<WantedPage> wanted_page(const std::string& word);

// Every page with what it can be of, line by line.
std::string list_of_pages();

// Errors: not_found, and those of the kind.
base::Result<Section> make_section(const WantedPage& page, const PrintSource& source);

// A section for each page; the first error of any.
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

// A detail that is put together of several, with | between them: each has a field of its own.
struct DetailField {
    std::string_view name;
    std::vector<std::string_view> choices{}; // empty: a text is typed
};

// Empty: the detail is one text.
std::vector<DetailField> detail_fields(std::string_view key);

// "The long dike|waves" in as many parts as asked for; the last one takes what is left.
std::vector<std::string> split_detail(const std::string& detail, std::size_t parts);
std::string join_detail(const std::vector<std::string>& parts); // empty ones at the end fall away

// What most evenings need on paper, as far as the campaign has it.
std::vector<WantedPage> evening_set(const PrintSource& source);

} // namespace print
