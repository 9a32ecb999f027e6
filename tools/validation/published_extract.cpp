#include <fmt/format.h>

#include <array>

#include "brewing/balling.hpp"
#include "brewing/energy.hpp"
#include "brewing/extract_yield.hpp"
#include "brewing/mash_fermentability.hpp"
#include "brewing/water_density.hpp"
#include "quantity/plato.hpp"
#include "tests/published/balance.hpp"
#include "tests/published/energy.hpp"
#include "tests/published/extract.hpp"
#include "tests/published/mash_fermentability.hpp"
#include "tests/published/water_density.hpp"
#include "tools/validation/published_quantities.hpp"

namespace entrywise {

using namespace entrywise::published;

Quantity extract_of_gravity() {
    Quantity quantity{"Extract from gravity", "°P", 3, Evidence::printed, sucrose_tables, {}};
    const auto add = [&](const SucroseSolution& solution) {
        quantity.values.push_back({fmt::format("gravity {:.5f}", solution.gravity),
                                   solution.plato,
                                   extract_of(solution.gravity * specific_gravity).value(),
                                   {}});
    };
    add(weak_wort);
    add(strong_wort);
    for (const SucroseSolution& solution : sucrose_solutions) {
        add(solution);
    }
    return quantity;
}

Quantity gravity_of_sugar() {
    Quantity quantity{"Gravity from extract", "SG", 5, Evidence::printed, sucrose_tables, {}};
    for (const SucroseInLiter& row : sucrose_in_liter) {
        quantity.values.push_back({fmt::format("{:.2f} g sucrose in a liter", row.grams),
                                   row.gravity,
                                   gravity_of_extract(row.grams * gram, 1.0 * liter).value(),
                                   {}});
    }
    quantity.values.push_back({fmt::format("{:.2f} °P", usual_wort.plato),
                               usual_wort.gravity,
                               specific_gravity_of(usual_wort.plato * plato).value(),
                               {}});
    return quantity;
}

Quantity density_of_water() {
    Quantity quantity{"Density of water", "g/L", 2, Evidence::printed, steam_tables, {}};
    for (const WaterDensity& row : water_densities) {
        quantity.values.push_back({fmt::format("{:.2f} °C", row.celsius),
                                   row.density,
                                   in(water_density(celsius(row.celsius)), gram_per_liter),
                                   {}});
    }
    return quantity;
}

Quantity mash() {
    Quantity quantity{"Apparent attenuation by mash temperature",
                      "%",
                      1,
                      Evidence::measured_seen,
                      mashes_of_lager_malt,
                      {}};
    for (const MashedWort& row : mashed_worts) {
        const std::array rests = {MashRest{celsius(row.celsius), 60.0 * minute}};
        const MashEffect effect = mash_effect(rests);
        const double ours = mashed_worts[0].attenuation + effect.shift.value() * 100.0;
        quantity.values.push_back(
            {fmt::format("an hour at {:.0f} °C", row.celsius), row.attenuation, ours, {}});
    }
    return quantity;
}

Quantity mash_of_modern_malt() {
    const MashedWort& row = modern_malt_mashed_hot;
    const std::array rests = {MashRest{celsius(row.celsius), 60.0 * minute}};
    const double ours = mashed_worts[0].attenuation + mash_effect(rests).shift.value() * 100.0;
    return {"Apparent attenuation of modern malt, mashed hot",
            "%",
            1,
            Evidence::measured_seen,
            mashes_of_modern_malt,
            {{"70 °C, lowest mean of three strains", row.attenuation, ours, {}}}};
}

Quantity real_extract_of_beers() {
    const AnalyzedBeer& beer = mean_of_221_beers;
    const Extract real = real_extract(beer.original_extract * plato, beer.apparent_extract * plato);
    return {"Real extract",
            "°P",
            2,
            Evidence::measured,
            analyzed_beers,
            {{"mean of 221 beers, 11.34 °P to 2.01 °P", beer.real_extract, real.value(), {}}}};
}

Quantity fermentation_ratio() {
    Quantity quantity{
        "Real over apparent degree of fermentation", "", 4, Evidence::measured, analyzed_beers, {}};
    for (const FermentationRatio& row : fermentation_ratios) {
        const Extract original = row.original_extract * plato;
        const Extract apparent = row.apparent_extract * plato;
        const Attenuation real = real_degree_of_fermentation(original, real_extract(original, apparent));
        quantity.values.push_back(
            {fmt::format("regression over 532 beers, at {:.0f} °P", row.original_extract),
             row.ratio,
             real / apparent_attenuation(original, apparent),
             {}});
    }
    return quantity;
}

Quantity food_energy() {
    const RegularBeer& beer = regular_beer;
    const EnergyContent ours =
        energy(beer.alcohol * percent, beer.real_extract * plato, beer.gravity * specific_gravity);
    return {"Food energy in 100 mL",
            "kcal",
            1,
            Evidence::printed,
            food_tables,
            {{"regular beer", beer.kilocalories, ours / kilocalorie_per_100_milliliter, {}}}};
}

}  // namespace entrywise
