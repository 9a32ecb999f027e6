#include "tools/validation/published_values.hpp"

#include "tools/validation/published_quantities.hpp"

namespace entrywise {

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
            color_by_formula_of_morey(),
            color_by_formula_of_daniels(),
            color_by_formula_of_mosher(),
            light(),
            light_on_a_screen()};
}

}  // namespace entrywise
