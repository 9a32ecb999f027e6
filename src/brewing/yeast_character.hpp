#pragma once

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"
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
    Estimate<double> fusel;  ///< steps added to warmth and to alcohol in nose and flavor
};

/// The level of esters from the level that the yeast gives at the middle of its temperature range: more when
/// warmer, in strong wort and from little yeast. Direction: ethyl acetate rises from 12.5 to 21.5 mg/L
/// between 10 and 25 °C (quoted by Pires et al., Yeast: the soul of beer's aroma, Applied Microbiology and
/// Biotechnology 98, 2014, from memory), and out of proportion in strong wort (Anderson and Kirsop, The
/// control of volatile ester synthesis during the fermentation of wort of high specific gravity, Journal of
/// the Institute of Brewing 80, 1974, from memory); less yeast, more esters: common practice. The slopes are
/// working values.
double ester_level(double usual_level, TemperatureDifference above_middle, SpecificGravity original_gravity,
                   double pitch_doublings = 0.0);

/// How much of the acid and the funk of a culture with Brettanomyces has come about after this time: half of
/// it at once, all of it after half a year, a fifth more in a year. Common practice of brewers of mixed
/// fermentation; the course is a working value.
double slow_growth(Duration since_pitching);

/// Works out what the yeasts and bacteria of a recipe give. Where several are pitched, the strongest of each
/// counts.
YeastCharacter yeast_character(const Process& process, const Wort& wort,
                               const Estimate<Concentration>& acid_malt, Deviates& deviates);

}  // namespace entrywise
