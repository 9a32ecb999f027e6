#pragma once

#include "tools/validation/comparison.hpp"

namespace entrywise {

// What tests/published holds beside what one formula of src/brewing makes of it; the sources by subject.

Quantity extract_of_gravity();
Quantity gravity_of_sugar();
Quantity density_of_water();
Quantity mash();
Quantity mash_of_modern_malt();
Quantity real_extract_of_beers();
Quantity fermentation_ratio();
Quantity food_energy();

Quantity density_of_ethanol();
Quantity density_of_warm_ethanol();
Quantity mass_of_ethanol();
Quantity alcohol_of_beers();
Quantity alcohol_by_the_regression();
Quantity balance_of_alcohol();

Quantity kettle();
Quantity dry_hopping();
Quantity isomerization_at_the_boil();
Quantity half_life_at_the_boil();
Quantity isomerization_energy();
Quantity utilization_by_tinseth();
Quantity utilization_by_rager();
Quantity utilization_by_garetz();
Quantity hop_storage();
Quantity aging_at_home();
Quantity aging_in_bottles();
Quantity laboratories();
Quantity oxidized_acids_tasted();

Quantity color_in_two_units();
Quantity color_by_formula_of_morey();
Quantity color_by_formula_of_daniels();
Quantity color_by_formula_of_mosher();
Quantity light();
Quantity light_on_a_screen();

Quantity carbonation_in_kegs();
Quantity carbonation_left();

Quantity half_life_of_precursor();
Quantity share_of_precursor();
Quantity precursor_by_others();

}  // namespace entrywise
