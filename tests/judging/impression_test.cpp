#include "judging/impression.hpp"

#include <doctest/doctest.h>

#include "tests/support/judging.hpp"

using namespace entrywise;
using namespace entrywise::testing;

TEST_CASE("the chance that a judge tells the kind of a smell is that of its level") {
    const Beer beer = plain_beer();
    Profile profile = plain_profile();
    profile.level[Attribute::aroma_hop] = Estimate<double>({1.0, 1.5, 2.5, 3.0, 1.0, 3.0, 3.0, 3.0});
    profile.level[Attribute::aroma_malt] = always(1.0);
    const Impression impression(beer, profile);
    CHECK(impression.chance_that_told(Attribute::aroma_hop) == 5.0 / 8.0);
    CHECK(impression.chance_that_told(Attribute::aroma_malt) == 0.0);
    CHECK(impression.chance_that_told(Attribute::aroma_ester) == 1.0);
    CHECK(impression.reach(Attribute::aroma_hop).low == 1.0);
    CHECK(impression.reach(Attribute::aroma_hop).high == 3.0);
}
