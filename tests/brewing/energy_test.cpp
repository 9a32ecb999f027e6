#include "brewing/energy.hpp"

#include <doctest/doctest.h>

#include "tests/published/energy.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("regular beer has the energy of the food tables") {
    // USDA FoodData Central, beer, regular, from memory.
    const published::RegularBeer& beer = published::regular_beer;
    const EnergyContent regular =
        energy(beer.alcohol * percent, beer.real_extract * plato, beer.gravity * specific_gravity);
    CHECK(within(regular / kilocalorie_per_100_milliliter, beer.kilocalories, 1.5));
}

TEST_CASE("strong beer has more energy") {
    const EnergyContent usual = energy(3.9 * percent, 4.1 * plato, 1.008 * specific_gravity);
    const EnergyContent strong = energy(8.0 * percent, 8.0 * plato, 1.020 * specific_gravity);
    CHECK(strong > 1.9 * usual);
}
