#include "reading/measures_of.hpp"

#include <doctest/doctest.h>

#include <string>

#include "reading/yaml_document.hpp"

using namespace entrywise;

namespace {

Measures written_in(const std::string& text) {
    return measures_of(*yaml_document(text, "recipe"));
}

}  // namespace

TEST_CASE("a recipe is answered in the units that most of it is written in") {
    CHECK(written_in("{}") == Measures{});
    CHECK(written_in("grist: [{mass: 5 kg}, {mass: 300 g}]\nvolume: 20 L\nmash: [{temperature: 66 C}]") ==
          Measures{});
    CHECK(written_in("grist: [{mass: 9 lb}, {mass: 4 lb 6 oz}]\nvolume: 5.25 gal\n"
                     "mash: [{temperature: 152 F}]\nfermentation: {temperature: 66 °F}") ==
          Measures{.pounds = true, .fahrenheit = true, .gallons = true});
    CHECK(written_in("grist: [{mass: 9 LB}]\nmash: [{temperature: 152 f}]") ==
          Measures{.pounds = true, .fahrenheit = true, .gallons = false});
    CHECK(written_in("grist: [{mass: 9 pounds}, {mass: 1 lb}]\nhops: [{mass: 30 g}]").pounds);
    CHECK_FALSE(written_in("grist: [{mass: 9 lb}]\nhops: [{mass: 30 g}, {mass: 20 g}]").pounds);
    CHECK(written_in("volume: 5 +- 0.2 gal").gallons);
    CHECK(written_in("fermentation: {rest: {temperature: 60 F}, temperature: 50 F}\n"
                     "conditioning: {temperature: 2 C}")
              .fahrenheit);
}
