#include "judging/account.hpp"

#include <doctest/doctest.h>

#include <numeric>
#include <vector>

#include "tests/support/judging.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

// Whatever is taken from the sections was charged to somebody, and nothing else was: plain bookkeeping.

namespace {

Deviation deviation(Attribute attribute, std::vector<double> steps) {
    Deviation result;
    result.section = section_of(attribute);
    result.attribute = attribute;
    result.name = name_of(attribute);
    result.steps = std::move(steps);
    result.is_inside = false;
    return result;
}

/// Too bitter and too dry are one miss, not bitter enough and too sweet another.
ScoreSheet sheet_of_two_causes() {
    ScoreSheet sheet = fifty_points();
    sheet.causes = {cause_of("bitterness", {"flavor.bitterness"}, 0.0, 0.0, 0.7, 0.0, 0.3),
                    cause_of("finish", {"flavor.finish"}, 0.0, 0.0, 0.7, 0.0, 0.3)};
    sheet.one_miss = {{"flavor.bitterness.above", "flavor.finish.below"},
                      {"flavor.bitterness.below", "flavor.finish.above"}};
    return sheet;
}

struct Booked {
    double above = 0.0;
    double below = 0.0;
    double taken = 0.0;  ///< from all sections, summed over the draws

    double charged() const { return above + below; }
};

Booked booked(const std::vector<Deviation>& deviations) {
    const ScoreSheet sheet = sheet_of_two_causes();
    const Tariff tariff(sheet);
    Account account(tariff, deviations, deviations.front().steps.size(), Noting::each_charge);
    Booked result;
    for (std::size_t cause = 0; cause < sheet.causes.size(); ++cause) {
        for (const Charge& charge : account.take(cause)) {
            result.above += charge.above.points;
            result.below += charge.below.points;
        }
    }
    const Estimate<double> taken = account.at_risk();
    result.taken = std::accumulate(taken.draws().begin(), taken.draws().end(), 0.0);
    return result;
}

}  // namespace

TEST_CASE("a beer that may be too bitter or not bitter enough is charged for both, in their own draws") {
    const Booked both = booked({deviation(Attribute::flavor_bitterness, {2.0, -2.0, 0.0})});
    CHECK(both.above > 0.0);
    CHECK(within(both.above, both.below, 1e-9));
    CHECK(within(both.charged(), both.taken, 1e-9));
}

TEST_CASE("of what is one miss only the dearest is taken, and no more than that is charged") {
    const Booked bitter = booked({deviation(Attribute::flavor_bitterness, {1.0, 1.5})});
    const Booked dry = booked({deviation(Attribute::flavor_finish, {-2.0, -2.0})});
    const Booked together = booked({deviation(Attribute::flavor_bitterness, {1.0, 1.5}),
                                    deviation(Attribute::flavor_finish, {-2.0, -2.0})});
    CHECK(bitter.taken < dry.taken);
    CHECK(within(together.taken, dry.taken, 1e-9));
    CHECK(within(together.charged(), together.taken, 1e-9));
    CHECK(together.above > 0.0);
    CHECK(together.below > 0.0);
}

TEST_CASE("misses that are not one add up, each taking its part of what is left") {
    const Booked bitter = booked({deviation(Attribute::flavor_bitterness, {2.0})});
    const Booked sweet = booked({deviation(Attribute::flavor_finish, {2.0})});
    const Booked together =
        booked({deviation(Attribute::flavor_bitterness, {2.0}), deviation(Attribute::flavor_finish, {2.0})});
    CHECK(together.taken > bitter.taken);
    CHECK(together.taken < bitter.taken + sweet.taken);
}

TEST_CASE("what several attributes show is noted with the dearest of them") {
    ScoreSheet sheet = fifty_points();
    sheet.causes = {cause_of("malt", {"flavor.malt", "flavor.caramel"}, 0.0, 0.0, 0.7, 0.0, 0.3)};
    const Tariff tariff(sheet);
    const std::vector<Deviation> deviations{deviation(Attribute::flavor_malt, {1.0}),
                                            deviation(Attribute::flavor_caramel, {3.0})};
    Account account(tariff, deviations, 1, Noting::each_charge);
    const auto charges = account.take(0);
    REQUIRE(charges.size() == 2);
    for (const Charge& charge : charges) {
        const bool is_dearest = charge.deviation->attribute == Attribute::flavor_caramel;
        CHECK((charge.above.points > 0.0) == is_dearest);
    }
}
