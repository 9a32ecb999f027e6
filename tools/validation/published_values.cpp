#include "tools/validation/published_values.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <string>

#include "brewing/alcohol_regressions.hpp"
#include "brewing/balling.hpp"
#include "brewing/bitterness_aging.hpp"
#include "brewing/bitterness_laboratory.hpp"
#include "brewing/carbonation.hpp"
#include "brewing/color.hpp"
#include "brewing/color_spectrum.hpp"
#include "brewing/dimethyl_sulfide.hpp"
#include "brewing/dry_hop_bitterness.hpp"
#include "brewing/energy.hpp"
#include "brewing/ethanol_density.hpp"
#include "brewing/extract_yield.hpp"
#include "brewing/hop_storage.hpp"
#include "brewing/isomerization.hpp"
#include "brewing/mash_fermentability.hpp"
#include "brewing/tasted_bitterness.hpp"
#include "brewing/water_density.hpp"
#include "quantity/plato.hpp"
#include "tests/published/balance.hpp"
#include "tests/published/bitterness_laboratory.hpp"
#include "tests/published/carbonation.hpp"
#include "tests/published/color.hpp"
#include "tests/published/dimethyl_sulfide.hpp"
#include "tests/published/dry_hop_bitterness.hpp"
#include "tests/published/energy.hpp"
#include "tests/published/ethanol_density.hpp"
#include "tests/published/extract.hpp"
#include "tests/published/hop_aging.hpp"
#include "tests/published/hop_utilization.hpp"
#include "tests/published/isomerization.hpp"
#include "tests/published/kettle_bitterness.hpp"
#include "tests/published/mash_fermentability.hpp"
#include "tests/published/water_density.hpp"
#include "tests/support/measured_brews.hpp"

namespace entrywise {

namespace {

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

double density_at_20(Share by_mass) {
    return in(ethanol_mixture_density(by_mass, celsius(20.0)), gram_per_liter);
}

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

double energy_between(double cold_rate, double hot_rate) {
    constexpr double gas_constant = 8.314e-3;
    return gas_constant * std::log(hot_rate / cold_rate) / (1.0 / 363.15 - 1.0 / 403.15);
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

Quantity color_in_two_units() {
    return {"Beer color, SRM to EBC", "EBC",       2,
            Evidence::own_formula,    color_units, {{"8 SRM", color_in_ebc, in_ebc(color_in_srm * srm), {}}}};
}

Quantity color_by(const std::string& whose, const char* source, Color (*formula)(ColorLoad),
                  const ColorOfLoad& of) {
    return {"Beer color by " + whose,
            "SRM",
            2,
            Evidence::own_formula,
            source,
            {{fmt::format("{:.0f} malt color units", of.malt_color_units),
              of.srm,
              formula(of.malt_color_units * malt_color_unit).value(),
              {}}}};
}

Quantity light() {
    const LabColor lab = lab_color(tristimulus(10.0 * srm, 1.0 * centimeter));
    const LightThroughBeer& beer = light_through_amber_beer;
    return {
        "Light through beer of 10 SRM, 1 cm",
        "",
        2,
        Evidence::own_formula,
        color_of_light,
        {{"L*", beer.lightness, lab.lightness, {}}, {"a*", beer.a, lab.a, {}}, {"b*", beer.b, lab.b, {}}}};
}

Quantity light_on_a_screen() {
    const ScreenColor screen = screen_color(tristimulus(10.0 * srm, 1.0 * centimeter));
    const LightThroughBeer& beer = light_through_amber_beer;
    return {"The same light on a screen, of 255",
            "",
            0,
            Evidence::own_formula,
            color_of_light,
            {{"red", beer.red, static_cast<double>(screen.red), {}},
             {"green", beer.green, static_cast<double>(screen.green), {}},
             {"blue", beer.blue, static_cast<double>(screen.blue), {}}}};
}

Quantity carbonation_in_kegs() {
    Quantity quantity{"Carbonation in a keg", "volumes", 2, Evidence::printed, carbonation_chart, {}};
    for (const KegCarbonation& row : keg_carbonations) {
        const Temperature temperature = celsius((row.fahrenheit - 32.0) / 1.8);
        quantity.values.push_back(
            {fmt::format("{:.0f} psi at {:.0f} °F", row.psi, row.fahrenheit),
             row.volumes,
             carbonation_at_equilibrium(row.psi * pound_per_square_inch, temperature).value(),
             {}});
    }
    return quantity;
}

Quantity carbonation_left() {
    Quantity quantity{
        "Carbonation that fermentation leaves", "volumes", 2, Evidence::printed, priming_tables, {}};
    for (const ResidualCarbonation& row : residual_carbonations) {
        quantity.values.push_back({fmt::format("{:.0f} °C", row.celsius),
                                   row.volumes,
                                   residual_carbonation(celsius(row.celsius)).value(),
                                   {}});
    }
    return quantity;
}

Comparison half_life(const PrecursorHalfLife& row) {
    return {fmt::format("pH {:.1f} and {:.0f} °C", row.ph, row.celsius),
            row.minutes,
            in(precursor_half_life(row.ph, celsius(row.celsius)), minute),
            {}};
}

Quantity half_life_of_precursor() {
    Quantity quantity{"Half-life of the precursor of dimethyl sulfide",
                      "min",
                      1,
                      Evidence::measured_seen,
                      precursor_breakdown,
                      {}};
    for (const PrecursorHalfLife& row : precursor_at_the_boil) {
        quantity.values.push_back(half_life(row));
    }
    quantity.values.push_back(half_life(precursor_below_the_boil));
    return quantity;
}

Quantity share_of_precursor() {
    const Concentration precursor = 0.2 * milligram_per_liter;
    const std::array stand = {TemperatureStep{30.0 * minute, celsius(94.0)}};
    return {"Precursor of dimethyl sulfide under heat",
            "share",
            3,
            Evidence::own_formula,
            precursor_breakdown,
            {{"left by an hour's boil, pH 5.2",
              precursor_left_by_the_boil,
              precursor_left(60.0 * minute, 5.2, celsius(100.0)).value(),
              {}},
             {"freed by 30 min at 94 °C",
              precursor_freed_by_a_stand,
              dimethyl_sulfide_formed(precursor, stand, 5.2) / precursor,
              {}}}};
}

Quantity precursor_by_others() {
    return {"Half-life of the precursor of dimethyl sulfide, others",
            "min",
            1,
            Evidence::measured,
            precursor_breakdown_again,
            {half_life(precursor_by_wilson)}};
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

}  // namespace

std::vector<Quantity> published_values() {
    return {kettle(),
            mash(),
            mash_of_modern_malt(),
            real_extract_of_beers(),
            alcohol_of_beers(),
            alcohol_by_the_regression(),
            fermentation_ratio(),
            dry_hopping(),
            aging_in_bottles(),
            half_life_of_precursor(),
            share_of_precursor(),
            precursor_by_others(),
            oxidized_acids_tasted(),
            extract_of_gravity(),
            gravity_of_sugar(),
            density_of_ethanol(),
            density_of_warm_ethanol(),
            mass_of_ethanol(),
            density_of_water(),
            carbonation_in_kegs(),
            carbonation_left(),
            food_energy(),
            balance_of_alcohol(),
            isomerization_at_the_boil(),
            half_life_at_the_boil(),
            isomerization_energy(),
            utilization_by_tinseth(),
            utilization_by_rager(),
            utilization_by_garetz(),
            hop_storage(),
            aging_at_home(),
            laboratories(),
            color_in_two_units(),
            color_by("Morey", morey, morey_color, color_by_morey),
            color_by("Daniels", daniels, daniels_color, color_by_daniels),
            color_by("Mosher", mosher, mosher_color, color_by_mosher),
            light(),
            light_on_a_screen()};
}

}  // namespace entrywise
