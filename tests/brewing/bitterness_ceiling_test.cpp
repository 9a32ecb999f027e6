#include "brewing/bitterness_ceiling.hpp"

#include <doctest/doctest.h>

#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

namespace {

double held(double ibus) {
    return in(held_in_beer(ibus * ibu), ibu);
}

}  // namespace

// Common practice: up to some 50 IBU what is worked out is what is measured; no laboratory finds much more
// than 100 IBU, however much hops went in.
TEST_CASE("beer holds what usual hops give, and no more than a hundred units of a flood") {
    CHECK(held(0.0) == 0.0);
    CHECK(within(held(20.0), 20.0, 0.1));
    CHECK(within(held(45.0), 45.0, 1.0));
    CHECK(within(held(1000.0), 100.0, 1.0));
}

TEST_CASE("more hops never make a less bitter beer, nor one more bitter than they would") {
    double before = 0.0;
    for (double ibus = 1.0; ibus <= 400.0; ibus += 1.0) {
        CHECK(held(ibus) > before);
        CHECK(held(ibus) <= ibus);
        before = held(ibus);
    }
}
