#include <fmt/format.h>

#include <array>
#include <cmath>

#include "brewing/bitterness_aging.hpp"
#include "brewing/bitterness_laboratory.hpp"
#include "brewing/dry_hop_bitterness.hpp"
#include "brewing/hop_storage.hpp"
#include "brewing/isomerization.hpp"
#include "brewing/tasted_bitterness.hpp"
#include "tests/published/bitterness_laboratory.hpp"
#include "tests/published/dry_hop_bitterness.hpp"
#include "tests/published/hop_aging.hpp"
#include "tests/published/hop_utilization.hpp"
#include "tests/published/isomerization.hpp"
#include "tests/published/kettle_bitterness.hpp"
#include "tests/support/measured_brews.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

namespace {

double energy_between(double cold_rate, double hot_rate) {
    constexpr double gas_constant = 8.314e-3;
    return gas_constant * std::log(hot_rate / cold_rate) / (1.0 / 363.15 - 1.0 / 403.15);
}

}  // namespace

Quantity kettle() {
    Quantity quantity{"Bitterness of single boils and steeps, the chill known",
                      "IBU",
                      1,
                      Evidence::measured_seen,
                      boils_and_steeps,
                      {}};
    for (const MeasuredBrew& brew : measured_brews) {
        quantity.values.push_back({testing::in_words(brew), brew.ibu, testing::predicted_ibu(brew), {}});
    }
    return quantity;
}

Quantity dry_hopping() {
    const MeasuredDryHop& hop = measured_dry_hop;
    const std::array doses = {DryHopDose{hop.grams_in_liter * gram_per_liter, hop.alpha_percent * percent,
                                         hop.humulinone_percent * percent}};
    const DryHopBitterness beer = dry_hop_bitterness(doses, 30.0 * milligram_per_liter);
    return {"Hop acids that a dry hop leaves",
            "mg/L",
            1,
            Evidence::measured_seen,
            heavy_dry_hop,
            {{"humulinones", hop.humulinones, in(beer.humulinones, milligram_per_liter), {}},
             {"alpha acids", hop.alpha_acids, in(beer.alpha_acids, milligram_per_liter), {}}}};
}

Quantity isomerization_at_the_boil() {
    const RateConstants rates = isomerization_rates(celsius(100.0));
    return {"Isomerization at 100 °C",
            "",
            4,
            Evidence::own_formula,
            hop_acid_kinetics,
            {{"rate in a minute", isomerization_per_minute, rates.isomerization * minute, {}},
             {"share in 30 min",
              isomerized_in_half_an_hour,
              isomerization(30.0 * minute, rates).alpha_to_iso,
              {}}}};
}

Quantity half_life_at_the_boil() {
    const double per_minute = isomerization_rates(celsius(100.0)).isomerization * minute;
    return {"Half-life of alpha acids",
            "min",
            1,
            Evidence::own_formula,
            hop_acid_kinetics,
            {{"100 °C", half_life_of_alpha_acids_minutes, std::log(2.0) / per_minute, {}}}};
}

Quantity isomerization_energy() {
    const RateConstants cold = isomerization_rates(celsius(90.0));
    const RateConstants hot = isomerization_rates(celsius(130.0));
    const auto energy = [](Rate from, Rate to) { return energy_between(from * minute, to * minute); };
    return {"Activation energy, 90 to 130 °C",
            "kJ/mol",
            1,
            Evidence::own_formula,
            hop_acid_kinetics,
            {{"isomerization", energy_of_isomerization, energy(cold.isomerization, hot.isomerization), {}},
             {"degradation", energy_of_degradation, energy(cold.degradation, hot.degradation), {}}}};
}

Quantity utilization_by_tinseth() {
    Quantity quantity{"Hop utilization by Tinseth", "share", 4, Evidence::own_formula, tinseth, {}};
    for (const TinsethUtilization& row : tinseth_table) {
        quantity.values.push_back(
            {fmt::format("{:.0f} min at {:.3f}", row.minutes, row.gravity),
             row.share,
             tinseth_utilization(row.minutes * minute, row.gravity * specific_gravity).value(),
             {}});
    }
    return quantity;
}

Quantity utilization_by_rager() {
    Quantity quantity{"Hop utilization by Rager", "%", 2, Evidence::own_formula, rager, {}};
    for (const TableUtilization& row : rager_table) {
        quantity.values.push_back(
            {fmt::format("{:.0f} min", row.minutes),
             row.percent,
             rager_utilization(row.minutes * minute, 1.050 * specific_gravity) / percent,
             {}});
    }
    return quantity;
}

Quantity utilization_by_garetz() {
    Quantity quantity{"Hop utilization by Garetz", "%", 2, Evidence::own_formula, garetz, {}};
    for (const TableUtilization& row : garetz_table) {
        quantity.values.push_back({fmt::format("{:.0f} min", row.minutes),
                                   row.percent,
                                   garetz_utilization(row.minutes * minute) / percent,
                                   {}});
    }
    return quantity;
}

Quantity hop_storage() {
    return {"Alpha acids lost in store",
            "%",
            1,
            Evidence::own_formula,
            hop_storage_index,
            {{"storage index 0.31",
              percent_lost_at_storage_index,
              alpha_lost_at_storage_index(storage_index) / percent,
              {}}}};
}

Quantity aging_at_home() {
    return {"Bitterness left in home-made beer",
            "share",
            3,
            Evidence::own_formula,
            aging_of_home_made_beer,
            {{"after 16 weeks",
              left_after_16_weeks,
              bitterness_left_in_home_made_beer(16.0 * week).value(),
              {}}}};
}

Quantity aging_in_bottles() {
    return {
        "Bitterness left in bottled beer",
        "share",
        3,
        Evidence::measured_seen,
        aging_of_bottled_beer,
        {{"after 8 months", left_after_8_months, bitterness_left_in_bottled_beer(243.5 * day).value(), {}}}};
}

Quantity laboratories() {
    return {"Spread of laboratories at 30 IBU",
            "IBU",
            2,
            Evidence::own_formula,
            laboratory_agreement,
            {{"between laboratories",
              reproducibility_at_30_ibu / distance_over_deviation,
              laboratory_reproducibility(30.0 * ibu).value(),
              {}},
             {"within one",
              repeatability_at_30_ibu / distance_over_deviation,
              laboratory_repeatability(30.0 * ibu).value(),
              {}}}};
}

Quantity oxidized_acids_tasted() {
    const double ratio = in(tasted_bitterness({0.0 * ibu, 30.0 * ibu}), ibu) /
                         in(tasted_bitterness({30.0 * ibu, 0.0 * ibu}), ibu);
    return {"Bitterness of oxidized hop acids beside iso-alpha-acids",
            "",
            3,
            Evidence::measured_seen,
            oxidized_acids,
            {{"humulinones", bitterness_of_humulinones, ratio, {}}}};
}

}  // namespace entrywise
