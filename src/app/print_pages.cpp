#include "app/print_pages.h"

#include "store/files.h"
#include "store/text_file.h"

namespace app {

print::ReadFile picture_reader(const std::string& campaign_file) {
    const std::filesystem::path folder = std::filesystem::path(campaign_file).parent_path();
    return [folder](const std::string& path) {
        const std::filesystem::path typed = store::typed_path(path);
        std::error_code ignored;
        // An absolute name replaces the folder.
        const bool is_beside = std::filesystem::exists(folder / typed, ignored);
        return store::disk().read(is_beside ? folder / typed : typed);
    };
}

base::Result<print::PrintOrder> print_order(const Options& options) {
    print::PrintOrder order{{}, options.print_setup};
    for (const std::string& word : options.pages) {
        auto page = print::wanted_page(word);
        if (!page.ok()) return page.error();
        order.pages.push_back(std::move(page).value());
    }
    return order;
}

print::PrintSource print_source(OpenCampaign& campaign) {
    return {
        campaign.document().view(),
        campaign.rulebook(),
        campaign.name_lists(),
        campaign.library(),
        campaign.climates(),
        campaign.prices(),
        picture_reader(campaign.file_name())};
}

base::Result<print::Document> lay_out_pages(
    const print::PrintOrder& order,
    const print::PrintSource& source,
    const print::Progress& progress
) {
    const auto sections = print::make_sections(order.pages, source);
    if (!sections.ok()) return sections.error();
    return print::Document::lay_out(
        sections.value(), source.campaign.about.title, order.setup, progress
    );
}

base::Result<std::string> save_pages(
    const print::Document& document, const std::string& out, const print::Progress& progress
) {
    const auto bytes = document.pdf(progress);
    if (!bytes.ok()) return bytes.error();
    // Absolute, so that the folder to be synced has a name.
    std::error_code error;
    const std::filesystem::path target = std::filesystem::absolute(store::typed_path(out), error);
    std::filesystem::path temporary = target;
    temporary += ".new";
    const auto written = store::write_whole(store::disk(), temporary, target, bytes.value());
    if (!written.ok()) {
        base::Error error_shown = written.error();
        error_shown.place.file = out; // not that of the temporary file
        return error_shown;
    }
    const std::size_t pages = document.page_count();
    return out + ": " + std::to_string(pages) + (pages == 1 ? " page" : " pages");
}

} // namespace app
