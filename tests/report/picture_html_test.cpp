#include <doctest/doctest.h>
#include <pugixml.hpp>

#include <string>
#include <vector>

#include "report/drawing.hpp"
#include "report/picture_glass.hpp"
#include "report/picture_level.hpp"
#include "report/picture_number.hpp"
#include "report/picture_plane.hpp"
#include "report/picture_points.hpp"
#include "report/picture_share.hpp"
#include "tests/has.hpp"
#include "tests/report/sample_html.hpp"

using namespace entrywise;
using entrywise::testing::has;

namespace {

/// The shapes of a picture that go by a name.
std::vector<pugi::xml_node> shapes_named(const pugi::xml_document& picture, const std::string& name) {
    std::vector<pugi::xml_node> shapes;
    for (const pugi::xml_node& shape : picture.child("svg").children()) {
        if (name == shape.attribute("class").value()) {
            shapes.push_back(shape);
        }
    }
    return shapes;
}

pugi::xml_document parsed(const std::string& picture) {
    pugi::xml_document document;
    REQUIRE(document.load_string(picture.c_str()));
    return document;
}

BeerNumber bitterness_around(double middle) {
    return {"bitterness", "bitterness", "IBU", 0, {middle, middle - 8.0, middle + 8.0}};
}

std::vector<double> draws_between(double low, double high) {
    std::vector<double> draws;
    for (int step = 0; step <= 100; ++step) {
        draws.push_back(low + (high - low) * step / 100.0);
    }
    return draws;
}

int red_of(const std::string& code) {
    return std::stoi(code.substr(1, 2), nullptr, 16);
}

int blue_of(const std::string& code) {
    return std::stoi(code.substr(5, 2), nullptr, 16);
}

}  // namespace

TEST_CASE("html: a picture's words are text") {
    Drawing drawing("x", 10.0, 10.0, {"<a> & \"b\"", "<c>"});
    drawing.label("y", {1.0, 2.0}, "<d>");
    const pugi::xml_document picture = parsed(drawing.svg());
    CHECK(std::string(picture.child("svg").child_value("title")) == "<a> & \"b\"");
    CHECK(std::string(picture.child("svg").child_value("desc")) == "<c>");
    CHECK(std::string(picture.child("svg").child_value("text")) == "<d>");
}

TEST_CASE("html: lengths are short and never a negative zero") {
    CHECK(coordinate(-0.001) == "0");
    CHECK(coordinate(12.3456) == "12.35");
    CHECK(coordinate(7.0) == "7");
}

TEST_CASE("html: a beer inside the range is drawn solid, one outside hollow, one across both") {
    const PlainRange range{40.0, 70.0, false};
    const auto parts = [&](double low, double high) {
        const pugi::xml_document picture =
            parsed(number_picture(bitterness_around((low + high) / 2.0), draws_between(low, high), range));
        return std::pair{shapes_named(picture, "inside").size(), shapes_named(picture, "outside").size()};
    };
    CHECK(parts(90.0, 110.0) == std::pair<std::size_t, std::size_t>{0, 1});
    CHECK(parts(52.0, 58.0) == std::pair<std::size_t, std::size_t>{1, 0});
    CHECK(parts(60.0, 80.0) == std::pair<std::size_t, std::size_t>{1, 1});
    CHECK(parts(20.0, 90.0) == std::pair<std::size_t, std::size_t>{1, 2});
}

TEST_CASE("html: a range open at an end, none at all, and a number that is sure are drawn") {
    for (const auto& range : {std::optional(PlainRange{{}, 14.0, false}),
                              std::optional(PlainRange{5.0, {}, false}), std::optional<PlainRange>()}) {
        CHECK_FALSE(has(number_picture(bitterness_around(30.0), draws_between(22.0, 38.0), range), "nan"));
    }
    const BeerNumber sure{"color", "color", "SRM", 1, {9.0, 9.0, 9.0}};
    CHECK_FALSE(has(number_picture(sure, std::vector<double>(8, 9.0), PlainRange{6.0, 14.0, false}), "nan"));
}

TEST_CASE("html: as many boxes as points, and as many struck as points are at risk, begun ones too") {
    const auto counts = [](double at_risk) {
        const pugi::xml_document picture = parsed(points_picture("Aroma", {at_risk, 0.0, at_risk}, 12.0));
        return std::pair{shapes_named(picture, "box").size(), shapes_named(picture, "struck").size()};
    };
    CHECK(counts(0.0) == std::pair<std::size_t, std::size_t>{12, 0});
    CHECK(counts(2.0) == std::pair<std::size_t, std::size_t>{12, 2});
    CHECK(counts(2.4) == std::pair<std::size_t, std::size_t>{12, 3});
    CHECK(counts(12.0) == std::pair<std::size_t, std::size_t>{12, 12});
}

TEST_CASE("html: what a guide takes for granted is drawn hollow") {
    const Interval80<double> level{3.0, 2.0, 4.0};
    CHECK(
        has(level_picture(Attribute::aroma_hop, Expectation{1.0, 2.0, true}, level, false), "band assumed"));
    CHECK_FALSE(
        has(level_picture(Attribute::aroma_hop, Expectation{1.0, 2.0, false}, level, false), "assumed"));
    CHECK_FALSE(has(level_picture(Attribute::aroma_hop, {}, level, false), "band"));
    CHECK(has(level_picture(Attribute::aroma_hop, {}, level, true), "level out"));
}

// Common practice: pale beer is yellow, dark beer passes red and next to no blue light, and any beer looks
// paler in a narrower glass.
TEST_CASE("html: the glass is yellow for a pale beer, dark for a black one, paler where it is narrow") {
    const std::string pale = screen_code(3.0 * srm, glass_width);
    const std::string dark = screen_code(40.0 * srm, glass_width);
    CHECK(red_of(pale) > 220);
    CHECK(blue_of(pale) < red_of(pale));
    CHECK(red_of(dark) < 90);
    CHECK(blue_of(dark) < 10);
    CHECK(blue_of(screen_code(6.0 * srm, 1.0 * centimeter)) > blue_of(screen_code(6.0 * srm, glass_width)));
    CHECK(has(glass_picture(40.0 * srm), "black"));
}

TEST_CASE("html: the plane has a box for each style that prints both ranges, one of them marked") {
    Style other = sample_style();
    other.code = "7D";
    Style bare = sample_style();
    bare.code = "7E";
    bare.ranges.bitterness.reset();
    const Style entered = sample_style();
    const auto places = placed({other, bare, entered}, &entered);
    REQUIRE(places.size() == 2);
    const pugi::xml_document picture = parsed(plane_picture(places, sample_beer()));
    CHECK(shapes_named(picture, "place marked").size() == 1);
    CHECK(shapes_named(picture, "place").size() == 1);
    CHECK(shapes_named(picture, "draw").size() == 11);
    CHECK(shapes_named(picture, "beer").size() == 1);
}

TEST_CASE("html: a share and a chance fill their part of the width") {
    const pugi::xml_document share = parsed(share_picture("of the color", 0.35));
    CHECK(std::string(shapes_named(share, "part").front().attribute("width").value()) == "35");
    const pugi::xml_document chance = parsed(chance_picture("that it holds", 0.71));
    CHECK(std::string(shapes_named(chance, "part").front().attribute("width").value()) == "71");
    CHECK(shapes_named(chance, "post").size() == 2);
}
