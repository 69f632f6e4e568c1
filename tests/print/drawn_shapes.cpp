#include "print/drawn_shapes.h"

#include "print/paper.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

namespace printing {

namespace {

// A file that goes away by itself.
struct Kept {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("tablewick_drawn_" + std::to_string(getpid()));

    explicit Kept(const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

    ~Kept() { std::filesystem::remove(path); }

    Kept(const Kept&) = delete;
    Kept& operator=(const Kept&) = delete;
};

std::string output_of(const std::string& command) {
    std::string text;
    FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    char part[4096];
    for (std::size_t read = 0; (read = fread(part, 1, sizeof part, pipe)) > 0;)
        text.append(part, read);
    REQUIRE(pclose(pipe) == 0);
    return text;
}

// What stands behind `name` up to `end`; empty where it does not occur.
std::string behind(const std::string& text, const std::string& name, char end) {
    const std::size_t at = text.find(name);
    if (at == std::string::npos) return {};
    const std::size_t from = at + name.size();
    return text.substr(from, text.find(end, from) - from);
}

Shape shape_of(const std::string& element) {
    Shape shape{1e9, 1e9, -1e9, -1e9};
    shape.thickness_mm = std::stod(behind(element, "stroke-width:", ';')) / print::points_per_mm;
    shape.grey_percent =
        static_cast<int>(std::lround(std::stod(behind(element, "stroke:rgb(", '%'))));
    // pdftocairo fits the page into itself with a transform; the numbers of the path are the PDF's.
    std::istringstream path(behind(element, " d=\"", '"'));
    for (std::string word; path >> word;) {
        if (word == "Z") continue;
        if (word == "M" || word == "L" || word == "C") {
            shape.is_bent = shape.is_bent || word == "C";
            shape.parts += word == "M" ? 0 : 1;
            continue;
        }
        const double x = std::stod(word) / print::points_per_mm;
        double y = 0;
        path >> y;
        y /= print::points_per_mm;
        shape.left = std::min(shape.left, x);
        shape.right = std::max(shape.right, x);
        shape.top = std::min(shape.top, y);
        shape.foot = std::max(shape.foot, y);
    }
    return shape;
}

} // namespace

std::vector<Shape> shapes_on(const std::string& pdf, int side) {
    const Kept file(pdf);
    const std::string number = std::to_string(side);
    std::istringstream drawing(output_of(
        "pdftocairo -svg -origpagesizes -f " + number + " -l " + number + " '" +
        file.path.string() + "' -"
    ));
    std::vector<Shape> shapes;
    for (std::string line; std::getline(drawing, line);)
        if (line.find("<path") == 0 && line.find("stroke-width:") != std::string::npos)
            shapes.push_back(shape_of(line));
    return shapes;
}

std::vector<double> picture_dots(const std::string& pdf) {
    const Kept file(pdf);
    std::istringstream list(output_of("pdfimages -list '" + file.path.string() + "'"));
    std::vector<double> dots;
    std::string line;
    std::getline(list, line); // its head
    std::getline(list, line);
    while (std::getline(list, line)) {
        constexpr int dots_column = 12;
        std::istringstream words(line);
        std::string word;
        for (int i = 0; i <= dots_column; ++i)
            words >> word;
        dots.push_back(std::stod(word));
    }
    return dots;
}

} // namespace printing
