#include "print/order.h"

namespace print {

namespace {

base::Error no_page(const std::string& key) {
    return {
        base::ErrorKind::not_found,
        "There is no page " + key + ".",
        {},
        "--print help lists all pages."};
}

} // namespace

std::string list_of_pages() {
    std::string text = "Pages:";
    for (const PageKind& kind : page_kinds()) {
        text += "\n    " + std::string(kind.key);
        if (!kind.detail.empty()) text += "[:" + std::string(kind.detail) + "]";
        text += " - " + std::string(kind.about);
    }
    return text;
}

base::Result<WantedPage> wanted_page(const std::string& word) {
    const std::size_t colon = word.find(':');
    const std::string key = word.substr(0, colon);
    if (find_page_kind(key) == nullptr) return no_page(key);
    return WantedPage{key, colon == std::string::npos ? "" : word.substr(colon + 1)};
}

base::Result<Section> make_section(const WantedPage& page, const PrintSource& source) {
    const PageKind* kind = find_page_kind(page.key);
    if (kind == nullptr) return no_page(page.key);
    auto blocks = kind->make(source, page.detail);
    if (!blocks.ok()) return blocks.error();
    return Section{std::string(kind->title), std::move(blocks).value()};
}

base::Result<std::vector<Section>>
make_sections(const std::vector<WantedPage>& pages, const PrintSource& source) {
    std::vector<Section> sections;
    for (const WantedPage& page : pages) {
        auto section = make_section(page, source);
        if (!section.ok()) return section.error();
        sections.push_back(std::move(section).value());
    }
    return sections;
}

std::vector<WantedPage> evening_set(const PrintSource& source) {
    std::vector<WantedPage> set{
        {"session-plan"},
        {"initiative", "blank"},
        {"party"},
        {"reminders"},
        {"creatures"},
        {"conditions"},
        {"difficulty"},
        {"names"},
        {"weather"},
        {"week"},
        {"notes", "blank"},
        {"recap", "blank"}};
    std::erase_if(set, [&source](const WantedPage& page) {
        return !make_section(page, source).ok();
    });
    return set;
}

} // namespace print
