#include "brewing/ferulic_rest.hpp"

#include <doctest/doctest.h>

using namespace entrywise;

namespace {

double clove_of(double degrees, double minutes) {
    return phenol_from_ferulic_rest({{.temperature = celsius(degrees), .time = minutes * minute}});
}

}  // namespace

// McMurrough et al., Journal of the Institute of Brewing 102, 1996: most ferulic acid is freed at 45 °C, far
// less in a mash at 65 °C.
TEST_CASE("ferulic acid is freed near 45 °C") {
    CHECK(clove_of(45.0, 20.0) > 0.4);
    CHECK(clove_of(45.0, 20.0) > clove_of(40.0, 20.0));
    CHECK(clove_of(45.0, 20.0) > clove_of(50.0, 20.0));
    CHECK(clove_of(65.0, 60.0) == 0.0);
    CHECK(phenol_from_ferulic_rest({}) == 0.0);
}

TEST_CASE("a longer rest never frees less, and an hour gives no more than a step") {
    double before = 0.0;
    for (double minutes = 5.0; minutes <= 60.0; minutes += 5.0) {
        CHECK(clove_of(45.0, minutes) >= before);
        before = clove_of(45.0, minutes);
    }
    CHECK(before <= 1.0);
}

// Coghe et al., Journal of Agricultural and Food Chemistry 52, 2004: most at 45 °C; little in the cold, where
// the enzyme hardly works, and little above 50 °C, where it is soon destroyed.
TEST_CASE("a doughing-in in the cold and a rest for protein free nothing") {
    CHECK(phenol_from_ferulic_rest({{celsius(37.0), 30.0 * minute}}) == 0.0);
    CHECK(phenol_from_ferulic_rest({{celsius(53.0), 30.0 * minute}}) == 0.0);
}
