#include "reading/measured_reader.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

TEST_CASE(
    "measured values of the command line are read as a recipe's, bare numbers by what the key makes clear") {
    const Outcome<Measured> measured =
        read_measured({"original_gravity=1.050, final_gravity=1.011",
                       "bitterness=40,color=20 EBC,alcohol=5.1,carbonation=2.4"},
                      "command line");
    REQUIRE(measured);
    CHECK(within(in(measured->original_gravity->middle, specific_gravity), 1.050, 1e-9));
    CHECK(within(in(measured->final_gravity->middle, specific_gravity), 1.011, 1e-9));
    CHECK(within(in(measured->bitterness->middle, ibu), 40.0, 1e-9));
    // EBC = 1.97 SRM: European Brewery Convention, Analytica EBC 9.6.
    CHECK(within(in(measured->color->middle, srm), 20.0 / 1.97, 0.01));
    CHECK(within(in(measured->alcohol->middle, percent_by_volume), 5.1, 1e-9));
    CHECK(within(in(measured->carbonation->middle, volume_of_co2), 2.4, 1e-9));
}

TEST_CASE("a key that is not known is told with its place and the nearest known") {
    const Outcome<Measured> measured = read_measured({"final_gravty=1.011"}, "command line");
    REQUIRE(measured.faults.size() == 1);
    CHECK(measured.faults[0].place.file == "command line");
    CHECK(measured.faults[0].nearest == "final_gravity");
}

TEST_CASE("what is no pair, no number or out of order is a fault") {
    for (const char* text :
         {"final_gravity", "=1.011", "final_gravity=", "final_gravity=thin", "final_gravity=-1",
          "bitterness=40 kg", "bitterness=nan", "original_gravity=1.010,final_gravity=1.050"}) {
        CAPTURE(text);
        CHECK_FALSE(read_measured({text}, "command line"));
    }
}

TEST_CASE("the later of two values for a key counts, and no text measures nothing") {
    CHECK(
        within(in(read_measured({"bitterness=40", "bitterness=35"}, "command line")->bitterness->middle, ibu),
               35.0, 1e-9));
    CHECK_FALSE(read_measured(std::vector<std::string>(), "command line")->bitterness.has_value());
}

TEST_CASE("a value of the command line goes before the recipe's, and the two together must fit") {
    Measured recipe;
    recipe.original_gravity = {1.060 * specific_gravity, SpecificGravity()};
    recipe.bitterness = {30.0 * ibu, Bitterness()};
    const Measured line = *read_measured({"bitterness=45"}, "command line");
    const Outcome<Measured> both = measured_over(line, recipe, "recipe.yaml");
    REQUIRE(both);
    CHECK(within(in(both->bitterness->middle, ibu), 45.0, 1e-9));
    CHECK(both->original_gravity.has_value());
    const Measured heavy = *read_measured({"final_gravity=1.070"}, "command line");
    CHECK_FALSE(measured_over(heavy, recipe, "recipe.yaml"));
}
