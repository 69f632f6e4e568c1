// What is drawn on printed pages, read back by Poppler's own renderer (pdftocairo, poppler-utils):
// lines, boxes and circles with their places in millimetres.
#pragma once

#include <string>
#include <vector>

namespace printing {

struct Shape {
    double left = 0; // mm, from the upper left corner of the sheet
    double top = 0;
    double right = 0;
    double foot = 0;
    double thickness_mm = 0;
    int grey_percent = 0; // of its stroke: 0 black, 100 white
    bool is_bent = false;
    int parts = 0; // lines and curves it is made of

    double width() const { return right - left; }

    double height() const { return foot - top; }
};

// Everything stroked on a side, from 1, in the order it is drawn.
std::vector<Shape> shapes_on(const std::string& pdf, int side);

// Dots an inch of the pictures in a file, across.
std::vector<double> picture_dots(const std::string& pdf);

} // namespace printing
