#include "brewing/dry_hop_bitterness.hpp"

#include <doctest/doctest.h>

#include <array>

#include "tests/published/dry_hop_bitterness.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using entrywise::testing::within;

TEST_CASE("a heavy dry hop leaves what was measured") {
    // Maye et al., MBAA Technical Quarterly 53, 2016: Cascade pellets.
    const published::MeasuredDryHop& hop = published::measured_dry_hop;
    const std::array doses = {DryHopDose{hop.grams_in_liter * gram_per_liter, hop.alpha_percent * percent,
                                         hop.humulinone_percent * percent}};
    const DryHopBitterness bitterness = dry_hop_bitterness(doses, 30.0 * milligram_per_liter);
    CHECK(within(in(bitterness.humulinones, milligram_per_liter), hop.humulinones, 0.15 * hop.humulinones));
    CHECK(within(in(bitterness.alpha_acids, milligram_per_liter), hop.alpha_acids, 0.15 * hop.alpha_acids));
}

TEST_CASE("a bitter beer may lose and a mild one gains") {
    // Maye et al. 2016: beers below about 20 IBU lose little; dry hopping raises mild and lowers very bitter
    // beers.
    const std::array doses = {
        DryHopDose{4.0 * gram_per_liter, 8.0 * percent, usual_humulinones(8.0 * percent)}};
    CHECK(dry_hop_bitterness(doses, 15.0 * milligram_per_liter).loss.value() == 0.0);
    CHECK(dry_hop_bitterness(doses, 15.0 * milligram_per_liter).change().value() > 0.0);
    CHECK(dry_hop_bitterness(doses, 90.0 * milligram_per_liter).change().value() < 0.0);
}

TEST_CASE("alpha acids alone add no more than ten") {
    // Maye et al. 2016: up to about ten in the laboratory.
    const std::array doses = {DryHopDose{25.0 * gram_per_liter, 14.0 * percent, 0.0 * percent}};
    const DryHopBitterness bitterness = dry_hop_bitterness(doses, {});
    CHECK(bitterness.gain.value() > 5.0);
    CHECK(bitterness.gain.value() <= 11.0);
}

TEST_CASE("two dry hops are one of both") {
    const std::array together = {DryHopDose{6.0 * gram_per_liter, 10.0 * percent, 0.2 * percent}};
    const std::array apart = {DryHopDose{2.0 * gram_per_liter, 10.0 * percent, 0.2 * percent},
                              DryHopDose{4.0 * gram_per_liter, 10.0 * percent, 0.2 * percent}};
    const Concentration iso = 40.0 * milligram_per_liter;
    CHECK(within(dry_hop_bitterness(together, iso).change().value(),
                 dry_hop_bitterness(apart, iso).change().value(), 1e-9));
}

TEST_CASE("no dry hop changes nothing") {
    CHECK(dry_hop_bitterness({}, 60.0 * milligram_per_liter).change().value() == 0.0);
}

// Maye et al. 2016: fresh hops hold about 2 % of their alpha acids as humulinones.
TEST_CASE("hops of twelve percent alpha hold a quarter of a percent of humulinones") {
    CHECK(within(usual_humulinones(12.0 * percent) / percent, 0.24, 0.03));
}

// Common practice: a few percent of the alpha acids dissolve cold. Three of them is a working value.
TEST_CASE("a light dry hop leaves three percent of its alpha acids") {
    const std::array doses = {DryHopDose{1.0 * gram_per_liter, 10.0 * percent, 0.0 * percent}};
    CHECK(within(in(dry_hop_bitterness(doses, {}).alpha_acids, milligram_per_liter), 3.0, 0.5));
}
