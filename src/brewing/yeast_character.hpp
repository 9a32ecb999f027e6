#pragma once

#include <vector>

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "quantity/estimate.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

/// What yeast and bacteria give to the nose and palate, as levels on the intensity scale.
struct YeastCharacter {
    Estimate<double> ester;
    Estimate<double> phenol;
    Estimate<double> diacetyl;
    Estimate<double> sulfur;
    Estimate<double> sour;
    Estimate<double> funk;
};

/// The level of esters from the level that the yeast gives at the middle of its temperature range: more when
/// warmer, more in strong wort. Direction: ethyl acetate rises from 12.5 to 21.5 mg/L between 10 and 25 °C
/// (quoted by Pires et al., Yeast: the soul of beer's aroma, Applied Microbiology and Biotechnology 98, 2014,
/// from memory); the slopes are working values.
double ester_level(double usual_level, TemperatureDifference above_middle, SpecificGravity original_gravity);

/// Works out what the yeasts of a recipe give. Where several are pitched, the strongest of each counts.
YeastCharacter yeast_character(const Process& process, const Estimate<SpecificGravity>& original_gravity,
                               const Estimate<Concentration>& acid, Deviates& deviates);

}  // namespace entrywise
