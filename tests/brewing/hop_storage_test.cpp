#include "brewing/hop_storage.hpp"

#include <doctest/doctest.h>

#include "tests/published/hop_aging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("the storage index tells the loss") {
    // Nickerson & Likens, Hop storage index, Journal of the American Society of Brewing Chemists 37, 1979.
    CHECK(within(alpha_lost_at_storage_index(published::storage_index) / percent,
                 published::percent_lost_at_storage_index, 1.0));
    // Slopes by crop year 101.8..114.6: at twice the fresh index 30.6..34.5 % are lost.
    CHECK(alpha_lost_at_storage_index(0.50) / percent > 30.6);
    CHECK(alpha_lost_at_storage_index(0.50) / percent < 34.5);
}

TEST_CASE("fresh hops have lost nothing and no hops more than all") {
    CHECK(alpha_lost_at_storage_index(0.25).value() == 0.0);
    CHECK(alpha_lost_at_storage_index(0.20).value() == 0.0);
    CHECK(alpha_lost_at_storage_index(9.0).value() == 1.0);
}

TEST_CASE("six months in the open at 20 degrees cost what the cultivar loses") {
    // Garetz, Using hops, 1994: Cascade loses half.
    const auto left = [](double days, double degrees, HopPackage package) {
        return alpha_left_in_store(50.0 * percent, days * day, celsius(degrees), package).value();
    };
    CHECK(within(left(180.0, 20.0, HopPackage::open), 0.50, 1e-9));
    // A year at 5 °C is as six months at 20 °C, and so is a year without oxygen at 20 °C.
    CHECK(within(left(360.0, 5.0, HopPackage::open), 0.50, 1e-9));
    CHECK(within(left(360.0, 20.0, HopPackage::barrier_without_oxygen), 0.50, 1e-9));
    CHECK(left(180.0, 20.0, HopPackage::sealed_barrier) > left(180.0, 20.0, HopPackage::open));
    CHECK(left(0.0, 20.0, HopPackage::open) == 1.0);
}
