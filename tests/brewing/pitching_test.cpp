#include "brewing/pitching.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

double doublings(double millions, Fermentation fermentation) {
    YeastAddition addition;
    addition.yeast.fermentation = fermentation;
    addition.pitch = millions * million_per_milliliter_plato;
    return pitch_doublings(addition);
}

}  // namespace

// Common practice: 0.75 million cells for each mL and degree Plato of an ale, twice as many for a lager.
TEST_CASE("the usual pitch of an ale is half the usual pitch of a lager") {
    CHECK(doublings(0.75, Fermentation::top) == 0.0);
    CHECK(within(doublings(0.75, Fermentation::bottom), -1.0, 1e-12));
    CHECK(within(doublings(1.5, Fermentation::top), 1.0, 1e-12));
}

TEST_CASE("a pitch that is not stated is the usual one") {
    CHECK(pitch_doublings(YeastAddition()) == 0.0);
}

TEST_CASE("pitches beyond a quarter and four times the usual count as these") {
    CHECK(doublings(0.01, Fermentation::top) == -2.0);
    CHECK(doublings(20.0, Fermentation::top) == 2.0);
}
