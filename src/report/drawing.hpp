#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace entrywise {

/// What a picture says, for those who cannot see it: what it is, and what can be read off it.
struct PictureWords {
    std::string title;
    std::string description;
};

struct Point {
    double x = 0.0;
    double y = 0.0;
};

/// Where values come to lie on a drawing. Values beyond an end lie at that end.
class Axis {
  public:
    Axis(double low, double high, double from, double to) : low_(low), high_(high), from_(from), to_(to) {}

    double at(double value) const;
    double low() const { return low_; }
    double high() const { return high_; }

  private:
    double low_;
    double high_;
    double from_;
    double to_;
};

/// A picture of an HTML page, in SVG. What a shape looks like is said by the page's style under the name it
/// is given, so that it follows light, dark and print.
class Drawing {
  public:
    /// A drawing that keeps its proportions.
    Drawing(const std::string& name, double width, double height, const PictureWords& words);

    /// A drawing 100 wide that is stretched to the width it is given; for shapes that bear it, no labels.
    static Drawing stretched(const std::string& name, double height, const PictureWords& words);

    void rectangle(std::string_view name, Point corner, double width, double height);
    void painted(std::string_view color, Point corner, double width, double height);
    void line(std::string_view name, Point from, Point to);
    void curve(std::string_view name, const std::vector<Point>& points);
    void area(std::string_view name, const std::vector<Point>& points);
    void dot(std::string_view name, Point center, double radius);
    void label(std::string_view name, Point at, std::string_view text);

    std::string svg() const;

  private:
    std::string head_;
    std::string shapes_;
};

/// A length or place on a drawing, as short as the eye allows.
std::string coordinate(double number);

}  // namespace entrywise
