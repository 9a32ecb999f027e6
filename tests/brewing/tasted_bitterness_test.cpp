#include "brewing/tasted_bitterness.hpp"

#include <doctest/doctest.h>

#include "brewing/brew.hpp"
#include "tests/published/bitterness_laboratory.hpp"
#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// Algazzali & Shellhammer, Bitterness intensity of oxidized hop acids, Journal of the American Society of
// Brewing Chemists 74, 2016.
TEST_CASE("oxidized acids taste two thirds as bitter as iso-alpha-acids that read the same") {
    const double of_oxidized = in(tasted_bitterness({0.0 * ibu, 30.0 * ibu}), ibu);
    const double of_iso = in(tasted_bitterness({30.0 * ibu, 0.0 * ibu}), ibu);
    CHECK(within(of_oxidized / of_iso, published::bitterness_of_humulinones, 0.005));
}

TEST_CASE("a plain boil of pellets tastes as it reads, but for what malt reads") {
    const Beer beer = brew_with(hopped({boiled(magnum(), 20.0, 60.0)}), 64);
    const double read = in(beer.bitterness.total.median(), ibu);
    CHECK(within(in(beer.tasted_bitterness.median(), ibu), read, 2.0));
}

TEST_CASE("late hops taste less bitter than they read") {
    const Beer late = brew_with(hopped({boiled(cascade(), 120.0, 5.0)}), 64);
    CHECK(late.tasted_bitterness.median() < 0.92 * late.bitterness.total.median());
}

TEST_CASE("bitterness that was measured tastes by the same share of what it reads") {
    Recipe recipe = hopped({boiled(cascade(), 120.0, 5.0)});
    const Beer worked_out = brew_with(recipe, 64);
    recipe.measured.bitterness = {60.0 * ibu, 2.0 * ibu};
    const Beer measured = brew_with(recipe, 64);
    const double share = in(worked_out.tasted_bitterness.median(), worked_out.bitterness.total.median());
    CHECK(within(in(measured.tasted_bitterness.median(), ibu), 60.0 * share, 1.5));
}
