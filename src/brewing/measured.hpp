#pragma once

#include <string>

#include "brewing/deviates.hpp"
#include "quantity/quantities.hpp"

namespace entrywise {

// Draws of what was measured. Where the recipe states no spread, the usual one of the measurement holds:
// 0.001 for a hydrometer and 0.2 % for alcohol worked out from two readings (common practice), a laboratory's
// reproducibility for bitterness (MEBAK collected methods; European Brewery Convention, Analytica 9.8), 5 %
// for color and 0.15 volumes for carbonation (working values). Each is the half width that holds eight of
// ten.

Estimate<SpecificGravity> draw_measured(const std::string& input, const Uncertain<SpecificGravity>& measured,
                                        Deviates& deviates);
Estimate<AlcoholByVolume> draw_measured(const std::string& input, const Uncertain<AlcoholByVolume>& measured,
                                        Deviates& deviates);
Estimate<Bitterness> draw_measured(const std::string& input, const Uncertain<Bitterness>& measured,
                                   Deviates& deviates);
Estimate<Color> draw_measured(const std::string& input, const Uncertain<Color>& measured, Deviates& deviates);
Estimate<Carbonation> draw_measured(const std::string& input, const Uncertain<Carbonation>& measured,
                                    Deviates& deviates);

}  // namespace entrywise
