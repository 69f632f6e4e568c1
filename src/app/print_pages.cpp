#include "app/print_pages.h"

#include "print/pdf.h"
#include "store/files.h"

namespace app {

namespace {

std::string list_of_pages() {
    std::string text;
    for (const print::PageKind& kind : print::page_kinds()) {
        text += "\n    " + std::string(kind.key);
        if (!kind.detail.empty()) text += "[:" + std::string(kind.detail) + "]";
        text += " - " + std::string(kind.about);
    }
    return text;
}

} // namespace

base::Result<std::vector<WantedPage>> wanted_pages(const Options& options) {
    std::vector<WantedPage> wanted;
    for (const std::string& word : options.pages) {
        const std::size_t colon = word.find(':');
        const print::PageKind* kind = print::find_page_kind(word.substr(0, colon));
        if (kind == nullptr)
            return base::Error{
                base::ErrorKind::not_found,
                "There is no page " + word.substr(0, colon) + ".",
                {},
                "Pages:" + list_of_pages()};
        wanted.push_back({kind, colon == std::string::npos ? "" : word.substr(colon + 1)});
    }
    return wanted;
}

base::Result<std::string>
print_pages(OpenCampaign& campaign, const std::vector<WantedPage>& wanted, const Options& options) {
    const game::Campaign& values = campaign.document().view();
    const print::PrintSource source{
        values,
        campaign.rulebook(),
        campaign.name_lists(),
        campaign.library(),
        campaign.climates(),
        campaign.prices()};
    std::vector<print::Section> sections;
    for (const WantedPage& page : wanted) {
        auto blocks = page.kind->make(source, page.detail);
        if (!blocks.ok()) return blocks.error();
        sections.push_back({std::string(page.kind->title), std::move(blocks).value()});
    }
    const auto document =
        print::Document::lay_out(sections, values.about.title, options.print_setup);
    if (!document.ok()) return document.error();
    const auto bytes = document.value().pdf();
    if (!bytes.ok()) return bytes.error();

    // Absolute, so that the folder to be synced has a name.
    std::error_code error;
    const std::filesystem::path target = std::filesystem::absolute(options.out, error);
    std::filesystem::path temporary = target;
    temporary += ".new";
    const auto written = store::write_whole(store::disk(), temporary, target, bytes.value());
    if (!written.ok()) {
        base::Error error_shown = written.error();
        error_shown.place.file = options.out; // not that of the temporary file
        return error_shown;
    }
    const std::size_t pages = document.value().page_count();
    return options.out + ": " + std::to_string(pages) + (pages == 1 ? " page" : " pages");
}

} // namespace app
