#pragma once

#include <string>
#include <string_view>

#include "brewing/beer.hpp"
#include "brewing/deviates.hpp"
#include "brewing/process.hpp"
#include "brewing/wort.hpp"

namespace entrywise {

/// How strongly a spice speaks beside coriander, gram for gram: clove and its like about four times, dried
/// peel two thirds. A name that no group knows counts as coriander. Working values from the doses that
/// brewers give: 15 g of coriander in 20 L, but 2 to 4 g of cloves or cinnamon (common practice).
double spice_potency(std::string_view name);

/// What a boil leaves of a spice: all of it to 15 min, half of it after an hour; hardly any from the mash.
/// Working values.
Share spice_left(ExtraUse use, Duration boil);

/// Whether a brewing salt tastes of salt: table salt does; gypsum, calcium chloride and Epsom salt do not.
bool tastes_salty(std::string_view name);

/// What is usually taken of a spice or salt that a recipe names without an amount, wide, in the wort that
/// goes into the fermenter. Spice: 5 to 15 g of coriander in 20 L; salt: 8 to 22 g in 20 L (common practice
/// of brewers of wit and gose).
Uncertain<Concentration> usual_dose(const ExtraAddition& extra);

/// Whether the recipe leaves open how much there is of a spice or a salt that is tasted.
bool lacks_a_dose(const ExtraAddition& extra);

/// Spice of the extras as grams of coriander to the liter, and table salt.
Traced<Concentration> spice_of(const Process& process, const Wort& wort, Deviates& deviates);
Traced<Concentration> salt_of(const Process& process, const Wort& wort, Deviates& deviates);

}  // namespace entrywise
