#include "brewing/kettle_bitterness.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "tests/support/measured_brews.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;
using published::measured_brews;
using published::MeasuredBrew;

namespace {

KettleDose dose(double milligrams, double boil_minutes, std::size_t step = 0, HopForm form = HopForm::whole) {
    return {milligrams * milligram_per_liter, form, boil_minutes * minute, step};
}

/// An hour's boil, a stand of 20 min at 85 °C, and 15 min at 75 °C.
HotSideKinetics usual_hot_side() {
    return HotSideKinetics(
        {celsius(100.0), {{20.0 * minute, celsius(85.0)}, {15.0 * minute, celsius(75.0)}}});
}

double hops_ibu(const std::vector<KettleDose>& doses) {
    return kettle_bitterness(doses, usual_hot_side()).hops.value();
}

}  // namespace

// Hosom, web reports on alpha-acid solubility and hop steeping, 2015..2020.
TEST_CASE("measured boils and steeps are met within 20 percent") {
    double squares = 0.0;
    double squares_of_tinseth = 0.0;
    for (const MeasuredBrew& brew : measured_brews) {
        const double predicted = predicted_ibu(brew);
        const double tinseth = tinseth_ibu(brew);
        MESSAGE(fmt::format(
            "{:4.0f} min at {:5.1f} C, {:4.0f} mg/L: measured {:4.1f}, predicted {:4.1f}, Tinseth {:4.1f}",
            brew.minutes, brew.celsius, in(alpha_acids_of(brew), milligram_per_liter), brew.ibu, predicted,
            tinseth));
        CHECK(within(predicted, brew.ibu, 0.20 * brew.ibu));
        squares += (predicted - brew.ibu) * (predicted - brew.ibu);
        squares_of_tinseth += (tinseth - brew.ibu) * (tinseth - brew.ibu);
    }
    const double root_mean_square = std::sqrt(squares / measured_brews.size());
    const double root_mean_square_of_tinseth = std::sqrt(squares_of_tinseth / measured_brews.size());
    MESSAGE(fmt::format("root mean square error: {:.1f} IBU, Tinseth {:.1f} IBU", root_mean_square,
                        root_mean_square_of_tinseth));
    CHECK(root_mean_square < 4.0);
    CHECK(root_mean_square < root_mean_square_of_tinseth);
}

TEST_CASE("the order in which doses are given does not matter") {
    std::vector<KettleDose> doses = {dose(90.0, 60.0), dose(200.0, 15.0),
                                     dose(120.0, 15.0, 0, HopForm::pellet), dose(300.0, 0.0),
                                     dose(250.0, 0.0, 1)};
    const double expected = hops_ibu(doses);
    std::reverse(doses.begin(), doses.end());
    CHECK(hops_ibu(doses) == expected);
    std::rotate(doses.begin(), doses.begin() + 2, doses.end());
    CHECK(hops_ibu(doses) == expected);
}

TEST_CASE("a dose split in two gives what it gave whole") {
    CHECK(within(hops_ibu({dose(500.0, 10.0)}), hops_ibu({dose(200.0, 10.0), dose(300.0, 10.0)}), 1e-9));
}

TEST_CASE("parts add up to the whole") {
    const std::array doses = {dose(150.0, 60.0), dose(250.0, 10.0), dose(300.0, 0.0, 1)};
    const KettleBitterness bitterness = kettle_bitterness(doses, usual_hot_side());
    double sum = 0.0;
    double iso = 0.0;
    for (const DoseBitterness& part : bitterness.doses) {
        sum += part.contribution.value();
        iso += in(part.iso_alpha_acids, milligram_per_liter);
    }
    CHECK(within(bitterness.hops.value(), sum, 1e-9));
    // Half of the iso-alpha-acids survive to the glass by default.
    CHECK(within(in(bitterness.iso_alpha_acids_in_beer, milligram_per_liter), 0.5 * iso, 1e-9));
}

TEST_CASE("below the solubility doses do not see one another") {
    CHECK(within(hops_ibu({dose(80.0, 60.0), dose(100.0, 5.0)}),
                 hops_ibu({dose(80.0, 60.0)}) + hops_ibu({dose(100.0, 5.0)}), 1e-9));
}

TEST_CASE("beyond the solubility more hops give other absorbers only") {
    const double at_the_limit = hops_ibu({dose(260.0, 60.0)});
    const double beyond = hops_ibu({dose(520.0, 60.0)});
    CHECK(beyond > at_the_limit);
    CHECK(beyond < 1.5 * at_the_limit);
}

TEST_CASE("what has isomerized makes room for later hops") {
    const double late = hops_ibu({dose(260.0, 0.0)});
    const double both = hops_ibu({dose(260.0, 60.0), dose(260.0, 0.0)});
    const double early = hops_ibu({dose(260.0, 60.0)});
    CHECK(both < early + late);
    // An hour's boil isomerizes about half of the alpha acids: half of the late hops dissolves.
    const std::array doses = {dose(260.0, 60.0), dose(260.0, 0.0)};
    const std::array late_only = {dose(260.0, 0.0)};
    const Concentration crowded = kettle_bitterness(doses, usual_hot_side()).doses[1].iso_alpha_acids;
    const Concentration alone = kettle_bitterness(late_only, usual_hot_side()).doses[0].iso_alpha_acids;
    CHECK(within(crowded / alone, 0.53, 0.02));
}

TEST_CASE("longer, hotter and earlier is more bitter") {
    CHECK(hops_ibu({dose(100.0, 60.0)}) > hops_ibu({dose(100.0, 30.0)}));
    CHECK(hops_ibu({dose(100.0, 1.0)}) > hops_ibu({dose(100.0, 0.0)}));
    CHECK(hops_ibu({dose(100.0, 0.0, 0)}) > hops_ibu({dose(100.0, 0.0, 1)}));
    CHECK(hops_ibu({dose(100.0, 0.0, 1)}) > hops_ibu({dose(100.0, 0.0, 2)}));
}

TEST_CASE("hops that join cold wort leave other absorbers, and steps past the last are the same") {
    CHECK(within(hops_ibu({dose(100.0, 0.0, 9)}), hops_ibu({dose(100.0, 0.0, 2)}), 1e-12));
    CHECK(hops_ibu({dose(100.0, 0.0, 2)}) > 0.0);
    CHECK(hops_ibu({dose(100.0, 0.0, 2, HopForm::extract)}) == 0.0);
}

TEST_CASE("pellets read more than whole hops by an amount that boiling does not change") {
    // Hosom, web report on pellets, 2015..2020.
    const double after_an_hour =
        hops_ibu({dose(100.0, 60.0, 0, HopForm::pellet)}) - hops_ibu({dose(100.0, 60.0)});
    const double at_once = hops_ibu({dose(100.0, 0.0, 0, HopForm::pellet)}) - hops_ibu({dose(100.0, 0.0)});
    CHECK(after_an_hour > 0.0);
    CHECK(within(after_an_hour, at_once, 1e-9));
}

TEST_CASE("a brewhouse of its own changes what it should") {
    const std::array doses = {dose(100.0, 60.0, 0, HopForm::extract)};
    KettleModel model;
    const Bitterness usual = kettle_bitterness(doses, usual_hot_side(), model).hops;
    model.survival = 0.25 * whole;
    CHECK(within(kettle_bitterness(doses, usual_hot_side(), model).hops / usual, 0.5, 1e-9));
    model.survival = 0.50 * whole;
    model.solubility = 50.0 * milligram_per_liter;
    CHECK(within(kettle_bitterness(doses, usual_hot_side(), model).hops / usual, 0.5, 1e-9));
}

TEST_CASE("unhopped beer reads one to three") {
    // Hosom, web report on bitterness without hops, 2015.
    CHECK(kettle_bitterness({}, usual_hot_side()).hops.value() == 0.0);
    CHECK(malt_bitterness(1.040 * specific_gravity).value() >= 1.0);
    CHECK(malt_bitterness(1.110 * specific_gravity).value() <= 3.0);
}
