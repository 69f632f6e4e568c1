// The GM's own pictures: read, turned upright, set smaller, and what is said of those that are
// none.
#include "print/printing.h"
#include "store/samples.h"

#define STB_IMAGE_WRITE_IMPLEMENTATION
#define STB_IMAGE_WRITE_STATIC
#include <doctest/doctest.h>
#include <stb/stb_image_write.h>

#include <cmath>
#include <map>
#include <optional>
#include <set>

namespace {

// Red, green and blue of each pixel, row by row.
using Colours = std::vector<std::uint8_t>;

void collect(void* target, void* data, int size) {
    static_cast<std::string*>(target)->append(
        static_cast<const char*>(data), static_cast<std::size_t>(size)
    );
}

std::string png(int width, int height, const Colours& pixels, int channels = 3) {
    std::string bytes;
    REQUIRE(
        stbi_write_png_to_func(collect, &bytes, width, height, channels, pixels.data(), 0) != 0
    );
    return bytes;
}

std::string plain_png(int width, int height) {
    return png(width, height, Colours(static_cast<std::size_t>(width * height * 3), 128));
}

// With an Exif part that says how the camera was held.
std::string jpeg(int width, int height, const Colours& pixels, int orientation) {
    std::string bytes;
    constexpr int quality = 95;
    REQUIRE(stbi_write_jpg_to_func(collect, &bytes, width, height, 3, pixels.data(), quality) != 0);
    std::string exif("Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0", 25);
    exif += static_cast<char>(orientation);
    exif += std::string(6, '\0');
    const std::size_t length = exif.size() + 2;
    std::string segment("\xFF\xE1", 2);
    segment += static_cast<char>(length / 256);
    segment += static_cast<char>(length % 256);
    return bytes.insert(2, segment + exif);
}

// Files that need no disk.
struct Folder {
    std::map<std::string, std::string> files;

    print::ReadFile reader() const {
        return [this](const std::string& path) -> base::Result<std::string> {
            const auto found = files.find(path);
            if (found != files.end()) return found->second;
            return base::Error{base::ErrorKind::not_found, "There is no such file.", {}, {}};
        };
    }

    std::shared_ptr<const print::Pixels> picture(const std::string& name) const {
        auto read = print::read_picture(reader(), name);
        if (!read.ok()) FAIL(base::to_text(read.error()));
        return std::move(read).value();
    }

    std::string refusal(const std::string& name) const {
        const auto read = print::read_picture(reader(), name);
        return read.ok() ? "" : base::to_text(read.error());
    }
};

struct Table {
    game::Campaign campaign = samples::demo();
    const rules::Rulebook& rulebook = samples::rulebook(campaign.about.rules);
    Folder folder;

    print::PrintSource source() const {
        print::PrintSource source = printing::source(campaign, rulebook);
        source.read_file = folder.reader();
        return source;
    }

    printing::Read read(const std::string& page, const std::string& paper = "a5") const {
        return printing::read(printing::pdf_of(source(), page, printing::setup(paper)));
    }

    print::Document laid_out(const std::string& page, const std::string& paper = "a5") const {
        const std::size_t colon = page.find(':');
        auto blocks =
            print::find_page_kind(page.substr(0, colon))->make(source(), page.substr(colon + 1));
        if (!blocks.ok()) FAIL(base::to_text(blocks.error()));
        return print::Document::lay_out(
                   {{"", std::move(blocks).value()}}, "", printing::setup(paper)
        )
            .value();
    }

    std::string refusal(const std::string& page) const {
        const std::size_t colon = page.find(':');
        const auto made =
            print::find_page_kind(page.substr(0, colon))->make(source(), page.substr(colon + 1));
        return made.ok() ? "" : base::to_text(made.error());
    }
};

std::optional<print::PictureMark> picture_on(const print::Document& document) {
    for (const print::Mark& mark : document.pages().front().marks)
        if (const auto* picture = std::get_if<print::PictureMark>(&mark)) return *picture;
    return std::nullopt;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("pictures: a PNG keeps its colours, and lies on white where it is see-through") {
    Folder folder;
    folder.files["map.png"] = png(2, 1, {200, 10, 20, 255, 0, 0, 0, 0}, 4);
    const auto picture = folder.picture("map.png");
    CHECK(picture->width == 2);
    CHECK(picture->height == 1);
    CHECK(picture->rgb == Colours{200, 10, 20, 255, 255, 255});
}

TEST_CASE("pictures: a photograph stands upright however the camera was held") {
    // Dark upper left, the rest light: where the dark quarter comes for each value of the tag.
    // Source: Exif 2.3, tag Orientation, from memory.
    constexpr int side = 16;
    Colours pixels;
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < 2 * side; ++x)
            pixels.insert(pixels.end(), 3, x < side && y < side / 2 ? 20 : 230);

    struct Expected {
        int orientation;
        bool is_on_side, is_right, is_below;
    };

    for (const Expected& each :
         {Expected{1, false, false, false},
          {2, false, true, false},
          {3, false, true, true},
          {4, false, false, true},
          {5, true, false, false},
          {6, true, true, false},
          {7, true, true, true},
          {8, true, false, true}}) {
        CAPTURE(each.orientation);
        Folder folder;
        folder.files["p.jpg"] = jpeg(2 * side, side, pixels, each.orientation);
        CHECK(print::exif_orientation(folder.files["p.jpg"]) == each.orientation);
        const auto picture = folder.picture("p.jpg");
        CHECK(picture->width == (each.is_on_side ? side : 2 * side));
        CHECK(picture->height == (each.is_on_side ? 2 * side : side));
        for (const bool right : {false, true})
            for (const bool below : {false, true}) {
                const std::uint8_t* at =
                    picture->at(right ? picture->width - 2 : 1, below ? picture->height - 2 : 1);
                CHECK((at[0] < 100) == (right == each.is_right && below == each.is_below));
            }
    }
}

TEST_CASE("pictures: the orientation of a broken file is upright") {
    const std::string whole = jpeg(8, 8, Colours(192, 90), 6);
    for (std::size_t length = 0; length < 60; ++length) {
        const int found = print::exif_orientation(whole.substr(0, length));
        CHECK((found == 1 || found == 6));
    }
    CHECK(print::exif_orientation(jpeg(8, 8, Colours(192, 90), 99)) == 1);
}

TEST_CASE("pictures: what is no picture is refused with its name") {
    Folder folder;
    folder.files["notes.png"] = "Dear players";
    folder.files["empty.jpg"] = "";
    folder.files["half.png"] = plain_png(40, 40).substr(0, 60);
    folder.files["whole.png"] = plain_png(40, 40);
    CHECK(has(folder.refusal("none.png"), "none.png: There is no such file."));
    for (const char* name : {"notes.png", "empty.jpg", "half.png"})
        CHECK(
            folder.refusal(name) ==
            std::string(name) + ": This is no picture that can be read. Take a PNG or JPEG file."
        );
    CHECK(folder.refusal("whole.png").empty());
    CHECK(
        has(base::to_text(print::read_picture({}, "a.png").error()),
            "a.png: No pictures can be read here.")
    );
}

TEST_CASE("pictures: more than 60 million pixels are refused before they take any room") {
    Folder folder;
    std::string huge = plain_png(4, 4);
    // Width and height stand in bytes 16 to 23 (PNG, ISO 15948); 8000 x 8000 is 64 million.
    huge.replace(16, 8, std::string("\0\0\x1F\x40\0\0\x1F\x40", 8));
    folder.files["huge.png"] = huge;
    CHECK(
        folder.refusal("huge.png") ==
        "huge.png: The picture has 8000 x 8000 pixels; at most 60 million can be printed. "
        "Make it smaller."
    );
}

TEST_CASE("pictures: set smaller, each pixel is the mean of what it covers") {
    auto pixels = std::make_shared<print::Pixels>();
    *pixels = {4, 2, {}};
    for (const int grey : {0, 100, 200, 100, 50, 50, 0, 100})
        pixels->rgb.insert(pixels->rgb.end(), 3, static_cast<std::uint8_t>(grey));
    const auto half = print::scaled_down(pixels, 2, 9);
    REQUIRE(half->width == 2);
    REQUIRE(half->height == 1);
    CHECK(half->at(0, 0)[0] == 50);
    CHECK(half->at(1, 0)[1] == 100);
    CHECK(print::scaled_down(pixels, 4, 2) == pixels); // and never larger
    const auto odd = print::scaled_down(pixels, 3, 9);
    CHECK(odd->width == 3);
    CHECK(odd->height == 2);
    CHECK(odd->at(0, 0)[0] == 25); // the whole of 0 and a third of 100
}

TEST_CASE("pictures: on a handout a picture keeps its shape and has no more than 300 dots an inch"
) {
    Table table;
    table.folder.files["wide.png"] = plain_png(3000, 1000);
    table.folder.files["small.png"] = plain_png(30, 40);
    for (const char* paper : {"a5", "a6", "letter"}) {
        CAPTURE(paper);
        const auto document = table.laid_out("handout:wide.png|The dike", paper);
        REQUIRE(document.page_count() == 1);
        const auto picture = picture_on(document);
        REQUIRE(picture.has_value());
        CHECK(picture->width / picture->height == doctest::Approx(3.0).epsilon(0.01));
        CHECK(picture->width == doctest::Approx(print::content_width(document.setup())));
        const double dots = picture->pixels->width / (picture->width / 72);
        CHECK(dots <= 301);
        CHECK(dots > 290);
        const auto small = picture_on(table.laid_out("handout:small.png", paper));
        REQUIRE(small.has_value());
        CHECK(small->pixels->width == 30);
        CHECK(small->width / small->height == doctest::Approx(0.75));
    }
    CHECK(has(table.read("handout:wide.png|The dike").sides[0].text, "The dike"));
}

TEST_CASE("pictures: a caption of any length stays whole, and a handout may be words alone") {
    Table table;
    table.folder.files["p.png"] = plain_png(30, 40);
    std::string words;
    for (int i = 0; i < 900; ++i)
        words += "word" + std::to_string(i) + " ";
    const auto read = table.read("handout:p.png|" + words);
    CHECK(read.sides.size() > 1);
    std::string all;
    for (const printing::Side& side : read.sides)
        all += side.text;
    CHECK(has(all, "word0"));
    CHECK(has(all, "word899"));
    CHECK(has(table.read("handout:|Come at dusk").sides[0].text, "Come at dusk"));
    CHECK(table.read("handout").sides.size() == 1);
}

TEST_CASE("pictures: a divider carries its title, one of our ornaments, and a picture if wished") {
    Table table;
    table.folder.files["p.png"] = plain_png(30, 40);
    std::set<std::string> different;
    for (const char* ornament : {"reeds", "waves", "branch", "stars", "knot", "spirals"}) {
        CAPTURE(ornament);
        const auto setup = printing::setup("a5");
        const std::string page = std::string("divider:The long dike|") + ornament;
        const std::string pdf = printing::pdf_of(table.source(), page, setup);
        CHECK(different.insert(pdf).second);
        CHECK(has(printing::read(pdf).sides[0].text, "The long dike"));
        const auto document = table.laid_out(page + "| p.png");
        REQUIRE(picture_on(document).has_value());
        for (const print::Mark& mark : document.pages().front().marks)
            if (const auto* curve = std::get_if<print::CurveMark>(&mark))
                for (const print::Point& point : curve->points) { // within the page
                    CHECK(curve->x + point.x >= -0.1);
                    CHECK(curve->x + point.x <= print::content_width(setup) + 0.1);
                    CHECK(curve->y + point.y >= -0.1);
                    CHECK(curve->y + point.y <= print::content_height(setup) + 0.1);
                    CHECK(std::isfinite(point.x + point.y));
                }
    }
    CHECK(has(table.read("divider").sides[0].text, table.campaign.about.title.substr(0, 5)));
    CHECK(has(table.refusal("divider:Night|weaves"), "Ornaments: reeds, waves, branch, stars"));
    CHECK(has(table.refusal("divider:Night|none.png"), "none.png: There is no such file."));
    for (const char* paper : {"a6", "personal", "letter"}) // the check stands in printing::pdf_of
        CHECK_FALSE(table.read("divider:" + std::string(300, 'W'), paper).sides.empty());
}

TEST_CASE("pictures: the same picture gives the same bytes") {
    Table table;
    table.folder.files["p.png"] = plain_png(600, 400);
    const auto setup = printing::setup("a5");
    const std::string page = "divider:Night|stars|p.png";
    CHECK(
        printing::pdf_of(table.source(), page, setup) ==
        printing::pdf_of(table.source(), page, setup)
    );
}
