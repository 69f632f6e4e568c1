// Ornaments of our own, drawn in a box two units wide and one high, (0, 0) in its middle, the foot
// down; then set to their size.
#include "print/pieces.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace print {

namespace {

constexpr double pi = std::numbers::pi;

using Shapes = std::vector<CurveMark>;

void add(Shapes& shapes, std::vector<Point> points, double thickness, bool is_filled = false) {
    CurveMark shape;
    shape.points = std::move(points);
    shape.thickness = thickness;
    shape.is_filled = is_filled;
    shapes.push_back(std::move(shape));
}

// The same at the other side.
void add_both(Shapes& shapes, std::vector<Point> points, double thickness, bool is_filled = false) {
    add(shapes, points, thickness, is_filled);
    for (Point& point : points)
        point.x = -point.x;
    add(shapes, std::move(points), thickness, is_filled);
}

// A leaf from one point to another, as wide as a share of its length.
std::vector<Point> leaf(Point from, Point to, double width) {
    const double dx = to.x - from.x;
    const double dy = to.y - from.y;
    const Point one{from.x + dx / 2 - dy * width, from.y + dy / 2 + dx * width};
    const Point other{from.x + dx / 2 + dy * width, from.y + dy / 2 - dx * width};
    return {from, one, one, to, other, other, from};
}

// A point between others, evenly through them all: straight parts so short that they read as bent.
template <class At>
std::vector<Point> through(double from, double to, int parts, const At& at) {
    std::vector<Point> points{at(from)};
    for (int i = 1; i <= parts; ++i) {
        const Point start = points.back();
        const Point end = at(from + (to - from) * i / parts);
        points.push_back({start.x + (end.x - start.x) / 3, start.y + (end.y - start.y) / 3});
        points.push_back({end.x - (end.x - start.x) / 3, end.y - (end.y - start.y) / 3});
        points.push_back(end);
    }
    return points;
}

std::vector<Point> circle(Point middle, double radius) {
    return through(0, 2 * pi, 24, [&](double angle) {
        return Point{middle.x + radius * std::cos(angle), middle.y + radius * std::sin(angle)};
    });
}

// A bed of reeds bent by the wind from the middle.
Shapes reeds() {
    Shapes shapes;
    for (int i = 0; i < 5; ++i) {
        const double root = 0.03 + i * 0.05;
        const double reach = 0.08 + i * 0.17;
        const double top = -0.48 + i * 0.12;
        const Point head{root + reach * 0.86, top + 0.14};
        add_both(shapes, {{root, 0.5}, {root, 0.1}, {root + reach * 0.4, top + 0.3}, head}, 0.010);
        add_both(shapes, leaf(head, {root + reach, top}, 0.34), 0, true);
    }
    add(shapes, through(-1, 1, 2, [](double x) { return Point{x * 0.55, 0.5}; }), 0.010);
    return shapes;
}

Shapes waves() {
    Shapes shapes;
    for (int row = 0; row < 3; ++row) {
        const double half = 0.95 - row * 0.28;
        const double y = -0.22 + row * 0.22;
        add(shapes,
            through(
                -half,
                half,
                160,
                [y](double x) {
                    return Point{x, y + 0.08 * std::cos(x * 4 * pi)};
                }
            ),
            row == 0 ? 0.016 : 0.011);
    }
    return shapes;
}

Shapes branch() {
    Shapes shapes;
    const auto stem = [](double x) { return Point{x, 0.1 * std::sin(x * 3.4)}; };
    add_both(shapes, through(0.1, 0.92, 40, stem), 0.012);
    for (int i = 0; i < 6; ++i) {
        const double x = 0.2 + i * 0.125;
        const double length = 0.24 - i * 0.022;
        const Point from = stem(x);
        const double side = i % 2 == 0 ? -1 : 1;
        add_both(
            shapes,
            leaf(from, {from.x + length * 0.75, from.y + side * length}, 0.24),
            0.008,
            i % 2 == 0
        );
    }
    add_both(shapes, leaf(stem(0.92), {1.0, stem(0.92).y - 0.05}, 0.3), 0, true);
    add(shapes, circle({0, 0}, 0.05), 0, true);
    return shapes;
}

// Pointed where the sine is full; the points of two lengths take turns.
void add_star(Shapes& shapes, Point middle, double radius, int points, bool is_filled) {
    std::vector<Point> outline;
    for (int i = 0; i <= 2 * points; ++i) {
        const double angle = pi * i / points - pi / 2;
        const double tip = (i / 2) % 2 == 0 ? radius : radius * 0.62;
        const double reach = i % 2 == 0 ? tip : radius * 0.26;
        const Point at{middle.x + reach * std::cos(angle), middle.y + reach * std::sin(angle)};
        if (i > 0) {
            outline.push_back(outline.back());
            outline.push_back(at);
        }
        outline.push_back(at);
    }
    add(shapes, std::move(outline), 0.012, is_filled);
}

Shapes stars() {
    Shapes shapes;
    add_star(shapes, {0, 0}, 0.42, 8, true);
    for (const double side : {-1.0, 1.0}) {
        add_star(shapes, {side * 0.56, 0}, 0.18, 8, false);
        add_star(shapes, {side * 0.88, 0}, 0.1, 4, true);
        add(shapes, circle({side * 0.74, -0.1}, 0.014), 0, true);
        add(shapes, circle({side * 0.36, 0.2}, 0.018), 0, true);
        add(shapes, circle({side * 0.4, -0.22}, 0.012), 0, true);
    }
    return shapes;
}

// Two strands that pass over each other in turn.
Shapes knot() {
    Shapes shapes;
    constexpr int crossings = 7;
    constexpr double strand = 0.03;
    const auto at = [](double turn, double side) {
        // A wave that begins and ends on the middle line, one crossing a half turn.
        const double x = -0.92 + 1.84 * turn / crossings;
        return Point{x, side * 0.2 * std::sin(turn * pi)};
    };
    const auto lay = [&](double from, double to, double side, double thickness, double grey) {
        add(shapes, through(from, to, 24, [&](double turn) { return at(turn, side); }), thickness);
        shapes.back().grey = grey;
    };
    lay(0, crossings, 1, strand, 0);
    lay(0, crossings, -1, strand, 0);
    for (int i = 1; i < crossings; ++i) { // the upper strand with a blank edge beside it
        const double side = i % 2 == 0 ? 1 : -1;
        lay(i - 0.22, i + 0.22, side, strand * 2.6, 1);
        lay(i - 0.3, i + 0.3, side, strand, 0);
    }
    for (const double x : {-0.97, 0.97})
        add(shapes, circle({x, 0}, 0.035), 0, true);
    return shapes;
}

Shapes spirals() {
    Shapes shapes;
    constexpr double turns = 2.6 * 2 * pi;
    for (const double side : {-1.0, 1.0}) {
        add(shapes,
            through(
                0,
                turns,
                120,
                [side](double angle) {
                    const double reach = 0.02 + 0.32 * angle / turns;
                    return Point{
                        side * (0.5 - reach * std::cos(angle + 0.4 * pi)),
                        0.02 + reach * std::sin(angle + 0.4 * pi)};
                }
            ),
            0.016);
        for (int i = 0; i < 3; ++i)
            add(shapes, circle({side * 0.92, 0.2 - i * 0.12}, 0.03 - i * 0.007), 0, true);
    }
    add(shapes, leaf({0, 0.34}, {0, -0.34}, 0.2), 0.012);
    add(shapes, circle({0, 0}, 0.03), 0, true);
    return shapes;
}

Shapes shapes_of(Ornament ornament) {
    switch (ornament) {
    case Ornament::reeds: return reeds();
    case Ornament::waves: return waves();
    case Ornament::branch: return branch();
    case Ornament::stars: return stars();
    case Ornament::knot: return knot();
    case Ornament::spirals: return spirals();
    }
    return {};
}

} // namespace

std::vector<Mark> ornament_marks(Ornament ornament, double width, double height, bool is_turned) {
    const double unit = std::min(width / 2, height);
    std::vector<Mark> marks;
    for (CurveMark& shape : shapes_of(ornament)) {
        shape.x = width / 2;
        shape.y = height / 2;
        shape.thickness *= unit;
        for (Point& point : shape.points)
            point = {point.x * unit, (is_turned ? -point.y : point.y) * unit};
        marks.emplace_back(std::move(shape));
    }
    return marks;
}

} // namespace print
