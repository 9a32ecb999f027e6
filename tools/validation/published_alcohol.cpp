#include <fmt/format.h>

#include <string>

#include "brewing/alcohol_regressions.hpp"
#include "brewing/balling.hpp"
#include "brewing/ethanol_density.hpp"
#include "tests/published/balance.hpp"
#include "tests/published/ethanol_density.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

namespace {

double density_at_20(Share by_mass) {
    return in(ethanol_mixture_density(by_mass, celsius(20.0)), gram_per_liter);
}

}  // namespace

Quantity density_of_ethanol() {
    Quantity quantity{"Density of alcohol and water at 20 °C",
                      "g/L",
                      2,
                      Evidence::printed,
                      std::string(alcoholometric_tables) + "; all but the first from memory",
                      {}};
    quantity.values.push_back({"5 % by volume",
                               density_of_five_percent_by_volume,
                               density_at_20(ethanol_by_mass(5.0 * percent_by_volume)),
                               {}});
    for (const EthanolMixture& row : ethanol_mixtures) {
        quantity.values.push_back({fmt::format("{:.0f} % by volume", row.by_volume),
                                   row.density,
                                   density_at_20(ethanol_by_mass(row.by_volume * percent_by_volume)),
                                   {}});
    }
    return quantity;
}

Quantity density_of_warm_ethanol() {
    Quantity quantity{"Density of alcohol and water from 10 to 30 °C",
                      "g/L",
                      2,
                      Evidence::printed,
                      std::string(handbook_of_chemical_engineering) + ", from memory",
                      {}};
    for (const EthanolDensities& row : ethanol_densities) {
        for (std::size_t place = 0; place < row.relative.size(); ++place) {
            const double degrees = degrees_of_ethanol_table[place];
            const Concentration density =
                ethanol_mixture_density(row.percent_by_mass / 100.0 * whole, celsius(degrees));
            quantity.values.push_back(
                {fmt::format("{:.0f} % by mass at {:.0f} °C", row.percent_by_mass, degrees),
                 most_density_of_water * row.relative[place],
                 in(density, gram_per_liter),
                 {}});
        }
    }
    return quantity;
}

Quantity mass_of_ethanol() {
    Quantity quantity{"Alcohol by mass from alcohol by volume",
                      "%",
                      2,
                      Evidence::printed,
                      std::string(alcoholometric_tables) + ", from memory",
                      {}};
    for (const EthanolMixture& row : ethanol_mixtures) {
        quantity.values.push_back({fmt::format("{:.0f} % by volume", row.by_volume),
                                   row.by_mass,
                                   ethanol_by_mass(row.by_volume * percent_by_volume) / percent,
                                   {}});
    }
    return quantity;
}

Quantity alcohol_of_beers() {
    const AnalyzedBeer& beer = mean_of_221_beers;
    const Extract original = beer.original_extract * plato;
    const Extract real = real_extract(original, beer.apparent_extract * plato);
    return {"Alcohol by weight",
            "%",
            2,
            Evidence::measured,
            analyzed_beers,
            {{"mean of 221 beers", beer.alcohol, alcohol_by_weight(original, real) / percent, {}}}};
}

Quantity alcohol_by_the_regression() {
    const AnalyzedBeer& beer = mean_of_221_beers;
    const Share alcohol = alcohol_by_regression(beer.original_extract * plato, beer.apparent_extract * plato);
    return {"Alcohol by weight, by the regression of these beers",
            "%",
            2,
            Evidence::measured_seen,
            analyzed_beers,
            {{"mean of 221 beers", beer.alcohol, alcohol / percent, {}}}};
}

Quantity balance_of_alcohol() {
    const AlcoholByVolume alcohol = alcohol_by_volume(usual_beer.original_gravity * specific_gravity,
                                                      usual_beer.final_gravity * specific_gravity);
    return {"Alcohol by volume from two gravities",
            "%",
            2,
            Evidence::own_formula,
            balling,
            {{"1.050 to 1.010", usual_beer.alcohol, alcohol.value(), {}}}};
}

}  // namespace entrywise
