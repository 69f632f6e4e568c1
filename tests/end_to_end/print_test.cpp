// The real program prints: pages chosen by the mouse, saved, and remembered; and the same from the
// command line.
#include "end_to_end/campaign_on_disk.h"
#include "end_to_end/screen.h"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>

using end_to_end::Folder;
using end_to_end::Program;
using end_to_end::read_json;
using end_to_end::Screen;
using end_to_end::wait_until;
using nlohmann::json;

namespace {

const std::filesystem::path source = TABLEWICK_SOURCE_DIR;

std::string content_of(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

bool is_whole_pdf(const std::filesystem::path& file) {
    const std::string content = content_of(file);
    return content.compare(0, 5, "%PDF-") == 0 &&
           content.find("%%EOF", content.size() - std::min<std::size_t>(content.size(), 16)) !=
               std::string::npos;
}

} // namespace

TEST_CASE("end to end: an evening's pages are chosen, saved beside the campaign, and remembered") {
    const Folder folder;
    const Screen screen;
    const std::filesystem::path file = folder.path() / "evening.json";
    std::filesystem::copy_file(source / "demo_campaign.json", file);
    const std::filesystem::path pages = folder.path() / "evening-pages.pdf";
    {
        Program program(screen, folder, file);
        program.press("Prep");
        program.key("ctrl+p");
        program.press("Set for an evening");
        program.press("Open it afterwards"); // off: nothing to open it with here
        program.press("Save PDF");
        CHECK(wait_until([&] { return is_whole_pdf(pages); }));
        REQUIRE(program.quit());
    }
    const std::string first = content_of(pages);
    {
        Program program(screen, folder, file);
        program.press("Prep");
        program.key("ctrl+p");
        program.press("Remove all"); // the set was there
        REQUIRE(wait_until([&] { return !program.shows("Remove all"); }));
        program.press("Set for an evening");
        std::filesystem::remove(pages);
        program.press("Save PDF");
        CHECK(wait_until([&] { return is_whole_pdf(pages); }));
        REQUIRE(program.quit());
    }
    CHECK(content_of(pages) == first); // the same campaign, the same bytes
}
